package org.sunder.exchange;

import io.swagger.v3.oas.annotations.Hidden;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.parameters.RequestBody;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.sunder.access.CurrentFlyer;

/** Everything of one flyer out and in again, over HTTP. */
@RestController
@Tag(name = "Exchange")
class ExchangeController {

    private static final String CSV = "text/csv";

    private final Export export;
    private final Import taking;
    private final CsvLog table;
    private final CurrentFlyer flyer;

    ExchangeController(Export export, Import taking, CsvLog table, CurrentFlyer flyer) {
        this.export = export;
        this.taking = taking;
        this.table = table;
        this.flyer = flyer;
    }

    @GetMapping(path = "/api/export", produces = MediaType.APPLICATION_JSON_VALUE)
    @Operation(
            operationId = "exportEverything",
            summary = "Everything you have, as one document",
            description =
                    "Airframes, joints, setups, load-outs, the whole log and the stock, without loss: imported into"
                            + " an empty database it gives the same bytes again. Accept text/csv gives every firing as a table;"
                            + " text that a spreadsheet would run as a formula gets an apostrophe, unless raw=true."
                            + " Photos come along only with photos=true, in Base64, as many as fit into the 20 MB that an import"
                            + " takes; where more are left, photosAfter at the end of the document and the Link header name where"
                            + " the next document begins, which holds photos alone. Without photos=true, photosLeftOut says how"
                            + " many there are.")
    @ApiResponse(
            responseCode = "200",
            description = "The export.",
            content = @Content(schema = @Schema(type = "object")))
    ResponseEntity<byte[]> everything(
            @Parameter(description = "Whether photos come along.") @RequestParam(defaultValue = "false") boolean photos,
            @Parameter(description = "After which test's photo to go on, with photos alone.")
                    @RequestParam(required = false)
                    @Nullable UUID photosAfter) {
        Export.Document document =
                photos || photosAfter != null ? export.withPhotos(flyer.id(), photosAfter) : export.of(flyer.id());
        ResponseEntity.BodyBuilder answer = ResponseEntity.ok()
                .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"sunder.json\"")
                .contentType(MediaType.APPLICATION_JSON);
        if (document.next() != null) {
            answer.header(
                    HttpHeaders.LINK, "</api/export?photos=true&photosAfter=" + document.next() + ">; rel=\"next\"");
        }
        return answer.body(document.bytes().toByteArray());
    }

    @Hidden
    @GetMapping(path = "/api/export", produces = CSV)
    ResponseEntity<byte[]> log(@RequestParam(defaultValue = "false") boolean raw) {
        return csv("ground-tests.csv", table.tests(raw));
    }

    @Hidden
    @GetMapping(path = "/api/airframes/{id}/history", produces = CSV)
    ResponseEntity<byte[]> history(@PathVariable UUID id, @RequestParam(defaultValue = "false") boolean raw) {
        return csv("history.csv", table.history(id, raw));
    }

    /** The same behind a plain link, whatever a browser says that it takes. */
    @Hidden
    @GetMapping("/airframes/{id}/history.csv")
    ResponseEntity<byte[]> historyToSave(@PathVariable UUID id) {
        return csv("history.csv", table.history(id, false));
    }

    @PostMapping(path = "/api/import", consumes = MediaType.APPLICATION_JSON_VALUE)
    @Operation(
            operationId = "importEverything",
            summary = "Take in an export",
            description =
                    "All of it or nothing; up to 20 MB. Photos go through the same checks as one that is sent. Rows that are here already, just the same, are passed over, so"
                            + " that importing twice adds nothing; one that is here with other content refuses the import and is"
                            + " named.",
            requestBody =
                    @RequestBody(
                            required = true,
                            description = "What the export gave.",
                            content = @Content(mediaType = "application/json", schema = @Schema(type = "object"))))
    ImportView everything(HttpServletRequest request) throws IOException {
        try (WholeBody body = new WholeBody(request.getInputStream());
                InputStream export = body.open()) {
            Import.Result result = taking.take(flyer.id(), export);
            return new ImportView(result.added(), result.known());
        }
    }

    private static ResponseEntity<byte[]> csv(String name, String text) {
        return ResponseEntity.ok()
                .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"" + name + "\"")
                .contentType(MediaType.parseMediaType("text/csv;charset=utf-8;header=present"))
                .body(text.getBytes(StandardCharsets.UTF_8));
    }
}

package org.sunder.photo.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.parameters.RequestBody;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.URI;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.context.request.ServletWebRequest;
import org.sunder.persistence.DurableTransactions;
import org.sunder.photo.CleanPhoto;
import org.sunder.photo.Photo;
import org.sunder.photo.PhotoType;
import org.sunder.photo.Photos;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;

/** The photo of a ground test over HTTP. */
@RestController
@Tag(name = "Ground tests")
class PhotoController {

    private static final int AT_A_TIME = 4; // of 5 MB each, held a few times over while they are cleaned and stored

    private final Photos photos;
    private final DurableTransactions transactions;
    private final Gate gate = new Gate(AT_A_TIME);

    PhotoController(Photos photos, DurableTransactions transactions) {
        this.photos = photos;
        this.transactions = transactions;
    }

    @PutMapping("/api/ground-tests/{id}/photo")
    @Operation(
            operationId = "putPhoto",
            summary = "Keep a photo of a ground test",
            description =
                    "One photo a test: a JPEG (baseline or progressive) or PNG of at most 5 MB and 50 million pixels, told"
                            + " by its bytes and not by its name. The picture is kept as it is; what a camera wrote beside it (place,"
                            + " time, maker, comments, thumbnail) is taken out first, all but which way up it is shown. The same photo"
                            + " again changes nothing. Another one in its place needs If-Match and a full key; a log-only key adds."
                            + " A flyer keeps 1000 photos at most, of 500 MB together.",
            requestBody =
                    @RequestBody(
                            required = true,
                            description = "The file.",
                            content = {
                                @Content(
                                        mediaType = "image/jpeg",
                                        schema = @Schema(type = "string", format = "binary"),
                                        examples = @ExampleObject("the bytes of the file")),
                                @Content(
                                        mediaType = "image/png",
                                        schema = @Schema(type = "string", format = "binary"),
                                        examples = @ExampleObject("the bytes of the file"))
                            }))
    @ApiResponse(
            responseCode = "200",
            description = "The photo took the place of another, or was there already.",
            content = @Content(schema = @Schema(implementation = PhotoView.class)))
    @ApiResponse(
            responseCode = "201",
            description = "The test has a photo now.",
            content = @Content(schema = @Schema(implementation = PhotoView.class)))
    ResponseEntity<PhotoView> put(
            @PathVariable UUID id,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch,
            HttpServletRequest request)
            throws IOException {
        photos.requireTest(id); // before anything of the body is read
        if (!PhotoType.named(request.getContentType())) {
            throw new ProblemException(
                    ProblemType.UNSUPPORTED_MEDIA_TYPE,
                    (request.getContentType() == null
                                    ? "There is no Content-Type"
                                    : "The Content-Type is " + request.getContentType())
                            + "; a photo is image/jpeg or image/png.");
        }
        Photos.Stored stored = gate.pass(() -> {
            CleanPhoto photo = CleanPhoto.of(request.getInputStream().readAllBytes());
            return transactions.commit(() -> photos.put(id, photo, ifMatch));
        });
        Photo photo = stored.photo();
        ResponseEntity.BodyBuilder answer = stored.added()
                ? ResponseEntity.created(URI.create(photo.address()))
                : ResponseEntity.status(HttpStatus.OK);
        return answer.eTag(photo.tag()).body(PhotoView.of(photo));
    }

    @GetMapping(
            path = "/api/ground-tests/{id}/photo",
            produces = {"image/jpeg", "image/png"})
    @Operation(
            operationId = "getPhoto",
            summary = "The photo of a ground test",
            description = "The file as it is kept, with its ETag; If-None-Match spares sending it again.")
    @ApiResponse(
            responseCode = "200",
            description = "The file.",
            content = {
                @Content(
                        mediaType = "image/jpeg",
                        schema = @Schema(type = "string", format = "binary"),
                        examples = @ExampleObject("the bytes of the file")),
                @Content(
                        mediaType = "image/png",
                        schema = @Schema(type = "string", format = "binary"),
                        examples = @ExampleObject("the bytes of the file"))
            })
    void get(@PathVariable UUID id, HttpServletRequest request, HttpServletResponse response) throws IOException {
        Photo photo = photos.get(id);
        response.setHeader(
                HttpHeaders.CACHE_CONTROL, CacheControl.noCache().cachePrivate().getHeaderValue());
        if (new ServletWebRequest(request, response).checkNotModified(photo.tag())) {
            return;
        }
        gate.pass(() -> {
            byte[] content = photos.content(photo);
            response.setContentType(photo.type().mediaType());
            response.setContentLength(content.length);
            response.setHeader(
                    HttpHeaders.CONTENT_DISPOSITION,
                    ContentDisposition.inline()
                            .filename(photo.fileName())
                            .build()
                            .toString());
            response.getOutputStream().write(content);
            return photo;
        });
    }

    @DeleteMapping("/api/ground-tests/{id}/photo")
    @Operation(
            operationId = "removePhoto",
            summary = "Remove the photo of a ground test",
            description = "For good. The test stays as it is. Needs If-Match.")
    @ApiResponse(responseCode = "204", description = "The photo is gone.")
    ResponseEntity<Void> remove(
            @PathVariable UUID id,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch) {
        transactions.run(() -> photos.remove(id, ifMatch));
        return ResponseEntity.noContent().build();
    }
}

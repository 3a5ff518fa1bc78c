package org.sunder.upkeep;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RestController;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;

/** Backups over HTTP. */
@RestController
@Tag(name = "Upkeep")
class BackupController {

    private final Backups backups;

    BackupController(Backups backups) {
        this.backups = backups;
    }

    /** A copy that was made. */
    @Schema(name = "Backup", description = "A copy that was made.")
    record BackupView(
            @Schema(
                    description = "The file, on the server.",
                    example = "data/backups/asked-for-20260503-092000-000.zip")
            String file) {}

    @PostMapping("/api/backup")
    @Operation(
            operationId = "backUp",
            summary = "Copy the embedded database",
            description =
                    "Writes a copy of all flyers' data beside the database while it is in use. Refused on PostgreSQL,"
                            + " which is copied with pg_dump. Needs an admin key.")
    BackupView backUp() {
        return backups.make("asked-for")
                .map(file -> new BackupView(file.toString()))
                .orElseThrow(() -> new ProblemException(
                        ProblemType.CONFLICT,
                        "The database is not a file of this service; copy it with its own tools, such as pg_dump."));
    }
}

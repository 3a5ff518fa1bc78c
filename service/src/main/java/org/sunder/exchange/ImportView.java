package org.sunder.exchange;

import io.swagger.v3.oas.annotations.media.Schema;

/** What an import did. */
@Schema(name = "Import", description = "What an import did.")
record ImportView(
        @Schema(description = "Rows that were new.", example = "14")
        int added,

        @Schema(description = "Rows that were there already, just the same.", example = "0")
        int known) {}

package org.axlewright.api.setup;

import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;

/** A revision in a list. */
@Schema(description = "A revision of a setup in a list.")
record RevisionEntry(
        @Schema(description = "1 when created, one more with each change; in quotes it is the ETag.")
        long revision,

        @Schema(description = "Name of the setup then.") String name,

        @Schema(description = "When it was saved.") Instant savedAt) {}

package org.axlewright.api.setup;

import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import java.util.UUID;

/** A deleted setup in a list. */
@Schema(description = "A deleted setup in a list; it can be restored for 30 days.")
record DeletedEntry(
        @Schema(description = "Identifier, a UUID of version 7.")
        UUID id,

        @Schema(description = "Name of the setup.") String name,

        @Schema(description = "Its revision; in quotes it is the ETag.")
        long revision,

        @Schema(description = "When it was deleted.") Instant deletedAt) {}

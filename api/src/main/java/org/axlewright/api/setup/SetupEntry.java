package org.axlewright.api.setup;

import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import java.util.UUID;

/** A setup in a list. */
@Schema(description = "A setup in a list.")
record SetupEntry(
        @Schema(description = "Identifier, a UUID of version 7.")
        UUID id,

        @Schema(description = "Name of the setup.") String name,

        @Schema(description = "1 when created, one more with each replacement; in quotes it is the ETag.")
        long revision,

        @Schema(description = "When it was created.") Instant createdAt,
        @Schema(description = "When it was last changed.") Instant updatedAt) {}

package org.axlewright.api.setup;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.UUID;
import org.axlewright.api.problem.Problem;
import org.jspecify.annotations.Nullable;

/** What became of a line. */
@Schema(description = "What became of a line of an import.")
record ImportedLine(
        @Schema(description = "Number of the line, from 1.") long line,

        @Schema(
                description =
                        "The status that saving this line by itself is answered with: 201 saved, anything else not.")
        int status,

        @Schema(description = "Identifier of the new setup.") @Nullable
        UUID id,

        @Schema(description = "Name of the new setup.") @Nullable
        String name,

        @Schema(description = "Why it is not saved; pointers lead into the line.") @Nullable
        Problem problem) {

    static ImportedLine saved(long line, UUID id, String name) {
        return new ImportedLine(line, 201, id, name, null);
    }

    static ImportedLine refused(long line, Problem problem) {
        return new ImportedLine(line, problem.status(), null, null, problem);
    }
}

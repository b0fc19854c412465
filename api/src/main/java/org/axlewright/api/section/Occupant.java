package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.Size;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.Mass;
import org.axlewright.domain.stability.Facing;
import org.jspecify.annotations.Nullable;

/** A person on board. */
@Schema(
        description =
                "A person on board. The centre of gravity of a seated person is about 0.15 to 0.25 m above and 0.1 to 0.2 m ahead of the hip pivot [from memory].")
public record Occupant(
        @Schema(description = "Who sits there.") @Size(max = 200) @Nullable
        String name,

        @Schema(description = "Mass of the person; 75 kg when left out.")
        @Within(min = 1, max = 300, unit = "kg")
        @Nullable
        Mass mass,

        @Schema(description = "Centre of gravity of the seated person. y is on the centre plane when left out.")
        @Valid
        @Nullable
        Position position,

        @Schema(description = "Which way the seat faces; `forward` when left out.") @Nullable
        Facing facing,

        @Schema(description = "Whether a belt is fitted and worn.") @Nullable
        Boolean belt,

        @Schema(description = "Height of the side restraint above the seat cushion.")
        @Within(min = 0, max = 1.5, unit = "m")
        @Nullable
        Length restraintHeight,

        @Schema(description = "True for the driver; the first occupant when nobody is marked.") @Nullable
        Boolean driver,

        @Schema(description = "Opaque text of the sender; echoed in results and findings.") @Size(max = 200) @Nullable
        String reference) {

    /** Whether the seat looks back. */
    public boolean facesRearward() {
        return facing == Facing.REARWARD;
    }
}

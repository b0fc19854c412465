package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.Size;
import org.axlewright.domain.quantity.Mass;
import org.jspecify.annotations.Nullable;

/** A part added to the vehicle as weighed, or taken off it. */
@Schema(description = "A part added to the vehicle as weighed, or taken off it.")
public record Item(
        @Schema(description = "What it is.") @Size(max = 200) @Nullable
        String name,

        @Schema(description = "Mass of the part.") @Within(min = 0.001, max = 10_000, unit = "kg") @Nullable
        Mass mass,

        @Schema(description = "Its centre of gravity. y is on the centre plane when left out.") @Valid @Nullable
        Position position,

        @Schema(description = "True when the part was there at the weighing and is taken off; false when left out.")
        @Nullable
        Boolean removed,

        @Schema(
                description =
                        "True for a load that is on board on some trips and not on others: crates in a rack. It counts"
                                + " as on board; questions that ask for every filling leave it off too. False when left"
                                + " out.")
        @Nullable
        Boolean cargo,

        @Schema(description = "Opaque text of the sender, such as a part number; echoed in results and findings.")
        @Size(max = 200)
        @Nullable
        String reference,

        @Schema(description = "Outside dimensions, for drawings; its box stands about the centre of gravity.")
        @Valid
        @Nullable
        OutsideSize size) {}

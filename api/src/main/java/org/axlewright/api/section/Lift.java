package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.axlewright.api.section.Tyres.Tyre;
import org.axlewright.domain.lift.LiftKind;
import org.axlewright.domain.lift.MeasuredAt;
import org.axlewright.domain.quantity.Length;
import org.jspecify.annotations.Nullable;

/** What raised the vehicle. */
@Schema(description = "What raised the vehicle since it was weighed and measured, axle by axle.")
public record Lift(
        @Schema(description = "Front axle.") @Valid @Nullable
        AxleLift front,

        @Schema(description = "Rear axle.") @Valid @Nullable AxleLift rear) {

    /** The lift of one axle. */
    @Schema(description = "The lift of one axle. A change of tyre alone needs only `tyreBefore`.")
    public record AxleLift(
            @Schema(description = "How the axle is lifted.") @Nullable
            LiftKind kind,

            @Schema(description = "Amount of the lift where it was measured; negative lowers.")
            @Within(min = -0.3, max = 0.6, unit = "m")
            @Nullable
            Length amount,

            @Schema(
                    description =
                            "Where the amount was measured: `wheel`, the rise of the frame over the wheel, or `spring`, the part itself. `wheel` when left out.")
            @Nullable
            MeasuredAt measuredAt,

            @Schema(
                    description =
                            "Spring travel for wheel travel, needed when measured at the spring; 1 for a block, 2 for a shackle when left out.")
            @DecimalMin("0.1")
            @DecimalMax("5")
            @Nullable
            Double motionRatio,

            @Schema(description = "The tyre before the change, when it changed; `tyres` is the one on it now.")
            @Valid
            @Nullable
            Tyre tyreBefore,

            @Schema(
                    description =
                            "Share of this axle's load that is above its springs, 0 to 1; all of it when left out, which is the highest the centre of gravity can rise.")
            @DecimalMin("0")
            @DecimalMax("1")
            @Nullable
            Double sprungShare) {}
}

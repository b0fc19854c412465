package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.Mass;
import org.axlewright.domain.quantity.RollGradient;
import org.axlewright.domain.quantity.SpringRate;
import org.jspecify.annotations.Nullable;

/** Suspension of the two axles. */
@Schema(description = "Suspension, axle by axle.")
public record Suspension(
        @Schema(description = "Front axle.") @Valid @Nullable
        AxleSuspension front,

        @Schema(description = "Rear axle.") @Valid @Nullable AxleSuspension rear,

        @Schema(description = "How the body rolls in a turn.") @Valid @Nullable
        Roll roll) {

    /** How the body rolls in a turn. */
    @Schema(description = "How the body rolls on its springs in a turn.")
    public record Roll(
            @Schema(description = "Roll gradient: angle of roll for each g of lateral acceleration.")
            @Within(min = 0, max = 30, unit = "deg/g")
            @Nullable
            RollGradient gradient,

            @Schema(description = "Height of the roll axis above the ground at the centre of gravity.")
            @Within(min = -0.5, max = 2, unit = "m")
            @Nullable
            Length axisHeight) {}

    /** Suspension of one axle, right-hand side. */
    @Schema(
            description =
                    "Suspension of one axle. The four joints of a double wishbone are points of the right-hand side in front view, measured as found, before `lift`.")
    public record AxleSuspension(
            @Schema(description = "Lower arm, joint at the frame.") @Valid @Nullable
            Point lowerInner,

            @Schema(description = "Lower arm, ball joint.") @Valid @Nullable
            Point lowerOuter,

            @Schema(description = "Upper arm, joint at the frame.") @Valid @Nullable
            Point upperInner,

            @Schema(description = "Upper arm, ball joint.") @Valid @Nullable
            Point upperOuter,

            @Schema(description = "Tie rod, for the change of toe.") @Valid @Nullable
            TieRod tieRod,

            @Schema(description = "Rate of one spring.") @Within(min = 0.1, max = 2000, unit = "N/mm") @Nullable
            SpringRate springRate,

            @Schema(
                    description =
                            "Wheel travel left before the bump stop, the vehicle standing as weighed and on the stops it has now.")
            @Within(min = 0, max = 1, unit = "m")
            @Nullable
            Length freeTravel,

            @Schema(description = "Springs on this axle, both sides together; 2 when left out.")
            @Min(1)
            @Max(8)
            @Nullable
            Integer springs,

            @Schema(
                    description =
                            "Travel of the spring for each travel of the wheel; 1 when left out, as for a leaf spring on the axle.")
            @DecimalMin("0.05")
            @DecimalMax("3")
            @Nullable
            Double motionRatio,

            @Schema(
                    description =
                            "One measurement in place of `springRate`: how far a known mass pressed the axle down.")
            @Valid
            @Nullable
            MeasuredSquat measured,

            @Schema(description = "Rate of one tyre.") @Within(min = 1, max = 5000, unit = "N/mm") @Nullable
            SpringRate tyreRate,

            @Schema(description = "Mass of wheels, axle and half the links: what the springs don't carry.")
            @Within(min = 0, max = 1000, unit = "kg")
            @Nullable
            Mass unsprungMass,

            @Schema(
                    description =
                            "True where each wheel has its own arms, false for a solid axle. Four joints of a double wishbone say true.")
            @Nullable
            Boolean independent,

            @Schema(description = "From spring to spring across a solid axle; for the roll stiffness of the axle.")
            @Within(min = 0.1, max = 2, unit = "m")
            @Nullable
            Length springSpacing) {}

    /** A known mass and how far it pressed one end of the vehicle down. */
    @Schema(description = "A known mass set down on the vehicle, and how far the frame came down over the axle.")
    public record MeasuredSquat(
            @Schema(description = "The mass.") @Within(min = 1, max = 2000, unit = "kg") @Nullable
            Mass mass,

            @Schema(description = "Where its centre lay, behind the front axle; straight over this axle when left out.")
            @Within(min = -3, max = 10, unit = "m")
            @Nullable
            Length x,

            @Schema(description = "How far the frame came down over this axle, tyres included.")
            @Within(min = 0.0005, max = 0.5, unit = "m")
            @Nullable
            Length drop) {}

    /** A point in front view. */
    @Schema(description = "A point in front view: y outward from the centre plane, z up from the ground.")
    public record Point(
            @Schema(description = "Outward from the centre plane.") @Within(min = -1, max = 3, unit = "m") @Nullable
            Length y,

            @Schema(description = "Above the ground.") @Within(min = -1, max = 3, unit = "m") @Nullable
            Length z) {}

    /** The tie rod of the right-hand wheel. */
    @Schema(description = "The tie rod of the right-hand wheel, in front view, and the steering arm it turns.")
    public record TieRod(
            @Schema(description = "Inner joint, at the rack or drag link.") @Valid @Nullable
            Point inner,

            @Schema(description = "Outer joint, at the steering arm.") @Valid @Nullable
            Point outer,

            @Schema(
                    description =
                            "Distance of the outer joint behind the line through the ball joints, in plan; negative when it lies ahead.")
            @Within(min = -0.5, max = 0.5, unit = "m")
            @Nullable
            Length armLength) {}
}

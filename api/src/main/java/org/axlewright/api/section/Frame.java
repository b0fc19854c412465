package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.ArraySchema;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.axlewright.domain.frame.LoadCase;
import org.axlewright.domain.frame.SteelGrade;
import org.axlewright.domain.frame.TubeShape;
import org.axlewright.domain.quantity.Angle;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.Mass;
import org.axlewright.domain.quantity.Stress;
import org.jspecify.annotations.Nullable;

/** Rails of the frame, what hangs behind them and what was let in between the axles. */
@Schema(
        description =
                "Rails of the frame, a box hung behind the last crossmember, and an insert between the axles. Distances of the box and of what holds it count rearward from the last crossmember.")
public record Frame(
        @ArraySchema(
                arraySchema =
                        @Schema(description = "The rails that carry together, each by itself: a pair is two entries."))
        @Size(max = 8)
        @Nullable
        List<@Valid Rail> rails,

        @Schema(description = "The box hung behind the last crossmember.") @Valid @Nullable
        HungBox box,

        @Schema(description = "The insert that made the wheelbase longer.") @Valid @Nullable
        Stretch stretch,

        @Schema(
                description =
                        "How the ground loads the frame, by published factors: `static` 1, `smooth` 2 (torsion 1.3), `rough` 3 (torsion 1.8). `rough` when left out and no `dynamicFactor` is sent.")
        @Nullable
        LoadCase loadCase,

        @Schema(
                description =
                        "Multiple of the weight when both wheels of an axle hit a bump, in place of that of `loadCase`. Published: 2 to 3, higher off road.")
        @DecimalMin("1")
        @DecimalMax("10")
        @Nullable
        Double dynamicFactor,

        @Schema(
                description =
                        "Multiple of the weight when one wheel hits a bump, in place of that of `loadCase`. Published: 1.3 to 1.8.")
        @DecimalMin("1")
        @DecimalMax("10")
        @Nullable
        Double torsionFactor,

        @Schema(
                description =
                        "Safety factor asked of the yield strength; 1.5 with a dynamic factor above 1, 3 on the static load when left out [from memory].")
        @DecimalMin("1")
        @DecimalMax("20")
        @Nullable
        Double safetyFactor,

        @Schema(description = "Young's modulus of rails and prop; 200 000 MPa, steel, when left out.")
        @Within(min = 40_000, max = 250_000, unit = "MPa")
        @Nullable
        Stress elasticModulus) {

    /** One rail. */
    @Schema(description = "One rail.")
    public record Rail(
            @Schema(description = "What it is called, such as `left`.") @Size(max = 200) @Nullable
            String name,

            @Schema(description = "Its section.") @Valid @Nullable
            Tube section,

            @Schema(
                    description =
                            "Its steel, for yield and tensile strength by the table; in place of `yieldStrength`.")
            @Nullable
            SteelGrade grade,

            @Schema(description = "Its yield strength, from a mill certificate, in place of `grade`.")
            @Within(min = 50, max = 1500, unit = "MPa")
            @Nullable
            Stress yieldStrength,

            @Schema(
                    description =
                            "Its least tensile strength, for welds; with `yieldStrength`, or where the table of grades has none. Correlation factor 1.0 unless the grade has its own.")
            @Within(min = 100, max = 2000, unit = "MPa")
            @Nullable
            Stress tensileStrength,

            @Schema(
                    description =
                            "Its middle to the right of the centre plane; negative to the left. May be left out of one or two rails where every load is in the middle.")
            @Within(min = -2, max = 2, unit = "m")
            @Nullable
            Length y,

            @Schema(description = "Opaque text of the sender; echoed in results.") @Size(max = 200) @Nullable
            String reference) {}

    /** A hollow section. */
    @Schema(description = "A hollow section as it stands in the vehicle.")
    public record Tube(
            @Schema(description = "Its shape.") @Nullable TubeShape shape,

            @Schema(description = "Outer width, across; the side of a square, the outer diameter of a round tube.")
            @Within(min = 0.005, max = 0.5, unit = "m")
            @Nullable
            Length width,

            @Schema(description = "Outer height, upright; of a rectangular tube only.")
            @Within(min = 0.005, max = 0.5, unit = "m")
            @Nullable
            Length height,

            @Schema(description = "Nominal wall.") @Within(min = 0.0005, max = 0.05, unit = "m") @Nullable
            Length wall,

            @Schema(
                    description =
                            "Outer corner radius; sharp corners when left out, which makes the section 3 to 8 % stronger than a real cold-formed one [from memory].")
            @Within(min = 0, max = 0.1, unit = "m")
            @Nullable
            Length cornerRadius,

            @Schema(
                    description =
                            "Share by which the real wall may be under nominal, 0 to 0.5; 0.1 for ASTM A500, else 0 when left out.")
            @DecimalMin("0")
            @DecimalMax("0.5")
            @Nullable
            Double wallUnderShare) {}

    /** A box hung behind the last crossmember. */
    @Schema(
            description =
                    "A box hung behind the last crossmember, such as a battery cradle. Its mass stands for itself: it may also be one of `items`.")
    public record HungBox(
            @Schema(description = "Mass of the box with all that is in it.")
            @Within(min = 0.1, max = 2000, unit = "kg")
            @Nullable
            Mass mass,

            @Schema(description = "Its centre of gravity behind the last crossmember.")
            @Within(min = 0, max = 3, unit = "m")
            @Nullable
            Length arm,

            @Schema(
                    description =
                            "Its centre of gravity to the right of the centre plane; in the middle when left out.")
            @Within(min = -2, max = 2, unit = "m")
            @Nullable
            Length y,

            @Schema(
                    description =
                            "Distance from the last crossmember forward to the next place that holds the rails; the rails then rest on both and turn at the last one. Built in at the last crossmember when left out.")
            @Within(min = 0, max = 5, unit = "m")
            @Nullable
            Length backSpan,

            @ArraySchema(
                    arraySchema =
                            @Schema(
                                    description =
                                            "Where it is tied to every rail: at most two places, which statics can solve. Without ties its weight acts at its centre."))
            @Size(max = 2)
            @Nullable
            List<@Valid Tie> ties,

            @Schema(description = "A propping tube under every rail.") @Valid @Nullable
            Prop prop) {}

    /** A place where the box is tied to the rails. */
    @Schema(description = "A place where the box is tied to every rail.")
    public record Tie(
            @Schema(description = "What it is called.") @Size(max = 200) @Nullable
            String name,

            @Schema(description = "Behind the last crossmember.") @Within(min = 0, max = 3, unit = "m") @Nullable
            Length x,

            @Schema(description = "The fillet weld that holds it to each rail.") @Valid @Nullable
            Weld weld) {}

    /** A fillet weld. */
    @Schema(description = "A fillet weld: 0.7 of its leg is its throat.")
    public record Weld(
            @Schema(description = "Throat: the least thickness through the weld.")
            @Within(min = 0.001, max = 0.03, unit = "m")
            @Nullable
            Length throat,

            @Schema(description = "Whole length of the seams at this tie on one rail, ends included.")
            @Within(min = 0.005, max = 2, unit = "m")
            @Nullable
            Length length) {}

    /** A propping tube. */
    @Schema(description = "A tube under every rail, taken as pinned at both ends.")
    public record Prop(
            @Schema(description = "Where it meets the rail, behind the last crossmember.")
            @Within(min = 0.02, max = 3, unit = "m")
            @Nullable
            Length x,

            @Schema(
                    description =
                            "Its foot, behind the last crossmember; negative ahead of it. Below the last crossmember when left out.")
            @Within(min = -3, max = 3, unit = "m")
            @Nullable
            Length footX,

            @Schema(description = "How far its foot lies below the rail; negative for a tie rod from above.")
            @Within(min = -2, max = 2, unit = "m")
            @Nullable
            Length drop,

            @Schema(description = "Its section; a prop that does not give when left out.") @Valid @Nullable
            Tube section,

            @Schema(description = "Its steel, in place of `yieldStrength`.") @Nullable
            SteelGrade grade,

            @Schema(description = "Its yield strength, in place of `grade`.")
            @Within(min = 50, max = 1500, unit = "MPa")
            @Nullable
            Stress yieldStrength) {}

    /** An insert between the axles. */
    @Schema(
            description =
                    "An insert that makes the wheelbase longer. `chassis/wheelbase` is the one before, unless `wheelbaseBefore` is sent and says that it is the one after.")
    public record Stretch(
            @Schema(description = "Length of the insert; negative when the frame was shortened.")
            @Within(min = -2, max = 5, unit = "m")
            @Nullable
            Length lengthAdded,

            @Schema(description = "Wheelbase before; `chassis/wheelbase` when left out.")
            @Within(min = 0.5, max = 10, unit = "m")
            @Nullable
            Length wheelbaseBefore,

            @Schema(description = "Where the frame was cut, behind the front axle; midway when left out.")
            @Within(min = 0, max = 10, unit = "m")
            @Nullable
            Length cutX,

            @Schema(description = "Mass spread evenly from axle to axle, after.")
            @Within(min = 0, max = 10_000, unit = "kg")
            @Nullable
            Mass distributedMass,

            @Schema(description = "Its centre to the right of the centre plane; in the middle when left out.")
            @Within(min = -2, max = 2, unit = "m")
            @Nullable
            Length distributedY,

            @ArraySchema(arraySchema = @Schema(description = "Masses at places between the axles, after."))
            @Size(max = 50)
            @Nullable
            List<@Valid PointMass> pointMasses,

            @Schema(
                    description =
                            "Steering angle of the outer front wheel at full lock, where `chassis/turningRadius` is not measured.")
            @Within(min = 5, max = 80, unit = "deg")
            @Nullable
            Angle steeringAngle) {}

    /** A mass on the rails between the axles. */
    @Schema(description = "A mass on the rails between the axles.")
    public record PointMass(
            @Schema(description = "What it is.") @Size(max = 200) @Nullable
            String name,

            @Schema(description = "Its mass.") @Within(min = 0.001, max = 10_000, unit = "kg") @Nullable
            Mass mass,

            @Schema(description = "Behind the front axle, after; not beyond the rear axle.")
            @Within(min = 0, max = 15, unit = "m")
            @Nullable
            Length x,

            @Schema(description = "To the right of the centre plane; in the middle when left out.")
            @Within(min = -2, max = 2, unit = "m")
            @Nullable
            Length y) {}
}

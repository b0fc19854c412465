package org.axlewright.api.frame;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.axlewright.domain.quantity.Angle;
import org.axlewright.domain.quantity.Area;
import org.axlewright.domain.quantity.Force;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.Stress;
import org.axlewright.domain.quantity.Torque;
import org.jspecify.annotations.Nullable;

/** What the rails bear. */
@Schema(
        description =
                "What the rails bear under the dynamic load factors, what the box must be held with, and what a stretch did. Elastic beam sums: no approval, and never an answer on fatigue.")
public record FrameOverhangResult(
        @Schema(description = "The rail and case with the least left of its strength: look here first.") @Nullable
        WorstRail worstRail,

        @Schema(description = "The box hung behind the last crossmember.") @Nullable
        OverhangLoads overhang,

        @Schema(description = "The longer wheelbase.") @Nullable
        StretchLoads stretch,

        @Schema(description = "One wheel lifted: the frame twists between the axles.") @Nullable
        TorsionLoads torsion,

        @Schema(description = "What the box must be held with, case by case; only one case at a time.") @Nullable
        List<HoldDownForce> holdDown,

        @Schema(description = "The sections as calculated with.")
        List<RailSection> sections,

        @Schema(description = "What this never answers, and why.")
        List<NotAssessed> notAssessed) {

    /** The rail to look at first. */
    @Schema(
            description =
                    "The rail and case with the highest utilisation; with the highest stress where the strength of a rail is not known.")
    public record WorstRail(
            @Schema(description = "Name of the rail, its number in the list when it has none.")
            String name,

            @Schema(description = "`overhang`, `stretch` or `torsion`.")
            String in,

            @Schema(description = "Equivalent stress (von Mises), MPa or psi.")
            Stress equivalentStress,

            @Schema(description = "Yield strength over the equivalent stress.") @Nullable
            Double safetyFactor,

            @Schema(
                    description =
                            "Share of the strength used, with the safety factor asked for; above 1 it is not there.")
            @Nullable
            Double utilisation) {}

    /** The hung box. */
    @Schema(description = "The box hung behind the last crossmember, with the dynamic factor.")
    public record OverhangLoads(
            @Schema(
                    description =
                            "Moment of the box about the last crossmember, all rails together, a prop left out; Nm or lbf.ft.")
            Torque moment,

            @Schema(description = "Weight of the box with the dynamic factor, N or lbf.")
            Force shear,

            @Schema(description = "Vertical load factor used.")
            double dynamicFactor,

            @Schema(description = "Each rail.") List<OverhangRail> rails) {}

    /** One rail under the hung box. */
    @Schema(description = "One rail under the hung box.")
    public record OverhangRail(
            @Schema(description = "Name of the rail, its number in the list when it has none.")
            String name,

            @Schema(description = "As sent.") @Nullable String reference,

            @Schema(
                    description =
                            "Share of the box's weight on this rail, by moments about the rails; negative when the box lifts it.")
            double share,

            @Schema(description = "Largest bending moment; positive stretches the top, Nm or lbf.ft.")
            Torque moment,

            @Schema(description = "Where, behind the last crossmember; m or in.")
            Length momentAt,

            @Schema(description = "Largest shear force, N or lbf.")
            Force shear,

            @Schema(description = "Bending stress at the largest moment, MPa or psi.")
            Stress bendingStress,

            @Schema(description = "Pull along the rail from the prop, tension positive, MPa or psi; 0 without a prop.")
            Stress axialStress,

            @Schema(description = "Shear force over the upright walls, MPa or psi.")
            Stress averageShearStress,

            @Schema(description = "Shear stress at mid-height, MPa or psi.")
            Stress peakShearStress,

            @Schema(description = "Torque from a box beside a single rail, Nm or lbf.ft.") @Nullable
            Torque torque,

            @Schema(description = "Shear stress from that torque, MPa or psi.") @Nullable
            Stress torsionStress,

            @Schema(description = "Twist at the rearmost load, deg.") @Nullable
            Angle twist,

            @Schema(
                    description =
                            "How far the rail comes down at its rearmost load, mm or in, dynamic factor included.")
            Length deflection,

            @Schema(description = "Equivalent stress (von Mises), MPa or psi.")
            Stress equivalentStress,

            @Schema(description = "Yield strength over the equivalent stress.") @Nullable
            Double safetyFactor,

            @Schema(
                    description =
                            "Share of the strength used, with the safety factor asked for; above 1 it is not there.")
            @Nullable
            Double utilisation,

            @Schema(description = "What each tie passes to this rail.")
            List<TieLoad> ties,

            @Schema(description = "What the prop under this rail carries.") @Nullable
            PropLoad prop) {}

    /** A tie. */
    @Schema(description = "What a tie passes to one rail.")
    public record TieLoad(
            @Schema(description = "Name of the tie as sent.") @Nullable
            String name,

            @Schema(description = "Force on the rail, down positive, N or lbf.")
            Force force,

            @Schema(
                    description =
                            "Stress in the throat of the weld, MPa or psi: EN 1993-1-8, simplified method, ends of a throat's length left out.")
            @Nullable
            Stress throatStress,

            @Schema(description = "Design strength of the weld, MPa or psi.") @Nullable
            Stress allowableStress,

            @Schema(description = "Throat stress over design strength.") @Nullable
            Double utilisation) {}

    /** A prop. */
    @Schema(description = "What the prop under one rail carries.")
    public record PropLoad(
            @Schema(description = "Force in it, pressed positive, N or lbf.")
            Force force,

            @Schema(description = "Stress in it, MPa or psi.") @Nullable
            Stress stress,

            @Schema(description = "Force at which it buckles, pinned at both ends, N or lbf.") @Nullable
            Force bucklingForce,

            @Schema(description = "Share of what it bears, with the safety factor asked for.") @Nullable
            Double utilisation) {}

    /** The longer wheelbase. */
    @Schema(description = "What the insert did to the rails between the axles, to the turning circle and over a crest.")
    public record StretchLoads(
            @Schema(description = "Wheelbase, m or in.") StretchLength wheelbase,

            @Schema(description = "Deflection now over before under the same load per length: the fourth power.")
            double uniformLoadFactor,

            @Schema(
                    description =
                            "Deflection now over before under the same load at the same share of the span: the third power.")
            double pointLoadFactor,

            @Schema(description = "Turning radius of the outer front wheel at the same steering angle, m or in.")
            @Nullable
            StretchLength turningRadius,

            @Schema(description = "How much the rear wheels cut in at full lock, m or in.") @Nullable
            StretchLength offTracking,

            @Schema(
                    description =
                            "Ramp-breakover angle as the vehicle stands now, lift included, deg: by the tangent to both tyres.")
            @Nullable
            StretchAngle breakoverAngle,

            @Schema(description = "The same from under the wheel centres, deg.") @Nullable
            StretchAngle simpleBreakoverAngle,

            @Schema(description = "Each rail, simply supported at the axles.") @Nullable
            List<StretchRail> rails) {}

    /** A length before and after. */
    @Schema(description = "A length before and after the stretch, m or in.")
    public record StretchLength(
            @Schema(description = "Before.") Length before,
            @Schema(description = "After.") Length after) {}

    /** An angle before and after. */
    @Schema(description = "An angle before and after the stretch, deg.")
    public record StretchAngle(
            @Schema(description = "Before.") Angle before,
            @Schema(description = "After.") Angle after) {}

    /** One rail between the axles. */
    @Schema(description = "One rail between the axles, with the dynamic factor.")
    public record StretchRail(
            @Schema(description = "Name of the rail, its number in the list when it has none.")
            String name,

            @Schema(description = "As sent.") @Nullable String reference,

            @Schema(description = "Load on this rail, N or lbf.")
            Force load,

            @Schema(description = "Largest bending moment, Nm or lbf.ft.")
            Torque moment,

            @Schema(description = "Where, behind the front axle; m or in.")
            Length momentAt,

            @Schema(description = "Largest bending moment before the stretch, the same mass per length.")
            Torque momentBefore,

            @Schema(description = "The larger moment at the two joints of the insert.")
            Torque jointMoment,

            @Schema(description = "Largest shear force, N or lbf.")
            Force shear,

            @Schema(description = "Bending stress at the largest moment, MPa or psi.")
            Stress bendingStress,

            @Schema(description = "Bending stress at the joint, of the bare section, MPa or psi.")
            Stress jointBendingStress,

            @Schema(description = "Shear force over the upright walls, MPa or psi.")
            Stress averageShearStress,

            @Schema(description = "Shear stress at mid-height, MPa or psi.")
            Stress peakShearStress,

            @Schema(description = "Largest deflection, mm or in, dynamic factor included.")
            Length deflection,

            @Schema(description = "Largest deflection before the stretch, the same mass per length.")
            Length deflectionBefore,

            @Schema(description = "Equivalent stress (von Mises), MPa or psi.")
            Stress equivalentStress,

            @Schema(description = "Yield strength over the equivalent stress.") @Nullable
            Double safetyFactor,

            @Schema(
                    description =
                            "Share of the strength used, with the safety factor asked for; above 1 it is not there.")
            @Nullable
            Double utilisation) {}

    /** One wheel lifted. */
    @Schema(
            description =
                    "One wheel of the lighter axle over a bump, the other in the air: the rails alone hold the twist.")
    public record TorsionLoads(
            @Schema(description = "The axle that stands on one wheel: `front` or `rear`.")
            String axle,

            @Schema(description = "Couple on the frame, Nm or lbf.ft, torsion factor included.")
            Torque torque,

            @Schema(description = "Torsion factor used.") double torsionFactor,

            @Schema(description = "Length that twists: the wheelbase, m or in.")
            Length length,

            @Schema(description = "Twist between the axles, deg; crossmembers make it less.")
            Angle twist,

            @Schema(description = "Each rail.") List<TorsionRail> rails) {}

    /** One rail of the twisted frame. */
    @Schema(description = "One rail of the twisted frame.")
    public record TorsionRail(
            @Schema(description = "Name of the rail, its number in the list when it has none.")
            String name,

            @Schema(description = "As sent.") @Nullable String reference,

            @Schema(description = "Torque in it, Nm or lbf.ft.")
            Torque torque,

            @Schema(description = "Shear stress in its wall, MPa or psi.")
            Stress shearStress,

            @Schema(description = "Twist between the axles, deg; all rails twist alike.")
            Angle twist,

            @Schema(description = "Equivalent stress (von Mises), MPa or psi.")
            Stress equivalentStress,

            @Schema(description = "Yield strength over the equivalent stress.") @Nullable
            Double safetyFactor,

            @Schema(
                    description =
                            "Share of the strength used, with the safety factor asked for; above 1 it is not there.")
            @Nullable
            Double utilisation) {}

    /** What the box must be held with. */
    @Schema(description = "What the box must be held with in one case.")
    public record HoldDownForce(
            @Schema(
                    description =
                            "`forward`, `rearward`, `sideways`: road freight; `braking`, `cornering`, `kerb`: vehicle structures; `bump`: up and down by the vertical load factor.")
            String in,

            @Schema(description = "Multiple of its weight.") double factor,
            @Schema(description = "The force, N or lbf.") Force force,

            @Schema(description = "Where the factor comes from.")
            String source) {}

    /** A section. */
    @Schema(description = "A rail's section as calculated with; its moduli stand in the working.")
    public record RailSection(
            @Schema(description = "Name of the rail, its number in the list when it has none.")
            String name,

            @Schema(description = "Wall calculated with, mm or in.")
            Length wall,

            @Schema(description = "Area of the section, mm2.")
            Area area,

            @Schema(description = "Least yield strength used, MPa or psi.") @Nullable
            Stress yieldStrength) {}

    /** What this never answers. */
    @Schema(description = "What this never answers, and why.")
    public record NotAssessed(
            @Schema(description = "What: `fatigue`, `cage-strength`, `crossmembers`, `impact`.")
            String what,

            @Schema(description = "Why.") String why) {}
}

package org.axlewright.domain.braking;

import static org.axlewright.domain.quantity.Dimension.ACCELERATION;
import static org.axlewright.domain.quantity.Dimension.ANGLE;
import static org.axlewright.domain.quantity.Dimension.FORCE;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.MASS;
import static org.axlewright.domain.quantity.Dimension.NONE;

import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.axles.Stance;
import org.axlewright.domain.quantity.Constants;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * What a brake that acts through the motor does to the vehicle with every other brake off: regeneration, or a spring-applied brake on
 * the motor shaft. It reaches the driven axle only, so it has that axle's grip and no more.
 *
 * @param wantedN force at the ground that the motor asks for, N
 * @param forceN force that the tyres pass on, N
 * @param limit what bounds it
 * @param frictionNeeded friction that the wanted force takes; null when the axle would leave the ground first or is not known
 * @param gripN what the tyres of the axle could pass on before they slide or the rear wheels lift, N; null without friction or position
 * @param decelerationMPS2 slowing down, m/s²; negative where the hill pulls harder
 * @param distanceM to a standstill, m; null without speed or where it does not stop
 */
public record Retarder(
        double wantedN,
        double forceN,
        RetarderLimit limit,
        @Nullable Double frictionNeeded,
        @Nullable Double gripN,
        double decelerationMPS2,
        @Nullable Double distanceM) {

    private static final Source MOMENTS =
            Source.published("Jazar, Vehicle Dynamics, ch. 2, eq. 2.121 and 2.122, for the axle that brakes");

    private static final Step NEEDED_REAR = needed("rear", "μ = F·L/(m·g·x·cos θ − h·F)");
    private static final Step NEEDED_FRONT = needed("front", "μ = F·L/(m·g·(L − x)·cos θ + h·F)");
    private static final Step NEEDED_ALL = needed("both axles", "μ = F/(m·g·cos θ)");

    private static final Step TIPS = Step.of(
            "F_t",
            "retarding force at which the rear wheels leave the ground",
            "F_t = m·g·x·cos θ/h",
            FORCE,
            MOMENTS,
            new Symbol("m", MASS),
            new Symbol("g", ACCELERATION),
            new Symbol("x", LENGTH),
            new Symbol("h", LENGTH),
            new Symbol("θ", ANGLE));

    private static Step needed(String axle, String formula) {
        return Step.of(
                "μ",
                "friction that a brake through the motor takes, " + axle,
                formula,
                NONE,
                MOMENTS,
                new Symbol("F", FORCE),
                new Symbol("L", LENGTH),
                new Symbol("m", MASS),
                new Symbol("g", ACCELERATION),
                new Symbol("x", LENGTH),
                new Symbol("h", LENGTH),
                new Symbol("θ", ANGLE));
    }

    /** Whether the wheels of the axle lock or slide. */
    public boolean locks() {
        return limit == RetarderLimit.TYRES;
    }

    static Retarder of(
            double massKg,
            @Nullable Stance stance,
            AxleSet axle,
            double wantedN,
            RetarderLimit ownLimit,
            @Nullable Double friction,
            double gradeRad,
            @Nullable Double speedMPS,
            Trace trace) {
        Double gripN = null;
        if (friction != null && stance != null) {
            gripN = Math.min(
                    stance.brakeLimitN(axle, friction, gradeRad, trace),
                    axle == AxleSet.REAR ? Double.POSITIVE_INFINITY : tippingN(stance, gradeRad, trace));
        } else if (friction != null && axle == AxleSet.ALL) {
            gripN = friction * massKg * Constants.STANDARD_GRAVITY * Math.cos(gradeRad);
        }
        double forceN = gripN == null ? wantedN : Math.min(gripN, wantedN);
        boolean slides = forceN < wantedN;
        double deceleration = forceN / massKg + Constants.STANDARD_GRAVITY * Math.sin(gradeRad);
        return new Retarder(
                wantedN,
                forceN,
                slides ? RetarderLimit.TYRES : ownLimit,
                frictionNeeded(massKg, stance, axle, wantedN, gradeRad, trace),
                gripN,
                deceleration,
                speedMPS == null || !(deceleration > Braking.LEAST_DECELERATION)
                        ? null
                        : (Double) (speedMPS * speedMPS / (2 * deceleration)));
    }

    private static double tippingN(Stance stance, double gradeRad, Trace trace) {
        double forceN = stance.weightN() * Math.cos(gradeRad) * Math.max(0, stance.xM()) / stance.heightM();
        return trace.note(TIPS, forceN, stance.massKg(), stance.gravity(), stance.xM(), stance.heightM(), gradeRad);
    }

    /** Friction that a retarding force on these axles takes; null when there is no position, or the axle would leave the ground first. */
    static @Nullable Double frictionNeeded(
            double massKg, @Nullable Stance stance, AxleSet axle, double forceN, double gradeRad, Trace trace) {
        double weightN = massKg * Constants.STANDARD_GRAVITY * Math.cos(gradeRad);
        if (axle == AxleSet.ALL) {
            return stance == null
                    ? (Double) (forceN / weightN)
                    : (Double) noted(NEEDED_ALL, forceN / weightN, stance, forceN, gradeRad, trace);
        }
        if (stance == null) {
            return null;
        }
        boolean rear = axle == AxleSet.REAR;
        double momentNm = rear
                ? weightN * stance.xM() - stance.heightM() * forceN
                : weightN * (stance.wheelbaseM() - stance.xM()) + stance.heightM() * forceN;
        double least = 1e-6 * weightN * stance.wheelbaseM();
        if (!(momentNm > least)) {
            return null;
        }
        return noted(
                rear ? NEEDED_REAR : NEEDED_FRONT,
                forceN * stance.wheelbaseM() / momentNm,
                stance,
                forceN,
                gradeRad,
                trace);
    }

    private static double noted(Step step, double value, Stance stance, double forceN, double gradeRad, Trace trace) {
        return trace.note(
                step,
                value,
                forceN,
                stance.wheelbaseM(),
                stance.massKg(),
                stance.gravity(),
                stance.xM(),
                stance.heightM(),
                gradeRad);
    }
}

package org.axlewright.domain.mass;

import static org.axlewright.domain.quantity.Constants.STANDARD_GRAVITY;
import static org.axlewright.domain.quantity.Dimension.ACCELERATION;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.LOAD;
import static org.axlewright.domain.quantity.Dimension.MASS;
import static org.axlewright.domain.quantity.Dimension.NONE;

import org.axlewright.domain.axles.PointMass;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * The ways in which the weight of the bare vehicle is known. Each gives its mass and the position of its centre of gravity in plan.
 * Valid with the vehicle level, brakes off and wheels straight.
 */
public sealed interface Weighing {

    /** Mass and plan position; y is null where the weighing does not tell it. */
    PointMass inPlan(double wheelbaseM, @Nullable Tracks tracks, Trace trace);

    /** Centre of gravity to the right of the centre plane, m, or null where the weighing itself does not tell it. */
    default @Nullable Double yM() {
        return null;
    }

    /** Load on the left wheels, N, or null where the weighing does not tell it. */
    default @Nullable Double leftLoadN() {
        return null;
    }

    /** Tyre centre to tyre centre at both axles, m. */
    record Tracks(double frontM, double rearM) {
        public Tracks {
            Check.positive(frontM, "front track");
            Check.positive(rearM, "rear track");
        }

        /** Track at a station between the axles, m; straight lines join the wheels; outside the axles that of the nearer axle. */
        double atM(double xM, double wheelbaseM) {
            return frontM + (rearM - frontM) * Math.min(1, Math.max(0, xM / wheelbaseM));
        }
    }

    Source LECTURE_NOTES = Source.published("vehicle-dynamics lecture notes, plan position from wheel scales");

    Step MASS_FROM_LOADS = Step.of(
            "m₀",
            "mass of the bare vehicle",
            "m₀ = (W_f + W_r)/g",
            MASS,
            Source.published("CGPM 1901, standard gravity; NIST SP 811 (2008) B.8"),
            new Symbol("W_f", LOAD),
            new Symbol("W_r", LOAD),
            new Symbol("g", ACCELERATION));

    Step X_FROM_LOADS = Step.of(
            "x₀",
            "centre of gravity of the bare vehicle behind the front axle",
            "x₀ = L·W_r/(W_f + W_r)",
            LENGTH,
            LECTURE_NOTES,
            new Symbol("L", LENGTH),
            new Symbol("W_f", LOAD),
            new Symbol("W_r", LOAD));

    Step Y_FROM_SCALES = Step.of(
            "y₀",
            "centre of gravity of the bare vehicle to the right of the centre plane",
            "y₀ = [(W_FR − W_FL)·t_f + (W_RR − W_RL)·t_r]/(2·W)",
            LENGTH,
            Source.derived(
                    "moments about the centre plane; with equal tracks the form of the vehicle-dynamics lecture notes"),
            new Symbol("W_FL", LOAD),
            new Symbol("W_FR", LOAD),
            new Symbol("W_RL", LOAD),
            new Symbol("W_RR", LOAD),
            new Symbol("t_f", LENGTH),
            new Symbol("t_r", LENGTH),
            new Symbol("W", LOAD));

    Step X_FROM_SHARE = Step.of(
            "x₀",
            "centre of gravity of the bare vehicle behind the front axle",
            "x₀ = L·(1 − s_f)",
            LENGTH,
            LECTURE_NOTES,
            new Symbol("L", LENGTH),
            new Symbol("s_f", NONE));

    private static PointMass fromAxleLoads(
            double frontN, double rearN, double wheelbaseM, @Nullable Double yM, Trace trace) {
        double massKg =
                trace.note(MASS_FROM_LOADS, (frontN + rearN) / STANDARD_GRAVITY, frontN, rearN, STANDARD_GRAVITY);
        double xM = trace.note(X_FROM_LOADS, wheelbaseM * rearN / (frontN + rearN), wheelbaseM, frontN, rearN);
        return new PointMass(massKg, xM, yM, null);
    }

    /** Four scales, N. */
    record Scales(double frontLeftN, double frontRightN, double rearLeftN, double rearRightN) implements Weighing {
        public Scales {
            Check.positive(
                    Check.notNegative(frontLeftN, "front left")
                            + Check.notNegative(frontRightN, "front right")
                            + Check.notNegative(rearLeftN, "rear left")
                            + Check.notNegative(rearRightN, "rear right"),
                    "sum of the scales");
        }

        double totalN() {
            return frontLeftN + frontRightN + rearLeftN + rearRightN;
        }

        @Override
        public PointMass inPlan(double wheelbaseM, @Nullable Tracks tracks, Trace trace) {
            Double yM = tracks == null
                    ? null
                    : trace.note(
                            Y_FROM_SCALES,
                            ((frontRightN - frontLeftN) * tracks.frontM() + (rearRightN - rearLeftN) * tracks.rearM())
                                    / (2 * totalN()),
                            frontLeftN,
                            frontRightN,
                            rearLeftN,
                            rearRightN,
                            tracks.frontM(),
                            tracks.rearM(),
                            totalN());
            return fromAxleLoads(frontLeftN + frontRightN, rearLeftN + rearRightN, wheelbaseM, yM, trace);
        }

        @Override
        public Double leftLoadN() {
            return frontLeftN + rearLeftN;
        }

        /** Share of the diagonal front-left plus rear-right. */
        double crossShare() {
            return (frontLeftN + rearRightN) / totalN();
        }
    }

    /** Two axle loads, N. */
    record AxleLoads(double frontN, double rearN, @Nullable Double yM) implements Weighing {
        public AxleLoads {
            Check.positive(
                    Check.notNegative(frontN, "front axle") + Check.notNegative(rearN, "rear axle"),
                    "sum of the axles");
        }

        @Override
        public PointMass inPlan(double wheelbaseM, @Nullable Tracks tracks, Trace trace) {
            return fromAxleLoads(frontN, rearN, wheelbaseM, yM, trace);
        }
    }

    /** Mass, kg, and the share of it on the front axle. */
    record FrontShare(
            double massKg, double frontShare, @Nullable Double yM) implements Weighing {
        public FrontShare {
            Check.positive(massKg, "mass");
            Check.within(frontShare, 0, 1, "front share");
        }

        @Override
        public PointMass inPlan(double wheelbaseM, @Nullable Tracks tracks, Trace trace) {
            double xM = trace.note(X_FROM_SHARE, wheelbaseM * (1 - frontShare), wheelbaseM, frontShare);
            return new PointMass(massKg, xM, yM, null);
        }
    }

    /** Mass, kg, and position, m, as given. */
    record Placed(double massKg, double xM, @Nullable Double yM) implements Weighing {
        public Placed {
            Check.positive(massKg, "mass");
        }

        @Override
        public PointMass inPlan(double wheelbaseM, @Nullable Tracks tracks, Trace trace) {
            return new PointMass(massKg, xM, yM, null);
        }
    }
}

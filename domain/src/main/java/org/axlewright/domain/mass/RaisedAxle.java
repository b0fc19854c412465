package org.axlewright.domain.mass;

import static org.axlewright.domain.quantity.Dimension.ANGLE;
import static org.axlewright.domain.quantity.Dimension.CLEARANCE;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.LOAD;

import org.axlewright.domain.axles.Axle;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.quantity.Constants;
import org.axlewright.domain.trace.Caution;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;

/**
 * Height of the centre of gravity from a second weighing with one axle raised. Springs blocked solid, brakes off, fluids unable to
 * shift; unblocked springs are the largest error.
 *
 * @param raised the axle that was raised
 * @param riseM rise of its wheel centres over those of the other axle, compared with the level weighing, m; less than {@link #maximumRiseM}
 * @param otherLoadN what the axle that stays down shows while the other is raised, N
 * @param frontRadiusM loaded radius of the front wheels, m
 * @param rearRadiusM loaded radius of the rear wheels, m
 */
public record RaisedAxle(Axle raised, double riseM, double otherLoadN, double frontRadiusM, double rearRadiusM) {

    private static final Source METHOD = Source.published(
            "vehicle-dynamics lecture notes, axle raised by more than 15 degrees; repeatability in UMTRI-91-4");

    private static final Source UNEQUAL_RADII = Source.derived(
            "rigid vehicle turned about its wheel centres; the form of the lecture notes when the radii match");

    private static final Step ANGLE_OF_WHEELBASE = Step.of(
            "α",
            "turn of the vehicle in the raised weighing",
            "α = asin[(H + δ)/√(L² + δ²)] − atan(δ/L), δ the loaded radius of the raised axle less that of the other",
            ANGLE,
            UNEQUAL_RADII,
            new Symbol("H", LENGTH),
            new Symbol("δ", LENGTH),
            new Symbol("L", LENGTH));

    private static final Step HEIGHT = Step.of(
            "z₀",
            "height of the centre of gravity of the bare vehicle",
            "z₀ = r_f·(L − x₀)/L + r_r·x₀/L + (L − δ·tan α)·(W′ − W₁)/(W·tan α)",
            LENGTH,
            UNEQUAL_RADII,
            new Symbol("r_f", LENGTH),
            new Symbol("r_r", LENGTH),
            new Symbol("x₀", LENGTH),
            new Symbol("L", LENGTH),
            new Symbol("δ", LENGTH),
            new Symbol("W′", LOAD),
            new Symbol("W₁", LOAD),
            new Symbol("W", LOAD),
            new Symbol("α", ANGLE));

    private static final Step SCALE_ERROR = Step.of(
            "Δz",
            "change of that height for one kilogram on the scale",
            "Δz = (L − δ·tan α)·ΔW/(W·tan α)",
            CLEARANCE,
            Source.derived("derivative of the height by the raised reading"),
            new Symbol("L", LENGTH),
            new Symbol("δ", LENGTH),
            new Symbol("ΔW", LOAD),
            new Symbol("W", LOAD),
            new Symbol("α", ANGLE));

    private static final Caution BLOCKED_SPRINGS = new Caution(
            "blocked-springs",
            "Block the springs solid, release the brakes, chock the wheels that stay down sideways only, and keep everybody"
                    + " out from under and beside the raised vehicle. Unblocked springs are the largest error of this method.");

    private static final double TRUSTED_ANGLE = Math.toRadians(15);
    private static final double USELESS_ANGLE = Math.toRadians(10);

    public RaisedAxle {
        Check.positive(riseM, "rise");
        Check.notNegative(otherLoadN, "load of the other axle");
        Check.positive(frontRadiusM, "front radius");
        Check.positive(rearRadiusM, "rear radius");
    }

    /** Loaded radius of the raised axle less that of the other, m. */
    private double radiusDifferenceM() {
        return raised == Axle.REAR ? rearRadiusM - frontRadiusM : frontRadiusM - rearRadiusM;
    }

    /** The rise at which the wheelbase would stand on end, m; a weighing has less. */
    public double maximumRiseM(double wheelbaseM) {
        double delta = radiusDifferenceM();
        return Math.min(wheelbaseM, Math.hypot(wheelbaseM, delta) - delta);
    }

    /**
     * Height of the centre of gravity above the ground, m.
     *
     * @param weightN weight of the vehicle as in the level weighing, N
     * @param xM its centre of gravity behind the front axle, m
     */
    public double heightM(double weightN, double xM, double wheelbaseM, Trace trace) {
        Check.within(riseM, 0, Math.nextDown(maximumRiseM(wheelbaseM)), "rise");
        double delta = radiusDifferenceM();
        double alpha = trace.note(
                ANGLE_OF_WHEELBASE,
                Math.asin((riseM + delta) / Math.hypot(wheelbaseM, delta)) - Math.atan(delta / wheelbaseM),
                riseM,
                delta,
                wheelbaseM);
        double levelN = raised == Axle.REAR ? weightN * (wheelbaseM - xM) / wheelbaseM : weightN * xM / wheelbaseM;
        double perNewton = (wheelbaseM - delta * Math.tan(alpha)) / (weightN * Math.tan(alpha));
        double height = frontRadiusM * (wheelbaseM - xM) / wheelbaseM
                + rearRadiusM * xM / wheelbaseM
                + perNewton * (otherLoadN - levelN);
        trace.note(
                HEIGHT, height, frontRadiusM, rearRadiusM, xM, wheelbaseM, delta, otherLoadN, levelN, weightN, alpha);
        double perKilogram = trace.note(
                SCALE_ERROR,
                perNewton * Constants.STANDARD_GRAVITY,
                wheelbaseM,
                delta,
                Constants.STANDARD_GRAVITY,
                weightN,
                alpha);
        trace.caution(BLOCKED_SPRINGS);
        judge(alpha, perKilogram, trace);
        return height;
    }

    private static void judge(double alpha, double perKilogramM, Trace trace) {
        if (alpha < TRUSTED_ANGLE) {
            boolean useless = alpha < USELESS_ANGLE;
            trace.find(Finding.of(
                            "raised-axle-angle-small",
                            useless ? Level.WARNING : Level.CAUTION,
                            "The raised weighing tilts the wheelbase by {actual} only; below {limit} "
                                    + (useless
                                            ? "the error of the scale rules the height"
                                            : "the height is not to be trusted"),
                            METHOD)
                    .at("/bare/raisedAxle/rise")
                    .actual(new Measure(alpha, ANGLE))
                    .limit(new Measure(useless ? USELESS_ANGLE : TRUSTED_ANGLE, ANGLE))
                    .action("Raise the axle further, weigh at several angles, and take the mean"));
        }
        trace.find(Finding.of(
                        "height-scale-error",
                        Level.NOTICE,
                        "One kilogram on the scale moves the height by {actual}",
                        Source.derived("derivative of the height by the raised reading"))
                .at("/bare/raisedAxle/load")
                .actual(new Measure(perKilogramM, CLEARANCE))
                .action("Read the raised scale several times; it is the reading that decides the height"));
    }
}

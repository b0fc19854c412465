package org.axlewright.domain.stability;

import static org.axlewright.domain.quantity.Dimension.ACCELERATION;
import static org.axlewright.domain.quantity.Dimension.FORCE;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.MASS;

import org.axlewright.domain.check.Check;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;

/** How far springs let a body roll, and the load that a turn moves from the inner to the outer wheels whatever they do. */
public final class Springs {

    static final Source ROLL_GRADIENT = Source.published("Automotive Chassis Engineering, p. 174: roll gradient");

    private static final Step LOAD_TRANSFER = Step.of(
            "ΔW",
            "load that the turn moves from the inner to the outer wheels; from m·a, whatever the springs do",
            "ΔW = m·a·h/t",
            FORCE,
            Source.published("Automotive Chassis Engineering, p. 174: lateral load transfer"),
            new Symbol("m", MASS),
            new Symbol("a", ACCELERATION),
            new Symbol("h", LENGTH),
            new Symbol("t", LENGTH));

    private Springs() {}

    /**
     * Roll of the body for each m/s² of lateral acceleration, rad s²/m: m d/(K − m g d). Infinite where the springs can't hold the body
     * upright at all.
     *
     * @param sprungKg mass on the springs, kg
     * @param armM centre of gravity above the roll axis, m
     * @param stiffness roll stiffness of both axles, N m/rad
     */
    public static double rollGradient(double sprungKg, double armM, double stiffness, double gravity) {
        double left = Check.positive(stiffness, "stiffness") - sprungKg * gravity * armM;
        return left > 0 ? sprungKg * armM / left : Double.POSITIVE_INFINITY;
    }

    /**
     * Roll stiffness of an axle with a spring at each wheel, N m/rad: K = k·t²/2.
     *
     * @param wheelRate of one wheel, N/m
     */
    public static double rollStiffness(double wheelRate, double trackM) {
        return wheelRate * trackM * trackM / 2;
    }

    /** Load moved across an axle or a vehicle, N. */
    public static double loadTransferN(double massKg, double acceleration, double heightM, double trackM, Trace trace) {
        Check.positive(trackM, "track");
        return trace.note(
                LOAD_TRANSFER, massKg * acceleration * heightM / trackM, massKg, acceleration, heightM, trackM);
    }
}

package org.axlewright.domain.towing;

import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.EVENT_TIME;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.POWER;
import static org.axlewright.domain.quantity.Dimension.RESISTANCE;
import static org.axlewright.domain.quantity.Dimension.TORQUE;

import org.axlewright.domain.towing.Tug.Engine;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** What a torque at the shaft does to the motor: its current, its heat against its rating, and how long that goes. */
public final class MotorLoad {

    private static final Source TORQUE_AND_CURRENT = Source.memory(
            "direct-current machine: torque goes with the current at constant field, with its square when the field is in series and not"
                    + " saturated");
    private static final Source HEAT =
            Source.derived("copper loss I²·R, the largest loss at low speed and high torque");

    private static final Step CURRENT_LINEAR = current("I = I_0·T/T_0");
    private static final Step CURRENT_SERIES = current("I = I_0·√(T/T_0)");
    private static final Step HEAT_BY_CURRENT = Step.of(
            "q",
            "copper loss over what the rating allows",
            "q = (I/I_r)²",
            NONE,
            HEAT,
            new Symbol("I", CURRENT),
            new Symbol("I_r", CURRENT));
    private static final Step HEAT_BY_TORQUE = Step.of(
            "q",
            "copper loss over what the rating allows, current in step with torque",
            "q = (T/T_r)²",
            NONE,
            HEAT,
            new Symbol("T", TORQUE),
            new Symbol("T_r", TORQUE));
    private static final Step HEAT_SERIES = Step.of(
            "q",
            "copper loss over what the rating allows, field in series",
            "q = T/T_r",
            NONE,
            HEAT,
            new Symbol("T", TORQUE),
            new Symbol("T_r", TORQUE));
    private static final Step LOSS = Step.of(
            "P_c",
            "heat in the winding",
            "P_c = I²·R",
            POWER,
            HEAT,
            new Symbol("I", CURRENT),
            new Symbol("R", RESISTANCE));
    private static final Step TIME = Step.of(
            "t",
            "longest time from cold by the short-time rating",
            "t = t_r/q",
            EVENT_TIME,
            Source.derived(
                    "same heat put in; what cools away in the longer rated time isn't counted, so the true time is shorter"),
            new Symbol("t_r", EVENT_TIME),
            new Symbol("q", NONE));

    private static Step current(String formula) {
        return Step.of(
                "I",
                "motor current",
                formula,
                CURRENT,
                TORQUE_AND_CURRENT,
                new Symbol("I_0", CURRENT),
                new Symbol("T", TORQUE),
                new Symbol("T_0", TORQUE));
    }

    private MotorLoad() {}

    /**
     * What the motor does; null what isn't known.
     *
     * @param torqueNm at the shaft
     * @param speed rad/s; 0 at the start
     * @param heatRatio copper loss over what the rating allows
     * @param timeS how long a short-time rating bears it, an upper bound; the rated time where the load is lighter
     */
    public record Result(
            double torqueNm,
            double speed,
            @Nullable Double currentA,
            @Nullable Double heatRatio,
            @Nullable Double windingLossW,
            @Nullable Double timeS) {}

    static Result of(Engine engine, double torqueNm, double speedMPS, Trace trace) {
        double torque = Math.max(0, torqueNm);
        Double current = currentA(engine, torque, trace);
        Double heat = heat(engine, torque, current, trace);
        Double loss = current == null || engine.windingOhm() == null
                ? null
                : (Double) trace.note(LOSS, current * current * engine.windingOhm(), current, engine.windingOhm());
        Double time = null;
        if (heat != null && engine.shortTimeS() != null) {
            double rated = engine.shortTimeS();
            time = heat > 1 ? (Double) trace.note(TIME, rated / heat, rated, heat) : (Double) rated;
        }
        return new Result(torqueNm, speedMPS * engine.ratio() / engine.radiusM(), current, heat, loss, time);
    }

    private static @Nullable Double currentA(Engine engine, double torqueNm, Trace trace) {
        Double reference = engine.referenceTorqueNm();
        Double at = engine.referenceCurrentA();
        if (reference == null || at == null) {
            return null;
        }
        return engine.seriesWound()
                ? trace.note(CURRENT_SERIES, at * Math.sqrt(torqueNm / reference), at, torqueNm, reference)
                : trace.note(CURRENT_LINEAR, at * torqueNm / reference, at, torqueNm, reference);
    }

    private static @Nullable Double heat(Engine engine, double torqueNm, @Nullable Double currentA, Trace trace) {
        Double rated = engine.ratedCurrentA();
        if (currentA != null && rated != null) {
            double share = currentA / rated;
            return trace.note(HEAT_BY_CURRENT, share * share, currentA, rated);
        }
        Double ratedTorque = engine.ratedTorqueNm();
        if (ratedTorque == null) {
            return null;
        }
        double share = torqueNm / ratedTorque;
        return engine.seriesWound()
                ? trace.note(HEAT_SERIES, share, torqueNm, ratedTorque)
                : trace.note(HEAT_BY_TORQUE, share * share, torqueNm, ratedTorque);
    }
}

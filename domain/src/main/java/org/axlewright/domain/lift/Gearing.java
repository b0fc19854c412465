package org.axlewright.domain.lift;

import static org.axlewright.domain.check.Check.positive;
import static org.axlewright.domain.quantity.Dimension.CLEARANCE;
import static org.axlewright.domain.quantity.Dimension.NONE;

import org.axlewright.domain.axles.LoadedRadii;
import org.axlewright.domain.quantity.Dimension;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** What another tyre on the driven axle does to speed, pull and a speedometer that nobody corrected. */
public final class Gearing {

    private static final Source ROLLING = Source.derived("one turn of the wheel, one circumference");

    private static final Step SPEED_BY_ROLLOUT = Step.of(
            "f_v",
            "true speed now over true speed before at the same motor speed, rollouts measured",
            "f_v = C'/C",
            NONE,
            ROLLING,
            new Symbol("C'", Dimension.LENGTH),
            new Symbol("C", Dimension.LENGTH));
    private static final Step SPEED_BY_DIAMETER = Step.of(
            "f_v",
            "true speed now over true speed before at the same motor speed, by free diameter",
            "f_v = D'/D",
            NONE,
            ROLLING,
            new Symbol("D'", CLEARANCE),
            new Symbol("D", CLEARANCE));
    private static final Step TRACTION_BY_RADIUS = Step.of(
            "f_F",
            "wheel force now over wheel force before at the same motor torque, loaded radii measured",
            "f_F = r/r'",
            NONE,
            Source.published("NPTEL, Electric Vehicles, week 4: force is wheel torque over wheel radius"),
            new Symbol("r", CLEARANCE),
            new Symbol("r'", CLEARANCE));
    private static final Step TRACTION_BY_POWER = Step.of(
            "f_F",
            "wheel force now over wheel force before at the same motor torque and speed: the same power",
            "f_F = 1/f_v",
            NONE,
            Source.derived("force times speed is the power of the motor less losses"),
            new Symbol("f_v", NONE));
    private static final Step SPEEDOMETER = Step.of(
            "e",
            "share by which the speed shown exceeds the true speed, if it was right before and nobody corrected it",
            "e = 1/f_v − 1",
            NONE,
            ROLLING,
            new Symbol("f_v", NONE));

    private Gearing() {}

    /**
     * The driven tyres before and after; equal when they stay.
     *
     * @param pointer where in the request the tyre now stands
     * @param measured whether {@code rolled} are rollouts, as measured; else free diameters
     * @param rolledBeforeM m
     * @param rolledAfterM m
     * @param measuredRadii loaded radii when both were measured; null otherwise
     */
    public record DrivenTyres(
            String pointer,
            boolean measured,
            double rolledBeforeM,
            double rolledAfterM,
            @Nullable LoadedRadii measuredRadii) {

        public DrivenTyres {
            positive(rolledBeforeM, "rolledBeforeM");
            positive(rolledAfterM, "rolledAfterM");
        }
    }

    /**
     * Factors of the change.
     *
     * @param speedFactor true speed now over before at the same motor speed
     * @param tractionFactor wheel force now over before at the same motor torque
     * @param speedometerError speed shown over true speed, less 1
     */
    public record Result(double speedFactor, double tractionFactor, double speedometerError) {}

    /** Works out the factors. Pure. */
    public static Result of(DrivenTyres input, Trace trace) {
        double speed = trace.note(
                input.measured() ? SPEED_BY_ROLLOUT : SPEED_BY_DIAMETER,
                input.rolledAfterM() / input.rolledBeforeM(),
                input.rolledAfterM(),
                input.rolledBeforeM());
        LoadedRadii radii = input.measuredRadii();
        double traction = radii != null
                ? trace.note(TRACTION_BY_RADIUS, radii.beforeM() / radii.afterM(), radii.beforeM(), radii.afterM())
                : trace.note(TRACTION_BY_POWER, 1 / speed, speed);
        return new Result(speed, traction, trace.note(SPEEDOMETER, 1 / speed - 1, speed));
    }
}

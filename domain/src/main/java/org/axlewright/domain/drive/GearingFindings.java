package org.axlewright.domain.drive;

import static org.axlewright.domain.quantity.Dimension.CLEARANCE;
import static org.axlewright.domain.quantity.Dimension.ROTATION;
import static org.axlewright.domain.quantity.Dimension.SPEED;

import java.util.Objects;
import org.axlewright.domain.drive.Gearing.Display;
import org.axlewright.domain.drive.Gearing.Input;
import org.axlewright.domain.drive.Gearing.Measured;
import org.axlewright.domain.drive.Gearing.MeasuredWheel;
import org.axlewright.domain.drive.Gearing.MotorPlate;
import org.axlewright.domain.drive.Gearing.Result;
import org.axlewright.domain.drive.Gearing.Wheel;
import org.axlewright.domain.motor.MotorType;
import org.axlewright.domain.quantity.Dimension;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Trace;
import org.axlewright.domain.tyre.Speedometer;
import org.jspecify.annotations.Nullable;

/** What stands out in a gearing. */
final class GearingFindings {

    private static final Source ON_THE_ROAD =
            Source.weak("owners' measurements: 97 % of the reckoned speed on two vehicles; 3 to 8 % is usual");
    private static final Source BY_VOLTAGE =
            Source.published("NPTEL, Electric Vehicles: speed without load is proportional to voltage");
    private static final Source SENT = Source.derived("comparison with the limit sent");

    /** Within this share a measured rollout agrees with the reckoned one. */
    private static final double WHEEL_AGREES = 0.03;

    private GearingFindings() {}

    static void find(Input input, Result result, Trace trace) {
        reduction(input.reduction(), "/drive/ratio", trace);
        if (input.before() != null) {
            reduction(input.before().reduction(), "/drive/before/ratio", trace);
        }
        if (input.wheel() != null) {
            rollout(input.wheel(), trace);
        }
        motor(input, result, trace);
        limiter(input, result, trace);
        measured(input, result, trace);
        display(input, result.display(), trace);
    }

    /** That a measured rollout stands in for the one its marking gives, wherever a wheel rolls. */
    static void rollout(Wheel wheel, Trace trace) {
        if (wheel.measured() && wheel.reckonedM() != null) {
            trace.find(Finding.of(
                            "measured-rollout",
                            Level.NOTICE,
                            "Everything is reckoned with the measured rollout of {actual}; by its size the tyre would roll {limit}",
                            Source.derived("measured beats theory"))
                    .at(wheel.pointer() + "/rollout")
                    .actual(new Measure(wheel.rolloutM(), CLEARANCE))
                    .limit(new Measure(wheel.reckonedM(), CLEARANCE)));
        }
    }

    /** How a reduction was read, wherever one is used. */
    static void reduction(@Nullable Reduction reduction, String pointer, Trace trace) {
        if (reduction == null) {
            return;
        }
        if (reduction.teeth() != null) {
            trace.find(Finding.of(
                            "ratio-from-teeth",
                            Level.NOTICE,
                            "Read as {actual} turns of the motor for one turn of the wheel: the larger number over the smaller",
                            Teeth.SOURCE)
                    .at(pointer)
                    .actual(Measure.number(reduction.ratio()))
                    .action("Send the reduction as a number if the wheel turns faster than the motor."));
        } else if (reduction.ratio() < 1) {
            trace.find(Finding.of(
                            "ratio-below-one",
                            Level.CAUTION,
                            "A ratio of {actual} lets the wheel turn faster than the motor; its inverse was probably meant",
                            Source.COMMON_PRACTICE)
                    .at(pointer)
                    .actual(Measure.number(reduction.ratio()))
                    .limit(Measure.number(1))
                    .action("Give turns of the motor for one turn of the wheel."));
        }
    }

    private static void motor(Input input, Result result, Trace trace) {
        MotorPlate motor = input.motor();
        if (motor == null || result.idealMPS() == null || result.fullMotorRadPS() == null) {
            return;
        }
        if (!motor.loaded()) {
            trace.find(Finding.of(
                            "shortfall-on-the-road",
                            Level.NOTICE,
                            "The motor's speed holds without load: 3 to 8 % less than {actual} is normal on the road",
                            ON_THE_ROAD)
                    .at("/drive/motor/loaded")
                    .actual(new Measure(result.idealMPS(), SPEED))
                    .action("Ask drive-performance what the power allows, or send a measured speed."));
            if (motor.type() == MotorType.SERIES_DC) {
                trace.find(
                        Finding.of(
                                        "series-motor-has-no-idle-speed",
                                        Level.WARNING,
                                        "A series motor without load speeds up until it bursts: a speed without load says nothing of the road",
                                        Source.published(
                                                "electrical machines: speed of a series motor as its flux vanishes"))
                                .at("/drive/motor/speed")
                                .action(
                                        "Send its speed under load with `loaded` true; never run it with the wheels off the ground."));
            }
        }
        if (motor.fixed()) {
            trace.find(Finding.of(
                            "field-weakened-speed",
                            Level.NOTICE,
                            "The full speed is the highest the rotor bears, which an alternating-current drive reaches with its field weakened; the power must allow it",
                            Source.published("NPTEL, Electric Vehicles: constant power above the base speed"))
                    .at("/drive/motor/maximumSpeed"));
        } else if (input.packV() != null && motor.statedV() == null) {
            trace.find(Finding.of(
                            "motor-voltage-not-stated",
                            Level.CAUTION,
                            "The motor's speed was taken as stated: nothing says at which voltage it holds",
                            BY_VOLTAGE)
                    .at("/drive/motor/voltage"));
        } else if (input.packV() != null
                && motor.statedV() != null
                && Math.abs(input.packV() / motor.statedV() - 1) > 0.1) {
            trace.find(Finding.of(
                            "speed-scaled-by-voltage",
                            Level.CAUTION,
                            "The motor's speed holds at {limit} and was scaled to the pack's {actual}; controller, motor and pack must allow it",
                            BY_VOLTAGE)
                    .at("/drive/motor/voltage")
                    .actual(new Measure(input.packV(), Dimension.VOLTAGE))
                    .limit(new Measure(motor.statedV(), Dimension.VOLTAGE))
                    .action("Check the highest voltage of the controller and the speed the rotor bears."));
        }
        if (input.maximumRadPS() != null && result.fullMotorRadPS() > input.maximumRadPS()) {
            trace.find(Finding.of(
                            "above-motor-maximum",
                            Level.WARNING,
                            "At the pack's voltage the motor reaches {actual}; its rotor must not pass {limit}",
                            SENT)
                    .at("/drive/motor/maximumSpeed")
                    .actual(new Measure(result.fullMotorRadPS(), ROTATION))
                    .limit(new Measure(input.maximumRadPS(), ROTATION))
                    .action("Set the controller's speed cap below the limit of the rotor."));
        }
        if (result.towMPS() != null && result.towMPS() < 1.25 * result.idealMPS()) {
            trace.find(Finding.of(
                            "towing-passes-rotor-limit",
                            Level.WARNING,
                            "Towed or rolling downhill above {limit} the rotor passes its limit, even with the drive off",
                            SENT)
                    .at("/drive/motor/maximumSpeed")
                    .actual(new Measure(result.idealMPS(), SPEED))
                    .limit(new Measure(result.towMPS(), SPEED))
                    .action("Tow slower, or lift the driven wheels or take the drive shafts out."));
        }
    }

    private static void limiter(Input input, Result result, Trace trace) {
        if (input.speedCapRadPS() != null
                && input.maximumRadPS() != null
                && input.speedCapRadPS() > input.maximumRadPS()) {
            trace.find(Finding.of(
                            "cap-above-motor-maximum",
                            Level.WARNING,
                            "The cap of {actual} is above what the rotor bears, {limit}",
                            SENT)
                    .at("/drive/controller/speedCap")
                    .actual(new Measure(input.speedCapRadPS(), ROTATION))
                    .limit(new Measure(input.maximumRadPS(), ROTATION))
                    .action("Lower the cap."));
        }
        if (input.speedLimitMPS() == null || result.limiter() == null) {
            return;
        }
        if (result.capMPS() != null && result.capMPS() > 1.02 * input.speedLimitMPS()) {
            trace.find(Finding.of(
                            "cap-above-speed-limit",
                            Level.CAUTION,
                            "The controller's cap lets it run {actual}, above the wanted {limit}",
                            Gearing.KINEMATICS)
                    .at("/drive/controller/speedCap")
                    .actual(new Measure(result.capMPS(), SPEED))
                    .limit(new Measure(input.speedLimitMPS(), SPEED))
                    .action("Set the motor speed cap named in the answer."));
        }
        Double share = result.limiter().shareOfFull();
        if (share != null && share > 1) {
            trace.find(Finding.of(
                            "limit-above-ideal-speed",
                            Level.NOTICE,
                            "The limit is {actual} of the motor's full speed: it never acts",
                            Gearing.KINEMATICS)
                    .at("/drive/speedLimit")
                    .actual(Measure.number(share))
                    .limit(Measure.number(1)));
        }
        trace.find(Finding.of(
                        "limiter-gives-way-gradually",
                        Level.NOTICE,
                        "Many limiters fade over a band about their setting: one set to 6 km/h faded out from 3 to 9 km/h; downhill none holds",
                        Source.weak("owner's measurement of a limiter with a band of 3 km/h either side"))
                .at("/drive/speedLimit")
                .action("Check the top speed by satellite and set the limit lower by what it passes over."));
    }

    private static void measured(Input input, Result result, Trace trace) {
        Measured sent = input.measured();
        MeasuredWheel measured = result.measured();
        if (sent != null) {
            packVoltage(input, sent, trace);
        }
        if (sent == null || measured == null) {
            return;
        }
        Double factor = measured.rolloutFactor();
        if (factor != null && measured.calibrates()) {
            trace.find(Finding.of(
                            "rollout-calibrated",
                            Level.NOTICE,
                            "Everything is reckoned with the rollout that the measured speed implies, {actual} in place of {limit}",
                            Source.derived("measured beats theory"))
                    .at("/drive/measured")
                    .actual(new Measure(required(measured.impliedRolloutM()), CLEARANCE))
                    .limit(new Measure(required(input.wheel()).rolloutM(), CLEARANCE)));
        } else if (factor != null && Math.abs(factor - 1) > WHEEL_AGREES) {
            boolean twice = input.reduction() != null
                    && (agrees(factor * input.reduction().ratio())
                            || agrees(factor / input.reduction().ratio()));
            trace.find(
                    Finding.of(
                                    twice ? "ratio-applied-twice" : "wheel-disagrees",
                                    Level.CAUTION,
                                    twice
                                            ? "The measured speed implies a rollout of {actual} in place of {limit}: about the ratio itself between the two, as if it had been applied twice"
                                            : "The measured speed implies a rollout of {actual}, not {limit}: slip, another ratio, another motor speed or a unit is wrong",
                                    Gearing.KINEMATICS)
                            .at("/drive/measured")
                            .actual(new Measure(required(measured.impliedRolloutM()), CLEARANCE))
                            .limit(new Measure(required(input.wheel()).rolloutM(), CLEARANCE))
                            .action(
                                    "Mark the tyre and the floor, roll one turn with the driver aboard and send the rollout; count the teeth."));
        }
        Double share = measured.shareOfIdeal();
        if (factor == null
                && share != null
                && input.reduction() != null
                && agrees(share * input.reduction().ratio())) {
            trace.find(Finding.of(
                            "ratio-applied-twice",
                            Level.CAUTION,
                            "The measured speed is {actual} of the ideal one: too low by about the ratio, as if it had been applied twice",
                            Gearing.KINEMATICS)
                    .at("/drive/measured/speed")
                    .actual(Measure.number(share))
                    .limit(Measure.number(1))
                    .action("Check the unit of the speed and where the ratio was put in."));
        } else if (share != null && share > 1.05) {
            trace.find(Finding.of(
                            "faster-than-ideal",
                            Level.CAUTION,
                            "The measured speed is {actual} of the ideal one: it ran downhill, or tyre, ratio, voltage or motor are not as sent",
                            Gearing.KINEMATICS)
                    .at("/drive/measured/speed")
                    .actual(Measure.number(share))
                    .limit(Measure.number(1)));
        }
    }

    /** What one block connected backwards leaves: two blocks less. */
    private static void packVoltage(Input input, Measured sent, Trace trace) {
        if (sent.packV() == null || input.packV() == null || input.cutOffV() == null) {
            return;
        }
        double volts = sent.packV();
        if (!(volts < input.cutOffV())) {
            return;
        }
        Integer blocks = input.blocks();
        boolean reversed = false;
        if (blocks != null && blocks > 2) {
            double block = input.packV() / blocks;
            reversed = volts > (blocks - 2.25) * block && volts < (blocks - 1.5) * block;
        }
        trace.find(Finding.of(
                        reversed ? "block-may-be-reversed" : "pack-voltage-below-cut-off",
                        Level.WARNING,
                        reversed
                                ? "{actual} is what remains when one block is connected backwards: it counts against the others"
                                : "{actual} is below the end of a discharge, {limit}: an empty pack, a bad block or a bad joint",
                        Source.derived("blocks in series add their voltages, a reversed one subtracts"))
                .at("/drive/measured/voltage")
                .actual(new Measure(volts, Dimension.VOLTAGE))
                .limit(new Measure(input.cutOffV(), Dimension.VOLTAGE))
                .action("Measure every block by itself, polarity included, before the next charge."));
    }

    private static void display(Input input, @Nullable Display display, Trace trace) {
        if (display == null) {
            return;
        }
        Double shown = display.shownShare() != null ? display.shownShare() : display.predictedShare();
        if (shown == null) {
            return;
        }
        switch (display.cause()) {
            case NONE -> {}
            case TYRE ->
                trace.find(Finding.of(
                                "display-wrong-by-tyre",
                                Level.NOTICE,
                                "The display shows {actual} of the true speed: as much as another tyre or ratio makes",
                                Source.weak("owners' cases: 0.8 to 1.3 for a change of tyre"))
                        .at("/drive/speedSensor")
                        .actual(Measure.number(shown)));
            case PULSES ->
                trace.find(Finding.of(
                                "display-wrong-by-pulses",
                                Level.CAUTION,
                                "The display shows {actual} of the true speed: the sensor gives other pulses for one turn than it was set for; speed limit and regeneration set by speed are wrong by the same factor",
                                Source.weak("owner's measurement after a change of motor"))
                        .at("/drive/speedSensor")
                        .actual(Measure.number(shown))
                        .action("Set the pulses for one turn; until then come down hills on the friction brakes."));
            case FAULT ->
                trace.find(Finding.of(
                                "display-fault",
                                Level.CAUTION,
                                "The display shows {actual} of the true speed: no tyre and no count of pulses makes that; a ring magnet breaks up, a connector is dirty",
                                Source.weak("expert's answer to an owner"))
                        .at("/drive/speedSensor")
                        .actual(Measure.number(shown))
                        .action("Look at the sensor, its magnet and its connector before anything is corrected."));
        }
        boolean beyond = input.sensor() != null
                && input.sensor().shownMPS() != null
                && input.sensor().trueMPS() != null
                && input.sensor().shownMPS()
                        > Speedometer.highestShown(input.sensor().trueMPS());
        if (shown < 1 - 1e-9) {
            trace.find(Finding.of(
                            "display-reads-low",
                            Level.CAUTION,
                            "The display shows less than the true speed; on a road vehicle it must never",
                            Speedometer.SOURCE)
                    .at("/drive/speedSensor")
                    .actual(Measure.number(shown))
                    .limit(Measure.number(1))
                    .action("Multiply what it shows by the correction in the answer, and have it set."));
        } else if (beyond) {
            trace.find(Finding.of(
                            "display-reads-high",
                            Level.NOTICE,
                            "The display shows {actual}; at this speed a road vehicle may show {limit} at most",
                            Speedometer.SOURCE)
                    .at("/drive/speedSensor/shown")
                    .actual(new Measure(required(required(input.sensor()).shownMPS()), SPEED))
                    .limit(new Measure(
                            Speedometer.highestShown(
                                    required(required(input.sensor()).trueMPS())),
                            SPEED)));
        }
    }

    /** Within 15 % of one. */
    private static boolean agrees(double ratio) {
        return ratio > 0.85 && ratio < 1.15;
    }

    private static <T> T required(@Nullable T value) {
        return Objects.requireNonNull(value);
    }
}

package org.axlewright.domain.drive;

import static org.axlewright.domain.quantity.Dimension.ACCELERATION;
import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.EVENT_TIME;
import static org.axlewright.domain.quantity.Dimension.FORCE;
import static org.axlewright.domain.quantity.Dimension.GRADE;
import static org.axlewright.domain.quantity.Dimension.LOAD;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.POWER;
import static org.axlewright.domain.quantity.Dimension.ROTATION;
import static org.axlewright.domain.quantity.Dimension.SHAFT_POWER;
import static org.axlewright.domain.quantity.Dimension.SPEED;
import static org.axlewright.domain.quantity.Dimension.TORQUE;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import org.axlewright.domain.drive.DrivePerformance.Calibration;
import org.axlewright.domain.drive.DrivePerformance.Climb;
import org.axlewright.domain.drive.DrivePerformance.Duty;
import org.axlewright.domain.drive.DrivePerformance.Input;
import org.axlewright.domain.drive.DrivePerformance.PackLimits;
import org.axlewright.domain.drive.DrivePerformance.PullAway;
import org.axlewright.domain.drive.DrivePerformance.Result;
import org.axlewright.domain.drive.DrivePerformance.Steady;
import org.axlewright.domain.motor.DutyType;
import org.axlewright.domain.roadload.SlopeInDegrees;
import org.axlewright.domain.trace.Caution;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** What stands out in how a vehicle drives. */
final class DriveFindings {

    /** Front axle share below which it hardly steers; common practice. */
    private static final double LIGHT_FRONT = 0.2;

    private static final Source BALANCE = Source.derived("balance of pull and resistance");
    private static final Source SENT = Source.derived("comparison with the limit sent");
    private static final Source DUTY = Source.published("IEC 60034-1: duty types and short-time ratings");
    private static final Source AXLES =
            Source.published("Jazar, Vehicle Dynamics, ch. 2: axle loads of an accelerating vehicle");

    private static final Source REARWARD = Source.published(
            "Accident Analysis and Prevention, 2013: rear-facing passengers need something in front of them for hard acceleration");

    private static final Caution WHEELS = new Caution(
            "first-drive",
            "Make the first drive of a changed drive alone, slowly, on level ground, with room to stop and somebody who can open the main"
                    + " switch; never run a series motor with its wheels off the ground.");

    private DriveFindings() {}

    static void find(Input input, Result result, Drivetrain train, Trace trace) {
        trace.caution(WHEELS);
        GearingFindings.reduction(input.reduction(), "/drive/ratio", trace);
        GearingFindings.rollout(input.wheel(), trace);
        model(input, result, trace);
        top(input, result, train, trace);
        pullAway(result.pullAway(), trace);
        rearward(input, result.pullAway(), trace);
        pack(input, result, trace);
        for (Climb climb : result.climbs()) {
            climb(climb, input, trace);
        }
        duty(input, result, trace);
    }

    private static void model(Input input, Result result, Trace trace) {
        if (input.ratedPowerIsLimit()) {
            trace.find(
                    Finding.of(
                                    "rated-power-is-the-limit",
                                    Level.NOTICE,
                                    "The rated power is taken for the most the motor gives; for some minutes it may give more",
                                    Source.COMMON_PRACTICE)
                            .at("/drive/motor/power")
                            .action(
                                    "Send the maker's curve, or of a direct-current motor its resistance and a torque with its current."));
        }
        if (input.supply() != null && input.supply().ohm() == 0) {
            trace.find(Finding.of(
                            "sag-not-counted",
                            Level.NOTICE,
                            "Without the pack's internal resistance its voltage is taken to hold under load: top speed and pull are upper bounds",
                            Source.derived("direct-current circuit: U = E − I·r"))
                    .at("/pack/resistance")
                    .action("Measure the voltage step under a known current and send the resistance."));
        }
        Double plate = input.plateW();
        Supply supply = input.supply();
        if (plate != null
                && supply != null
                && input.motorLimitA() != null
                && plate > 0.9 * supply.emfV() * input.motorLimitA()) {
            trace.find(Finding.of(
                            "power-may-be-input",
                            Level.CAUTION,
                            "{actual} at the shaft is about all that the pack's voltage times the controller's current can be, {limit}: it reads like the electrical input, or a peak",
                            Source.weak("owner's motor: 36 V times 300 A sold as 15 hp"))
                    .at("/drive/motor/power")
                    .actual(new Measure(plate, SHAFT_POWER))
                    .limit(new Measure(supply.emfV() * input.motorLimitA(), SHAFT_POWER))
                    .action("Send the continuous power at the shaft."));
        }
        Calibration calibration = result.calibration();
        if (calibration != null) {
            boolean motor = calibration.what().equals("motor-speed");
            trace.find(Finding.of(
                            "calibrated-by-measured-speed",
                            Level.NOTICE,
                            motor
                                    ? "The measured {actual} in place of the reckoned {limit} calibrates the motor's speed"
                                    : "The measured {actual} in place of the reckoned {limit} calibrates rolling and drag",
                            Source.derived("measured beats theory"))
                    .at("/drive/measured/speed")
                    .actual(new Measure(calibration.measuredMPS(), SPEED))
                    .limit(new Measure(calibration.reckonedMPS(), SPEED)));
        } else if (input.measuredMPS() != null && result.top() != null) {
            trace.find(Finding.of(
                            "measured-speed-not-used",
                            Level.CAUTION,
                            "The measured {actual} is too far from the reckoned {limit} to calibrate anything, or a limiter holds the speed: one of the inputs is not as sent",
                            BALANCE)
                    .at("/drive/measured/speed")
                    .actual(new Measure(input.measuredMPS(), SPEED))
                    .limit(new Measure(result.top().speedMPS(), SPEED))
                    .action("Check tyre, ratio, the motor's voltage and the unit of the speed."));
        }
    }

    private static void top(Input input, Result result, Drivetrain train, Trace trace) {
        Steady top = result.top();
        if (top == null) {
            trace.find(Finding.of(
                            "does-not-move",
                            Level.WARNING,
                            "The pull at standstill does not overcome the rolling resistance of {limit}",
                            BALANCE)
                    .at("/drive")
                    .actual(new Measure(train.pull(0).forceN(), FORCE))
                    .limit(new Measure(input.road().levelN(0), FORCE))
                    .action("Check torque, ratio and limits; a higher ratio pulls harder."));
            return;
        }
        boolean amperes = top.limitedBy() == DriveLimit.MOTOR_CURRENT || top.limitedBy() == DriveLimit.BATTERY_CURRENT;
        if (!amperes
                && (input.motorLimitA() != null
                        || (input.supply() != null && input.supply().limitA() != null))) {
            trace.find(Finding.of(
                            "controller-is-not-the-limit",
                            Level.NOTICE,
                            "On the level the top speed of {actual} is held by " + words(top.limitedBy())
                                    + ", not by amperes: a bigger controller makes it no faster, only stronger on hills",
                            Source.weak("expert's answer to an owner"))
                    .at("/drive/controller")
                    .actual(new Measure(top.speedMPS(), SPEED))
                    .action("Speed comes from voltage, motor, ratio and tyre."));
        }
        if (result.idealMPS() != null
                && result.powerLimitedMPS() != null
                && result.idealMPS() > 1.02 * result.powerLimitedMPS()) {
            trace.find(Finding.of(
                            "geared-beyond-power",
                            Level.WARNING,
                            "It is geared for {actual}; the power suffices for {limit} on the level: it pulls away badly and never gets there",
                            BALANCE)
                    .at("/drive/ratio")
                    .actual(new Measure(result.idealMPS(), SPEED))
                    .limit(new Measure(result.powerLimitedMPS(), SPEED))
                    .action("Gear it near the fitting ratio in the answer, or lower for hills."));
        }
        if (input.maximumRadPS() != null && top.motorRadPS() > input.maximumRadPS()) {
            trace.find(Finding.of(
                            "above-motor-maximum",
                            Level.WARNING,
                            "At top speed the motor turns {actual}; its rotor must not pass {limit}",
                            SENT)
                    .at("/drive/motor/maximumSpeed")
                    .actual(new Measure(top.motorRadPS(), ROTATION))
                    .limit(new Measure(input.maximumRadPS(), ROTATION))
                    .action("Set a speed cap below the limit of the rotor."));
        }
        Double target = input.targetMPS();
        if (target != null && target > 0 && result.launch() == null && train.boundAtRest()) {
            trace.find(Finding.of(
                            "speed-not-reached",
                            Level.CAUTION,
                            "{actual} is not reached on the level: it ends at {limit}",
                            BALANCE)
                    .at("/manoeuvre/speed")
                    .actual(new Measure(target, SPEED))
                    .limit(new Measure(top.speedMPS(), SPEED)));
        }
    }

    private static String words(DriveLimit limit) {
        return switch (limit) {
            case VOLTAGE -> "the motor's speed at this voltage";
            case POWER -> "the motor's power";
            case SPEED_CAP -> "the cap or limiter";
            case GRIP -> "the grip of the tyres";
            case MOTOR_TORQUE -> "the motor's torque";
            case MOTOR_CURRENT, BATTERY_CURRENT -> "the controller's current";
        };
    }

    private static void pullAway(@Nullable PullAway pullAway, Trace trace) {
        if (pullAway == null) {
            return;
        }
        if (pullAway.limitedBy() == DriveLimit.GRIP) {
            trace.find(Finding.of(
                            "tyres-slip-pulling-away",
                            Level.CAUTION,
                            "Full throttle from standstill slips the driven tyres: they pass on {limit}",
                            Source.published("Jazar, Vehicle Dynamics, ch. 2: traction limit"))
                    .at("/ground/friction")
                    .limit(new Measure(pullAway.forceN(), FORCE)));
        }
        Double front = pullAway.frontLoadN();
        Double share = pullAway.frontShare();
        if (front == null || share == null) {
            return;
        }
        if (!(front > 0)) {
            trace.find(Finding.of(
                            "front-lifts-pulling-away",
                            Level.DANGER,
                            "Full throttle from standstill lifts the front wheels: it can go over backwards",
                            AXLES)
                    .at("/drive")
                    .actual(new Measure(front, LOAD))
                    .limit(new Measure(0, LOAD))
                    .action("Limit the current or slow the throttle's rise; move mass forward."));
        } else if (share < LIGHT_FRONT) {
            trace.find(Finding.of(
                            "front-light-pulling-away",
                            Level.WARNING,
                            "Full throttle from standstill leaves {actual} of the weight on the front axle: it hardly steers",
                            Source.COMMON_PRACTICE)
                    .at("/drive")
                    .actual(new Measure(share, NONE))
                    .limit(new Measure(LIGHT_FRONT, NONE))
                    .action("Limit the current or slow the throttle's rise."));
        }
    }

    private static void rearward(Input input, @Nullable PullAway pullAway, Trace trace) {
        if (pullAway == null || !(pullAway.acceleration() > 0)) {
            return;
        }
        for (String pointer : input.rearwardSeats()) {
            trace.find(Finding.of(
                            "rear-facing-launch",
                            Level.CAUTION,
                            "Full throttle from standstill pulls away with {actual}, and nothing ahead holds who faces rearward",
                            REARWARD)
                    .at(pointer)
                    .actual(new Measure(pullAway.acceleration(), ACCELERATION))
                    .action("A bar or belt in front of the rider, and a soft start set in the controller"));
        }
    }

    private static void pack(Input input, Result result, Trace trace) {
        PackLimits limits = input.limits();
        Double most = result.greatestPackA();
        if (most == null) {
            return;
        }
        if (limits.peakA() != null && most > limits.peakA()) {
            trace.find(Finding.of(
                            "over-peak-discharge",
                            Level.WARNING,
                            "At full throttle the pack gives {actual}; its peak limit is {limit}: battery management opens with charge left",
                            SENT)
                    .at("/pack/limits/peakDischarge/current")
                    .actual(new Measure(most, CURRENT))
                    .limit(new Measure(limits.peakA(), CURRENT))
                    .action("Set the controller's battery-side limit below it."));
        } else if (limits.continuousA() != null && most > limits.continuousA()) {
            Finding finding = Finding.of(
                            "over-continuous-discharge",
                            Level.CAUTION,
                            "At full throttle the pack gives {actual}, above its continuous {limit}: that must end within the time of its peak rating",
                            SENT)
                    .at("/pack/limits/continuousDischarge")
                    .actual(new Measure(most, CURRENT))
                    .limit(new Measure(limits.continuousA(), CURRENT));
            trace.find(finding.action("Compare the time to speed and the length of the climb with the peak rating."));
        }
    }

    private static void climb(Climb climb, Input input, Trace trace) {
        String pointer = climb.stretch().pointer();
        if (!climb.possible()) {
            boolean starts = climb.reachable() != null;
            trace.find(Finding.of(
                            starts ? "slower-than-wanted" : "too-steep",
                            starts ? Level.CAUTION : Level.WARNING,
                            starts
                                    ? "It does not hold {actual} here: " + words(climb.limitedBy())
                                            + " ends it at {limit}"
                                    : "It does not pull away here, a grade of {actual}",
                            BALANCE)
                    .at(pointer)
                    .actual(
                            starts
                                    ? new Measure(climb.speedMPS(), SPEED)
                                    : new Measure(climb.stretch().gradeRad(), GRADE))
                    .limit(
                            climb.reachable() == null
                                    ? new Measure(0, GRADE)
                                    : new Measure(climb.reachable().speedMPS(), SPEED))
                    .action(
                            starts
                                    ? "Plan with the lower speed."
                                    : "Less load, a higher ratio or more torque; never try it from a rolling start."));
        }
        if (climb.stretch().inDegrees()) {
            SlopeInDegrees.find(
                    climb.stretch().gradeRad(), pointer.startsWith("/route") ? pointer + "/grade" : pointer, trace);
        }
        if (climb.nearStall()) {
            trace.find(Finding.of(
                            "near-stall",
                            Level.CAUTION,
                            "Here the motor hardly turns: half of the power or more becomes heat in it, and one figure of efficiency does not hold",
                            Source.derived("shaft power below I²·R, or motor below a tenth of its highest speed"))
                    .at(pointer)
                    .actual(new Measure(climb.motorRadPS(), ROTATION))
                    .action("Send the motor's resistance and a torque with its current; gear lower for such a grade."));
        }
        overDuty(climb, input.duty(), trace);
        packOnClimb(climb, input, trace);
    }

    private static void overDuty(Climb climb, Duty duty, Trace trace) {
        if (climb.ratedShare() == null || duty.torqueNm() == null) {
            return;
        }
        String pointer = climb.stretch().pointer();
        Double time = climb.stretch().durationS();
        if (climb.ratedShare() > 1) {
            trace.find(Finding.of(
                            "over-rated-torque",
                            Level.WARNING,
                            "The motor gives {actual} here, above its rated {limit}"
                                    + (duty.type() == null ? "" : " for duty " + duty.type())
                                    + ": it heats up for as long as this lasts",
                            DUTY)
                    .at(pointer)
                    .actual(new Measure(climb.torqueNm(), TORQUE))
                    .limit(new Measure(duty.torqueNm(), TORQUE))
                    .action("Gear lower, climb in short stretches with rests, or fit a thermal cut-back."));
        } else if (duty.type() == DutyType.S2 && duty.timeS() != null && time != null && time > duty.timeS()) {
            trace.find(Finding.of(
                            "longer-than-rated",
                            Level.CAUTION,
                            "This lasts {actual}; the motor is rated for {limit} at a time, from cold",
                            DUTY)
                    .at(pointer)
                    .actual(new Measure(time, EVENT_TIME))
                    .limit(new Measure(duty.timeS(), EVENT_TIME))
                    .action("Let it cool before it is driven on."));
        }
    }

    private static void packOnClimb(Climb climb, Input input, Trace trace) {
        Supply supply = input.supply();
        if (supply == null) {
            return;
        }
        String pointer = climb.stretch().pointer();
        Double amperes = climb.packA();
        if (amperes == null) {
            trace.find(Finding.of(
                            "power-beyond-pack",
                            Level.WARNING,
                            "This takes {actual} from the pack, more than its internal resistance lets it give",
                            Source.derived("direct-current circuit: at most E²/(4·r)"))
                    .at(pointer)
                    .actual(new Measure(climb.packW(), POWER)));
            return;
        }
        PackLimits limits = input.limits();
        if (limits.peakA() != null && amperes > limits.peakA()) {
            trace.find(Finding.of(
                            "climb-over-peak-discharge",
                            Level.WARNING,
                            "This takes {actual} from the pack, above its peak of {limit}: it stops here with charge left",
                            SENT)
                    .at(pointer)
                    .actual(new Measure(amperes, CURRENT))
                    .limit(new Measure(limits.peakA(), CURRENT))
                    .action("Climb slower, carry less, or fit a pack for this current."));
        } else if (limits.continuousA() != null && amperes > limits.continuousA()) {
            trace.find(Finding.of(
                            "climb-over-continuous-discharge",
                            Level.WARNING,
                            "This takes {actual} from the pack, above its continuous {limit}: it may last no longer than the peak rating"
                                    + (limits.peakS() == null ? "" : " says"),
                            SENT)
                    .at(pointer)
                    .actual(new Measure(amperes, CURRENT))
                    .limit(new Measure(limits.continuousA(), CURRENT))
                    .action("Climb slower, carry less, or fit a pack for this current."));
        }
        if (input.minimumV() != null && climb.packV() != null && climb.packV() < input.minimumV()) {
            trace.find(Finding.of(
                            "sags-below-controller",
                            Level.WARNING,
                            "The pack sags to {actual} here; the controller works from {limit} up",
                            SENT)
                    .at(pointer)
                    .actual(new Measure(climb.packV(), VOLTAGE))
                    .limit(new Measure(input.minimumV(), VOLTAGE))
                    .action("Climb slower, or fit a pack with less internal resistance."));
        }
    }

    private static void duty(Input input, Result result, Trace trace) {
        Double rated = input.duty().torqueNm();
        if (rated != null && result.rmsTorqueNm() != null && result.rmsTorqueNm() > rated) {
            trace.find(Finding.of(
                            "route-over-rated-torque",
                            Level.WARNING,
                            "Over the whole route the motor works like at {actual} without end; it is rated for {limit}",
                            DUTY)
                    .at("/route")
                    .actual(new Measure(result.rmsTorqueNm(), TORQUE))
                    .limit(new Measure(rated, TORQUE))
                    .action("Gear lower, rest more, or fit a larger motor."));
        }
    }
}

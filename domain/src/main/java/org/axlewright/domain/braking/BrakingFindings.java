package org.axlewright.domain.braking;

import static org.axlewright.domain.quantity.Dimension.ACCELERATION;
import static org.axlewright.domain.quantity.Dimension.FORCE;
import static org.axlewright.domain.quantity.Dimension.GRADE;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.SPEED;
import static org.axlewright.domain.quantity.Dimension.TEMPERATURE_DIFFERENCE;

import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.braking.Braking.Change;
import org.axlewright.domain.braking.Braking.Cost;
import org.axlewright.domain.braking.Braking.Holds;
import org.axlewright.domain.braking.Braking.Input;
import org.axlewright.domain.braking.Braking.OfState;
import org.axlewright.domain.braking.Braking.Result;
import org.axlewright.domain.braking.Braking.Retarders;
import org.axlewright.domain.braking.MeasuredStop.Calibration;
import org.axlewright.domain.quantity.SpeedUnit;
import org.axlewright.domain.roadload.BrakeHeat;
import org.axlewright.domain.roadload.SlopeInDegrees;
import org.axlewright.domain.trace.Caution;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** What stands out in a stop and on a ramp. */
final class BrakingFindings {

    /** Downhill from here the rear wheels alone are a danger, rad: 10 %. */
    private static final double DOWNHILL_RAD = Math.atan(0.10);

    private static final double FASTER_THAN_PROVEN = 1.1;
    private static final double DISAGREES = 0.2;

    /** Slope that the parking brake of a road vehicle holds up and down, rad: 20 %. */
    private static final double ROAD_RAMP_RAD = Math.atan(0.20);

    private static final Source ROAD_RAMP = Source.memory(
            "49 CFR 571.135 S7.12 and UN R13-H: parking brake holds 20 % up and down, for passenger cars");
    private static final Source ROAD_STOP = Source.memory("UN R13-H, cars: S <= 0.1·V + 0.0060·V², V in km/h");
    private static final Source REAR_ONLY = Source.published(
            "Accident Analysis and Prevention, 2006: golf cars braked at the rear wheels only, on steep downgrades");
    private static final Source BALANCE =
            Source.memory("UN R13-H, Annex 5: the rear wheels must not lock before the front ones");
    private static final Source STATICS = Source.derived("force and moment balance of the vehicle");
    private static final Source SENT = Source.derived("comparison of the values sent");

    private static final Caution BRAKES = new Caution(
            "brakes",
            "Brakes carry lives. Have changes to them made and tested by someone trained for it, keep to the maker's parts and ratings,"
                    + " and try them first at walking pace on level, empty ground. Chock the wheels before working on a slope.");

    private BrakingFindings() {}

    /**
     * Adds the findings.
     *
     * @param sent as sent
     * @param used with the forces of the brakes as calibrated
     */
    static void find(Input sent, Input used, Result result, Trace trace) {
        trace.caution(BRAKES);
        knowledge(sent, used, result, trace);
        if (result.calibration() != null) {
            calibration(sent, result.calibration(), trace);
        }
        if (sent.gradeInDegrees() && sent.gradeRad() != null) {
            SlopeInDegrees.find(sent.gradeRad(), "/ground/grade", trace);
        }
        OfState empty = result.empty();
        state(used, result.occupied(), empty == null ? null : "occupied", trace);
        if (empty != null) {
            state(used, empty, "empty", trace);
        }
        for (Cost cost : result.costs()) {
            if (cost.change() == Change.TYRES && cost.factor() > 1.005) {
                trace.find(Finding.of(
                                "taller-tyres-weaken-brakes",
                                Level.CAUTION,
                                "The taller tyres take the same brakes a longer lever: braking distance {actual} against {limit} before",
                                Source.derived("force at the ground = torque of the brake over the loaded radius"))
                        .at("/tyres")
                        .actual(new Measure(cost.withM(), LENGTH))
                        .limit(new Measure(cost.withoutM(), LENGTH))
                        .action("Larger brakes, or less speed."));
            }
        }
    }

    private static void knowledge(Input sent, Input used, Result result, Trace trace) {
        if (result.occupied().level() == null) {
            return;
        }
        boolean open = used.brakesN() >= BrakeBalance.NOT_THE_LIMIT_N && sent.stop() == null;
        if (open) {
            trace.find(Finding.of(
                            "brakes-not-known",
                            Level.CAUTION,
                            "Nothing says how strong the brakes are: this is the best that the tyres allow",
                            Source.derived("each axle gives the least of its brakes and its tyres"))
                    .at("/brakes")
                    .action("Measure one stop: speed, and distance from where the brakes come on."));
        }
        if (result.occupied().level().front() == null) {
            trace.find(Finding.of(
                            "grip-not-checked",
                            Level.CAUTION,
                            "Without the position of the centre of gravity nobody can say which wheels lock: the tyres of an axle may give"
                                    + " less than its brakes",
                            Source.derived("each axle gives the least of its brakes and its tyres"))
                    .at("/bare")
                    .action("Send axle loads and the height of the centre of gravity."));
        } else if (result.occupied().level().firstToLock() == null) {
            trace.find(Finding.of(
                            "brake-balance-not-known",
                            Level.NOTICE,
                            "How the brakes share between the axles is not known: shared as the loads, which is the best that any brakes"
                                    + " can do",
                            Source.derived("both axles reach the grip of their tyres together"))
                    .at("/brakes")
                    .action("Send the torque of both axles."));
        }
    }

    private static void calibration(Input sent, Calibration calibration, Trace trace) {
        Double friction = sent.frictionSent() ? sent.friction() : null;
        Double atLeast = calibration.frictionAtLeast();
        if (friction != null && atLeast != null && atLeast > friction * (1 + DISAGREES)) {
            trace.find(Finding.of(
                            "measured-stop-beats-friction",
                            Level.CAUTION,
                            "The measured stop takes a friction of {actual}, the ground was sent with {limit}: it was measured on better"
                                    + " ground, or speed or distance is wrong",
                            STATICS)
                    .at("/brakes/measuredStop")
                    .actual(Measure.number(atLeast))
                    .limit(Measure.number(friction))
                    .action("On worse ground the tyres end the stop sooner: keep to the distance shown here."));
        }
        if (calibration.limit() == null) {
            trace.find(Finding.of(
                            "measured-stop-bounds-both",
                            Level.NOTICE,
                            "The measured stop shows {actual}. Without the friction of the ground it can't be told whether brakes or tyres"
                                    + " ended it: both give at least this; reckoned with brakes that give just this",
                            STATICS)
                    .at("/brakes/measuredStop")
                    .actual(new Measure(calibration.decelerationMPS2(), ACCELERATION))
                    .action("Note whether wheels locked, and send the friction of that ground."));
        } else if (calibration.limit() == BrakeLimit.TYRES) {
            trace.find(Finding.of(
                            "measured-stop-at-grip",
                            Level.NOTICE,
                            "The tyres ended the measured stop, so the brakes may be stronger than the {actual} it shows; with more mass the"
                                    + " distance need not grow as shown",
                            STATICS)
                    .at("/brakes/measuredStop")
                    .actual(new Measure(calibration.forceN(), FORCE)));
        }
        double front = sent.front().forceN() == null ? Double.NaN : sent.front().forceN();
        double rear = sent.rear().forceN() == null ? Double.NaN : sent.rear().forceN();
        double sum = front + rear;
        if (calibration.limit() != BrakeLimit.TYRES && Math.abs(calibration.forceNowN() - sum) > DISAGREES * sum) {
            trace.find(Finding.of(
                            "measured-stop-disagrees",
                            Level.CAUTION,
                            "The measured stop gives {actual}, the figures of the brakes {limit}; reckoned with what was measured",
                            SENT)
                    .at("/brakes/measuredStop")
                    .actual(new Measure(calibration.forceNowN(), FORCE))
                    .limit(new Measure(sum, FORCE))
                    .action("Check linings, adjustment and whether the torque is that of both wheels."));
        }
        MeasuredStop stop = sent.stop();
        Double v = sent.speedMPS();
        if (stop != null && v != null && v > FASTER_THAN_PROVEN * stop.speedMPS()) {
            trace.find(Finding.of(
                            "faster-than-proven",
                            Level.CAUTION,
                            "{actual} is faster than the {limit} from which the stop was measured: the distance grows with the square of the"
                                    + " speed, and hot brakes give less",
                            Source.published(
                                    "uniform deceleration: Gillespie, Fundamentals of Vehicle Dynamics, ch. 3"))
                    .at("/manoeuvre/speed")
                    .actual(new Measure(v, SPEED))
                    .limit(new Measure(stop.speedMPS(), SPEED))
                    .action("Step up the speed in small steps and measure again."));
        }
    }

    private static void state(Input input, OfState state, @Nullable String name, Trace trace) {
        stop(input, state.level(), "on the level", name, trace);
        stop(input, state.grade(), "on the slope", name, trace);
        stop(input, state.opposite(), "on the slope the other way", name, trace);
        rearLocksFirst(state, name, trace);
        roadRule(input, state.level(), name, trace);
        rearOnly(input, name, trace);
        parking(input, state.parking(), "/brakes/parking", "parking brake", name, trace);
        if (input.parking() == null) {
            parking(input, state.motorBrakeHolds(), "/brakes/motorBrake", "motor brake", name, trace);
        }
        motorBrake(input, state.motorBrake(), name, trace);
        regeneration(input, state.regeneration(), name, trace);
    }

    private static void stop(Input input, @Nullable Stop stop, String where, @Nullable String name, Trace trace) {
        if (stop == null) {
            return;
        }
        if (!(stop.decelerationMPS2() > Braking.LEAST_DECELERATION)) {
            trace.find(Finding.of(
                            "does-not-stop",
                            Level.DANGER,
                            "Going down this slope the brakes do not stop the vehicle: it slows down by {actual}, and anything below zero"
                                    + " is speeding up",
                            STATICS)
                    .at("/ground/grade")
                    .in(name)
                    .actual(new Measure(stop.decelerationMPS2(), ACCELERATION))
                    .limit(new Measure(0, ACCELERATION))
                    .action("Keep off this slope, or brake all wheels."));
        }
        Stop.AxleStop front = stop.front();
        Stop.AxleStop rear = stop.rear();
        if (front != null && front.limit() == BrakeLimit.TIPPING) {
            trace.find(Finding.of(
                            "pitches-over",
                            Level.DANGER,
                            "Braking as hard as the front tyres allow lifts the rear wheels, " + where + " at {actual}",
                            STATICS)
                    .at("/chassis/braked")
                    .in(name)
                    .actual(new Measure(stop.decelerationMPS2(), ACCELERATION))
                    .action("Lower the load or move it rearward."));
        }
        hot(front, "front", input.front().kind(), name, trace);
        hot(rear, "rear", input.rear().kind(), name, trace);
    }

    /** Told once: downhill where it happens there, else where it does. */
    private static void rearLocksFirst(OfState state, @Nullable String name, Trace trace) {
        Stop worst = null;
        for (Stop stop : new Stop[] {state.level(), state.grade(), state.opposite()}) {
            boolean locks = stop != null
                    && stop.firstToLock() == FirstToLock.REAR
                    && stop.front() != null
                    && stop.front().forceN() > 0;
            if (locks && (worst == null || stop.gradeRad() < worst.gradeRad())) {
                worst = stop;
            }
        }
        if (worst == null || worst.decelerationUnlockedMPS2() == null) {
            return;
        }
        boolean downhill = worst.gradeRad() < 0;
        trace.find(Finding.of(
                        "rear-locks-first",
                        downhill ? Level.DANGER : Level.WARNING,
                        "The rear wheels lock first, at {actual}" + (downhill ? " downhill" : "")
                                + ": the tail comes round",
                        BALANCE)
                .at("/brakes/rear")
                .in(name)
                .actual(new Measure(worst.decelerationUnlockedMPS2(), ACCELERATION))
                .action("Less brake at the rear or more at the front, until the front wheels lock first."));
    }

    private static void hot(
            Stop.@Nullable AxleStop axle, String which, @Nullable BrakeKind kind, @Nullable String name, Trace trace) {
        double limitK = BrakeHeat.DESCENT_LIMIT_C - BrakeHeat.START_C;
        if (axle == null || axle.riseK() == null || !(axle.riseK() > limitK)) {
            return;
        }
        String part = kind == null ? "drums or discs" : kind + "s";
        trace.find(Finding.of(
                        "brakes-hot",
                        Level.WARNING,
                        "One stop heats the " + which + " " + part
                                + " by {actual}, beyond the {limit} after which linings fade",
                        BrakeHeat.DESCENT_LIMIT)
                .at("/brakes/" + which + "/mass")
                .in(name)
                .actual(new Measure(axle.riseK(), TEMPERATURE_DIFFERENCE))
                .limit(new Measure(limitK, TEMPERATURE_DIFFERENCE))
                .action("Check the mass and that it is of both wheels; heavier drums or discs, or less speed."));
    }

    private static void roadRule(Input input, @Nullable Stop level, @Nullable String name, Trace trace) {
        Double v = input.speedMPS();
        if (level == null || level.brakingDistanceM() == null || v == null) {
            return;
        }
        double kmh = SpeedUnit.KILOMETRE_PER_HOUR.fromSi(v);
        double ruleM = 0.1 * kmh + 0.0060 * kmh * kmh;
        if (level.brakingDistanceM() > ruleM) {
            trace.find(Finding.of(
                            "longer-than-car",
                            Level.NOTICE,
                            "A road car must stop within {limit} of its brakes coming on, this takes {actual}; no rule known binds this"
                                    + " kind of vehicle",
                            ROAD_STOP)
                    .at("/brakes")
                    .in(name)
                    .actual(new Measure(level.brakingDistanceM(), LENGTH))
                    .limit(new Measure(ruleM, LENGTH))
                    .action("Keep more distance than other traffic expects."));
        }
    }

    private static void rearOnly(Input input, @Nullable String name, Trace trace) {
        if (input.braked() != AxleSet.REAR || "empty".equals(name)) {
            return;
        }
        double slopeRad = input.gradeRad() == null ? 0 : Math.abs(input.gradeRad());
        boolean steep = slopeRad >= DOWNHILL_RAD;
        Finding finding = Finding.of(
                        "rear-brakes-only",
                        steep ? Level.DANGER : Level.WARNING,
                        steep
                                ? "Only the rear wheels brake, and the slope is {actual}: going down, braking and slope both take load off them."
                                        + " Locked rear wheels with rolling front ones make the vehicle yaw and roll over"
                                : "Only the rear wheels brake: locked rear wheels with rolling front ones make the vehicle yaw, downhill"
                                        + " most of all; with more speed, slope or lift the same brakes are worth less",
                        REAR_ONLY)
                .at("/chassis/braked")
                .action("Brakes on all four wheels; until then creep down slopes and never brake hard in a turn.");
        trace.find(
                steep ? finding.actual(new Measure(slopeRad, GRADE)).limit(new Measure(DOWNHILL_RAD, GRADE)) : finding);
    }

    private static void parking(
            Input input, @Nullable Holds holds, String pointer, String what, @Nullable String name, Trace trace) {
        if (holds == null) {
            return;
        }
        Double grade = input.gradeRad();
        Hold asked = grade == null ? null : grade >= 0 ? holds.noseUp() : holds.noseDown();
        Hold other = grade == null ? null : grade >= 0 ? holds.noseDown() : holds.noseUp();
        if (grade != null && asked != null && Math.abs(grade) > asked.gradeRad()) {
            trace.find(Finding.of(
                            "rolls-away",
                            Level.DANGER,
                            "Parked " + (grade >= 0 ? "nose up" : "nose down") + " on {actual} the " + what
                                    + " does not hold it: it holds to {limit}, then " + gives(asked.limit()),
                            STATICS)
                    .at(pointer)
                    .in(name)
                    .actual(new Measure(Math.abs(grade), GRADE))
                    .limit(new Measure(asked.gradeRad(), GRADE))
                    .action("Chock the wheels, park across or on the level."));
        } else if (grade != null && other != null && Math.abs(grade) > other.gradeRad()) {
            trace.find(Finding.of(
                            "holds-one-way-only",
                            Level.WARNING,
                            "On {actual} the " + what + " holds it " + (grade >= 0 ? "nose up" : "nose down")
                                    + " but not the other way round, where it holds to {limit}, then "
                                    + gives(other.limit()),
                            STATICS)
                    .at(pointer)
                    .in(name)
                    .actual(new Measure(Math.abs(grade), GRADE))
                    .limit(new Measure(other.gradeRad(), GRADE))
                    .action("Park it this way round, and chock the wheels."));
        }
        boolean noseUpIsLess = holds.noseUp().gradeRad() < holds.noseDown().gradeRad();
        Hold lesser = noseUpIsLess ? holds.noseUp() : holds.noseDown();
        if (lesser.gradeRad() < ROAD_RAMP_RAD) {
            trace.find(Finding.of(
                            "holds-less-than-road-car",
                            Level.NOTICE,
                            "The " + what + " holds to {actual} " + (noseUpIsLess ? "nose up" : "nose down")
                                    + ", a road car must hold {limit} both ways",
                            ROAD_RAMP)
                    .at(pointer)
                    .in(name)
                    .actual(new Measure(lesser.gradeRad(), GRADE))
                    .limit(new Measure(ROAD_RAMP_RAD, GRADE)));
        }
        if (input.parking() != null && input.parking().forceN() == null && !"empty".equals(name)) {
            trace.find(Finding.of(
                            "parking-brake-not-known",
                            Level.CAUTION,
                            "Nothing says how strong the parking brake is: this is what the tyres hold",
                            Source.derived("the least of brake and tyres"))
                    .at("/brakes/parking")
                    .action("Try it on a ramp of known slope, both ways round, with somebody holding a chock."));
        }
    }

    private static String gives(HoldLimit limit) {
        return switch (limit) {
            case BRAKE -> "the brake gives way";
            case TYRES -> "the tyres slide";
            case TIPPING -> "it tips";
        };
    }

    private static void motorBrake(Input input, @Nullable Retarders brake, @Nullable String name, Trace trace) {
        if (brake == null) {
            return;
        }
        Retarder worst = brake.downhill() != null && brake.downhill().locks() ? brake.downhill() : brake.level();
        if (!worst.locks()) {
            return;
        }
        boolean downhill = brake.downhill() != null && input.gradeRad() != null && input.gradeRad() != 0;
        trace.find(Finding.of(
                        "motor-brake-locks",
                        downhill && input.driven() != AxleSet.ALL ? Level.DANGER : Level.WARNING,
                        "When the power trips, the brake on the motor asks {actual} of the " + axle(input.driven())
                                + " and their tyres give {limit}: they lock at once, without warning, and nobody can let go",
                        STATICS)
                .at("/brakes/motorBrake")
                .in(name)
                .actual(new Measure(worst.wantedN(), FORCE))
                .limit(new Measure(worst.forceN(), FORCE))
                .action("A weaker spring or a delayed release; low gear ratios make it worse."));
    }

    private static void regeneration(
            Input input, @Nullable Retarders regeneration, @Nullable String name, Trace trace) {
        if (regeneration == null) {
            return;
        }
        Retarder worst =
                regeneration.downhill() != null && regeneration.downhill().locks()
                        ? regeneration.downhill()
                        : regeneration.level();
        if (worst.locks()) {
            trace.find(Finding.of(
                            "regeneration-slides",
                            Level.WARNING,
                            "Regeneration asks {actual} of the " + axle(input.driven())
                                    + " and their tyres give {limit}: they slide",
                            STATICS)
                    .at("/drive/controller/regenerationTorque")
                    .in(name)
                    .actual(new Measure(worst.wantedN(), FORCE))
                    .limit(new Measure(worst.forceN(), FORCE))
                    .action("Set less regeneration; it brakes its own axle only."));
        }
        if (!"empty".equals(name)) {
            trace.find(Finding.of(
                            "regeneration-not-counted",
                            Level.NOTICE,
                            "The stopping distances do not count on regeneration: a full, cold or disconnected pack takes it away",
                            Source.derived("the brakes must stop the vehicle alone"))
                    .at("/drive"));
        }
    }

    private static String axle(@Nullable AxleSet driven) {
        return driven == null || driven == AxleSet.ALL ? "wheels" : driven + " wheels";
    }
}

package org.axlewright.domain.towing;

import org.axlewright.domain.quantity.Constants;
import org.axlewright.domain.quantity.Dimension;
import org.axlewright.domain.roadload.SlopeInDegrees;
import org.axlewright.domain.towing.Towing.Effort;
import org.axlewright.domain.towing.Towing.Input;
import org.axlewright.domain.towing.Towing.Result;
import org.axlewright.domain.towing.Tug.Engine;
import org.axlewright.domain.towing.Tug.Footing;
import org.axlewright.domain.trace.Caution;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** What stands out when something is towed. */
final class TowingFindings {

    /** Share of its rated speed below which no one efficiency describes a motor. */
    static final double NEAR_STALL = 0.2;

    /** Part of the rear tyres' grip that holding the speed may take before a bump or a wet patch ends it. */
    static final double GRIP_KEPT = 0.5;

    private static final Source STEERED_AXLE = Source.weak(
            "20 % of the laden mass on the steered axle, asked of goods vehicles by Regulation (EU) 1230/2012 as read in a reprint;"
                    + " for this class of vehicle a rule of thumb");
    private static final Source HSE = Source.published(
            "HSE information sheet AIS33, for all-terrain vehicles: a stand-in for this class; level ground, hitch load about 10 %");
    private static final Source RATINGS = Source.regulation("49 CFR 571.3: only the maker sets GVWR and GAWR");
    private static final Source DUTY = Source.published("IEC 60034-1, duty types S1 and S2");
    private static final Source REAR_BRAKES = Source.published(
            "Accident Analysis and Prevention, 2006: rear wheels that lock downhill cost yaw stability");
    private static final Source STATICS = Source.derived("forces along the road and moments about the axles");

    private static final Caution TOWING = new Caution(
            "towing-limits",
            "The maker's towing rating binds, and a vehicle without one may not tow. Use a hitch and a safety chain of known strength, couple"
                    + " only with the parking brake on and nobody between, carry nobody on a trailer, and try the brakes on the level before any"
                    + " slope.");

    private TowingFindings() {}

    static void find(Input input, Result result, Trace trace) {
        trace.caution(TOWING);
        Tug tug = input.tug();
        rule(input, result, trace);
        if (input.gradeInDegrees() && input.gradeRad() != null) {
            SlopeInDegrees.find(input.gradeRad(), "/ground/grade", trace);
        }
        hitch(input, trace);
        standing(input, result, trace);
        effort(tug, result.level(), "on the level", trace);
        if (result.grade() != null) {
            effort(tug, result.grade(), "on the grade", trace);
        }
        effort(tug, result.start(), "when it pulls away", trace);
        if (result.startOnGrade() != null) {
            effort(tug, result.startOnGrade(), "when it pulls away on the grade", trace);
        }
        if (tug != null && tug.engine() != null) {
            motor(tug.engine(), result, trace);
        }
        if (result.braking() != null) {
            braking(input, result.braking(), trace);
        }
    }

    private static void rule(Input input, Result result, Trace trace) {
        result.bounds().stream()
                .filter(bound -> bound.limit() == Limit.UNBRAKED_RULE || bound.limit() == Limit.BRAKED_RULE)
                .forEach(bound -> {
                    if (result.towedKg() > bound.massKg()) {
                        trace.find(Finding.of(
                                        "towed-mass-over-rule",
                                        Level.WARNING,
                                        "The trailers have {actual} together; by rule a vehicle of this mass tows {limit} at most "
                                                + (input.trailers().braked() ? "with" : "without")
                                                + " brakes on them, on level ground",
                                        HSE)
                                .at("/trailer/mass")
                                .actual(new Measure(result.towedKg(), Dimension.MASS))
                                .limit(new Measure(bound.massKg(), Dimension.MASS))
                                .action("Take fewer trailers, or trailers with brakes"));
                    }
                });
        if (input.gradeRad() != null
                && input.gradeRad() > 0
                && !input.trailers().braked()) {
            trace.find(Finding.of(
                            "unbraked-on-a-grade",
                            Level.CAUTION,
                            "Trailers without brakes push downhill; the rule for towed mass holds on level ground only",
                            HSE)
                    .at("/trailer/braked")
                    .action("Hold to the towed mass that braking bears, not to the rule"));
        }
    }

    private static void hitch(Input input, Trace trace) {
        Trailers trailers = input.trailers();
        if (trailers.hitchLoadN() < 0) {
            trace.find(Finding.of(
                            "hitch-lifts",
                            Level.WARNING,
                            "The trailer lifts the hitch: it takes load and grip off the rear axle and sways",
                            HSE)
                    .at("/trailer/hitchLoad")
                    .actual(new Measure(trailers.hitchLoadN(), Dimension.LOAD))
                    .limit(new Measure(0, Dimension.LOAD))
                    .action("Load the trailer farther forward"));
        } else if (trailers.hitchLoadN() > 0) {
            double share = trailers.hitchLoadN() * trailers.count() / (trailers.massKg() * Constants.STANDARD_GRAVITY);
            if (share > 0.15 || share < 0.05) {
                trace.find(Finding.of(
                                "hitch-load-unusual",
                                Level.NOTICE,
                                "The hitch carries {actual} of a trailer's weight; about {limit} is usual for a trailer on one axle",
                                HSE)
                        .at("/trailer/hitchLoad")
                        .actual(Measure.number(share))
                        .limit(Measure.number(0.1)));
            }
        }
    }

    private static void standing(Input input, Result result, Trace trace) {
        Footing footing = input.tug() == null ? null : input.tug().footing();
        Double front = result.standingFrontN();
        Double rear = result.standingRearN();
        if (footing == null || front == null || rear == null) {
            return;
        }
        front(front, result.standingFrontShare(), "standing on the level, hitched", trace);
        rating(rear, footing.rearRatingN(), "rear axle", "/chassis/ratings/rear", trace);
        rating(front + rear, footing.totalRatingN(), "vehicle", "/chassis/ratings/total", trace);
    }

    private static void rating(double loadN, @Nullable Double ratingN, String what, String pointer, Trace trace) {
        if (ratingN != null && loadN > ratingN) {
            trace.find(Finding.of(
                            "over-rating",
                            Level.WARNING,
                            "With the load on the hitch the " + what + " carries {actual}, over its rating of {limit}",
                            RATINGS)
                    .at(pointer)
                    .actual(new Measure(loadN, Dimension.LOAD))
                    .limit(new Measure(ratingN, Dimension.LOAD)));
        }
    }

    private static void front(double frontN, @Nullable Double share, String when, Trace trace) {
        if (frontN < 0) {
            trace.find(
                    Finding.of("front-wheels-lift", Level.DANGER, "The front wheels leave the ground " + when, STATICS)
                            .at("/trailer/hitchHeight")
                            .actual(new Measure(frontN, Dimension.LOAD))
                            .limit(new Measure(0, Dimension.LOAD))
                            .action("Hitch lower and closer to the axle, tow less, or put ballast in front"));
        } else if (share != null && share < Towing.STEERING_SHARE) {
            trace.find(Finding.of(
                            "front-axle-light",
                            Level.WARNING,
                            "The front axle carries {actual} of the weight " + when + "; below {limit} steering fades",
                            STEERED_AXLE)
                    .at("/trailer/hitchHeight")
                    .actual(Measure.number(share))
                    .limit(Measure.number(Towing.STEERING_SHARE))
                    .action("Hitch lower and closer to the axle, tow less, or put ballast in front"));
        }
    }

    private static void effort(@Nullable Tug tug, Effort effort, String when, Trace trace) {
        if (effort.frontN() != null) {
            front(effort.frontN(), effort.frontShare(), when, trace);
        }
        if (tug != null && tug.footing() != null && effort.thrustN() != null) {
            Double use = effort.gripUse();
            if (use == null || use > 1) {
                Finding slip = Finding.of(
                                "wheels-slip",
                                Level.WARNING,
                                "The driven wheels slip " + when
                                        + (use == null
                                                ? ": they carry nothing"
                                                : ": it takes {actual} times the grip they have"),
                                STATICS)
                        .at("/trailer/mass")
                        .limit(Measure.number(1))
                        .action("Tow less, or put ballast over the driven axle within its rating");
                trace.find(use == null ? slip : slip.actual(Measure.number(use)));
            }
        }
        MotorLoad.Result motor = effort.motor();
        Engine engine = tug == null ? null : tug.engine();
        if (motor == null || engine == null) {
            return;
        }
        Double maximum = engine.maximumTorqueNm();
        if (maximum != null && motor.torqueNm() > maximum) {
            trace.find(Finding.of(
                            "motor-stalls",
                            Level.WARNING,
                            "The motor needs {actual} " + when
                                    + " and gives {limit} at most: it stalls, and all its current is heat",
                            STATICS)
                    .at("/drive/motor/maximumTorque")
                    .actual(new Measure(motor.torqueNm(), Dimension.TORQUE))
                    .limit(new Measure(maximum, Dimension.TORQUE))
                    .action("Tow less or gear lower"));
        }
        Double limit = engine.controllerCurrentA();
        if (limit != null && motor.currentA() != null && motor.currentA() > limit) {
            trace.find(Finding.of(
                            "controller-holds-back",
                            Level.WARNING,
                            "The motor needs {actual} " + when + ", the controller gives {limit} on the motor side",
                            STATICS)
                    .at("/drive/controller/motorCurrent")
                    .actual(new Measure(motor.currentA(), Dimension.CURRENT))
                    .limit(new Measure(limit, Dimension.CURRENT)));
        }
    }

    private static void motor(Engine engine, Result result, Trace trace) {
        heat(engine, result.level(), "on the level", trace);
        if (result.grade() != null) {
            heat(engine, result.grade(), "on the grade", trace);
        }
        MotorLoad.Result level = result.level().motor();
        if (level == null) {
            return;
        }
        if (level.heatRatio() != null && engine.shortTimeS() == null && !engine.continuous()) {
            trace.find(Finding.of(
                            "duty-unknown",
                            Level.NOTICE,
                            "A rating without its duty says nothing of how long the motor bears it: it may hold for ever, or for minutes from"
                                    + " cold",
                            DUTY)
                    .at("/drive/motor/duty")
                    .action("Read S1 or S2 and its minutes off the data plate"));
        }
        Double rated = engine.ratedSpeed();
        if (rated != null && level.speed() < NEAR_STALL * rated) {
            trace.find(Finding.of(
                            "near-stall",
                            Level.CAUTION,
                            "At this pace the motor turns at {actual}, below a fifth of its rated speed: its own fan cools little, and no one"
                                    + " efficiency holds there. At the start all it takes is heat",
                            Source.COMMON_PRACTICE)
                    .at("/manoeuvre/speed")
                    .actual(new Measure(level.speed(), Dimension.ROTATION))
                    .limit(new Measure(NEAR_STALL * rated, Dimension.ROTATION))
                    .action("Judge by motor current, and gear lower for steady work at walking pace"));
        }
    }

    private static void heat(Engine engine, Effort effort, String when, Trace trace) {
        MotorLoad.Result motor = effort.motor();
        if (motor == null || motor.heatRatio() == null || motor.heatRatio() <= 1) {
            return;
        }
        Double time = motor.timeS();
        Finding hot = Finding.of(
                        "motor-overheats",
                        Level.WARNING,
                        "Pulling this " + when + " heats the motor {actual} times as much as its rating allows"
                                + (time == null
                                        ? engine.continuous() ? ": it can't go on so" : ""
                                        : "; from cold it bears that for less than the time given, then it must cool"),
                        DUTY)
                .at("/trailer/mass")
                .actual(Measure.number(motor.heatRatio()))
                .limit(Measure.number(1))
                .action("Tow less, gear lower, or watch the motor's temperature");
        trace.find(hot);
    }

    private static void braking(Input input, HitchedBraking.Result braking, Trace trace) {
        trace.find(Finding.of(
                        "brakes-taken-at-grip",
                        Level.NOTICE,
                        "The brakes of the vehicle are taken to be strong enough to use all the grip of their tyres; weaker ones stop later",
                        STATICS)
                .at("/chassis/braked")
                .action("Try a stop with the full train on the level"));
        stop(braking.level(), "on the level", trace);
        if (braking.downhill() != null) {
            stop(braking.downhill(), "downhill", trace);
        }
        if (braking.trailerWheelsLock()) {
            trace.find(Finding.of(
                            "trailer-wheels-lock",
                            Level.CAUTION,
                            "The trailers' brakes are stronger than the grip of their tyres: the wheels lock and the trailer swings; only"
                                    + " what the tyres hold is counted",
                            STATICS)
                    .at("/trailer/brakeForce"));
        }
        Double knife = braking.jackKnifeRad();
        Double grade = input.gradeRad();
        HitchedBraking.Holding holding = braking.holding();
        if (knife == null || grade == null || holding == null) {
            return;
        }
        Double use = holding.rearGripUse();
        if (grade >= knife && knife >= 0 && (use == null || use >= 1)) {
            trace.find(
                    Finding.of(
                                    "jack-knife",
                                    Level.DANGER,
                                    "Down {actual} the rear tyres can't hold the train back: from {limit} on the trailers push the rear aside",
                                    REAR_BRAKES)
                            .at("/ground/grade")
                            .actual(new Measure(grade, Dimension.GRADE))
                            .limit(new Measure(knife, Dimension.GRADE))
                            .action(
                                    "Take fewer trailers down, fit brakes to them or to the front wheels, and never coast down with regeneration alone"));
        } else if (use != null && use > GRIP_KEPT) {
            trace.find(Finding.of(
                            "rear-grip-half-used",
                            Level.CAUTION,
                            "Holding the speed downhill takes {actual} of the grip of the rear tyres, in the dry and without a bump",
                            Source.COMMON_PRACTICE)
                    .at("/ground/grade")
                    .actual(Measure.number(use))
                    .limit(Measure.number(GRIP_KEPT))
                    .action("Go down slower and straight; take fewer trailers when it is wet"));
        }
    }

    private static void stop(HitchedBraking.Stop stop, String where, Trace trace) {
        Double b = stop.deceleration();
        if (b == null) {
            trace.find(Finding.of(
                            "pitches-when-braking",
                            Level.DANGER,
                            "Braking at the limit of its tyres " + where
                                    + " an axle leaves the ground before the train stops",
                            STATICS)
                    .at("/trailer/hitchHeight"));
        } else if (b <= 0) {
            trace.find(Finding.of(
                            "runs-away",
                            Level.DANGER,
                            "The train does not stop " + where
                                    + ": what the brakes and tyres hold is less than what pushes",
                            STATICS)
                    .at("/trailer/mass")
                    .actual(new Measure(b, Dimension.ACCELERATION))
                    .limit(new Measure(0, Dimension.ACCELERATION))
                    .action("Take fewer trailers, or trailers with brakes"));
        }
    }
}

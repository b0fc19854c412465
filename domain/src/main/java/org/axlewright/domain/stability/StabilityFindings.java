package org.axlewright.domain.stability;

import static org.axlewright.domain.quantity.Constants.STANDARD_GRAVITY;
import static org.axlewright.domain.quantity.Dimension.ACCELERATION;
import static org.axlewright.domain.quantity.Dimension.ANGLE;
import static org.axlewright.domain.quantity.Dimension.CLEARANCE;
import static org.axlewright.domain.quantity.Dimension.GRADE;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.LOAD;
import static org.axlewright.domain.quantity.Dimension.MASS;
import static org.axlewright.domain.quantity.Dimension.SPEED;

import java.util.List;
import java.util.stream.Collectors;
import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.axles.WheelPlan;
import org.axlewright.domain.quantity.LengthUnit;
import org.axlewright.domain.quantity.SpeedUnit;
import org.axlewright.domain.roadload.Grip;
import org.axlewright.domain.roadload.SlopeInDegrees;
import org.axlewright.domain.stability.Aboard.Person;
import org.axlewright.domain.stability.Footprint.SideLimit;
import org.axlewright.domain.stability.Lengthways.AxleLoads;
import org.axlewright.domain.stability.Lengthways.Braking;
import org.axlewright.domain.stability.Lengthways.Condition;
import org.axlewright.domain.stability.Sideways.Slope;
import org.axlewright.domain.stability.Sideways.Turn;
import org.axlewright.domain.stability.Stability.Input;
import org.axlewright.domain.stability.Stability.Result;
import org.axlewright.domain.stability.Stability.State;
import org.axlewright.domain.stability.Stability.Worst;
import org.axlewright.domain.trace.Caution;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** What stands out in the stability of a vehicle. */
final class StabilityFindings {

    private static final String EMPTY = "empty";
    private static final String OCCUPIED = "occupied";

    /** Lateral acceleration that was once proposed as the least before a side-by-side tips, in g. */
    static final double PROPOSED_FLOOR = 0.70;

    /** Lateral acceleration from which unbelted people must be reckoned to leave their seats, in g. */
    static final double THROWN_OUT = 0.32;

    /** Share on the front axle below which it hardly steers. */
    static final double LIGHT_FRONT = 0.20;

    /** Pitch coefficient that four-wheel all-terrain vehicles must reach. */
    static final double LEAST_PITCH = 1.0;

    static final double BELT_SPEED = SpeedUnit.MILE_PER_HOUR.toSi(15);
    static final double RESTRAINT_M = LengthUnit.MILLIMETRE.toSi(330);

    /** Mass up to which a person is taken for a child of about six, kg. */
    static final double CHILD_KG = 25;

    /** Friction that no ordinary tyre has on any ordinary ground. */
    static final double HIGHEST_FRICTION = 0.90;

    /** Track over wheelbase below which a half track was probably measured; the longest six-seaters have 0.3. */
    static final double LEAST_TRACK_SHARE = 0.28;

    /** Track below which a half track was probably measured whatever the wheelbase: half of the widest of this class, m. */
    static final double LEAST_TRACK_M = 0.56;

    /** Narrower over wider track below which one of them was probably measured from the middle. */
    static final double TRACKS_ALIKE = 0.65;

    private static final Source PROPOSED = Source.published(
            "79 FR 68963, 19 November 2014, proposed rule for recreational off-highway vehicles, not adopted; its figure for"
                    + " measured lateral acceleration");
    private static final Source STATICS = Source.derived("statics of a rigid vehicle on its contact points");
    private static final Source TRIPPED = Source.published(
            "CPSC meeting log of 10 March 2015: on sand and gravel vehicles slid from below 0.3 g and were tripped over at 0.87 to 1.1 g");
    private static final Source EJECTION = Source.derived(
            "injury study of golf cars: people thrown out of turns at 18 km/h; that speed on a radius of 7.62 m");
    private static final Source CHILD = Source.published(
            "conference paper 09-0186: a six-year-old test dummy was thrown out of a moderate left turn over the standard hip restraint,"
                    + " a belt held it");
    private static final Source RESTRAINT = Source.published(
            "Accident Analysis and Prevention, 2013: rear-facing passengers need a hip restraint of at least 330 mm (13 in), 127 mm was fitted");
    private static final Source ROLL_STRUCTURE =
            Source.published("HSE AIS33: a lap belt without a roll structure is warned against, sit-astride machines");
    private static final Source REAR_BRAKES = Source.published(
            "Accident Analysis and Prevention, 2006: locking the rear wheels downhill costs yaw stability and can end in a rollover");
    private static final Source STEERED_AXLE = Source.weak(
            "20 % of the laden mass on the steered axle, asked of goods vehicles by Regulation (EU) 1230/2012 as read in a reprint;"
                    + " for this class of vehicle a rule of thumb");
    private static final Source PITCH = Source.published(
            "ANSI/SVIA 1-2000 as given in a static-stability presentation: pitch coefficient of 1.0 asked of all-terrain vehicles");
    private static final Source DRIVER_ALONE =
            Source.derived("composite centre of gravity of the driver alone and of everybody");
    private static final Source SPACERS = Source.COMMON_PRACTICE;
    private static final Source ASIDE = Source.weak(
            "owner of a vehicle that wandered above 19 km/h: rear axle moved 50 mm aside, toe found far out");
    private static final Source RATINGS = Source.regulation("49 CFR 571.3: only the maker sets GVWR and GAWR");
    private static final Source PLAUSIBLE = Source.COMMON_PRACTICE;
    private static final Source HIGH_FRICTION =
            Source.memory("Wong, Theory of Ground Vehicles, ch. 1: dry asphalt and concrete 0.80 to 0.90 at the peak");

    private static final Caution NOT_A_TEST = new Caution(
            "arithmetic-is-not-a-test",
            "Static arithmetic of a rigid vehicle on firm, even ground. Tyres, springs, steering, ruts and people who move take more"
                    + " away. It is no rating and no approval; only a test on a tilt table and on the track shows what a vehicle stands.");

    private static final Caution NO_ROAD_CAR_RATING = new Caution(
            "no-road-car-rating",
            "Rollover ratings of road cars are not used here: they were fitted to cars and have no value at the factors of such vehicles.");

    private static final Caution RECALLS = new Caution(
            "check-recalls",
            "Rear seats, steering knuckles and suspension arms of such vehicles have been recalled as delivered. Check the maker's recall"
                    + " list before adding load, lift or wheel offset.");

    private StabilityFindings() {}

    static void find(Input input, Result result, Trace trace) {
        trace.caution(NOT_A_TEST);
        trace.caution(NO_ROAD_CAR_RATING);
        if (input.told().lifted() || input.told().spacerM() > 0) {
            trace.caution(RECALLS);
        }
        String driven = input.hasPeople() || input.empty() == null ? OCCUPIED : null;
        judge(result.occupied(), driven, input, trace);
        sideways(result, driven, input, trace);
        State empty = result.empty();
        if (empty != null && input.hasPeople()) {
            judge(empty, EMPTY, input, trace);
        }
        Worst worst = result.worst();
        if (worst != null) {
            worst(worst, input, trace);
        }
        driverAlone(result, trace);
        rearmost(result, trace);
        people(input, result, trace);
        brakes(input, result, trace);
        settling(input, driven, trace);
        oddInput(input, result, trace);
    }

    private static void settling(Input input, @Nullable String name, Trace trace) {
        if (input.settling() == null || input.heightMeasured()) {
            return;
        }
        double drop = Stability.dropM(input.occupied(), input.settling(), input, Trace.withoutWorking());
        if (!Stability.believed(drop, input.occupied())) {
            trace.find(Finding.of(
                            "springs-not-believed",
                            Level.WARNING,
                            "These springs would move the centre of gravity by {actual}; reckoned with the heights as found",
                            PLAUSIBLE)
                    .at("/suspension")
                    .in(name)
                    .actual(new Measure(Math.abs(drop), CLEARANCE))
                    .limit(new Measure(Stability.MOST_DROP_M, CLEARANCE))
                    .action("Check the rate, that of one spring, and the motion ratio"));
        } else {
            trace.find(Finding.of(
                            "settles-on-springs",
                            drop < 0 ? Level.CAUTION : Level.NOTICE,
                            drop < 0
                                    ? "Lighter than as weighed, the vehicle stands with its centre of gravity {actual} higher on springs and"
                                            + " tyres than the heights say; reckoned with that"
                                    : "Under its load springs and tyres bring the centre of gravity {actual} lower than the heights say;"
                                            + " reckoned with that",
                            STATICS)
                    .at("/suspension")
                    .in(name)
                    .actual(new Measure(Math.abs(drop), CLEARANCE)));
        }
    }

    /** In words, for a message. */
    static String who(List<Aboard> aboard) {
        if (aboard.isEmpty()) {
            return "nobody aboard";
        }
        return aboard.stream()
                .map(one -> one.name() != null ? one.name() : one.pointer())
                .collect(Collectors.joining(", "));
    }

    private static void worst(Worst worst, Input input, Trace trace) {
        Sideways sideways = worst.state().sideways();
        if (sideways == null) {
            return;
        }
        SideLimit weaker = sideways.weaker();
        String who = worst.asDriven() && input.fixed() == null ? "as driven" : "with " + who(worst.aboard());
        String state = worst.aboard().isEmpty() && !worst.asDriven() ? EMPTY : OCCUPIED;
        if (weaker.factor() <= 0) {
            trace.find(tipsAtRest(weaker).in(state));
            return;
        }
        if (weaker.factor() < PROPOSED_FLOOR) {
            trace.find(
                    Finding.of(
                                    "below-proposed-threshold",
                                    Level.WARNING,
                                    "In its worst filling, " + who + ", the static stability factor to the "
                                            + weaker.side()
                                            + " is {actual}; {limit} g of lateral acceleration was once proposed as the least before a side-by-side"
                                            + " tips, and a vehicle stands less than its static factor says",
                                    PROPOSED)
                            .at(
                                    worst.aboard().isEmpty()
                                            ? null
                                            : worst.aboard().get(0).pointer())
                            .in(state)
                            .actual(Measure.number(weaker.factor()))
                            .limit(Measure.number(PROPOSED_FLOOR))
                            .action(
                                    "Lower what sits high, widen the track within what hubs and bearings allow, or limit the speed"));
        }
        Turn fullLock = sideways.fullLock();
        First first = First.of(weaker.factor(), input.friction());
        Measure friction = Measure.number(input.friction());
        Measure factor = Measure.number(weaker.factor());
        if (first == First.SLIDES) {
            trace.find(Finding.of(
                            "slides-before-tipping",
                            Level.WARNING,
                            "On even ground the tyres slide at a friction of {actual} before it tips at {limit}. That is no safety: a rut,"
                                    + " a kerb, a tuft or soft ground stops the slide and trips it over",
                            TRIPPED)
                    .at("/ground/friction")
                    .in(state)
                    .actual(friction)
                    .limit(factor)
                    .action("Take the tip speed, not the slide, as the limit wherever wheels can catch"));
        } else {
            String clause = fullLock == null ? "" : "; at full lock this takes a speed of {limit}";
            trace.find(Finding.of(
                            "tips-before-sliding",
                            Level.DANGER,
                            first == First.TIPS
                                    ? "It tips before it slides, " + who + ", over the wheels on the " + weaker.side()
                                            + ": the tyres hold a friction of {actual}" + clause
                                    : "It may tip before it slides, " + who + ", over the wheels on the "
                                            + weaker.side()
                                            + ": the friction of {actual} lies in the band that tests of similar vehicles support"
                                            + clause,
                            first == First.TIPS ? STATICS : Footprint.BAND)
                    .at("/ground/friction")
                    .in(state)
                    .actual(friction)
                    .limit(fullLock == null ? factor : new Measure(fullLock.tipSpeed(), SPEED))
                    .action("Keep speed and lock well below it, and limit the speed for tight turns"));
        }
    }

    private static void judge(State state, @Nullable String name, Input input, Trace trace) {
        Sideways sideways = state.sideways();
        if (sideways != null) {
            SideLimit weaker = sideways.weaker();
            if (weaker.factor() <= 0) {
                trace.find(tipsAtRest(weaker).in(name));
            }
            if (EMPTY.equals(name)) {
                slope(sideways, name, trace);
                turn(sideways.turn(), true, sideways, name, input, trace);
            }
        }
        for (AxleLoads loads : state.lengthways().loads()) {
            front(loads, name, trace);
            ratings(loads, name, input, trace);
        }
        climb(state, name, input, trace);
    }

    /** Of the vehicle as driven and its worst filling the one that stands less. */
    private static void sideways(Result result, @Nullable String name, Input input, Trace trace) {
        Sideways driven = result.occupied().sideways();
        Sideways worst = result.worst() == null ? null : result.worst().state().sideways();
        if (driven == null || worst == null) {
            return;
        }
        Slope slope = driven.slope();
        if (slope != null) {
            Side downhill = slope.downhill();
            boolean worstIsWeaker =
                    worst.limit(downhill).factor() < driven.limit(downhill).factor();
            slope(worstIsWeaker ? worst : driven, name, trace);
        }
        turn(worst.turn(), true, worst, name, input, trace);
        turn(worst.fullLock(), false, worst, name, input, trace);
    }

    private static Finding tipsAtRest(SideLimit weaker) {
        return Finding.of(
                        "tips-at-rest",
                        Level.DANGER,
                        "The centre of gravity lies outside the line through the wheels on the " + weaker.side()
                                + ": it tips over standing",
                        STATICS)
                .actual(Measure.number(weaker.factor()))
                .limit(Measure.number(0))
                .action("Check the positions: y counts to the right from the centre plane");
    }

    private static void slope(Sideways sideways, @Nullable String name, Trace trace) {
        Slope slope = sideways.slope();
        if (slope == null || sideways.limit(slope.downhill()).factor() <= 0) {
            return;
        }
        double factor = sideways.limit(slope.downhill()).factor();
        double low = Math.atan(Footprint.BAND_LOW * factor);
        if (slope.slopeRad() >= slope.tipsAtRad()) {
            trace.find(sideSlope(
                            "side-slope-tips",
                            Level.DANGER,
                            "On this side slope of {actual} it goes over to the " + slope.downhill()
                                    + ", at {limit} and more",
                            slope,
                            slope.tipsAtRad(),
                            STATICS)
                    .in(name));
        } else if (slope.slopeRad() >= low) {
            trace.find(sideSlope(
                            "side-slope-in-band",
                            Level.DANGER,
                            "On this side slope of {actual} similar vehicles have gone over in tests, from {limit} on; springs, a bump or a"
                                    + " passenger who moves is enough",
                            slope,
                            low,
                            Footprint.BAND)
                    .in(name));
        }
        if (slope.slopeRad() >= slope.slidesAtRad()) {
            trace.find(sideSlope(
                            "side-slope-slides",
                            Level.WARNING,
                            "On this side slope of {actual} the tyres slide, from {limit} on; what stops them trips the vehicle over",
                            slope,
                            slope.slidesAtRad(),
                            STATICS)
                    .in(name));
        }
    }

    private static Finding sideSlope(
            String code, Level level, String message, Slope slope, double limitRad, Source source) {
        return Finding.of(code, level, message, source)
                .at("/ground/sideSlope")
                .actual(new Measure(slope.slopeRad(), ANGLE))
                .limit(new Measure(limitRad, ANGLE))
                .action("Drive straight up and down instead, or go another way");
    }

    private static void turn(
            @Nullable Turn turn, boolean planned, Sideways sideways, @Nullable String name, Input input, Trace trace) {
        if (turn == null || turn.acceleration() == null) {
            return;
        }
        String where = planned ? "on the planned radius" : "at full lock";
        String code = planned ? "planned-turn" : "full-lock";
        Measure acceleration = new Measure(turn.acceleration(), ACCELERATION);
        double low = STANDARD_GRAVITY * sideways.limit(turn.outside()).bandLow();
        double grip = STANDARD_GRAVITY * input.friction();
        if (low > 0 && turn.acceleration() >= low) {
            trace.find(Finding.of(
                            code + "-tips",
                            Level.DANGER,
                            "The planned speed " + where
                                    + " asks for {actual} of lateral acceleration; {limit} is where similar vehicles"
                                    + " have tipped in tests, if the tyres hold or anything trips them",
                            Footprint.BAND)
                    .at("/manoeuvre/speed")
                    .in(name)
                    .actual(acceleration)
                    .limit(new Measure(low, ACCELERATION))
                    .action("Slow down, or take a wider turn"));
        }
        if (turn.acceleration() >= grip) {
            trace.find(Finding.of(
                            code + "-slides",
                            Level.WARNING,
                            "The planned speed " + where
                                    + " asks for {actual} of lateral acceleration, the tyres hold {limit}",
                            STATICS)
                    .at("/manoeuvre/speed")
                    .in(name)
                    .actual(acceleration)
                    .limit(new Measure(grip, ACCELERATION))
                    .action("Slow down; a slide ends at the first thing that trips the wheels"));
        }
    }

    private static void front(AxleLoads loads, @Nullable String name, Trace trace) {
        if (loads.condition() == Condition.BRAKING_LIMIT) {
            return;
        }
        String doing = switch (loads.condition()) {
            case LEVEL -> "Standing on the level";
            case ON_GRADE -> "On the planned grade";
            case PLANNED -> "With the planned acceleration";
            default -> "Pulling away as hard as the tyres hold";
        };
        String pointer = switch (loads.condition()) {
            case ON_GRADE -> "/ground/grade";
            case PLANNED -> "/manoeuvre/acceleration";
            default -> null;
        };
        double share = loads.frontShare();
        if (share <= 0) {
            trace.find(Finding.of(
                            "front-lifts",
                            Level.DANGER,
                            doing + " the front wheels leave the ground: their share of the load is {actual}",
                            STATICS)
                    .at(pointer)
                    .in(name)
                    .actual(Measure.number(share))
                    .limit(Measure.number(0))
                    .action("Move mass forward, limit the torque, or keep off the grade"));
        } else if (share < LIGHT_FRONT) {
            trace.find(Finding.of(
                            "front-axle-light",
                            Level.WARNING,
                            doing
                                    + " the front axle carries a share of {actual}; below {limit} it steers poorly long before it lifts",
                            STEERED_AXLE)
                    .at(pointer)
                    .in(name)
                    .actual(Measure.number(share))
                    .limit(Measure.number(LIGHT_FRONT))
                    .action("Move mass forward, or limit the torque"));
        }
    }

    private static void ratings(AxleLoads loads, @Nullable String name, Input input, Trace trace) {
        if (loads.condition() != Condition.LEVEL && loads.condition() != Condition.ON_GRADE) {
            return;
        }
        boolean level = loads.condition() == Condition.LEVEL;
        rating(loads.frontN(), input.ratings().frontN(), "front", level, name, trace);
        rating(loads.rearN(), input.ratings().rearN(), "rear", level, name, trace);
        if (level) {
            rating(loads.frontN() + loads.rearN(), input.ratings().totalN(), "total", true, name, trace);
        }
    }

    private static void rating(
            double loadN, @Nullable Double ratingN, String which, boolean level, @Nullable String name, Trace trace) {
        if (ratingN != null && loadN > ratingN) {
            String what = which.equals("total") ? "The vehicle weighs" : "The " + which + " axle carries";
            trace.find(Finding.of(
                            "over-rating",
                            Level.WARNING,
                            what + " {actual}" + (level ? "" : " on the planned grade")
                                    + ", more than its rating of {limit}",
                            RATINGS)
                    .at("/chassis/ratings/" + which)
                    .in(name)
                    .actual(new Measure(loadN, LOAD))
                    .limit(new Measure(ratingN, LOAD))
                    .action("Take mass off or move it; a modifier can't raise a rating"));
        }
    }

    private static void climb(State state, @Nullable String name, Input input, Trace trace) {
        Lengthways.Traction traction = state.lengthways().traction();
        Double grade = input.gradeRad();
        if (traction != null && grade != null && grade > traction.gradeRad() && traction.gradeRad() > 0) {
            trace.find(Finding.of(
                            "no-grip-for-the-grade",
                            Level.WARNING,
                            "The driven tyres climb {limit} at most; on {actual} they spin or the front lifts",
                            STATICS)
                    .at("/ground/grade")
                    .in(name)
                    .actual(new Measure(grade, GRADE))
                    .limit(new Measure(traction.gradeRad(), GRADE))
                    .action("Don't try it with a run-up: it ends in rolling back"));
        }
    }

    private static void driverAlone(Result result, Trace trace) {
        SideLimit alone = result.driverAlone();
        Sideways sideways = result.occupied().sideways();
        if (alone == null || sideways == null) {
            return;
        }
        double everybody = sideways.weaker().factor();
        if (alone.factor() < everybody) {
            trace.find(Finding.of(
                            "driver-alone-worse",
                            Level.CAUTION,
                            "The driver alone leaves a factor of {actual} to the " + alone.side()
                                    + ", everybody aboard leaves {limit}: an emptier vehicle is not the safer one",
                            DRIVER_ALONE)
                    .in(OCCUPIED)
                    .actual(Measure.number(alone.factor()))
                    .limit(Measure.number(everybody))
                    .action("Seat a lone driver nearer the middle, or put ballast low on the other side"));
        }
    }

    private static void rearmost(Result result, Trace trace) {
        Stability.Rearmost rearmost = result.rearmost();
        double coefficient = rearmost == null
                ? result.occupied().lengthways().frontLift().coefficient()
                : Math.tan(rearmost.gradeRad());
        if (coefficient < LEAST_PITCH) {
            String who = rearmost == null ? "As driven" : "With " + who(rearmost.aboard());
            trace.find(Finding.of(
                            "front-lift-reserve",
                            Level.CAUTION,
                            who
                                    + " the lever to the rear axle is {actual} times the height of the centre of gravity; {limit} is asked of"
                                    + " all-terrain vehicles against going over backwards",
                            PITCH)
                    .in(OCCUPIED)
                    .actual(Measure.number(coefficient))
                    .limit(Measure.number(LEAST_PITCH))
                    .action("Move mass forward and down, and start on hills gently"));
        }
    }

    private static void people(Input input, Result result, Trace trace) {
        Double fast = input.speedMPS();
        if (input.topSpeedMPS() != null && (fast == null || input.topSpeedMPS() > fast)) {
            fast = input.topSpeedMPS();
        }
        List<Aboard> unbelted = input.movable().stream()
                .filter(one -> one.person() != null
                        && !Boolean.TRUE.equals(one.person().belt()))
                .toList();
        boolean belted = false;
        for (Aboard one : input.movable()) {
            Person person = one.person();
            if (person == null) {
                continue;
            }
            belted |= Boolean.TRUE.equals(person.belt());
            person(one, person, result, trace);
        }
        if (!input.hasPeople()) {
            if (input.fixed() != null) {
                trace.find(Finding.of(
                                "nobody-aboard",
                                Level.CAUTION,
                                "No occupant was sent: people sit high and to one side, and make it tip earlier than these figures say",
                                Source.derived("composite centre of gravity"))
                        .at("/occupants")
                        .action("Send everybody who may sit on it, the driver first"));
            }
            return;
        }
        thrownOut(result, !unbelted.isEmpty(), trace);
        if (fast != null && fast > BELT_SPEED && !unbelted.isEmpty()) {
            trace.find(Finding.of(
                            "belt-above-speed",
                            Level.WARNING,
                            "At {actual} not everybody wears a belt (" + who(unbelted)
                                    + "); the proposed rule would have kept a side-by-side from going faster than {limit} until the belts were"
                                    + " fastened",
                            PROPOSED)
                    .at(unbelted.get(0).pointer() + "/belt")
                    .in(OCCUPIED)
                    .actual(new Measure(fast, SPEED))
                    .limit(new Measure(BELT_SPEED, SPEED))
                    .action("Limit the speed, or fit belts together with a roll structure"));
        }
        if (belted) {
            trace.find(Finding.of(
                            "belt-needs-roll-structure",
                            Level.CAUTION,
                            "A lap belt belongs with a roll structure: without one it holds people under a vehicle that goes over",
                            ROLL_STRUCTURE)
                    .at("/occupants")
                    .in(OCCUPIED)
                    .action("Fit belts and a tested roll structure together; arithmetic can't judge a cage"));
        }
    }

    private static void thrownOut(Result result, boolean unbelted, Trace trace) {
        Sideways sideways = result.occupied().sideways();
        Turn planned = sideways == null ? null : sideways.turn() != null ? sideways.turn() : sideways.fullLock();
        Double acceleration = planned == null ? null : planned.acceleration();
        double limit = THROWN_OUT * STANDARD_GRAVITY;
        boolean over = acceleration != null && acceleration >= limit;
        Finding finding = Finding.of(
                        "thrown-out-before-tipping",
                        over ? (unbelted ? Level.DANGER : Level.WARNING) : unbelted ? Level.WARNING : Level.CAUTION,
                        (over
                                        ? "The planned turn pulls sideways with {actual}; people have been thrown out of such turns, about"
                                                + " {limit}, well below the tip limit"
                                        : "People leave the seat well below the tip limit: they have been thrown out of turns of about"
                                                + " {limit}")
                                + (unbelted ? ", and not everybody wears a belt" : ""),
                        EJECTION)
                .at(unbelted ? "/occupants" : "/manoeuvre/speed")
                .in(OCCUPIED)
                .limit(new Measure(limit, ACCELERATION))
                .action(
                        "Belts for everybody together with a roll structure, high side restraints, and less speed in tight turns");
        trace.find(acceleration == null ? finding : finding.actual(new Measure(acceleration, ACCELERATION)));
    }

    private static void person(Aboard one, Person person, Result result, Trace trace) {
        String name = one.name() != null ? one.name() : person.driver() ? "the driver" : "a passenger";
        if (person.facing() == Facing.REARWARD) {
            rearFacing(one, person, name, result, trace);
        }
        if (one.massKg() <= CHILD_KG && !person.driver()) {
            trace.find(Finding.of(
                            "child-needs-belt",
                            Boolean.TRUE.equals(person.belt()) ? Level.CAUTION : Level.WARNING,
                            name
                                    + " weighs {actual}: a child slides out under or over a hip restraint in a moderate turn",
                            CHILD)
                    .at(one.pointer() + "/belt")
                    .in(OCCUPIED)
                    .actual(new Measure(one.massKg(), MASS))
                    .limit(new Measure(CHILD_KG, MASS))
                    .action("A belt that fits a child, an adult beside it, and walking pace in turns"));
        }
    }

    private static void rearFacing(Aboard one, Person person, String name, Result result, Trace trace) {
        Double height = person.restraintHeightM();
        String pointer = one.pointer() + "/restraintHeight";
        if (height == null) {
            trace.find(Finding.of(
                            "restraint-not-known",
                            Level.CAUTION,
                            name
                                    + " faces rearward: measure the side restraint, it should stand {limit} above the seat",
                            RESTRAINT)
                    .at(pointer)
                    .in(OCCUPIED)
                    .limit(new Measure(RESTRAINT_M, CLEARANCE)));
        } else if (height < RESTRAINT_M) {
            trace.find(Finding.of(
                            "restraint-low",
                            Level.WARNING,
                            "The side restraint of " + name
                                    + ", who faces rearward, stands {actual} above the seat; sharp turns need {limit}",
                            RESTRAINT)
                    .at(pointer)
                    .in(OCCUPIED)
                    .actual(new Measure(height, CLEARANCE))
                    .limit(new Measure(RESTRAINT_M, CLEARANCE))
                    .action("Fit a higher restraint"));
        }
        Lengthways.Traction traction = result.occupied().lengthways().traction();
        if (traction != null && traction.acceleration() > 0) {
            trace.find(Finding.of(
                            "rear-facing-launch",
                            Level.CAUTION,
                            name + " faces rearward with nothing ahead: the tyres can pull away with {actual}",
                            RESTRAINT)
                    .at(one.pointer() + "/facing")
                    .in(OCCUPIED)
                    .actual(new Measure(traction.acceleration(), ACCELERATION))
                    .action("A bar or belt in front of the rider, and a soft start set in the controller"));
        }
    }

    private static void brakes(Input input, Result result, Trace trace) {
        if (input.braked() != AxleSet.REAR) {
            return;
        }
        Braking braking = result.occupied().lengthways().braking();
        if (braking == null) {
            return;
        }
        Double downhill = braking.downhill();
        Finding finding;
        if (downhill == null) {
            finding = Finding.of(
                            "rear-brakes-only",
                            Level.CAUTION,
                            "Only the rear wheels brake: they lose load as they work and stop it with {actual} at most; downhill they lock"
                                    + " first and the rear swings round",
                            REAR_BRAKES)
                    .actual(new Measure(braking.deceleration(), ACCELERATION));
        } else {
            boolean runsAway = downhill <= 0;
            finding = Finding.of(
                            "rear-brakes-downhill",
                            runsAway ? Level.DANGER : Level.WARNING,
                            runsAway
                                    ? "Down this grade the rear wheels, which alone brake, can't hold it: {actual} is left, on the level"
                                            + " it is {limit}; the rear locks and swings round"
                                    : "Down this grade the rear wheels, which alone brake, leave {actual} to stop with, on the level it is"
                                            + " {limit}; harder and they lock and the rear swings round",
                            REAR_BRAKES)
                    .actual(new Measure(downhill, ACCELERATION))
                    .limit(new Measure(braking.deceleration(), ACCELERATION));
        }
        trace.find(finding.at("/chassis/braked")
                .in(input.hasPeople() ? OCCUPIED : null)
                .action("Brake all four wheels before speed, height or load goes up; go down at walking pace"));
    }

    private static void oddInput(Input input, Result result, Trace trace) {
        Footprint footprint = input.footprint();
        if (footprint != null) {
            threeWheels(footprint, result, trace);
            tracks(footprint, input, trace);
            inLine(footprint, trace);
        }
        if (input.friction() > HIGHEST_FRICTION) {
            trace.find(friction(input, HIGHEST_FRICTION, "on any ordinary ground", HIGH_FRICTION));
        } else if (input.told().surface() != null) {
            Grip grip = Grip.of(input.told().surface());
            if (input.friction() > grip.high().value()) {
                trace.find(friction(
                        input,
                        grip.high().value(),
                        "on " + input.told().surface(),
                        grip.high().source()));
            }
        }
        degrees(input.gradeRad(), input.told().gradeInDegrees(), "/ground/grade", trace);
        degrees(input.sideSlopeRad(), input.told().sideSlopeInDegrees(), "/ground/sideSlope", trace);
        if (input.told().spacerM() > 0) {
            trace.find(
                    Finding.of(
                                    "spacers-load-bearings",
                                    Level.CAUTION,
                                    "Spacers and wheels that stand farther out, {actual} on the track, bend studs and load wheel bearings, kingpins and"
                                            + " ball joints more than they were made for; they also change steering feel and scrub radius",
                                    SPACERS)
                            .at("/chassis/wheelChanges")
                            .actual(new Measure(input.told().spacerM(), CLEARANCE))
                            .action(
                                    "Use hub-centred spacers with studs long enough, keep to the maker's offset limits, and check bearings and nuts"));
        }
        Footprint.Roll roll = input.roll();
        if (roll != null && roll.axisHeightM() >= input.occupied().zM()) {
            trace.find(Finding.of(
                            "roll-axis-too-high",
                            Level.NOTICE,
                            "The roll axis at {actual} does not lie below the centre of gravity at {limit}; the formula for a body on springs"
                                    + " does not hold there and its value is left out",
                            Source.memory("Gillespie, Fundamentals of Vehicle Dynamics, ch. 9"))
                    .at("/suspension/roll/axisHeight")
                    .actual(new Measure(roll.axisHeightM(), LENGTH))
                    .limit(new Measure(input.occupied().zM(), LENGTH)));
        }
        Double radius = input.radiusM();
        Double lock = input.turningRadiusM();
        if (radius != null && lock != null && radius < 0.5 * lock) {
            trace.find(Finding.of(
                            "tighter-than-full-lock",
                            Level.NOTICE,
                            "The planned radius of {actual} is far tighter than the turning radius of {limit}: it can't be driven without a slide",
                            STATICS)
                    .at("/manoeuvre/radius")
                    .actual(new Measure(radius, LENGTH))
                    .limit(new Measure(lock, LENGTH)));
        }
        if (lock != null && footprint != null && lock <= input.wheelbaseM()) {
            trace.find(Finding.of(
                            "turning-radius-short",
                            Level.CAUTION,
                            "A turning radius of {actual} with a wheelbase of {limit} is not the path of an outer front wheel; it is taken as"
                                    + " the path of the centre of gravity",
                            STATICS)
                    .at("/chassis/turningRadius")
                    .actual(new Measure(lock, LENGTH))
                    .limit(new Measure(input.wheelbaseM(), LENGTH))
                    .action("Measure the radius, not the diameter, of the track that the outer front wheel leaves"));
        }
    }

    private static Finding friction(Input input, double limit, String where, Source source) {
        return Finding.of(
                        "friction-high",
                        Level.CAUTION,
                        "A friction of {actual} is more than the {limit} that tyres reach " + where
                                + "; too high a value makes grip, climbing and stopping look better than they are",
                        source)
                .at("/ground/friction")
                .actual(Measure.number(input.friction()))
                .limit(Measure.number(limit))
                .action("Check that it is a coefficient and not a percentage, and take a lower one");
    }

    private static void degrees(@Nullable Double slopeRad, boolean inDegrees, String pointer, Trace trace) {
        if (inDegrees && slopeRad != null) {
            SlopeInDegrees.find(slopeRad, pointer, trace);
        }
    }

    private static void threeWheels(Footprint footprint, Result result, Trace trace) {
        Sideways sideways = result.worst() == null
                ? result.occupied().sideways()
                : result.worst().state().sideways();
        if (footprint.plan() == WheelPlan.FOUR_WHEELS || sideways == null) {
            return;
        }
        SideLimit weaker = sideways.weaker();
        trace.find(
                Finding.of(
                                "three-wheels",
                                Level.CAUTION,
                                "Three wheels: it tips over the line from the single wheel to one of the pair. Braking or pulling away in a turn"
                                        + " tips it at {actual} times its weight, the turn alone at {limit}",
                                Source.derived("moments about the line through two contact points"))
                        .at("/chassis/wheelPlan")
                        .actual(Measure.number(weaker.least()))
                        .limit(Measure.number(weaker.factor()))
                        .action(
                                "Brake before the turn and pull away after it; take the least factor as the limit where both come together"));
    }

    private static void inLine(Footprint footprint, Trace trace) {
        double aside = Math.abs(footprint.rearToRightM() - footprint.frontToRightM());
        if (aside > 0) {
            trace.find(Finding.of(
                            "axles-not-in-line",
                            Level.CAUTION,
                            "The rear axle stands {actual} aside of the front one: the rear wheels run in tracks of their own, and the"
                                    + " vehicle tips earlier to one side",
                            ASIDE)
                    .at("/chassis/wheelChanges")
                    .actual(new Measure(aside, CLEARANCE))
                    .action("Measure toe, and whether the axle stands square, before adding speed"));
        }
    }

    private static void tracks(Footprint footprint, Input input, Trace trace) {
        double front = footprint.frontTrackM();
        double rear = footprint.rearTrackM();
        halfTrack(front, input.wheelbaseM(), "/chassis/frontTrack", trace);
        halfTrack(rear, input.wheelbaseM(), "/chassis/rearTrack", trace);
        if (front > 0 && rear > 0 && Math.min(front, rear) < TRACKS_ALIKE * Math.max(front, rear)) {
            trace.find(Finding.of(
                            "tracks-unlike",
                            Level.WARNING,
                            "The narrower track is only {actual} of the wider one: was it measured from the middle of the vehicle?",
                            PLAUSIBLE)
                    .at(front < rear ? "/chassis/frontTrack" : "/chassis/rearTrack")
                    .actual(Measure.number(Math.min(front, rear) / Math.max(front, rear)))
                    .limit(Measure.number(TRACKS_ALIKE))
                    .action("Measure from tyre centre to tyre centre"));
        }
        for (Aboard one : input.movable()) {
            double outside = Math.min(
                    footprint.acrossM(Side.LEFT, one.xM(), one.yM()),
                    footprint.acrossM(Side.RIGHT, one.xM(), one.yM()));
            if (one.person() != null && outside < 0 && footprint.plan() == WheelPlan.FOUR_WHEELS) {
                trace.find(Finding.of(
                                "sits-outside-the-wheels",
                                Level.WARNING,
                                (one.name() != null ? one.name() : "A person")
                                        + " sits {actual} outside the line of the wheels: half tracks sent as tracks, or a wrong position?",
                                PLAUSIBLE)
                        .at(one.pointer() + "/position/y")
                        .actual(new Measure(-outside, CLEARANCE))
                        .action("Measure tracks from tyre centre to tyre centre, and y from the centre plane"));
            }
        }
    }

    private static void halfTrack(double trackM, double wheelbaseM, String pointer, Trace trace) {
        double least = Math.max(LEAST_TRACK_M, LEAST_TRACK_SHARE * wheelbaseM);
        if (trackM > 0 && trackM < least) {
            trace.find(Finding.of(
                            "half-track",
                            Level.WARNING,
                            "A track of {actual} is less than the {limit} that such a vehicle would have at least: probably half a track was measured",
                            PLAUSIBLE)
                    .at(pointer)
                    .actual(new Measure(trackM, LENGTH))
                    .limit(new Measure(least, LENGTH))
                    .action("Measure from tyre centre to tyre centre, not to the middle of the vehicle"));
        }
    }
}

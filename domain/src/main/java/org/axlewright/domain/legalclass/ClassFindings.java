package org.axlewright.domain.legalclass;

import static org.axlewright.domain.quantity.Dimension.MASS;
import static org.axlewright.domain.quantity.Dimension.SPEED;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.axlewright.domain.legalclass.Classification.Crossing;
import org.axlewright.domain.legalclass.Classification.Judged;
import org.axlewright.domain.legalclass.Classification.JudgedClass;
import org.axlewright.domain.legalclass.Classification.Neighbours;
import org.axlewright.domain.legalclass.Classification.Result;
import org.axlewright.domain.legalclass.Classification.Threshold;
import org.axlewright.domain.quantity.SpeedUnit;
import org.axlewright.domain.trace.Caution;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Trace;

/** What stands out in the class of a vehicle. */
final class ClassFindings {

    /** A limiter that ramps down over a band lets a vehicle pass its setting by this much, m/s. */
    static final double OVERSHOOT = SpeedUnit.KILOMETRE_PER_HOUR.toSi(3);

    /** Above it no light class of the United States takes a vehicle on the road, m/s. */
    static final double LOW_SPEED = SpeedUnit.MILE_PER_HOUR.toSi(25);

    /** Below it a vehicle on public roads counts as slow-moving, m/s. */
    private static final double SLOW_MOVING = SpeedUnit.MILE_PER_HOUR.toSi(25);

    private static final Set<Aspect> MASSES =
            Set.of(Aspect.GROSS_RATING, Aspect.PAYLOAD, Aspect.UNLADEN_MASS, Aspect.RUNNING_ORDER_MASS);

    private static final Source RATINGS = Source.regulation("49 CFR 571.3: the ratings are the maker's");

    private static final Caution LOCAL_LAW = new Caution(
            "local-law-decides",
            "This holds figures against published thresholds; it is no approval and no legal advice. State, provincial, national and"
                    + " local law decides where such a vehicle may run, who may drive it and what it must carry. Ask before you build.");
    private static final Caution MAKER_RATINGS = new Caution(
            "maker-ratings",
            "Only the maker sets gross ratings of vehicle and axles. A stronger spring, axle or tyre does not raise them.");

    private ClassFindings() {}

    static void find(Vehicle vehicle, Result result, Trace trace) {
        trace.caution(LOCAL_LAW);
        trace.caution(MAKER_RATINGS);
        crossed(vehicle, result, trace);
        missedByOne(result, trace);
        printings(result, trace);
        limiter(vehicle, result, trace);
        ratings(vehicle, result, trace);
        road(vehicle, trace);
        whoChanges(vehicle, result, trace);
    }

    private static void crossed(Vehicle vehicle, Result result, Trace trace) {
        Crossing crossing = result.crossing();
        if (crossing == null || crossing.left().isEmpty()) {
            return;
        }
        Threshold last = vehicle.topSpeedMPerS() > crossing.formerTopSpeedMPerS()
                ? crossing.passed().get(0)
                : crossing.passed().get(crossing.passed().size() - 1);
        trace.find(Finding.of(
                        "class-left-by-speed",
                        Level.WARNING,
                        "At {actual} the vehicle is no longer " + names(crossing.left())
                                + ": the limit stands at {limit}"
                                + (crossing.becomes().isEmpty() ? "" : ". It becomes " + names(crossing.becomes())),
                        last.condition().source())
                .at("/use/topSpeed")
                .actual(new Measure(vehicle.topSpeedMPerS(), SPEED))
                .limit(new Measure(last.condition().lowSi(), SPEED))
                .action("Stay below the limit, or fit and certify what the new class asks; see what it brings"));
    }

    private static String names(List<JudgedClass> classes) {
        return classes.stream()
                .map(one -> one.type().name() + " (" + one.type().region() + ")")
                .collect(Collectors.joining(", "));
    }

    /** Classes of the road that a single figure keeps the vehicle out of. */
    private static void missedByOne(Result result, Trace trace) {
        for (JudgedClass one : result.classes()) {
            if (one.type().kind() == VehicleClass.Kind.PLACE || one.failed().size() != 1) {
                continue;
            }
            Judged failed = one.failed().get(0);
            Aspect aspect = failed.condition().aspect();
            if (MASSES.contains(aspect)) {
                missed("class-left-by-mass", "mass", one, failed, Level.CAUTION, trace);
            } else if (aspect == Aspect.SEATS) {
                missed("class-left-by-seats", "seats", one, failed, Level.CAUTION, trace);
            } else if (aspect == Aspect.TOP_SPEED
                    && failed.condition().relation().upper()
                    && result.crossing() == null
                    && Objects.requireNonNullElse(failed.margin(), 0.0) > -2 * OVERSHOOT) {
                missed("class-left-by-speed", "speed", one, failed, Level.NOTICE, trace);
            }
        }
    }

    private static void missed(String code, String what, JudgedClass one, Judged failed, Level level, Trace trace) {
        Condition condition = failed.condition();
        double limit = condition.relation().upper() ? condition.lowSi() : condition.highSi();
        boolean bound = !failed.known().exact();
        trace.find(Finding.of(
                        code,
                        level,
                        "Only its " + what + " keeps it from " + one.type().name() + " ("
                                + one.type().region()
                                + "): " + condition.aspect() + " " + (bound ? "is at least " : "")
                                + "{actual}, the class asks "
                                + condition.relation() + " " + condition.printed(),
                        condition.source())
                .at(condition.aspect().pointers().get(0))
                .actual(new Measure(failed.known().from(), condition.aspect().dimension()))
                .limit(new Measure(limit, condition.aspect().dimension())));
    }

    /** Where a limit is printed in two units, a speed between the two is past it by one and not by the other. */
    private static void printings(Result result, Trace trace) {
        result.classes().stream()
                .flatMap(one -> one.conditions().stream())
                .filter(one -> one.condition().aspect() == Aspect.TOP_SPEED && one.verdict() == Verdict.UNDECIDED)
                .findFirst()
                .ifPresent(one -> trace.find(Finding.of(
                                "between-printed-limits",
                                Level.WARNING,
                                "{actual} lies at or between the two printings of one limit, "
                                        + one.condition().printed() + ": by one it is past, by the other it is not",
                                one.condition().source())
                        .at("/use/topSpeed")
                        .actual(new Measure(one.known().from(), SPEED))
                        .limit(new Measure(one.condition().lowSi(), SPEED))
                        .action("Set the speed below the lower printing and check it by satellite")));
    }

    private static void limiter(Vehicle vehicle, Result result, Trace trace) {
        Neighbours speed = Objects.requireNonNull(result.neighbours().get(Aspect.TOP_SPEED));
        Threshold above = speed.above();
        if (above != null && above.distance() <= OVERSHOOT) {
            trace.find(Finding.of(
                            "close-to-speed-limit",
                            Level.CAUTION,
                            "{actual} is left to the next limit, "
                                    + above.condition().printed()
                                    + ". A limiter that ramps down passes its setting by up to {limit}, and a display errs",
                            Source.weak("owner's measurement of a limiter with a ramp of 3 km/h"))
                    .at("/use/topSpeed")
                    .actual(new Measure(above.distance(), SPEED))
                    .limit(new Measure(OVERSHOOT, SPEED))
                    .action("Measure the top speed on the level by satellite, both ways, on a full pack"));
        }
        if (vehicle.heldBy() == HeldBy.CONTROLLER || vehicle.heldBy() == HeldBy.STOP) {
            trace.find(Finding.of(
                            "held-by-limiter",
                            Level.CAUTION,
                            "The speed is held by a "
                                    + (vehicle.heldBy() == HeldBy.STOP ? "stop that a tool removes" : "setting")
                                    + ". Classes ask for the speed that the vehicle can attain; a limit that the user can lift may not count",
                            Source.regulation("49 CFR 571.3(b): speed attainable in 1.6 km (1 mile)"))
                    .at("/use/heldBy")
                    .action("Lock the setting, document it, and ask the authority whether it accepts that"));
        }
    }

    private static void ratings(Vehicle vehicle, Result result, Trace trace) {
        Double grossKg = vehicle.ratings().grossKg();
        trace.find(Finding.of(
                        "only-the-maker-rates",
                        Level.NOTICE,
                        "Classes go by the gross rating that the maker states, not by what the vehicle weighs; whoever changes it can't compute a higher one",
                        RATINGS)
                .at("/chassis/ratings/total"));
        Double leastKg = result.leastRatingKg();
        if (grossKg != null && leastKg != null && leastKg > grossKg) {
            trace.find(Finding.of(
                            "rating-below-least",
                            Level.WARNING,
                            "Unladen mass, rated cargo and 68 kg (150 lb) for each seat make {actual}, more than the rating of {limit}",
                            Classification.LEAST_RATING_SOURCE)
                    .at("/chassis/ratings/total")
                    .actual(new Measure(leastKg, MASS))
                    .limit(new Measure(grossKg, MASS))
                    .action("Take seats or mass off, or rate it for less cargo"));
        }
        Double frontKg = vehicle.ratings().frontKg();
        Double rearKg = vehicle.ratings().rearKg();
        if (grossKg != null && frontKg != null && rearKg != null && grossKg > frontKg + rearKg) {
            trace.find(Finding.of(
                            "rating-above-axles",
                            Level.WARNING,
                            "The vehicle is rated {actual}, its axles together {limit}",
                            Classification.LEAST_RATING_SOURCE)
                    .at("/chassis/ratings/total")
                    .actual(new Measure(grossKg, MASS))
                    .limit(new Measure(frontKg + rearKg, MASS))
                    .action("Read the plate again: a vehicle is rated no more than its axles together"));
        }
    }

    private static void road(Vehicle vehicle, Trace trace) {
        if (vehicle.place() != Place.PUBLIC_ROAD) {
            return;
        }
        if (vehicle.topSpeedMPerS() > LOW_SPEED * (1 + 1e-9)) {
            trace.find(Finding.of(
                            "no-light-class-above-25-mph",
                            Level.WARNING,
                            "At {actual} no light class of the United States or Canada takes it on the road: above {limit} it is a motor vehicle that must meet every standard of a car, crash tests among them. A roll cage or a state's medium-speed rule does not replace them",
                            Source.regulation("49 CFR 571.3(b), 571.500"))
                    .at("/use/topSpeed")
                    .actual(new Measure(vehicle.topSpeedMPerS(), SPEED))
                    .limit(new Measure(LOW_SPEED, SPEED))
                    .action("Limit it below the low-speed limit, or keep it off public roads"));
        } else {
            trace.find(Finding.of(
                            "slow-moving",
                            Level.NOTICE,
                            "At {actual} it holds up traffic: vehicles designed for less than {limit} carry the slow-moving emblem in many places",
                            Source.memory("ANSI/ASABE S276: slow-moving vehicle emblem"))
                    .at("/use/topSpeed")
                    .actual(new Measure(vehicle.topSpeedMPerS(), SPEED))
                    .limit(new Measure(SLOW_MOVING, SPEED)));
        }
    }

    private static void whoChanges(Vehicle vehicle, Result result, Trace trace) {
        boolean enters =
                result.crossing() != null && !result.crossing().entered().isEmpty();
        if (vehicle.changedBy() == ChangedBy.SHOP) {
            trace.find(Finding.of(
                            "shop-may-not-disable",
                            Level.CAUTION,
                            "Federal standards bind at the first sale; after it a dealer, rental or repair business may not make safety equipment of a certified vehicle inoperative. Use on the road is state law: ask your state",
                            Source.regulation("49 U.S.C. 30122, as explained in letters of the regulator"))
                    .at("/use/changedBy"));
        } else if (vehicle.changedBy() == ChangedBy.MAKER && enters) {
            trace.find(Finding.of(
                            "certify-before-sale",
                            Level.WARNING,
                            "Changed before the first sale it must be certified to the class it becomes",
                            Source.regulation("49 CFR parts 567 and 568"))
                    .at("/use/changedBy"));
        }
    }
}

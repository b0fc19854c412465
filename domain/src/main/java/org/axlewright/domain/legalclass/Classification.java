package org.axlewright.domain.legalclass;

import static org.axlewright.domain.quantity.Dimension.MASS;
import static org.axlewright.domain.quantity.Dimension.NONE;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.axlewright.domain.legalclass.Condition.Known;
import org.axlewright.domain.legalclass.Condition.Relation;
import org.axlewright.domain.legalclass.VehicleClass.Kind;
import org.axlewright.domain.quantity.MassUnit;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * Holds a vehicle against the published thresholds of every class, says which of them it meets, how far away the next threshold is, and
 * what a change of top speed crossed. Local law decides; the table is a guide to it.
 */
public final class Classification {

    /** Mass of a person at a designated seat, kg: 150 lb. */
    static final double PERSON_KG = MassUnit.POUND.toSi(150);

    static final Source LEAST_RATING_SOURCE =
            Source.regulation("49 CFR 571.3 and 567.4(g)(3), as read in NHTSA interpretation aiam0613");

    private static final Step LEAST_RATING = Step.of(
            "GVWR_min",
            "least gross vehicle weight rating that this vehicle may carry",
            "GVWR_min = m_u + m_c + n·(150 lb), 150 lb = 68.0389 kg; m_c = 0 when no cargo rating is known",
            MASS,
            LEAST_RATING_SOURCE,
            new Symbol("m_u", MASS),
            new Symbol("m_c", MASS),
            new Symbol("n", NONE));
    private static final Step RUNNING_ORDER = Step.of(
            "m_L",
            "mass in running order as class L counts it: without driver and propulsion battery",
            "m_L = m_u − m_b",
            MASS,
            Source.regulation("Regulation (EU) 168/2013 article 5(1) and (2)"),
            new Symbol("m_u", MASS),
            new Symbol("m_b", MASS));
    private static final Step PAYLOAD = Step.of(
            "m_p",
            "payload that the rating leaves",
            "m_p = GVWR − m_u",
            MASS,
            Source.derived("49 CFR 571.3: the rating is the loaded weight"),
            new Symbol("GVWR", MASS),
            new Symbol("m_u", MASS));

    private static final Map<Aspect, Step> ROOM_BELOW = room("limit − actual", "room left below the limit");
    private static final Map<Aspect, Step> ROOM_ABOVE = room("actual − limit", "room left above the limit");

    private Classification() {}

    /** A condition with what is known of the vehicle. */
    public record Judged(
            Condition condition,
            Verdict verdict,
            Known known,
            @Nullable String word,
            @Nullable Double margin) {}

    /** A class with all its conditions. */
    public record JudgedClass(VehicleClass type, Verdict verdict, List<Judged> conditions) {

        /** What would decide it: the places where unknown figures are sent. */
        public List<String> missing() {
            return conditions.stream()
                    .filter(one ->
                            one.verdict() == Verdict.UNDECIDED && !one.known().exact())
                    .flatMap(one -> one.condition().aspect().pointers().stream())
                    .distinct()
                    .toList();
        }

        boolean isOf(@Nullable JudgedClass other) {
            return other != null && type.equals(other.type());
        }

        /** Conditions that are not met. */
        List<Judged> failed() {
            return conditions.stream()
                    .filter(one -> one.verdict() == Verdict.NOT_MET)
                    .toList();
        }
    }

    /** A limit near the vehicle, and the classes that it bounds. */
    public record Threshold(Condition condition, double distance, List<String> classes) {}

    /** The nearest limits on either side of a figure; null where there is none. */
    public record Neighbours(
            double actual,
            @Nullable Threshold below,
            @Nullable Threshold above) {}

    /**
     * What a change of top speed did.
     *
     * @param left what could be met before and can't be now
     * @param entered what could not be met before and can be now
     * @param becomes what fits best now, of each region where something else did before
     */
    public record Crossing(
            double formerTopSpeedMPerS,
            List<Threshold> passed,
            List<JudgedClass> left,
            List<JudgedClass> entered,
            List<JudgedClass> becomes) {

        /** What the classes entered and those that fit now bring. */
        public List<VehicleClass.Duty> brings() {
            return Stream.concat(becomes.stream(), entered.stream())
                    .flatMap(one -> one.type().brings().stream())
                    .distinct()
                    .toList();
        }
    }

    /**
     * The answer.
     *
     * @param fits for each region the class that fits best: the first that is met, else the first that is undecided; none when absent
     * @param neighbours by aspect
     * @param crossing null without a former top speed
     * @param leastRatingKg least rating that the maker may state, kg
     */
    public record Result(
            List<JudgedClass> classes,
            Map<Region, JudgedClass> fits,
            Map<Aspect, Neighbours> neighbours,
            @Nullable Crossing crossing,
            @Nullable Double leastRatingKg,
            @Nullable Double runningOrderKg,
            @Nullable Double payloadKg) {}

    /** Holds the vehicle against every class. Pure. */
    public static Result of(Vehicle vehicle, Trace trace) {
        Map<Aspect, Known> known = known(vehicle, trace);
        List<JudgedClass> classes = judge(vehicle, known, trace);
        Map<Region, JudgedClass> fits = fits(vehicle.place(), classes);
        Map<Aspect, Neighbours> neighbours = new EnumMap<>(Aspect.class);
        known.forEach((aspect, figure) -> {
            if (figure.exact() && aspect.measured()) {
                neighbours.put(aspect, neighbours(aspect, figure.from()));
            }
        });
        Double former = vehicle.formerTopSpeedMPerS();
        Crossing crossing = former == null ? null : crossing(vehicle, former, classes, fits);
        Result result = new Result(
                classes,
                fits,
                neighbours,
                crossing,
                leastRatingKg(vehicle, Trace.withoutWorking()),
                exact(known.get(Aspect.RUNNING_ORDER_MASS)),
                exact(known.get(Aspect.PAYLOAD)));
        ClassFindings.find(vehicle, result, trace);
        return result;
    }

    private static @Nullable Double exact(@Nullable Known known) {
        return known != null && known.exact() ? (Double) known.from() : null;
    }

    private static @Nullable Double leastRatingKg(Vehicle vehicle, Trace trace) {
        Double unladenKg = vehicle.masses().unladenKg();
        if (unladenKg == null || vehicle.seats() == null) {
            return null;
        }
        double cargoKg = Objects.requireNonNullElse(vehicle.masses().cargoKg(), 0.0);
        return trace.note(
                LEAST_RATING, unladenKg + cargoKg + vehicle.seats() * PERSON_KG, unladenKg, cargoKg, vehicle.seats());
    }

    private static Map<Aspect, Known> known(Vehicle vehicle, Trace trace) {
        Map<Aspect, Known> known = new EnumMap<>(Aspect.class);
        known.put(Aspect.TOP_SPEED, Known.exactly(vehicle.topSpeedMPerS()));
        known.put(Aspect.WHEELS, Known.exactly(vehicle.wheels()));
        Double grossKg = vehicle.ratings().grossKg();
        Double unladenKg = vehicle.masses().unladenKg();
        Double leastKg = leastRatingKg(vehicle, trace);
        if (grossKg != null) {
            known.put(Aspect.GROSS_RATING, Known.exactly(grossKg));
        } else if (leastKg != null) {
            known.put(Aspect.GROSS_RATING, new Known(leastKg, Double.POSITIVE_INFINITY));
        }
        if (unladenKg != null) {
            known.put(Aspect.UNLADEN_MASS, Known.exactly(unladenKg));
            Double packKg = vehicle.masses().packKg();
            known.put(
                    Aspect.RUNNING_ORDER_MASS,
                    packKg == null
                            ? new Known(0, unladenKg)
                            : Known.exactly(trace.note(RUNNING_ORDER, unladenKg - packKg, unladenKg, packKg)));
            if (grossKg != null) {
                known.put(Aspect.PAYLOAD, Known.exactly(trace.note(PAYLOAD, grossKg - unladenKg, grossKg, unladenKg)));
            }
        }
        Vehicle.Size size = vehicle.size();
        put(known, Aspect.CARGO, vehicle.masses().cargoKg());
        put(known, Aspect.SEATS, vehicle.seats() == null ? null : (Double) (double) vehicle.seats());
        put(known, Aspect.POWER, vehicle.powerW());
        put(known, Aspect.LENGTH, size.lengthM());
        put(known, Aspect.WIDTH, size.widthM());
        put(known, Aspect.HEIGHT, size.heightM());
        put(known, Aspect.GROUND_CLEARANCE, size.groundClearanceM());
        put(known, Aspect.SEAT_HEIGHT, size.seatHeightM());
        put(known, Aspect.DRAWBAR_PULL, vehicle.drawbarPullN());
        if (size.wheelbaseM() != null && size.groundClearanceM() != null) {
            put(known, Aspect.CLEARANCE_RATIO, size.wheelbaseM() / size.groundClearanceM());
        }
        return known;
    }

    private static void put(Map<Aspect, Known> known, Aspect aspect, @Nullable Double value) {
        if (value != null) {
            known.put(aspect, Known.exactly(value));
        }
    }

    private static List<JudgedClass> judge(Vehicle vehicle, Map<Aspect, Known> known, Trace trace) {
        Map<String, Verdict> verdicts = new LinkedHashMap<>();
        Set<String> noted = new LinkedHashSet<>();
        List<JudgedClass> classes = new ArrayList<>();
        for (VehicleClass type : VehicleClass.all()) {
            List<Judged> conditions = new ArrayList<>();
            Verdict all = Verdict.MET;
            for (Condition condition : type.conditions()) {
                Judged one = condition.aspect().measured()
                        ? measured(condition, known, noted, trace)
                        : worded(condition, vehicle, verdicts);
                conditions.add(one);
                all = all.and(one.verdict());
            }
            verdicts.put(type.code(), all);
            classes.add(new JudgedClass(type, all, List.copyOf(conditions)));
        }
        return List.copyOf(classes);
    }

    private static Judged measured(Condition condition, Map<Aspect, Known> all, Set<String> noted, Trace trace) {
        Aspect aspect = condition.aspect();
        Known known = all.getOrDefault(aspect, Known.NOTHING);
        Verdict verdict = condition.judge(known);
        if (!known.exact() || condition.relation() == Relation.EQUAL) {
            return new Judged(condition, verdict, known, null, null);
        }
        boolean upper = condition.relation().upper();
        double margin = condition.margin(known.from());
        if (trace.keepsWorking() && noted.add(aspect + " " + upper + " " + condition.printed())) {
            double limit = upper ? condition.lowSi() : condition.highSi();
            note(upper ? ROOM_BELOW : ROOM_ABOVE, aspect, margin, limit, known.from(), trace);
        }
        return new Judged(condition, verdict, known, null, margin);
    }

    private static void note(
            Map<Aspect, Step> steps, Aspect aspect, double value, double limit, double actual, Trace trace) {
        trace.note(Objects.requireNonNull(steps.get(aspect)), value, limit, actual);
    }

    private static Judged worded(Condition condition, Vehicle vehicle, Map<String, Verdict> verdicts) {
        if (condition.relation() == Relation.UNLESS) {
            Verdict others = Verdict.MET;
            for (String code : condition.words()) {
                Verdict other = Objects.requireNonNull(verdicts.get(code), code);
                others = others.and(
                        switch (other) {
                            case MET -> Verdict.NOT_MET;
                            case NOT_MET -> Verdict.MET;
                            case UNDECIDED -> Verdict.UNDECIDED;
                        });
            }
            return new Judged(condition, others, Known.NOTHING, null, null);
        }
        String word = switch (condition.aspect()) {
            case PLACE -> vehicle.place().toString();
            case CARRIES -> vehicle.carries().toString();
            case ENCLOSED -> vehicle.enclosed() == null ? null : vehicle.enclosed() ? "yes" : "no";
            default -> throw new IllegalStateException(condition.aspect() + " is no word");
        };
        Verdict verdict =
                word == null ? Verdict.UNDECIDED : condition.words().contains(word) ? Verdict.MET : Verdict.NOT_MET;
        return new Judged(condition, verdict, Known.NOTHING, word, null);
    }

    private static Map<Region, JudgedClass> fits(Place place, List<JudgedClass> classes) {
        Map<Region, JudgedClass> fits = new EnumMap<>(Region.class);
        for (Region region : Region.values()) {
            JudgedClass fit = fit(region, place, classes);
            if (fit != null) {
                fits.put(region, fit);
            }
        }
        return fits;
    }

    /** On public roads and closed ground the class of the road first, elsewhere that of the place. */
    private static @Nullable JudgedClass fit(Region region, Place place, List<JudgedClass> classes) {
        boolean roadFirst = place == Place.PUBLIC_ROAD || place == Place.PRIVATE_GROUND;
        List<JudgedClass> inOrder = Stream.of(roadFirst ? Kind.ROAD : Kind.PLACE, roadFirst ? Kind.PLACE : Kind.ROAD)
                .flatMap(kind -> classes.stream()
                        .filter(one ->
                                one.type().region() == region && one.type().kind() == kind))
                .toList();
        return Stream.of(Verdict.MET, Verdict.UNDECIDED)
                .flatMap(verdict -> inOrder.stream().filter(one -> one.verdict() == verdict))
                .findFirst()
                .orElse(null);
    }

    private static List<Condition> limits(Aspect aspect) {
        return VehicleClass.all().stream()
                .flatMap(type -> type.conditions().stream())
                .filter(one -> one.aspect() == aspect && one.relation() != Relation.EQUAL)
                .toList();
    }

    private static List<String> bounded(Condition limit, ToDoubleFunction<Condition> edge) {
        return VehicleClass.all().stream()
                .filter(type -> type.conditions().stream()
                        .anyMatch(one -> one.aspect() == limit.aspect()
                                && one.relation() != Relation.EQUAL
                                && edge.applyAsDouble(one) == edge.applyAsDouble(limit)))
                .map(VehicleClass::code)
                .toList();
    }

    private static Neighbours neighbours(Aspect aspect, double actual) {
        Threshold above = limits(aspect).stream()
                .filter(one -> one.highSi() >= actual)
                .min(Comparator.comparingDouble(Condition::lowSi)
                        .thenComparing(Condition::highSi, Comparator.reverseOrder()))
                .map(one -> new Threshold(one, Math.max(0, one.lowSi() - actual), bounded(one, Condition::lowSi)))
                .orElse(null);
        Threshold below = limits(aspect).stream()
                .filter(one -> one.lowSi() < actual)
                .max(Comparator.comparingDouble(Condition::highSi)
                        .thenComparing(Condition::lowSi, Comparator.reverseOrder()))
                .map(one -> new Threshold(one, Math.max(0, actual - one.highSi()), bounded(one, Condition::highSi)))
                .orElse(null);
        return new Neighbours(actual, below, above);
    }

    private static Crossing crossing(
            Vehicle vehicle, double former, List<JudgedClass> now, Map<Region, JudgedClass> fits) {
        Vehicle then = vehicle.at(former);
        Trace silent = Trace.withoutWorking();
        List<JudgedClass> before = judge(then, known(then, silent), silent);
        double slow = Math.min(former, vehicle.topSpeedMPerS());
        double fast = Math.max(former, vehicle.topSpeedMPerS());
        Map<String, Threshold> passed = new LinkedHashMap<>();
        limits(Aspect.TOP_SPEED).stream()
                .filter(one -> one.highSi() > slow && one.lowSi() < fast)
                .sorted(Comparator.comparingDouble(Condition::lowSi).thenComparing(Condition::highSi))
                .forEach(one -> passed.putIfAbsent(
                        one.printed(),
                        new Threshold(
                                one, Math.abs(vehicle.topSpeedMPerS() - one.lowSi()), bounded(one, Condition::lowSi))));
        List<JudgedClass> left = new ArrayList<>();
        List<JudgedClass> entered = new ArrayList<>();
        for (int i = 0; i < now.size(); i++) {
            boolean was = before.get(i).verdict() != Verdict.NOT_MET;
            boolean is = now.get(i).verdict() != Verdict.NOT_MET;
            if (was && !is) {
                left.add(now.get(i));
            } else if (!was && is) {
                entered.add(now.get(i));
            }
        }
        Map<Region, JudgedClass> fitted = fits(vehicle.place(), before);
        List<JudgedClass> becomes = fits.entrySet().stream()
                .filter(fit -> !fit.getValue().isOf(fitted.get(fit.getKey())))
                .map(Map.Entry::getValue)
                .toList();
        return new Crossing(former, List.copyOf(passed.values()), List.copyOf(left), List.copyOf(entered), becomes);
    }

    private static Map<Aspect, Step> room(String formula, String meaning) {
        Map<Aspect, Step> steps = new EnumMap<>(Aspect.class);
        for (Aspect aspect : Aspect.values()) {
            if (aspect.measured()) {
                steps.put(
                        aspect,
                        Step.of(
                                "r",
                                meaning + ", " + aspect + ": the stricter of two printings; negative beyond it",
                                "r = " + formula,
                                aspect.dimension(),
                                Source.derived("difference to the limit of the table"),
                                new Symbol("limit", aspect.dimension()),
                                new Symbol("actual", aspect.dimension())));
            }
        }
        return steps;
    }
}

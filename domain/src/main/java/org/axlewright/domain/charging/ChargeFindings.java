package org.axlewright.domain.charging;

import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.TEMPERATURE;
import static org.axlewright.domain.quantity.Dimension.TIME;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;
import static org.axlewright.domain.quantity.Dimension.VOLUME_FLOW;

import org.axlewright.domain.charging.ChargeTime.Charge;
import org.axlewright.domain.charging.ChargeTime.Draw;
import org.axlewright.domain.charging.ChargeTime.Input;
import org.axlewright.domain.charging.ChargeTime.PackOnCharge;
import org.axlewright.domain.charging.ChargeTime.Result;
import org.axlewright.domain.pack.CellData;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.quantity.ChargeUnit;
import org.axlewright.domain.quantity.TimeUnit;
import org.axlewright.domain.trace.Caution;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Standing;
import org.axlewright.domain.trace.Trace;

/** What stands out in a charge. */
final class ChargeFindings {

    /** Shares of the mains voltage lost in a cord: more is worth a word, much more harms. */
    static final double DROP_CAUTION = 0.03;

    static final double DROP_WARNING = 0.05;

    /** Largest departure from an outlet's nominal voltage met in use: 208 V on a 240 V outlet is 13 % low. */
    static final double VOLTAGE_BAND = 0.15;

    /** A night, h. */
    static final double NIGHT_H = 12;

    /** Lead-acid below this part of its usual rate charges slowly and mixes its acid little. */
    static final double SLOW_SHARE = 0.5;

    /** Older chargers do not start below this share of the nominal voltage. */
    static final double WAKE_UP_SHARE = 0.70;

    private static final double NEARLY_FLAT = 0.10;

    private static final double EXTRA_LOW_V = 60;

    private static final Source CONTINUOUS_LOAD =
            Source.regulation("NEC 210.21(B)(2) and 210.20(A): continuous load, three hours or more");
    private static final Source CORD_AMPACITY = Source.regulation("NEC 400.5(A): ampacity of flexible cords");
    private static final Source DROP =
            Source.memory("NEC 210.19(A) informational note: 3 % on a branch circuit, 5 % in all");

    private static final Caution UNATTENDED = new Caution(
            "unattended-charging",
            "Do not charge unattended indoors with a charger or pack you do not know. A breaker that fits does not make a charger"
                    + " safe: it does not see heat inside a charger, a fuse or a plug. Feel the plug after 5, 15 and 60 minutes and"
                    + " stop if it is warm. Have a smoke alarm.");
    private static final Caution RESIDUAL_CURRENT = new Caution(
            "residual-current-protection",
            "Use an outlet with residual-current protection (GFCI, RCD) and never bypass it. A trip of that and a trip by overload"
                    + " are different faults.");
    private static final Caution WIRING = new Caution(
            "mains-wiring",
            "Outlet, circuit and local code decide what may be drawn; old, worn or loose outlets carry less. A licensed"
                    + " electrician judges and changes mains wiring.");
    private static final Caution CORD = new Caution(
            "extension-cord",
            "Unwind the cord fully, lay it open, do not join cords, keep it out of the wet. Never extend a charging lead with"
                    + " protection in its cable.");
    private static final Caution DISCONNECT = new Caution(
            "disconnecting",
            "Switch the charger off before its leads are connected or removed: a direct-current arc does not go out by itself.");
    private static final Caution PROFILE = new Caution(
            "charger-profile",
            "The charger's end voltage and profile must be those of the battery maker for this chemistry and number of cells; times"
                    + " here take that for granted.");
    private static final Caution ACID_AND_GAS = new Caution(
            "hydrogen",
            "Lead-acid gives off hydrogen, explosive from 4 % in air, to the end of a charge and after it; it also sets off"
                    + " carbon-monoxide alarms. Keep doors open, flames, sparks and tools away; wear eye protection.");
    private static final Caution LITHIUM = new Caution(
            "lithium-charging",
            "Charge lithium only with its battery management working and at a cell temperature its maker allows.");

    private ChargeFindings() {}

    static void find(Input input, double outletA, Result result, Trace trace) {
        cautions(input, trace);
        temperature(input.pack(), input.window().from(), trace);
        supply(input, outletA, result, trace);
        Charge charge = result.charge();
        if (charge != null) {
            rate(input.pack(), charge.packCurrentA(), trace);
            duration(charge, trace);
            start(input, trace);
            ventilation(input, charge, trace);
            equalising(input, charge, trace);
            if (charge.draw() != null && input.mains() != null) {
                draw(input, input.mains(), outletA, charge.draw(), trace);
            }
        }
    }

    private static void cautions(Input input, Trace trace) {
        trace.caution(UNATTENDED);
        trace.caution(RESIDUAL_CURRENT);
        trace.caution(WIRING);
        if (input.mains() != null && input.mains().cord() != null) {
            trace.caution(CORD);
        }
        trace.caution(PROFILE);
        trace.caution(input.pack().chemistry().isLeadAcid() ? ACID_AND_GAS : LITHIUM);
        trace.caution(DISCONNECT);
    }

    private static void temperature(PackOnCharge pack, double from, Trace trace) {
        double temperature = pack.temperatureC();
        Finding cold = null;
        if (!pack.chemistry().isLeadAcid()) {
            if (temperature < ChargeTemperature.LITHIUM_MINIMUM) {
                cold = Finding.of(
                                "lithium-charge-below-freezing",
                                Level.DANGER,
                                "Do not charge: cells at {actual}, no lithium cell takes charge below {limit}. Metal plates out inside, the loss stays and the cell can short. Regeneration is charging too",
                                ChargeTemperature.LITHIUM_MINIMUM_SOURCE)
                        .limit(new Measure(ChargeTemperature.LITHIUM_MINIMUM, TEMPERATURE))
                        .action("Warm the cells to 5 degC (41 degF) or more, then charge");
            } else if (temperature < ChargeTemperature.LITHIUM_PREFERRED_FROM) {
                cold = Finding.of(
                                "lithium-charge-cold",
                                Level.CAUTION,
                                "Cells at {actual} are below the {limit} from which lithium is preferably charged; battery management may hold the current back",
                                ChargeTemperature.LITHIUM_PREFERRED_SOURCE)
                        .limit(new Measure(ChargeTemperature.LITHIUM_PREFERRED_FROM, TEMPERATURE))
                        .action("Warm the cells or charge slowly");
            } else if (temperature > ChargeTemperature.LITHIUM_PREFERRED_TO) {
                cold = Finding.of(
                                "lithium-charge-hot",
                                Level.WARNING,
                                "Cells at {actual} are above the {limit} up to which lithium is preferably charged",
                                ChargeTemperature.LITHIUM_PREFERRED_SOURCE)
                        .limit(new Measure(ChargeTemperature.LITHIUM_PREFERRED_TO, TEMPERATURE))
                        .action("Let the cells cool, then charge");
            }
        } else if (ChargeTemperature.forbids(pack.chemistry(), temperature, from)) {
            cold = Finding.of(
                            "lead-acid-may-be-frozen",
                            Level.DANGER,
                            "Do not charge: at {actual} this battery may be frozen, acid at this state of charge freezes at {limit}. Charging a frozen battery can burst it",
                            ChargeTemperature.FREEZING_SOURCE)
                    .limit(new Measure(ChargeTemperature.freezingPointC(from), TEMPERATURE))
                    .action("Warm it above 0 degC (32 degF), look for cracks, then charge");
        } else if (temperature < 0) {
            cold = Finding.of(
                            "lead-acid-charge-cold",
                            Level.CAUTION,
                            "At {actual} lead-acid takes charge slowly: expect more than the time given",
                            Source.weak("owner's manual: warm above 0 degC before charging"))
                    .limit(new Measure(0, TEMPERATURE))
                    .action("Warm it above 0 degC (32 degF) before charging");
        }
        if (pack.refused()) {
            trace.find(Finding.of(
                            "no-charge-at-temperature",
                            Level.WARNING,
                            "At {actual} the limits of this pack allow no charge",
                            Source.derived("limits of the pack by temperature, as sent"))
                    .at("/pack/temperature")
                    .actual(new Measure(temperature, TEMPERATURE))
                    .action("Bring the cells to a temperature for which the maker gives a charging current"));
        }
        if (cold != null) {
            trace.find(cold.at("/pack/temperature").actual(new Measure(temperature, TEMPERATURE)));
        }
    }

    private static void supply(Input input, double outletA, Result result, Trace trace) {
        Mains mains = input.mains();
        if (mains == null
                || !mains.known()
                || (result.charge() != null && result.charge().draw() == null)) {
            trace.find(Finding.of(
                            "supply-not-checked",
                            Level.NOTICE,
                            "Whether outlet and circuit hold is not checked; the time stands only if they feed the charger",
                            Source.derived("outlet or rating, mains voltage or cells in series are missing"))
                    .at("/supply")
                    .action("Send the outlet and the pack's cells in series"));
        }
        if (mains == null) {
            return;
        }
        if (mains.known() && !(outletA > 0)) {
            trace.find(Finding.of(
                            "circuit-taken",
                            Level.WARNING,
                            "Other loads on the circuit draw {actual} and leave nothing for a charger",
                            CONTINUOUS_LOAD)
                    .at("/supply/sharedCurrent")
                    .actual(new Measure(mains.sharedA(), CURRENT))
                    .action("Switch other loads off or use a circuit of its own"));
        }
        OutletRating outlet = mains.outlet();
        if (outlet == null) {
            return;
        }
        Standing standing = outlet.continuousA().source().standing();
        if (standing == Standing.WEAK || standing == Standing.MEMORY) {
            trace.find(Finding.of(
                            "outlet-rating-unconfirmed",
                            Level.NOTICE,
                            "The {limit} for hours on " + outlet.outlet() + " is not taken from the standard itself",
                            outlet.continuousA().source())
                    .at("/supply/outlet")
                    .limit(new Measure(outlet.continuousA().value(), CURRENT))
                    .action("Go by the marking of the outlet and by local code"));
        }
        Double breakerA = mains.breakerA();
        if (breakerA != null
                && outlet.largestBreakerA() != null
                && breakerA > outlet.largestBreakerA().value()) {
            trace.find(Finding.of(
                            "breaker-too-large-for-outlet",
                            Level.WARNING,
                            "A breaker of {actual} does not protect outlet " + outlet.outlet()
                                    + ", which takes {limit} at most",
                            outlet.largestBreakerA().source())
                    .at("/supply/rating")
                    .actual(new Measure(breakerA, CURRENT))
                    .limit(new Measure(outlet.largestBreakerA().value(), CURRENT))
                    .action("Have a licensed electrician look at this circuit before charging on it"));
        }
        double nominalV = outlet.nominalVoltageV().value();
        if (mains.voltageV() != null && Math.abs(mains.voltageV() / nominalV - 1) > VOLTAGE_BAND) {
            trace.find(Finding.of(
                            "voltage-not-of-outlet",
                            Level.WARNING,
                            "{actual} is far from the {limit} of outlet " + outlet.outlet()
                                    + ": one of the two is wrong, and with it every mains figure here",
                            Source.derived("208 V on a 240 V outlet, 13 % low, is the farthest met in use"))
                    .at("/supply/voltage")
                    .actual(new Measure(mains.voltageV(), VOLTAGE))
                    .limit(new Measure(nominalV, VOLTAGE))
                    .action("Measure at the outlet or name the right outlet"));
        }
    }

    private static void rate(PackOnCharge pack, double currentA, Trace trace) {
        ChargeProfile profile = ChargeProfile.of(pack.chemistry());
        double capacityAh = ChargeUnit.AMPERE_HOUR.fromSi(pack.capacityC());
        double largestA = profile.largestRate().value() * capacityAh;
        double usualA = profile.usualRate().value() * capacityAh;
        if (currentA > largestA) {
            trace.find(
                    Finding.of(
                                    "charge-rate-too-high",
                                    pack.chemistry().isLeadAcid() ? Level.CAUTION : Level.WARNING,
                                    "{actual} is more than the {limit} that " + pack.chemistry()
                                            + " of this capacity takes: it heats, and the constant-voltage phase starts earlier than reckoned",
                                    profile.largestRate().source())
                            .at("/charger")
                            .actual(new Measure(currentA, CURRENT))
                            .limit(new Measure(largestA, CURRENT))
                            .action(
                                    "Go by the battery maker's limit: send it as /pack/limits/charge, or take a smaller charger"));
        } else if (currentA > usualA && !pack.chemistry().isLeadAcid()) {
            trace.find(Finding.of(
                            "charge-rate-above-usual",
                            Level.NOTICE,
                            "{actual} is more than the usual {limit}: the constant-voltage phase starts earlier than reckoned and the time is rather longer",
                            profile.usualRate().source())
                    .at("/charger")
                    .actual(new Measure(currentA, CURRENT))
                    .limit(new Measure(usualA, CURRENT)));
        }
        if (pack.chemistry().isLeadAcid() && currentA < SLOW_SHARE * usualA) {
            trace.find(Finding.of(
                            "charge-rate-low",
                            Level.NOTICE,
                            "{actual} is little for this lead-acid capacity: below {limit} charging takes very long and the acid hardly mixes",
                            Source.memory("half the usual rate"))
                    .at("/charger")
                    .actual(new Measure(currentA, CURRENT))
                    .limit(new Measure(SLOW_SHARE * usualA, CURRENT)));
        }
    }

    private static void duration(Charge charge, Trace trace) {
        double timeS = charge.time().timeS();
        if (timeS > TimeUnit.HOUR.toSi(NIGHT_H)) {
            trace.find(Finding.of(
                            "longer-than-a-night",
                            Level.NOTICE,
                            "{actual} is more than a night of {limit}; of lead-acid the last fifth alone takes up to 8 h",
                            Source.COMMON_PRACTICE)
                    .actual(new Measure(timeS, TIME))
                    .limit(new Measure(TimeUnit.HOUR.toSi(NIGHT_H), TIME))
                    .action("Start earlier, recharge more often, or look at what limits the current"));
        }
    }

    private static void start(Input input, Trace trace) {
        Integer cells = input.pack().cells();
        if (cells != null
                && input.pack().chemistry().isLeadAcid()
                && input.window().from() < NEARLY_FLAT) {
            trace.find(
                    Finding.of(
                                    "charger-may-not-start",
                                    Level.NOTICE,
                                    "Older automatic chargers do not start below {limit} of the pack at rest; a flat pack may lie below it",
                                    Source.weak("golf-car trade column, 2012: 70 % of the nominal voltage"))
                            .at("/charge/from")
                            .limit(new Measure(
                                    WAKE_UP_SHARE
                                            * CellData.of(input.pack().chemistry())
                                                    .nominalV()
                                                    .value()
                                            * cells,
                                    VOLTAGE))
                            .action(
                                    "Bring each block up with a small charger of its own voltage until the string passes this"));
        }
    }

    private static void ventilation(Input input, Charge charge, Trace trace) {
        if (charge.ventilation() != null) {
            boolean vented = input.pack().chemistry() == Chemistry.FLOODED;
            trace.find(
                    Finding.of(
                                    "hydrogen-ventilation",
                                    vented ? Level.WARNING : Level.CAUTION,
                                    "Charging gives off up to {actual} of hydrogen: the room needs {limit} of air and openings to the outside",
                                    Source.published("EN 50272-3, EN IEC 62485-3; ZVEI leaflet 14 (2017)"))
                            .at("/pack/chemistry")
                            .actual(new Measure(charge.ventilation().hydrogenM3PerS(), VOLUME_FLOW))
                            .limit(new Measure(charge.ventilation().airFlowM3PerS(), VOLUME_FLOW))
                            .action(
                                    "Charge with the door open or give the room that much air, low in and high out; one vehicle maker asks for five changes of its air an hour"));
        }
    }

    private static void equalising(Input input, Charge charge, Trace trace) {
        if (input.equalising() != null && input.pack().chemistry() != Chemistry.FLOODED) {
            trace.find(Finding.of(
                            "never-equalise",
                            Level.DANGER,
                            "Never equalise " + input.pack().chemistry()
                                    + ": sealed cells dry out and lithium cells are overcharged; nothing is reckoned for it",
                            Source.memory("battery makers' manuals: only flooded cells are equalised"))
                    .at("/charge/equalising")
                    .action("Leave equalising out and set the charger to the profile of this chemistry"));
        }
        Equalising equalising = charge.equalising();
        if (equalising == null) {
            return;
        }
        trace.find(
                Finding.of(
                                "equalising-gasses",
                                Level.WARNING,
                                "All of an equalising charge turns water into explosive gas, {actual} of hydrogen: the room needs {limit} of air, more than a plain charge",
                                Source.published("ZVEI leaflet 14 (2017)"))
                        .at("/charge/equalising")
                        .actual(new Measure(equalising.ventilation().hydrogenM3PerS(), VOLUME_FLOW))
                        .limit(new Measure(equalising.ventilation().airFlowM3PerS(), VOLUME_FLOW))
                        .action(
                                "Equalise outdoors or with doors open, watch the acid temperature, and top up with water afterwards"));
        if (equalising.voltageV() > EXTRA_LOW_V) {
            trace.find(Finding.of(
                            "equalising-above-60-v",
                            Level.CAUTION,
                            "While equalising the pack stands at {actual}, above {limit}: controller, converter and lamps must be off or bear it",
                            Source.weak("60 V DC: IEC 60364-4-41 and ISO 6469-3 as quoted"))
                    .at("/charge/equalising")
                    .actual(new Measure(equalising.voltageV(), VOLTAGE))
                    .limit(new Measure(EXTRA_LOW_V, VOLTAGE))
                    .action("Disconnect what is not made for that voltage"));
        }
    }

    private static void draw(Input input, Mains mains, double outletA, Draw draw, Trace trace) {
        String cause = input.charger().maximumInputA() == null ? "/charger" : "/charger/maximumInput";
        if (draw.wantedA() > outletA) {
            trace.find(Finding.of(
                            "charger-above-outlet",
                            Level.WARNING,
                            "The charger draws up to {actual}; outlet and circuit carry {limit} for hours. The time given holds only if the charger is set down to that: otherwise the breaker trips or the outlet overheats",
                            CONTINUOUS_LOAD)
                    .at(cause)
                    .actual(new Measure(draw.wantedA(), CURRENT))
                    .limit(new Measure(outletA, CURRENT))
                    .action("Set the charger's mains current down, or use an outlet on a larger circuit of its own"));
        }
        Cord cord = mains.cord();
        if (cord == null) {
            return;
        }
        if (cord.wound()) {
            trace.find(Finding.of(
                            "cord-wound",
                            Level.WARNING,
                            "A cord that stays on its reel can't cool: it is reckoned with {limit} for hours",
                            Cord.WOUND)
                    .at("/supply/cord/wound")
                    .limit(new Measure(cord.ampacity().value(), CURRENT))
                    .action("Unwind the cord fully and lay it open"));
        }
        if (draw.wantedA() > cord.ampacity().value()) {
            trace.find(Finding.of(
                            "charger-above-cord",
                            Level.DANGER,
                            "The charger draws up to {actual}; a cord of "
                                    + cord.conductor().size()
                                    + " carries {limit}, and no breaker protects it: it can catch fire",
                            new Source(
                                    CORD_AMPACITY.citation(),
                                    cord.ampacity().source().standing()))
                    .at("/supply/cord/size")
                    .actual(new Measure(draw.wantedA(), CURRENT))
                    .limit(new Measure(cord.ampacity().value(), CURRENT))
                    .action("Use a thicker cord or none"));
        }
        if (draw.cordLoss() != null && draw.cordLoss().dropShare() > DROP_CAUTION) {
            boolean much = draw.cordLoss().dropShare() > DROP_WARNING;
            trace.find(Finding.of(
                            "cord-voltage-drop",
                            much ? Level.WARNING : Level.CAUTION,
                            "The cord loses a share of {actual} of the mains voltage, more than {limit}: it heats, and the charger may cut out",
                            DROP)
                    .at("/supply/cord")
                    .actual(Measure.number(draw.cordLoss().dropShare()))
                    .limit(Measure.number(much ? DROP_WARNING : DROP_CAUTION))
                    .action("Use a shorter or thicker cord, or none"));
        }
    }
}

package org.axlewright.api.charging;

import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.TEMPERATURE;
import static org.axlewright.domain.quantity.Dimension.TIME;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.axlewright.api.calculation.PackSections;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.section.ChargeWindow;
import org.axlewright.api.section.Charger;
import org.axlewright.api.section.Pack;
import org.axlewright.api.section.Setup;
import org.axlewright.api.section.Supply;
import org.axlewright.domain.cable.ConductorSize;
import org.axlewright.domain.charging.ChargeProfile;
import org.axlewright.domain.charging.ChargeTemperature;
import org.axlewright.domain.charging.ChargeTime;
import org.axlewright.domain.charging.ChargeTime.PackOnCharge;
import org.axlewright.domain.charging.ChargeTime.Plate;
import org.axlewright.domain.charging.ChargeTime.Window;
import org.axlewright.domain.charging.ChargerType;
import org.axlewright.domain.charging.Cord;
import org.axlewright.domain.charging.Equalising;
import org.axlewright.domain.charging.EqualisingPlan;
import org.axlewright.domain.charging.Mains;
import org.axlewright.domain.charging.OutletRating;
import org.axlewright.domain.pack.AtTemperature;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.quantity.Quantity;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.jspecify.annotations.Nullable;

/** From the sections pack, charger, supply and charge to the checked input: defaults, and what can't be answered. */
final class ChargeTimeSections {

    private static final double USUAL_TEMPERATURE_C = 25;
    private static final double CONTINUOUS_SHARE = 0.8;

    private ChargeTimeSections() {}

    static ChargeTime.Input resolve(Setup setup, Resolution resolution) {
        Pack sent = Objects.requireNonNull(setup.pack(), "pack");
        PackOnCharge pack = pack(sent, resolution);
        Mains mains = setup.supply() == null ? null : mains(setup.supply(), resolution);
        if (pack.cells() == null && Objects.requireNonNull(setup.charger()).current() == null) {
            resolution.missing(
                    "/pack/cellsInSeries"); // lithium blocks don't tell their cells, and power needs the voltage
        }
        resolution.refuseIfFaulty();
        boolean atMains = pack.cells() != null && mains != null && mains.voltageV() != null;
        Plate charger = charger(Objects.requireNonNull(setup.charger(), "charger"), pack, atMains, resolution);
        Window window = window(setup.charge(), pack.chemistry(), resolution);
        ChargeTime.Input input = new ChargeTime.Input(
                pack, charger, window, mains, setup.energyPrice(), equalising(setup.charge(), pack, resolution));
        resolution.refuseIfFaulty();
        if (input.possible()) {
            notAnswered(setup, input, resolution);
        } else {
            withheld(setup, input, resolution);
        }
        return input;
    }

    private static PackOnCharge pack(Pack pack, Resolution resolution) {
        Chemistry chemistry = Objects.requireNonNull(pack.chemistry(), "chemistry");
        double temperatureC = pack.temperature() != null
                ? pack.temperature().si()
                : resolution.assume(
                        "pack-temperature",
                        "/pack/temperature",
                        new Measure(USUAL_TEMPERATURE_C, TEMPERATURE),
                        "a pack at room temperature",
                        Source.COMMON_PRACTICE);
        Double limitA = pack.limits() == null ? null : limitA(pack.limits(), temperatureC, resolution);
        return new PackOnCharge(
                chemistry,
                stringCapacityC(pack) * PackSections.strings(pack, resolution),
                PackSections.health(pack, resolution),
                PackSections.cellsInSeries(pack),
                limitA,
                temperatureC);
    }

    /** The pack's limit at a temperature, A: the lesser of the plain one and of the rows beside it. 0 where the maker gives none. */
    private static @Nullable Double limitA(Pack.Limits limits, double temperatureC, Resolution resolution) {
        List<AtTemperature> rows = PackSections.byTemperature(limits, resolution);
        boolean tooCold = limits.minimumChargeTemperature() != null
                && temperatureC < limits.minimumChargeTemperature().si();
        boolean tooHot = limits.maximumChargeTemperature() != null
                && temperatureC > limits.maximumChargeTemperature().si();
        if (tooCold || tooHot || (!rows.isEmpty() && !AtTemperature.reach(rows, temperatureC))) {
            return 0.0;
        }
        return AtTemperature.lesser(
                si(limits.charge()), AtTemperature.least(rows, temperatureC, AtTemperature::chargeA));
    }

    /** Rated capacity; of a maker's rows the one that gives most, since a charge puts back what slow use took out. */
    private static double stringCapacityC(Pack pack) {
        if (pack.capacity() != null) {
            return pack.capacity().si();
        }
        return Objects.requireNonNull(pack.capacityRows(), "capacity rows").stream()
                .mapToDouble(row -> Objects.requireNonNull(si(row.current())) * Objects.requireNonNull(si(row.time())))
                .max()
                .orElseThrow();
    }

    private static Plate charger(Charger charger, PackOnCharge pack, boolean atMains, Resolution resolution) {
        boolean efficiencyUsed = pack.cells() != null;
        boolean typeUsed = (efficiencyUsed && charger.efficiency() == null)
                || (atMains && charger.powerFactor() == null)
                || (efficiencyUsed && pack.chemistry().isLeadAcid());
        ChargerType type = charger.type();
        if (type == null) {
            type = typeUsed
                    ? resolution.assume(
                            "charger-type",
                            "/charger/type",
                            ChargerType.SWITCH_MODE,
                            "what is sold today; a charger with a heavy transformer is line-frequency",
                            Source.COMMON_PRACTICE)
                    : ChargerType.SWITCH_MODE;
        }
        double efficiency = charger.efficiency() != null
                ? charger.efficiency()
                : type.efficiency().value();
        if (efficiencyUsed && charger.efficiency() == null) {
            resolution.assume(
                    "charger-efficiency",
                    "/charger/efficiency",
                    Measure.number(efficiency),
                    "usual for a " + type + " charger",
                    type.efficiency().source());
        }
        double powerFactor = charger.powerFactor() != null
                ? charger.powerFactor()
                : type.powerFactor().value();
        if (atMains && charger.powerFactor() == null) {
            resolution.assume(
                    "charger-power-factor",
                    "/charger/powerFactor",
                    Measure.number(powerFactor),
                    "usual for a " + type + " charger",
                    type.powerFactor().source());
        }
        return new Plate(
                type, si(charger.current()), si(charger.power()), efficiency, powerFactor, si(charger.maximumInput()));
    }

    private static Window window(@Nullable ChargeWindow sent, Chemistry chemistry, Resolution resolution) {
        ChargeProfile profile = ChargeProfile.of(chemistry);
        double from = sent != null && sent.from() != null
                ? sent.from()
                : resolution.assume(
                        "charge-from-empty",
                        "/charge/from",
                        Measure.number(0),
                        "from empty, the longest charge there is",
                        Source.COMMON_PRACTICE);
        double to = sent != null && sent.to() != null
                ? sent.to()
                : resolution.assume(
                        "charge-to-full", "/charge/to", Measure.number(1), "until full", Source.COMMON_PRACTICE);
        double factor = sent != null && sent.factor() != null
                ? sent.factor()
                : resolution.assume(
                        "charge-factor",
                        "/charge/factor",
                        Measure.number(profile.chargeFactor().value()),
                        "charge put in for each charge taken out, usual for " + chemistry,
                        profile.chargeFactor().source());
        double phaseS;
        if (sent != null && sent.constantVoltageTime() != null) {
            phaseS = sent.constantVoltageTime().si();
        } else {
            phaseS = profile.constantVoltageTimeS().value();
            if (to > profile.constantVoltageFrom().value()) {
                resolution.assume(
                        "constant-voltage-time",
                        "/charge/constantVoltageTime",
                        new Measure(phaseS, TIME),
                        "constant-voltage phase up to full, usual for " + chemistry,
                        profile.constantVoltageTimeS().source());
            }
        }
        return new Window(from, to, factor, phaseS);
    }

    private static @Nullable EqualisingPlan equalising(
            @Nullable ChargeWindow sent, PackOnCharge pack, Resolution resolution) {
        if (sent == null || sent.equalising() == null) {
            return null;
        }
        ChargeWindow.Equalising wanted = sent.equalising();
        if (wanted.time() == null) {
            resolution.missing("/charge/equalising/time");
            return null;
        }
        double currentA = wanted.current() != null
                ? wanted.current().si()
                : resolution.assume(
                        "equalising-current",
                        "/charge/equalising/current",
                        new Measure(Equalising.usualA(pack), CURRENT),
                        "usual for the capacity",
                        Equalising.USUAL_RATE.source());
        return new EqualisingPlan(wanted.time().si(), currentA);
    }

    private static Mains mains(Supply supply, Resolution resolution) {
        OutletRating outlet = supply.outlet() == null ? null : OutletRating.of(supply.outlet());
        Double voltageV = si(supply.voltage());
        if (voltageV == null && outlet != null) {
            voltageV = resolution.assume(
                    "mains-voltage",
                    "/supply/voltage",
                    new Measure(outlet.nominalVoltageV().value(), VOLTAGE),
                    "nominal voltage of " + outlet.outlet(),
                    outlet.nominalVoltageV().source());
        }
        Double share = supply.continuousShare();
        if (supply.rating() != null && share == null) {
            share = resolution.assume(
                    "continuous-share",
                    "/supply/continuousShare",
                    Measure.number(CONTINUOUS_SHARE),
                    "a load of three hours or more takes at most four fifths of the rating",
                    Source.regulation("NEC 210.20(A)"));
        }
        double sharedA = supply.sharedCurrent() != null ? supply.sharedCurrent().si() : 0;
        if (supply.sharedCurrent() == null && (outlet != null || supply.rating() != null)) {
            resolution.assume(
                    "circuit-not-shared",
                    "/supply/sharedCurrent",
                    new Measure(0, CURRENT),
                    "nothing else runs on the circuit; a garage circuit often feeds a freezer or a door opener",
                    Source.COMMON_PRACTICE);
        }
        return new Mains(outlet, voltageV, si(supply.rating()), share, sharedA, cord(supply.cord(), resolution));
    }

    private static @Nullable Cord cord(Supply.@Nullable Cord sent, Resolution resolution) {
        if (sent == null || (sent.size() == null && sent.length() == null && sent.temperature() == null)) {
            return null;
        }
        if (sent.size() == null) {
            resolution.missing("/supply/cord/size");
            return null;
        }
        Double lengthM = si(sent.length());
        double temperatureC = Cord.UNMARKED_RATING_C;
        if (sent.temperature() != null) {
            temperatureC = sent.temperature().si();
        } else if (lengthM != null) {
            resolution.assume(
                    "cord-temperature",
                    "/supply/cord/temperature",
                    new Measure(temperatureC, TEMPERATURE),
                    "the hottest an unmarked cord may run, so the drop errs to the high side",
                    Cord.UNMARKED_RATING);
        }
        Cord cord = Cord.of(ConductorSize.parse(sent.size()), temperatureC, lengthM, Boolean.TRUE.equals(sent.wound()))
                .orElse(null);
        if (cord == null) {
            resolution.refuse(new Fault(
                    "/supply/cord/size",
                    "out-of-range",
                    "A cord of " + sent.size()
                            + " is thinner than any in the table of flexible cords, which begins at 18 AWG (0.82 mm2)",
                    sent.size(),
                    "18 AWG"));
        }
        return cord;
    }

    private static void notAnswered(Setup setup, ChargeTime.Input input, Resolution resolution) {
        Mains mains = input.mains();
        List<String> cells = input.pack().cells() == null ? List.of("/pack/cellsInSeries") : List.of();
        List<String> drawn = new ArrayList<>(cells);
        if (mains == null || mains.voltageV() == null) {
            drawn.add(mains == null ? "/supply/outlet" : "/supply/voltage");
        }
        List<String> supply = mains == null || !mains.known() ? List.of("/supply/outlet") : List.of();
        List<String> cost = new ArrayList<>(cells);
        if (setup.energyPrice() == null) {
            cost.add("/energyPrice");
        }
        leave("/mainsCurrent", drawn, resolution);
        leave("/peakMainsCurrent", drawn, resolution);
        leave("/supplyLimit", supply, resolution);
        leave("/mainsPower", drawn, resolution);
        leave("/mainsEnergy", cells, resolution);
        leave("/energy", cells, resolution);
        leave("/endVoltage", cells, resolution);
        if (input.equalising() != null) {
            leave("/equalising", cells, resolution);
        }
        leave("/cost", cost, resolution);
        List<String> cord = new ArrayList<>(drawn);
        if (mains == null || mains.cord() == null) {
            cord.add("/supply/cord");
        } else if (mains.cord().lengthM() == null) {
            cord.add("/supply/cord/length");
        }
        leave("/cordDrop", cord, resolution);
        leave("/cordDropShare", cord, resolution);
        leave("/cordHeat", cord, resolution);
        if (input.pack().chemistry().isLeadAcid()) {
            leave("/ventilation", cells, resolution);
        }
    }

    /** A time for a charge that must not be made would read as leave to make it. */
    private static void withheld(Setup setup, ChargeTime.Input input, Resolution resolution) {
        List<String> causes = new ArrayList<>();
        if (ChargeTemperature.forbids(
                input.pack().chemistry(),
                input.pack().temperatureC(),
                input.window().from())) {
            causes.add("/pack/temperature");
            if (input.pack().chemistry().isLeadAcid()
                    && (setup.charge() == null || setup.charge().from() == null)) {
                causes.add("/charge/from");
            }
        } else if (input.pack().refused()) {
            causes.add("/pack/temperature");
        } else {
            causes.add("/supply/sharedCurrent");
        }
        for (String result : List.of(
                "/time",
                "/constantCurrentTime",
                "/constantVoltageTime",
                "/packCurrent",
                "/mainsCurrent",
                "/peakMainsCurrent",
                "/mainsPower",
                "/mainsEnergy",
                "/cost",
                "/limitedBy",
                "/cordDrop",
                "/cordDropShare",
                "/cordHeat",
                "/ventilation",
                "/endVoltage",
                "/energy")) {
            leave(result, causes, resolution);
        }
        if (input.mains() == null || !input.mains().known()) {
            leave("/supplyLimit", List.of("/supply/outlet"), resolution);
        }
    }

    private static void leave(String result, List<String> missing, Resolution resolution) {
        if (!missing.isEmpty()) {
            resolution.notAnswered(result, missing.toArray(String[]::new));
        }
    }

    private static @Nullable Double si(@Nullable Quantity quantity) {
        return quantity == null ? null : quantity.si();
    }
}

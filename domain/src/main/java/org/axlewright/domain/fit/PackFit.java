package org.axlewright.domain.fit;

import static org.axlewright.domain.quantity.Dimension.CHARGE;
import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.ENERGY;
import static org.axlewright.domain.quantity.Dimension.MASS;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.POWER;
import static org.axlewright.domain.quantity.Dimension.RESISTANCE;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.axlewright.domain.fit.FitInput.Blocks;
import org.axlewright.domain.fit.FitInput.Charger;
import org.axlewright.domain.fit.FitInput.Controller;
import org.axlewright.domain.fit.FitInput.Converter;
import org.axlewright.domain.fit.FitInput.Motor;
import org.axlewright.domain.fit.FitInput.Pack;
import org.axlewright.domain.fit.FitResult.ClassPassed;
import org.axlewright.domain.fit.FitResult.Currents;
import org.axlewright.domain.fit.FitResult.Energy;
import org.axlewright.domain.fit.FitResult.Fade;
import org.axlewright.domain.fit.FitResult.MassBand;
import org.axlewright.domain.fit.FitResult.TapLoad;
import org.axlewright.domain.fit.FitResult.Voltages;
import org.axlewright.domain.pack.PackVoltages;
import org.axlewright.domain.pack.Sag;
import org.axlewright.domain.quantity.ChargeUnit;
import org.axlewright.domain.quantity.Dimension;
import org.axlewright.domain.quantity.EnergyUnit;
import org.axlewright.domain.trace.Datum;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * Whether pack, controller, motor, charger, converter, contactor and accessories fit each other. Every limit that was sent is held
 * against the voltage or the current that the part really sees: full, not nominal, voltage above; cut-off and loaded voltage below;
 * battery-side, not motor-side, current.
 */
public final class PackFit {

    private static final Symbol CELLS = new Symbol("n", NONE);
    private static final Symbol STRINGS = new Symbol("p", NONE);
    private static final Symbol OPEN = new Symbol("E", VOLTAGE);
    private static final Symbol CURRENT_I = new Symbol("I", CURRENT);
    private static final Symbol OHM = new Symbol("r", RESISTANCE);
    private static final Symbol CAPACITY = new Symbol("C", CHARGE);
    private static final Symbol NOMINAL_V = new Symbol("V", VOLTAGE);
    private static final Source CIRCUIT =
            Source.published("direct-current circuit theory: V = E - I·r; on charge E + I·r");
    private static final Source COUNTED = Source.derived("cells in series add their voltages");

    private static final Step PER_CELL = Step.of(
            "u",
            "end voltage of the charger for each cell",
            "u = U/n",
            VOLTAGE,
            COUNTED,
            new Symbol("U", VOLTAGE),
            CELLS);
    private static final Step EQUALISE = Step.of(
            "Veq",
            "voltage at the end of an equalising charge",
            "Veq = n·Vc",
            VOLTAGE,
            COUNTED,
            CELLS,
            new Symbol("Vc", VOLTAGE));
    private static final Step LOADED = Step.of(
            "Vload",
            "voltage half full under the battery-side limit of the controller",
            "Vload = E - I·r",
            VOLTAGE,
            CIRCUIT,
            OPEN,
            CURRENT_I,
            OHM);
    private static final Step REGENERATING = Step.of(
            "Vreg",
            "voltage of the full pack under the regeneration limit of the controller",
            "Vreg = E + I·r",
            VOLTAGE,
            CIRCUIT,
            OPEN,
            CURRENT_I,
            OHM);
    private static final Step RATED_CURRENT = Step.of(
            "Imot",
            "pack current at the rated shaft power",
            "Imot = 2·p/(E + √(E² - 4·r·p)), p = P/η",
            CURRENT,
            Source.derived("power balance with the voltage under load"),
            new Symbol("P", POWER),
            new Symbol("η", NONE),
            OPEN,
            OHM);
    private static final Step RATE = Step.of(
            "rate",
            "battery-side limit over the capacity of all strings, times per hour",
            "rate = I·3600 s/(p·C)",
            NONE,
            Source.derived("discharge rate: current over capacity"),
            CURRENT_I,
            STRINGS,
            CAPACITY);
    private static final Step PER_STRING = Step.of(
            "Istr",
            "current of each string, all alike",
            "Istr = I/p",
            CURRENT,
            Source.derived("strings alike share the current evenly"),
            CURRENT_I,
            STRINGS);
    private static final Step CONVERTER_CURRENT = Step.of(
            "Iconv",
            "pack current for the load of the converter",
            "Iconv = P/(η·V)",
            CURRENT,
            Source.derived("power balance"),
            new Symbol("P", POWER),
            new Symbol("η", NONE),
            NOMINAL_V);
    private static final Step NOMINAL_ENERGY = Step.of(
            "Enom",
            "nominal energy of the pack",
            "Enom = V·C·p",
            ENERGY,
            Source.published("pack energy: nominal voltage times capacity"),
            NOMINAL_V,
            CAPACITY,
            STRINGS);
    private static final Step USUAL_MASS = Step.of(
            "M",
            "mass of a pack of this energy, g in kg for each kWh",
            "M = g·E/3.6e6",
            MASS,
            Source.COMMON_PRACTICE,
            new Symbol("g", NONE),
            new Symbol("E", ENERGY));
    private static final Step TAP_FULL = Step.of(
            "Vtap",
            "voltage of the tapped blocks, full",
            "Vtap = Vfull·b/B",
            VOLTAGE,
            COUNTED,
            new Symbol("Vfull", VOLTAGE),
            new Symbol("b", NONE),
            new Symbol("B", NONE));
    private static final Step IMBALANCE = Step.of(
            "Qtap",
            "charge the tapped blocks lose against the others in a day",
            "Qtap = I·t",
            CHARGE,
            Source.derived("charge is current times time"),
            CURRENT_I,
            new Symbol("t", Dimension.TIME));

    private PackFit() {}

    /** Answers with what can be decided; what can't is undecided and names what is missing. */
    public static FitResult of(FitInput input, Trace trace) {
        Voltages voltages = voltages(input, trace);
        Allowed allowed = Allowed.of(input.pack());
        Currents currents = currents(input, voltages, allowed, trace);
        Energy energy = energy(input.pack(), voltages, trace);
        MassBand mass = energy == null ? null : mass(input.pack(), energy, trace);
        TapLoad tap = tap(input, voltages, trace);
        List<ClassPassed> classes = Arrays.stream(VoltageClass.values())
                .map(limit -> new ClassPassed(
                        limit, limit.passedAt(voltages.highestV()), limit.passedAt(voltages.nominalV())))
                .toList();
        FitSituation situation = new FitSituation(input, voltages, currents, allowed, trace);
        List<PairSheet> sheets = new ArrayList<>();
        sheets.add(ControllerFit.withPack(situation));
        sheets.add(ControllerFit.withMotor(situation));
        sheets.add(ControllerFit.motorWithPack(situation));
        sheets.add(ChargerFit.withPack(situation));
        sheets.add(BoardFit.converterWithPack(situation));
        sheets.add(BoardFit.converterWithAccessories(situation));
        sheets.add(BoardFit.contactorWithPack(situation));
        sheets.add(BoardFit.contactorWithConverter(situation));
        sheets.add(BoardFit.contactorWithController(situation));
        sheets.add(BoardFit.tapWithPack(situation, tap));
        sheets.add(PackFindings.blocks(situation));
        List<FitPair> pairs = new ArrayList<>(sheets.stream()
                .filter(sheet -> !sheet.isEmpty())
                .map(PairSheet::pair)
                .toList());
        pairs.sort((one, other) -> one.decidesOver(other) ? -1 : other.decidesOver(one) ? 1 : 0);
        PackFindings.find(situation, mass, classes);
        return new FitResult(
                pairs.isEmpty() ? Verdict.UNDECIDED : pairs.get(0).verdict(),
                List.copyOf(pairs),
                voltages,
                currents,
                energy,
                mass,
                fade(input, trace),
                tap,
                classes);
    }

    private static Voltages voltages(FitInput input, Trace trace) {
        Pack pack = input.pack();
        PackVoltages cells = PackVoltages.of(pack.chemistry(), pack.cells(), trace);
        Datum equalise = CellLimits.of(pack.chemistry()).equaliseV();
        Charger charger = input.charger();
        Double endV = charger == null ? null : charger.endV();
        Controller controller = input.controller();
        Double batteryA = controller == null ? null : controller.batteryA();
        Double regenerationA = controller == null ? null : controller.regenerationA();
        Double ohm = pack.resistanceOhm();
        return new Voltages(
                pack.cells(),
                cells.nominalV(),
                cells.fullV(),
                cells.cutOffV(),
                endV == null ? cells.fullV() : Math.max(cells.fullV(), endV),
                cells.restV(),
                equalise == null
                        ? null
                        : trace.note(EQUALISE, pack.cells() * equalise.value(), pack.cells(), equalise.value()),
                endV == null ? null : trace.note(PER_CELL, endV / pack.cells(), endV, pack.cells()),
                // beyond the short-circuit current there is no voltage left to tell
                ohm == null || batteryA == null || !(batteryA * ohm < cells.nominalV())
                        ? null
                        : trace.note(
                                LOADED,
                                Sag.terminalV(cells.nominalV(), ohm, batteryA),
                                cells.nominalV(),
                                batteryA,
                                ohm),
                ohm == null || regenerationA == null
                        ? null
                        : trace.note(
                                REGENERATING,
                                Sag.terminalV(cells.fullV(), ohm, -regenerationA),
                                cells.fullV(),
                                regenerationA,
                                ohm));
    }

    private static Currents currents(FitInput input, Voltages voltages, Allowed allowed, Trace trace) {
        Pack pack = input.pack();
        Controller controller = input.controller();
        Double batteryA = controller == null ? null : controller.batteryA();
        Double capacityC = pack.stringCapacityC();
        return new Currents(
                batteryA,
                batteryA == null ? null : trace.note(PER_STRING, batteryA / pack.strings(), batteryA, pack.strings()),
                controller == null ? null : controller.motorA(),
                ratedPowerA(input, voltages, trace),
                batteryA == null || capacityC == null
                        ? null
                        : trace.note(
                                RATE,
                                batteryA / ChargeUnit.AMPERE_HOUR.fromSi(capacityC * pack.strings()),
                                batteryA,
                                pack.strings(),
                                capacityC),
                allowed.continuousA(),
                pack.limits().peakA(),
                pack.limits().peakS(),
                allowed.chargeA(),
                controller == null ? null : controller.regenerationA(),
                converterA(input.converter(), voltages, trace));
    }

    private static @Nullable Double ratedPowerA(FitInput input, Voltages voltages, Trace trace) {
        Motor motor = input.motor();
        Double efficiency = input.shaftEfficiency();
        if (motor == null || motor.powerW() == null || efficiency == null) {
            return null;
        }
        double ohm = input.pack().resistanceOhm() == null ? 0 : input.pack().resistanceOhm();
        double powerW = motor.powerW() / efficiency;
        if (powerW > Sag.greatestPowerW(voltages.nominalV(), ohm)) {
            return null;
        }
        return trace.note(
                RATED_CURRENT,
                Sag.currentA(voltages.nominalV(), ohm, powerW),
                motor.powerW(),
                efficiency,
                voltages.nominalV(),
                ohm);
    }

    private static @Nullable Double converterA(@Nullable Converter converter, Voltages voltages, Trace trace) {
        Double loadW = converter == null ? null : loadW(converter);
        if (converter == null || loadW == null) {
            return null;
        }
        return trace.note(
                CONVERTER_CURRENT,
                loadW / (converter.efficiency() * voltages.nominalV()),
                loadW,
                converter.efficiency(),
                voltages.nominalV());
    }

    private static @Nullable Double loadW(Converter converter) {
        if (converter.loadW() != null) {
            return converter.loadW();
        }
        return converter.loadA() == null || converter.outputV() == null
                ? null
                : (Double) (converter.loadA() * converter.outputV());
    }

    private static @Nullable Energy energy(Pack pack, Voltages voltages, Trace trace) {
        Double capacityC = pack.stringCapacityC();
        if (capacityC == null) {
            return null;
        }
        double nominalJ = trace.note(
                NOMINAL_ENERGY,
                voltages.nominalV() * capacityC * pack.strings(),
                voltages.nominalV(),
                capacityC,
                pack.strings());
        double stringJ = nominalJ / pack.strings();
        Blocks blocks = pack.blocks();
        return new Energy(
                nominalJ, stringJ, blocks == null || blocks.count() == null ? null : stringJ / blocks.count());
    }

    private static MassBand mass(Pack pack, Energy energy, Trace trace) {
        CellLimits cell = CellLimits.of(pack.chemistry());
        double kilowattHours = EnergyUnit.WATT_HOUR.fromSi(energy.nominalJ()) / 1000;
        return new MassBand(
                pack.massKg(),
                trace.note(
                        USUAL_MASS,
                        cell.leastMass().value() * kilowattHours,
                        cell.leastMass().value(),
                        energy.nominalJ()),
                trace.note(
                        USUAL_MASS,
                        cell.mostMass().value() * kilowattHours,
                        cell.mostMass().value(),
                        energy.nominalJ()));
    }

    private static @Nullable Fade fade(FitInput input, Trace trace) {
        Pack pack = input.pack();
        CellLimits cell = CellLimits.of(pack.chemistry());
        if (cell.fadeFromV() == null || cell.fadeToV() == null) {
            return null;
        }
        return new Fade(
                fade("from", pack.cells(), cell.fadeFromV(), trace), fade("to", pack.cells(), cell.fadeToV(), trace));
    }

    private static double fade(String end, int cells, Datum perCell, Trace trace) {
        Step step = Step.of(
                "V" + end,
                "pack voltage at which regeneration fades, " + end,
                "V" + end + " = n·Vc",
                VOLTAGE,
                perCell.source(),
                CELLS,
                new Symbol("Vc", VOLTAGE));
        return trace.note(step, cells * perCell.value(), cells, perCell.value());
    }

    private static @Nullable TapLoad tap(FitInput input, Voltages voltages, Trace trace) {
        FitInput.Tap tap = input.tap();
        Blocks blocks = input.pack().blocks();
        if (tap == null || tap.blocks() == null || blocks == null || blocks.count() == null) {
            return null;
        }
        double fullV = trace.note(
                TAP_FULL,
                voltages.fullV() * tap.blocks() / blocks.count(),
                voltages.fullV(),
                tap.blocks(),
                blocks.count());
        Double imbalanceC = tap.currentA() == null || tap.timePerDayS() == null
                ? null
                : (Double) trace.note(IMBALANCE, tap.currentA() * tap.timePerDayS(), tap.currentA(), tap.timePerDayS());
        return new TapLoad(fullV, imbalanceC);
    }
}

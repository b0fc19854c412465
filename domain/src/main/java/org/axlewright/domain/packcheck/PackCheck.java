package org.axlewright.domain.packcheck;

import static org.axlewright.domain.quantity.Dimension.CHARGE;
import static org.axlewright.domain.quantity.Dimension.CONSUMPTION;
import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.DISTANCE;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.RESISTANCE;
import static org.axlewright.domain.quantity.Dimension.SPEED;
import static org.axlewright.domain.quantity.Dimension.TIME;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import java.util.Objects;
import org.axlewright.domain.pack.CellData;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.pack.PackVoltages;
import org.axlewright.domain.pack.TemperatureFactor;
import org.axlewright.domain.packcheck.PackCheckResult.Capacity;
import org.axlewright.domain.packcheck.PackCheckResult.Resistances;
import org.axlewright.domain.packcheck.PackCheckResult.Use;
import org.axlewright.domain.packcheck.PackCheckResult.Volts;
import org.axlewright.domain.packcheck.ReadingsInput.Clamp;
import org.axlewright.domain.packcheck.ReadingsInput.Discharge;
import org.axlewright.domain.quantity.ChargeUnit;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * What readings say of a pack: state of charge from rest voltage or acid, resistance from the step under load, the block that stands out,
 * capacity by the clock, consumption from one clamp-meter reading, and what to measure next. Median and median deviation are used
 * throughout: one bad block does not hide itself by moving the mean.
 */
public final class PackCheck {

    private static final Symbol CURRENT_I = new Symbol("I", CURRENT);
    private static final Symbol TIME_T = new Symbol("t", TIME);
    private static final Symbol CHARGE_C = new Symbol("C", CHARGE);
    private static final Symbol SHARE = new Symbol("s", NONE);
    private static final Symbol STRINGS = new Symbol("p", NONE);
    private static final Source CHARGE_LAW = Source.published("charge is current times time");

    private static final Step CONNECTIONS = Step.of(
            "rc",
            "resistance of what lies between the blocks and the place where the pack was read",
            "rc = r - rs/p",
            RESISTANCE,
            Source.derived("resistances in series add"),
            new Symbol("r", RESISTANCE),
            new Symbol("rs", RESISTANCE),
            STRINGS);
    private static final Step GRAVITY = Step.of(
            "u",
            "voltage of a cell at rest from the gravity of its acid",
            "u = SG + 0.845",
            VOLTAGE,
            Source.published("DOE-HDBK-1084-95: open-circuit voltage of a lead-acid cell"),
            new Symbol("SG", NONE));
    private static final Step DELIVERED =
            Step.of("Q", "charge of the timed discharge", "Q = I·t", CHARGE, CHARGE_LAW, CURRENT_I, TIME_T);
    private static final Step EXPECTED = Step.of(
            "Qnew",
            "charge of a new pack at that current and temperature",
            "Qnew = p·CI·fT",
            CHARGE,
            Source.published("battery-monitor maker's manual: Peukert's law from two discharges"),
            STRINGS,
            new Symbol("CI", CHARGE),
            new Symbol("fT", NONE));
    private static final Step HEALTH = Step.of(
            "h",
            "capacity left, share of a new pack's",
            "h = Q/Qnew",
            NONE,
            Source.derived("delivered over expected"),
            new Symbol("Q", CHARGE),
            new Symbol("Qnew", CHARGE));
    private static final Step LEFT = Step.of(
            "Qleft",
            "charge in the pack now, at the rated current",
            "Qleft = p·C·h·s",
            CHARGE,
            Source.derived("state of charge times capacity left"),
            STRINGS,
            CHARGE_C,
            new Symbol("h", NONE),
            SHARE);
    private static final Step CONSUMED = Step.of(
            "w",
            "energy for each metre",
            "w = V·I/v",
            CONSUMPTION,
            Source.derived("power over speed"),
            new Symbol("V", VOLTAGE),
            CURRENT_I,
            new Symbol("v", SPEED));
    private static final Step TIME_LEFT = Step.of(
            "tleft",
            "time on the charge left, at this current",
            "tleft = p·CI·h·s/I",
            TIME,
            Source.derived("charge over current"),
            STRINGS,
            new Symbol("CI", CHARGE),
            new Symbol("h", NONE),
            SHARE,
            CURRENT_I);
    private static final Step DISTANCE_LEFT = Step.of(
            "dleft",
            "distance on the charge left, at this speed",
            "dleft = v·tleft",
            DISTANCE,
            Source.derived("speed times time"),
            new Symbol("v", SPEED),
            TIME_T);

    private PackCheck() {}

    public static PackCheckResult of(ReadingsInput input, Trace trace) {
        BlockReadings readings = BlockReadings.of(input, trace);
        Volts volts = volts(input, readings);
        Resistances resistance = resistance(input, readings, trace);
        RestVoltage.Told told = told(input, readings, volts, trace);
        Capacity capacity = capacity(input, trace);
        Double charge = told == null || told.value() == null ? input.stateOfCharge() : told.value();
        Double chargeLeftC = chargeLeftC(input, charge, capacity, trace);
        Use use = use(input, volts, resistance, charge, capacity, trace);
        PackCheckResult result = new PackCheckResult(
                next(input, readings, volts, capacity),
                told,
                volts,
                resistance,
                readings.spread(),
                readings.checked(),
                capacity,
                chargeLeftC,
                use);
        PackCheckFindings.find(input, readings, result, trace);
        return result;
    }

    /** Whether the readings tell one state of charge, and not only its bounds. */
    public static boolean tellsCharge(ReadingsInput input) {
        Trace silent = Trace.withoutWorking();
        BlockReadings readings = BlockReadings.of(input, silent);
        RestVoltage.Told told = told(input, readings, volts(input, readings), silent);
        return told != null && told.value() != null;
    }

    private static Volts volts(ReadingsInput input, BlockReadings readings) {
        Integer cells = input.cells();
        Double restV =
                readings.restV() == null ? null : (Double) (readings.restV().median() / input.cellsOfBlock());
        Double loadV =
                readings.loadV() == null ? null : (Double) (readings.loadV().median() / input.cellsOfBlock());
        if (restV == null && input.pack().restV() != null && cells != null) {
            restV = input.pack().restV() / cells;
        }
        if (loadV == null && input.pack().loadV() != null && cells != null) {
            loadV = input.pack().loadV() / cells;
        }
        return new Volts(readings.sumV(), restV, loadV);
    }

    private static @Nullable Resistances resistance(ReadingsInput input, BlockReadings readings, Trace trace) {
        Double loadA = input.pack().loadA();
        Double stringOhm = readings.stringOhm();
        Double blocksOhm = stringOhm == null ? null : (Double) (stringOhm / input.strings());
        Double readOhm =
                loadA == null || input.pack().restV() == null || input.pack().loadV() == null
                        ? null
                        : (Double) trace.note(
                                BlockReadings.RESISTANCE_STEP,
                                (input.pack().restV() - input.pack().loadV()) / loadA,
                                input.pack().restV(),
                                input.pack().loadV(),
                                loadA);
        if (readOhm == null && blocksOhm == null && readings.ohm() == null) {
            return null;
        }
        Double connectionsOhm = readOhm == null || blocksOhm == null || stringOhm == null
                ? null
                : (Double) trace.note(CONNECTIONS, readOhm - blocksOhm, readOhm, stringOhm, input.strings());
        return new Resistances(
                readOhm == null ? blocksOhm : readOhm,
                readings.ohm() == null ? null : (Double) readings.ohm().median(),
                connectionsOhm);
    }

    /** Acid tells more than voltage; of either the middle block speaks for the pack. */
    private static RestVoltage.@Nullable Told told(
            ReadingsInput input, BlockReadings readings, Volts volts, Trace trace) {
        if (readings.gravity() != null && input.chemistry() == Chemistry.FLOODED) {
            double gravity = readings.gravity().median();
            return RestVoltage.of(input.chemistry(), trace.note(GRAVITY, PackVoltages.restV(1, gravity), gravity));
        }
        return volts.restCellV() == null || volts.restCellV() <= 0
                ? null
                : RestVoltage.of(input.chemistry(), volts.restCellV());
    }

    private static @Nullable Capacity capacity(ReadingsInput input, Trace trace) {
        Discharge discharge = input.discharge();
        if (discharge == null) {
            return null;
        }
        double deliveredC = trace.note(
                DELIVERED, discharge.currentA() * discharge.timeS(), discharge.currentA(), discharge.timeS());
        if (input.string() == null) {
            return new Capacity(deliveredC, null, null, null);
        }
        double expectedC = availableC(input, discharge.currentA(), input.temperatureC(), trace);
        double share = trace.note(HEALTH, deliveredC / expectedC, deliveredC, expectedC);
        return new Capacity(deliveredC, expectedC, share, share * input.string().ratedC() * input.strings());
    }

    /** What a new pack gives at a current of all strings, at the temperature of the cells. */
    private static double availableC(ReadingsInput input, double currentA, double temperatureC, Trace trace) {
        double stringA = currentA / input.strings();
        double stringC = Objects.requireNonNull(input.string()).at(stringA, trace);
        double factor = TemperatureFactor.of(input.chemistry(), temperatureC, stringC / stringA, trace);
        return trace.note(EXPECTED, input.strings() * stringC * factor, input.strings(), stringC, factor);
    }

    private static @Nullable Double chargeLeftC(
            ReadingsInput input, @Nullable Double charge, @Nullable Capacity capacity, Trace trace) {
        if (charge == null || input.string() == null) {
            return null;
        }
        double health = capacity == null || capacity.share() == null ? 1 : capacity.share();
        return trace.note(
                LEFT,
                input.strings() * input.string().ratedC() * health * charge,
                input.strings(),
                input.string().ratedC(),
                health,
                charge);
    }

    private static @Nullable Use use(
            ReadingsInput input,
            Volts volts,
            @Nullable Resistances resistance,
            @Nullable Double charge,
            @Nullable Capacity capacity,
            Trace trace) {
        Clamp clamp = input.clamp();
        if (clamp == null) {
            return null;
        }
        Double voltageV = input.cells() == null
                ? null
                : (Double) (input.cells()
                        * CellData.of(input.chemistry()).nominalV().value());
        if (input.cells() != null
                && volts.restCellV() != null
                && resistance != null
                && resistance.packOhm() != null
                && volts.restCellV() * input.cells() > clamp.currentA() * resistance.packOhm()) {
            voltageV = volts.restCellV() * input.cells() - clamp.currentA() * resistance.packOhm();
        }
        Double consumption = voltageV == null || clamp.speedMPS() == null
                ? null
                : (Double) trace.note(
                        CONSUMED,
                        voltageV * clamp.currentA() / clamp.speedMPS(),
                        voltageV,
                        clamp.currentA(),
                        clamp.speedMPS());
        Double timeLeftS = timeLeftS(input, clamp, charge, capacity, trace);
        return new Use(
                clamp.currentA(),
                voltageV,
                input.string() == null
                        ? null
                        : (Double) (clamp.currentA()
                                / ChargeUnit.AMPERE_HOUR.fromSi(input.string().ratedC() * input.strings())),
                consumption,
                timeLeftS,
                timeLeftS == null || clamp.speedMPS() == null
                        ? null
                        : (Double)
                                trace.note(DISTANCE_LEFT, clamp.speedMPS() * timeLeftS, clamp.speedMPS(), timeLeftS));
    }

    private static @Nullable Double timeLeftS(
            ReadingsInput input, Clamp clamp, @Nullable Double charge, @Nullable Capacity capacity, Trace trace) {
        if (charge == null || input.string() == null) {
            return null;
        }
        double health = capacity == null || capacity.share() == null ? 1 : capacity.share();
        double stringC = input.string().at(clamp.currentA() / input.strings(), trace);
        return trace.note(
                TIME_LEFT,
                input.strings() * stringC * health * charge / clamp.currentA(),
                input.strings(),
                stringC,
                health,
                charge,
                clamp.currentA());
    }

    private static Measurement next(
            ReadingsInput input, BlockReadings readings, Volts volts, @Nullable Capacity capacity) {
        boolean blocksRead = readings.restV() != null;
        if (readings.worst() == BlockState.REVERSED) {
            return Measurement.POLARITY;
        }
        if (!blocksRead && (input.pack().restV() != null || input.pack().loadV() != null)) {
            return Measurement.BLOCK_REST_VOLTAGES;
        }
        if (blocksRead && input.pack().loadA() == null && readings.loadV() != null) {
            return Measurement.LOAD_CURRENT;
        }
        if (blocksRead && readings.loadV() == null) {
            return Measurement.BLOCK_LOAD_VOLTAGES;
        }
        if (input.chemistry() == Chemistry.FLOODED
                && readings.worst() != BlockState.ALIKE
                && readings.gravity() == null) {
            return Measurement.SPECIFIC_GRAVITY;
        }
        if (capacity == null) {
            return Measurement.TIMED_DISCHARGE;
        }
        if (!blocksRead && input.cells() != null) {
            return Measurement.BLOCK_REST_VOLTAGES;
        }
        Double restS = input.pack().restTimeS();
        if (volts.restCellV() != null && (restS == null || restS < PackCheckFindings.LEAST_REST_S)) {
            return Measurement.REST_AGAIN;
        }
        return input.clamp() == null ? Measurement.CLAMP_CURRENT : Measurement.SAME_AGAIN;
    }
}

package org.axlewright.domain.charging;

import static org.axlewright.domain.quantity.Dimension.CHARGE;
import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.ENERGY;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.POWER;
import static org.axlewright.domain.quantity.Dimension.RESISTANCE;
import static org.axlewright.domain.quantity.Dimension.TEMPERATURE;
import static org.axlewright.domain.quantity.Dimension.TIME;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.check.InvalidInput;
import org.axlewright.domain.pack.CellData;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.quantity.ChargeUnit;
import org.axlewright.domain.quantity.EnergyUnit;
import org.axlewright.domain.quantity.Money;
import org.axlewright.domain.trace.Datum;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.axlewright.domain.trace.Trace.Term;
import org.jspecify.annotations.Nullable;

/**
 * How long charging takes, what sets the current, and what it asks of outlet and cord.
 *
 * <p>Power and energy go by the mean voltage over the charge put in. At constant power that mean gives the exact time, whatever the
 * shape of the voltage curve: t = ∫U dQ/P.
 */
public final class ChargeTime {

    private static final Source PLATE = Source.published("data plate of the charger");
    private static final Source POWER_BALANCE =
            Source.derived("power balance: P_dc = U·I·λ·η, less the voltage lost in the cord");

    private static final Symbol PACK_VOLTAGE = new Symbol("U_p", VOLTAGE);
    private static final Symbol MAINS_VOLTAGE = new Symbol("U", VOLTAGE);
    private static final Symbol PACK_CURRENT = new Symbol("I_0", CURRENT);
    private static final Symbol MAINS_CURRENT = new Symbol("I_ac", CURRENT);
    private static final Symbol CORD_RESISTANCE = new Symbol("R", RESISTANCE);
    private static final Symbol EFFICIENCY = new Symbol("η", NONE);
    private static final Symbol POWER_FACTOR = new Symbol("λ", NONE);

    private static final Step VOLTAGE_ON_CHARGE = Step.of(
            "U_p",
            "mean voltage of the pack on charge",
            "U_p = n·u",
            VOLTAGE,
            Source.derived("cells in series"),
            new Symbol("n", NONE),
            new Symbol("u", VOLTAGE));
    private static final Step CURRENT_FROM_POWER = Step.of(
            "I_P",
            "output current of a constant-power charger",
            "I_P = P/U_p",
            CURRENT,
            PLATE,
            new Symbol("P", POWER),
            PACK_VOLTAGE);
    private static final Step CURRENT_FROM_MAINS = Step.of(
            "I_m,dc",
            "output current that the mains side allows",
            "I_m,dc = (U − I_ac·R)·I_ac·λ·η/U_p",
            CURRENT,
            POWER_BALANCE,
            MAINS_VOLTAGE,
            MAINS_CURRENT,
            CORD_RESISTANCE,
            POWER_FACTOR,
            EFFICIENCY,
            PACK_VOLTAGE);
    private static final Step CORD_REACH = Step.of(
            "I_r",
            "current at which the cord passes on the most power",
            "I_r = U/(2·R)",
            CURRENT,
            Source.derived("greatest of (U − I·R)·I"),
            MAINS_VOLTAGE,
            CORD_RESISTANCE);
    private static final Step CHARGING_CURRENT = Step.of(
            "I_0",
            "charging current, the least of pack limit, charger output and what the mains side allows",
            "I_0 = min(I_pack, I_charger, I_m,dc), of those that are known",
            CURRENT,
            Source.derived("the weakest link"));
    private static final Step CURRENT_AT_MAINS = Step.of(
            "I_ac",
            "mains current at the mean charging voltage",
            "I_ac = 2·p/[U + √(U² − 4·R·p)], p = I_0·U_p/(η·λ)",
            CURRENT,
            POWER_BALANCE,
            PACK_CURRENT,
            PACK_VOLTAGE,
            EFFICIENCY,
            POWER_FACTOR,
            MAINS_VOLTAGE,
            CORD_RESISTANCE);
    private static final Step PEAK_AT_MAINS = Step.of(
            "I_peak",
            "mains current at the end of the constant-current phase, where the voltage is highest",
            "I_peak as I_ac, with n·u_full in place of U_p and no more output than the charger's power; no more than the mains side allows",
            CURRENT,
            POWER_BALANCE,
            PACK_CURRENT,
            new Symbol("n·u_full", VOLTAGE),
            EFFICIENCY,
            POWER_FACTOR,
            MAINS_VOLTAGE,
            CORD_RESISTANCE);
    private static final Step POWER_AT_MAINS = Step.of(
            "P_ac",
            "power drawn at the outlet",
            "P_ac = U·I_ac·λ",
            POWER,
            Source.derived("definition of the power factor"),
            MAINS_VOLTAGE,
            MAINS_CURRENT,
            POWER_FACTOR);
    private static final Step ENERGY_AT_MAINS = Step.of(
            "E",
            "energy drawn at the outlet",
            "E = (s_1 − s_0)·C·F·U_p/[η·(1 − δ)], δ the share lost in the cord",
            ENERGY,
            Source.derived(
                    "energy balance; the share lost in the cord is that of the constant-current phase, which errs to the dear side"),
            new Symbol("s_1", NONE),
            new Symbol("s_0", NONE),
            new Symbol("C", CHARGE),
            new Symbol("F", NONE),
            PACK_VOLTAGE,
            EFFICIENCY,
            new Symbol("δ", NONE));
    private static final Step COST = Step.of(
            "K",
            "cost of the energy, in the currency of the price",
            "K = k·E/(3 600 000 J/kWh), k the price of a kilowatt-hour",
            NONE,
            Source.derived("price times energy"),
            new Symbol("k", NONE),
            new Symbol("E", ENERGY));
    private static final Step PRESENT_CAPACITY = Step.of(
            "C",
            "capacity of all strings that is left",
            "C = h·C_r",
            CHARGE,
            Source.derived("definition of the health of a pack"),
            new Symbol("h", NONE),
            new Symbol("C_r", CHARGE));
    private static final Step END_VOLTAGE = Step.of(
            "U_e",
            "voltage of the pack at the end of the constant-current phase, at its temperature",
            "U_e = n·[u_full + k·(T − 25 °C)], k −4 mV/K per cell of lead-acid and 0 of lithium",
            VOLTAGE,
            Source.memory("temperature compensation of lead-acid, −3 to −5 mV/K per cell; none for lithium"),
            new Symbol("n", NONE),
            new Symbol("u_full", VOLTAGE),
            new Symbol("T", TEMPERATURE));
    private static final Step INTO_PACK = Step.of(
            "E_p",
            "energy into the pack",
            "E_p = (s_1 − s_0)·C·F·U_p",
            ENERGY,
            Source.derived("charge times mean voltage"),
            new Symbol("s_1", NONE),
            new Symbol("s_0", NONE),
            new Symbol("C", CHARGE),
            new Symbol("F", NONE),
            PACK_VOLTAGE);
    private static final Step STORED = Step.of(
            "E_s",
            "energy stored, at the nominal voltage",
            "E_s = (s_1 − s_0)·C·n·u_n",
            ENERGY,
            Source.derived("charge that comes out again times nominal voltage"),
            new Symbol("s_1", NONE),
            new Symbol("s_0", NONE),
            new Symbol("C", CHARGE),
            new Symbol("n", NONE),
            new Symbol("u_n", VOLTAGE));
    private static final Step END_CURRENT = Step.of(
            "I_e",
            "current at which the pack counts as full",
            "I_e = r·C/(3600 s), r in A for each Ah",
            CURRENT,
            Source.derived("rate times capacity"),
            new Symbol("r", NONE),
            new Symbol("C", CHARGE));
    private static final Step WHOLE_TIME = Step.of(
            "t",
            "charging time",
            "t = t_cc + t_cv",
            TIME,
            Source.derived("sum of the phases"),
            new Symbol("t_cc", TIME),
            new Symbol("t_cv", TIME));

    private ChargeTime() {}

    /**
     * The pack.
     *
     * @param ratedC rated capacity of all strings together, C
     * @param health share of it that is left, above 0
     * @param cells cells in series; null when not known
     * @param limitA largest charging current of battery management or maker at that temperature, A; 0 when none is allowed there, null
     *     when not known
     * @param temperatureC of the cells, degC
     */
    public record PackOnCharge(
            Chemistry chemistry,
            double ratedC,
            double health,
            @Nullable Integer cells,
            @Nullable Double limitA,
            double temperatureC) {

        public PackOnCharge {
            Check.positive(ratedC, "capacity");
            Check.positive(health, "health");
            Check.finite(temperatureC, "temperature");
            if (cells != null) {
                Check.positive(cells, "cells in series");
            }
            if (limitA != null) {
                Check.notNegative(limitA, "charge limit");
            }
        }

        /** Whether its maker allows no charge at its temperature. */
        public boolean refused() {
            return limitA != null && limitA == 0;
        }

        /** What is left of the capacity of all strings together, C. */
        double capacityC() {
            return ratedC * health;
        }
    }

    /**
     * The charger's data plate; current or power or both.
     *
     * @param currentA output current, A
     * @param powerW output power, W; needs the cells of the pack beside it
     * @param efficiency output over input, above 0, at most 1
     * @param powerFactor at the mains, above 0, at most 1
     * @param maximumInputA largest mains current, A
     */
    public record Plate(
            ChargerType type,
            @Nullable Double currentA,
            @Nullable Double powerW,
            double efficiency,
            double powerFactor,
            @Nullable Double maximumInputA) {

        public Plate {
            if (currentA == null && powerW == null) {
                throw new InvalidInput("a charger has an output current or an output power");
            }
            Check.positive(currentA == null ? 1 : currentA, "output current");
            Check.positive(powerW == null ? 1 : powerW, "output power");
            Check.positive(maximumInputA == null ? 1 : maximumInputA, "largest mains current");
            Check.within(efficiency, Double.MIN_NORMAL, 1, "efficiency");
            Check.within(powerFactor, Double.MIN_NORMAL, 1, "power factor");
        }
    }

    /**
     * From where to where, and how.
     *
     * @param from state of charge at the start, 0 to 1
     * @param to state of charge at the end, above {@code from}, at most 1
     * @param factor charge put in for each charge taken out, at least 1
     * @param constantVoltageTimeS constant-voltage phase up to full, s
     */
    public record Window(double from, double to, double factor, double constantVoltageTimeS) {

        public Window {
            Check.within(from, 0, 1, "state of charge at the start");
            Check.within(to, from, 1, "state of charge at the end");
            Check.positive(to - from, "charge");
            Check.within(factor, 1, 10, "charge factor");
            Check.notNegative(constantVoltageTimeS, "constant-voltage time");
        }
    }

    /**
     * Everything that is known.
     *
     * @param pricePerKwh of energy from the mains
     * @param equalising asked for after the charge; null for none. Only flooded lead-acid gets one
     */
    public record Input(
            PackOnCharge pack,
            Plate charger,
            Window window,
            @Nullable Mains mains,
            @Nullable Money pricePerKwh,
            @Nullable EqualisingPlan equalising) {

        public Input {
            if (charger.currentA() == null && pack.cells() == null) {
                throw new InvalidInput("a charger that holds its power needs the cells of the pack");
            }
        }

        /** Whether a charge may be timed at all: not in harmful cold, not where the maker allows none, not when the circuit is taken. */
        public boolean possible() {
            return !pack.refused()
                    && !ChargeTemperature.forbids(pack.chemistry(), pack.temperatureC(), window.from())
                    && (mains == null || mains.outletLimitA(Trace.withoutWorking()) > 0);
        }

        /** Whether the mains current follows: it takes the cells and the mains voltage. */
        boolean reachesMains() {
            return pack.cells() != null && mains != null && mains.voltageV() != null;
        }
    }

    /**
     * The charge.
     *
     * @param time of the two phases
     * @param packCurrentA in the constant-current phase, A
     * @param energyJ drawn at the outlet, J; null without the cells
     * @param cost of that energy; null without its price
     * @param draw at the mains; null without cells and mains voltage
     * @param ventilation of lead-acid; null for lithium and without the cells
     * @param endVoltageV of the pack at its temperature, V; null without the cells and outside {@link ChargeTemperature#compensated}
     * @param balance where the energy goes; null without the cells
     * @param equalising after it; null for none and without the cells
     */
    public record Charge(
            ChargePhases time,
            double packCurrentA,
            LimitedBy limitedBy,
            @Nullable Double energyJ,
            @Nullable Money cost,
            @Nullable Draw draw,
            @Nullable Ventilation ventilation,
            @Nullable Double endVoltageV,
            @Nullable Balance balance,
            @Nullable Equalising equalising) {}

    /**
     * Where the energy from the mains goes, J; the parts add up to it.
     *
     * @param storedJ what comes out again at the nominal voltage
     * @param packLossJ lost in the cells
     * @param chargerLossJ lost in the charger
     * @param cordLossJ lost in the cord
     */
    public record Balance(double storedJ, double packLossJ, double chargerLossJ, double cordLossJ) {}

    /**
     * What the charge draws from the mains.
     *
     * @param currentA at the mean charging voltage, A
     * @param peakCurrentA at the end of the constant-current phase, A
     * @param powerW at the outlet, W
     * @param wantedA what the charger would draw if nothing on the mains side held it back, A
     * @param cordLoss null without a cord
     */
    public record Draw(
            double currentA, double peakCurrentA, double powerW, double wantedA, Cord.@Nullable Loss cordLoss) {}

    /**
     * The answer.
     *
     * @param supplyLimitA what outlet, circuit and cord carry for hours, A; null when neither outlet nor circuit is known
     * @param charge null when there must not or cannot be one
     */
    public record Result(
            @Nullable Double supplyLimitA, @Nullable Charge charge) {}

    /** Works out the charge. Pure. */
    public static Result of(Input input, Trace trace) {
        double outletA =
                input.mains() == null ? Double.POSITIVE_INFINITY : input.mains().outletLimitA(trace);
        Double supplyLimitA = input.mains() != null && input.mains().known()
                ? (Double) input.mains().noteLimit(outletA, trace)
                : null;
        Charge charge = input.possible() ? charge(input, outletA, trace) : null;
        Result result = new Result(supplyLimitA, charge);
        ChargeFindings.find(input, outletA, result, trace);
        return result;
    }

    private static Charge charge(Input input, double outletA, Trace trace) {
        PackOnCharge pack = input.pack();
        Plate charger = input.charger();
        Window window = input.window();
        ChargeProfile profile = ChargeProfile.of(pack.chemistry());
        Double packVoltageV = pack.cells() == null ? null : (Double) packVoltage(pack.cells(), profile, trace);
        trace.note(PRESENT_CAPACITY, pack.capacityC(), pack.health(), pack.ratedC());

        double packA = Objects.requireNonNullElse(pack.limitA(), Double.POSITIVE_INFINITY);
        double currentA = packA;
        LimitedBy limitedBy = LimitedBy.PACK;
        double outputA = outputA(charger, packVoltageV, trace);
        if (outputA < currentA) {
            currentA = outputA;
            limitedBy = LimitedBy.CHARGER_OUTPUT;
        }
        MainsSide side = null;
        double freeA = currentA;
        double allowedA = Double.POSITIVE_INFINITY;
        if (input.reachesMains()) {
            side = MainsSide.of(input, outletA, Objects.requireNonNull(packVoltageV), trace);
            allowedA = side.allowedOutputA(trace);
            if (allowedA < currentA) {
                currentA = allowedA;
                limitedBy = side.limitedBy();
            }
        }
        noteChargingCurrent(
                currentA, List.of("I_pack", "I_charger", "I_m,dc"), List.of(packA, outputA, allowedA), trace);
        double endA = trace.note(
                END_CURRENT,
                profile.endRate().value() * ChargeUnit.AMPERE_HOUR.fromSi(pack.capacityC()),
                Noted.datum("r", "end of charge, A for each Ah", NONE, profile.endRate(), trace),
                pack.capacityC());
        double knee = Noted.datum(
                "f",
                "state of charge at which the constant-voltage phase starts",
                NONE,
                profile.constantVoltageFrom(),
                trace);
        ChargePhases phases = ChargePhases.of(
                knee,
                window.from(),
                window.to(),
                pack.capacityC(),
                window.factor(),
                window.constantVoltageTimeS(),
                currentA,
                endA,
                trace);
        trace.note(WHOLE_TIME, phases.timeS(), phases.constantCurrentTimeS(), phases.constantVoltageTimeS());
        Draw draw = side == null ? null : side.draw(input, freeA, currentA, limitedBy, trace);
        Double energyJ = packVoltageV == null ? null : (Double) energyJ(input, packVoltageV, draw, trace);
        Datum gassing = profile.gassing(charger.type());
        Ventilation ventilation = pack.cells() == null || gassing == null
                ? null
                : Ventilation.of(pack.cells(), pack.capacityC(), gassing, trace);
        Money cost = energyJ == null || input.pricePerKwh() == null ? null : cost(energyJ, input.pricePerKwh(), trace);
        Double endVoltageV = pack.cells() == null ? null : endVoltageV(pack, pack.cells(), trace);
        Balance balance = packVoltageV == null || energyJ == null ? null : balance(input, packVoltageV, energyJ, trace);
        Equalising equalising =
                pack.cells() == null || input.equalising() == null || pack.chemistry() != Chemistry.FLOODED
                        ? null
                        : Equalising.of(input.equalising(), pack.cells(), charger.efficiency(), trace);
        return new Charge(
                phases, currentA, limitedBy, energyJ, cost, draw, ventilation, endVoltageV, balance, equalising);
    }

    private static void noteChargingCurrent(double currentA, List<String> symbols, List<Double> limitsA, Trace trace) {
        if (!trace.keepsWorking()) {
            return;
        }
        List<Term> known = new ArrayList<>();
        for (int i = 0; i < symbols.size(); i++) {
            if (limitsA.get(i) < Double.POSITIVE_INFINITY) {
                known.add(new Term(new Symbol(symbols.get(i), CURRENT), limitsA.get(i)));
            }
        }
        trace.noteTerms(CHARGING_CURRENT, currentA, known);
    }

    private static double packVoltage(int cells, ChargeProfile profile, Trace trace) {
        double cellV = Noted.datum("u", "mean voltage of a cell on charge", VOLTAGE, profile.averageVoltageV(), trace);
        return trace.note(VOLTAGE_ON_CHARGE, cells * cellV, cells, cellV);
    }

    private static double outputA(Plate charger, @Nullable Double packVoltageV, Trace trace) {
        double currentA = Objects.requireNonNullElse(charger.currentA(), Double.POSITIVE_INFINITY);
        if (charger.powerW() == null || packVoltageV == null) {
            return currentA;
        }
        return Math.min(
                currentA,
                trace.note(CURRENT_FROM_POWER, charger.powerW() / packVoltageV, charger.powerW(), packVoltageV));
    }

    private static double energyJ(Input input, double packVoltageV, @Nullable Draw draw, Trace trace) {
        Window window = input.window();
        double lost =
                draw == null || draw.cordLoss() == null ? 0 : draw.cordLoss().dropShare();
        double efficiency = input.charger().efficiency();
        double capacityC = input.pack().capacityC();
        return trace.note(
                ENERGY_AT_MAINS,
                (window.to() - window.from()) * capacityC * window.factor() * packVoltageV / (efficiency * (1 - lost)),
                window.to(),
                window.from(),
                capacityC,
                window.factor(),
                packVoltageV,
                efficiency,
                lost);
    }

    private static @Nullable Double endVoltageV(PackOnCharge pack, int cells, Trace trace) {
        if (!ChargeTemperature.compensated(pack.chemistry(), pack.temperatureC())) {
            return null;
        }
        double fullV = CellData.of(pack.chemistry()).fullV().value();
        double cellV = fullV + ChargeTemperature.compensationV(pack.chemistry(), pack.temperatureC());
        return trace.note(END_VOLTAGE, cells * cellV, cells, fullV, pack.temperatureC());
    }

    private static Balance balance(Input input, double packVoltageV, double energyJ, Trace trace) {
        Window window = input.window();
        double capacityC = input.pack().capacityC();
        double nominalV = CellData.of(input.pack().chemistry()).nominalV().value();
        int cells = Objects.requireNonNull(input.pack().cells());
        double share = window.to() - window.from();
        double intoPackJ = trace.note(
                INTO_PACK,
                share * capacityC * window.factor() * packVoltageV,
                window.to(),
                window.from(),
                capacityC,
                window.factor(),
                packVoltageV);
        double storedJ = trace.note(
                STORED, share * capacityC * cells * nominalV, window.to(), window.from(), capacityC, cells, nominalV);
        double intoChargerJ = intoPackJ / input.charger().efficiency();
        return new Balance(storedJ, intoPackJ - storedJ, intoChargerJ - intoPackJ, energyJ - intoChargerJ);
    }

    /** In decimal, to the sixteen digits that a binary double holds; a cent is never lost and nothing is rounded to cents. */
    private static Money cost(double energyJ, Money pricePerKwh, Trace trace) {
        BigDecimal amount = BigDecimal.valueOf(EnergyUnit.KILOWATT_HOUR.fromSi(energyJ))
                .multiply(pricePerKwh.decimal(), MathContext.DECIMAL64);
        trace.note(COST, amount.doubleValue(), pricePerKwh.decimal().doubleValue(), energyJ);
        return new Money(amount.stripTrailingZeros().toPlainString(), pricePerKwh.currency());
    }

    /**
     * The mains side: voltage, cord, and the least of what charger, cord and outlet let through.
     *
     * @param limitA A; infinite when nothing is known to limit it
     */
    private record MainsSide(
            double voltageV, double cordOhm, double packVoltageV, Plate charger, double limitA, LimitedBy limitedBy) {

        static MainsSide of(Input input, double outletA, double packVoltageV, Trace trace) {
            Mains mains = Objects.requireNonNull(input.mains());
            double voltageV = Objects.requireNonNull(mains.voltageV());
            Cord cord = mains.cord();
            double cordOhm = cord == null ? 0 : cord.loopResistanceOhm(trace);
            double limitA = Objects.requireNonNullElse(input.charger().maximumInputA(), Double.POSITIVE_INFINITY);
            LimitedBy limitedBy = LimitedBy.CHARGER_INPUT;
            if (cord != null) {
                double cordA = Math.min(
                        cordOhm > 0
                                ? trace.note(CORD_REACH, voltageV / (2 * cordOhm), voltageV, cordOhm)
                                : Double.POSITIVE_INFINITY,
                        Noted.datum("I_cord", "what the cord carries for hours", CURRENT, cord.ampacity(), trace));
                if (cordA < limitA) {
                    limitA = cordA;
                    limitedBy = LimitedBy.CORD;
                }
            }
            if (outletA < limitA) {
                limitA = outletA;
                limitedBy = LimitedBy.OUTLET;
            }
            return new MainsSide(voltageV, cordOhm, packVoltageV, input.charger(), limitA, limitedBy);
        }

        double allowedOutputA(Trace trace) {
            if (limitA == Double.POSITIVE_INFINITY) {
                return limitA;
            }
            double outputA = (voltageV - limitA * cordOhm)
                    * limitA
                    * charger.powerFactor()
                    * charger.efficiency()
                    / packVoltageV;
            return trace.note(
                    CURRENT_FROM_MAINS,
                    outputA,
                    voltageV,
                    limitA,
                    cordOhm,
                    charger.powerFactor(),
                    charger.efficiency(),
                    packVoltageV);
        }

        /** Mains current that gives so much output power; what the cord cannot pass on at all is reckoned without its drop. */
        private double currentA(double outputW) {
            double apparent = outputW / (charger.efficiency() * charger.powerFactor());
            double root = voltageV * voltageV - 4 * cordOhm * apparent;
            return root < 0 ? apparent / voltageV : 2 * apparent / (voltageV + Math.sqrt(root));
        }

        Draw draw(Input input, double freeA, double packA, LimitedBy held, Trace trace) {
            boolean heldByMains = held == LimitedBy.CHARGER_INPUT || held == LimitedBy.CORD || held == LimitedBy.OUTLET;
            double currentA = trace.note(
                    CURRENT_AT_MAINS,
                    heldByMains ? limitA : currentA(packA * packVoltageV),
                    packA,
                    packVoltageV,
                    charger.efficiency(),
                    charger.powerFactor(),
                    voltageV,
                    cordOhm);
            double endV = Objects.requireNonNull(input.pack().cells())
                    * (CellData.of(input.pack().chemistry()).fullV().value()
                            + ChargeTemperature.compensationV(
                                    input.pack().chemistry(), input.pack().temperatureC()));
            double peakA = trace.note(
                    PEAK_AT_MAINS,
                    heldByMains ? limitA : Math.min(limitA, currentA(endPowerW(packA, endV))),
                    packA,
                    endV,
                    charger.efficiency(),
                    charger.powerFactor(),
                    voltageV,
                    cordOhm);
            double wantedA =
                    charger.maximumInputA() != null ? charger.maximumInputA() : currentA(endPowerW(freeA, endV));
            double powerW = trace.note(
                    POWER_AT_MAINS,
                    voltageV * currentA * charger.powerFactor(),
                    voltageV,
                    currentA,
                    charger.powerFactor());
            Cord.Loss loss = cordOhm == 0 ? null : Cord.loss(currentA, cordOhm, voltageV, trace);
            return new Draw(currentA, peakA, powerW, wantedA, loss);
        }

        private double endPowerW(double outputA, double endV) {
            return Math.min(outputA * endV, Objects.requireNonNullElse(charger.powerW(), Double.POSITIVE_INFINITY));
        }
    }
}

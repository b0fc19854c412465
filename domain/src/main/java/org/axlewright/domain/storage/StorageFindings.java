package org.axlewright.domain.storage;

import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.TEMPERATURE;
import static org.axlewright.domain.quantity.Dimension.TIME;

import org.axlewright.domain.pack.FreezingPoint;
import org.axlewright.domain.quantity.TimeUnit;
import org.axlewright.domain.storage.Storage.After;
import org.axlewright.domain.storage.Storage.Input;
import org.axlewright.domain.storage.Storage.Result;
import org.axlewright.domain.trace.Caution;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Trace;

/** What stands out in a storage. */
final class StorageFindings {

    /** Above it a lithium pack ages faster than need be, 0 to 1. */
    private static final double LITHIUM_HIGH = 0.8;

    /** Storage that is longer than a pause. */
    private static final double LONG_S = TimeUnit.MONTH.toSi(1);

    /** Above it every chemistry ages faster, degC. */
    private static final double WARM_C = 30;

    /** Range in which the rule of 10 K was printed or met, degC. */
    private static final double RULE_FROM_C = 0;

    private static final double RULE_TO_C = 40;

    private static final Source AGEING = Source.published(
            "Energies 2021, 14(6), 1732: calendar ageing rises with temperature and mean state of charge, 27 to 43 months");

    private static final Source LEAD_ACID_LIFE =
            Source.published("battery handbook: lead-acid lives 10, 7 and 5 years at 20, 25 and 30 degC");

    private static final Caution STORED = new Caution(
            "storage",
            "Disconnect what draws current, keep terminals covered, store dry, cool and away from what burns, and go by the maker's storage"
                    + " instructions. Read the voltage of every block, and the state of charge of the management, before charging again.");

    private StorageFindings() {}

    static void find(Input input, Result result, Trace trace) {
        trace.caution(STORED);
        recharge(input, result, trace);
        frost(input, result, trace);
        load(result, trace);
        habits(input, trace);
        range(input, trace);
    }

    private static void recharge(Input input, Result result, Trace trace) {
        After after = result.after();
        Double durationS = input.durationS();
        if (durationS == null || after == null) {
            return;
        }
        boolean leadAcid = input.chemistry().isLeadAcid();
        if (durationS > result.flatAfterS()) {
            trace.find(
                    Finding.of(
                                    "flat-before-the-end",
                                    Level.DANGER,
                                    leadAcid
                                            ? "The pack is flat after {actual}, before the {limit} are over: it sulphates and freezes"
                                            : "The pack is flat after {actual}, before the {limit} are over: cells pulled below their cut-off grow copper inside and can burn when they are charged",
                                    leadAcid
                                            ? StorageHabit.of(input.chemistry())
                                                    .rechargeAt()
                                                    .source()
                                            : Source.memory("over-discharge of lithium cells"))
                            .at("/storage/duration")
                            .actual(new Measure(result.flatAfterS(), TIME))
                            .limit(new Measure(durationS, TIME))
                            .action(
                                    leadAcid
                                            ? "Recharge in between or disconnect the load"
                                            : "Recharge in between or disconnect the load; a cell found below its cut-off is not charged again"));
        } else if (durationS > result.rechargeWithinS()) {
            trace.find(Finding.of(
                            "recharge-before-the-end",
                            leadAcid ? Level.WARNING : Level.CAUTION,
                            "Recharge within {actual}, before the {limit} are over"
                                    + (result.rechargeBy() == null ? "" : ": by " + result.rechargeBy()),
                            StorageHabit.of(input.chemistry()).longestMonths().source())
                    .at("/storage/duration")
                    .actual(new Measure(result.rechargeWithinS(), TIME))
                    .limit(new Measure(durationS, TIME))
                    .action("Charge full in between" + (leadAcid ? "" : ", then back to about half")));
        }
        if (!leadAcid && after.stateOfCharge() >= input.rechargeAt()) {
            trace.find(Finding.of(
                            "starts-again",
                            Level.NOTICE,
                            "With a share of {actual} left it starts again after the storage; lithium packs stored full do after eight months",
                            Source.COMMON_PRACTICE)
                    .at("/storage/duration")
                    .actual(new Measure(after.stateOfCharge(), NONE))
                    .limit(new Measure(input.rechargeAt(), NONE)));
        }
    }

    private static void frost(Input input, Result result, Trace trace) {
        Double startC = result.freezingC();
        if (startC == null) {
            if (input.lowestC() < 0) {
                trace.find(Finding.of(
                                "no-charge-while-frozen",
                                Level.CAUTION,
                                "Standing at {actual} harms little; charging below {limit} does, and regeneration is charging",
                                Source.published("module maker's specification: no charge below 0 degC"))
                        .at("/storage/lowestTemperature")
                        .actual(new Measure(input.lowestC(), TEMPERATURE))
                        .limit(new Measure(0, TEMPERATURE))
                        .action("Warm the cells above 5 degC before charging"));
            }
            return;
        }
        Double laterC = result.after() == null ? null : result.after().freezingC();
        double freezesC = laterC == null ? startC : Math.max(startC, laterC);
        if (input.lowestC() <= freezesC) {
            trace.find(Finding.of(
                            "lead-acid-may-freeze",
                            Level.DANGER,
                            "At {actual} the acid freezes at what is left in the pack, from {limit} down: cases burst, and a frozen block must not be charged",
                            input.gravity() != null && (laterC == null || laterC <= startC)
                                    ? FreezingPoint.BY_GRAVITY_SOURCE
                                    : FreezingPoint.BY_CHARGE_SOURCE)
                    .at("/storage/lowestTemperature")
                    .actual(new Measure(input.lowestC(), TEMPERATURE))
                    .limit(new Measure(freezesC, TEMPERATURE))
                    .action("Keep it charged, or store it where it stays warmer"));
        }
    }

    private static void load(Result result, Trace trace) {
        if (result.loadShare() > result.selfDischargeShare()) {
            trace.find(Finding.of(
                            "quiescent-load-empties",
                            Level.CAUTION,
                            "What stays switched on takes a share of {actual} in a month, self-discharge {limit}",
                            Source.derived("charge balance"))
                    .at("/storage/quiescentCurrent")
                    .actual(new Measure(result.loadShare(), NONE))
                    .limit(new Measure(result.selfDischargeShare(), NONE))
                    .action("Open the main switch or take a terminal off; read the current with a clamp meter"));
        }
    }

    private static void habits(Input input, Trace trace) {
        boolean leadAcid = input.chemistry().isLeadAcid();
        boolean lasting = input.durationS() == null || input.durationS() > LONG_S;
        StorageHabit habit = StorageHabit.of(input.chemistry());
        if (!leadAcid && lasting && input.startOfCharge() > LITHIUM_HIGH) {
            trace.find(Finding.of(
                            "lithium-stored-full",
                            input.temperatureC() > WARM_C ? Level.WARNING : Level.CAUTION,
                            "A lithium pack stored at {actual} ages faster than at about {limit}",
                            AGEING)
                    .at("/pack/stateOfCharge")
                    .actual(new Measure(input.startOfCharge(), NONE))
                    .limit(new Measure(habit.storeAt().value(), NONE))
                    .action("Store it at 0.4 to 0.6, unless the maker says otherwise"));
        }
        if (leadAcid && lasting && input.startOfCharge() <= input.rechargeAt()) {
            trace.find(Finding.of(
                            "lead-acid-stored-low",
                            Level.WARNING,
                            "Stored at {actual}, at or below {limit}, lead-acid sulphates from the first day",
                            habit.rechargeAt().source())
                    .at("/pack/stateOfCharge")
                    .actual(new Measure(input.startOfCharge(), NONE))
                    .limit(new Measure(input.rechargeAt(), NONE))
                    .action("Charge it full first"));
        }
        if (input.temperatureC() > WARM_C && (leadAcid || input.startOfCharge() <= LITHIUM_HIGH)) {
            trace.find(Finding.of(
                            "stored-warm",
                            Level.CAUTION,
                            "{actual} is more than {limit}: self-discharge and ageing grow fast",
                            leadAcid ? LEAD_ACID_LIFE : AGEING)
                    .at("/storage/temperature")
                    .actual(new Measure(input.temperatureC(), TEMPERATURE))
                    .limit(new Measure(WARM_C, TEMPERATURE))
                    .action("Store it cooler"));
        }
    }

    private static void range(Input input, Trace trace) {
        if (input.temperatureC() < RULE_FROM_C || input.temperatureC() > RULE_TO_C) {
            trace.find(Finding.of(
                            "self-discharge-outside-rule",
                            Level.NOTICE,
                            "The rule of 10 K was met from 0 to 40 degC; at {actual} the rate is a guess",
                            Storage.RULE)
                    .at("/storage/temperature")
                    .actual(new Measure(input.temperatureC(), TEMPERATURE))
                    .limit(new Measure(input.temperatureC() < RULE_FROM_C ? RULE_FROM_C : RULE_TO_C, TEMPERATURE)));
        }
    }
}

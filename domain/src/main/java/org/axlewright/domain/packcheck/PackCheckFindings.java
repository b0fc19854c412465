package org.axlewright.domain.packcheck;

import static org.axlewright.domain.quantity.Dimension.CHARGE;
import static org.axlewright.domain.quantity.Dimension.RESISTANCE;
import static org.axlewright.domain.quantity.Dimension.TEMPERATURE;
import static org.axlewright.domain.quantity.Dimension.TIME;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import org.axlewright.domain.pack.CellData;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.pack.TemperatureFactor;
import org.axlewright.domain.packcheck.PackCheckResult.Capacity;
import org.axlewright.domain.packcheck.PackCheckResult.CheckedBlock;
import org.axlewright.domain.packcheck.PackCheckResult.Resistances;
import org.axlewright.domain.packcheck.PackCheckResult.Volts;
import org.axlewright.domain.packcheck.ReadingsInput.Block;
import org.axlewright.domain.packcheck.ReadingsInput.Discharge;
import org.axlewright.domain.quantity.TimeUnit;
import org.axlewright.domain.trace.Caution;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Trace;
import org.hipparchus.analysis.interpolation.LinearInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.jspecify.annotations.Nullable;

/** What stands out of the readings. */
final class PackCheckFindings {

    /** Before this a voltage at rest tells the last hour, not the charge. */
    static final double LEAST_REST_S = TimeUnit.HOUR.toSi(8);

    /** Share of the capacity at which a pack counts as worn out. */
    static final double END_OF_LIFE = 0.80;

    private static final double SURFACE_V = 0.05;
    private static final double SUM_SHARE = 0.01;
    private static final double LEAST_SUM_V = 0.3;
    private static final double GRAVITY_BAND_K = 5;
    private static final double CONNECTION_SHARE = 0.03;
    private static final double IMPLAUSIBLE_SHARE = 1.15;

    private static final PolynomialSplineFunction BREAK_IN =
            new LinearInterpolator().interpolate(new double[] {0, 15, 30, 45}, new double[] {0.80, 0.90, 0.95, 1});

    private static final Source REST = Source.weak("valid after 8 to 24 h off charge");
    private static final Source APART =
            Source.weak("technicians' rule: 12 V blocks within 0.10 V of each other, at rest and after a hot lap");
    private static final Source OUTLIER = Source.published(
            "Iglewicz and Hoaglin, How to Detect and Handle Outliers, ASQC 1993: 3.5 median deviations");
    private static final Source REVERSED =
            Source.weak("owners' case: one of six blocks connected backwards and charged that way");
    private static final Source RESERVE =
            Source.weak("owners' case: 1.61 V per cell under load is low, 1.56 V crawls, 1.50 V stalls");
    private static final Source LIFE =
            Source.published("cell makers' data sheets: cycle life is counted to 80 % of the capacity");
    private static final Source NEW_SET = Source.weak(
            "vehicle maker's service manual: 80 % when new, 90 % after 15 charges, 95 % after 30, all after 45");

    private static final Caution DC_ARC = new Caution(
            "dc-arc",
            "Measuring on a live pack: one hand, insulated probes and tools, no jewellery, one terminal covered. A slipped spanner does"
                    + " not let go, and a direct-current arc does not go out by itself.");
    private static final Caution LEAD_ACID = new Caution(
            "hydrogen",
            "Lead-acid cells give off hydrogen, which explodes from 4 % in air, and hold acid: ventilate, no sparks, wear eye protection"
                    + " and gloves with the hydrometer.");
    private static final Caution LITHIUM = new Caution(
            "lithium",
            "Cells inside a lithium pack are for its maker or someone trained: read them by its battery management, do not open the case.");
    private static final Caution LOAD = new Caution(
            "load-test",
            "A load test with the brake held heats motor and controller within seconds: wheels chocked, nobody before the vehicle, a few"
                    + " seconds at a time.");

    private PackCheckFindings() {}

    static void find(ReadingsInput input, BlockReadings readings, PackCheckResult result, Trace trace) {
        trace.caution(DC_ARC);
        trace.caution(input.chemistry().isLeadAcid() ? LEAD_ACID : LITHIUM);
        if (input.pack().loadA() != null) {
            trace.caution(LOAD);
        }
        for (CheckedBlock block : result.blocks()) {
            block(input, readings, block, trace);
        }
        apart(input, readings, trace);
        sum(input, readings, result.volts(), trace);
        rest(input, result, trace);
        load(input, result, trace);
        charger(input, readings, trace);
        connections(input, result.resistance(), trace);
        if (input.discharge() != null && result.capacity() != null) {
            capacity(input, input.discharge(), result.capacity(), trace);
        }
        if (input.clamp() != null) {
            trace.find(Finding.of(
                            "battery-cable-not-motor-cable",
                            Level.NOTICE,
                            "The clamp belongs on the battery cable: at part throttle a motor cable carries more",
                            Source.weak("controller maker's note: battery current differs from motor current"))
                    .at("/readings/clampCurrent"));
        }
    }

    private static String named(Block block) {
        return block.reference() == null ? "The block at " + block.pointer() : "Block " + block.reference();
    }

    private static void block(ReadingsInput input, BlockReadings readings, CheckedBlock checked, Trace trace) {
        Block block = checked.block();
        switch (checked.state()) {
            case REVERSED ->
                trace.find(
                        voltage(
                                        Finding.of(
                                                "block-reversed",
                                                Level.DANGER,
                                                named(block)
                                                        + " reads {actual}: it is connected the wrong way round, or was driven into reverse. Charging it like that destroys it and can burst it",
                                                REVERSED),
                                        block.restV() == null ? block.loadV() : block.restV())
                                .at(block.pointer())
                                .action(
                                        "Do not charge. Check the polarity of leads and posts; a block that was reversed is spoilt."));
            case DEAD_CELL ->
                trace.find(voltage(
                                Finding.of(
                                        "dead-cell",
                                        Level.WARNING,
                                        named(block)
                                                + " reads {actual} where the others read {limit}: about one cell less, shorted or dead",
                                        Source.derived("a lead-acid cell has about 2 V")),
                                block.restV())
                        .limit(new Measure(
                                readings.restV() == null ? 0 : readings.restV().median(), VOLTAGE))
                        .at(block.pointer())
                        .action("Measure the gravity of its cells; replace the set, not the block, when it is old."));
            case ODD -> odd(input, readings, checked, trace);
            case ALIKE -> {
                // nothing to tell
            }
        }
    }

    private static void odd(ReadingsInput input, BlockReadings readings, CheckedBlock checked, Trace trace) {
        Block block = checked.block();
        double floorV = BlockReadings.floorV(input.cellsOfBlock());
        Finding finding;
        if (readings.loadV() != null
                && block.loadV() != null
                && readings.loadV().standsOut(block.loadV(), floorV)) {
            finding = voltage(odd(block, " reads {actual} under load, the middle one {limit}"), block.loadV())
                    .limit(new Measure(readings.loadV().median(), VOLTAGE));
        } else if (readings.restV() != null
                && block.restV() != null
                && readings.restV().standsOut(block.restV(), floorV)) {
            finding = voltage(odd(block, " reads {actual} at rest, the middle one {limit}"), block.restV())
                    .limit(new Measure(readings.restV().median(), VOLTAGE));
        } else if (checked.resistanceOhm() != null
                && readings.ohm() != null
                && readings.ohm().standsOut(checked.resistanceOhm(), 0)) {
            finding = odd(block, " has {actual}, the middle one {limit}")
                    .actual(new Measure(checked.resistanceOhm(), RESISTANCE))
                    .limit(new Measure(readings.ohm().median(), RESISTANCE));
        } else {
            finding = odd(block, " has acid of {actual}, the middle one {limit}");
            if (block.gravity() != null && readings.gravity() != null) {
                finding = finding.actual(Measure.number(block.gravity()))
                        .limit(Measure.number(readings.gravity().median()));
            }
        }
        trace.find(
                finding.at(block.pointer())
                        .action(
                                "Clean and tighten its terminals and read again; charge it by itself; if it still stands out it is the weak one."));
    }

    private static Finding odd(Block block, String what) {
        return Finding.of("odd-block", Level.WARNING, named(block) + what + ": it stands out from the others", OUTLIER);
    }

    private static Finding voltage(Finding finding, @Nullable Double volts) {
        return volts == null ? finding : finding.actual(new Measure(volts, VOLTAGE));
    }

    private static void apart(ReadingsInput input, BlockReadings readings, Trace trace) {
        if (readings.spread() == null || readings.worst() != BlockState.ALIKE) {
            return;
        }
        double floorV = BlockReadings.floorV(input.cellsOfBlock());
        Double restV = readings.spread().restV();
        Double loadV = readings.spread().loadV();
        boolean underLoad = loadV != null && loadV > floorV && (restV == null || loadV > restV);
        Double widest = underLoad ? loadV : restV;
        if (widest != null && widest > floorV) {
            trace.find(
                    Finding.of(
                                    "blocks-apart",
                                    Level.CAUTION,
                                    "The blocks read {actual} apart" + (underLoad ? " under load" : " at rest")
                                            + ", more than {limit}, and none stands out alone: the set is uneven",
                                    APART)
                            .at("/readings/blocks")
                            .actual(new Measure(widest, VOLTAGE))
                            .limit(new Measure(floorV, VOLTAGE))
                            .action(
                                    "Charge the set fully, equalise flooded cells by the maker's instruction, and read again."));
        }
    }

    private static void sum(ReadingsInput input, BlockReadings readings, Volts volts, Trace trace) {
        Double packV = input.pack().restV();
        if (packV == null) {
            return;
        }
        Double sumV = volts.sumV();
        if (sumV != null) {
            double allowedV = Math.max(SUM_SHARE * Math.abs(packV), LEAST_SUM_V);
            if (Math.abs(sumV - packV) > allowedV) {
                trace.find(
                        Finding.of(
                                        "sum-of-blocks-differs",
                                        Level.WARNING,
                                        "The blocks add up to {actual}, the pack reads {limit}: a sign is wrong, a block was read twice, or a connection between them is open",
                                        Source.derived("voltages in series add; 1 % for the meter"))
                                .at("/readings/packRestVoltage")
                                .actual(new Measure(sumV, VOLTAGE))
                                .limit(new Measure(packV, VOLTAGE))
                                .action(
                                        "Read every block again with the red lead on its positive post and write the sign down."));
            }
            return;
        }
        suspected(input, readings, packV, trace);
    }

    /** One reversed of six takes two block voltages from the sum. */
    private static void suspected(ReadingsInput input, BlockReadings readings, double packV, Trace trace) {
        Integer cells = input.cells();
        Integer blocks = input.blocksInSeries();
        if (!readings.checked().isEmpty()
                || cells == null
                || blocks == null
                || blocks < 3
                || !input.chemistry().isLeadAcid()) {
            return;
        }
        double blockV = RestVoltage.fullV(input.chemistry()) * cells / blocks;
        double withOneReversed = (blocks - 2) * blockV;
        if (Math.abs(packV - withOneReversed) < 0.5 * blockV / 2) {
            trace.find(Finding.of(
                            "reversed-block-suspected",
                            Level.WARNING,
                            "The pack reads {actual}; with one of " + blocks
                                    + " full blocks the wrong way round it would read {limit}",
                            REVERSED)
                    .at("/readings/packRestVoltage")
                    .actual(new Measure(packV, VOLTAGE))
                    .limit(new Measure(withOneReversed, VOLTAGE))
                    .action("Measure every single block, with its sign, before any charge."));
        }
    }

    private static void rest(ReadingsInput input, PackCheckResult result, Trace trace) {
        Double cellV = result.volts().restCellV();
        if (cellV == null) {
            return;
        }
        Double restS = input.pack().restTimeS();
        if (restS == null) {
            trace.find(Finding.of(
                            "rest-time-unknown",
                            Level.CAUTION,
                            "How long the pack rested is not known: the voltage tells its charge only after {limit}",
                            REST)
                    .at("/readings/restTime")
                    .limit(new Measure(LEAST_REST_S, TIME))
                    .action("Send the time since the last charge or drive."));
        } else if (restS < LEAST_REST_S) {
            trace.find(Finding.of(
                            "not-at-rest",
                            Level.CAUTION,
                            "After {actual} the voltage still moves: too high after a charge, too low after a drive; it tells the charge only after {limit}",
                            REST)
                    .at("/readings/restTime")
                    .actual(new Measure(restS, TIME))
                    .limit(new Measure(LEAST_REST_S, TIME))
                    .action("Read again after a night off the charger."));
        }
        if (input.chemistry() == Chemistry.LFP
                && result.stateOfCharge() != null
                && result.stateOfCharge().least() > 0
                && result.stateOfCharge().most() < 1) {
            trace.find(Finding.of(
                            "no-gauge-at-rest",
                            Level.NOTICE,
                            "{actual} for each cell lies on the flat part of the curve: between 20 and 90 % lithium iron phosphate shows no charge by its voltage",
                            Source.memory("flat curve of lithium iron phosphate between 20 and 90 %"))
                    .at("/readings")
                    .actual(new Measure(cellV, VOLTAGE))
                    .action("Charge it full and count amp-hours from there."));
        }
        double fullV = input.chemistry().isLeadAcid()
                ? RestVoltage.fullV(input.chemistry()) + SURFACE_V
                : CellData.of(input.chemistry()).fullV().value();
        if (cellV > fullV) {
            trace.find(Finding.of(
                            "above-rest",
                            Level.CAUTION,
                            "{actual} for each cell is more than a rested cell has, {limit}: it was on the charger a moment ago, or the cells are fewer than sent",
                            REST)
                    .at("/readings")
                    .actual(new Measure(cellV, VOLTAGE))
                    .limit(new Measure(fullV, VOLTAGE))
                    .action("Count the cells, and read again after a night off the charger."));
        }
        Double celsius = input.temperatureC();
        if (readingsOfGravity(result) && Math.abs(celsius - TemperatureFactor.RATED_C) > GRAVITY_BAND_K) {
            trace.find(Finding.of(
                            "gravity-not-corrected",
                            Level.NOTICE,
                            "The acid was read at {actual}; gravities hold at {limit} and read lower when warm",
                            Source.memory("hydrometer readings: 0.004 for each 5.6 K"))
                    .at("/readings/temperature")
                    .actual(new Measure(celsius, TEMPERATURE))
                    .limit(new Measure(TemperatureFactor.RATED_C, TEMPERATURE))
                    .action("Correct the readings, or compare the cells with each other only."));
        }
    }

    private static boolean readingsOfGravity(PackCheckResult result) {
        return result.blocks().stream().anyMatch(block -> block.block().gravity() != null);
    }

    private static void load(ReadingsInput input, PackCheckResult result, Trace trace) {
        Double cellV = result.volts().loadCellV();
        double cutOffV = CellData.of(input.chemistry()).cutOffV().value();
        if (cellV == null || cellV >= cutOffV) {
            return;
        }
        RestVoltage.Told told = result.stateOfCharge();
        boolean looksCharged = told != null && (told.value() == null ? told.least() >= 0.2 : told.value() >= 0.3);
        trace.find(Finding.of(
                        looksCharged ? "looks-charged-but-empty" : "below-cut-off-under-load",
                        Level.WARNING,
                        looksCharged
                                ? "At rest it looks charged, under load a cell has {actual}, below the reserve of {limit}: it is empty, worn, or a joint is bad"
                                : "Under load a cell has {actual}, below the reserve of {limit}: stop and charge"
                                        + (input.chemistry().isLeadAcid()
                                                ? "; at 1.56 V it crawls, at 1.50 V it stalls"
                                                : ""),
                        input.chemistry().isLeadAcid()
                                ? RESERVE
                                : CellData.of(input.chemistry()).cutOffV().source())
                .at("/readings")
                .actual(new Measure(cellV, VOLTAGE))
                .limit(new Measure(cutOffV, VOLTAGE))
                .action("Charge at once; if it does the same when full, read every block under load."));
    }

    private static void charger(ReadingsInput input, BlockReadings readings, Trace trace) {
        Double startV = input.chargerStartV();
        Double packV =
                input.pack().restV() == null ? readings.sumV() : input.pack().restV();
        if (startV == null || packV == null || packV >= startV) {
            return;
        }
        trace.find(
                Finding.of(
                                "below-charger-start",
                                Level.WARNING,
                                "The pack reads {actual}, the charger starts from {limit}: it will do nothing",
                                Source.weak(
                                        "owner's manual: charge each block until the string passes the start voltage"))
                        .at("/charger/startVoltage")
                        .actual(new Measure(packV, VOLTAGE))
                        .limit(new Measure(startV, VOLTAGE))
                        .action(
                                "Check polarity first. Then a small charger of its own voltage on each block for 10 to 20 minutes, until the string passes this; then the main charger."));
    }

    private static void connections(ReadingsInput input, @Nullable Resistances resistance, Trace trace) {
        if (resistance == null
                || resistance.connectionsOhm() == null
                || input.pack().loadA() == null
                || input.cells() == null) {
            return;
        }
        double lostV = resistance.connectionsOhm() * input.pack().loadA();
        double limitV = CONNECTION_SHARE
                * input.cells()
                * CellData.of(input.chemistry()).nominalV().value();
        if (lostV > limitV) {
            trace.find(Finding.of(
                            "connections-take-voltage",
                            Level.WARNING,
                            "Cables and joints take {actual} at this current, more than {limit}: a joint is loose, corroded or too thin, and gets hot",
                            Source.memory("traction leads lose 1 to 3 % of the nominal voltage"))
                    .at("/readings/packLoadVoltage")
                    .actual(new Measure(lostV, VOLTAGE))
                    .limit(new Measure(limitV, VOLTAGE))
                    .action("Read millivolts across each joint under the same current; clean and tighten the worst."));
        }
    }

    private static void capacity(ReadingsInput input, Discharge discharge, Capacity capacity, Trace trace) {
        ended(input, discharge, capacity, trace);
        Double share = capacity.share();
        if (share == null) {
            return;
        }
        if (share > IMPLAUSIBLE_SHARE) {
            trace.find(Finding.of(
                            "more-than-new",
                            Level.CAUTION,
                            "The discharge gave {actual} times what a new pack gives: is the capacity that of one string, the hour rate right, the current that of the pack?",
                            Source.derived("delivered over expected"))
                    .at("/readings/timeToCutOff")
                    .actual(Measure.number(share))
                    .limit(Measure.number(IMPLAUSIBLE_SHARE))
                    .action("Check capacity, hour rate, strings and the current."));
        }
        Integer cycles = input.cycles();
        if (input.chemistry().isLeadAcid() && cycles != null && cycles < 45 && share < 1) {
            double usual = BREAK_IN.value(cycles);
            trace.find(Finding.of(
                            "not-broken-in",
                            Level.NOTICE,
                            "{actual} of the capacity after " + cycles
                                    + " charges; a new set gives {limit} at that age and rises",
                            NEW_SET)
                    .at("/readings/cycles")
                    .actual(Measure.number(share))
                    .limit(Measure.number(usual))
                    .action("Use no more than 80 % of it for now, and test again after 45 charges."));
            if (share >= usual - 0.05) {
                return;
            }
        }
        boolean tested = discharge.endV() == null
                || input.cells() == null
                || discharge.endV()
                        <= input.cells()
                                * CellData.of(input.chemistry()).cutOffV().value()
                                * 1.01;
        if (share < END_OF_LIFE && tested) {
            trace.find(Finding.of(
                            "end-of-life",
                            Level.WARNING,
                            "{actual} of the capacity of a new pack is left, less than {limit}: it counts as worn out, and what is left goes faster",
                            LIFE)
                    .at("/pack")
                    .actual(Measure.number(share))
                    .limit(Measure.number(END_OF_LIFE))
                    .action("Look for one weak block first; if all are alike, replace the set."));
        }
    }

    private static void ended(ReadingsInput input, Discharge discharge, Capacity capacity, Trace trace) {
        if (discharge.endV() == null || input.cells() == null) {
            return;
        }
        double cutOffV =
                input.cells() * CellData.of(input.chemistry()).cutOffV().value();
        if (discharge.endV() > cutOffV * 1.01) {
            trace.find(Finding.of(
                            "stopped-early",
                            Level.NOTICE,
                            "The discharge was ended above the cut-off: {actual} is the least the pack holds",
                            Source.derived("there was charge left"))
                    .at("/readings/cutOffVoltage")
                    .actual(new Measure(capacity.deliveredC(), CHARGE))
                    .action("Go on to the cut-off next time."));
        } else if (discharge.endV() < cutOffV * 0.95) {
            trace.find(Finding.of(
                            "discharged-too-deep",
                            Level.CAUTION,
                            "The discharge went to {actual}, below the cut-off of {limit}: more charge than counts, and it harms the cells",
                            CellData.of(input.chemistry()).cutOffV().source())
                    .at("/readings/cutOffVoltage")
                    .actual(new Measure(discharge.endV(), VOLTAGE))
                    .limit(new Measure(cutOffV, VOLTAGE))
                    .action("Recharge at once; stop at the cut-off next time."));
        }
    }
}

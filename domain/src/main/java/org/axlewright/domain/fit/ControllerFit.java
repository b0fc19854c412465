package org.axlewright.domain.fit;

import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.ROTATION;
import static org.axlewright.domain.quantity.Dimension.TEMPERATURE;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import org.axlewright.domain.fit.FitInput.Controller;
import org.axlewright.domain.fit.FitInput.Limits;
import org.axlewright.domain.fit.FitInput.Motor;
import org.axlewright.domain.fit.FitInput.Pack;
import org.axlewright.domain.fit.FitResult.Voltages;
import org.axlewright.domain.trace.Datum;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** The drive against the pack: window, sag, current, regeneration; and the motor against both. */
final class ControllerFit {

    /** Rating of capacitors and power parts over the full-charge voltage. */
    static final double SPIKE_FACTOR = 1.2;

    /** Of a motor's plate voltage: within it the plate holds. */
    static final double PLATE_TOLERANCE = 0.10;

    /** Below this share of the plate voltage the pack belongs to another system. */
    static final double OTHER_SYSTEM = 0.7;

    private static final Source MAKER = Source.derived("comparison with the limit sent");
    private static final Source SPIKE = Source.weak(
            "owners' case: 63 V capacitors lived on 12 cells (50.4 V) and died on 13 (54.6 V) by regeneration spikes");
    private static final Source TRIP =
            Source.memory("battery management opens on over-voltage: sudden loss of the electric brake");
    private static final Source PLATE =
            Source.memory("IEC 60034-1: motors bear 10 % off their rated voltage for a limited time");
    private static final Source TWO_SIDES = Source.weak(
            "controller maker's note: battery current is motor current times duty; at full duty the two are equal");

    private static final Step SPIKE_VOLTAGE = Step.of(
            "Vspike",
            "voltage the capacitors must be rated for",
            "Vspike = 1.2·V",
            VOLTAGE,
            SPIKE,
            new Symbol("V", VOLTAGE));
    private static final Step SPEED = Step.of(
            "ω",
            "speed of the motor at the nominal voltage of the pack",
            "ω = ω0·V/V0",
            ROTATION,
            Source.published("direct-current motor: speed without load is proportional to voltage"),
            new Symbol("ω0", ROTATION),
            new Symbol("V", VOLTAGE),
            new Symbol("V0", VOLTAGE));

    private ControllerFit() {}

    static PairSheet withPack(FitSituation situation) {
        PairSheet sheet = situation.between(Part.PACK, Part.CONTROLLER);
        Controller controller = situation.input().controller();
        if (controller != null) {
            window(situation, controller, sheet);
            batteryCurrent(situation, controller, sheet);
            if (controller.regenerates()) {
                regeneration(situation, controller, sheet);
            }
        }
        return sheet;
    }

    private static void window(FitSituation situation, Controller controller, PairSheet sheet) {
        Voltages voltages = situation.voltages();
        Double mostV = controller.mostV();
        if (mostV == null) {
            sheet.undecided(
                    "full-voltage", new Measure(voltages.highestV(), VOLTAGE), "/drive/controller/maximumVoltage");
        } else {
            sheet.most(
                    "full-voltage",
                    VOLTAGE,
                    voltages.highestV(),
                    mostV,
                    Verdict.DOES_NOT_FIT,
                    Finding.of(
                                    "controller-voltage-too-low",
                                    Level.DANGER,
                                    "Fully charged the pack has {actual}, the controller bears {limit}: it fails, and can fail with the motor on",
                                    MAKER)
                            .at("/drive/controller/maximumVoltage")
                            .action(
                                    "Fewer cells in series, or a controller for the full-charge voltage; the nominal voltage does not count."));
        }
        if (controller.capacitorV() != null) {
            sheet.most(
                    "capacitor-voltage",
                    VOLTAGE,
                    situation.trace().note(SPIKE_VOLTAGE, SPIKE_FACTOR * voltages.highestV(), voltages.highestV()),
                    controller.capacitorV(),
                    Verdict.DOES_NOT_FIT,
                    Finding.of(
                                    "capacitor-margin-too-small",
                                    Level.WARNING,
                                    "The capacitors are rated {limit}; with spikes from braking they need {actual}, 1.2 times the full charge. One cell more can destroy the controller",
                                    SPIKE)
                            .at("/drive/controller/capacitorVoltage")
                            .action("Fewer cells in series, or a controller whose parts are rated for it."));
        }
        Double leastV = controller.leastV();
        if (leastV == null) {
            sheet.undecided(
                    "lowest-voltage", new Measure(voltages.cutOffV(), VOLTAGE), "/drive/controller/minimumVoltage");
        } else {
            lowest(voltages, leastV, Part.CONTROLLER, "/drive/controller/minimumVoltage", sheet);
        }
        loaded(situation, controller, sheet);
    }

    /** The pack's lowest voltages against what a part needs. */
    static void lowest(Voltages voltages, double leastV, Part part, String pointer, PairSheet sheet) {
        boolean never = voltages.nominalV() < leastV;
        sheet.least(
                "lowest-voltage",
                VOLTAGE,
                never ? voltages.nominalV() : voltages.cutOffV(),
                leastV,
                never ? Verdict.DOES_NOT_FIT : Verdict.FITS_WITH_LIMITS,
                never
                        ? Finding.of(
                                        part + "-needs-more-voltage",
                                        Level.WARNING,
                                        "Half full the pack has {actual}, the " + part
                                                + " works from {limit} up: it stops with charge left",
                                        MAKER)
                                .at(pointer)
                                .action("More cells in series, or a " + part + " for this voltage.")
                        : Finding.of(
                                        part + "-stops-before-empty",
                                        Level.NOTICE,
                                        "Empty the pack has {actual}, the " + part
                                                + " works from {limit} up: it stops before the pack is empty",
                                        MAKER)
                                .at(pointer)
                                .action("Count on less than the whole capacity."));
    }

    private static void loaded(FitSituation situation, Controller controller, PairSheet sheet) {
        Voltages voltages = situation.voltages();
        Pack pack = situation.pack();
        Double ohm = pack.resistanceOhm();
        Double batteryA = controller.batteryA();
        if (ohm == null || batteryA == null) {
            return;
        }
        Limits limits = pack.limits();
        double tripV = limits.underV() == null ? voltages.cutOffV() : pack.cells() * limits.underV();
        double limitV = controller.leastV() == null ? tripV : Math.max(tripV, controller.leastV());
        double sagV = batteryA * ohm;
        if (!(sagV < voltages.nominalV())) {
            sheet.most(
                    "loaded-voltage",
                    CURRENT,
                    batteryA,
                    voltages.nominalV() / ohm,
                    Verdict.DOES_NOT_FIT,
                    Finding.of(
                                    "current-beyond-pack",
                                    Level.WARNING,
                                    "The controller may draw {actual}; with this internal resistance a short circuit would draw {limit}",
                                    Source.derived("direct-current circuit: short-circuit current E/r"))
                            .at("/pack/resistance")
                            .action("Check the unit of the resistance and what it belongs to."));
            return;
        }
        boolean never = voltages.fullV() - sagV < limitV;
        sheet.least(
                "loaded-voltage",
                VOLTAGE,
                voltages.nominalV() - sagV,
                limitV,
                never ? Verdict.DOES_NOT_FIT : Verdict.FITS_WITH_LIMITS,
                Finding.of(
                                "cuts-out-under-load",
                                Level.WARNING,
                                never
                                        ? "Even fully charged the pack falls below {limit} at the controller's limit; half full to {actual}: it cuts out on every hill"
                                        : "Half full the pack falls to {actual} at the controller's limit, below the {limit} at which controller, battery management or the cells end it: it cuts out with charge left",
                                Source.derived("V = E - I·r with the nominal voltage"))
                        .at("/pack/resistance")
                        .action(
                                "Less resistance (more strings, larger cells, clean joints), or a lower battery-side limit."));
    }

    private static void batteryCurrent(FitSituation situation, Controller controller, PairSheet sheet) {
        String name = "battery-current";
        String pointer = "/drive/controller/batteryCurrent";
        Limits limits = situation.pack().limits();
        Double continuousA = situation.allowed().continuousA();
        Double currentA = controller.batteryA();
        if (currentA == null) {
            Double motorA = controller.motorA();
            if (motorA != null && continuousA != null && motorA <= continuousA) {
                sheet.judged(name, Verdict.FITS, new Measure(motorA, CURRENT), new Measure(continuousA, CURRENT), null);
                return;
            }
            sheet.undecided(name, null, pointer);
            if (motorA != null) {
                situation
                        .trace()
                        .find(
                                Finding.of(
                                                "which-side-of-the-controller",
                                                Level.CAUTION,
                                                "{actual} is the motor side; what the pack gives is the battery side, and is less at part throttle",
                                                TWO_SIDES)
                                        .at("/drive/controller/motorCurrent")
                                        .actual(new Measure(motorA, CURRENT))
                                        .action(
                                                "Read the battery-side limit on the controller's sheet and send it as batteryCurrent."));
            }
            return;
        }
        Measure actual = new Measure(currentA, CURRENT);
        if (continuousA != null && currentA <= continuousA) {
            sheet.most(name, CURRENT, currentA, continuousA, Verdict.FITS, over(pointer));
        } else if (limits.peakA() != null && currentA > limits.peakA()) {
            sheet.most(name, CURRENT, currentA, limits.peakA(), Verdict.DOES_NOT_FIT, over(pointer));
        } else if (continuousA != null && limits.peakA() != null) {
            String seconds = limits.peakS() == null ? "" : " for longer than " + seconds(limits.peakS());
            sheet.most(
                    name,
                    CURRENT,
                    currentA,
                    continuousA,
                    Verdict.FITS_WITH_LIMITS,
                    Finding.of(
                                    "only-for-the-peak",
                                    Level.CAUTION,
                                    "The controller may draw {actual}; the pack gives {limit} for long: a hill"
                                            + seconds + " above that and battery management opens, with charge left",
                                    MAKER)
                            .at(pointer)
                            .action(
                                    "Set the battery-side limit down to the continuous rating, or its time to that of the peak."));
        } else if (situation.pack().chemistry().isLeadAcid() && continuousA == null && limits.peakA() == null) {
            // nothing opens a lead-acid string but a fuse: how far it sags decides, and that is checked by itself
            sheet.judged(name, Verdict.FITS, actual, null, null);
        } else if (continuousA == null) {
            sheet.undecided(name, actual, situation.allowed().missingDischarge());
        } else {
            sheet.undecided(name, actual, "/pack/limits/peakDischarge");
        }
    }

    private static String seconds(double seconds) {
        return Math.rint(seconds) == seconds ? (long) seconds + " s" : seconds + " s";
    }

    private static Finding over(String pointer) {
        return Finding.of(
                        "battery-current-over-limit",
                        Level.WARNING,
                        "The controller may draw {actual}, the pack gives {limit} at the most: battery management opens and the vehicle stops with charge left",
                        MAKER)
                .at(pointer)
                .action("Size the pack for current, not only for capacity, or set the battery-side limit down.");
    }

    private static void regeneration(FitSituation situation, Controller controller, PairSheet sheet) {
        Voltages voltages = situation.voltages();
        Pack pack = situation.pack();
        Double mostV = controller.mostV();
        if (mostV != null && controller.capacitorV() == null && voltages.highestV() <= mostV) {
            sheet.most(
                    "regeneration-headroom",
                    VOLTAGE,
                    situation.trace().note(SPIKE_VOLTAGE, SPIKE_FACTOR * voltages.highestV(), voltages.highestV()),
                    mostV,
                    Verdict.FITS_WITH_LIMITS,
                    Finding.of(
                                    "little-room-for-spikes",
                                    Level.CAUTION,
                                    "The controller bears {limit}; room for spikes from braking asks {actual}, 1.2 times the full charge",
                                    SPIKE)
                            .at("/drive/controller/maximumVoltage")
                            .action(
                                    "Fade regeneration out before the pack is full, or take fewer cells; ask the maker for the rating of the capacitors."));
        }
        Double regeneratingV = voltages.regeneratingV();
        Double openV = pack.limits().overV() == null
                ? null
                : (Double) (pack.cells() * pack.limits().overV());
        Double limitV = mostV == null ? openV : openV == null ? mostV : (Double) Math.min(mostV, openV);
        if (regeneratingV != null && limitV != null) {
            sheet.most(
                    "regeneration-voltage",
                    VOLTAGE,
                    regeneratingV,
                    limitV,
                    Verdict.FITS_WITH_LIMITS,
                    Finding.of(
                                    "regeneration-over-voltage",
                                    Level.WARNING,
                                    "Braking with a full pack lifts it to {actual}, above {limit}: battery management or controller opens and the electric brake is gone",
                                    TRIP)
                            .at("/drive/controller/regenerationCurrent")
                            .action(
                                    "Fade regeneration out before the pack is full; the mechanical brake must hold alone."));
        }
        regenerationCurrent(situation, controller, sheet);
        charging(situation, "regeneration-temperature", true, sheet);
        situation
                .trace()
                .find(
                        Finding.of(
                                        "regeneration-into-full-pack",
                                        Level.CAUTION,
                                        "A full pack must get no regeneration at all"
                                                + (CellLimits.of(pack.chemistry())
                                                                        .fadeFromV()
                                                                == null
                                                        ? ""
                                                        : ": fade it out between the two voltages given as regenerationFade"),
                                        TRIP)
                                .at("/drive/controller/regenerationCurrent")
                                .action(
                                        "Set the fade by the cells of this pack, not by a default for fewer; the brakes must hold alone."));
    }

    private static void regenerationCurrent(FitSituation situation, Controller controller, PairSheet sheet) {
        Double currentA = controller.regenerationA();
        Double chargeA = situation.allowed().chargeA();
        if (currentA == null) {
            sheet.undecided("regeneration-current", null, "/drive/controller/regenerationCurrent");
        } else if (chargeA != null) {
            sheet.most(
                    "regeneration-current",
                    CURRENT,
                    currentA,
                    chargeA,
                    Verdict.DOES_NOT_FIT,
                    Finding.of(
                                    "regeneration-over-charge-limit",
                                    Level.WARNING,
                                    "Braking sends back up to {actual}, the pack may be charged with {limit}: battery management opens and with it the electric brake is gone",
                                    MAKER)
                            .at("/drive/controller/regenerationCurrent")
                            .action(
                                    "Set the regeneration current down to the charge limit; the mechanical brake must hold alone."));
        } else if (!situation.pack().chemistry().isLeadAcid()) {
            sheet.undecided(
                    "regeneration-current",
                    new Measure(currentA, CURRENT),
                    situation.allowed().missingCharge());
        }
    }

    /** The cells' temperature against the range in which they take a charge; regeneration is charging too. */
    static void charging(FitSituation situation, String name, boolean regeneration, PairSheet sheet) {
        Pack pack = situation.pack();
        Double celsius = pack.temperatureC();
        if (celsius == null) {
            return;
        }
        // a lower limit that was sent does not lift the chemistry's own: charge-time and descent hold it too
        Datum usual = CellLimits.of(pack.chemistry()).leastChargeC();
        Double sentC = pack.limits().leastChargeC();
        boolean bySent = sentC != null && (usual == null || sentC > usual.value());
        Double leastC = bySent || usual == null ? sentC : (Double) usual.value();
        Double mostC = pack.limits().mostChargeC();
        Verdict outside = regeneration ? Verdict.FITS_WITH_LIMITS : Verdict.DOES_NOT_FIT;
        String what = regeneration ? "Braking charges the pack, and" : "Do not charge:";
        String where = regeneration ? "/drive/controller/regenerationCurrent" : "/pack/temperature";
        if (mostC != null && celsius > mostC) {
            sheet.most(
                    name,
                    TEMPERATURE,
                    celsius,
                    mostC,
                    outside,
                    Finding.of(
                                    regeneration ? "regeneration-too-hot" : "charge-too-hot",
                                    Level.WARNING,
                                    what + " cells at {actual} take no charge above {limit}",
                                    MAKER)
                            .at(where)
                            .action("Let the cells cool first."));
        } else if (leastC != null) {
            sheet.least(
                    name,
                    TEMPERATURE,
                    celsius,
                    leastC,
                    outside,
                    Finding.of(
                                    regeneration ? "regeneration-too-cold" : "charge-too-cold",
                                    Level.DANGER,
                                    what
                                            + " cells at {actual} take no charge below {limit}: metal plates out inside them, the loss stays and the cell can short",
                                    bySent || usual == null ? MAKER : usual.source())
                            .at(where)
                            .action(
                                    regeneration
                                            ? "No regeneration until the cells are warm; the brakes must hold alone."
                                            : "Warm the cells to 5 degC (41 degF) or more, then charge."));
        }
    }

    static PairSheet withMotor(FitSituation situation) {
        PairSheet sheet = situation.between(Part.CONTROLLER, Part.MOTOR);
        Controller controller = situation.input().controller();
        Motor motor = situation.input().motor();
        if (controller == null || motor == null || controller.motorA() == null) {
            return sheet;
        }
        Double ratedA = motor.ratedA();
        if (ratedA == null) {
            sheet.undecided("motor-current", new Measure(controller.motorA(), CURRENT), "/drive/motor/ratedCurrent");
        } else {
            sheet.most(
                    "motor-current",
                    CURRENT,
                    controller.motorA(),
                    ratedA,
                    Verdict.FITS_WITH_LIMITS,
                    Finding.of(
                                    "motor-current-above-rating",
                                    Level.CAUTION,
                                    "The controller lets {actual} into a motor rated {limit}: fine for a start, not for a long hill",
                                    MAKER)
                            .at("/drive/controller/motorCurrent")
                            .action("Watch the motor's temperature on long grades, or set the motor-side limit down."));
        }
        return sheet;
    }

    static PairSheet motorWithPack(FitSituation situation) {
        PairSheet sheet = situation.between(Part.PACK, Part.MOTOR);
        Motor motor = situation.input().motor();
        if (motor == null) {
            return sheet;
        }
        Double plateV = motor.voltageV();
        double nominalV = situation.voltages().nominalV();
        if (plateV == null) {
            sheet.undecided("plate-voltage", new Measure(nominalV, VOLTAGE), "/drive/motor/voltage");
        } else {
            plate(situation, nominalV, plateV, sheet);
            if (motor.speed() != null && motor.mostSpeed() != null) {
                speed(situation.trace(), motor, motor.speed(), motor.mostSpeed(), nominalV, plateV, sheet);
            }
        }
        Double ratedA = situation.currents().ratedPowerA();
        Double continuousA = situation.allowed().continuousA();
        if (ratedA != null && continuousA != null) {
            sheet.most(
                    "rated-power",
                    CURRENT,
                    ratedA,
                    continuousA,
                    Verdict.FITS_WITH_LIMITS,
                    Finding.of(
                                    "rated-power-over-continuous",
                                    Level.CAUTION,
                                    "At its rated power the motor takes {actual} from the pack, which gives {limit} for long",
                                    Source.derived("power balance with drive efficiency and voltage under load"))
                            .at("/pack/limits/continuousDischarge")
                            .action("Count on less than the rated power for long."));
        }
        return sheet;
    }

    private static void plate(FitSituation situation, double nominalV, double plateV, PairSheet sheet) {
        Measure actual = new Measure(nominalV, VOLTAGE);
        if (nominalV < OTHER_SYSTEM * plateV) {
            sheet.least(
                    "plate-voltage",
                    VOLTAGE,
                    nominalV,
                    OTHER_SYSTEM * plateV,
                    Verdict.DOES_NOT_FIT,
                    otherSystem(situation.pack(), plateV));
        } else if (nominalV > (1 + PLATE_TOLERANCE) * plateV) {
            sheet.most(
                    "plate-voltage",
                    VOLTAGE,
                    nominalV,
                    (1 + PLATE_TOLERANCE) * plateV,
                    Verdict.FITS_WITH_LIMITS,
                    Finding.of(
                                    "motor-above-plate-voltage",
                                    Level.CAUTION,
                                    "The pack has {actual} at its nominal voltage, the motor's plate allows {limit}: speed, heat and wear of brushes and bearings rise with it",
                                    PLATE)
                            .at("/drive/motor/voltage")
                            .action(
                                    "Send the speed the rotor bears, cap the speed, and watch the temperature; brakes, tyres and stability must go with it."));
        } else if (nominalV < (1 - PLATE_TOLERANCE) * plateV) {
            sheet.least(
                    "plate-voltage",
                    VOLTAGE,
                    nominalV,
                    (1 - PLATE_TOLERANCE) * plateV,
                    Verdict.FITS_WITH_LIMITS,
                    Finding.of(
                                    "motor-below-plate-voltage",
                                    Level.NOTICE,
                                    "The pack has {actual} at its nominal voltage, less than {limit}: top speed falls in proportion",
                                    PLATE)
                            .at("/drive/motor/voltage"));
        } else {
            sheet.judged("plate-voltage", Verdict.FITS, actual, new Measure(plateV, VOLTAGE), null);
        }
    }

    /** Count times block voltage is the system voltage: six 8 V blocks are no 72 V pack. */
    private static Finding otherSystem(Pack pack, double plateV) {
        String wanted = wanted(pack, plateV);
        return Finding.of(
                        "pack-of-another-system",
                        Level.WARNING,
                        "The pack has {actual}, less than {limit}: it belongs to a lower system voltage than the motor's "
                                + plain(plateV) + " V" + wanted,
                        Source.COMMON_PRACTICE)
                .at(pack.blocks() == null ? "/pack/cellsInSeries" : "/pack/blocks")
                .action("Count the blocks times their voltage before anything else.");
    }

    private static String wanted(Pack pack, double plateV) {
        FitInput.Blocks blocks = pack.blocks();
        if (blocks == null || blocks.voltageV() == null) {
            return "";
        }
        double count = plateV / blocks.voltageV();
        return Math.abs(count - Math.rint(count)) < 1e-6
                ? "; " + (long) Math.rint(count) + " blocks of " + plain(blocks.voltageV()) + " V make it"
                : "; no whole number of blocks of " + plain(blocks.voltageV()) + " V makes it";
    }

    static String plain(double volts) {
        return Math.rint(volts) == volts ? String.valueOf((long) volts) : String.valueOf(volts);
    }

    private static void speed(
            Trace trace, Motor motor, double speed, double mostSpeed, double nominalV, double plateV, PairSheet sheet) {
        double atPack = trace.note(SPEED, speed * nominalV / plateV, speed, nominalV, plateV);
        double reached = capped(atPack, motor.cappedSpeed());
        sheet.most(
                "motor-speed",
                ROTATION,
                reached,
                mostSpeed,
                Verdict.DOES_NOT_FIT,
                Finding.of(
                                "motor-overspeed",
                                Level.DANGER,
                                "At this voltage the motor turns {actual}, the rotor bears {limit}: windings fly out",
                                Source.derived("speed in proportion to voltage, or the controller's cap"))
                        .at("/drive/motor/maximumSpeed")
                        .action("Cap the speed in the controller below the rotor's limit, or lower the voltage."));
    }

    private static double capped(double speed, @Nullable Double cap) {
        return cap == null ? speed : Math.min(speed, cap);
    }
}

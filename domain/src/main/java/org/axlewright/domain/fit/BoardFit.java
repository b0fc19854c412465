package org.axlewright.domain.fit;

import static org.axlewright.domain.quantity.Dimension.CHARGE;
import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import org.axlewright.domain.fit.FitInput.Contactor;
import org.axlewright.domain.fit.FitInput.Controller;
import org.axlewright.domain.fit.FitInput.Converter;
import org.axlewright.domain.fit.FitResult.TapLoad;
import org.axlewright.domain.fit.FitResult.Voltages;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.jspecify.annotations.Nullable;

/** What else hangs on the pack: converter, contactor, and a tap across some blocks. */
final class BoardFit {

    /** The most that parts of a 12 V system bear. */
    static final double TWELVE_VOLT_MOST_V = 16;

    private static final Source MAKER = Source.derived("comparison with the limit sent");
    private static final Source TWELVE_VOLT = Source.memory("ISO 16750-2: parts of a 12 V system work up to 16 V");
    private static final Source TAPPED =
            Source.weak("owners' case: the tapped blocks drain faster and the whole set ages");

    private BoardFit() {}

    static PairSheet converterWithPack(FitSituation situation) {
        PairSheet sheet = situation.between(Part.PACK, Part.CONVERTER);
        Converter converter = situation.input().converter();
        if (converter == null) {
            return sheet;
        }
        Voltages voltages = situation.voltages();
        if (converter.mostV() == null) {
            sheet.undecided(
                    "full-voltage", new Measure(voltages.highestV(), VOLTAGE), "/accessories/converter/maximumVoltage");
        } else {
            sheet.most(
                    "full-voltage",
                    VOLTAGE,
                    voltages.highestV(),
                    converter.mostV(),
                    Verdict.DOES_NOT_FIT,
                    Finding.of(
                                    "converter-voltage-too-low",
                                    Level.WARNING,
                                    "Fully charged the pack has {actual}, the converter bears {limit}: it fails, and can put pack voltage on the 12 V side",
                                    MAKER)
                            .at("/accessories/converter/maximumVoltage")
                            .action("A converter for the full-charge voltage, isolated between input and output."));
        }
        if (converter.leastV() == null) {
            sheet.undecided(
                    "lowest-voltage",
                    new Measure(voltages.cutOffV(), VOLTAGE),
                    "/accessories/converter/minimumVoltage");
        } else {
            ControllerFit.lowest(
                    voltages, converter.leastV(), Part.CONVERTER, "/accessories/converter/minimumVoltage", sheet);
        }
        return sheet;
    }

    static PairSheet converterWithAccessories(FitSituation situation) {
        PairSheet sheet = situation.between(Part.CONVERTER, Part.ACCESSORIES);
        Converter converter = situation.input().converter();
        if (converter == null) {
            return sheet;
        }
        Double loadA = converter.loadA() != null
                ? converter.loadA()
                : converter.loadW() == null || converter.outputV() == null
                        ? null
                        : (Double) (converter.loadW() / converter.outputV());
        if (loadA == null) {
            return sheet;
        }
        if (converter.outputA() == null) {
            sheet.undecided("output-current", new Measure(loadA, CURRENT), "/accessories/converter/outputCurrent");
        } else {
            sheet.most(
                    "output-current",
                    CURRENT,
                    loadA,
                    converter.outputA(),
                    Verdict.DOES_NOT_FIT,
                    Finding.of(
                                    "converter-overloaded",
                                    Level.WARNING,
                                    "Everything on at once takes {actual}, the converter gives {limit}",
                                    MAKER)
                            .at("/accessories/converter/outputCurrent")
                            .action("A converter for the sum of all that can be on together."));
        }
        return sheet;
    }

    static PairSheet contactorWithPack(FitSituation situation) {
        PairSheet sheet = situation.between(Part.PACK, Part.CONTACTOR);
        Contactor contactor = situation.input().contactor();
        if (contactor == null) {
            return sheet;
        }
        Voltages voltages = situation.voltages();
        if (contactor.ratedV() == null) {
            sheet.undecided(
                    "contact-voltage",
                    new Measure(voltages.highestV(), VOLTAGE),
                    "/accessories/contactor/ratedVoltage");
        } else {
            sheet.most(
                    "contact-voltage",
                    VOLTAGE,
                    voltages.highestV(),
                    contactor.ratedV(),
                    Verdict.DOES_NOT_FIT,
                    Finding.of(
                                    "contactor-voltage-too-low",
                                    Level.DANGER,
                                    "Fully charged the pack has {actual}, the contacts are rated {limit} DC: the arc may not go out when they open",
                                    MAKER)
                            .at("/accessories/contactor/ratedVoltage")
                            .action("A contactor rated for direct current at the full-charge voltage."));
        }
        if (contactor.coilSupply() == CoilSupply.PACK) {
            coil(contactor, voltages.highestV(), voltages.cutOffV(), voltages.nominalV(), sheet);
        }
        return sheet;
    }

    static PairSheet contactorWithConverter(FitSituation situation) {
        PairSheet sheet = situation.between(Part.CONVERTER, Part.CONTACTOR);
        Contactor contactor = situation.input().contactor();
        if (contactor == null || contactor.coilSupply() != CoilSupply.CONVERTER) {
            return sheet;
        }
        Converter converter = situation.input().converter();
        Double outputV = converter == null ? null : converter.outputV();
        if (outputV == null) {
            sheet.undecided("coil-voltage", null, "/accessories/converter/outputVoltage");
        } else {
            coil(contactor, outputV, outputV, outputV, sheet);
        }
        return sheet;
    }

    private static void coil(Contactor contactor, double highestV, double lowestV, double nominalV, PairSheet sheet) {
        String name = "coil-voltage";
        Double mostV = contactor.mostCoilV();
        Double leastV = contactor.leastCoilV();
        if (mostV == null || leastV == null) {
            sheet.undecided(name, new Measure(highestV, VOLTAGE), "/accessories/contactor/coilVoltage");
            return;
        }
        sheet.most(
                name,
                VOLTAGE,
                highestV,
                mostV,
                Verdict.DOES_NOT_FIT,
                Finding.of(
                                "coil-overheats",
                                Level.WARNING,
                                "The coil sees {actual}, it bears {limit} for hours: heat rises with the square, the coil burns and the contacts drop out",
                                MAKER)
                        .at("/accessories/contactor/coilVoltage")
                        .action("A coil for this voltage, a coil economiser, or feed it from the converter."));
        boolean never = nominalV < leastV;
        sheet.least(
                "coil-drop-out",
                VOLTAGE,
                never ? nominalV : lowestV,
                leastV,
                never ? Verdict.DOES_NOT_FIT : Verdict.FITS_WITH_LIMITS,
                Finding.of(
                                "coil-may-not-close",
                                never ? Level.WARNING : Level.CAUTION,
                                "The coil sees {actual} at the lowest, it closes from {limit}: contacts that chatter or open under load burn and weld",
                                MAKER)
                        .at("/accessories/contactor/minimumCoilVoltage")
                        .action("Feed the coil from a converter, or stop the pack at a higher voltage."));
    }

    static PairSheet contactorWithController(FitSituation situation) {
        PairSheet sheet = situation.between(Part.CONTROLLER, Part.CONTACTOR);
        Contactor contactor = situation.input().contactor();
        Controller controller = situation.input().controller();
        if (contactor == null || controller == null || controller.batteryA() == null) {
            return sheet;
        }
        if (contactor.ratedA() == null) {
            sheet.undecided(
                    "contact-current",
                    new Measure(controller.batteryA(), CURRENT),
                    "/accessories/contactor/ratedCurrent");
        } else {
            sheet.most(
                    "contact-current",
                    CURRENT,
                    controller.batteryA(),
                    contactor.ratedA(),
                    Verdict.FITS_WITH_LIMITS,
                    Finding.of(
                                    "contactor-above-continuous",
                                    Level.CAUTION,
                                    "The controller may draw {actual}, the contacts carry {limit} for hours: more only for the time the maker's curve allows",
                                    MAKER)
                            .at("/accessories/contactor/ratedCurrent")
                            .action(
                                    "Compare with the maker's carry curve; a carry rating is no rating for opening under load."));
        }
        return sheet;
    }

    static PairSheet tapWithPack(FitSituation situation, @Nullable TapLoad tap) {
        PairSheet sheet = situation.between(Part.BLOCKS, Part.ACCESSORIES);
        FitInput.Tap sent = situation.input().tap();
        if (sent == null) {
            return sheet;
        }
        if (tap == null) {
            sheet.undecided(
                    "tap-voltage", null, sent.blocks() == null ? "/accessories/tap/blocks" : "/pack/blocks/count");
            return sheet;
        }
        sheet.most(
                "tap-voltage",
                VOLTAGE,
                tap.fullV(),
                TWELVE_VOLT_MOST_V,
                Verdict.DOES_NOT_FIT,
                Finding.of(
                                "tap-voltage-too-high",
                                Level.WARNING,
                                "Full, these blocks give {actual}; 12 V parts bear {limit}",
                                TWELVE_VOLT)
                        .at("/accessories/tap/blocks")
                        .action(
                                "Two 6 V blocks or one of 12 V; of 8 V blocks two already give 16 V nominal. Better: a converter."));
        boolean leadAcid = situation.pack().chemistry().isLeadAcid();
        sheet.judged(
                "tap-balance",
                Verdict.FITS_WITH_LIMITS,
                tap.imbalanceC() == null ? null : new Measure(tap.imbalanceC(), CHARGE),
                null,
                Finding.of(
                                "tap-unbalances-pack",
                                Level.WARNING,
                                "The tapped blocks give more than the others"
                                        + (tap.imbalanceC() == null ? "" : ", {actual} in a day")
                                        + (leadAcid
                                                ? ": they go flat first, and the charger overcharges the rest"
                                                : ": battery management can't make up for it, and their cells are the first below cut-off"),
                                TAPPED)
                        .at("/accessories/tap")
                        .action("Feed 12 V from a converter across the whole pack, sized for the total."));
        return sheet;
    }
}

package org.axlewright.domain.precharge;

import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.ENERGY;
import static org.axlewright.domain.quantity.Dimension.EVENT_TIME;
import static org.axlewright.domain.quantity.Dimension.POWER;
import static org.axlewright.domain.quantity.Dimension.RESISTANCE;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import org.axlewright.domain.precharge.PrechargeSizing.CoilOff;
import org.axlewright.domain.precharge.PrechargeSizing.HeldBus;
import org.axlewright.domain.precharge.PrechargeSizing.Range;
import org.axlewright.domain.precharge.PrechargeSizing.Result;
import org.axlewright.domain.trace.Caution;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** What stands out in a precharge path. */
final class PrechargeFindings {

    /** Direct voltage above which live parts are of voltage class B, V. */
    private static final double CLASS_B_V = 60;

    private static final Source PULSE = Source.published(
            "semiconductor maker's precharge reference design: choose the resistor by the energy of the pulse");
    private static final Source RELAY_NOTES = Source.published("relay makers' application notes on coil suppression");
    private static final Source TIMEOUT = Source.memory("timeout of 2 to 3 times the expected time");
    private static final Source JOULE = Source.derived("Joule's law");

    private static final Caution DC_ARC = new Caution(
            "dc-arc",
            "Direct current has no zero that ends an arc. Isolate the pack before working on contactor or resistor; a capacitor stays"
                    + " charged after that: measure it, and discharge it through a resistor, never by a short.");
    private static final Caution HOT = new Caution(
            "hot-resistor",
            "A precharge resistor that stays in line gets hot enough to burn what touches it. Mount it on metal, away from wiring and from"
                    + " a battery's vents.");
    private static final Caution MAKER = new Caution(
            "maker",
            "Some controllers precharge by themselves, or at other terminals. The controller maker's wiring diagram and ratings decide.");

    private PrechargeFindings() {}

    static void find(Result result, Trace trace) {
        trace.caution(DC_ARC);
        trace.caution(HOT);
        trace.caution(MAKER);
        voltage(result, trace);
        part(result, trace);
        resistor(result, trace);
        timing(result, trace);
        closing(result, trace);
        coil(result, trace);
    }

    private static void voltage(Result result, Trace trace) {
        if (result.fullV() > CLASS_B_V) {
            trace.find(Finding.of(
                            "over-60-v",
                            Level.CAUTION,
                            "At full charge the path stands at {actual}, above the {limit} up to which a touch is held harmless in the dry",
                            Source.weak(
                                    "ISO 6469-3 and UNECE R100, voltage class B above 60 V DC, as described in a trade article"))
                    .at("/pack/cellsInSeries")
                    .actual(new Measure(result.fullV(), VOLTAGE))
                    .limit(new Measure(CLASS_B_V, VOLTAGE)));
        }
        if (result.capacitanceF() == null) {
            trace.find(Finding.of(
                            "capacitance-unknown",
                            Level.CAUTION,
                            "Without the capacitance neither time nor energy can be told; the first current and the power with the bus held"
                                    + " down hold all the same",
                            Source.derived("time and energy are in proportion to the capacitance"))
                    .at("/precharge/capacitance")
                    .action(
                            "Read it on the controller's data sheet, or send measured: resistance in the path, time, and share of the"
                                    + " voltage reached then on an oscilloscope"));
        }
    }

    private static void part(Result result, Trace trace) {
        PrechargePart part = result.input().part();
        if (part == PrechargePart.INCANDESCENT_LAMP) {
            trace.find(Finding.of(
                            "lamp-as-precharge",
                            Level.CAUTION,
                            "A filament has about a tenth of its hot resistance when cold: the first current is many times what is given"
                                    + " here, and the time differs. A lamp that stays lit means a short or a load on the bus",
                            Source.COMMON_PRACTICE)
                    .at("/precharge/resistor/part")
                    .action("Use a resistor rated for the pulse; never close the contactor while the lamp glows"));
        } else if (part == PrechargePart.LED_OR_FLUORESCENT_LAMP) {
            trace.find(Finding.of(
                            "lamp-does-not-precharge",
                            Level.WARNING,
                            "A lamp with electronics or discharge is no resistor: it does not fill the capacitor",
                            Source.COMMON_PRACTICE)
                    .at("/precharge/resistor/part")
                    .action("Use a resistor rated for the pulse"));
        }
    }

    private static void resistor(Result result, Trace trace) {
        PrechargeInput input = result.input();
        Range range = result.range();
        if (range.leastOhm() != null && range.mostOhm() != null && range.suggestedOhm() == null) {
            trace.find(Finding.of(
                            "no-resistor-between",
                            Level.WARNING,
                            "No standard resistor keeps the current ({limit} at least) and still fills the capacitor in half the timeout"
                                    + " ({actual} at most)",
                            TIMEOUT)
                    .at("/precharge/timeout")
                    .actual(new Measure(range.mostOhm(), RESISTANCE))
                    .limit(new Measure(range.leastOhm(), RESISTANCE))
                    .action("Allow more time or more current"));
        }
        above(
                "peak-above-limit",
                "The first current of {actual} is above the limit of {limit}",
                "/precharge/resistor/resistance",
                result.peakA() == null ? null : new Measure(result.peakA(), CURRENT),
                input.currentLimitA() == null ? null : new Measure(input.currentLimitA(), CURRENT),
                "Take a larger resistance",
                trace);
        if (input.resistanceOhm() == null) {
            return;
        }
        Measure rating = input.powerRatingW() == null ? null : new Measure(input.powerRatingW(), POWER);
        above(
                "hold-power-above-rating",
                "When something holds the bus at nothing the resistor takes {actual} at full charge, more than its {limit}",
                "/precharge/resistor/powerRating",
                result.peakW() == null ? null : new Measure(result.peakW(), POWER),
                rating,
                "Take a larger power rating or a larger resistance, and a timeout that opens the path",
                trace);
        above(
                "duty-above-rating",
                "Repeated so often the resistor takes {actual} in the mean, more than its {limit}",
                "/precharge/attempts",
                result.meanW() == null ? null : new Measure(result.meanW(), POWER),
                rating,
                "Limit how often it may be tried, or take a larger power rating",
                trace);
        HeldBus held = result.held();
        above(
                "load-power-above-rating",
                "With the load that draws meanwhile the resistor takes {actual} for good, more than its {limit}",
                "/precharge/heldLoad",
                held == null ? null : new Measure(held.powerW(), POWER),
                rating,
                "Keep the load off until the contactor has closed",
                trace);
        pulse(result, trace);
        if (result.lastingA() != null) {
            trace.find(
                    Finding.of(
                                    "resistor-left-in-line",
                                    Level.CAUTION,
                                    "Left in line the resistor bears no more than {limit}; the vehicle's own current burns it",
                                    JOULE)
                            .at("/precharge/resistor")
                            .limit(new Measure(result.lastingA(), CURRENT))
                            .action(
                                    "Bridge it by the main contactor before any load is switched on, and let a timeout open the path"));
        }
    }

    private static void pulse(Result result, Trace trace) {
        PrechargeInput input = result.input();
        Measure pulseRating = input.pulseRatingJ() == null ? null : new Measure(input.pulseRatingJ(), ENERGY);
        above(
                "pulse-above-rating",
                "One precharge puts {actual} into the resistor, more than the {limit} it stands at once",
                "/precharge/resistor/pulseEnergy",
                result.pulseJ() == null ? null : new Measure(result.pulseJ(), ENERGY),
                pulseRating,
                "Take a resistor with a larger pulse rating; its resistance does not change the energy",
                trace);
        above(
                "held-pulse-above-rating",
                "Held until the timeout the resistor takes {actual}, more than the {limit} it stands at once",
                "/precharge/timeout",
                result.heldJ() == null ? null : new Measure(result.heldJ(), ENERGY),
                pulseRating,
                "Shorten the timeout, or take a resistor with a larger pulse rating",
                trace);
        if (pulseRating == null) {
            trace.find(Finding.of(
                            "pulse-rating-unknown",
                            Level.NOTICE,
                            "The watts of a resistor say what it bears for good; at the first moment it takes many times that, and only a"
                                    + " pulse rating in joules says that it survives",
                            PULSE)
                    .at("/precharge/resistor/pulseEnergy")
                    .action("Read the pulse rating on the data sheet; wire-wound parts stand most"));
        }
    }

    private static void timing(Result result, Trace trace) {
        PrechargeInput input = result.input();
        if (!input.timeoutSent()) {
            trace.find(Finding.of(
                            "no-timeout",
                            Level.WARNING,
                            "No timeout is stated: a path that nothing opens burns its resistor as soon as something holds the bus down",
                            TIMEOUT)
                    .at("/precharge/timeout")
                    .action("Open the path when the bus has not risen in 2 to 3 times the expected time"));
        }
        Double toClosing = result.toClosingS();
        Double timeout = result.timeoutS();
        if (toClosing != null && timeout != null && toClosing > timeout) {
            trace.find(Finding.of(
                            "timeout-too-short",
                            Level.WARNING,
                            "It takes {actual} to the closing voltage, longer than the timeout of {limit}: the contactor closes onto a"
                                    + " capacitor that is not full, or never",
                            Source.derived("t = −R·C·ln(1 − s)"))
                    .at("/precharge/timeout")
                    .actual(new Measure(toClosing, EVENT_TIME))
                    .limit(new Measure(timeout, EVENT_TIME))
                    .action("Take a smaller resistance or a longer timeout"));
        }
        HeldBus held = result.held();
        if (held != null && held.share() < input.closingShare()) {
            trace.find(Finding.of(
                            "load-holds-bus",
                            Level.WARNING,
                            "With the load that draws meanwhile the bus stays at {actual}, below the {limit} at which the contactor may close",
                            JOULE)
                    .at("/precharge/heldLoad")
                    .actual(new Measure(held.busV(), VOLTAGE))
                    .limit(new Measure(input.closingShare() * result.fullV(), VOLTAGE))
                    .action("Switch the load on after the contactor, or take a smaller resistance"));
        }
        Double tau = result.timeConstantS();
        if (tau != null) {
            trace.find(Finding.of(
                            "fail-to-rise",
                            Level.NOTICE,
                            "When the bus is not above {limit} after {actual}, five time constants, something draws from it: do not close",
                            Source.COMMON_PRACTICE)
                    .at("/precharge")
                    .actual(new Measure(5 * tau, EVENT_TIME))
                    .limit(new Measure(0.9 * result.fullV(), VOLTAGE))
                    .action("Find the short or the load first"));
        }
    }

    private static void closing(Result result, Trace trace) {
        PrechargeInput input = result.input();
        if (input.closers().contains(Closer.PROTECTION)) {
            trace.find(Finding.of(
                            "protection-closes-again",
                            Level.DANGER,
                            "A protection that closes again by itself after a trip closes onto an empty capacitor and welds the contacts;"
                                    + " the vehicle then can't be switched off",
                            Source.COMMON_PRACTICE)
                    .at("/precharge/closedBy")
                    .action(
                            "Precharge before every closing, recovery of the battery management included; interlock the contactor with"
                                    + " the voltage of the bus"));
        }
        if (input.closers().contains(Closer.MANUAL)) {
            trace.find(Finding.of(
                            "manual-closing",
                            Level.WARNING,
                            "A contactor closed by hand is closed without precharge one day, and welds",
                            Source.COMMON_PRACTICE)
                    .at("/precharge/closedBy")
                    .action("Let the voltage of the bus or a timer release the contactor"));
        }
        if (input.closers().isEmpty()) {
            trace.find(Finding.of(
                            "precharge-every-closing",
                            Level.CAUTION,
                            "It is not said what can close the contactor: a protection that closes again by itself welds it",
                            Source.COMMON_PRACTICE)
                    .at("/precharge/closedBy")
                    .action("Say in closedBy what can close it; every closing needs its precharge"));
        }
    }

    private static void coil(Result result, Trace trace) {
        PrechargeInput.Coil coil = result.input().coil();
        CoilOff off = result.coil();
        if (coil == null || off == null) {
            return;
        }
        Suppression suppression = coil.suppression();
        if (suppression == Suppression.NONE) {
            Finding finding = Finding.of(
                            "coil-not-suppressed",
                            Level.WARNING,
                            off.peakV() == null
                                    ? "Without suppression the coil raises hundreds of volts when it is switched off; 12 V relays reach 1000 to"
                                            + " 1500 V"
                                    : "Without suppression the coil raises {actual} when it is switched off",
                            RELAY_NOTES)
                    .at("/precharge/coil/suppression")
                    .action(
                            "Fit the suppressor the contactor's maker names, such as a diode with a voltage reference diode");
            trace.find(off.peakV() == null ? finding : finding.actual(new Measure(off.peakV(), VOLTAGE)));
        } else if (suppression == Suppression.DIODE) {
            Finding finding = Finding.of(
                            "coil-slow-release",
                            Level.CAUTION,
                            off.releaseS() == null
                                    ? "A plain diode keeps the current flowing: the contactor opens slowly, and its contacts can weld"
                                    : "A plain diode keeps the coil's current flowing for {actual}: the contactor opens slowly, and its contacts"
                                            + " can weld",
                            RELAY_NOTES)
                    .at("/precharge/coil/suppression")
                    .action("Take a diode with a voltage reference diode or a bidirectional suppressor");
            trace.find(off.releaseS() == null ? finding : finding.actual(new Measure(off.releaseS(), EVENT_TIME)));
        }
    }

    private static void above(
            String code,
            String message,
            String pointer,
            @Nullable Measure actual,
            @Nullable Measure limit,
            String action,
            Trace trace) {
        if (actual != null && limit != null && actual.si() > limit.si()) {
            trace.find(Finding.of(code, Level.WARNING, message, JOULE)
                    .at(pointer)
                    .actual(actual)
                    .limit(limit)
                    .action(action));
        }
    }
}

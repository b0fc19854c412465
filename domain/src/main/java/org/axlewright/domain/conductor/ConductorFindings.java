package org.axlewright.domain.conductor;

import static org.axlewright.domain.quantity.Dimension.AREA;
import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.EVENT_TIME;
import static org.axlewright.domain.quantity.Dimension.TEMPERATURE;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import java.util.stream.Collectors;
import org.axlewright.domain.cable.SizeSeries;
import org.axlewright.domain.conductor.CircuitInput.Stated;
import org.axlewright.domain.conductor.ConductorSizing.Judged;
import org.axlewright.domain.conductor.ConductorSizing.Result;
import org.axlewright.domain.conductor.ConductorSizing.Warmth;
import org.axlewright.domain.conductor.FuseWindow.SmallConductor;
import org.axlewright.domain.quantity.Dimension;
import org.axlewright.domain.trace.Caution;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** What stands out in a circuit. */
final class ConductorFindings {

    /** Nominal voltage that SAE J1127 battery cable is written for, V. */
    static final double SAE_J1127_V = 60;

    /** Highest voltage class of bolt-in and blade fuse-links for road vehicles, V. */
    static final double ISO_8820_V = 58;

    /** Breaking capacity of fuse-links for road vehicles, A. */
    static final double ISO_8820_BREAKING_A = 1000;

    /** Rating above which terminals must be known to bear it, degC. */
    static final double USUAL_TERMINAL_C = 75;

    private static final Source ISO_8820 = Source.regulation("ISO 8820-3 and -4: 32 V or 58 V, breaking capacity 1 kA");
    private static final Source FUSE_NOTES = Source.weak("fuse makers' selection notes");

    private static final Caution DC_ARC = new Caution(
            "dc-arc",
            "Direct current has no zero that ends an arc. Isolate the pack before touching a joint, cover one terminal, take rings and"
                    + " watches off, use insulated tools, and open under load only what is rated to break the current at full charge.");
    private static final Caution JOINTS = new Caution(
            "joints",
            "These figures are of the cable alone. Short cables fail at their ends: crimp and torque as the maker says, and measure the"
                    + " drop across every joint under load; 10 milliohm at 300 A is 900 W in one terminal.");
    private static final Caution FUSE_PLACE = new Caution(
            "fuse-place",
            "Put the fuse at the pack, within 175 mm (7 in) of it along the cable, 1.02 m (40 in) where the cable is sheathed all the"
                    + " way (33 CFR 183.455(b)). A rating in amperes says what a part carries, not what it makes or breaks.");
    private static final Caution WELDING_DUTY = new Caution(
            "welding-duty",
            "Duty ratings of welding cable are 1.5 to 2 times its continuous current. Never read them as continuous.");
    private static final Caution RULES = new Caution(
            "rules",
            "No numeric rule for cables of off-road vehicles is known; the tables are boat and building rules used in its place. The"
                    + " maker's ratings, the local code and a qualified electrician decide.");

    /** The route draws clearly more than the profile. Common practice, no source. */
    private static final double CLEARLY_MORE = 1.05;

    private ConductorFindings() {}

    static void find(Result result, Trace trace) {
        trace.caution(DC_ARC);
        trace.caution(JOINTS);
        trace.caution(RULES);
        trace.caution(WELDING_DUTY);
        if (result.input().side() == CircuitSide.BATTERY) {
            trace.caution(FUSE_PLACE);
        }
        table(result, trace);
        voltage(result, trace);
        controller(result, trace);
        size(result, trace);
        judged(result, trace);
        heat(result, result.warmth(), result.chosen(), trace);
        Candidate cable = result.judged() != null ? result.judged().candidate() : result.chosen();
        route(result, trace);
        if (result.fuse() != null && cable != null) {
            fuse(result, result.fuse(), cable, trace);
        }
    }

    private static void table(Result result, Trace trace) {
        CircuitInput input = result.input();
        double lower = Math.min(input.insulationC(), input.terminationC());
        if (input.columnC() < lower) {
            add(
                    trace,
                    Finding.of(
                                    "column-below-rating",
                                    Level.NOTICE,
                                    input.called()
                                            + ": the table has no column at the rating of {actual}; the one at {limit} is used",
                                    input.table().source())
                            .actual(new Measure(lower, TEMPERATURE))
                            .limit(new Measure(input.columnC(), TEMPERATURE)),
                    input,
                    input.insulationC() <= input.terminationC() ? "/insulationRating" : "/terminationRating");
        }
        if (!input.terminationKnown() && input.insulationC() > USUAL_TERMINAL_C) {
            add(
                    trace,
                    Finding.of(
                                    "termination-rating-unknown",
                                    Level.CAUTION,
                                    input.called()
                                            + ": the cable is used at {actual}; many terminals, fuse holders and contactors bear {limit} only",
                                    Source.memory("NEC 110.14(C): 60 degC up to 100 A, 75 degC above, unless marked"))
                            .actual(new Measure(input.columnC(), TEMPERATURE))
                            .limit(new Measure(USUAL_TERMINAL_C, TEMPERATURE))
                            .action("Read the ratings of both ends and send the lower one as terminationRating"),
                    input,
                    "/terminationRating");
        }
        Double ambient = input.surroundings().ambientC();
        if (ambient != null && ambient < AmpacityTable.BASE_C && input.table() == AmpacityTable.CFR_33_183_425) {
            add(
                    trace,
                    Finding.of(
                                    "no-credit-for-cold",
                                    Level.NOTICE,
                                    input.called()
                                            + ": at {actual} the cable could carry more; the table holds at {limit} and is used as it stands",
                                    input.table().source())
                            .actual(new Measure(ambient, TEMPERATURE))
                            .limit(new Measure(AmpacityTable.BASE_C, TEMPERATURE)),
                    input,
                    "/ambient");
        }
        Candidate chosen = result.chosen();
        if (chosen != null && input.sizes() != SizeSeries.AWG) {
            add(
                    trace,
                    Finding.of(
                                    "ampacity-of-thinner-gauge",
                                    Level.NOTICE,
                                    input.called() + ": the table has gauges only; "
                                            + chosen.conductor().size()
                                            + " of {actual} takes the current of " + chosen.tableRow()
                                            + ", the thickest that is not thicker",
                                    Source.derived("rounded down, never interpolated, in "
                                            + input.table().source()))
                            .actual(new Measure(chosen.conductor().areaM2(), AREA)),
                    input,
                    "/sizes");
        }
    }

    private static void voltage(Result result, Trace trace) {
        CircuitInput input = result.input();
        Double nominal = input.supply().nominalV();
        Double highest = input.supply().highestV();
        if (nominal == null || highest == null) {
            add(
                    trace,
                    Finding.of(
                                    "voltage-drop-not-checked",
                                    Level.WARNING,
                                    input.called()
                                            + ": without the voltage neither the drop nor the fuse can be judged",
                                    Source.derived("share of an unknown voltage"))
                            .action("Send the circuit's voltage, or the pack's chemistry and cells in series"),
                    input,
                    "/voltage");
            return;
        }
        if (input.table() == AmpacityTable.CFR_33_183_425 && highest >= FuseWindow.STRICTER_FROM_V) {
            add(
                    trace,
                    Finding.of(
                                    "table-below-50-v",
                                    Level.NOTICE,
                                    input.called()
                                            + ": the table is printed for circuits under {limit}; at {actual} it stands in for a rule that does not exist",
                                    input.table().source())
                            .actual(new Measure(highest, VOLTAGE))
                            .limit(new Measure(FuseWindow.STRICTER_FROM_V, VOLTAGE)),
                    input,
                    "/table");
        }
        Stated stated = input.stated();
        boolean thereIsSae = stated != null && stated.conductor().size().series() == SizeSeries.SAE;
        if ((thereIsSae || input.sizes() == SizeSeries.SAE) && highest > SAE_J1127_V) {
            add(
                    trace,
                    Finding.of(
                                    "sae-cable-over-60-v",
                                    Level.WARNING,
                                    input.called()
                                            + ": {actual} is beyond SAE J1127 battery cable, which is written for {limit} nominal",
                                    Source.regulation("SAE J1127 MAY2000, scope"))
                            .actual(new Measure(highest, VOLTAGE))
                            .limit(new Measure(SAE_J1127_V, VOLTAGE))
                            .action("Take a cable whose own rating covers the full-charge voltage"),
                    input,
                    thereIsSae ? "/size" : "/sizes");
        }
        if (input.side() == CircuitSide.BATTERY && highest > ISO_8820_V) {
            add(
                    trace,
                    Finding.of(
                                    "fuse-link-over-58-v",
                                    Level.WARNING,
                                    input.called()
                                            + ": {actual} is above {limit}, the highest class of fuse-links for road vehicles; blade and"
                                            + " bolt-in vehicle fuses can't break it",
                                    ISO_8820)
                            .actual(new Measure(highest, VOLTAGE))
                            .limit(new Measure(ISO_8820_V, VOLTAGE))
                            .action("Take a fuse with a direct-current rating at or above the full-charge voltage"),
                    input,
                    "/voltage");
        }
        namedBelowFifty(input, nominal, highest, trace);
    }

    private static void namedBelowFifty(CircuitInput input, double nominalV, double highestV, Trace trace) {
        if (nominalV < FuseWindow.STRICTER_FROM_V && highestV >= FuseWindow.STRICTER_FROM_V) {
            add(
                    trace,
                    Finding.of(
                                    "full-charge-over-50-v",
                                    Level.NOTICE,
                                    input.called()
                                            + ": named below {limit} but {actual} at full charge: the stricter rule of {limit} and over holds",
                                    FuseWindow.LARGEST)
                            .actual(new Measure(highestV, VOLTAGE))
                            .limit(new Measure(FuseWindow.STRICTER_FROM_V, VOLTAGE)),
                    input,
                    "/voltage");
        }
    }

    private static void controller(Result result, Trace trace) {
        CircuitInput input = result.input();
        Double motor = input.controller().motorA();
        Double battery = input.controller().batteryA();
        double peak = result.peakA();
        if (input.side() == CircuitSide.MOTOR) {
            add(
                    trace,
                    Finding.of(
                            "no-fuse-in-motor-leads",
                            Level.NOTICE,
                            input.called()
                                    + ": motor leads take no fuse; the controller limits them and the fuse at the pack protects the"
                                    + " wiring before it. Reckoned as two direct-current leads; three-phase leads each carry the phase current",
                            Source.published("controller maker's note: no fuse in the motor leads")),
                    input,
                    "/side");
            if (motor != null && peak < motor) {
                add(
                        trace,
                        Finding.of(
                                        "motor-leads-below-controller",
                                        Level.WARNING,
                                        input.called()
                                                + ": sized for {actual}, while the controller gives up to {limit} on the motor side"
                                                + (battery != null && peak <= battery
                                                        ? "; the battery-side current is not the motor's"
                                                        : ""),
                                        Source.published(
                                                "controller maker's note: battery current differs from motor current"))
                                .actual(new Measure(peak, CURRENT))
                                .limit(new Measure(motor, CURRENT))
                                .action("Send the motor-side current of a start and of the steepest climb"),
                        input,
                        "/profile");
            } else if (motor == null && battery != null && peak <= battery) {
                add(
                        trace,
                        Finding.of(
                                        "battery-current-in-motor-leads",
                                        Level.CAUTION,
                                        input.called()
                                                + ": sized for {actual}, no more than the controller draws from the pack ({limit});"
                                                + " at part throttle the motor carries more",
                                        Source.published(
                                                "controller maker's note: battery current differs from motor current"))
                                .actual(new Measure(peak, CURRENT))
                                .limit(new Measure(battery, CURRENT))
                                .action("Send the motor-side current, or drive/controller/motorCurrent"),
                        input,
                        "/profile");
            }
        } else if (battery != null && peak > battery) {
            add(
                    trace,
                    Finding.of(
                                    "above-controller-battery-limit",
                                    Level.NOTICE,
                                    input.called()
                                            + ": sized for {actual}, more than the {limit} that the controller draws from the pack;"
                                            + " a motor-side current does not belong here",
                                    Source.published(
                                            "controller maker's note: battery current differs from motor current"))
                            .actual(new Measure(peak, CURRENT))
                            .limit(new Measure(battery, CURRENT)),
                    input,
                    "/profile");
        }
    }

    private static void size(Result result, Trace trace) {
        CircuitInput input = result.input();
        Candidate chosen = result.chosen();
        if (chosen == null) {
            add(
                    trace,
                    Finding.of(
                                    "no-size-passes",
                                    Level.WARNING,
                                    input.called()
                                            + ": no size of the series carries {actual} within the limits, not even four runs in"
                                            + " parallel",
                                    input.table().source())
                            .actual(new Measure(result.rmsA(), CURRENT))
                            .action("Shorten the run, raise the voltage, cool the surroundings, or have it designed"),
                    input,
                    "");
            return;
        }
        double cycle = input.cycle().durationS();
        if (!input.steady() && cycle > chosen.timeConstantS()) {
            add(
                    trace,
                    Finding.of(
                                    "cycle-not-short",
                                    Level.NOTICE,
                                    input.called()
                                            + ": the cycle of {actual} is not short against the {limit} in which the cable warms;"
                                            + " every stretch is held against the temperature limit, the RMS current alone does not decide",
                                    Source.weak(
                                            "motor-sizing practice: RMS for cycles under 5 min, shorter than the time constant"))
                            .actual(new Measure(cycle, EVENT_TIME))
                            .limit(new Measure(chosen.timeConstantS(), EVENT_TIME)),
                    input,
                    "/profile");
        }
        if (chosen.parallel() > 1) {
            add(
                    trace,
                    Finding.of(
                                    "parallel-runs",
                                    Level.CAUTION,
                                    input.called()
                                            + ": {actual} runs in parallel share the current only when length, cable and lugs are the"
                                            + " same; each run needs a fuse of its own",
                                    Source.memory(
                                            "NEC 310.10(G): parallel conductors 1/0 and larger, of the same make and length"))
                            .actual(Measure.number(chosen.parallel())),
                    input,
                    "");
        }
    }

    /** The size that somebody has chosen. */
    private static void judged(Result result, Trace trace) {
        CircuitInput input = result.input();
        CircuitInput.Stated stated = input.stated();
        if (stated == null) {
            return;
        }
        Judged judged = result.judged();
        if (judged == null) {
            add(
                    trace,
                    Finding.of(
                                    "size-below-table",
                                    Level.WARNING,
                                    input.called() + ": " + stated.conductor().size()
                                            + " is thinner than the table begins; nothing says what it carries",
                                    input.table().source())
                            .action("Take a size of the table"),
                    input,
                    "/size");
            return;
        }
        Candidate cable = judged.candidate();
        if (!cable.passes()) {
            add(
                    trace,
                    Finding.of(
                                    "size-too-thin",
                                    Level.WARNING,
                                    input.called() + ": " + cable.conductor().size()
                                            + (cable.parallel() > 1 ? ", " + cable.parallel() + " runs," : "")
                                            + " carries {limit} for good and is too thin for {actual}: "
                                            + cable.fails().stream()
                                                    .map(Limit::toString)
                                                    .collect(Collectors.joining(", ")),
                                    input.table().source())
                            .actual(new Measure(result.rmsA(), CURRENT))
                            .limit(new Measure(cable.ampacityA(), CURRENT))
                            .action(
                                    result.chosen() == null
                                            ? "Have the circuit designed"
                                            : "Take "
                                                    + result.chosen()
                                                            .conductor()
                                                            .size()),
                    input,
                    "/size");
        }
        heat(result, judged.warmth(), cable, trace);
    }

    private static void route(Result result, Trace trace) {
        ConductorSizing.RouteHeat route = result.route();
        CircuitInput input = result.input();
        if (route == null) {
            return;
        }
        Double hottest = route.hottestC();
        if (hottest == null || hottest > result.conductorC()) {
            Finding finding = Finding.of(
                            "route-overheats-cable",
                            hottest == null ? Level.DANGER : Level.WARNING,
                            input.called() + ": the route alone, over and over, brings the cable "
                                    + (hottest == null ? "beyond 300 degC" : "to {actual}")
                                    + ", above the {limit} that insulation and terminals bear",
                            CableHeat.CONVECTION)
                    .limit(new Measure(result.conductorC(), TEMPERATURE))
                    .action("Take a thicker cable, and send a profile that holds what the route asks for");
            add(trace, hottest == null ? finding : finding.actual(new Measure(hottest, TEMPERATURE)), input, "");
        }
        if (route.rmsA() > result.rmsA() * CLEARLY_MORE) {
            add(
                    trace,
                    Finding.of(
                                    "route-asks-more",
                                    Level.CAUTION,
                                    input.called()
                                            + ": the route draws {actual} as a mean of its heat, the profile sent only {limit}; the size goes by the profile",
                                    Source.derived("RMS current of the legs against that of the profile"))
                            .actual(new Measure(route.rmsA(), CURRENT))
                            .limit(new Measure(result.rmsA(), CURRENT))
                            .action("Send a profile that holds the route"),
                    input,
                    "/profile");
        }
    }

    /** What the physical model says where the table is silent. */
    private static void heat(Result result, @Nullable Warmth warmth, @Nullable Candidate cable, Trace trace) {
        CircuitInput input = result.input();
        if (cable == null) {
            return;
        }
        if (warmth == null) {
            add(
                    trace,
                    Finding.of(
                                    "strand-beyond-diameter",
                                    Level.NOTICE,
                                    input.called() + ": the strand of "
                                            + cable.conductor().size()
                                            + " does not fit into the diameter sent; its heat is not reckoned",
                                    Source.derived("seven equal wires fill 7/9 of the circle around them"))
                            .action("Send the diameter of this size, or insulationThickness"),
                    input,
                    "/outerDiameter");
        } else if (warmth.hottestC() == null) {
            add(
                    trace,
                    Finding.of(
                                    "cable-burns",
                                    Level.DANGER,
                                    input.called() + ": " + cable.conductor().size()
                                            + " would pass {limit}, where the physical model ends and insulation is gone",
                                    CableHeat.CONVECTION)
                            .limit(new Measure(CableHeat.ENDS_C, TEMPERATURE))
                            .action("Take a thicker cable"),
                    input,
                    "");
        } else if (warmth.hottestC() > result.conductorC()) {
            add(
                    trace,
                    Finding.of(
                                    "hotter-than-rating",
                                    Level.CAUTION,
                                    input.called() + ": by the physical model "
                                            + cable.conductor().size()
                                            + " reaches {actual}, above the {limit} of the table's column; the table governs the size, the model"
                                            + " says how little is left",
                                    CableHeat.CONVECTION)
                            .actual(new Measure(warmth.hottestC(), TEMPERATURE))
                            .limit(new Measure(result.conductorC(), TEMPERATURE))
                            .action("Take the next thicker cable, or keep it from other warm ones"),
                    input,
                    "");
        }
    }

    private static void fuse(Result result, FuseWindow fuse, Candidate chosen, Trace trace) {
        CircuitInput input = result.input();
        Double rating = fuse.ratingA();
        Double upper = fuse.upperA();
        if (rating == null && upper != null) {
            add(
                    trace,
                    Finding.of(
                                    "no-fuse-in-window",
                                    Level.WARNING,
                                    input.called()
                                            + ": no standard fuse carries the current (at least {actual}) and protects the cable (at most {limit})",
                                    FuseWindow.LARGEST)
                            .actual(new Measure(fuse.lowerA(), CURRENT))
                            .limit(new Measure(upper, CURRENT))
                            .action(fusable(result)),
                    input,
                    "");
        }
        double peakPerRun = result.peakA() / chosen.parallel();
        if (rating != null && peakPerRun > rating && input.fuse().ratingA() == null) {
            add(
                    trace,
                    Finding.of(
                                    "peak-above-fuse",
                                    Level.CAUTION,
                                    input.called()
                                            + ": the peak of {actual} is above the fuse of {limit}; it must outlast the peak",
                                    Source.published("controller maker's note: a 100 A fuse carries 200 A for seconds"))
                            .actual(new Measure(peakPerRun, CURRENT))
                            .limit(new Measure(rating, CURRENT))
                            .action(
                                    "Check the peak and its duration against the least melting time of the fuse maker's curve"),
                    input,
                    "/profile");
        }
        SmallConductor small = SmallConductor.of(chosen.tableRow()).orElse(null);
        Double onSmall = input.fuse().ratingA() != null ? input.fuse().ratingA() : rating;
        if (onSmall != null && small != null && onSmall > small.ratingA()) {
            add(
                    trace,
                    Finding.of(
                                    "small-conductor-fuse",
                                    Level.CAUTION,
                                    input.called() + ": a fuse of {actual} on "
                                            + chosen.conductor().size()
                                            + " is above the {limit} that building rules allow",
                                    small.source())
                            .actual(new Measure(onSmall, CURRENT))
                            .limit(new Measure(small.ratingA(), CURRENT)),
                    input,
                    "");
        }
        Double fault = fuse.interruptingA();
        if (fault != null && fault > ISO_8820_BREAKING_A) {
            add(
                    trace,
                    Finding.of(
                                    "fault-above-vehicle-fuse",
                                    Level.WARNING,
                                    input.called()
                                            + ": a short circuit draws {actual}; fuse-links for road vehicles break {limit}, common"
                                            + " strip links about twice that",
                                    ISO_8820)
                            .actual(new Measure(fault, CURRENT))
                            .limit(new Measure(ISO_8820_BREAKING_A, CURRENT))
                            .action("Take a fuse with an interrupting rating at or above the short-circuit current"),
                    input,
                    "");
        }
        if (fault != null && fuse.clearingS() == null && input.columnC() < Adiabatic.FAULT_END_C) {
            add(
                    trace,
                    Finding.of(
                                    "clearing-beyond-law",
                                    Level.NOTICE,
                                    input.called()
                                            + ": the cable stands the short circuit longer than {limit}, where the law of faults ends",
                                    Source.regulation("IEC 60364-4-43"))
                            .limit(new Measure(Adiabatic.LONGEST_FAULT_S, Dimension.EVENT_TIME)),
                    input,
                    "");
        }
        if (fuse.voltageV() != null) {
            add(
                    trace,
                    Finding.of(
                                    "fuse-voltage-rating",
                                    Level.NOTICE,
                                    input.called()
                                            + ": the fuse needs a direct-current voltage rating of at least {limit}, the full charge; a rating"
                                            + " for alternating current does not count",
                                    FUSE_NOTES)
                            .limit(new Measure(fuse.voltageV(), VOLTAGE)),
                    input,
                    "");
        }
    }

    private static void add(Trace trace, Finding finding, CircuitInput input, String field) {
        trace.find(finding.at(input.pointer() + field));
    }

    /** The thinnest passing size that a standard fuse protects. */
    private static String fusable(Result result) {
        return result.candidates().stream()
                .filter(Candidate::passes)
                .filter(thicker -> FuseWindow.of(result.input(), result.rmsA(), thicker, Trace.withoutWorking())
                                .ratingA()
                        != null)
                .findFirst()
                .map(thicker -> "Take " + thicker.conductor().size() + ", the thinnest that a standard fuse protects")
                .orElse("Take a thicker cable than the series offers, or split the circuit");
    }
}

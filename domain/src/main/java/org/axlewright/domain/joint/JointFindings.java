package org.axlewright.domain.joint;

import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.POWER;
import static org.axlewright.domain.quantity.Dimension.RESISTANCE;
import static org.axlewright.domain.quantity.Dimension.TEMPERATURE;
import static org.axlewright.domain.quantity.Dimension.TEMPERATURE_DIFFERENCE;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import org.axlewright.domain.joint.JointHeat.Joint;
import org.axlewright.domain.joint.JointHeat.Result;
import org.axlewright.domain.trace.Caution;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Trace;

/** What stands out in a joint. */
final class JointFindings {

    /** Rise above like joints from which to act, K. */
    static final double SIMILAR_K = 15;

    /** Resistance over the median from which a joint is odd. */
    static final double OF_MEDIAN = 2;

    /** Metal that burns a finger at a touch, degC. */
    private static final double TOUCH_C = 65;

    /** Heat of a soldering iron, W. */
    private static final double SOLDERING_W = 50;

    /** Heat worth a look, W. */
    private static final double WARM_W = 10;

    /** Drop of one joint at the peak that is felt as lost power, V. */
    private static final double FELT_V = 0.5;

    /** Smallest drop that a usual meter reads well, V. */
    private static final double READABLE_V = 0.5e-3;

    private static final Source SIMILAR = Source.memory(
            "acceptance tests of electrical equipment (NETA MTS Table 100.18): more than 15 degC above similar parts under similar load");
    private static final Source TOUCH = Source.memory("ISO 13732-1: burn threshold of bare metal for a touch of 1 s");
    private static final Source HEAT = Source.derived("P = I²·R; a soldering iron gives 40 to 60 W");
    private static final Source CONNECTOR = Source.memory("IEC 61238-1, connector resistance factor");

    private static final String REPAIR =
            "Isolate the pack, open the joint, clean to bright metal, renew a burnt or corroded lug by a crimped tinned one, tighten to the"
                    + " maker's torque, and measure again";

    private static final Caution ISOLATE = new Caution(
            "isolate-first",
            "Millivolts are measured under load, with insulated probes and no ring or watch; a joint is opened only with the pack isolated."
                    + " Direct current has no zero that ends an arc.");
    private static final Caution TORQUE = new Caution(
            "torque",
            "Tighten to the maker's torque and again after the first weeks: a service manual gives 11 N m (8 lbf ft) for one kind of post."
                    + " A cable left bad melts the post; makers call that no warranty case.");
    private static final Caution GAS = new Caution(
            "gas-at-the-post",
            "A hot post lights hydrogen: never spark, solder or grind at lead-acid batteries, and air the box first.");

    private JointFindings() {}

    static void find(Result result, Trace trace) {
        trace.caution(ISOLATE);
        trace.caution(TORQUE);
        if (result.leadAcid()) {
            trace.caution(GAS);
        }
        for (Joint joint : result.joints()) {
            temperature(joint, trace);
            heat(joint, result.leadAcid(), trace);
            resistance(joint, trace);
            reading(joint, trace);
        }
    }

    private static void temperature(Joint joint, Trace trace) {
        JointInput input = joint.input();
        String at = input.pointer() + "/temperature";
        Double measured = input.reading().temperatureC();
        Double hottest = joint.settledC() != null ? joint.settledC() : measured;
        if (hottest == null) {
            return;
        }
        if (hottest > input.ratingC()) {
            trace.find(Finding.of(
                            "joint-above-rating",
                            Level.DANGER,
                            input.called()
                                    + ": it settles at {actual}, above the {limit} that terminal and insulation bear",
                            Source.memory("NEC 110.14(C): 60 degC up to 100 A, 75 degC above, unless marked"))
                    .at(at)
                    .actual(new Measure(hottest, TEMPERATURE))
                    .limit(new Measure(input.ratingC(), TEMPERATURE))
                    .action("Do not drive. " + REPAIR));
        }
        if (hottest > TOUCH_C) {
            trace.find(Finding.of(
                            "hot-to-touch",
                            Level.WARNING,
                            input.called() + ": {actual} burns a finger; metal does from {limit}",
                            TOUCH)
                    .at(at)
                    .actual(new Measure(hottest, TEMPERATURE))
                    .limit(new Measure(TOUCH_C, TEMPERATURE))
                    .action(REPAIR));
        }
        if (joint.peakC() != null && joint.peakC() > input.ratingC() && hottest <= input.ratingC()) {
            trace.find(Finding.of(
                            "peak-must-be-short",
                            Level.CAUTION,
                            input.called()
                                    + ": if the largest current lasted it would settle at {actual}, above {limit}",
                            Source.derived("rise in proportion to the square of the current"))
                    .at(input.pointer() + "/profile")
                    .actual(new Measure(joint.peakC(), TEMPERATURE))
                    .limit(new Measure(input.ratingC(), TEMPERATURE))
                    .action("Keep peaks short, and measure the joint after the longest climb"));
        }
        if (joint.aboveOthersK() != null && joint.aboveOthersK() > SIMILAR_K) {
            trace.find(Finding.of(
                            "hotter-than-others",
                            Level.WARNING,
                            input.called() + ": {actual} above the others at its current; act from {limit}",
                            SIMILAR)
                    .at(at)
                    .actual(new Measure(joint.aboveOthersK(), TEMPERATURE_DIFFERENCE))
                    .limit(new Measure(SIMILAR_K, TEMPERATURE_DIFFERENCE))
                    .action(REPAIR));
        }
    }

    private static void heat(Joint joint, boolean leadAcid, Trace trace) {
        JointInput input = joint.input();
        Double lasting = joint.meanW() != null ? joint.meanW() : joint.readingW();
        Double most = joint.peakW() != null ? joint.peakW() : joint.readingW();
        if (most != null && lasting != null && most >= SOLDERING_W) {
            trace.find(Finding.of(
                            "melts-terminal",
                            Level.DANGER,
                            input.called() + ": {actual} in one joint, as much as a soldering iron or more"
                                    + (leadAcid
                                            ? "; lead melts at 327 degC, drips and lights the hydrogen above it"
                                            : ""),
                            HEAT)
                    .at(input.pointer())
                    .actual(new Measure(most, POWER))
                    .limit(new Measure(SOLDERING_W, POWER))
                    .action("Do not drive. " + REPAIR));
        } else if (lasting != null && lasting >= WARM_W) {
            trace.find(Finding.of(
                            "joint-heat",
                            Level.WARNING,
                            input.called() + ": {actual} in the mean in one joint; a sound one gives off a few watts",
                            Source.COMMON_PRACTICE)
                    .at(input.pointer())
                    .actual(new Measure(lasting, POWER))
                    .limit(new Measure(WARM_W, POWER))
                    .action(REPAIR));
        }
        if (joint.peakDropV() != null && joint.peakDropV() >= FELT_V) {
            trace.find(Finding.of(
                            "cuts-out-on-hills",
                            Level.WARNING,
                            input.called()
                                    + ": loses {actual} at the largest current; a drive that cuts out on hills and comes back is the"
                                    + " early sign of such a joint, not of a bad battery",
                            Source.COMMON_PRACTICE)
                    .at(input.pointer())
                    .actual(new Measure(joint.peakDropV(), VOLTAGE))
                    .limit(new Measure(FELT_V, VOLTAGE))
                    .action(REPAIR));
        }
    }

    private static void resistance(Joint joint, Trace trace) {
        JointInput input = joint.input();
        if (joint.ofMedian() != null && joint.ofMedian() > OF_MEDIAN) {
            trace.find(Finding.of(
                            "odd-joint",
                            Level.WARNING,
                            input.called() + ": its resistance is {actual} times the median of all joints",
                            Source.COMMON_PRACTICE)
                    .at(input.pointer())
                    .actual(Measure.number(joint.ofMedian()))
                    .limit(Measure.number(OF_MEDIAN))
                    .action(REPAIR));
        }
        if (joint.factor() != null && joint.factor() > 1) {
            trace.find(Finding.of(
                            "above-its-cable",
                            Level.CAUTION,
                            input.called()
                                    + ": {actual} times the resistance of the same length of its cable; a sound crimp has no more than"
                                    + " the cable",
                            CONNECTOR)
                    .at(input.pointer() + "/length")
                    .actual(Measure.number(joint.factor()))
                    .limit(Measure.number(1))
                    .action(REPAIR));
        }
        if (joint.asCableM() != null && input.cableM() != null && joint.asCableM() > input.cableM()) {
            trace.find(Finding.of(
                            "joint-outweighs-cable",
                            Level.CAUTION,
                            input.called()
                                    + ": resists like {actual} of its cable, which is {limit} long; a thicker cable changes little,"
                                    + " short cables fail at their ends",
                            Source.derived("Ohm's law"))
                    .at(input.pointer())
                    .actual(new Measure(joint.asCableM(), LENGTH))
                    .limit(new Measure(input.cableM(), LENGTH))
                    .action(REPAIR));
        }
    }

    private static void reading(Joint joint, Trace trace) {
        JointInput input = joint.input();
        Double drop = input.reading().dropV();
        if (drop != null && drop < READABLE_V) {
            trace.find(Finding.of(
                            "small-reading",
                            Level.NOTICE,
                            input.called()
                                    + ": {actual} is near what a usual meter can tell; its resistance of {limit} is uncertain",
                            Source.COMMON_PRACTICE)
                    .at(input.pointer() + "/voltageDrop")
                    .actual(new Measure(drop, VOLTAGE))
                    .limit(new Measure(joint.resistanceOhm(), RESISTANCE))
                    .action("Measure at a larger current"));
        }
        Double at = input.reading().currentA();
        if (joint.riseK() != null && at != null && joint.rmsA() != null && joint.rmsA() > 2 * at) {
            trace.find(Finding.of(
                            "rise-far-from-reading",
                            Level.NOTICE,
                            input.called()
                                    + ": the temperature is carried to {actual} times the current of the reading; a joint gets worse as"
                                    + " it warms, so it may be hotter",
                            Source.derived("rise in proportion to the heat, R and cooling unchanged"))
                    .at(input.pointer() + "/current")
                    .actual(Measure.number(joint.rmsA() / at))
                    .limit(Measure.number(2))
                    .action("Measure nearer to the current it carries"));
        }
        if (joint.riseK() != null && joint.riseK() < 0) {
            trace.find(Finding.of(
                            "colder-than-air",
                            Level.NOTICE,
                            input.called() + ": {actual} below the air around it; joint or air was misread",
                            Source.derived("a joint that carries current is not colder than what surrounds it"))
                    .at(input.pointer() + "/temperature")
                    .actual(new Measure(joint.riseK(), TEMPERATURE_DIFFERENCE)));
        }
    }
}

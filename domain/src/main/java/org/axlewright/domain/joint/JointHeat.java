package org.axlewright.domain.joint;

import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.EVENT_TIME;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.POWER;
import static org.axlewright.domain.quantity.Dimension.RESISTANCE;
import static org.axlewright.domain.quantity.Dimension.RESISTANCE_PER_LENGTH;
import static org.axlewright.domain.quantity.Dimension.TEMPERATURE;
import static org.axlewright.domain.quantity.Dimension.TEMPERATURE_DIFFERENCE;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.axlewright.domain.cable.Conductor;
import org.axlewright.domain.joint.JointInput.Reading;
import org.axlewright.domain.joint.JointInput.Stretch;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * Resistance and heat of joints, the temperature they settle at, and how each stands among the others. The rise of a joint is taken in
 * proportion to its heat: true while neither its resistance nor its cooling changes, so that a joint that gets worse as it warms is
 * understated.
 */
public final class JointHeat {

    /** Temperature at which the cable beside the joint is compared, degC: that of the tables for copper. */
    static final double CABLE_C = 20;

    private static final Source OHM = Source.published("Ohm's and Joule's laws");
    private static final Source SCALING =
            Source.derived("steady rise in proportion to the heat, R and cooling unchanged");

    private static final Symbol R = new Symbol("R", RESISTANCE);
    private static final Symbol I = new Symbol("I", CURRENT);

    private static final Step JOINT = Step.of(
            "j",
            "joint, by its place in the request; the steps that follow are of it",
            "j",
            NONE,
            Source.derived("the request"),
            new Symbol("j", NONE));
    private static final Step RESISTANCE_READ = Step.of(
            "R", "resistance from the drop at a current", "R = U/I", RESISTANCE, OHM, new Symbol("U", VOLTAGE), I);
    private static final Step HEAT = Step.of("P", "heat at a current", "P = I²·R", POWER, OHM, I, R);
    private static final Step DROP = Step.of("U", "drop at the largest current", "U = I·R", VOLTAGE, OHM, I, R);
    private static final Step RMS = Step.of(
            "Irms",
            "current of the same mean heat",
            "Irms = sqrt(Σ(I²·t)/Σt)",
            CURRENT,
            Source.weak("motor-sizing practice, mean of the heat over a cycle"));
    private static final Step RISE = Step.of(
            "ΔT",
            "rise that was measured",
            "ΔT = T − Ta",
            TEMPERATURE_DIFFERENCE,
            OHM,
            new Symbol("T", TEMPERATURE),
            new Symbol("Ta", TEMPERATURE));
    private static final Step SETTLED = Step.of(
            "Ts",
            "temperature at which it settles with a current",
            "Ts = Ta + ΔT·(I/Im)²",
            TEMPERATURE,
            SCALING,
            new Symbol("Ta", TEMPERATURE),
            new Symbol("ΔT", TEMPERATURE_DIFFERENCE),
            I,
            new Symbol("Im", CURRENT));
    private static final Step AS_CABLE = Step.of(
            "Le",
            "length of its cable with the same resistance, at 20 degC",
            "Le = R/r",
            LENGTH,
            OHM,
            R,
            new Symbol("r", RESISTANCE_PER_LENGTH));
    private static final Step FACTOR = Step.of(
            "k",
            "resistance over that of the same length of cable",
            "k = Le/l",
            NONE,
            Source.memory("IEC 61238-1, connector resistance factor"),
            new Symbol("Le", LENGTH),
            new Symbol("l", LENGTH));
    private static final Step MEDIAN = Step.of(
            "Rm",
            "median of the resistances of all joints",
            "Rm = middle of R1, R2, ...",
            RESISTANCE,
            Source.derived("half of the joints lie above, half below"));

    private JointHeat() {}

    /**
     * What one joint does.
     *
     * @param readingW heat at the current of the reading, W; null without one
     * @param rmsA current of the same mean heat, A; null without load
     * @param settledC temperature with that current for good, degC; null without measured temperature or load
     * @param peakC temperature if the largest current lasted, degC
     * @param asCableM length of its cable with the same resistance, m; null without size
     * @param factor resistance over that of the same length of cable; null without length between the probes
     * @param ofMedian resistance over the median of all; null with fewer than three joints or a median of nothing
     * @param aboveOthersK measured rise, brought to a common current, above the mean of the others, K; null with fewer than three
     */
    public record Joint(
            JointInput input,
            double resistanceOhm,
            @Nullable Double readingW,
            @Nullable Double rmsA,
            @Nullable Double peakA,
            @Nullable Double meanW,
            @Nullable Double peakW,
            @Nullable Double peakDropV,
            @Nullable Double riseK,
            @Nullable Double settledC,
            @Nullable Double peakC,
            @Nullable Double asCableM,
            @Nullable Double factor,
            @Nullable Double ofMedian,
            @Nullable Double aboveOthersK) {}

    /**
     * All joints.
     *
     * @param medianOhm null with fewer than three
     * @param meanW heat of all that carry a known load, W; null when none does
     * @param oddIndex place of the joint that stands out most; null when none does
     */
    public record Result(
            List<Joint> joints,
            @Nullable Double medianOhm,
            @Nullable Double meanW,
            @Nullable Integer oddIndex,
            boolean leadAcid) {}

    /**
     * Works out every joint and compares them.
     *
     * @param leadAcid whether the pack is lead-acid: hydrogen near its posts
     */
    public static Result of(List<JointInput> inputs, boolean leadAcid, Trace trace) {
        double[] ohms = inputs.stream()
                .mapToDouble(input -> resistance(input.reading(), Trace.withoutWorking()))
                .toArray();
        Double median = ohms.length < 3 ? null : (Double) noteMedian(ohms, trace);
        List<Joint> joints = new ArrayList<>();
        for (JointInput input : inputs) {
            joints.add(joint(input, median, aboveOthers(input, inputs), trace));
        }
        Double total = null;
        for (Joint joint : joints) {
            if (joint.meanW() != null) {
                total = (total == null ? 0 : total) + joint.meanW();
            }
        }
        Result result = new Result(List.copyOf(joints), median, total, odd(joints), leadAcid);
        JointFindings.find(result, trace);
        return result;
    }

    /** Heat of a resistance at a current, W. */
    public static double heatW(double currentA, double resistanceOhm) {
        return currentA * currentA * resistanceOhm;
    }

    /** Resistance from the drop at a current, ohm. */
    public static double resistanceOhm(double dropV, double currentA) {
        return dropV / currentA;
    }

    private static double resistance(Reading reading, Trace trace) {
        if (reading.resistanceOhm() != null) {
            return reading.resistanceOhm();
        }
        double drop = Objects.requireNonNull(reading.dropV());
        double current = Objects.requireNonNull(reading.currentA());
        return trace.note(RESISTANCE_READ, resistanceOhm(drop, current), drop, current);
    }

    private static Joint joint(JointInput input, @Nullable Double median, @Nullable Double aboveOthersK, Trace trace) {
        trace.note(JOINT, input.index(), input.index());
        Reading reading = input.reading();
        double ohm = resistance(reading, trace);
        Double at = reading.currentA();
        Double readingW = at == null ? null : (Double) heat(at, ohm, trace);
        Double rms = null;
        Double peak = null;
        Double meanW = null;
        Double peakW = null;
        Double peakDrop = null;
        if (!input.load().isEmpty()) {
            rms = rmsA(input.load(), trace);
            peak = input.load().stream().mapToDouble(Stretch::currentA).max().orElseThrow();
            meanW = heat(rms, ohm, trace);
            peakW = heat(peak, ohm, trace);
            peakDrop = trace.note(DROP, peak * ohm, peak, ohm);
        }
        Double rise = null;
        Double settled = null;
        Double peakC = null;
        Double ambient = input.ambientC();
        if (reading.temperatureC() != null && ambient != null && at != null) {
            rise = trace.note(RISE, reading.temperatureC() - ambient, reading.temperatureC(), ambient);
            settled = rms == null ? null : (Double) settled(ambient, rise, rms, at, trace);
            peakC = peak == null ? null : (Double) settled(ambient, rise, peak, at, trace);
        }
        Double asCable = null;
        Double factor = null;
        Conductor conductor = input.conductor();
        if (conductor != null) {
            double perM = conductor.resistanceOhmPerM(CABLE_C, trace);
            asCable = trace.note(AS_CABLE, ohm / perM, ohm, perM);
            factor = input.probesM() == null
                    ? null
                    : (Double) trace.note(FACTOR, asCable / input.probesM(), asCable, input.probesM());
        }
        return new Joint(
                input,
                ohm,
                readingW,
                rms,
                peak,
                meanW,
                peakW,
                peakDrop,
                rise,
                settled,
                peakC,
                asCable,
                factor,
                median == null || median == 0 ? null : (Double) (ohm / median),
                aboveOthersK);
    }

    private static double heat(double currentA, double ohm, Trace trace) {
        return trace.note(HEAT, heatW(currentA, ohm), currentA, ohm);
    }

    private static double settled(double ambientC, double riseK, double currentA, double measuredA, Trace trace) {
        double ratio = currentA / measuredA;
        return trace.note(SETTLED, ambientC + riseK * ratio * ratio, ambientC, riseK, currentA, measuredA);
    }

    private static double rmsA(List<Stretch> load, Trace trace) {
        double heat = 0;
        double time = 0;
        List<Trace.Term> terms = new ArrayList<>();
        for (Stretch stretch : load) {
            heat += stretch.currentA() * stretch.currentA() * stretch.durationS();
            time += stretch.durationS();
            if (trace.keepsWorking()) {
                int n = terms.size() / 2 + 1;
                terms.add(new Trace.Term(new Symbol("I" + n, CURRENT), stretch.currentA()));
                terms.add(new Trace.Term(new Symbol("t" + n, EVENT_TIME), stretch.durationS()));
            }
        }
        return trace.noteTerms(RMS, Math.sqrt(heat / time), terms);
    }

    private static double noteMedian(double[] values, Trace trace) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int middle = sorted.length / 2;
        List<Trace.Term> terms = new ArrayList<>();
        if (trace.keepsWorking()) {
            for (int i = 0; i < values.length; i++) {
                terms.add(new Trace.Term(new Symbol("R" + (i + 1), RESISTANCE), values[i]));
            }
        }
        return trace.noteTerms(
                MEDIAN, sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2, terms);
    }

    /** The rise brought to the joint's own current, above the mean of the others brought to the same; null with fewer than two others. */
    private static @Nullable Double aboveOthers(JointInput input, List<JointInput> all) {
        Double own = risePerHeat(input);
        Double at = input.reading().currentA();
        if (own == null || at == null) {
            return null;
        }
        double sum = 0;
        int others = 0;
        for (JointInput other : all) {
            Double rise = risePerHeat(other);
            if (other.index() != input.index() && rise != null) {
                sum += rise;
                others++;
            }
        }
        return others < 2 ? null : (Double) ((own - sum / others) * at * at);
    }

    /** Rise over the square of the current, K/A²; null when it was not measured. */
    private static @Nullable Double risePerHeat(JointInput input) {
        Double at = input.reading().currentA();
        Double temperature = input.reading().temperatureC();
        Double ambient = input.ambientC();
        return at == null || temperature == null || ambient == null
                ? null
                : (Double) ((temperature - ambient) / (at * at));
    }

    /** The joint that stands out most: by its rise, else by its resistance. */
    private static @Nullable Integer odd(List<Joint> joints) {
        Integer odd = null;
        double most = 1;
        for (Joint joint : joints) {
            double share = Math.max(
                    joint.aboveOthersK() == null ? 0 : joint.aboveOthersK() / JointFindings.SIMILAR_K,
                    joint.ofMedian() == null ? 0 : joint.ofMedian() / JointFindings.OF_MEDIAN);
            if (share > most) {
                most = share;
                odd = joint.input().index();
            }
        }
        return odd;
    }
}

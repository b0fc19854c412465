package org.axlewright.api.joint;

import static org.axlewright.domain.quantity.Dimension.TEMPERATURE;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.section.Circuit;
import org.axlewright.api.section.Joint;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.cable.Conductor;
import org.axlewright.domain.cable.ConductorSize;
import org.axlewright.domain.joint.JointInput;
import org.axlewright.domain.joint.JointInput.Reading;
import org.axlewright.domain.joint.JointInput.Stretch;
import org.axlewright.domain.quantity.Current;
import org.axlewright.domain.quantity.Quantity;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.jspecify.annotations.Nullable;

/** Reads the joints, and of the circuits what concerns them. */
final class JointSections {

    private static final double AMBIENT_C = 20;
    private static final double RATING_C = 75;

    /** A current that does not change, in a cycle of any length. */
    private static final double ANY_TIME_S = 1;

    private JointSections() {}

    /** What is compared. */
    record Joints(List<JointInput> joints, boolean leadAcid) {}

    /** A circuit with its place in the request. */
    private record Placed(Circuit circuit, String pointer) {}

    static Joints resolve(Setup setup, Resolution resolution) {
        List<Joint> sent = Objects.requireNonNull(setup.joints());
        List<JointInput> joints = new ArrayList<>();
        for (int i = 0; i < sent.size(); i++) {
            joints.add(joint(i, sent.get(i), setup, resolution));
        }
        if (sent.size() < 3) {
            resolution.notAnswered("/medianResistance", "/joints/" + sent.size());
        }
        boolean leadAcid = setup.pack() != null
                && setup.pack().chemistry() != null
                && setup.pack().chemistry().isLeadAcid();
        return new Joints(joints, leadAcid);
    }

    private static JointInput joint(int index, Joint joint, Setup setup, Resolution resolution) {
        String pointer = "/joints/" + index;
        Placed placed = circuit(joint, pointer, setup, resolution);
        Circuit circuit = placed == null ? null : placed.circuit();
        List<Stretch> load = load(joint, placed, pointer, resolution);
        if (load.isEmpty()) {
            List.of("/rmsCurrent", "/peakCurrent", "/meanHeat", "/peakHeat", "/peakDrop")
                    .forEach(result -> resolution.notAnswered(
                            pointer + result,
                            pointer + "/circuit",
                            pointer + "/profile",
                            pointer + "/continuousCurrent"));
        }
        if (joint.current() == null) {
            resolution.notAnswered(pointer + "/readingHeat", pointer + "/current");
        }
        boolean warmth = joint.temperature() != null && joint.current() != null;
        if (!warmth) {
            List<String> missing = new ArrayList<>();
            if (joint.temperature() == null) {
                missing.add(pointer + "/temperature");
            }
            if (joint.current() == null) {
                missing.add(pointer + "/current");
            }
            List.of("/rise", "/settledTemperature", "/peakTemperature")
                    .forEach(result -> resolution.notAnswered(pointer + result, missing));
        } else if (load.isEmpty()) {
            List.of("/settledTemperature", "/peakTemperature")
                    .forEach(result -> resolution.notAnswered(pointer + result, pointer + "/circuit"));
        }
        String size = joint.size() != null ? joint.size() : circuit == null ? null : circuit.size();
        Conductor conductor = size == null ? null : Conductor.of(ConductorSize.parse(size));
        if (conductor == null) {
            resolution.notAnswered(pointer + "/sameAsCable", pointer + "/size");
        }
        if (conductor == null || joint.length() == null) {
            resolution.notAnswered(
                    pointer + "/cableFactor",
                    conductor == null ? List.of(pointer + "/size", pointer + "/length") : List.of(pointer + "/length"));
        }
        return new JointInput(
                index,
                joint.name(),
                joint.reference(),
                new Reading(
                        si(joint.voltageDrop()), si(joint.current()), si(joint.resistance()), si(joint.temperature())),
                load,
                warmth ? (Double) ambient(joint, circuit, pointer, resolution) : null,
                rating(joint, circuit, pointer, resolution),
                conductor,
                si(joint.length()),
                joint.cableLength() != null ? si(joint.cableLength()) : circuit == null ? null : si(circuit.length()));
    }

    private static @Nullable Double si(@Nullable Quantity quantity) {
        return quantity == null ? null : (Double) quantity.si();
    }

    /** The circuit a joint names, by pointer or by name; a name that fits none is refused. */
    private static @Nullable Placed circuit(Joint joint, String pointer, Setup setup, Resolution resolution) {
        String named = joint.circuit();
        if (named == null) {
            return null;
        }
        List<Circuit> circuits = setup.circuits() == null ? List.of() : setup.circuits();
        for (int i = 0; i < circuits.size(); i++) {
            String place = "/circuits/" + i;
            if (named.equals(place) || named.equals(circuits.get(i).name())) {
                return new Placed(circuits.get(i), place);
            }
        }
        resolution.refuse(new Fault(
                pointer + "/circuit",
                "unknown-circuit",
                "No circuit is called \"" + named + "\" and none stands at such a place; there are " + circuits.size(),
                named,
                null));
        return null;
    }

    private static List<Stretch> load(Joint joint, @Nullable Placed placed, String pointer, Resolution resolution) {
        if (joint.continuousCurrent() != null) {
            return List.of(new Stretch(joint.continuousCurrent().si(), ANY_TIME_S));
        }
        if (joint.profile() != null) {
            return profile(joint.profile(), pointer, resolution);
        }
        if (placed == null) {
            return List.of();
        }
        Current steady = placed.circuit().continuousCurrent();
        if (steady != null) {
            return List.of(new Stretch(steady.si(), ANY_TIME_S));
        }
        List<Circuit.Segment> segments = placed.circuit().profile();
        return segments == null ? List.of() : profile(segments, placed.pointer(), resolution);
    }

    private static List<Stretch> profile(List<Circuit.Segment> sent, String pointer, Resolution resolution) {
        List<Stretch> load = new ArrayList<>();
        for (int i = 0; i < sent.size(); i++) {
            Circuit.Segment segment = sent.get(i);
            if (segment.current() == null) {
                resolution.missing(pointer + "/profile/" + i + "/current");
            }
            if (segment.duration() == null) {
                resolution.missing(pointer + "/profile/" + i + "/duration");
            }
            if (segment.current() != null && segment.duration() != null) {
                load.add(new Stretch(segment.current().si(), segment.duration().si()));
            }
        }
        return load;
    }

    private static double ambient(Joint joint, @Nullable Circuit circuit, String pointer, Resolution resolution) {
        if (joint.ambient() != null) {
            return joint.ambient().si();
        }
        if (circuit != null && circuit.ambient() != null) {
            return resolution.assume(
                    "ambient-of-circuit",
                    pointer + "/ambient",
                    new Measure(circuit.ambient().si(), TEMPERATURE),
                    "that of its circuit",
                    Source.derived("the joint lies where its cable does"));
        }
        return resolution.assume(
                "ambient",
                pointer + "/ambient",
                new Measure(AMBIENT_C, TEMPERATURE),
                "a cool shop: the lower the air, the larger the rise that is carried to other currents",
                Source.COMMON_PRACTICE);
    }

    private static double rating(Joint joint, @Nullable Circuit circuit, String pointer, Resolution resolution) {
        if (joint.terminationRating() != null) {
            return joint.terminationRating().si();
        }
        Double ofTerminals = circuit == null ? null : si(circuit.terminationRating());
        Double ofInsulation = circuit == null ? null : si(circuit.insulationRating());
        if (ofTerminals != null || ofInsulation != null) {
            double lower = Math.min(
                    ofTerminals == null ? RATING_C : ofTerminals, ofInsulation == null ? RATING_C : ofInsulation);
            return resolution.assume(
                    "rating-of-circuit",
                    pointer + "/terminationRating",
                    new Measure(lower, TEMPERATURE),
                    "the lower of the circuit's terminals and insulation; what it does not say counts as 75 degC",
                    Source.memory("NEC 110.14(C): 60 degC up to 100 A, 75 degC above, unless marked"));
        }
        return resolution.assume(
                "termination-rating",
                pointer + "/terminationRating",
                new Measure(RATING_C, TEMPERATURE),
                "what many terminals bear",
                Source.memory("NEC 110.14(C): 60 degC up to 100 A, 75 degC above, unless marked"));
    }
}

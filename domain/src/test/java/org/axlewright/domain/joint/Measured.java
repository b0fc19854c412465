package org.axlewright.domain.joint;

import java.util.ArrayList;
import java.util.List;
import org.axlewright.domain.cable.Conductor;
import org.axlewright.domain.cable.ConductorSize;
import org.axlewright.domain.joint.JointHeat.Joint;
import org.axlewright.domain.joint.JointInput.Reading;
import org.axlewright.domain.joint.JointInput.Stretch;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Joints for tests: terminals of 75 degC, changed by one thing at a time. */
record Measured(
        Reading reading,
        List<Stretch> load,
        @Nullable Double ambientC,
        @Nullable String awg,
        @Nullable Double probesM,
        @Nullable Double cableM) {

    static Measured ohm(double ohm) {
        return new Measured(new Reading(null, null, ohm, null), List.of(), null, null, null, null);
    }

    static Measured drop(double volt, double ampere) {
        return new Measured(new Reading(volt, ampere, null, null), List.of(), null, null, null, null);
    }

    Measured warm(double temperatureC, double airC) {
        return new Measured(
                new Reading(reading.dropV(), reading.currentA(), reading.resistanceOhm(), temperatureC),
                load,
                airC,
                awg,
                probesM,
                cableM);
    }

    Measured carries(Stretch... stretches) {
        return new Measured(reading, List.of(stretches), ambientC, awg, probesM, cableM);
    }

    Measured cable(String size, @Nullable Double betweenProbesM, @Nullable Double longM) {
        return new Measured(reading, load, ambientC, size, betweenProbesM, longM);
    }

    JointInput input(int index) {
        return new JointInput(
                index,
                null,
                null,
                reading,
                load,
                ambientC,
                75,
                awg == null ? null : Conductor.of(ConductorSize.parse(awg + " AWG")),
                probesM,
                cableM);
    }

    Joint joint() {
        return of(this).joints().get(0);
    }

    static JointHeat.Result of(Measured... joints) {
        return JointHeat.of(inputs(joints), false, Trace.withoutWorking());
    }

    static List<String> findings(Measured... joints) {
        Trace trace = Trace.withWorking();
        JointHeat.of(inputs(joints), true, trace);
        return trace.findings().stream().map(Finding::code).toList();
    }

    private static List<JointInput> inputs(Measured... joints) {
        List<JointInput> inputs = new ArrayList<>();
        for (Measured joint : joints) {
            inputs.add(joint.input(inputs.size()));
        }
        return inputs;
    }
}

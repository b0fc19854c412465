package org.axlewright.api.section;

import java.util.List;
import org.axlewright.api.problem.Fault;
import org.jspecify.annotations.Nullable;

/** Two answers for one thing are a contradiction, not a choice; each room's pairs stand here together. */
final class Contradictions {

    private Contradictions() {}

    static void find(Setup setup, List<Fault> faults) {
        bare(setup.bare(), faults);
    }

    private static void bare(@Nullable Bare bare, List<Fault> faults) {
        if (bare == null) {
            return;
        }
        String oneWay = "; give the weight one way: scales, or axles, or mass with frontShare, or mass with position";
        exclude(faults, "/bare/axles", bare.axles(), "/bare/scales", bare.scales(), oneWay);
        exclude(faults, "/bare/mass", bare.mass(), "/bare/scales", bare.scales(), oneWay);
        exclude(faults, "/bare/mass", bare.mass(), "/bare/axles", bare.axles(), oneWay);
        exclude(faults, "/bare/frontShare", bare.frontShare(), "/bare/scales", bare.scales(), oneWay);
        exclude(faults, "/bare/frontShare", bare.frontShare(), "/bare/axles", bare.axles(), oneWay);
        Object x = bare.position() == null ? null : bare.position().x();
        exclude(faults, "/bare/position/x", x, "/bare/scales", bare.scales(), oneWay);
        exclude(faults, "/bare/position/x", x, "/bare/axles", bare.axles(), oneWay);
        exclude(faults, "/bare/position/x", x, "/bare/frontShare", bare.frontShare(), oneWay);
        Object y = bare.position() == null ? null : bare.position().y();
        exclude(faults, "/bare/position/y", y, "/bare/scales", bare.scales(), oneWay);
        String oneHeight = "; give the height one way: height, or position/z, or raisedAxle";
        Object z = bare.position() == null ? null : bare.position().z();
        exclude(faults, "/bare/raisedAxle", bare.raisedAxle(), "/bare/height", bare.height(), oneHeight);
        exclude(faults, "/bare/position/z", z, "/bare/height", bare.height(), oneHeight);
        exclude(faults, "/bare/position/z", z, "/bare/raisedAxle", bare.raisedAxle(), oneHeight);
    }

    /** A fault at the first pointer when both are there. */
    static void exclude(
            List<Fault> faults,
            String pointer,
            @Nullable Object value,
            String otherPointer,
            @Nullable Object other,
            String advice) {
        if (value != null && other != null) {
            faults.add(
                    Fault.contradiction(pointer, pointer + " and " + otherPointer + " answer the same thing" + advice));
        }
    }
}

package org.axlewright.domain.frame;

import static org.axlewright.domain.quantity.Dimension.ACCELERATION;
import static org.axlewright.domain.quantity.Dimension.FORCE;
import static org.axlewright.domain.quantity.Dimension.MASS;
import static org.axlewright.domain.quantity.Dimension.NONE;

import java.util.ArrayList;
import java.util.List;
import org.axlewright.domain.frame.FrameOverhang.Box;
import org.axlewright.domain.frame.FrameOverhang.HoldDown;
import org.axlewright.domain.frame.FrameOverhang.Input;
import org.axlewright.domain.trace.Datum;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;

/** What the box must be held with, case by case. */
final class HoldDowns {

    private static final Step FORCE_STEP = Step.of(
            "F_h",
            "force that the hold-down must bear",
            "F_h = c·m·g",
            FORCE,
            Source.published("statics: mass times acceleration"),
            new Symbol("c", NONE),
            new Symbol("m", MASS),
            new Symbol("g", ACCELERATION));

    private HoldDowns() {}

    static List<HoldDown> of(Input input, Box box, Trace trace) {
        List<HoldDown> cases = new ArrayList<>();
        for (String name : List.of("forward", "rearward", "sideways", "braking", "cornering", "kerb")) {
            Datum factor = LoadCase.holdDown(name);
            cases.add(one(name, factor.value(), factor.source().toString(), input, box, trace));
        }
        cases.add(one(
                "bump",
                input.verticalFactor(),
                "the vertical load factor of this answer, up as well as down",
                input,
                box,
                trace));
        return cases;
    }

    private static HoldDown one(String name, double factor, String source, Input input, Box box, Trace trace) {
        double force = trace.of(name)
                .note(FORCE_STEP, factor * box.massKg() * input.gravity(), factor, box.massKg(), input.gravity());
        return new HoldDown(name, factor, force, source);
    }
}

package org.axlewright.api.section;

import java.util.List;
import org.axlewright.api.problem.Fault;
import org.axlewright.domain.frame.TubeShape;
import org.axlewright.domain.quantity.Length;
import org.jspecify.annotations.Nullable;

/** What no tube, weld, prop or pair of ties can be, and two answers for one strength. */
final class FrameForm {

    /** Ties nearer than this, m, are one. */
    private static final double NEAREST_TIES_M = 0.01;

    /** A prop flatter than this, m, props nothing. */
    private static final double LEAST_DROP_M = 0.02;

    private FrameForm() {}

    static void find(@Nullable Frame frame, List<Fault> faults) {
        if (frame == null) {
            return;
        }
        String oneFactor = "; give a load case, or factors of your own";
        Contradictions.exclude(
                faults, "/frame/dynamicFactor", frame.dynamicFactor(), "/frame/loadCase", frame.loadCase(), oneFactor);
        Contradictions.exclude(
                faults, "/frame/torsionFactor", frame.torsionFactor(), "/frame/loadCase", frame.loadCase(), oneFactor);
        List<Frame.Rail> rails = frame.rails() == null ? List.of() : frame.rails();
        for (int i = 0; i < rails.size(); i++) {
            Frame.Rail rail = rails.get(i);
            String pointer = "/frame/rails/" + i;
            oneStrength(faults, pointer, rail.grade(), rail.yieldStrength());
            tube(rail.section(), pointer + "/section", faults);
        }
        if (frame.box() != null) {
            box(frame.box(), faults);
        }
    }

    private static void oneStrength(
            List<Fault> faults, String pointer, @Nullable Object grade, @Nullable Object yieldStrength) {
        Contradictions.exclude(
                faults,
                pointer + "/yieldStrength",
                yieldStrength,
                pointer + "/grade",
                grade,
                "; give the grade, or the strength of a certificate");
    }

    private static void tube(Frame.@Nullable Tube tube, String pointer, List<Fault> faults) {
        if (tube == null || tube.shape() == null) {
            return;
        }
        boolean rectangular = tube.shape() == TubeShape.RECTANGULAR;
        if (!rectangular && tube.height() != null) {
            faults.add(Fault.contradiction(
                    pointer + "/height", "A " + tube.shape() + " tube has a width only; its height is the same"));
        }
        if (tube.shape() == TubeShape.ROUND && tube.cornerRadius() != null) {
            faults.add(Fault.contradiction(pointer + "/cornerRadius", "A round tube has no corners"));
        }
        Length width = complete(tube.width());
        Length height = rectangular ? complete(tube.height()) : width;
        if (width == null || height == null) {
            return;
        }
        double half = Math.min(width.si(), height.si()) / 2;
        Length wall = complete(tube.wall());
        if (wall != null && !(wall.si() < half)) {
            faults.add(tooMuch(pointer + "/wall", "A wall of ", wall, half, " leaves no bore"));
        }
        Length radius = complete(tube.cornerRadius());
        if (radius != null && !(radius.si() <= half)) {
            faults.add(tooMuch(pointer + "/cornerRadius", "A corner radius of ", radius, half, " is too much"));
        }
    }

    private static Fault tooMuch(String pointer, String what, Length actual, double halfM, String why) {
        Length half = new Length(actual.unit().fromSi(halfM), actual.unit());
        return new Fault(
                pointer,
                "contradiction",
                what + Form.readable(actual.value()) + " " + actual.unit() + why + "; half of the tube is "
                        + Form.readable(half.value()) + " " + half.unit(),
                actual,
                half);
    }

    private static void box(Frame.HungBox box, List<Fault> faults) {
        List<Frame.Tie> ties = box.ties() == null ? List.of() : box.ties();
        for (int i = 0; i < ties.size(); i++) {
            Frame.Weld weld = ties.get(i).weld();
            Length throat = weld == null ? null : complete(weld.throat());
            Length length = weld == null ? null : complete(weld.length());
            if (throat != null && length != null && !(length.si() > 2 * throat.si())) {
                faults.add(
                        Fault.contradiction(
                                "/frame/box/ties/" + i + "/weld/length",
                                "A seam no longer than twice its throat is all end: EN 1993-1-8 leaves nothing of it; check the units"));
            }
        }
        Length first = ties.size() < 2 ? null : complete(ties.get(0).x());
        Length second = ties.size() < 2 ? null : complete(ties.get(1).x());
        if (first != null && second != null && Math.abs(first.si() - second.si()) < NEAREST_TIES_M) {
            faults.add(Fault.contradiction(
                    "/frame/box/ties/1/x", "Two ties less than 10 mm apart are one; statics can't tell their forces"));
        }
        Frame.Prop prop = box.prop();
        if (prop == null) {
            return;
        }
        oneStrength(faults, "/frame/box/prop", prop.grade(), prop.yieldStrength());
        tube(prop.section(), "/frame/box/prop/section", faults);
        Length drop = complete(prop.drop());
        if (drop != null && Math.abs(drop.si()) < LEAST_DROP_M) {
            faults.add(Fault.contradiction(
                    "/frame/box/prop/drop",
                    "A prop whose foot lies less than 20 mm below or above the rail props nothing"));
        }
    }

    private static @Nullable Length complete(@Nullable Length length) {
        return length == null || length.unit() == null || Double.isNaN(length.value()) ? null : length;
    }
}

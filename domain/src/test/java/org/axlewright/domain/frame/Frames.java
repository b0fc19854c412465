package org.axlewright.domain.frame;

import java.util.List;
import org.axlewright.domain.frame.FrameOverhang.Box;
import org.axlewright.domain.frame.FrameOverhang.Input;
import org.axlewright.domain.frame.FrameOverhang.LiftedWheel;
import org.axlewright.domain.frame.FrameOverhang.Prop;
import org.axlewright.domain.frame.FrameOverhang.Stretch;
import org.axlewright.domain.frame.FrameOverhang.Tie;
import org.axlewright.domain.frame.FrameOverhang.Weld;
import org.axlewright.domain.quantity.Constants;
import org.jspecify.annotations.Nullable;

/** Frames for tests. */
final class Frames {

    static final double STEEL = 200e9;

    private Frames() {}

    static Tube tube(double widthMm, double heightMm, double wallMm, double radiusMm) {
        TubeShape shape = widthMm == heightMm ? TubeShape.SQUARE : TubeShape.RECTANGULAR;
        return new Tube(shape, widthMm / 1000, heightMm / 1000, wallMm / 1000, radiusMm / 1000);
    }

    static Rail rail(String name, Tube tube, double yM, @Nullable Double yieldPa) {
        return new Rail("/frame/rails/0", name, null, tube, yM, yieldPa, new Rail.WeldStrength(360e6, 0.8));
    }

    static List<Rail> pair(Tube tube, double yM) {
        return List.of(rail("left", tube, -yM, 235e6), rail("right", tube, yM, 235e6));
    }

    static Tie tie(double xM) {
        return new Tie("/frame/box/ties/0", null, xM, new Weld(0.003, 0.060));
    }

    static Box box(double massKg, double armM, double yM, List<Tie> ties, @Nullable Prop prop) {
        return new Box(massKg, armM, yM, 0, ties, prop);
    }

    static Input hung(List<Rail> rails, Box box, double factor) {
        return new Input(rails, STEEL, factor, 1.8, 1.5, box, null, null, Constants.STANDARD_GRAVITY);
    }

    static Input stretched(List<Rail> rails, Stretch stretch) {
        return new Input(rails, STEEL, 3, 1.8, 1.5, null, stretch, null, Constants.STANDARD_GRAVITY);
    }

    static Input twisted(List<Rail> rails, LiftedWheel lifted) {
        return new Input(rails, STEEL, 3, 1, 1.5, null, null, lifted, Constants.STANDARD_GRAVITY);
    }
}

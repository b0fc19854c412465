package org.axlewright.domain.frame;

import static org.axlewright.domain.quantity.Dimension.ANGLE;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.LOAD;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.SECOND_MOMENT_OF_AREA;
import static org.axlewright.domain.quantity.Dimension.STRESS;
import static org.axlewright.domain.quantity.Dimension.TORQUE;

import java.util.ArrayList;
import java.util.List;
import org.axlewright.domain.frame.FrameOverhang.Input;
import org.axlewright.domain.frame.FrameOverhang.LiftedWheel;
import org.axlewright.domain.frame.FrameOverhang.Twist;
import org.axlewright.domain.frame.FrameOverhang.TwistRail;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;

/** One wheel lifted: its axle's whole load on one wheel twists the frame between the axles. The rails share by stiffness. */
final class FrameTwist {

    private static final Step COUPLE = Step.of(
            "T_F",
            "couple on the frame: the lighter axle stands on one wheel",
            "T_F = n_T·R·t/2",
            TORQUE,
            Source.published("Brown et al., Motor Vehicle Structures: the torsion case"),
            new Symbol("n_T", NONE),
            new Symbol("R", LOAD),
            new Symbol("t", LENGTH));
    private static final Step ANGLE_STEP = Step.of(
            "φ_F",
            "twist of the frame between the axles, rails alone",
            "φ_F = T_F·L/(G·ΣI_t), G = E/2.6",
            ANGLE,
            Source.published("mechanics of materials: Saint-Venant torsion"),
            new Symbol("T_F", TORQUE),
            new Symbol("L", LENGTH),
            new Symbol("E", STRESS),
            new Symbol("ΣI_t", SECOND_MOMENT_OF_AREA));
    private static final Step SHARE = Step.of(
            "T",
            "torque in the rail",
            "T = T_F·I_t/ΣI_t",
            TORQUE,
            Source.derived("parallel springs: all rails twist alike"),
            new Symbol("T_F", TORQUE),
            new Symbol("I_t", SECOND_MOMENT_OF_AREA),
            new Symbol("ΣI_t", SECOND_MOMENT_OF_AREA));

    private FrameTwist() {}

    static Twist of(Input input, LiftedWheel lifted, Trace trace, List<Trace> traces) {
        double torque = trace.note(
                COUPLE,
                input.torsionFactor() * lifted.loadN() * lifted.trackM() / 2,
                input.torsionFactor(),
                lifted.loadN(),
                lifted.trackM());
        double constant = input.rails().stream()
                .mapToDouble(rail -> rail.tube().torsionM4())
                .sum();
        double twist = trace.note(
                ANGLE_STEP,
                torque * lifted.lengthM() / (input.shearModulusPa() * constant),
                torque,
                lifted.lengthM(),
                input.elasticModulusPa(),
                constant);
        List<TwistRail> rails = new ArrayList<>();
        for (int i = 0; i < traces.size(); i++) {
            Rail rail = input.rails().get(i);
            double own = traces.get(i)
                    .note(
                            SHARE,
                            torque * rail.tube().torsionM4() / constant,
                            torque,
                            rail.tube().torsionM4(),
                            constant);
            double shear = Stresses.torsionPa(rail.tube(), own, traces.get(i));
            rails.add(new TwistRail(
                    rail,
                    own,
                    shear,
                    twist,
                    Stresses.strength(0, 0, 0, shear, rail.yieldPa(), input.safetyFactor(), traces.get(i))));
        }
        return new Twist(lifted.axle(), torque, lifted.lengthM(), twist, rails);
    }
}

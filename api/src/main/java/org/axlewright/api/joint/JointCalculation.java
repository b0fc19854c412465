package org.axlewright.api.joint;

import java.util.List;
import java.util.function.DoubleFunction;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.Needs;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.joint.JointResult.MeasuredJoint;
import org.axlewright.api.joint.JointSections.Joints;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.joint.JointHeat;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Joints: from millivolts at amperes to resistance, heat and temperature. */
public final class JointCalculation implements Calculation<Joints, JointHeat.Result, JointResult> {

    private static final Needs NEEDS = Needs.some(
            "/joints",
            Needs.one(Needs.all("/joints/0/voltageDrop", "/joints/0/current"), Needs.value("/joints/0/resistance")));

    @Override
    public String name() {
        return "joint";
    }

    @Override
    public String question() {
        return "How much does a terminal resist and heat, and which one is bad?";
    }

    @Override
    public Needs needs() {
        return NEEDS;
    }

    @Override
    public List<String> leads() {
        return List.of(
                "/joints/0/resistance",
                "/joints/0/peakHeat",
                "/joints/0/meanHeat",
                "/joints/0/settledTemperature",
                "/joints/0/peakDrop");
    }

    @Override
    public Class<JointResult> resultType() {
        return JointResult.class;
    }

    @Override
    public Joints resolve(Setup setup, Resolution resolution) {
        return JointSections.resolve(setup, resolution);
    }

    @Override
    public JointHeat.Result calculate(Joints input, Trace trace) {
        return JointHeat.of(input.joints(), input.leadAcid(), trace);
    }

    @Override
    public JointResult show(JointHeat.Result result, UnitSystem units) {
        return new JointResult(
                result.joints().stream().map(joint -> joint(joint, units)).toList(),
                result.oddIndex() == null ? null : "/joints/" + result.oddIndex(),
                shown(result.medianOhm(), units::resistance),
                shown(result.meanW(), units::power));
    }

    private static MeasuredJoint joint(JointHeat.Joint joint, UnitSystem units) {
        return new MeasuredJoint(
                joint.input().name(),
                joint.input().reference(),
                units.resistance(joint.resistanceOhm()),
                shown(joint.readingW(), units::power),
                shown(joint.rmsA(), units::current),
                shown(joint.peakA(), units::current),
                shown(joint.meanW(), units::power),
                shown(joint.peakW(), units::power),
                shown(joint.peakDropV(), units::voltage),
                shown(joint.riseK(), units::temperatureDifference),
                shown(joint.settledC(), units::temperature),
                shown(joint.peakC(), units::temperature),
                shown(joint.asCableM(), units::length),
                joint.factor(),
                joint.ofMedian(),
                shown(joint.aboveOthersK(), units::temperatureDifference));
    }

    private static <Q> @Nullable Q shown(@Nullable Double si, DoubleFunction<Q> unit) {
        return si == null ? null : unit.apply(si);
    }
}

package org.axlewright.api.frame;

import java.util.List;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.Needs;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.frame.FrameOverhangResult.HoldDownForce;
import org.axlewright.api.frame.FrameOverhangResult.NotAssessed;
import org.axlewright.api.frame.FrameOverhangResult.OverhangLoads;
import org.axlewright.api.frame.FrameOverhangResult.OverhangRail;
import org.axlewright.api.frame.FrameOverhangResult.PropLoad;
import org.axlewright.api.frame.FrameOverhangResult.RailSection;
import org.axlewright.api.frame.FrameOverhangResult.StretchAngle;
import org.axlewright.api.frame.FrameOverhangResult.StretchLength;
import org.axlewright.api.frame.FrameOverhangResult.StretchLoads;
import org.axlewright.api.frame.FrameOverhangResult.StretchRail;
import org.axlewright.api.frame.FrameOverhangResult.TieLoad;
import org.axlewright.api.frame.FrameOverhangResult.TorsionLoads;
import org.axlewright.api.frame.FrameOverhangResult.TorsionRail;
import org.axlewright.api.frame.FrameOverhangResult.WorstRail;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.frame.FrameOverhang;
import org.axlewright.domain.frame.FrameOverhang.Input;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Rails, hung box, stretch. */
public final class FrameOverhangCalculation
        implements Calculation<Input, FrameOverhangCalculation.Answered, FrameOverhangResult> {

    private static final Needs RAIL =
            Needs.all("/frame/rails/0/section/shape", "/frame/rails/0/section/width", "/frame/rails/0/section/wall");

    /** What was begun must be whole. */
    private static final Needs WHOLE = Needs.all(
            Needs.each("/frame/rails", RAIL),
            Needs.each(
                    "/frame/box/ties",
                    Needs.all(
                            Needs.value("/frame/box/ties/0/x"),
                            Needs.completed(
                                    "/frame/box/ties/0/weld",
                                    Needs.all("/frame/box/ties/0/weld/throat", "/frame/box/ties/0/weld/length")))),
            Needs.completed("/frame/box/prop", Needs.all("/frame/box/prop/x", "/frame/box/prop/drop")),
            Needs.completed(
                    "/frame/box/prop/section",
                    Needs.all(
                            "/frame/box/prop/section/shape",
                            "/frame/box/prop/section/width",
                            "/frame/box/prop/section/wall")),
            Needs.each(
                    "/frame/stretch/pointMasses",
                    Needs.all("/frame/stretch/pointMasses/0/mass", "/frame/stretch/pointMasses/0/x")));

    private static final Needs STRETCH = Needs.all(
            Needs.value("/frame/stretch/lengthAdded"),
            Needs.one(Needs.value("/chassis/wheelbase"), Needs.value("/frame/stretch/wheelbaseBefore")));

    private static final Needs NEEDS = Needs.one(
            Needs.all(Needs.some("/frame/rails", RAIL), Needs.all("/frame/box/mass", "/frame/box/arm"), WHOLE),
            Needs.all(Needs.some("/frame/rails", RAIL), STRETCH, WHOLE),
            Needs.all(Needs.value("/frame/box/mass"), WHOLE),
            Needs.all(STRETCH, WHOLE));

    private static final List<NotAssessed> NOT_ASSESSED = List.of(
            new NotAssessed(
                    "fatigue",
                    "How many load cycles a welded rail lasts depends on the weld's detail and finish and on a load history that nobody has"
                            + " measured on these vehicles; a joint can crack at a fraction of the yield strength."),
            new NotAssessed(
                    "cage-strength",
                    "A cage or rollover structure is shown by test or by an engineer's plastic analysis of the whole; a beam sum can't, and no"
                            + " figure here says that one holds."),
            new NotAssessed(
                    "crossmembers",
                    "Crossmembers, their joints, brackets, bolts and the wall under a tie are not calculated: how they are made decides."),
            new NotAssessed(
                    "impact", "A crash, a dropped jack or a drawbar that hits the rail is none of the load cases."));

    /**
     * The domain's answer with what the page of the answer repeats of the input.
     *
     * @param input as calculated
     */
    public record Answered(Input input, FrameOverhang.Result result) {}

    @Override
    public String name() {
        return "frame-overhang";
    }

    @Override
    public String question() {
        return "Do the stretched rail and the overhung battery box stand the loads?";
    }

    @Override
    public Needs needs() {
        return NEEDS;
    }

    @Override
    public List<String> leads() {
        return List.of(
                "/worstRail/name",
                "/worstRail/utilisation",
                "/worstRail/safetyFactor",
                "/overhang/moment",
                "/holdDown");
    }

    @Override
    public Class<FrameOverhangResult> resultType() {
        return FrameOverhangResult.class;
    }

    @Override
    public Input resolve(Setup setup, Resolution resolution) {
        return FrameSections.resolve(setup, resolution, STRETCH.missing(setup));
    }

    @Override
    public Answered calculate(Input input, Trace trace) {
        return new Answered(input, FrameOverhang.of(input, trace));
    }

    @Override
    public FrameOverhangResult show(Answered answered, UnitSystem units) {
        FrameOverhang.Result result = answered.result();
        Input input = answered.input();
        FrameOverhang.Worst worst = result.worst();
        FrameOverhang.Overhang overhang = result.overhang();
        FrameOverhang.Twist twist = result.torsion();
        return new FrameOverhangResult(
                worst == null
                        ? null
                        : new WorstRail(
                                worst.rail().name(),
                                worst.in(),
                                units.stress(worst.strength().equivalentPa()),
                                worst.strength().safetyFactor(),
                                worst.strength().utilisation()),
                overhang == null
                        ? null
                        : new OverhangLoads(
                                units.torque(overhang.momentNm()),
                                units.force(overhang.shearN()),
                                input.verticalFactor(),
                                overhang.rails().stream()
                                        .map(rail -> overhang(rail, units))
                                        .toList()),
                stretch(result.stretch(), units),
                twist == null
                        ? null
                        : new TorsionLoads(
                                twist.axle(),
                                units.torque(twist.torqueNm()),
                                input.torsionFactor(),
                                units.length(twist.lengthM()),
                                units.angle(twist.twistRad()),
                                twist.rails().stream()
                                        .map(rail -> torsion(rail, units))
                                        .toList()),
                result.holdDown().isEmpty()
                        ? null
                        : result.holdDown().stream()
                                .map(one -> new HoldDownForce(
                                        one.in(), one.factor(), units.force(one.forceN()), one.source()))
                                .toList(),
                input.rails().stream()
                        .map(rail -> new RailSection(
                                rail.name(),
                                units.clearance(rail.tube().wallM()),
                                units.area(rail.tube().areaM2()),
                                rail.yieldPa() == null ? null : units.stress(rail.yieldPa())))
                        .toList(),
                NOT_ASSESSED);
    }

    private static OverhangRail overhang(FrameOverhang.OverhangRail rail, UnitSystem units) {
        FrameOverhang.PropForce prop = rail.prop();
        return new OverhangRail(
                rail.rail().name(),
                rail.rail().reference(),
                rail.share(),
                units.torque(rail.momentNm()),
                units.length(rail.momentAtM()),
                units.force(rail.shearN()),
                units.stress(rail.bendingPa()),
                units.stress(rail.axialPa()),
                units.stress(rail.averageShearPa()),
                units.stress(rail.peakShearPa()),
                rail.torqueNm() == null ? null : units.torque(rail.torqueNm()),
                rail.torsionPa() == null ? null : units.stress(rail.torsionPa()),
                rail.twistRad() == null ? null : units.angle(rail.twistRad()),
                units.clearance(rail.deflectionM()),
                units.stress(rail.strength().equivalentPa()),
                rail.strength().safetyFactor(),
                rail.strength().utilisation(),
                rail.ties().stream()
                        .map(tie -> new TieLoad(
                                tie.tie().name(),
                                units.force(tie.downN()),
                                tie.throatPa() == null ? null : units.stress(tie.throatPa()),
                                tie.allowablePa() == null ? null : units.stress(tie.allowablePa()),
                                tie.utilisation()))
                        .toList(),
                prop == null
                        ? null
                        : new PropLoad(
                                units.force(prop.forceN()),
                                prop.axialPa() == null ? null : units.stress(prop.axialPa()),
                                prop.bucklingN() == null ? null : units.force(prop.bucklingN()),
                                prop.utilisation()));
    }

    private static @Nullable StretchLoads stretch(FrameOverhang.@Nullable Stretched stretch, UnitSystem units) {
        if (stretch == null) {
            return null;
        }
        return new StretchLoads(
                length(stretch.wheelbaseM(), units),
                stretch.uniformFactor(),
                stretch.pointFactor(),
                stretch.turningRadiusM() == null ? null : length(stretch.turningRadiusM(), units),
                stretch.offTrackingM() == null ? null : length(stretch.offTrackingM(), units),
                stretch.breakoverRad() == null ? null : angle(stretch.breakoverRad(), units),
                stretch.breakoverSimpleRad() == null ? null : angle(stretch.breakoverSimpleRad(), units),
                stretch.rails().isEmpty()
                        ? null
                        : stretch.rails().stream()
                                .map(rail -> stretched(rail, units))
                                .toList());
    }

    private static StretchLength length(FrameOverhang.Change change, UnitSystem units) {
        return new StretchLength(units.length(change.before()), units.length(change.after()));
    }

    private static StretchAngle angle(FrameOverhang.Change change, UnitSystem units) {
        return new StretchAngle(units.angle(change.before()), units.angle(change.after()));
    }

    private static StretchRail stretched(FrameOverhang.StretchRail rail, UnitSystem units) {
        return new StretchRail(
                rail.rail().name(),
                rail.rail().reference(),
                units.force(rail.loadN()),
                units.torque(rail.momentNm()),
                units.length(rail.momentAtM()),
                units.torque(rail.momentBeforeNm()),
                units.torque(rail.jointMomentNm()),
                units.force(rail.shearN()),
                units.stress(rail.bendingPa()),
                units.stress(rail.jointBendingPa()),
                units.stress(rail.averageShearPa()),
                units.stress(rail.peakShearPa()),
                units.clearance(rail.deflectionM()),
                units.clearance(rail.deflectionBeforeM()),
                units.stress(rail.strength().equivalentPa()),
                rail.strength().safetyFactor(),
                rail.strength().utilisation());
    }

    private static TorsionRail torsion(FrameOverhang.TwistRail rail, UnitSystem units) {
        return new TorsionRail(
                rail.rail().name(),
                rail.rail().reference(),
                units.torque(rail.torqueNm()),
                units.stress(rail.shearPa()),
                units.angle(rail.twistRad()),
                units.stress(rail.strength().equivalentPa()),
                rail.strength().safetyFactor(),
                rail.strength().utilisation());
    }
}

package org.axlewright.domain.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.axlewright.domain.PublishedChecks;
import org.axlewright.domain.PublishedChecks.Case;
import org.axlewright.domain.frame.FrameOverhang.Box;
import org.axlewright.domain.frame.FrameOverhang.Input;
import org.axlewright.domain.frame.FrameOverhang.Overhang;
import org.axlewright.domain.frame.FrameOverhang.OverhangRail;
import org.axlewright.domain.frame.FrameOverhang.Prop;
import org.axlewright.domain.frame.FrameOverhang.Stretch;
import org.axlewright.domain.frame.FrameOverhang.Stretched;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Sections, beams, welds and the hung box against their sources. */
class FramePublishedTest {

    private static final String CHECKS = "/frame/checks.csv";
    private static final Trace SILENT = Trace.withoutWorking();

    static List<Case> solidBeams() {
        return PublishedChecks.read(CHECKS, "solid beam");
    }

    @ParameterizedTest
    @MethodSource("solidBeams")
    void bendsASolidBeamOnTwoSupports(Case row) {
        RoundedRectangle section = new RoundedRectangle(row.in("b"), row.in("h"), 0);
        SimpleSpan span =
                new SimpleSpan(row.in("l"), 0, List.of(new SimpleSpan.Point(row.in("l") / 2, row.in("f"))), 1e6);

        row.check("sigma", span.largestMoment().value() / section.sectionModulusM3() / 1000);
    }

    static List<Case> hollowSections() {
        return PublishedChecks.read(CHECKS, "hollow section");
    }

    @ParameterizedTest
    @MethodSource("hollowSections")
    void knowsTheModulusOfAHollowSection(Case row) {
        Tube tube = Frames.tube(row.in("b"), row.in("h"), row.in("t"), 0);

        row.check("z", tube.sectionModulusM3() * 1e9);
        assertThat(tube.secondMomentM4() * 1e12).isCloseTo(row.out("i"), within(0.5));
    }

    static List<Case> overhangs() {
        return PublishedChecks.read(CHECKS, "overhang");
    }

    @ParameterizedTest
    @MethodSource("overhangs")
    void hangsABoxBehindTwoRails(Case row) {
        List<Rail> rails = Frames.pair(Frames.tube(row.in("b"), row.in("h"), row.in("t"), 0), 0.25);
        Box box = Frames.box(row.in("m"), row.in("arm"), 0, List.of(), null);
        Input input = new Input(rails, Frames.STEEL, row.in("n_dyn"), 1, 1.5, box, null, null, row.in("g"));

        Overhang overhang =
                Objects.requireNonNull(FrameOverhang.of(input, SILENT).overhang());

        row.check("moment", overhang.momentNm());
        for (OverhangRail rail : overhang.rails()) {
            row.check("sigma", rail.bendingPa() / 1e6);
            assertThat(rail.strength().safetyFactor()).isCloseTo(4.9, within(0.05));
        }
    }

    static List<Case> sharpTubes() {
        return PublishedChecks.read(CHECKS, "sharp tube");
    }

    @ParameterizedTest
    @MethodSource("sharpTubes")
    void knowsTubesWithSharpCorners(Case row) {
        Tube tube = Frames.tube(row.in("b"), row.in("h"), row.in("t"), row.in("r"));

        row.check("i", tube.secondMomentM4() * 1e12);
        row.check("z", tube.sectionModulusM3() * 1e9);
        row.check("a", tube.areaM2() * 1e6);
    }

    static List<Case> tableTubes() {
        return PublishedChecks.read(CHECKS, "table tube");
    }

    @ParameterizedTest
    @MethodSource("tableTubes")
    void agreesWithTheTableOfTubesWithRoundCorners(Case row) {
        check(row, Frames.tube(row.in("b"), row.in("h"), row.in("t"), row.in("r")));
    }

    static List<Case> roundTubes() {
        return PublishedChecks.read(CHECKS, "table round tube");
    }

    @ParameterizedTest
    @MethodSource("roundTubes")
    void agreesWithTheTableOfRoundTubes(Case row) {
        double diameter = row.in("d") / 1000;
        check(row, new Tube(TubeShape.ROUND, diameter, diameter, row.in("t") / 1000, 0));
    }

    private static void check(Case row, Tube tube) {
        row.check("a", tube.areaM2() * 1e4);
        row.check("i", tube.secondMomentM4() * 1e8);
        row.check("z", tube.sectionModulusM3() * 1e6);
        row.check("it", tube.torsionM4() * 1e8);
    }

    static List<Case> proppedBeams() {
        return PublishedChecks.read(CHECKS, "propped cantilever");
    }

    /** A prop that does not give, straight below the end of the beam: the rail's own stretch plays no part. */
    @ParameterizedTest
    @MethodSource("proppedBeams")
    void sharesTheLoadWithAPropAsTheBeamTableDoes(Case row) {
        List<Rail> one = List.of(Frames.rail("one", Frames.tube(50, 50, 3, 0), 0, 235e6));
        Prop prop = new Prop(row.in("l"), row.in("l"), 0.5, null, null);
        Box box = Frames.box(row.in("f"), row.in("a"), 0, List.of(), prop);
        Input input = new Input(one, Frames.STEEL, 1, 1, 1.5, box, null, null, 1);

        OverhangRail rail = Objects.requireNonNull(
                        FrameOverhang.of(input, SILENT).overhang())
                .rails()
                .get(0);

        row.check("r", Objects.requireNonNull(rail.prop()).forceN());
        double root = row.in("f") * row.in("a") - rail.prop().forceN() * row.in("l");
        row.check("m", root);
    }

    static List<Case> cantilevers() {
        return PublishedChecks.read(CHECKS, "cantilever");
    }

    @ParameterizedTest
    @MethodSource("cantilevers")
    void bendsACantilever(Case row) {
        double a = row.in("a");
        Cantilever beam =
                new Cantilever(List.of(new Cantilever.Load(a, row.in("f"), row.in("c"))), row.in("ei"), row.in("b"));

        row.check("m", beam.momentNm(0));
        row.check("v", beam.deflectionM(a) * 1000);
    }

    static List<Case> simpleBeams() {
        return PublishedChecks.read(CHECKS, "simple beam");
    }

    @ParameterizedTest
    @MethodSource("simpleBeams")
    void bendsABeamOnTwoSupports(Case row) {
        SimpleSpan span = new SimpleSpan(
                row.in("l"), row.in("w"), List.of(new SimpleSpan.Point(row.in("x"), row.in("f"))), row.in("ei"));

        row.check("m", span.largestMoment().value());
        row.check("at", span.largestMoment().xM());
        row.check("v", span.largestDeflection().value() * 1000);
    }

    static List<Case> welds() {
        return PublishedChecks.read(CHECKS, "weld strength");
    }

    @ParameterizedTest
    @MethodSource("welds")
    void knowsTheDesignStrengthOfAFilletWeld(Case row) {
        row.check("f", HungBox.allowablePa(new Rail.WeldStrength(row.in("fu") * 1e6, row.in("beta"))) / 1e6);
    }

    static List<Case> turns() {
        return PublishedChecks.read(CHECKS, "turning radius");
    }

    @ParameterizedTest
    @MethodSource("turns")
    void widensTheTurn(Case row) {
        Stretch stretch = new Stretch(
                row.in("l0"), row.in("dl"), 0.8, null, List.of(), null, Math.toRadians(row.in("angle")), null);

        Stretched result = Objects.requireNonNull(
                FrameOverhang.of(Frames.stretched(List.of(), stretch), SILENT).stretch());

        row.check("r0", Objects.requireNonNull(result.turningRadiusM()).before());
        row.check("r1", result.turningRadiusM().after());
    }

    static List<Case> holdDowns() {
        return PublishedChecks.read(CHECKS, "hold-down");
    }

    @ParameterizedTest
    @MethodSource("holdDowns")
    void holdsBatteriesDownOverABump(Case row) {
        row.check("one", bumpN(row.in("m"), row.in("n")));
        row.check("all", bumpN(row.in("m") * row.in("count"), row.in("n")) / 1000);
    }

    private static double bumpN(double massKg, double factor) {
        Box box = new Box(massKg, null, 0, 0, List.of(), null);
        return FrameOverhang.of(Frames.hung(List.of(), box, factor), SILENT).holdDown().stream()
                .filter(one -> one.in().equals("bump"))
                .findFirst()
                .orElseThrow()
                .forceN();
    }

    static List<Case> factors() {
        return PublishedChecks.read(CHECKS, "deflection factor");
    }

    @ParameterizedTest
    @MethodSource("factors")
    void softensWithTheWheelbase(Case row) {
        Stretch stretch = new Stretch(row.in("l0"), row.in("dl"), 0.8, null, List.of(), null, null, null);

        Stretched result = Objects.requireNonNull(
                FrameOverhang.of(Frames.stretched(List.of(), stretch), SILENT).stretch());

        row.check("uniform", result.uniformFactor());
        row.check("point", result.pointFactor());
    }
}

package org.axlewright.domain.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.axlewright.domain.frame.FrameOverhang.Box;
import org.axlewright.domain.frame.FrameOverhang.LiftedWheel;
import org.axlewright.domain.frame.FrameOverhang.Overhang;
import org.axlewright.domain.frame.FrameOverhang.OverhangRail;
import org.axlewright.domain.frame.FrameOverhang.PlacedMass;
import org.axlewright.domain.frame.FrameOverhang.Prop;
import org.axlewright.domain.frame.FrameOverhang.Spread;
import org.axlewright.domain.frame.FrameOverhang.Stretch;
import org.axlewright.domain.frame.FrameOverhang.StretchRail;
import org.axlewright.domain.frame.FrameOverhang.Stretched;
import org.axlewright.domain.frame.FrameOverhang.Twist;
import org.axlewright.domain.quantity.Constants;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.api.Test;

/** What must hold whatever the numbers. */
class FrameInvariantsTest {

    private static final Trace SILENT = Trace.withoutWorking();
    private static final Tube TUBE = Frames.tube(40, 60, 3, 6);

    private static Overhang hung(List<Rail> rails, Box box) {
        return Objects.requireNonNull(
                FrameOverhang.of(Frames.hung(rails, box, 3), SILENT).overhang());
    }

    @Property(seed = "20261125")
    void aTubeIsItsOutlineLessItsBore(
            @ForAll @DoubleRange(min = 20, max = 200) double width,
            @ForAll @DoubleRange(min = 20, max = 200) double height,
            @ForAll @DoubleRange(min = 0.5, max = 9) double wall) {
        Tube tube = new Tube(TubeShape.RECTANGULAR, width, height, wall, 0);
        double bore = (width - 2 * wall) * Math.pow(height - 2 * wall, 3) / 12;

        assertThat(tube.secondMomentM4() + bore).isCloseTo(width * Math.pow(height, 3) / 12, within(1e-6 * bore + 1));
        assertThat(tube.areaM2() + (width - 2 * wall) * (height - 2 * wall)).isCloseTo(width * height, within(1e-8));
    }

    @Property(seed = "20261125")
    void roundCornersCostLittleAndSharpOnesAreTheirLimit(@ForAll @DoubleRange(min = 0.01, max = 10) double radiusMm) {
        Tube sharp = Frames.tube(50, 80, 3, 0);
        Tube round = Frames.tube(50, 80, 3, radiusMm);

        assertThat(round.areaM2()).isLessThanOrEqualTo(sharp.areaM2());
        assertThat(round.secondMomentM4()).isLessThanOrEqualTo(sharp.secondMomentM4());
        assertThat(round.firstMomentM3()).isLessThanOrEqualTo(sharp.firstMomentM3());
        Tube nearly = Frames.tube(50, 80, 3, 1e-4);
        assertThat(nearly.secondMomentM4()).isCloseTo(sharp.secondMomentM4(), within(1e-9 * sharp.secondMomentM4()));
        assertThat(nearly.torsionM4()).isCloseTo(sharp.torsionM4(), within(1e-4 * sharp.torsionM4()));
    }

    /** With the corners as round as they go a square outline is a circle. */
    @Property(seed = "20261125")
    void aSquareWithTheRoundestCornersIsARoundBar(@ForAll @DoubleRange(min = 0.01, max = 0.2) double width) {
        RoundedRectangle circle = new RoundedRectangle(width, width, width / 2);

        assertThat(circle.areaM2()).isCloseTo(Math.PI / 4 * width * width, within(1e-12));
        assertThat(circle.secondMomentM4()).isCloseTo(Math.PI / 64 * Math.pow(width, 4), within(1e-12));
        assertThat(circle.firstMomentM3()).isCloseTo(Math.pow(width, 3) / 12, within(1e-12));
    }

    @Property(seed = "20261125")
    void sharesSumToTheWholeAndKeepTheMoment(
            @ForAll @DoubleRange(min = -1, max = 1) double y,
            @ForAll @DoubleRange(min = 0.2, max = 0.6) double left,
            @ForAll @DoubleRange(min = 0.2, max = 0.6) double right) {
        List<Rail> rails = List.of(
                Frames.rail("left", TUBE, -left, 235e6),
                Frames.rail("middle", Frames.tube(50, 100, 3, 6), 0.05, 235e6),
                Frames.rail("right", TUBE, right, 235e6));
        Overhang overhang = hung(rails, Frames.box(60, 0.4, y, List.of(), null));

        assertThat(overhang.rails().stream().mapToDouble(OverhangRail::share).sum())
                .isCloseTo(1, within(1e-12));
        assertThat(overhang.rails().stream()
                        .mapToDouble(rail -> rail.share() * rail.rail().yM())
                        .sum())
                .isCloseTo(y, within(1e-12));
    }

    @Property(seed = "20261125")
    void mirroredBoxesMirrorTheRails(@ForAll @DoubleRange(min = -0.6, max = 0.6) double y) {
        Overhang one = hung(Frames.pair(TUBE, 0.25), Frames.box(60, 0.4, y, List.of(), null));
        Overhang other = hung(Frames.pair(TUBE, 0.25), Frames.box(60, 0.4, -y, List.of(), null));

        assertThat(one.rails().get(0).momentNm()).isCloseTo(other.rails().get(1).momentNm(), within(1e-9));
        assertThat(one.rails().get(1).deflectionM())
                .isCloseTo(other.rails().get(0).deflectionM(), within(1e-15));
    }

    @Property(seed = "20261125")
    void everythingGrowsWithTheMass(
            @ForAll @DoubleRange(min = 5, max = 500) double mass, @ForAll @DoubleRange(min = 0.1, max = 4) double by) {
        Prop prop = new Prop(0.5, 0.1, 0.3, Frames.tube(25, 25, 2, 0), 235e6);
        List<FrameOverhang.Tie> ties = List.of(Frames.tie(0.1), Frames.tie(0.6));
        OverhangRail one = hung(Frames.pair(TUBE, 0.25), Frames.box(mass, 0.4, 0.05, ties, prop))
                .rails()
                .get(0);
        OverhangRail more = hung(Frames.pair(TUBE, 0.25), Frames.box(mass * by, 0.4, 0.05, ties, prop))
                .rails()
                .get(0);

        double allowed = 1e-9 * Math.max(1, by);
        assertThat(more.momentNm() / one.momentNm()).isCloseTo(by, within(allowed));
        assertThat(more.bendingPa() / one.bendingPa()).isCloseTo(by, within(allowed));
        assertThat(more.deflectionM() / one.deflectionM()).isCloseTo(by, within(allowed));
        assertThat(more.ties().get(1).throatPa() / one.ties().get(1).throatPa()).isCloseTo(by, within(allowed));
        assertThat(more.prop().forceN() / one.prop().forceN()).isCloseTo(by, within(allowed));
    }

    /** Where the ties stand changes nothing at the support: forces and moments sum up. */
    @Property(seed = "20261125")
    void tiesPassOnTheWeightAndItsMoment(
            @ForAll @DoubleRange(min = 0, max = 0.4) double first,
            @ForAll @DoubleRange(min = 0.5, max = 1.5) double second,
            @ForAll @DoubleRange(min = 0, max = 2) double arm) {
        Overhang overhang = hung(
                Frames.pair(TUBE, 0.25),
                Frames.box(60, arm, 0.1, List.of(Frames.tie(first), Frames.tie(second)), null));

        double force = 0;
        double moment = 0;
        for (OverhangRail rail : overhang.rails()) {
            for (FrameOverhang.TieForce tie : rail.ties()) {
                force += tie.downN();
                moment += tie.downN() * tie.tie().xM();
            }
        }
        assertThat(force).isCloseTo(overhang.shearN(), within(1e-9 * overhang.shearN()));
        assertThat(moment).isCloseTo(overhang.momentNm(), within(1e-9 * overhang.shearN()));
    }

    /** The prop's end goes as far as its own shortening lets it: compatibility, by an independent sum of displacements. */
    @Property(seed = "20261125")
    void railAndPropStayTogether(
            @ForAll @DoubleRange(min = 0.2, max = 0.8) double place,
            @ForAll @DoubleRange(min = -0.3, max = 0.3) double foot,
            @ForAll @DoubleRange(min = 0.1, max = 0.5) double drop,
            @ForAll @DoubleRange(min = 0.1, max = 0.9) double arm) {
        Tube strut = Frames.tube(25, 25, 2, 0);
        Prop prop = new Prop(place, foot, drop, strut, 235e6);
        List<Rail> one = List.of(Frames.rail("one", TUBE, 0, 235e6));
        OverhangRail rail =
                hung(one, Frames.box(60, arm, 0, List.of(), prop)).rails().get(0);
        double force = Objects.requireNonNull(rail.prop()).forceN();
        double length = Math.hypot(place - foot, drop);
        double rigidity = Frames.STEEL * TUBE.secondMomentM4();
        Cantilever beam = new Cantilever(
                List.of(
                        new Cantilever.Load(arm, 3 * 60 * Constants.STANDARD_GRAVITY, 0),
                        new Cantilever.Load(place, -force * drop / length, 0)),
                rigidity,
                0);
        double back = force * (place - foot) / length * place / (Frames.STEEL * TUBE.areaM2());
        double down = beam.deflectionM(place);
        double shortens = force * length / (Frames.STEEL * strut.areaM2());

        assertThat(down * drop / length - back * (place - foot) / length)
                .isCloseTo(shortens, within(1e-9 * Math.max(1e-6, Math.abs(down))));
    }

    @Property(seed = "20261125")
    void aPropNeverMakesTheRootWorse(@ForAll @DoubleRange(min = 0.3, max = 1) double place) {
        Prop prop = new Prop(place, 0, 0.3, null, null);
        OverhangRail free = hung(Frames.pair(TUBE, 0.25), Frames.box(60, 0.6, 0, List.of(), null))
                .rails()
                .get(0);
        OverhangRail held = hung(Frames.pair(TUBE, 0.25), Frames.box(60, 0.6, 0, List.of(), prop))
                .rails()
                .get(0);

        assertThat(Math.abs(held.momentNm())).isLessThan(Math.abs(free.momentNm()));
        assertThat(held.deflectionM()).isLessThan(free.deflectionM());
    }

    private static Stretched stretched(double before, double added, double mass, List<PlacedMass> points) {
        Stretch stretch = new Stretch(before, added, before / 2, new Spread(mass, 0), points, null, null, null);
        return Objects.requireNonNull(FrameOverhang.of(Frames.stretched(Frames.pair(TUBE, 0.25), stretch), SILENT)
                .stretch());
    }

    @Property(seed = "20261125")
    void uniformLoadBendsWithTheFourthPowerOfTheWheelbase(
            @ForAll @DoubleRange(min = 1, max = 3) double before,
            @ForAll @DoubleRange(min = 0.05, max = 2) double added) {
        Stretched result = stretched(before, added, 300, List.of());
        StretchRail rail = result.rails().get(0);

        assertThat(rail.deflectionM() / rail.deflectionBeforeM())
                .isCloseTo(Math.pow((before + added) / before, 4), within(1e-6));
        assertThat(rail.momentNm() / rail.momentBeforeNm())
                .isCloseTo(Math.pow((before + added) / before, 2), within(1e-9));
        assertThat(result.uniformFactor()).isCloseTo(rail.deflectionM() / rail.deflectionBeforeM(), within(1e-6));
    }

    @Property(seed = "20261125")
    void loadsBetweenTheAxlesSuperpose(
            @ForAll @DoubleRange(min = 0, max = 2) double x,
            @ForAll @DoubleRange(min = 0, max = 2) double other,
            @ForAll @DoubleRange(min = 0.01, max = 1.99) double at) {
        SimpleSpan.Point one = new SimpleSpan.Point(x, 500);
        SimpleSpan.Point two = new SimpleSpan.Point(other, 700);
        SimpleSpan both = new SimpleSpan(2, 300, List.of(one, two), 1e5);
        SimpleSpan first = new SimpleSpan(2, 300, List.of(one), 1e5);
        SimpleSpan second = new SimpleSpan(2, 0, List.of(two), 1e5);

        assertThat(both.momentNm(at)).isCloseTo(first.momentNm(at) + second.momentNm(at), within(1e-9));
        assertThat(both.deflectionM(at)).isCloseTo(first.deflectionM(at) + second.deflectionM(at), within(1e-12));
        assertThat(both.leftN() + both.rightN()).isCloseTo(600 + 1200, within(1e-9));
        assertThat(both.largestDeflection().value()).isGreaterThanOrEqualTo(both.deflectionM(at) - 1e-12);
        assertThat(both.largestMoment().value()).isGreaterThanOrEqualTo(both.momentNm(at) - 1e-9);
    }

    @Property(seed = "20261125")
    void railsTwistAlikeAndShareTheCouple(@ForAll @DoubleRange(min = 100, max = 5000) double load) {
        List<Rail> rails = List.of(
                Frames.rail("left", TUBE, -0.3, 235e6), Frames.rail("right", Frames.tube(50, 50, 3, 0), 0.3, 235e6));
        Twist twist = Objects.requireNonNull(
                FrameOverhang.of(Frames.twisted(rails, new LiftedWheel("front", load, 0.9, 1.67)), SILENT)
                        .torsion());

        assertThat(twist.torqueNm()).isCloseTo(load * 0.45, within(1e-9 * load));
        double sum = 0;
        for (FrameOverhang.TwistRail rail : twist.rails()) {
            sum += rail.torqueNm();
            double own = rail.torqueNm()
                    * 1.67
                    / (Frames.STEEL / 2.6 * rail.rail().tube().torsionM4());
            assertThat(own).isCloseTo(twist.twistRad(), within(1e-12));
        }
        assertThat(sum).isCloseTo(twist.torqueNm(), within(1e-9 * load));
    }

    @Property(seed = "20261125")
    void everyLineOfTheWorkingIsANumber(
            @ForAll @DoubleRange(min = 0.1, max = 2000) double mass,
            @ForAll @DoubleRange(min = 0, max = 3) double arm,
            @ForAll @DoubleRange(min = -2, max = 2) double y,
            @ForAll @DoubleRange(min = 0.02, max = 3) double place,
            @ForAll @DoubleRange(min = -3, max = 3) double foot,
            @ForAll @DoubleRange(min = -2, max = 2) double drop) {
        Assume.that(Math.abs(drop) >= 0.02);
        Trace trace = Trace.withWorking();
        Prop prop = new Prop(place, foot, drop, Frames.tube(10, 10, 1, 0), 235e6);
        Box box = new Box(mass, arm, y, 5, List.of(Frames.tie(0), Frames.tie(3)), prop);
        FrameOverhang.of(Frames.hung(List.of(Frames.rail("one", TUBE, 0.1, null)), box, 10), trace);

        assertThat(trace.lines()).allSatisfy(line -> assertThat(line.value()).isFinite());
    }

    @Test
    void namesTheRailThatTheBoxHangsOver() {
        FrameOverhang.Result result = FrameOverhang.of(
                Frames.hung(Frames.pair(TUBE, 0.25), Frames.box(60, 0.4, 0.1, List.of(), null), 3), SILENT);

        assertThat(Objects.requireNonNull(result.worst()).rail().name()).isEqualTo("right");
        assertThat(result.worst().in()).isEqualTo("overhang");
    }

    @Test
    void saysWhenARailBendsForGoodAndWhenAWeldTears() {
        Trace trace = Trace.withoutWorking();
        FrameOverhang.Tie poor =
                new FrameOverhang.Tie("/frame/box/ties/0", null, 0.1, new FrameOverhang.Weld(0.004, 0.010));
        Box heavy = Frames.box(1500, 0.8, 0.4, List.of(poor, Frames.tie(0.9)), null);
        FrameOverhang.of(Frames.hung(Frames.pair(TUBE, 0.25), heavy, 3), trace);

        assertThat(trace.findings())
                .extracting(Finding::code)
                .contains("over-yield", "weld-overloaded", "weld-too-short", "throat-beyond-wall", "rail-lifted");
        assertThat(trace.cautions())
                .extracting(caution -> caution.code())
                .contains("engineer-and-welder", "heat-affected-zone", "welding-near-packs", "corroded-metal");
    }

    @Test
    void saysWhenAPropBucklesAndWhenAWallIsTooThin() {
        Trace trace = Trace.withoutWorking();
        Prop thin = new Prop(1, 0, 0.4, Frames.tube(6, 6, 1, 0), 235e6);
        List<Rail> rails = Frames.pair(Frames.tube(100, 100, 1, 0), 0.25);
        FrameOverhang.of(Frames.hung(rails, Frames.box(800, 1, 0, List.of(Frames.tie(1)), thin), 1), trace);

        assertThat(trace.findings())
                .extracting(Finding::code)
                .contains("prop-buckles", "thin-wall-buckles", "single-tie", "factor-below-published");
    }

    @Test
    void aPropFromAboveIsPulled() {
        Prop above = new Prop(0.6, 0, -0.4, Frames.tube(25, 25, 2, 0), 235e6);
        OverhangRail rail = hung(Frames.pair(TUBE, 0.25), Frames.box(60, 0.6, 0, List.of(), above))
                .rails()
                .get(0);

        assertThat(Objects.requireNonNull(rail.prop()).forceN()).isNegative();
        assertThat(rail.axialPa()).isNegative();
    }
}

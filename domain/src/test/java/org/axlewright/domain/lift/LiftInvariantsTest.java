package org.axlewright.domain.lift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.axlewright.domain.axles.Axle;
import org.axlewright.domain.axles.AxleLift;
import org.axlewright.domain.axles.LoadedRadii;
import org.axlewright.domain.axles.Rise;
import org.axlewright.domain.axles.Underside;
import org.axlewright.domain.lift.DoubleWishbone.InstantCentre;
import org.axlewright.domain.lift.DoubleWishbone.Pose;
import org.axlewright.domain.lift.DoubleWishbone.Reach;
import org.axlewright.domain.lift.FrontSuspension.LiftedWishbone;
import org.axlewright.domain.lift.Gearing.DrivenTyres;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.api.Test;

/** What must hold whatever the numbers. */
class LiftInvariantsTest {

    private static final Trace SILENT = Trace.withoutWorking();
    private static final double HALF_TRACK = 0.55;
    private static final Point LOWER_INNER = new Point(0.20, 0.20);
    private static final Point LOWER_OUTER = new Point(0.50, 0.17);
    private static final Point UPPER_INNER = new Point(0.24, 0.36);
    private static final Point UPPER_OUTER = new Point(0.47, 0.35);

    private static DoubleWishbone wishbone() {
        return new DoubleWishbone(LOWER_INNER, LOWER_OUTER, UPPER_INNER, UPPER_OUTER);
    }

    private static FrontSuspension.Result lifted(double rise, TieRod tieRod) {
        return FrontSuspension.of(new LiftedWishbone(wishbone(), tieRod, HALF_TRACK, rise, 0), SILENT);
    }

    @Property(seed = "20261125")
    void armsAndKnuckleKeepTheirLengths(@ForAll @DoubleRange(min = -0.5, max = 0.3) double angle) {
        Pose pose = wishbone().at(angle);

        assertThat(pose).isNotNull();
        assertThat(pose.lowerOuter().distance(LOWER_INNER)).isCloseTo(LOWER_OUTER.distance(LOWER_INNER), within(1e-12));
        assertThat(pose.upperOuter().distance(UPPER_INNER)).isCloseTo(UPPER_OUTER.distance(UPPER_INNER), within(1e-12));
        assertThat(pose.upperOuter().distance(pose.lowerOuter()))
                .isCloseTo(UPPER_OUTER.distance(LOWER_OUTER), within(1e-12));
    }

    @Property(seed = "20261125")
    void reachesTheHeightAskedFor(@ForAll @DoubleRange(min = -0.12, max = 0.12) double height) {
        Point contact = new Point(HALF_TRACK, 0);
        Reach reach = wishbone().withHeight(contact, height);

        assertThat(wishbone()
                        .moved(contact, Objects.requireNonNull(reach.pose()))
                        .z())
                .isCloseTo(height, within(1e-9));
    }

    @Test
    void nothingChangesWithoutALift() {
        FrontSuspension.Alignment alignment =
                Objects.requireNonNull(lifted(0, null).alignment());

        assertThat(alignment.camberChangeRad()).isZero();
        assertThat(alignment.trackChangeM()).isZero();
        assertThat(alignment.rollCentreM()).isEqualTo(lifted(0, null).rollCentreBeforeM());
    }

    /** Instant centre: the wheel turns about it, so a metre of bump turns it by 1/s and moves the patch sideways by z/s. */
    @Property(seed = "20261125")
    void smallMovesTurnAboutTheInstantCentre(@ForAll @DoubleRange(min = -0.06, max = 0.06) double ride) {
        Point contact = new Point(HALF_TRACK, 0);
        DoubleWishbone linkage = wishbone();
        double small = 1e-5;
        Pose at = Objects.requireNonNull(linkage.withHeight(contact, ride).pose());
        Pose above =
                Objects.requireNonNull(linkage.withHeight(contact, ride + small).pose());
        InstantCentre centre = linkage.instantCentre(at);
        Point there = linkage.moved(contact, at);
        double arm = there.y() - centre.y() / centre.weight();
        double height = centre.z() / centre.weight() - there.z();

        double camber = linkage.camberChange(above) - linkage.camberChange(at);
        double aside = linkage.moved(contact, above).y() - there.y();

        assertThat(camber / small).isCloseTo(-1 / arm, within(1e-3));
        assertThat(aside / small).isCloseTo(height / arm, within(1e-3));
    }

    @Property(seed = "20261125")
    void equalParallelArmsKeepTheCamber(@ForAll @DoubleRange(min = -0.1, max = 0.1) double rise) {
        DoubleWishbone parallelogram =
                new DoubleWishbone(new Point(0.2, 0.2), new Point(0.5, 0.2), new Point(0.2, 0.4), new Point(0.5, 0.4));
        FrontSuspension.Result result =
                FrontSuspension.of(new LiftedWishbone(parallelogram, null, HALF_TRACK, rise, 0), SILENT);

        assertThat(Objects.requireNonNull(result.alignment()).camberChangeRad()).isCloseTo(0, within(1e-9));
        assertThat(result.rollCentreBeforeM()).isCloseTo(0, within(1e-12));
    }

    @Property(seed = "20261125")
    void aTieRodThatCopiesAnArmSteersNothing(@ForAll @DoubleRange(min = -0.1, max = 0.1) double rise) {
        FrontSuspension.Result result = lifted(rise, new TieRod(LOWER_INNER, LOWER_OUTER, 0.1));

        assertThat(Objects.requireNonNull(result.alignment()).toeChangeRad()).isCloseTo(0, within(1e-9));
        result.travel().stream()
                .map(FrontSuspension.Travel::after)
                .filter(Objects::nonNull)
                .forEach(change -> assertThat(change.toeRad()).isCloseTo(0, within(1e-9)));
    }

    @Property(seed = "20261125")
    void aRodAheadOfTheAxleTurnsTheOtherWay(@ForAll @DoubleRange(min = 0.01, max = 0.1) double rise) {
        Point inner = new Point(0.15, 0.25);
        Point outer = new Point(0.48, 0.24);
        Double behind = Objects.requireNonNull(
                        lifted(rise, new TieRod(inner, outer, 0.1)).alignment())
                .toeChangeRad();
        Double ahead = Objects.requireNonNull(
                        lifted(rise, new TieRod(inner, outer, -0.1)).alignment())
                .toeChangeRad();

        assertThat(behind).isNotNull().isNotZero();
        assertThat(ahead).isEqualTo(-behind);
    }

    @Property(seed = "20261125")
    void whateverThePointsTheAnswerIsFiniteOrAbsent(
            @ForAll @DoubleRange(min = -1, max = 2) double innerY,
            @ForAll @DoubleRange(min = -1, max = 2) double innerZ,
            @ForAll @DoubleRange(min = 0.02, max = 1) double lowerOut,
            @ForAll @DoubleRange(min = 0.02, max = 1) double upperOut,
            @ForAll @DoubleRange(min = 0.02, max = 1) double innerUp,
            @ForAll @DoubleRange(min = 0.02, max = 1) double outerUp,
            @ForAll @DoubleRange(min = -0.3, max = 0.6) double rise,
            @ForAll @DoubleRange(min = 0.15, max = 1.5) double halfTrack) {
        Point lowerInner = new Point(innerY, innerZ);
        Point lowerOuter = new Point(innerY + lowerOut, innerZ - 0.03);
        Point upperInner = new Point(innerY + 0.05, innerZ + innerUp);
        Point upperOuter = new Point(innerY + 0.05 + upperOut, lowerOuter.z() + outerUp);
        DoubleWishbone linkage = new DoubleWishbone(lowerInner, lowerOuter, upperInner, upperOuter);
        Assume.that(!linkage.isAtDeadPoint());
        TieRod rod = new TieRod(new Point(innerY - 0.1, innerZ), new Point(innerY + lowerOut, innerZ + 0.1), -0.05);
        Trace trace = Trace.withWorking();

        FrontSuspension.Result result =
                FrontSuspension.of(new LiftedWishbone(linkage, rod, halfTrack, rise, 0.01), trace);

        assertThat(result.reachedM()).isFinite();
        assertThat(trace.lines()).allSatisfy(line -> assertThat(line.value()).isFinite());
        FrontSuspension.Alignment alignment = result.alignment();
        if (alignment != null) {
            assertThat(alignment.camberChangeRad()).isFinite();
            assertThat(alignment.trackChangeM()).isFinite();
        }
    }

    @Test
    void saysHowFarTheArmsGoWhenALiftAsksForMore() {
        FrontSuspension.Result result = lifted(0.6, null);

        assertThat(result.alignment()).isNull();
        assertThat(result.droopM()).isEqualTo(0.6);
        assertThat(result.reachedM()).isBetween(0.1, 0.6);
        assertThat(lifted(result.reachedM() * 0.99, null).alignment()).isNotNull();
    }

    @Test
    void aSpindleKeepsTheArmsWhereTheyAre() {
        FrontSuspension.Result result =
                FrontSuspension.of(new LiftedWishbone(wishbone(), null, HALF_TRACK, 0.08, 0.08), SILENT);
        FrontSuspension.Alignment alignment = Objects.requireNonNull(result.alignment());

        assertThat(alignment.camberChangeRad()).isCloseTo(0, within(1e-12));
        assertThat(alignment.trackChangeM()).isCloseTo(0, within(1e-12));
    }

    @Property(seed = "20261125")
    void noRampIsSteeperFromUnderTheWheel(
            @ForAll @DoubleRange(min = 0.3, max = 2) double reach,
            @ForAll @DoubleRange(min = 0, max = 1) double height,
            @ForAll @DoubleRange(min = 0.05, max = 0.29) double radius) {
        Underside.Overhang overhang = new Underside.Overhang("a", "approach angle");
        Double tangent = overhang.tangent(reach, height, radius, SILENT);

        assertThat(tangent).isNotNull();
        assertThat(tangent).isGreaterThanOrEqualTo(overhang.simple(reach, height, SILENT) - 1e-12);
        assertThat(overhang.tangent(reach, 0, radius, SILENT)).isCloseTo(0, within(1e-12));
        assertThat(overhang.tangent(reach, height, 1e-9, SILENT))
                .isCloseTo(overhang.simple(reach, height, SILENT), within(1e-6));
    }

    @Property(seed = "20261125")
    void theTangentTouchesTheTyreAndThePoint(
            @ForAll @DoubleRange(min = 0.3, max = 2) double reach,
            @ForAll @DoubleRange(min = 0.01, max = 0.6) double height,
            @ForAll @DoubleRange(min = 0.05, max = 0.29) double radius) {
        Double angle = new Underside.Overhang("a", "approach angle").tangent(reach, height, radius, SILENT);
        double slope = Objects.requireNonNull(angle);

        // distance of the wheel centre (0, r) from the ramp through (reach, height), rising forward at the angle
        double distance = Math.abs(-reach * Math.sin(slope) - (radius - height) * Math.cos(slope));
        assertThat(distance).isCloseTo(radius, within(1e-9));
    }

    @Property(seed = "20261125")
    void speedAndPullTradeAgainstEachOther(
            @ForAll @DoubleRange(min = 0.3, max = 2) double before,
            @ForAll @DoubleRange(min = 0.3, max = 2) double now) {
        Gearing.Result there = Gearing.of(new DrivenTyres("/tyres/rear", false, before, now, null), SILENT);
        Gearing.Result back = Gearing.of(new DrivenTyres("/tyres/rear", false, now, before, null), SILENT);

        assertThat(there.speedFactor() * there.tractionFactor()).isCloseTo(1, within(1e-12));
        assertThat(there.speedFactor() * back.speedFactor()).isCloseTo(1, within(1e-12));
        assertThat(there.speedFactor() * (1 + there.speedometerError())).isCloseTo(1, within(1e-12));
    }

    @Test
    void measuredLoadedRadiiDecideThePull() {
        Gearing.Result gearing =
                Gearing.of(new DrivenTyres("/tyres/rear", true, 1.4, 1.5, new LoadedRadii(0.21, 0.24)), SILENT);

        assertThat(gearing.speedFactor()).isCloseTo(1.5 / 1.4, within(1e-12));
        assertThat(gearing.tractionFactor()).isCloseTo(0.875, within(1e-12));
    }

    @Test
    void everyFindingNamesACauseAndKeepsItsCode() {
        LoadedRadii taller = new LoadedRadii(0.2, 0.26);
        Rise rise = new Rise(new AxleLift(0.12, 1, false, 1, taller), new AxleLift(0.1, 1, true, 1, taller));
        Trace trace = Trace.withWorking();
        LiftGeometry.of(
                new LiftGeometry.Input(
                        rise,
                        LiftKind.BLOCK,
                        LiftKind.BODY,
                        taller,
                        taller,
                        1.67,
                        0.12,
                        new LiftGeometry.Corner(0.1, 0.2),
                        new LiftGeometry.Corner(0.4, 0.27),
                        new LiftGeometry.Squat(0.31, 0.33),
                        0.42,
                        0.6,
                        new DrivenTyres("/tyres/rear", false, 0.42, 0.54, null),
                        new LiftedWishbone(
                                wishbone(),
                                new TieRod(new Point(0.1, 0.3), new Point(0.48, 0.24), 0.1),
                                HALF_TRACK,
                                0.18,
                                0.06),
                        List.of(new LiftGeometry.TyreLoad(Axle.REAR, "/tyres/rear/maximumLoad", 3000, 2500)),
                        List.of("/tyres/rear/size")),
                trace);

        assertThat(trace.findings())
                .extracting(Finding::code)
                .contains(
                        "lift-beyond-guidance",
                        "tyre-beyond-guidance",
                        "rise-beyond-guidance",
                        "body-lift",
                        "rises-differ",
                        "less-stable",
                        "frame-on-ground-laden",
                        "point-within-tyre",
                        "true-speed-above-shown",
                        "less-pull",
                        "track-change",
                        "toe-change",
                        "roll-centre-moves",
                        "instant-centre-flips",
                        "tyre-overloaded",
                        "tyre-not-for-road");
        assertThat(trace.findings())
                .allSatisfy(finding -> assertThat(finding.pointer()).startsWith("/"));
        assertThat(trace.lines()).allSatisfy(line -> assertThat(line.value()).isFinite());
        assertThat(trace.cautions()).extracting("code").contains("blocks-on-leaf-springs", "align-after-lift");
    }
}

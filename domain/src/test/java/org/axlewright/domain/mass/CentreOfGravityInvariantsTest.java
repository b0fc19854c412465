package org.axlewright.domain.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.axlewright.domain.axles.Axle;
import org.axlewright.domain.axles.AxleLift;
import org.axlewright.domain.axles.LoadedRadii;
import org.axlewright.domain.axles.PointMass;
import org.axlewright.domain.axles.Rise;
import org.axlewright.domain.mass.CentreOfGravity.Input;
import org.axlewright.domain.mass.CentreOfGravity.Lever;
import org.axlewright.domain.mass.CentreOfGravity.Part;
import org.axlewright.domain.mass.CentreOfGravity.Ratings;
import org.axlewright.domain.mass.CentreOfGravity.Result;
import org.axlewright.domain.mass.CentreOfGravity.State;
import org.axlewright.domain.mass.Weighing.Scales;
import org.axlewright.domain.mass.Weighing.Tracks;
import org.axlewright.domain.quantity.Constants;
import org.axlewright.domain.trace.Trace;
import org.axlewright.domain.trace.Trace.Line;
import org.axlewright.domain.trace.Trace.Term;

/** What must hold for every vehicle, whatever its numbers. */
class CentreOfGravityInvariantsTest {

    private static final double L = 1.67;
    private static final double CLOSE = 1e-9;
    private static final Tracks TRACKS = new Tracks(0.87, 0.98);
    private static final Ratings NO_RATINGS = new Ratings(null, null, null);

    @Provide
    Arbitrary<PointMass> masses() {
        return Combinators.combine(
                        Arbitraries.doubles().between(0.1, 300),
                        Arbitraries.doubles().between(-0.5, 2.6),
                        Arbitraries.doubles().between(-0.5, 0.5),
                        Arbitraries.doubles().between(0.1, 1.8))
                .as(PointMass::new);
    }

    @Provide
    Arbitrary<Scales> scales() {
        Arbitrary<Double> wheel = Arbitraries.doubles().between(200, 3000);
        return Combinators.combine(wheel, wheel, wheel, wheel).as(Scales::new);
    }

    private static List<Part> parts(List<PointMass> masses) {
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < masses.size(); i++) {
            parts.add(new Part("/items/" + i, null, null, i % 3 == 2, masses.get(i)));
        }
        return parts;
    }

    private static Input input(Weighing weighing, List<Part> parts) {
        return new Input(L, TRACKS, weighing, 0.5, null, Rise.NONE, parts, null, NO_RATINGS);
    }

    private static State occupied(Weighing weighing, List<Part> parts) {
        return CentreOfGravity.of(input(weighing, parts), Trace.withoutWorking())
                .occupied();
    }

    private static void assertSame(State one, State other) {
        assertThat(one.whole().massKg()).isCloseTo(other.whole().massKg(), within(1e-7));
        assertThat(one.whole().xM()).isCloseTo(other.whole().xM(), within(CLOSE));
        assertThat(one.whole().yM()).isCloseTo(other.whole().yM(), within(CLOSE));
        assertThat(one.whole().zM()).isCloseTo(other.whole().zM(), within(CLOSE));
        assertThat(one.leftShare()).isCloseTo(other.leftShare(), within(CLOSE));
        assertThat(one.frontLoadN()).isCloseTo(other.frontLoadN(), within(1e-6));
    }

    @Property(seed = "20261125", tries = 200)
    void axleLoadsAddUpToTheWeightAndTurnAboutTheFrontAxle(
            @ForAll("scales") Scales scales,
            @ForAll @Size(max = 6) List<@net.jqwik.api.From("masses") PointMass> masses) {
        State state = occupied(scales, parts(masses));
        double weight = state.whole().massKg() * Constants.STANDARD_GRAVITY;
        assertThat(state.frontLoadN() + state.rearLoadN()).isCloseTo(weight, within(1e-6));
        assertThat(state.rearLoadN() * L).isCloseTo(weight * state.whole().xM(), within(1e-6));
    }

    @Property(seed = "20261125", tries = 200)
    void theOrderOfPartsDoesNotMatterAndAPartMayBeSplit(
            @ForAll("scales") Scales scales, @ForAll("masses") PointMass one, @ForAll("masses") PointMass other) {
        PointMass half = new PointMass(one.massKg() / 2, one.xM(), one.yM(), one.zM());
        assertSame(occupied(scales, parts(List.of(one, other))), occupied(scales, parts(List.of(other, half, half))));
    }

    @Property(seed = "20261125", tries = 200)
    void removingWhatWasAddedGivesBackTheVehicle(@ForAll("scales") Scales scales, @ForAll("masses") PointMass part) {
        PointMass gone = new PointMass(-part.massKg(), part.xM(), part.yM(), part.zM());
        assertSame(occupied(scales, parts(List.of(part, gone))), occupied(scales, List.of()));
    }

    @Property(seed = "20261125", tries = 200)
    void leftAndRightAreMirrorImages(
            @ForAll("scales") Scales scales,
            @ForAll @Size(max = 4) List<@net.jqwik.api.From("masses") PointMass> masses) {
        Scales mirrored =
                new Scales(scales.frontRightN(), scales.frontLeftN(), scales.rearRightN(), scales.rearLeftN());
        List<PointMass> across = masses.stream()
                .map(mass -> new PointMass(mass.massKg(), mass.xM(), -mass.yM(), mass.zM()))
                .toList();
        State state = occupied(scales, parts(masses));
        State mirror = occupied(mirrored, parts(across));
        assertThat(mirror.whole().yM()).isCloseTo(-state.whole().yM(), within(CLOSE));
        assertThat(mirror.leftShare()).isCloseTo(1 - state.leftShare(), within(CLOSE));
        assertThat(mirror.whole().xM()).isCloseTo(state.whole().xM(), within(CLOSE));
    }

    @Property(seed = "20261125", tries = 200)
    void twiceTheMassEverywhereIsTwiceTheLoadAtTheSamePlace(
            @ForAll("scales") Scales scales,
            @ForAll("masses") PointMass part,
            @ForAll @DoubleRange(min = 0.2, max = 5) double factor) {
        Scales scaled = new Scales(
                factor * scales.frontLeftN(),
                factor * scales.frontRightN(),
                factor * scales.rearLeftN(),
                factor * scales.rearRightN());
        PointMass heavier = new PointMass(factor * part.massKg(), part.xM(), part.yM(), part.zM());
        State state = occupied(scales, parts(List.of(part)));
        State larger = occupied(scaled, parts(List.of(heavier)));
        assertThat(larger.whole().xM()).isCloseTo(state.whole().xM(), within(CLOSE));
        assertThat(larger.whole().zM()).isCloseTo(state.whole().zM(), within(CLOSE));
        assertThat(larger.rearLoadN()).isCloseTo(factor * state.rearLoadN(), within(1e-5));
    }

    @Property(seed = "20261125", tries = 200)
    void lengthsMayBeMeasuredInAnyUnit(
            @ForAll("scales") Scales scales,
            @ForAll("masses") PointMass part,
            @ForAll @DoubleRange(min = 0.3, max = 3) double unit) {
        Input metres = new Input(L, TRACKS, scales, 0.5, null, Rise.NONE, parts(List.of(part)), null, NO_RATINGS);
        Input units = new Input(
                L / unit,
                new Tracks(TRACKS.frontM() / unit, TRACKS.rearM() / unit),
                scales,
                0.5 / unit,
                null,
                Rise.NONE,
                parts(List.of(new PointMass(part.massKg(), part.xM() / unit, part.yM() / unit, part.zM() / unit))),
                null,
                NO_RATINGS);
        State one = CentreOfGravity.of(metres, Trace.withoutWorking()).occupied();
        State other = CentreOfGravity.of(units, Trace.withoutWorking()).occupied();
        assertThat(other.whole().xM() * unit).isCloseTo(one.whole().xM(), within(CLOSE));
        assertThat(other.whole().yM() * unit).isCloseTo(one.whole().yM(), within(CLOSE));
        assertThat(other.leftShare()).isCloseTo(one.leftShare(), within(CLOSE));
        assertThat(other.frontLoadN()).isCloseTo(one.frontLoadN(), within(1e-6));
    }

    @Property(seed = "20261125", tries = 200)
    void aPartDoesWhatTheVehicleWithItHasMoreThanTheVehicleWithoutIt(
            @ForAll("scales") Scales scales, @ForAll("masses") PointMass part, @ForAll("masses") PointMass other) {
        Result with = CentreOfGravity.of(input(scales, parts(List.of(part, other))), Trace.withoutWorking());
        State without = occupied(scales, parts(List.of(other)));
        Lever lever = with.leverage().get(0);
        State state = with.occupied();
        assertThat(lever.frontLoadChangeN()).isCloseTo(state.frontLoadN() - without.frontLoadN(), within(1e-6));
        assertThat(lever.rearLoadChangeN()).isCloseTo(state.rearLoadN() - without.rearLoadN(), within(1e-6));
        assertThat(lever.xChangeM())
                .isCloseTo(state.whole().xM() - without.whole().xM(), within(CLOSE));
        assertThat(lever.yChangeM())
                .isCloseTo(state.whole().yM() - without.whole().yM(), within(CLOSE));
        assertThat(lever.zChangeM())
                .isCloseTo(state.whole().zM() - without.whole().zM(), within(CLOSE));
        assertThat(lever.frontLoadChangeN() < 0).isEqualTo(part.xM() > L);
    }

    @Property(seed = "20261125", tries = 200)
    void theEmptyVehicleIsTheOneWithoutOccupants(
            @ForAll("scales") Scales scales, @ForAll("masses") PointMass item, @ForAll("masses") PointMass person) {
        Part rack = new Part("/items/0", null, null, false, item);
        Part driver = new Part("/occupants/0", null, null, true, person);
        Result result = CentreOfGravity.of(input(scales, List.of(rack, driver)), Trace.withoutWorking());
        assertSame(result.empty(), occupied(scales, List.of(rack)));
    }

    /**
     * A rigid vehicle is turned by the angle that raises one axle, its weight taken up by the vertical lines through the two wheel
     * centres; the load so found must give back the height it started from. Nothing of the formula under test is used.
     */
    @Property(seed = "20261125", tries = 500)
    void aRaisedWeighingGivesBackTheHeightOfARigidVehicle(
            @ForAll Axle raised,
            @ForAll @DoubleRange(min = 0.2, max = 1.2) double height,
            @ForAll @DoubleRange(min = 0.3, max = 1.4) double x,
            @ForAll @DoubleRange(min = 8, max = 35) double degrees,
            @ForAll @DoubleRange(min = 0.18, max = 0.32) double frontRadius,
            @ForAll @DoubleRange(min = 0.18, max = 0.32) double rearRadius) {
        double weight = 4500;
        double turn = Math.toRadians(raised == Axle.REAR ? degrees : -degrees);
        double front = turnedX(0, frontRadius, turn);
        double rear = turnedX(L, rearRadius, turn);
        double share = (turnedX(x, height, turn) - front) / (rear - front);
        double stays = raised == Axle.REAR ? weight * (1 - share) : weight * share;
        double rise = turnedZ(L, rearRadius, turn) - turnedZ(0, frontRadius, turn) - (rearRadius - frontRadius);
        RaisedAxle weighing = new RaisedAxle(raised, Math.abs(rise), stays, frontRadius, rearRadius);
        assertThat(weighing.heightM(weight, x, L, Trace.withoutWorking())).isCloseTo(height, within(CLOSE));
    }

    private static double turnedX(double x, double z, double angle) {
        return x * Math.cos(angle) - z * Math.sin(angle);
    }

    private static double turnedZ(double x, double z, double angle) {
        return x * Math.sin(angle) + z * Math.cos(angle);
    }

    @Property(seed = "20261125", tries = 200)
    void anEvenLiftWithNothingUnsprungRaisesEverythingAlike(
            @ForAll("scales") Scales scales,
            @ForAll("masses") PointMass part,
            @ForAll @DoubleRange(min = -0.1, max = 0.4) double lift,
            @ForAll @DoubleRange(min = 0.2, max = 0.3) double newRadius) {
        AxleLift axle = new AxleLift(lift, 1, false, 1, new LoadedRadii(0.22, newRadius));
        List<Part> parts = parts(List.of(part));
        Input lifted = new Input(L, TRACKS, scales, 0.5, null, new Rise(axle, axle), parts, null, NO_RATINGS);
        State state = CentreOfGravity.of(lifted, Trace.withoutWorking()).occupied();
        State before = occupied(scales, parts);
        assertThat(state.whole().zM()).isCloseTo(before.whole().zM() + lift + newRadius - 0.22, within(CLOSE));
        assertThat(state.frontLoadN()).isCloseTo(before.frontLoadN(), within(1e-6));
    }

    @Property(seed = "20261125", tries = 100)
    void theWorkingChangesNothingAndHoldsOnlyFiniteNumbers(
            @ForAll("scales") Scales scales,
            @ForAll @Size(max = 5) List<@net.jqwik.api.From("masses") PointMass> masses) {
        Trace trace = Trace.withWorking();
        Result told = CentreOfGravity.of(input(scales, parts(masses)), trace);
        assertThat(told).isEqualTo(CentreOfGravity.of(input(scales, parts(masses)), Trace.withoutWorking()));
        assertThat(trace.lines()).isNotEmpty();
        assertThat(trace.lines()).extracting(Line::value).allMatch(Double::isFinite);
        assertThat(trace.lines())
                .flatExtracting(Line::terms)
                .extracting(term -> ((Term) term).value())
                .allMatch(Double::isFinite);
    }
}

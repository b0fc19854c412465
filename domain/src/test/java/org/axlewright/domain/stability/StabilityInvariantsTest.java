package org.axlewright.domain.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.axles.WheelPlan;
import org.axlewright.domain.quantity.Constants;
import org.axlewright.domain.stability.Aboard.Person;
import org.axlewright.domain.stability.Footprint.Roll;
import org.axlewright.domain.stability.Footprint.SideLimit;
import org.axlewright.domain.stability.Lengthways.AxleLoads;
import org.axlewright.domain.stability.Sideways.Turn;
import org.axlewright.domain.stability.Stability.Input;
import org.axlewright.domain.stability.Stability.Ratings;
import org.axlewright.domain.stability.Stability.Result;
import org.axlewright.domain.stability.Stability.Told;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Trace;
import org.axlewright.domain.trace.Trace.Line;
import org.axlewright.domain.trace.Trace.Term;

/** What must hold for every vehicle, whatever its numbers. */
class StabilityInvariantsTest {

    private static final double L = 1.67;
    private static final double CLOSE = 1e-9;
    private static final Trace SILENT = Trace.withoutWorking();
    private static final Told NOTHING_ODD = new Told(null, false, false, 0, false);

    @Provide
    Arbitrary<Whole> vehicles() {
        return Combinators.combine(
                        Arbitraries.doubles().between(200, 1500),
                        Arbitraries.doubles().between(0.2, 1.5),
                        Arbitraries.doubles().between(-0.2, 0.2),
                        Arbitraries.doubles().between(0.25, 1.2))
                .as(Whole::new);
    }

    @Provide
    Arbitrary<Footprint> footprints() {
        Arbitrary<Double> track = Arbitraries.doubles().between(0.6, 1.4);
        Arbitrary<Double> aside = Arbitraries.doubles().between(-0.1, 0.1);
        return Combinators.combine(Arbitraries.of(WheelPlan.class), track, track, aside, aside)
                .as((plan, front, rear, frontAside, rearAside) -> new Footprint(
                        plan,
                        L,
                        plan == WheelPlan.ONE_IN_FRONT ? 0 : front,
                        plan == WheelPlan.ONE_BEHIND ? 0 : rear,
                        frontAside,
                        rearAside));
    }

    @Provide
    Arbitrary<Aboard> people() {
        return Combinators.combine(
                        Arbitraries.doubles().between(20, 150),
                        Arbitraries.doubles().between(0.2, 2.2),
                        Arbitraries.doubles().between(-0.6, 0.6),
                        Arbitraries.doubles().between(0, 1.6))
                .as((mass, x, y, z) -> new Aboard("/occupants/1", null, null, null, mass, x, y, z));
    }

    /** The first of them drives. */
    private static List<Aboard> seated(List<Aboard> people) {
        List<Aboard> seated = new ArrayList<>();
        for (Aboard one : people) {
            Person person = new Person(seated.isEmpty(), Facing.FORWARD, true, 0.4);
            seated.add(new Aboard(
                    "/occupants/" + seated.size(), null, null, person, one.massKg(), one.xM(), one.yM(), one.zM()));
        }
        return seated;
    }

    private static Input input(Footprint footprint, Whole fixed, List<Aboard> people, double friction, double slope) {
        Whole occupied = Fillings.of(fixed, people).whole();
        return new Input(
                L,
                footprint,
                occupied,
                fixed,
                fixed,
                people,
                false,
                false,
                null,
                friction,
                0.1,
                slope,
                2.9,
                4.0,
                5.0,
                null,
                1.0,
                AxleSet.REAR,
                AxleSet.REAR,
                new Roll(0.01, 0.2),
                new Ratings(null, null, null),
                NOTHING_ODD);
    }

    private static Whole mirrored(Whole whole) {
        return new Whole(whole.massKg(), whole.xM(), -whole.yM(), whole.zM());
    }

    private static Footprint mirrored(Footprint footprint) {
        return new Footprint(
                footprint.plan(),
                L,
                footprint.frontTrackM(),
                footprint.rearTrackM(),
                -footprint.frontToRightM(),
                -footprint.rearToRightM());
    }

    private static List<Aboard> mirrored(List<Aboard> people) {
        return people.stream()
                .map(one -> new Aboard(
                        one.pointer(),
                        one.name(),
                        one.reference(),
                        one.person(),
                        one.massKg(),
                        one.xM(),
                        -one.yM(),
                        one.zM()))
                .toList();
    }

    @Property(tries = 300, seed = "20261125")
    void leftAndRightAreMirrorImages(
            @ForAll("footprints") Footprint footprint,
            @ForAll("vehicles") Whole fixed,
            @ForAll @Size(min = 1, max = 5) List<@From("people") Aboard> people,
            @ForAll @DoubleRange(min = -0.4, max = 0.4) double slope) {
        List<Aboard> seated = seated(people);
        Result one = Stability.of(input(footprint, fixed, seated, 0.6, slope), SILENT);
        Result other = Stability.of(input(mirrored(footprint), mirrored(fixed), mirrored(seated), 0.6, -slope), SILENT);
        Sideways sideways = one.occupied().sideways();
        Sideways mirror = other.occupied().sideways();
        assertThat(mirror.left().factor()).isCloseTo(sideways.right().factor(), within(CLOSE));
        assertThat(mirror.right().factor()).isCloseTo(sideways.left().factor(), within(CLOSE));
        assertThat(mirror.fullLock().tipSpeed()).isCloseTo(sideways.fullLock().tipSpeed(), within(1e-6));
        assertThat(mirror.slope().tipsAtRad()).isCloseTo(sideways.slope().tipsAtRad(), within(CLOSE));
        assertThat(mirror.slope().downhillOutside().tipSpeed())
                .isCloseTo(sideways.slope().downhillOutside().tipSpeed(), within(1e-6));
        assertThat(other.worst().state().sideways().weaker().factor())
                .isCloseTo(one.worst().state().sideways().weaker().factor(), within(CLOSE));
        assertThat(other.occupied().lengthways()).isEqualTo(one.occupied().lengthways());
    }

    @Property(tries = 300, seed = "20261125")
    void aVehicleTwiceAsLargeStandsTheSameAndTurnsFasterByTheRootOfTwo(
            @ForAll("footprints") Footprint footprint, @ForAll("vehicles") Whole whole) {
        Footprint larger = new Footprint(
                footprint.plan(),
                2 * L,
                2 * footprint.frontTrackM(),
                2 * footprint.rearTrackM(),
                2 * footprint.frontToRightM(),
                2 * footprint.rearToRightM());
        Whole twice = new Whole(7 * whole.massKg(), 2 * whole.xM(), 2 * whole.yM(), 2 * whole.zM());
        SideLimit one = footprint.limit(Side.LEFT, whole, null, SILENT);
        SideLimit other = larger.limit(Side.LEFT, twice, null, SILENT);
        assertThat(other.factor()).isCloseTo(one.factor(), within(CLOSE));
        assertThat(other.least()).isCloseTo(one.least(), within(CLOSE));
        double g = Constants.STANDARD_GRAVITY;
        assertThat(Turns.tipSpeed(other.factor(), 10, g, SILENT))
                .isCloseTo(Math.sqrt(2) * Turns.tipSpeed(one.factor(), 5, g, SILENT), within(1e-7));
    }

    @Property(tries = 300, seed = "20261125")
    void stabilityFallsAsHeightRises(
            @ForAll("footprints") Footprint footprint,
            @ForAll("vehicles") Whole whole,
            @ForAll @DoubleRange(min = 0.01, max = 0.5) double rise) {
        Whole higher = new Whole(whole.massKg(), whole.xM(), whole.yM(), whole.zM() + rise);
        for (Side side : Side.values()) {
            SideLimit low = footprint.limit(side, whole, null, SILENT);
            SideLimit high = footprint.limit(side, higher, null, SILENT);
            assertThat(Math.abs(high.factor())).isLessThan(Math.abs(low.factor()) + CLOSE);
            if (low.factor() > 0) {
                assertThat(high.tiltRad()).isLessThan(low.tiltRad());
                assertThat(low.bandLow()).isLessThan(low.bandHigh()).isPositive();
                assertThat(low.bandHigh()).isLessThan(low.factor());
            }
        }
    }

    /** The push that tips it straight across is never smaller than the one square to the tip line. */
    @Property(tries = 300, seed = "20261125")
    void theLeastFactorIsNeverAboveTheOneStraightAcross(
            @ForAll("footprints") Footprint footprint, @ForAll("vehicles") Whole whole) {
        for (Side side : Side.values()) {
            SideLimit limit = footprint.limit(side, whole, null, SILENT);
            assertThat(Math.abs(limit.factor())).isGreaterThanOrEqualTo(Math.abs(limit.least()) - CLOSE);
        }
    }

    @Property(tries = 300, seed = "20261125")
    void springsOnlyTakeAway(
            @ForAll("footprints") Footprint footprint,
            @ForAll("vehicles") Whole whole,
            @ForAll @DoubleRange(min = 0, max = 0.05) double gradient) {
        SideLimit limit = footprint.limit(Side.LEFT, whole, new Roll(gradient, 0.2), SILENT);
        assertThat(Math.abs(limit.suspended())).isLessThanOrEqualTo(Math.abs(limit.factor()) + CLOSE);
        assertThat(footprint
                        .limit(Side.LEFT, whole, new Roll(gradient, whole.zM()), SILENT)
                        .suspended())
                .isNull();
    }

    /** Every one of the 2ⁿ fillings is tried here; the room itself never does. */
    @Property(tries = 300, seed = "20261125")
    void theWorstFillingIsTheWorstOfAllFillings(
            @ForAll("footprints") Footprint footprint,
            @ForAll("vehicles") Whole fixed,
            @ForAll @Size(min = 1, max = 8) List<@From("people") Aboard> people) {
        List<Aboard> seated = seated(people);
        double least = Double.POSITIVE_INFINITY;
        double leastParked = Double.POSITIVE_INFINITY;
        double leastPitch = Double.POSITIVE_INFINITY;
        for (int bits = 0; bits < 1 << seated.size(); bits++) {
            List<Aboard> aboard = new ArrayList<>();
            for (int i = 0; i < seated.size(); i++) {
                if ((bits >> i & 1) == 1) {
                    aboard.add(seated.get(i));
                }
            }
            Whole whole = Fillings.of(fixed, aboard).whole();
            double factor = Math.min(
                    footprint.limit(Side.LEFT, whole, null, SILENT).factor(),
                    footprint.limit(Side.RIGHT, whole, null, SILENT).factor());
            leastParked = Math.min(leastParked, factor);
            if ((bits & 1) == 1) {
                least = Math.min(least, factor);
                leastPitch = Math.min(leastPitch, (L - whole.xM()) / whole.zM());
            }
        }
        Result result = Stability.of(input(footprint, fixed, seated, 0.6, 0), SILENT);
        assertThat(result.worst().state().sideways().weaker().factor()).isCloseTo(least, within(CLOSE));
        assertThat(result.worst().aboard()).contains(seated.get(0));
        assertThat(result.worstParked().limit().factor()).isCloseTo(leastParked, within(CLOSE));
        assertThat(Math.tan(result.rearmost().gradeRad())).isCloseTo(leastPitch, within(CLOSE));
        assertThat(result.driverAlone().factor()).isGreaterThanOrEqualTo(least - CLOSE);
    }

    @Property(tries = 200, seed = "20261125")
    void fiftyPlacesAreSearchedAsExactlyAsFive(
            @ForAll("footprints") Footprint footprint,
            @ForAll("vehicles") Whole fixed,
            @ForAll @Size(min = 30, max = 50) List<@From("people") Aboard> people) {
        List<Aboard> seated = seated(people);
        Result result = Stability.of(input(footprint, fixed, seated, 0.6, 0), SILENT);
        double worst = result.worst().state().sideways().weaker().factor();
        for (int i = 1; i < seated.size(); i++) {
            List<Aboard> changed = new ArrayList<>(result.worst().aboard());
            if (!changed.remove(seated.get(i))) {
                changed.add(seated.get(i));
            }
            Whole whole = Fillings.of(fixed, changed).whole();
            for (Side side : Side.values()) {
                assertThat(footprint.limit(side, whole, null, SILENT).factor()).isGreaterThanOrEqualTo(worst - CLOSE);
            }
        }
    }

    @Property(tries = 300, seed = "20261125")
    void axleLoadsAddUpToTheWeightAcrossTheSlopeAndMoveByMassTimesAcceleration(
            @ForAll("footprints") Footprint footprint, @ForAll("vehicles") Whole whole) {
        Input input = input(footprint, whole, List.of(), 0.6, 0);
        Lengthways lengthways = Stability.of(input, SILENT).occupied().lengthways();
        double weight = whole.massKg() * Constants.STANDARD_GRAVITY;
        for (AxleLoads loads : lengthways.loads()) {
            assertThat(loads.frontN() + loads.rearN()).isCloseTo(weight * Math.cos(loads.gradeRad()), within(1e-6));
            double moment = loads.rearN() * L;
            double pushed = whole.massKg()
                    * whole.zM()
                    * (loads.acceleration() + Constants.STANDARD_GRAVITY * Math.sin(loads.gradeRad()));
            assertThat(moment).isCloseTo(weight * Math.cos(loads.gradeRad()) * whole.xM() + pushed, within(1e-5));
        }
    }

    /** What a turn moves from the inner to the outer wheels is the same on hard and on soft springs. */
    @Property(tries = 200, seed = "20261125")
    void theLoadMovedInATurnComesFromMassTimesAccelerationWhateverTheSprings(
            @ForAll("footprints") Footprint footprint,
            @ForAll("vehicles") Whole whole,
            @ForAll @DoubleRange(min = 0, max = 0.05) double gradient) {
        Input hard = input(footprint, whole, List.of(), 0.6, 0);
        Turn stiff = Stability.of(hard, SILENT).occupied().sideways().turn();
        Input soft = new Input(
                L,
                footprint,
                whole,
                whole,
                whole,
                List.of(),
                false,
                false,
                null,
                0.6,
                null,
                null,
                null,
                4.0,
                5.0,
                null,
                null,
                null,
                null,
                new Roll(gradient, 0),
                new Ratings(null, null, null),
                NOTHING_ODD);
        Turn rolling = Stability.of(soft, SILENT).occupied().sideways().turn();
        assertThat(rolling.loadTransferN()).isCloseTo(stiff.loadTransferN(), within(1e-6));
        double track = footprint.acrossM(Side.LEFT, whole.xM(), whole.yM())
                + footprint.acrossM(Side.RIGHT, whole.xM(), whole.yM());
        assertThat(stiff.loadTransferN() * track)
                .isCloseTo(whole.massKg() * 5.0 * 5.0 / 4.0 * whole.zM(), within(1e-6));
    }

    @Property(tries = 300, seed = "20261125")
    void aSlideBeforeTheTipNeverReadsAsSafe(
            @ForAll("footprints") Footprint footprint,
            @ForAll("vehicles") Whole fixed,
            @ForAll @Size(min = 1, max = 4) List<@From("people") Aboard> people,
            @ForAll @DoubleRange(min = 0.05, max = 1.2) double friction) {
        Trace trace = Trace.withoutWorking();
        Stability.of(input(footprint, fixed, seated(people), friction, 0.05), trace);
        assertThat(trace.findings())
                .filteredOn(finding -> List.of("slides-before-tipping", "tips-before-sliding", "tips-at-rest")
                        .contains(finding.code()))
                .isNotEmpty()
                .extracting(Finding::level)
                .allMatch(level -> level.compareTo(Level.WARNING) >= 0);
    }

    @Property(tries = 200, seed = "20261125")
    void onALevelAllTurnsAreTheFlatOne(
            @ForAll @DoubleRange(min = 0.2, max = 1.5) double factor,
            @ForAll @DoubleRange(min = 1, max = 50) double radius) {
        double g = Constants.STANDARD_GRAVITY;
        double flat = Turns.tipSpeed(factor, radius, g, SILENT);
        assertThat(Turns.speedOnSlope(factor, radius, 0, true, g, SILENT)).isCloseTo(flat, within(CLOSE));
        assertThat(Turns.speedBanked(factor, radius, 0, true, g, SILENT)).isCloseTo(flat, within(CLOSE));
        assertThat(Turns.speedBanked(factor, radius, 0, false, g, SILENT)).isCloseTo(flat, within(CLOSE));
    }

    /** Just where it goes over standing, no speed is left for a turn with the downhill side outside. */
    @Property(tries = 200, seed = "20261125")
    void onTheSlopeThatTipsItStandingNoSpeedIsLeft(
            @ForAll @DoubleRange(min = 0.2, max = 1.5) double factor,
            @ForAll @DoubleRange(min = 1, max = 50) double radius) {
        double g = Constants.STANDARD_GRAVITY;
        double angle = Math.atan(factor);
        assertThat(Turns.speedOnSlope(factor, radius, angle, true, g, SILENT)).isCloseTo(0, within(1e-5));
        assertThat(Turns.speedBanked(factor, radius, angle, true, g, SILENT)).isCloseTo(0, within(1e-5));
    }

    @Property(tries = 100, seed = "20261125")
    void theWorkingChangesNothingAndHoldsOnlyFiniteNumbers(
            @ForAll("footprints") Footprint footprint,
            @ForAll("vehicles") Whole fixed,
            @ForAll @Size(min = 1, max = 5) List<@From("people") Aboard> people) {
        Input input = input(footprint, fixed, seated(people), 0.6, 0.05);
        Trace trace = Trace.withWorking();
        assertThat(Stability.of(input, trace)).isEqualTo(Stability.of(input, SILENT));
        assertThat(trace.lines()).isNotEmpty();
        assertThat(trace.lines()).extracting(Line::value).allMatch(Double::isFinite);
        assertThat(trace.lines())
                .flatExtracting(Line::terms)
                .extracting(term -> ((Term) term).value())
                .allMatch(Double::isFinite);
    }
}

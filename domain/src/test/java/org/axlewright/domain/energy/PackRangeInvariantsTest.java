package org.axlewright.domain.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.axlewright.domain.energy.PackRange.ConstantPower;
import org.axlewright.domain.energy.PackRange.Duty;
import org.axlewright.domain.energy.PackRange.Input;
import org.axlewright.domain.energy.PackRange.Limits;
import org.axlewright.domain.energy.PackRange.Pack;
import org.axlewright.domain.energy.PackRange.Reach;
import org.axlewright.domain.energy.PackRange.Result;
import org.axlewright.domain.energy.PackRange.Route;
import org.axlewright.domain.energy.PackRange.Stretch;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.pack.DischargeCapacity;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.api.Test;

/** What holds of any pack on any route. */
class PackRangeInvariantsTest {

    private static final Limits NO_LIMITS = new Limits(null, null, null, null);
    private static final Vehicle CART = new Vehicle(600, 0.05, 1.4, 0.7, 0, 60, null, null);

    private static Pack lithium(double ampereHours, Double ohm, int strings) {
        return new Pack(
                Chemistry.LFP,
                16,
                strings,
                DischargeCapacity.rated(3600 * ampereHours, 3 * 3600, 1),
                1,
                0.8,
                0.1,
                ohm,
                false,
                25,
                NO_LIMITS);
    }

    private static Pack flooded(Double ohm) {
        return new Pack(
                Chemistry.FLOODED,
                24,
                1,
                DischargeCapacity.rated(225 * 3600, 20 * 3600, 1.25),
                1,
                0.5,
                0,
                ohm,
                false,
                10,
                NO_LIMITS);
    }

    private static RouteLeg leg(double distanceM, double gradePercent, double speedMPS, int stops, double waitS) {
        return new RouteLeg(distanceM, Math.atan(gradePercent / 100), false, speedMPS, 0.02, stops, waitS, null);
    }

    private static Result ask(Pack pack, Duty duty) {
        return PackRange.of(new Input(pack, duty, false), Trace.withoutWorking());
    }

    private static Route route(Vehicle vehicle, RouteLeg... legs) {
        return new Route(vehicle, List.of(legs), null);
    }

    @Property(seed = "20261125")
    void theEnergyOfALegIsWhatItsPartsAddUpTo(
            @ForAll @DoubleRange(min = -30, max = 30) double grade,
            @ForAll @DoubleRange(min = 0.5, max = 15) double speed,
            @ForAll @IntRange(max = 50) int stops,
            @ForAll @DoubleRange(min = 0, max = 600) double wait,
            @ForAll @DoubleRange(min = 0, max = 1) double regeneration,
            @ForAll @DoubleRange(min = 0.3, max = 1) double efficiency) {
        Vehicle vehicle = new Vehicle(600, 0.05, 1.4, efficiency, regeneration, 60, null, null);
        LegDemand leg = ask(lithium(105, null, 1), route(vehicle, leg(800, grade, speed, stops, wait)))
                .legs()
                .get(0);

        assertThat(leg.split().totalJ()).isCloseTo(leg.energyJ(), within(1e-6 * (1 + Math.abs(leg.energyJ()))));
    }

    @Property(seed = "20261125")
    void cuttingALegInTwoChangesNothing(
            @ForAll @DoubleRange(min = -15, max = 15) double grade,
            @ForAll @DoubleRange(min = 1, max = 10) double speed,
            @ForAll @DoubleRange(min = 0.01, max = 0.99) double cut) {
        Route whole = route(CART, leg(5000, grade, speed, 0, 0));
        Route parts = route(CART, leg(5000 * cut, grade, speed, 0, 0), leg(5000 * (1 - cut), grade, speed, 0, 0));
        Result one = ask(lithium(105, 0.01, 1), whole);
        Result two = ask(lithium(105, 0.01, 1), parts);

        assertThat(two.averagePowerW()).isCloseTo(one.averagePowerW(), within(1e-6));
        assertThat(two.averageCurrentA()).isCloseTo(one.averageCurrentA(), within(1e-6));
        assertThat(two.rangeM()).isCloseTo(one.rangeM(), within(1e-9 * one.rangeM()));
    }

    @Property(seed = "20261125")
    void usableEnergyIsMeanPowerTimesRunningTimeOnOneSteadyLeg(
            @ForAll @DoubleRange(min = 0, max = 12) double grade,
            @ForAll @DoubleRange(min = 1, max = 10) double speed,
            @ForAll @DoubleRange(min = 0, max = 0.02) double ohm) {
        Result result = ask(flooded(ohm), route(CART, leg(700, grade, speed, 0, 0)));

        assertThat(result.averagePowerW() * result.runtimeS())
                .isCloseTo(result.usableEnergyJ(), within(1e-9 * result.usableEnergyJ()));
        assertThat(result.rangeM() * result.consumptionJPerM())
                .isCloseTo(result.usableEnergyJ(), within(1e-9 * result.usableEnergyJ()));
        assertThat(result.averageCurrentA() * result.runtimeS())
                .isCloseTo(result.deliveredChargeC(), within(1e-9 * result.deliveredChargeC()));
    }

    @Property(seed = "20261125")
    void heavierGoesLessFarAndALargerPackFurther(
            @ForAll @DoubleRange(min = 200, max = 900) double massKg,
            @ForAll @DoubleRange(min = 1, max = 300) double more,
            @ForAll @DoubleRange(min = 0, max = 10) double grade) {
        RouteLeg[] legs = {leg(900, grade, 6, 2, 30), leg(1200, 0, 5, 0, 0)};
        Vehicle light = new Vehicle(massKg, 0.05, 1.4, 0.7, 0, 60, null, null);
        Vehicle heavy = new Vehicle(massKg + more, 0.05, 1.4, 0.7, 0, 60, null, null);
        double range = ask(lithium(105, 0.01, 1), route(light, legs)).rangeM();

        assertThat(ask(lithium(105, 0.01, 1), route(heavy, legs)).rangeM()).isLessThan(range);
        assertThat(ask(lithium(106, 0.01, 1), route(light, legs)).rangeM()).isGreaterThan(range);
    }

    @Property(seed = "20261125")
    void lithiumRangeGrowsWithTheStringsOnASteadyRoad(@ForAll @IntRange(min = 2, max = 8) int strings) {
        Route road = route(CART, leg(500, 0, 6, 0, 0));
        double one = ask(lithium(50, null, 1), road).rangeM();

        assertThat(ask(lithium(50, null, strings), road).rangeM())
                .isCloseTo(strings * one, within(1e-9 * strings * one));
    }

    @Property(seed = "20261125")
    void leadAcidGivesLessWhenItIsAskedForMore(
            @ForAll @DoubleRange(min = 200, max = 5000) double powerW,
            @ForAll @DoubleRange(min = 1.01, max = 2) double factor) {
        Result gentle = ask(flooded(null), new ConstantPower(powerW));
        Result harsh = ask(flooded(null), new ConstantPower(powerW * factor));

        assertThat(harsh.deliveredChargeC()).isLessThanOrEqualTo(gentle.deliveredChargeC());
        assertThat(harsh.runtimeS()).isLessThan(gentle.runtimeS() / factor * (1 + 1e-12));
    }

    @Test
    void withoutLossesTheWayDownPaysForTheWayUp() {
        Vehicle ideal = new Vehicle(600, 0, 0, 1, 1, 0, null, null);
        RouteLeg up = new RouteLeg(400, 0.1, false, 5, 0, 0, 0, null);
        RouteLeg down = new RouteLeg(400, -0.1, false, 5, 0, 0, 0, null);
        Trace trace = Trace.withoutWorking();
        Result result = PackRange.of(new Input(lithium(105, null, 1), route(ideal, up, down), false), trace);

        assertThat(result.rangeM()).isNull();
        assertThat(result.runtimeS()).isNull();
        assertThat(result.averagePowerW()).isCloseTo(0, within(1e-9));
        assertThat(trace.findings()).extracting(Finding::code).contains("no-net-consumption");
    }

    @Test
    void countsClimbAsMassTimesGravityTimesHeight() {
        RouteLeg up = new RouteLeg(1000, Math.asin(0.03), false, 5, 0.02, 0, 0, null);
        LegDemand leg = ask(lithium(105, null, 1), route(CART, up)).legs().get(0);

        assertThat(leg.split().climbJ()).isCloseTo(600 * 9.80665 * 30, within(1e-6));
    }

    @Test
    void drivesTheLastLapLegByLeg() {
        // 10 C a lap: 6 C over 100 m, 1 C standing, 3 C over 50 m; 28 C are two laps, 100 m, the wait and a third of
        // the last leg
        List<Stretch> lap =
                List.of(new Stretch(6, 60, 100), new Stretch(1, 10, 0), new Stretch(3, 30, 50), new Stretch(0, 0, 0));

        Reach reach = PackRange.reach(lap, 28);
        assertThat(reach.distanceM()).isCloseTo(2 * 150 + 100 + 50.0 / 3, within(1e-9));
        assertThat(reach.timeS()).isCloseTo(2 * 100 + 60 + 10 + 10, within(1e-9));
    }

    @Test
    void aFullPackTakesNothingBack() {
        // 4 C back at once are lost; then 10 C out: the first lap ends with 10 C spent, the second with 16 C
        List<Stretch> lap = List.of(new Stretch(-4, 10, 100), new Stretch(10, 10, 100));

        assertThat(PackRange.reach(lap, 10).distanceM()).isCloseTo(200, within(1e-9));
        assertThat(PackRange.reach(lap, 16).distanceM()).isCloseTo(400, within(1e-9));
        assertThat(PackRange.reach(lap, 11).distanceM()).isCloseTo(350, within(1e-9));
    }

    @Property(seed = "20261125", tries = 500)
    void jumpingOverFullLapsIsTheSameAsDrivingThem(
            @ForAll @Size(min = 1, max = 6) List<@IntRange(min = -20, max = 40) Integer> charges,
            @ForAll @IntRange(min = 1, max = 500) int available) {
        List<Stretch> lap = new ArrayList<>();
        for (int charge : charges) {
            lap.add(new Stretch(charge, 7, 11));
        }
        int balance = charges.stream().mapToInt(Integer::intValue).sum();
        Reach reach = PackRange.reach(lap, available);
        Double driven = drive(charges, available, balance);

        if (driven == null) {
            assertThat(reach).isNull();
        } else {
            assertThat(reach.distanceM()).isCloseTo(driven, within(1e-6));
        }
    }

    /** Lap after lap, one stretch at a time; null when a whole lap spends nothing. */
    private static Double drive(List<Integer> charges, int available, int balance) {
        double spent = 0;
        double distance = 0;
        for (int lap = 0; lap < 2000; lap++) {
            for (int charge : charges) {
                if (spent + charge >= available) {
                    return distance + 11 * (available - spent) / charge;
                }
                spent = Math.max(0, spent + charge);
                distance += 11;
            }
            if (balance <= 0) {
                return null;
            }
        }
        throw new AssertionError("too many laps");
    }

    @Property(seed = "20261125")
    void sagCostsRange(@ForAll @DoubleRange(min = 0.01, max = 0.05) double ohm) {
        Route hill = route(CART, leg(500, 8, 5, 1, 10));
        Result with = ask(lithium(105, ohm, 1), hill);
        Result without = ask(lithium(105, null, 1), hill);

        assertThat(with.rangeM()).isLessThan(without.rangeM());
        assertThat(with.peakVoltageV()).isLessThan(51.2);
        assertThat(without.peakVoltageV()).isNull();
    }

    @Test
    void leavesOutWhatAPackCanNotGive() {
        Trace trace = Trace.withoutWorking();
        Result result =
                PackRange.of(new Input(lithium(105, 0.5, 1), route(CART, leg(500, 20, 10, 0, 0)), false), trace);

        assertThat(result.rangeM()).isNull();
        assertThat(result.averageCurrentA()).isNull();
        assertThat(result.nominalEnergyJ()).isCloseTo(51.2 * 105 * 3600, within(1e-3));
        assertThat(trace.findings()).extracting(Finding::code).contains("power-beyond-pack");
    }

    @Property(seed = "20261125", tries = 200)
    void whatIsLeftOfThePackCarriesAsFarAsItsShareSays(
            @ForAll @DoubleRange(min = 0.5, max = 1) double health,
            @ForAll @DoubleRange(min = 20, max = 300) double ampereHours) {
        Pack whole = lithium(ampereHours, null, 1);
        Pack aged = new Pack(
                whole.chemistry(),
                whole.cellsInSeries(),
                whole.strings(),
                whole.string(),
                health,
                whole.usableShare(),
                whole.reserveShare(),
                null,
                false,
                25,
                NO_LIMITS);
        Route route = route(CART, leg(3000, 0, 5, 2, 30), leg(400, 6, 4, 0, 0));
        Result asNew = ask(whole, route);
        Result now = ask(aged, route);

        assertThat(now.deliveredChargeC()).isCloseTo(asNew.deliveredChargeC() * health, withinPercentage(1e-9));
        assertThat(now.life().whenNew().rangeM()).isCloseTo(asNew.rangeM(), withinPercentage(1e-9));
        assertThat(asNew.life().whenNew().usableEnergyJ()).isEqualTo(asNew.usableEnergyJ());
        assertThat(now.life().endOfLife().usableEnergyJ())
                .isCloseTo(asNew.usableEnergyJ() * 0.8, withinPercentage(1e-9));
        assertThat(now.life().endOfLife().rangeM()).isLessThan(asNew.rangeM());
    }

    @Test
    void saysThatThePackQuitsOnTheHill() {
        Pack small = new Pack(
                Chemistry.LFP,
                16,
                1,
                DischargeCapacity.rated(30 * 3600, 3 * 3600, 1),
                1,
                0.8,
                0,
                null,
                false,
                25,
                new Limits(60.0, 120.0, 10.0, null));
        Trace trace = Trace.withoutWorking();
        PackRange.of(
                new Input(
                        small, route(CART, leg(2000, 0, 4, 0, 0), leg(300, 7, 5, 0, 0), leg(300, 20, 6, 0, 0)), false),
                trace);

        assertThat(trace.findings())
                .extracting(finding -> finding.code() + " " + finding.pointer())
                .contains(
                        "over-continuous-discharge /route/1", "peak-too-long /route/1", "over-peak-discharge /route/2")
                .doesNotContain("over-continuous-discharge /route/0");
    }

    @Property(seed = "20261125")
    void staysFiniteAtTheCornersOfEveryRange(
            @ForAll boolean heavy,
            @ForAll boolean fast,
            @ForAll boolean steep,
            @ForAll boolean down,
            @ForAll boolean big,
            @ForAll boolean far,
            @ForAll boolean back,
            @ForAll boolean resisting) {
        double grade = (down ? -1 : 1) * (steep ? Math.PI / 4 : 0);
        Vehicle vehicle =
                new Vehicle(heavy ? 20_000 : 1, 1, 10, heavy ? 0.05 : 1, back ? 1 : 0, big ? 20_000 : 0, null, null);
        RouteLeg leg = new RouteLeg(
                far ? 1e6 : 0.1, grade, false, fast ? 60 : 0.1, 0.5, far ? 0 : 10_000, big ? 86_400 : 0, null);
        Pack pack = new Pack(
                Chemistry.NMC,
                1,
                big ? 100 : 1,
                DischargeCapacity.rated(big ? 3.6e7 : 360, big ? 720_000 : 360, 2),
                1,
                1,
                0,
                resisting ? 100.0 : null,
                true,
                100,
                NO_LIMITS);
        Result result = ask(pack, route(vehicle, leg));

        for (Double value : new Double[] {
            result.usableEnergyJ(),
            result.deliveredChargeC(),
            result.averagePowerW(),
            result.averageCurrentA(),
            result.dischargeRate(),
            result.peakPowerW(),
            result.peakCurrentA(),
            result.consumptionJPerM(),
            result.rangeM(),
            result.runtimeS()
        }) {
            assertThat(value == null || Double.isFinite(value))
                    .as(result.toString())
                    .isTrue();
        }
    }
}

package org.axlewright.domain.storage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.axlewright.domain.PublishedChecks;
import org.axlewright.domain.PublishedChecks.Case;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.pack.FreezingPoint;
import org.axlewright.domain.quantity.ChargeUnit;
import org.axlewright.domain.quantity.TemperatureUnit;
import org.axlewright.domain.quantity.TimeUnit;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class StoragePublishedTest {

    private static final String CHECKS = "/storage/checks.csv";

    private static final double WEEKS_IN_A_MONTH = TimeUnit.WEEK.fromSi(TimeUnit.MONTH.toSi(1));

    private static List<Case> linear() {
        return PublishedChecks.read(CHECKS, "self-discharge, linear");
    }

    @ParameterizedTest
    @MethodSource("linear")
    void losesAsMuchEveryWeekAsTheSupplierSays(Case one) {
        double rate = one.in("rate") / 100 * WEEKS_IN_A_MONTH;
        double capacityC = ChargeUnit.AMPERE_HOUR.toSi(one.in("c"));
        Storage.Result result = Storage.of(
                StorageCases.input(Chemistry.FLOODED, 1, capacityC, 0, TimeUnit.WEEK.toSi(one.in("weeks")), 20, rate),
                Trace.withoutWorking());
        double lostC = Objects.requireNonNull(result.after()).lostToSelfDischarge() * capacityC;
        one.check("lost", ChargeUnit.AMPERE_HOUR.fromSi(lostC));
    }

    private static List<Case> colder() {
        return PublishedChecks.read(CHECKS, "rate when colder");
    }

    @ParameterizedTest
    @MethodSource("colder")
    void losesHalfAsMuchTenKelvinCooler(Case one) {
        one.check("rate_t", 100 * rate(one, one.in("rate") / 100));
    }

    private static List<Case> golfCars() {
        return PublishedChecks.read(CHECKS, "golf-car rate");
    }

    @ParameterizedTest
    @MethodSource("golfCars")
    void aFloodedTractionPackLosesAboutWhatItsSupplierSays(Case one) {
        double usual = StorageHabit.of(Chemistry.FLOODED).selfDischarge().value();
        one.check("rate_t", 100 * rate(one, usual) / WEEKS_IN_A_MONTH);
    }

    private static List<Case> toEighty() {
        return PublishedChecks.read(CHECKS, "months to 80 %");
    }

    @ParameterizedTest
    @MethodSource("toEighty")
    void reachesEightyPercentAfterSoManyMonths(Case one) {
        Storage.Result result = Storage.of(
                new Storage.Input(
                        chemistry(one),
                        1,
                        null,
                        0,
                        null,
                        one.in("t"),
                        one.in("t"),
                        one.in("rate") / 100,
                        0.8,
                        1e9,
                        null,
                        null),
                Trace.withoutWorking());
        one.check("months", TimeUnit.MONTH.fromSi(result.rechargeWithinS()));
    }

    private static List<Case> longest() {
        return PublishedChecks.read(CHECKS, "longest standing");
    }

    @ParameterizedTest
    @MethodSource("longest")
    void isRechargedInTheColdTooBeforeTheHandbooksMonthsAreOver(Case one) {
        Storage.Result result = Storage.of(
                StorageCases.input(chemistry(one), 1, null, 0, null, one.in("t"), 0.005), Trace.withoutWorking());
        one.check("months", TimeUnit.MONTH.fromSi(result.rechargeWithinS()));
    }

    private static List<Case> retention() {
        return PublishedChecks.read(CHECKS, "retention");
    }

    @ParameterizedTest
    @MethodSource("retention")
    void keepsAtLeastWhatTheDataSheetPromises(Case one) {
        Storage.Result result = Storage.of(
                StorageCases.input(chemistry(one), 1, null, 0, TimeUnit.DAY.toSi(one.in("days")), one.in("t"), null),
                Trace.withoutWorking());
        assertThat(Objects.requireNonNull(result.after()).stateOfCharge()).isGreaterThanOrEqualTo(one.out("least"));
    }

    private static List<Case> gravities() {
        return PublishedChecks.read(CHECKS, "freezing by gravity");
    }

    /** The table is an army course's, the check a vehicle maker's: the two agree within some degrees. */
    @ParameterizedTest
    @MethodSource("gravities")
    void acidOfAGravityFreezesWhereAnotherTableSays(Case one) {
        one.check("t", TemperatureUnit.DEGREE_FAHRENHEIT.fromSi(FreezingPoint.ofGravityC(one.in("sg"))));
    }

    private static List<Case> charges() {
        return PublishedChecks.read(CHECKS, "freezing by charge");
    }

    @ParameterizedTest
    @MethodSource("charges")
    void aPackFreezesAtItsStateOfChargeAsTheManualsSay(Case one) {
        Storage.Result result = Storage.of(
                StorageCases.input(Chemistry.FLOODED, one.in("soc"), null, 0, null, 0, null), Trace.withoutWorking());
        one.check("t", Objects.requireNonNull(result.freezingC()));
    }

    /** Common practice, no source: a lithium pack stored full starts again after eight months. */
    @Test
    void aLithiumPackStoredFullStartsAgainAfterEightMonths() {
        Trace trace = Trace.withoutWorking();
        Storage.Result result = Storage.of(
                StorageCases.input(
                        Chemistry.LFP, 1, ChargeUnit.AMPERE_HOUR.toSi(105), 0.005, TimeUnit.MONTH.toSi(8), 15, null),
                trace);
        assertThat(Objects.requireNonNull(result.after()).stateOfCharge()).isBetween(0.4, 0.9);
        assertThat(trace.findings().stream().map(finding -> finding.code())).contains("starts-again");
    }

    private static double rate(Case one, double at20) {
        return Storage.of(
                        StorageCases.input(chemistry(one), 1, null, 0, null, one.in("t"), at20), Trace.withoutWorking())
                .selfDischargeShare();
    }

    private static Chemistry chemistry(Case one) {
        return Arrays.stream(Chemistry.values())
                .filter(value -> value.toString().equals(one.inText("chemistry")))
                .findFirst()
                .orElseThrow();
    }
}

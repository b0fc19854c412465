package org.axlewright.domain.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.axlewright.domain.quantity.Constants.STANDARD_GRAVITY;

import java.util.List;
import java.util.Objects;
import org.axlewright.domain.PublishedChecks;
import org.axlewright.domain.PublishedChecks.Case;
import org.axlewright.domain.axles.Axle;
import org.axlewright.domain.axles.AxleSprings;
import org.axlewright.domain.axles.SpringData;
import org.axlewright.domain.quantity.LoadUnit;
import org.axlewright.domain.ride.RideHeight.AxleInput;
import org.axlewright.domain.ride.RideHeight.Input;
import org.axlewright.domain.ride.RideHeight.Loading;
import org.axlewright.domain.ride.RideHeight.Result;
import org.axlewright.domain.ride.RideHeight.State;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Springs, squat and ride frequency against what is printed. A whole car is asked as one axle that carries it all. */
class RideHeightPublishedTest {

    private static final Trace SILENT = Trace.withoutWorking();

    static List<Case> wheelRates() {
        return of("wheel rate");
    }

    static List<Case> bare() {
        return of("frequency without tyre");
    }

    static List<Case> onTyres() {
        return of("frequency on suspension and tyre");
    }

    static List<Case> pressed() {
        return of("press and bounce");
    }

    static List<Case> passengers() {
        return of("springs and passengers");
    }

    static List<Case> sags() {
        return of("sag of three more");
    }

    static List<Case> leaves() {
        return of("leaf spring load");
    }

    private static List<Case> of(String... topics) {
        return PublishedChecks.read("/ride/checks.csv", topics);
    }

    /** The axle found with {@code foundKg} on it, then loaded to {@code loadedKg}. */
    private static Result ask(SpringData springs, double foundKg, double loadedKg) {
        AxleInput rear = new AxleInput(Axle.REAR, springs, 0, null, null, foundKg * STANDARD_GRAVITY, 0);
        return RideHeight.of(
                new Input(
                        null,
                        null,
                        rear,
                        new Loading("occupied", "occupied", 0, loadedKg * STANDARD_GRAVITY),
                        new Loading("empty", "empty", 0, foundKg * STANDARD_GRAVITY),
                        List.of()),
                SILENT);
    }

    private static double frequency(@Nullable State state) {
        return Objects.requireNonNull(
                Objects.requireNonNull(Objects.requireNonNull(state).rear()).frequencyHz());
    }

    private static double wheelRate(SpringData springs) {
        return Objects.requireNonNull(ask(springs, 100, 100).rear()).wheelRate();
    }

    @ParameterizedTest
    @MethodSource("wheelRates")
    void theMotionRatioCountsTwice(Case row) {
        SpringData springs = new SpringData.ByRate(row.in("k_s") * 1000, 2, row.in("mr"), null);
        row.check("k_w", wheelRate(springs) / 1000);
    }

    @ParameterizedTest
    @MethodSource("bare")
    void oneWheelSwingsOnItsRate(Case row) {
        SpringData springs = new SpringData.ByRate(row.in("k_w") * 1000, 1, 1, null);
        row.check("f", frequency(ask(springs, row.in("m_s"), row.in("m_s")).occupied()));
    }

    @ParameterizedTest
    @MethodSource("onTyres")
    void theTyreIsInSeries(Case row) {
        SpringData springs = new SpringData.ByRate(row.in("k_w") * 1000, 1, 1, row.in("k_t") * 1000);
        row.check("f", frequency(ask(springs, row.in("m_s"), row.in("m_s")).occupied()));
    }

    @ParameterizedTest
    @MethodSource("pressed")
    void oneMeasurementTellsTheRate(Case row) {
        SpringData springs = new SpringData.ByDrop(row.in("load") * row.in("g"), row.in("drop") / 1000, 1, 1, null);
        Result result = ask(springs, row.in("m"), row.in("m"));
        row.check("k", Objects.requireNonNull(result.rear()).springRate());
        row.check("f", frequency(result.occupied()));
    }

    @ParameterizedTest
    @MethodSource("passengers")
    void passengersSlowTheBounce(Case row) {
        double perCycle = 2 * Math.PI * row.in("f_empty");
        double rate = perCycle * perCycle * row.in("m") / 4;
        row.check("k", rate);
        double printed = row.out("k");
        Result result = ask(
                new SpringData.ByRate(printed, 4, 1, null),
                row.in("m"),
                row.in("m") + row.in("people") * row.in("each"));
        assertThat(Math.abs(frequency(result.empty()) / row.in("f_empty") - 1)).isLessThan(0.003);
        if (row.expected().containsKey("f")) {
            row.check("f", frequency(result.occupied()));
        }
    }

    @ParameterizedTest
    @MethodSource("sags")
    void moreLoadSagsByItsWeightOverTheRate(Case row) {
        double perSecond = 2 * Math.PI * row.in("v") / row.in("spacing");
        AxleSprings springs = new AxleSprings(perSecond * perSecond * row.in("m"), null);
        row.check("sag", 1000 * springs.squatM(row.in("load") * row.in("g"), SILENT));
    }

    @ParameterizedTest
    @MethodSource("leaves")
    void aLeafCarriesItsRateTimesItsDeflection(Case row) {
        AxleSprings one = AxleSprings.ofSprings(row.in("k_s") * 1000, 1, 1, null, SILENT);
        double loadN = row.in("deflection") / 1000 * one.suspensionRate();
        row.check("load", LoadUnit.POUND.fromSi(loadN));
        assertThat(one.squatM(loadN, SILENT)).isEqualTo(row.in("deflection") / 1000);
    }
}

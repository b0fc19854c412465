package org.axlewright.domain.roadload;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.axlewright.domain.PublishedChecks;
import org.axlewright.domain.PublishedChecks.Case;
import org.axlewright.domain.check.InvalidInput;
import org.axlewright.domain.quantity.SpeedUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Coast-down times against the regulation, the polynomial against its printed forms. */
class SpeedPolynomialPublishedTest {

    private static final double SECONDS_PER_KMH = SpeedUnit.KILOMETRE_PER_HOUR.toSi(1);

    static List<Case> coastDowns() {
        return PublishedChecks.read("/roadload/checks.csv", "coast-down time 70 to 60 km/h");
    }

    static List<Case> polynomials() {
        return PublishedChecks.read("/roadload/checks.csv", "EPA polynomial");
    }

    @ParameterizedTest
    @MethodSource("coastDowns")
    void rollsDownAsLongAsTheRegulationSays(Case row) {
        SpeedPolynomial load = new SpeedPolynomial(row.in("a"), 0, row.in("c") / (SECONDS_PER_KMH * SECONDS_PER_KMH));
        row.check("t", load.rollingTimeS(row.in("m"), 70 * SECONDS_PER_KMH, 60 * SECONDS_PER_KMH));
    }

    @ParameterizedTest
    @MethodSource("polynomials")
    void givesForceAndPowerAtASpeed(Case row) {
        SpeedPolynomial load = new SpeedPolynomial(row.in("a"), row.in("b"), row.in("c"));
        row.check("f", load.forceN(row.in("v")));
        row.check("p", load.powerW(row.in("v")));
    }

    @Property(seed = "20261125")
    void twoStretchesTakeAsLongAsTheWhole(
            @ForAll @DoubleRange(min = 1, max = 300) double a,
            @ForAll @DoubleRange(min = 0, max = 10) double b,
            @ForAll @DoubleRange(min = 0, max = 2) double c,
            @ForAll @DoubleRange(min = 0.05, max = 0.95) double cut) {
        SpeedPolynomial load = new SpeedPolynomial(a, b, c);
        double between = 2 + cut * 10;
        double whole = load.rollingTimeS(500, 12, 2);

        assertThat(load.rollingTimeS(500, 12, between) + load.rollingTimeS(500, between, 2))
                .isCloseTo(whole, within(1e-8 * whole));
    }

    @Property(seed = "20261125")
    void aConstantForceSlowsDownEvenly(@ForAll @DoubleRange(min = 10, max = 3000) double force) {
        assertThat(new SpeedPolynomial(force, 0, 0).rollingTimeS(600, 10, 4))
                .isCloseTo(600 * 6 / force, within(1e-8 * 3600 / force));
    }

    @Test
    void doesNotRollThroughTheSpeedAtWhichItStays() {
        SpeedPolynomial hill = new SpeedPolynomial(-100, 0, 1);

        assertThatThrownBy(() -> hill.rollingTimeS(600, 5, 15)).isInstanceOf(InvalidInput.class);
    }
}

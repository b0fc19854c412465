package org.axlewright.domain.whatif;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.UnaryOperator;
import org.axlewright.domain.whatif.Uncertainty.Distribution;
import org.axlewright.domain.whatif.Uncertainty.FirstOrder;
import org.axlewright.domain.whatif.Uncertainty.Input;
import org.axlewright.domain.whatif.Uncertainty.Spread;
import org.junit.jupiter.api.Test;

/** Worked examples of JCGM 100:2008 and JCGM 101:2008. */
class UncertaintyPublishedTest {

    private static final long SEED = 20_261_125;
    private static final int TRIALS = 200_000;

    /** An input of which the example gives the standard uncertainty. */
    private static Input normal(double value, double standard) {
        return new Input(value, 2 * standard, Distribution.NORMAL);
    }

    /** The same, anywhere within limits. */
    private static Input rectangular(double value, double standard) {
        return new Input(value, Math.sqrt(3) * standard, Distribution.RECTANGULAR);
    }

    /**
     * JCGM 100:2008, H.1, calibration of an end gauge: l = l_s + d - l_s (da t + a_s dt), with l_s = 50.000 623 mm, d = 215 nm,
     * a_s = 11.5e-6 /degC, t = -0.1 degC. Table H.1: 25, 9.7, 2.9 and 16.6 nm, combined 32 nm.
     */
    @Test
    void theEndGauge() {
        UnaryOperator<double[]> length = x -> new double[] {x[0] + x[1] - x[0] * (x[2] * x[3] + x[4] * x[5])};
        FirstOrder found = Uncertainty.firstOrder(
                length,
                normal(50_000_623, 25),
                normal(215, 9.7),
                rectangular(0, 0.58e-6),
                normal(-0.1, 0.41),
                rectangular(11.5e-6, 1.2e-6),
                rectangular(0, 0.029))[0];
        assertThat(found.contributions().get(0)).isCloseTo(25, within(0.05));
        assertThat(found.contributions().get(1)).isCloseTo(9.7, within(0.05));
        assertThat(Math.abs(found.contributions().get(2))).isCloseTo(2.9, within(0.05));
        assertThat(found.contributions().get(3)).isCloseTo(0, within(1e-6));
        assertThat(found.contributions().get(4)).isCloseTo(0, within(1e-6));
        assertThat(Math.abs(found.contributions().get(5))).isCloseTo(16.6, within(0.1));
        assertThat(found.standard()).isCloseTo(32, within(0.5));
    }

    /** JCGM 101:2008, 9.2.2: four inputs N(0, 1) added: u = 2.0, 95 % within 3.92 (table 2). */
    @Test
    void fourNormalInputsAdded() {
        Input one = normal(0, 1);
        FirstOrder first = Uncertainty.firstOrder(UncertaintyPublishedTest::sum, one, one, one, one)[0];
        assertThat(first.standard()).isCloseTo(2.0, within(1e-12));
        assertThat(first.standard() * Uncertainty.coverageFactor(0.95)).isCloseTo(3.92, within(0.005));
        Spread spread =
                Uncertainty.monteCarlo(UncertaintyPublishedTest::sum, TRIALS, SEED, 0.95, one, one, one, one)[0];
        assertThat(spread.standard()).isCloseTo(2.0, within(0.01));
        assertThat(spread.low()).isCloseTo(-3.92, within(0.03));
        assertThat(spread.high()).isCloseTo(3.92, within(0.03));
    }

    /** JCGM 101:2008, 9.2.3: four rectangular inputs of standard deviation 1 added: u = 2.0, 95 % within 3.88 (table 3). */
    @Test
    void fourRectangularInputsAdded() {
        Input one = rectangular(0, 1);
        Spread spread =
                Uncertainty.monteCarlo(UncertaintyPublishedTest::sum, TRIALS, SEED, 0.95, one, one, one, one)[0];
        assertThat(spread.standard()).isCloseTo(2.0, within(0.01));
        assertThat(spread.low()).isCloseTo(-3.88, within(0.03));
        assertThat(spread.high()).isCloseTo(3.88, within(0.03));
    }

    /**
     * JCGM 101:2008, 9.2.4: one of four rectangular inputs ten times as wide: u = 10.1; first order gives 19.9, the distribution 17.0
     * (table 4). What first order can't see.
     */
    @Test
    void oneWideRectangularInputAmongFour() {
        Input one = rectangular(0, 1);
        Input wide = rectangular(0, 10);
        FirstOrder first = Uncertainty.firstOrder(UncertaintyPublishedTest::sum, one, one, one, wide)[0];
        assertThat(first.standard()).isCloseTo(10.1, within(0.05));
        assertThat(first.standard() * Uncertainty.coverageFactor(0.95)).isCloseTo(19.9, within(0.05));
        Spread spread =
                Uncertainty.monteCarlo(UncertaintyPublishedTest::sum, TRIALS, SEED, 0.95, one, one, one, wide)[0];
        assertThat(spread.standard()).isCloseTo(10.1, within(0.05));
        assertThat(spread.low()).isCloseTo(-17.0, within(0.1));
        assertThat(spread.high()).isCloseTo(17.0, within(0.1));
    }

    @Test
    void theSameSeedGivesTheSameDraws() {
        Input one = new Input(1, 0.1, Distribution.TRIANGULAR);
        assertThat(Uncertainty.monteCarlo(x -> x, 1000, 7, 0.9, one))
                .isEqualTo(Uncertainty.monteCarlo(x -> x, 1000, 7, 0.9, one));
        Spread spread = Uncertainty.monteCarlo(x -> x, TRIALS, 7, 0.9, one)[0];
        assertThat(spread.standard()).isCloseTo(0.1 / Math.sqrt(6), within(0.0005));
        assertThat(spread.mean()).isCloseTo(1, within(0.0005));
    }

    @Test
    void drawsWithoutAValueAreCounted() {
        Input one = rectangular(0, 1);
        Spread spread =
                Uncertainty.monteCarlo(x -> new double[] {x[0] < 0 ? Double.NaN : x[0]}, 10_000, SEED, 0.95, one)[0];
        assertThat(spread.answered()).isBetween(4_800, 5_200);
        assertThat(spread.low()).isPositive();
    }

    private static double[] sum(double[] x) {
        double sum = 0;
        for (double one : x) {
            sum += one;
        }
        return new double[] {sum};
    }
}

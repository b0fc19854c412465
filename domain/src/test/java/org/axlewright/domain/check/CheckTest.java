package org.axlewright.domain.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CheckTest {

    private static final List<DoubleUnaryOperator> CHECKS = List.of(
            value -> Check.finite(value, "load"),
            value -> Check.positive(value, "load"),
            value -> Check.notNegative(value, "load"),
            value -> Check.within(value, 0, 10, "load"));

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesWhatIsNotFinite(double value) {
        for (DoubleUnaryOperator check : CHECKS) {
            assertThatExceptionOfType(InvalidInput.class)
                    .isThrownBy(() -> check.applyAsDouble(value))
                    .withMessageContaining("load");
        }
    }

    @Test
    void returnsItsArgument() {
        for (DoubleUnaryOperator check : CHECKS) {
            assertThat(check.applyAsDouble(7.25)).isEqualTo(7.25);
        }
    }

    @Test
    void keepsToItsEnds() {
        assertThat(Check.notNegative(0, "load")).isZero();
        assertThat(Check.within(10, 0, 10, "load")).isEqualTo(10);
        assertThat(Check.within(0, 0, 10, "load")).isZero();
        assertThat(Check.positive(Double.MIN_VALUE, "load")).isPositive();
        assertThat(Check.finite(-Double.MAX_VALUE, "load")).isNegative();
        assertThatExceptionOfType(InvalidInput.class).isThrownBy(() -> Check.positive(0, "load"));
        assertThatExceptionOfType(InvalidInput.class).isThrownBy(() -> Check.notNegative(-Double.MIN_VALUE, "load"));
        assertThatExceptionOfType(InvalidInput.class).isThrownBy(() -> Check.within(Math.nextUp(10.0), 0, 10, "load"));
    }
}

package org.axlewright.domain.roadload;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The table of friction is whole. */
class GripTest {

    @ParameterizedTest
    @EnumSource(Surface.class)
    void everySurfaceHasAValueWithinItsSpan(Surface surface) {
        Grip grip = Grip.of(surface);
        assertThat(grip.typical().value())
                .isBetween(grip.low().value(), grip.high().value());
        assertThat(grip.low().value()).isPositive();
        assertThat(grip.high().value()).isLessThanOrEqualTo(0.9);
    }
}

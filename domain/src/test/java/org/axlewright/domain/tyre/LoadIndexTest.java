package org.axlewright.domain.tyre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.stream.IntStream;
import org.axlewright.domain.check.InvalidInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The table as a whole: a misprint in any row stands out from the series it follows. */
class LoadIndexTest {

    static IntStream everyIndex() {
        return IntStream.rangeClosed(0, LoadIndex.HIGHEST);
    }

    @ParameterizedTest
    @MethodSource("everyIndex")
    void everyRowLiesOnTheGeometricSeries(int index) {
        assertThat(LoadIndex.massKg(index)).isCloseTo(45 * Math.pow(10, index / 80.0), withinPercentage(2));
    }

    @Test
    void everyRowCarriesMoreThanTheOneBefore() {
        IntStream.rangeClosed(1, LoadIndex.HIGHEST)
                .forEach(index -> assertThat(LoadIndex.massKg(index)).isGreaterThan(LoadIndex.massKg(index - 1)));
    }

    @Test
    void endsWhereTheTableEnds() {
        assertThatThrownBy(() -> LoadIndex.massKg(-1)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> LoadIndex.massKg(LoadIndex.HIGHEST + 1)).isInstanceOf(InvalidInput.class);
    }
}

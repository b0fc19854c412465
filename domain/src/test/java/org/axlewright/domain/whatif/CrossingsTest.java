package org.axlewright.domain.whatif;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.axlewright.domain.whatif.Crossings.Course;
import org.axlewright.domain.whatif.Crossings.Crossing;
import org.axlewright.domain.whatif.Crossings.Found;
import org.axlewright.domain.whatif.Crossings.Side;
import org.junit.jupiter.api.Test;

/** Functions whose crossings are known. */
class CrossingsTest {

    private static List<Double> places(Found found) {
        return found.crossings().stream().map(crossing -> crossing.at().x()).toList();
    }

    @Test
    void findsEveryRootOfASine() {
        Found found = Crossings.of(Math::sin, 0, Side.EITHER, 1, 20, 200);
        assertThat(found.course()).isEqualTo(Course.BOTH_WAYS);
        assertThat(places(found)).hasSize(6);
        for (int i = 0; i < 6; i++) {
            assertThat(places(found).get(i)).isCloseTo((i + 1) * Math.PI, within(1e-11));
        }
    }

    @Test
    void findsTwoRootsWithinOneIntervalOfTheScan() {
        Found found = Crossings.of(x -> (x - 0.501) * (x - 0.509), 0, Side.EITHER, 0, 1, 20);
        assertThat(places(found)).hasSize(2);
        assertThat(places(found).get(0)).isCloseTo(0.501, within(1e-9));
        assertThat(places(found).get(1)).isCloseTo(0.509, within(1e-9));
    }

    @Test
    void theSolutionLiesOnTheSideThatIsWanted() {
        for (Side side : List.of(Side.AT_MOST, Side.AT_LEAST)) {
            Found found = Crossings.of(x -> x * x * x, 0.3, side, 0, 1, 10);
            assertThat(found.course()).isEqualTo(Course.RISING);
            Crossing crossing = found.crossings().get(0);
            assertThat(side.admits(crossing.at().y(), 0.3)).isTrue();
            assertThat(crossing.at().x()).isCloseTo(Math.cbrt(0.3), within(1e-11));
            assertThat(crossing.below().y()).isLessThan(0.3);
            assertThat(crossing.above().y()).isGreaterThan(0.3);
            assertThat(crossing.jump()).isFalse();
        }
    }

    @Test
    void aLeapOverTheLevelIsToldFromACrossing() {
        Found found = Crossings.of(x -> x < 0.4321 ? 1 : 3, 2, Side.AT_LEAST, 0, 1, 50);
        assertThat(found.crossings()).hasSize(1);
        assertThat(found.crossings().get(0).jump()).isTrue();
        assertThat(found.crossings().get(0).at().x()).isCloseTo(0.4321, within(1e-11));
        assertThat(found.crossings().get(0).at().y()).isEqualTo(3);
    }

    @Test
    void rootsOnTheScanAndAtTheEndsAreFoundOnce() {
        assertThat(places(Crossings.of(x -> x - 5, 0, Side.EITHER, 0, 10, 10))).containsExactly(5.0);
        assertThat(places(Crossings.of(x -> x, 0, Side.EITHER, 0, 10, 10))).containsExactly(0.0);
        assertThat(places(Crossings.of(x -> x - 10, 0, Side.EITHER, 0, 10, 10))).containsExactly(10.0);
        assertThat(places(Crossings.of(x -> Math.min(x, 5), 5, Side.AT_LEAST, 0, 10, 10)))
                .containsExactly(5.0);
    }

    @Test
    void whereThereIsNoValueNothingCrosses() {
        Found found = Crossings.of(x -> x > 0.4 && x < 0.6 ? Double.NaN : x - 0.5, 0, Side.EITHER, 0, 1, 100);
        assertThat(found.crossings()).isEmpty();
        assertThat(found.course()).isEqualTo(Course.RISING);
        Found hidden = Crossings.of(x -> x > 0.42 && x < 0.58 ? Double.NaN : x - 0.5, 0, Side.EITHER, 0, 1, 3);
        assertThat(hidden.crossings()).isEmpty();
    }

    @Test
    void anEmptyRangeIsAMistakeOfTheCaller() {
        assertThatThrownBy(() -> Crossings.of(x -> x, 0, Side.EITHER, 1, 1, 10))
                .isInstanceOf(IllegalArgumentException.class);
    }
}

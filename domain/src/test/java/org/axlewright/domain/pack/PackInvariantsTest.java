package org.axlewright.domain.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.axlewright.domain.check.InvalidInput;
import org.axlewright.domain.pack.DischargeCapacity.Row;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.api.Test;

/** What holds of any pack. */
class PackInvariantsTest {

    private static final Trace SILENT = Trace.withoutWorking();
    private static final List<Row> MAKER =
            List.of(new Row(1.89, 360_000), new Row(8.5, 72_000), new Row(15.5, 36_000), new Row(29, 18_000));

    @Property(seed = "20261125")
    void aDischargeAtTheLawsOwnTimeGivesItsExponentBack(
            @ForAll @DoubleRange(min = 1.01, max = 2) double exponent,
            @ForAll @DoubleRange(min = 20, max = 500) double currentA) {
        DischargeCapacity capacity = DischargeCapacity.rated(225 * 3600, 20 * 3600, exponent);
        Row fast = new Row(currentA, capacity.at(currentA, SILENT) / currentA);

        assertThat(DischargeCapacity.exponent(new Row(11.25, 72_000), fast)).isCloseTo(exponent, within(1e-9));
    }

    @Property(seed = "20261125")
    void fasterNeverGivesMore(
            @ForAll @DoubleRange(min = 0.1, max = 400) double one,
            @ForAll @DoubleRange(min = 0.1, max = 400) double other) {
        DischargeCapacity rows = DischargeCapacity.rows(MAKER);

        assertThat(rows.at(Math.max(one, other), SILENT))
                .isLessThanOrEqualTo(rows.at(Math.min(one, other), SILENT) * (1 + 1e-12));
    }

    @Test
    void goesThroughEveryRowOfTheMaker() {
        DischargeCapacity rows = DischargeCapacity.rows(MAKER);

        for (Row row : MAKER) {
            assertThat(rows.at(row.currentA(), SILENT)).isCloseTo(row.capacityC(), within(1e-6));
        }
    }

    @Property(seed = "20261125")
    void slowerThanRatedGivesTheRatedCapacityAndNoMore(@ForAll @DoubleRange(min = -50, max = 11.25) double currentA) {
        assertThat(DischargeCapacity.rated(225 * 3600, 20 * 3600, 1.25).at(currentA, SILENT))
                .isEqualTo(225 * 3600);
    }

    @Test
    void seesRowsThatNoCellCanGive() {
        Row slow = new Row(2.15, 72_000); // 43 Ah at 20 h
        assertThat(DischargeCapacity.firstImplausible(List.of(slow, new Row(25, 140 * 60))))
                .as("58 Ah at 25 A from 43 Ah at 20 h, a misprint of a maker's table")
                .isEqualTo(1);
        assertThat(DischargeCapacity.firstImplausible(List.of(slow, slow))).isEqualTo(1);
        assertThat(DischargeCapacity.firstImplausible(MAKER)).isEqualTo(-1);
    }

    @Property(seed = "20261125")
    void powerIsVoltageTimesCurrent(
            @ForAll @DoubleRange(min = 10, max = 100) double emfV,
            @ForAll @DoubleRange(min = 0, max = 0.2) double ohm,
            @ForAll @DoubleRange(min = -1, max = 1) double share) {
        double powerW = share * Math.min(Sag.greatestPowerW(emfV, ohm), 100_000);
        double currentA = Sag.currentA(emfV, ohm, powerW);

        assertThat(currentA * Sag.terminalV(emfV, ohm, currentA))
                .isCloseTo(powerW, within(1e-6 * (1 + Math.abs(powerW))));
    }

    @Property(seed = "20261125")
    void refusesPowerThatThePackCanNotGive(
            @ForAll @DoubleRange(min = 10, max = 100) double emfV,
            @ForAll @DoubleRange(min = 0.01, max = 0.2) double ohm) {
        assertThatThrownBy(() -> Sag.currentA(emfV, ohm, 1.001 * Sag.greatestPowerW(emfV, ohm)))
                .isInstanceOf(InvalidInput.class);
    }

    @Property(seed = "20261125")
    void voltagesAddUpCellByCell(@ForAll Chemistry chemistry, @ForAll @IntRange(min = 2, max = 200) int cells) {
        PackVoltages whole = PackVoltages.of(chemistry, cells, SILENT);
        PackVoltages less = PackVoltages.of(chemistry, cells - 1, SILENT);
        PackVoltages one = PackVoltages.of(chemistry, 1, SILENT);

        assertThat(whole.nominalV() - less.nominalV()).isCloseTo(one.nominalV(), within(1e-9));
        assertThat(whole.fullV() - less.fullV()).isCloseTo(one.fullV(), within(1e-9));
        assertThat(whole.cutOffV()).isLessThan(whole.nominalV());
        assertThat(whole.nominalV()).isLessThan(whole.fullV());
    }

    @Property(seed = "20261125")
    void blocksHoldWholeCells(
            @ForAll @IntRange(min = 1, max = 20) int count, @ForAll @IntRange(min = 1, max = 12) int cells) {
        assertThat(PackVoltages.cellsInBlocks(Chemistry.AGM, count, 2 * cells)).hasValue(count * cells);
        assertThat(PackVoltages.cellsInBlocks(Chemistry.AGM, count, 2 * cells + 0.8))
                .isEmpty();
    }

    @Property(seed = "20261125")
    void coldNeverGivesMoreThanRated(
            @ForAll Chemistry chemistry,
            @ForAll @DoubleRange(min = -20, max = 25) double celsius,
            @ForAll @DoubleRange(min = 600, max = 200_000) double seconds) {
        assertThat(TemperatureFactor.of(chemistry, celsius, seconds, SILENT)).isBetween(0.5, 1.0);
        assertThat(TemperatureFactor.of(chemistry, 25, seconds, SILENT)).isCloseTo(1, within(1e-15));
    }

    @Test
    void refusesATemperatureOutsideTheRange() {
        assertThatThrownBy(() -> TemperatureFactor.of(Chemistry.LFP, -20.1, 3600, SILENT))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> TemperatureFactor.of(Chemistry.GEL, Double.NaN, 3600, SILENT))
                .isInstanceOf(InvalidInput.class);
    }
}

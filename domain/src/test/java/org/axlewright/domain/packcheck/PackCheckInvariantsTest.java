package org.axlewright.domain.packcheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.pack.DischargeCapacity;
import org.axlewright.domain.packcheck.PackCheckResult.CheckedBlock;
import org.axlewright.domain.packcheck.ReadingsInput.Block;
import org.axlewright.domain.packcheck.ReadingsInput.Discharge;
import org.axlewright.domain.packcheck.ReadingsInput.Pack;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.api.Test;

/** What holds of any readings. */
class PackCheckInvariantsTest {

    private static final DischargeCapacity NEW = DischargeCapacity.rated(3600 * 225, 3600 * 20, 1.24);

    @Property(seed = "20261125")
    void chargeNeverFallsWithVoltage(
            @ForAll Chemistry chemistry,
            @ForAll @DoubleRange(min = 1, max = 5) double one,
            @ForAll @DoubleRange(min = 1, max = 5) double other) {
        RestVoltage.Told less = RestVoltage.of(chemistry, Math.min(one, other));
        RestVoltage.Told more = RestVoltage.of(chemistry, Math.max(one, other));

        assertThat(more.least()).isGreaterThanOrEqualTo(less.least());
        assertThat(more.most()).isGreaterThanOrEqualTo(less.most());
        if (less.value() != null && more.value() != null) {
            assertThat(more.value()).isGreaterThanOrEqualTo(less.value());
            assertThat(less.value()).isBetween(less.least(), less.most());
        }
    }

    @Property(seed = "20261125")
    void theOrderOfTheBlocksDoesNotMatter(
            @ForAll @Size(min = 3, max = 12) List<@DoubleRange(min = 11, max = 13) Double> volts,
            @ForAll @IntRange(min = 0, max = 1000) int shuffle) {
        List<Double> moved = new ArrayList<>(volts);
        Collections.shuffle(moved, new Random(shuffle));
        List<CheckedBlock> asRead = checked(volts);
        List<CheckedBlock> shuffled = checked(moved);

        for (int i = 0; i < volts.size(); i++) {
            Double volt = volts.get(i);
            BlockState state = asRead.get(i).state();
            assertThat(shuffled.stream()
                            .filter(block -> volt.equals(block.block().restV()))
                            .map(CheckedBlock::state))
                    .allMatch(state::equals);
        }
    }

    private static List<CheckedBlock> checked(List<Double> volts) {
        return PackCheckCases.of(PackCheckCases.blocks(
                        Chemistry.AGM,
                        6 * volts.size(),
                        null,
                        PackCheckCases.atRest(
                                volts.stream().mapToDouble(Double::doubleValue).toArray())))
                .blocks();
    }

    @Property(seed = "20261125")
    void oneWildBlockIsFoundWhereverItStands(
            @ForAll @IntRange(min = 0, max = 5) int place, @ForAll @DoubleRange(min = 0.2, max = 1.2) double lower) {
        double[] volts = {12.62, 12.60, 12.61, 12.59, 12.60, 12.63};
        volts[place] -= lower;
        PackCheckResult result =
                PackCheckCases.of(PackCheckCases.blocks(Chemistry.AGM, 36, null, PackCheckCases.atRest(volts)));

        for (int i = 0; i < 6; i++) {
            assertThat(result.blocks().get(i).state()).isEqualTo(i == place ? BlockState.ODD : BlockState.ALIKE);
        }
    }

    @Test
    void readingsOfMixedPrecisionAreNotOdd() {
        List<Block> blocks = PackCheckCases.atRest(12.6, 12.55, 12.6, 12.6, 12.64, 12.6);

        assertThat(PackCheckCases.of(PackCheckCases.blocks(Chemistry.AGM, 36, null, blocks))
                        .blocks())
                .allMatch(block -> block.state() == BlockState.ALIKE);
    }

    @Test
    void aBlockTwoVoltsLowHasADeadCell() {
        ReadingsInput input = PackCheckCases.blocks(
                Chemistry.FLOODED, 36, null, PackCheckCases.atRest(12.6, 12.6, 10.5, 12.6, 12.5, 12.6));

        assertThat(PackCheckCases.of(input).blocks().get(2).state()).isEqualTo(BlockState.DEAD_CELL);
        assertThat(PackCheckCases.findings(input)).contains("dead-cell");
    }

    @Property(seed = "20261125")
    void resistancesOfTheBlocksAddUpToThePack(
            @ForAll @DoubleRange(min = 20, max = 200) double currentA,
            @ForAll @DoubleRange(min = 1, max = 9) double milliohm,
            @ForAll @DoubleRange(min = 0, max = 5) double joints) {
        List<Block> blocks = new ArrayList<>();
        double drop = currentA * milliohm / 1000;
        for (int i = 0; i < 8; i++) {
            blocks.add(new Block("/readings/blocks/" + i, null, 6.3, 6.3 - drop, null));
        }
        PackCheckResult result = PackCheckCases.of(new ReadingsInput(
                Chemistry.FLOODED,
                24,
                1,
                null,
                25,
                blocks,
                8,
                null,
                new Pack(36_000.0, 50.4, 50.4 - 8 * drop - currentA * joints / 1000, currentA),
                null,
                null,
                null,
                null));

        assertThat(result.resistance()).isNotNull();
        assertThat(result.resistance().blockOhm()).isCloseTo(milliohm / 1000, within(1e-9));
        assertThat(result.resistance().connectionsOhm()).isCloseTo(joints / 1000, within(1e-9));
    }

    @Property(seed = "20261125")
    void healthIsInProportionToTheTime(
            @ForAll @DoubleRange(min = 15, max = 150) double currentA,
            @ForAll @DoubleRange(min = 0.3, max = 1.1) double share) {
        double wholeS = NEW.at(currentA, Trace.withoutWorking()) / currentA;
        PackCheckResult result = PackCheckCases.of(
                PackCheckCases.discharge(Chemistry.FLOODED, NEW, 25, new Discharge(currentA, share * wholeS, null)));

        assertThat(result.capacity()).isNotNull();
        assertThat(result.capacity().share()).isCloseTo(share, within(1e-9));
        assertThat(result.capacity().ratedC()).isCloseTo(share * 3600 * 225, within(1e-3));
    }

    @Test
    void fourFifthsIsTheEndOfLife() {
        double wholeS = NEW.at(56.25, Trace.withoutWorking()) / 56.25;

        assertThat(PackCheckCases.findings(PackCheckCases.discharge(
                        Chemistry.FLOODED, NEW, 25, new Discharge(56.25, 0.79 * wholeS, null))))
                .contains("end-of-life");
        assertThat(PackCheckCases.findings(PackCheckCases.discharge(
                        Chemistry.FLOODED, NEW, 25, new Discharge(56.25, 0.81 * wholeS, null))))
                .doesNotContain("end-of-life");
    }

    @Test
    void aColdTestIsHeldAgainstAColdPack() {
        double wholeS = NEW.at(75, Trace.withoutWorking()) / 75;
        PackCheckResult cold = PackCheckCases.of(
                PackCheckCases.discharge(Chemistry.FLOODED, NEW, 0, new Discharge(75, 0.75 * wholeS, null)));

        assertThat(cold.capacity()).isNotNull();
        assertThat(cold.capacity().share()).as("0.010 per K at traction rates").isCloseTo(1, within(1e-9));
    }

    @Test
    void lithiumIronPhosphateShowsNoChargeInTheMiddle() {
        RestVoltage.Told told = RestVoltage.of(Chemistry.LFP, 3.29);

        assertThat(told.value()).isNull();
        assertThat(told.least()).isEqualTo(0.20);
        assertThat(told.most()).isEqualTo(0.90);
        assertThat(PackCheckCases.findings(
                        PackCheckCases.pack(Chemistry.LFP, 16, new Pack(36_000.0, 16 * 3.29, null, null))))
                .contains("no-gauge-at-rest");
    }
}

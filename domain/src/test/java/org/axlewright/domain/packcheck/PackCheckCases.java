package org.axlewright.domain.packcheck;

import java.util.ArrayList;
import java.util.List;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.pack.DischargeCapacity;
import org.axlewright.domain.packcheck.ReadingsInput.Block;
import org.axlewright.domain.packcheck.ReadingsInput.Clamp;
import org.axlewright.domain.packcheck.ReadingsInput.Discharge;
import org.axlewright.domain.packcheck.ReadingsInput.Pack;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Readings for the tests. */
final class PackCheckCases {

    private static final Pack NOTHING = new Pack(null, null, null, null);

    private PackCheckCases() {}

    static ReadingsInput pack(Chemistry chemistry, int cells, Pack pack) {
        return new ReadingsInput(chemistry, cells, 1, null, 25, List.of(), null, null, pack, null, null, null, null);
    }

    static ReadingsInput blocks(Chemistry chemistry, int cells, @Nullable Double loadA, List<Block> blocks) {
        return new ReadingsInput(
                chemistry,
                cells,
                1,
                null,
                25,
                blocks,
                blocks.size(),
                null,
                new Pack(36_000.0, null, null, loadA),
                null,
                null,
                null,
                null);
    }

    static ReadingsInput discharge(
            Chemistry chemistry, @Nullable DischargeCapacity string, double celsius, Discharge discharge) {
        return new ReadingsInput(
                chemistry, null, 1, string, celsius, List.of(), null, null, NOTHING, discharge, null, null, null);
    }

    static ReadingsInput clamp(Chemistry chemistry, int cells, Clamp clamp) {
        return new ReadingsInput(
                chemistry, cells, 1, null, 25, List.of(), null, null, NOTHING, null, clamp, null, null);
    }

    static List<Block> atRest(double... volts) {
        List<Block> blocks = new ArrayList<>();
        for (double volt : volts) {
            blocks.add(new Block("/readings/blocks/" + blocks.size(), null, volt, null, null));
        }
        return blocks;
    }

    static PackCheckResult of(ReadingsInput input) {
        return PackCheck.of(input, Trace.withoutWorking());
    }

    static List<String> findings(ReadingsInput input) {
        Trace trace = Trace.withoutWorking();
        PackCheck.of(input, trace);
        return trace.findings().stream().map(finding -> finding.code()).toList();
    }
}

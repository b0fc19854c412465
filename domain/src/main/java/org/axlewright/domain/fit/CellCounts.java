package org.axlewright.domain.fit;

import java.util.List;
import java.util.stream.IntStream;
import org.axlewright.domain.check.Check;
import org.axlewright.domain.pack.CellData;
import org.axlewright.domain.pack.Chemistry;

/**
 * The counts of cells that are sold under one voltage. Labels follow lead-acid: 16 lithium iron phosphate cells of 3.2 V (51.2 V) are
 * sold as 48 V, and so are 15 (48.0 V).
 */
public final class CellCounts {

    private static final double LABEL_STEP_V = 12;
    private static final double BELOW_LABEL = 0.03;
    private static final double ABOVE_LABEL = 0.07;
    private static final double EXACT = 0.01;

    private CellCounts() {}

    /**
     * Counts that go by this voltage: for a label that is a multiple of 12 V those whose nominal voltage is from 3 % below to 7 % above it,
     * for any other voltage those within 1 %. Common practice, no source.
     *
     * @param labelV voltage on the label, V
     */
    public static List<Integer> soldAs(Chemistry chemistry, double labelV) {
        Check.positive(labelV, "labelV");
        double cellV = CellData.of(chemistry).nominalV().value();
        boolean label = Math.abs(labelV / LABEL_STEP_V - Math.rint(labelV / LABEL_STEP_V)) < 1e-9;
        double least = labelV * (1 - (label ? BELOW_LABEL : EXACT)) / cellV;
        double most = labelV * (1 + (label ? ABOVE_LABEL : EXACT)) / cellV;
        return IntStream.rangeClosed((int) Math.ceil(least - 1e-9), (int) Math.floor(most + 1e-9))
                .filter(count -> count > 0)
                .boxed()
                .toList();
    }

    /**
     * The chemistry to which this count of lithium cells usually belongs, where it is not the one given; empty otherwise. 14 cells of 3.6 V
     * and 16 of 3.2 V make about 50 V.
     */
    public static String ofAnother(Chemistry chemistry, int cells) {
        return switch (chemistry) {
            case LFP -> cells == 10 || cells == 13 || cells == 14 ? Chemistry.NMC.toString() : "";
            case NMC ->
                cells == 12 || cells == 15 || cells == 16 || cells == 23 || cells == 24 ? Chemistry.LFP.toString() : "";
            case FLOODED, AGM, GEL -> "";
        };
    }
}

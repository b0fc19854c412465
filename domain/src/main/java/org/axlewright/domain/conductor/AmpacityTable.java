package org.axlewright.domain.conductor;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.axlewright.domain.cable.Conductor;
import org.axlewright.domain.cable.ConductorSize;
import org.axlewright.domain.cable.SizeSeries;
import org.axlewright.domain.cable.TableFile;
import org.axlewright.domain.check.InvalidInput;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Standing;

/**
 * Published tables of continuous current with their own corrections. No value is interpolated: a size between two rows takes the thinner
 * row, a rating between two columns the cooler column, an ambient temperature between two bands the hotter band. {@code toString} is the
 * name in requests.
 */
@SuppressWarnings("ImmutableEnumChecker") // records and unmodifiable lists
public enum AmpacityTable {
    /** 33 CFR 183.425 Table 5, boat wiring under 50 V, free air or bundled. */
    CFR_33_183_425("33-cfr-183-425", Source.regulation("33 CFR 183.425 Table 5")) {
        @Override
        public Factor ambient(double ambientC, double columnC) {
            if (ambientC <= BASE_C) {
                return new Factor(1, BASE_C, AS_PRINTED);
            }
            if (!(ambientC < columnC)) {
                throw new InvalidInput("ambient must be below " + columnC + ", was " + ambientC);
            }
            return new Factor(Math.sqrt((columnC - ambientC) / (columnC - BASE_C)), ambientC, SQUARE_ROOT_LAW);
        }

        @Override
        public Factor engineSpace(double columnC) {
            return Files.ENGINE_SPACE.stream()
                    .filter(row -> Double.parseDouble(row[0]) == columnC)
                    .map(row -> new Factor(Double.parseDouble(row[1]), ENGINE_SPACE_C, Files.source(row[2], row[3])))
                    .findFirst()
                    .orElseThrow(() -> new InvalidInput("no column " + columnC));
        }

        @Override
        public double hottestAmbientC(double columnC) {
            return columnC;
        }
    },
    /** NEC Table 310.16, copper, 30 degrees Celsius, at most three current-carrying conductors. */
    NEC_310_16("nec-310-16", Source.regulation("NEC Table 310.16")) {
        @Override
        public Factor ambient(double ambientC, double columnC) {
            int cell = Files.NEC_AMBIENT.columns().indexOf(String.valueOf((int) columnC));
            return Files.NEC_AMBIENT.rows().stream()
                    .filter(row -> ambientC <= Double.parseDouble(row[0]) && !row[cell].isEmpty())
                    .map(row -> new Factor(Double.parseDouble(row[cell]), ambientC, NEC_CORRECTION))
                    .findFirst()
                    .orElseThrow(() -> new InvalidInput("no factor at " + ambientC + " for column " + columnC));
        }

        @Override
        public Factor engineSpace(double columnC) {
            return ambient(ENGINE_SPACE_C, columnC);
        }

        @Override
        public double hottestAmbientC(double columnC) {
            int cell = Files.NEC_AMBIENT.columns().indexOf(String.valueOf((int) columnC));
            return Files.NEC_AMBIENT.rows().stream()
                    .filter(row -> !row[cell].isEmpty())
                    .mapToDouble(row -> Double.parseDouble(row[0]))
                    .max()
                    .orElseThrow();
        }
    };

    /** Ambient temperature for which both tables are printed, degC. For 33 CFR 183.425 recalled from ABYC E-11. */
    public static final double BASE_C = 30;

    /** Temperature of an engine space, degC. Recalled from ABYC E-11. */
    public static final double ENGINE_SPACE_C = 50;

    private static final Source AS_PRINTED =
            Source.memory("ABYC E-11: the table holds at 30 degC outside engine spaces");
    private static final Source SQUARE_ROOT_LAW = Source.derived(
            "square-root law sqrt((Tc - Ta)/(Tc - 30)), which gives every cell of NEC Table 310.15(B)(1)");
    private static final Source NEC_CORRECTION = Source.regulation("NEC Table 310.15(B)(1)");
    private static final Source NO_BUNDLE = Source.derived("within the number of conductors the table is printed for");

    private final String token;
    private final Source source;
    private final List<Double> columns;
    private final List<Row> rows;

    /**
     * A factor on the table's current.
     *
     * @param value multiplies the current
     * @param ambientC ambient temperature it stands for, degC
     */
    public record Factor(double value, double ambientC, Source source) {}

    /**
     * A row of the table.
     *
     * @param size the gauge of the row
     * @param areaM2 its area, m2
     * @param currentsA allowed current by column, A
     */
    public record Row(ConductorSize size, double areaM2, List<Double> currentsA) {}

    /** A factor from a voltage and a number of conductors on. */
    private record Bundle(String table, double fromV, int fromConductors, Factor factor) {}

    AmpacityTable(String token, Source source) {
        this.token = token;
        this.source = source;
        TableFile file = TableFile.read("/conductor/" + token + ".csv");
        columns = file.columns().stream().skip(1).map(Double::valueOf).toList();
        List<Row> read = new ArrayList<>();
        for (String[] cells : file.rows()) {
            ConductorSize size = new ConductorSize(SizeSeries.AWG, cells[0]);
            read.add(new Row(
                    size,
                    Conductor.of(size).areaM2(),
                    Arrays.stream(cells).skip(1).map(Double::valueOf).toList()));
        }
        rows = read.stream().sorted(Comparator.comparingDouble(Row::areaM2)).toList();
    }

    public Source source() {
        return source;
    }

    /** Coolest column, degC: the table says nothing of an insulation rated lower. */
    public double coolestColumnC() {
        return columns.get(0);
    }

    /** The hottest column that is not hotter than a rating, degC; nothing below the coolest column. */
    public OptionalDouble columnC(double ratingC) {
        OptionalDouble hottest = OptionalDouble.empty();
        for (double column : columns) { // in rising order
            if (column <= ratingC) {
                hottest = OptionalDouble.of(column);
            }
        }
        return hottest;
    }

    /** The row that holds for an area: the thickest that is not thicker; nothing below the thinnest row. */
    public Optional<Row> row(double areaM2) {
        for (int i = rows.size() - 1; i >= 0; i--) { // thickest first
            if (rows.get(i).areaM2() <= areaM2) {
                return Optional.of(rows.get(i));
            }
        }
        return Optional.empty();
    }

    /** Allowed current of a row, A. */
    public double currentA(Row row, double columnC) {
        return row.currentsA().get(columns.indexOf(columnC));
    }

    /**
     * Factor of the air around the cable. Colder than the base, 33 CFR 183.425 gives no credit: the factor is 1.
     *
     * @param ambientC degC, up to {@link #hottestAmbientC}
     */
    public abstract Factor ambient(double ambientC, double columnC);

    /** Factor of an engine space; it contains the hot surroundings. */
    public abstract Factor engineSpace(double columnC);

    /** Ambient temperature up to which {@link #ambient} holds for a column, degC; for 33 CFR 183.425 the column's own, not included. */
    public abstract double hottestAmbientC(double columnC);

    /**
     * Factor of conductors that lie together.
     *
     * @param conductors that carry current, this circuit's own included
     * @param voltageV of the circuit, nominal
     */
    public Factor bundle(int conductors, double voltageV) {
        for (Bundle bundle : Files.BUNDLES) {
            if (bundle.table().equals(token) && voltageV >= bundle.fromV() && conductors >= bundle.fromConductors()) {
                return bundle.factor();
            }
        }
        return new Factor(1, BASE_C, NO_BUNDLE);
    }

    @Override
    public String toString() {
        return token;
    }

    /** Corrections, read apart from the constants, which are made first. */
    private static final class Files {
        static final TableFile NEC_AMBIENT = TableFile.read("/conductor/nec-310-15-b-1.csv");
        static final List<String[]> ENGINE_SPACE =
                TableFile.read("/conductor/engine-space.csv").rows();
        /** Most conductors first: the first that fits counts. */
        static final List<Bundle> BUNDLES = bundles();

        private static List<Bundle> bundles() {
            List<Bundle> bundles = new ArrayList<>();
            for (String[] row : TableFile.read("/conductor/bundles.csv").rows()) {
                Factor factor = new Factor(Double.parseDouble(row[3]), BASE_C, source(row[4], row[5]));
                bundles.add(0, new Bundle(row[0], Double.parseDouble(row[1]), Integer.parseInt(row[2]), factor));
            }
            return List.copyOf(bundles);
        }

        static Source source(String standing, String citation) {
            return new Source(citation, Standing.valueOf(standing.toUpperCase(Locale.ROOT)));
        }
    }
}

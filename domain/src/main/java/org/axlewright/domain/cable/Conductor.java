package org.axlewright.domain.cable;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.axlewright.domain.check.InvalidInput;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Standing;
import org.axlewright.domain.trace.Trace;

/**
 * A stranded copper conductor of a size that a table holds.
 *
 * @param size its designation
 * @param areaM2 area of the copper, m2: AWG by ASTM B258, SAE by its circular mils, mm2 as designated
 * @param tableResistanceOhmPerM resistance in the table, ohm/m
 * @param tableTemperatureC temperature the table holds at, degC
 * @param source of the resistance
 */
public record Conductor(
        ConductorSize size, double areaM2, double tableResistanceOhmPerM, double tableTemperatureC, Source source) {

    /** Area of one circular mil, m2: a circle of 0.001 in. */
    private static final double CIRCULAR_MIL_M2 = Math.PI / 4 * 25.4e-6 * 25.4e-6;

    /** NEC Chapter 9 Table 8 gives direct-current resistance at 75 degrees Celsius. */
    private static final double NEC_TABLE_8_C = 75;

    /** IEC 60228 gives resistance at 20 degrees Celsius. */
    private static final double IEC_60228_C = 20;

    private static final Map<SizeSeries, List<Conductor>> SERIES = read();

    /** The conductor of a size. */
    public static Conductor of(ConductorSize size) {
        return of(size.series()).stream()
                .filter(known -> known.size().equals(size))
                .findFirst()
                .orElseThrow(() -> new InvalidInput("there is no conductor " + size));
    }

    /** All conductors of a series, the thinnest first. */
    public static List<Conductor> of(SizeSeries series) {
        List<Conductor> conductors = SERIES.get(series);
        if (conductors == null) {
            throw new InvalidInput("there is no series " + series);
        }
        return conductors;
    }

    static boolean isKnown(ConductorSize size) {
        return of(size.series()).stream().anyMatch(known -> known.size().equals(size));
    }

    /** Resistance for its length at a temperature, ohm/m; at the table's own temperature the table's own value. */
    public double resistanceOhmPerM(double temperatureC, Trace trace) {
        return Copper.atTemperature(tableResistanceOhmPerM, tableTemperatureC, temperatureC, trace);
    }

    /**
     * Diameter of a solid conductor by its gauge, m. Source: ASTM B258, 36 AWG 0.005 in, 4/0 0.46 in, 39 equal ratios between them.
     *
     * @param gauge the AWG number; 1/0 is 0, 2/0 is -1, 4/0 is -3
     */
    public static double awgDiameterM(int gauge) {
        return 0.127e-3 * Math.pow(92, (36.0 - gauge) / 39);
    }

    /** The AWG number of a designation: {@code 2/0} is -1. */
    public static int gauge(String designation) {
        return designation.endsWith("/0")
                ? 1 - Integer.parseInt(designation.substring(0, designation.length() - 2))
                : Integer.parseInt(designation);
    }

    private static double awgAreaM2(String designation) {
        double diameter = awgDiameterM(gauge(designation));
        return Math.PI / 4 * diameter * diameter;
    }

    private static Map<SizeSeries, List<Conductor>> read() {
        Map<SizeSeries, List<Conductor>> series = new EnumMap<>(SizeSeries.class);
        List<Conductor> awg = new ArrayList<>();
        List<Conductor> sae = new ArrayList<>();
        for (String[] row : TableFile.read("/cable/awg.csv").rows()) {
            double resistance = Double.parseDouble(row[1]) / 1000;
            double area = awgAreaM2(row[0]);
            awg.add(new Conductor(
                    new ConductorSize(SizeSeries.AWG, row[0]),
                    area,
                    resistance,
                    NEC_TABLE_8_C,
                    source(row[3], row[4])));
            if (!row[2].isEmpty()) {
                double saeArea = Double.parseDouble(row[2]) * CIRCULAR_MIL_M2;
                sae.add(new Conductor(
                        new ConductorSize(SizeSeries.SAE, row[0]),
                        saeArea,
                        resistance * area / saeArea,
                        NEC_TABLE_8_C,
                        Source.weak("circular mils of SAE sizes as printed in a marine wire catalogue;"
                                + " resistance of NEC 2011 Chapter 9 Table 8 by the inverse of the area")));
            }
        }
        List<Conductor> metric = new ArrayList<>();
        for (String[] row : TableFile.read("/cable/iec-60228.csv").rows()) {
            metric.add(new Conductor(
                    new ConductorSize(SizeSeries.MM2, row[0]),
                    Double.parseDouble(row[0]) * 1e-6,
                    Double.parseDouble(row[1]) / 1000,
                    IEC_60228_C,
                    source(row[2], row[3])));
        }
        series.put(SizeSeries.AWG, sorted(awg));
        series.put(SizeSeries.SAE, sorted(sae));
        series.put(SizeSeries.MM2, sorted(metric));
        return series;
    }

    private static Source source(String standing, String citation) {
        return new Source(citation, Standing.valueOf(standing.toUpperCase(Locale.ROOT)));
    }

    private static List<Conductor> sorted(List<Conductor> conductors) {
        return conductors.stream()
                .sorted(Comparator.comparingDouble(Conductor::areaM2))
                .toList();
    }
}

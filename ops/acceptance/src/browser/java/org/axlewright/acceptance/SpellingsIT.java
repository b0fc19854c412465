package org.axlewright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The module that reads what a shop types, by itself: text in, quantity of the contract or a fault out. A foot has 12 inches, an hour 60
 * minutes; the rest is spelling.
 */
class SpellingsIT extends Browsing {

    private static final List<String> LENGTHS = List.of("mm", "cm", "m", "in", "ft");
    private static final List<String> LOADS = List.of("kg", "lb", "N", "lbf");
    private static final List<String> TIMES = List.of("ms", "s", "min", "h", "d", "week", "month", "a");
    private static final List<String> TEMPERATURES = List.of("degC", "degF");

    private Map<?, ?> read(String function, Object... arguments) {
        return (Map<?, ?>) page.evaluate(
                "([name, given]) => import('/page/entry.js').then((entry) => entry[name](...given))",
                List.of(function, List.of(arguments)));
    }

    private static double number(Object value) {
        return ((Number) value).doubleValue();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        6"           | 6      | in
        5' 6"        | 66     | in
        5'6          | 66     | in
        5’ 6½”       | 66.5   | in
        5 ft 6 in    | 66     | in
        5'           | 5      | ft
        23 in        | 23     | in
        23in.        | 23     | in
        3 1/2"       | 3.5    | in
        5-1/2 in     | 5.5    | in
        ½ in         | 0.5    | in
        66,5         | 66.5   | mm
        1.250        | 1.25   | mm
        1,250.5      | 1250.5 | mm
        1.250,5      | 1250.5 | mm
        1 250 mm     | 1250   | mm
        −4 cm        | -4     | cm
        2 pulgadas   | 2      | in
        """)
    void lengths(String typed, double value, String unit) {
        Map<?, ?> read = read("readQuantity", typed, LENGTHS, "mm");
        assertThat(number(read.get("value"))).isEqualTo(value);
        assertThat(read.get("unit")).isEqualTo(unit);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        182 kg     | loads        | 182   | kg
        400#       | loads        | 400   | lb
        400 lbs    | loads        | 400   | lb
        1 h 30 min | times        | 90    | min
        1h30       | times        | 90    | min
        2 hrs      | times        | 2     | h
        3 min 20 s | times        | 200   | s
        10 years   | times        | 10    | a
        77 °F      | temperatures | 77    | degF
        25 C       | temperatures | 25    | degC
        """)
    void otherQuantities(String typed, String dimension, double value, String unit) {
        List<String> units = Map.of("loads", LOADS, "times", TIMES, "temperatures", TEMPERATURES)
                .get(dimension);
        Map<?, ?> read = read("readQuantity", typed, units, units.get(0));
        assertThat(number(read.get("value"))).isEqualTo(value);
        assertThat(read.get("unit")).isEqualTo(unit);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        ten        | notNumber
        5 6        | notNumber
        5' 14"     | notNumber
        1/0        | notNumber
        1,250      | ambiguous
        182 kg     | otherUnit
        --4        | notNumber
        1e9999x    | notNumber
        """)
    void whatMayMeanTwoThingsOrNothingIsAFault(String typed, String fault) {
        assertThat(read("readQuantity", typed, LENGTHS, "mm").get("fault")).isEqualTo(fault);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        14:60   | 4.285714285714286
        60:14   | 4.285714285714286
        14/60   | 4.285714285714286
        12.3:1  | 12.3
        12,3    | 12.3
        45 %    | 0.45
        45%     | 0.45
        16S     | 16
        """)
    void plainNumbers(String typed, double number) {
        Map<String, Boolean> any = Map.of("unitless", true, "reduction", true, "cells", true);
        assertThat(number(read("readNumber", typed, any).get("number"))).isEqualTo(number);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        2/0       | 2/0 AWG
        00        | 2/0 AWG
        0000      | 4/0 AWG
        0         | 1/0 AWG
        #6        | 6 AWG
        6 ga      | 6 AWG
        6 AWG     | 6 AWG
        35mm²     | 35 mm2
        2,5 mm2   | 2.5 mm2
        16 SAE    | 16 SAE
        6         | 6
        """)
    void conductorSizes(String typed, String designation) {
        assertThat(read("readConductor", typed).get("text")).isEqualTo(designation);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        18x8.5-8        | 18x8.5-8
        18 X 8,50 – 8   | 18x8.50-8
        22×11-10        | 22x11-10
        205/50-10       | 205/50-10
        205 / 50 - 10   | 205/50-10
        """)
    void tyreSizes(String typed, String marking) {
        assertThat(read("readTyre", typed).get("text")).isEqualTo(marking);
    }
}

package org.axlewright.domain.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.MetricPrefix;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import systems.uom.ucum.UCUM;

/** Every unit against NIST SP 811 and against the reference library of JSR 385 with the units of UCUM. */
class UnitsTest {

    /** The tokens of the contract, by dimension. */
    private static final Map<String, String> CONTRACT = new LinkedHashMap<>();

    static {
        CONTRACT.put("Length", "mm cm m in ft");
        CONTRACT.put("Distance", "m km ft mi");
        CONTRACT.put("Mass", "kg lb");
        CONTRACT.put("Load", "kg lb N lbf");
        CONTRACT.put("Force", "N lbf");
        CONTRACT.put("Speed", "m/s km/h mph ft/min");
        CONTRACT.put("Rotation", "rpm rad/s");
        CONTRACT.put("Torque", "Nm lbf.ft");
        CONTRACT.put("Power", "W kW hp");
        CONTRACT.put("Energy", "J Wh kWh");
        CONTRACT.put("Charge", "Ah");
        CONTRACT.put("Voltage", "mV V");
        CONTRACT.put("Current", "A");
        CONTRACT.put("Resistance", "mohm ohm");
        CONTRACT.put("ResistancePerLength", "mohm/m ohm/km ohm/kft");
        CONTRACT.put("Capacitance", "uF mF");
        CONTRACT.put("Inductance", "mH H");
        CONTRACT.put("Temperature", "degC degF");
        CONTRACT.put("TemperatureDifference", "K");
        CONTRACT.put("Time", "ms s min h d week month a");
        CONTRACT.put("Angle", "deg rad");
        CONTRACT.put("Grade", "% deg");
        CONTRACT.put("Acceleration", "m/s2 g");
        CONTRACT.put("Area", "mm2 cm2 m2 ft2");
        CONTRACT.put("VolumeFlow", "m3/h cfm");
        CONTRACT.put("Pressure", "kPa bar psi");
        CONTRACT.put("Stress", "MPa psi");
        CONTRACT.put("SpringRate", "N/mm lbf/in");
        CONTRACT.put("RollGradient", "deg/g");
        CONTRACT.put("Frequency", "Hz");
        CONTRACT.put("Consumption", "Wh/km Wh/mi");
    }

    /** One in each unit, and the coherent SI unit, as the reference library has them. */
    private static final Map<String, javax.measure.Unit<?>[]> REFERENCE = reference();

    private static Map<String, javax.measure.Unit<?>[]> reference() {
        Map<String, javax.measure.Unit<?>[]> units = new LinkedHashMap<>();
        var metre = UCUM.METER;
        var kilometre = MetricPrefix.KILO(UCUM.METER);
        var kilogram = MetricPrefix.KILO(UCUM.GRAM);
        var foot = UCUM.FOOT_INTERNATIONAL;
        var mile = UCUM.MILE_INTERNATIONAL;
        var second = UCUM.SECOND;
        var gravity = UCUM.ACCELERATION_OF_FREEFALL;
        var pound = UCUM.POUND;
        var poundForce = pound.multiply(gravity);
        var wattHour = UCUM.WATT.multiply(UCUM.HOUR);
        units.put(
                "Length",
                of(metre, MetricPrefix.MILLI(metre), MetricPrefix.CENTI(metre), metre, UCUM.INCH_INTERNATIONAL, foot));
        units.put("Distance", of(metre, metre, kilometre, foot, mile));
        units.put("Mass", of(kilogram, kilogram, pound));
        units.put("Load", of(UCUM.NEWTON, kilogram.multiply(gravity), poundForce, UCUM.NEWTON, poundForce));
        units.put("Force", of(UCUM.NEWTON, UCUM.NEWTON, poundForce));
        units.put(
                "Speed",
                of(
                        metre.divide(second),
                        metre.divide(second),
                        kilometre.divide(UCUM.HOUR),
                        mile.divide(UCUM.HOUR),
                        foot.divide(UCUM.MINUTE)));
        units.put(
                "Rotation",
                of(
                        UCUM.RADIAN.divide(second),
                        UCUM.DEGREE.multiply(360).divide(UCUM.MINUTE),
                        UCUM.RADIAN.divide(second)));
        units.put("Torque", of(UCUM.NEWTON.multiply(metre), UCUM.NEWTON.multiply(metre), poundForce.multiply(foot)));
        units.put(
                "Power",
                of(
                        UCUM.WATT,
                        UCUM.WATT,
                        MetricPrefix.KILO(UCUM.WATT),
                        poundForce.multiply(foot).multiply(550).divide(second)));
        units.put(
                "Energy",
                of(
                        UCUM.JOULE,
                        UCUM.JOULE,
                        wattHour,
                        MetricPrefix.KILO(UCUM.WATT).multiply(UCUM.HOUR)));
        units.put("Charge", of(UCUM.COULOMB, UCUM.AMPERE.multiply(UCUM.HOUR)));
        units.put("Voltage", of(UCUM.VOLT, MetricPrefix.MILLI(UCUM.VOLT), UCUM.VOLT));
        units.put("Current", of(UCUM.AMPERE, UCUM.AMPERE));
        units.put("Resistance", of(UCUM.OHM, MetricPrefix.MILLI(UCUM.OHM), UCUM.OHM));
        units.put(
                "ResistancePerLength",
                of(
                        UCUM.OHM.divide(metre),
                        MetricPrefix.MILLI(UCUM.OHM).divide(metre),
                        UCUM.OHM.divide(kilometre),
                        UCUM.OHM.divide(foot.multiply(1000))));
        units.put("Capacitance", of(UCUM.FARAD, MetricPrefix.MICRO(UCUM.FARAD), MetricPrefix.MILLI(UCUM.FARAD)));
        units.put("Inductance", of(UCUM.HENRY, MetricPrefix.MILLI(UCUM.HENRY), UCUM.HENRY));
        units.put("TemperatureDifference", of(UCUM.KELVIN, UCUM.KELVIN));
        units.put(
                "Time",
                of(
                        second,
                        MetricPrefix.MILLI(second),
                        second,
                        UCUM.MINUTE,
                        UCUM.HOUR,
                        UCUM.DAY,
                        UCUM.WEEK,
                        UCUM.MONTH_GREGORIAN,
                        UCUM.YEAR_GREGORIAN));
        units.put("Angle", of(UCUM.RADIAN, UCUM.DEGREE, UCUM.RADIAN));
        units.put(
                "Acceleration",
                of(metre.divide(second).divide(second), metre.divide(second).divide(second), gravity));
        units.put(
                "Area",
                of(
                        metre.multiply(metre),
                        MetricPrefix.MILLI(metre).pow(2),
                        MetricPrefix.CENTI(metre).pow(2),
                        metre.pow(2),
                        foot.pow(2)));
        units.put(
                "VolumeFlow",
                of(
                        metre.pow(3).divide(second),
                        metre.pow(3).divide(UCUM.HOUR),
                        foot.pow(3).divide(UCUM.MINUTE)));
        var psi = poundForce.divide(UCUM.INCH_INTERNATIONAL.pow(2));
        units.put("Pressure", of(UCUM.PASCAL, MetricPrefix.KILO(UCUM.PASCAL), UCUM.BAR, psi));
        units.put("Stress", of(UCUM.PASCAL, MetricPrefix.MEGA(UCUM.PASCAL), psi));
        units.put(
                "SpringRate",
                of(
                        UCUM.NEWTON.divide(metre),
                        UCUM.NEWTON.divide(MetricPrefix.MILLI(metre)),
                        poundForce.divide(UCUM.INCH_INTERNATIONAL)));
        units.put("RollGradient", of(UCUM.RADIAN.multiply(second.pow(2)).divide(metre), UCUM.DEGREE.divide(gravity)));
        units.put("Frequency", of(UCUM.HERTZ, UCUM.HERTZ));
        units.put("Consumption", of(UCUM.JOULE.divide(metre), wattHour.divide(kilometre), wattHour.divide(mile)));
        return units;
    }

    private static javax.measure.Unit<?>[] of(javax.measure.Unit<?>... units) {
        return units;
    }

    private static Map<String, Unit[]> dimensions() {
        return Arrays.stream(Quantity.class.getPermittedSubclasses())
                .collect(Collectors.toMap(
                        Class::getSimpleName,
                        quantity -> Arrays.stream(quantity.getRecordComponents())
                                .filter(component -> component.getName().equals("unit"))
                                .map(component -> (Unit[]) component.getType().getEnumConstants())
                                .findFirst()
                                .orElseThrow(),
                        (one, other) -> one,
                        LinkedHashMap::new));
    }

    @Test
    void tokensAreThoseOfTheContractInEveryDimensionAndOnce() {
        Map<String, String> tokens = new LinkedHashMap<>();
        dimensions().forEach((dimension, units) -> {
            assertThat(Arrays.stream(units).map(String::valueOf)).doesNotHaveDuplicates();
            tokens.put(dimension, Arrays.stream(units).map(String::valueOf).collect(Collectors.joining(" ")));
        });
        assertThat(tokens).containsExactlyInAnyOrderEntriesOf(CONTRACT);
    }

    @TestFactory
    Stream<DynamicTest> agreesWithTheReferenceLibrary() {
        return dimensions().entrySet().stream()
                .filter(dimension -> !List.of("Temperature", "Grade").contains(dimension.getKey()))
                .flatMap(dimension -> {
                    javax.measure.Unit<?>[] reference = REFERENCE.get(dimension.getKey());
                    assertThat(reference).as(dimension.getKey()).hasSize(dimension.getValue().length + 1);
                    return Stream.iterate(0, i -> i < dimension.getValue().length, i -> i + 1)
                            .map(i -> DynamicTest.dynamicTest(
                                    dimension.getKey() + " in " + dimension.getValue()[i],
                                    () -> agrees(dimension.getValue()[i], reference[i + 1], reference[0])));
                });
    }

    private static void agrees(Unit ours, javax.measure.Unit<?> theirs, javax.measure.Unit<?> si) throws Exception {
        double factor = theirs.getConverterToAny(si).convert(1.0);
        assertThat(ours.toSi(1)).isCloseTo(factor, within(Math.abs(factor) * 1e-12));
        assertThat(ours.toSi(-7.25)).isCloseTo(-7.25 * factor, within(Math.abs(factor) * 1e-11));
    }

    @TestFactory
    Stream<DynamicTest> agreesWithNist() throws IOException {
        String table;
        try (InputStream stream = UnitsTest.class.getResourceAsStream("/quantity/nist-sp-811.csv")) {
            table = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
        List<String[]> rows = table.lines()
                .filter(line -> !line.startsWith("#") && !line.isBlank())
                .map(line -> line.split(",", -1))
                .toList();
        assertThat(rows).isNotEmpty();
        return rows.stream()
                .map(row -> DynamicTest.dynamicTest(row[0] + " in " + row[1], () -> {
                    Unit unit = Arrays.stream(dimensions().get(row[0]))
                            .filter(candidate -> candidate.toString().equals(row[1]))
                            .findFirst()
                            .orElseThrow();
                    BigDecimal printed = new BigDecimal(row[2]);
                    double allowance = row[3].equals("exact")
                            ? printed.doubleValue() * 1e-15
                            : printed.ulp().doubleValue() / 2;
                    assertThat(unit.toSi(1)).isCloseTo(printed.doubleValue(), within(allowance));
                }));
    }

    @TestFactory
    Stream<DynamicTest> comesBackFromSi() {
        return dimensions().values().stream()
                .flatMap(Arrays::stream)
                .map(unit -> DynamicTest.dynamicTest(unit.getClass().getSimpleName() + " " + unit, () -> {
                    for (double value : new double[] {-3.75, 0, 1e-6, 1, 22.4, 76.5}) {
                        assertThat(unit.fromSi(unit.toSi(value)))
                                .isCloseTo(value, within(1e-12 * (100 + Math.abs(value))));
                    }
                }));
    }

    /** NIST SP 811 B.8: t in degrees Celsius is (t in degrees Fahrenheit less 32) over 1.8. */
    @ParameterizedTest
    @CsvSource({"32, 0", "212, 100", "-40, -40", "64, 17.77777777777778", "167, 75"})
    void readsFahrenheit(double fahrenheit, double celsius) {
        assertThat(TemperatureUnit.DEGREE_FAHRENHEIT.toSi(fahrenheit)).isCloseTo(celsius, within(1e-12));
        assertThat(UCUM.FAHRENHEIT.getConverterTo(UCUM.CELSIUS).convert(fahrenheit))
                .isCloseTo(celsius, within(1e-9));
    }

    @Test
    void aGradeOfOneHundredPercentIsFortyFiveDegrees() {
        assertThat(GradeUnit.PERCENT.toSi(100)).isCloseTo(Math.PI / 4, within(1e-15));
        assertThat(GradeUnit.DEGREE.toSi(45)).isCloseTo(Math.PI / 4, within(1e-15));
        assertThat(GradeUnit.PERCENT.fromSi(GradeUnit.DEGREE.toSi(30))).isCloseTo(100 / Math.sqrt(3), within(1e-12));
    }
}

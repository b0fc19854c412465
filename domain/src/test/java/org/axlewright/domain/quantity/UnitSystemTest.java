package org.axlewright.domain.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The output units of the contract, rule R5. */
class UnitSystemTest {

    private static final String TABLE = """
            LENGTH, m, in
            CLEARANCE, mm, in
            DISTANCE, km, mi
            MASS, kg, lb
            LOAD, kg, lb
            FORCE, N, lbf
            SPEED, km/h, mph
            ROTATION, rpm, rpm
            TORQUE, Nm, lbf.ft
            POWER, W, W
            SHAFT_POWER, W, hp
            ENERGY, Wh, Wh
            CHARGE, Ah, Ah
            VOLTAGE, V, V
            CURRENT, A, A
            RESISTANCE, mohm, mohm
            RESISTANCE_PER_LENGTH, ohm/km, ohm/kft
            CAPACITANCE, uF, uF
            INDUCTANCE, mH, mH
            TEMPERATURE, degC, degF
            TEMPERATURE_DIFFERENCE, K, K
            TIME, h, h
            EVENT_TIME, s, s
            LIFE_TIME, a, a
            ANGLE, deg, deg
            GRADE, %, %
            ACCELERATION, m/s2, g
            AREA, mm2, mm2
            BODY_AREA, m2, ft2
            VOLUME_FLOW, m3/h, cfm
            PRESSURE, kPa, psi
            STRESS, MPa, psi
            SPRING_RATE, N/mm, lbf/in
            ROLL_GRADIENT, deg/g, deg/g
            FREQUENCY, Hz, Hz
            CONSUMPTION, Wh/km, Wh/mi
            """;

    @ParameterizedTest
    @CsvSource(textBlock = TABLE)
    void showsTheUnitsOfTheContractAndLosesNothing(Dimension dimension, String metric, String us) {
        assertShown(dimension, UnitSystem.METRIC, metric);
        assertShown(dimension, UnitSystem.US, us);
    }

    private static void assertShown(Dimension dimension, UnitSystem system, String token) {
        Quantity shown = (Quantity) dimension.show(0.375, system);
        assertThat(shown.unit()).hasToString(token);
        assertThat(shown.si()).isCloseTo(0.375, within(1e-12));
    }

    @Test
    void everyDimensionIsInTheTable() {
        assertThat(TABLE.lines().map(line -> line.substring(0, line.indexOf(','))))
                .containsExactlyElementsOf(Arrays.stream(Dimension.values())
                        .filter(dimension -> !(dimension.show(1, UnitSystem.METRIC) instanceof Double))
                        .map(Enum::name)
                        .toList());
    }

    @Test
    void aShareStaysAPlainNumber() {
        assertThat(Dimension.NONE.show(0.2, UnitSystem.US)).isEqualTo(0.2);
    }

    @Test
    void whatOnlyTheWorkingShowsHasItsSiUnitAlone() {
        assertThat(Dimension.SECTION_MODULUS.siUnit()).isEqualTo("m3");
        assertThat(Dimension.SECOND_MOMENT_OF_AREA.siUnit()).isEqualTo("m4");
        assertThat(Arrays.stream(Dimension.values())
                        .filter(dimension -> dimension.show(1, UnitSystem.METRIC) instanceof Double))
                .containsExactly(Dimension.NONE, Dimension.SECTION_MODULUS, Dimension.SECOND_MOMENT_OF_AREA);
    }
}

package org.axlewright.domain.cable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import org.axlewright.domain.check.Unreadable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Designations as people write them. */
class ConductorSizeTest {

    @ParameterizedTest
    @CsvSource({
        "2/0 AWG, 2/0 AWG",
        "2/0awg, 2/0 AWG",
        "' 4 sae ', 4 SAE",
        "35 mm2, 35 mm2",
        "35mm², 35 mm2",
        "'1,5 mm2', 1.5 mm2",
        "1.0 mm2, 1 mm2"
    })
    void readsTheSizeWithItsSeries(String written, String designation) {
        assertThat(ConductorSize.parse(written)).hasToString(designation);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "2/0",
                "35",
                "1/0 mm2",
                "7 AWG",
                "17 SAE",
                "2-2/0 AWG",
                "5/0 AWG",
                "AWG 2",
                "37 mm2",
                "1000 AWG"
            })
    void refusesWhatNamesNoSizeOfASeries(String written) {
        assertThatThrownBy(() -> ConductorSize.parse(written)).isInstanceOf(Unreadable.class);
    }

    @Test
    void writtenAndReadIsTheSame() {
        Arrays.stream(SizeSeries.values())
                .map(Conductor::of)
                .flatMap(List::stream)
                .forEach(conductor -> assertThat(
                                ConductorSize.parse(conductor.size().toString()))
                        .isEqualTo(conductor.size()));
    }

    @Test
    void automotiveWireHoldsLessCopperThanTheGaugeOfItsNumber() {
        for (Conductor sae : Conductor.of(SizeSeries.SAE)) {
            Conductor awg =
                    Conductor.of(new ConductorSize(SizeSeries.AWG, sae.size().designation()));
            assertThat(sae.areaM2()).isLessThan(awg.areaM2());
            assertThat(sae.tableResistanceOhmPerM()).isGreaterThan(awg.tableResistanceOhmPerM());
        }
    }
}

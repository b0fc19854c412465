package org.axlewright.domain.tyre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.axlewright.domain.check.Unreadable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Markings as people write them. The diameter of a metric size is rim code x 25.4 mm + 2 x width x aspect / 100, by hand. */
class TyreSizeTest {

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
                    205/50-10;            459.0; 205;   254.0
                    205/50 - 10;          459.0; 205;   254.0
                    205/50R10;            459.0; 205;   254.0
                    205/50B10;            459.0; 205;   254.0
                    205/50-10 62B;        459.0; 205;   254.0
                    215/65 R 15;          660.5; 215;   381.0
                    P215/65R15 95H;       660.5; 215;   381.0
                    lt235/75r15 104/101q; 733.5; 235;   381.0
                    18x8.50-8;            457.2; 215.9; 203.2
                    18 X 8.50 - 8;        457.2; 215.9; 203.2
                    18x8,5-8;             457.2; 215.9; 203.2
                    18×8.50-8 4PR;        457.2; 215.9; 203.2
                    18x8.50-8 NHS;        457.2; 215.9; 203.2
                    18x8-10;              457.2; 203.2; 254.0
                    23x10-14;             584.2; 254.0; 355.6
                    AT22x11-10 6 ply TL;  558.8; 279.4; 254.0
                    31x10.50R15LT 109Q;   787.4; 266.7; 381.0
                    """)
    void readsHoweverItIsWritten(String marking, double diameterMm, double widthMm, double rimMm) {
        TyreSize size = TyreSize.parse(marking);

        assertThat(size.diameterM() * 1000).isCloseTo(diameterMm, within(1e-9));
        assertThat(size.sectionWidthM() * 1000).isCloseTo(widthMm, within(1e-9));
        assertThat(size.rimDiameterM() * 1000).isCloseTo(rimMm, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"205/50-10 62B, 62", "LT235/75R15 104/101Q, 104", "185/70R14 (88T), 88"})
    void readsTheLoadIndexBehindTheSize(String marking, int index) {
        assertThat(TyreSize.parse(marking).loadIndex()).isEqualTo(index);
    }

    @ParameterizedTest
    @ValueSource(strings = {"18x8.50-8 4PR", "18x8.50-8 4 P.R.", "205/50-10", "18x8.50-8 6 PLY", "205/50R10 160A8"})
    void takesNoPlyRatingAndNoIndexBeyondTheTableForALoadIndex(String marking) {
        assertThat(TyreSize.parse(marking).loadIndex()).isNull();
    }

    @Test
    void tellsRadialFromBias() {
        assertThat(TyreSize.parse("185/70R14").radial()).isTrue();
        assertThat(TyreSize.parse("185/70HR14").radial()).isTrue();
        assertThat(TyreSize.parse("185/70-14").radial()).isFalse();
        assertThat(TyreSize.parse("22x11B10").radial()).isFalse();
    }

    @Test
    void seesThatATyreIsNotForTheRoad() {
        assertThat(TyreSize.parse("22x11-10 NHS").offRoadOnly()).isTrue();
        assertThat(TyreSize.parse("22x11-10").offRoadOnly()).isFalse();
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
                    23/10-14;   360 mm; 23x10-14
                    4.80-8;     diameter; table
                    23 in;      diameter; length
                    584 mm;     diameter; length
                    205x50-10;  millimetres; 205/50-10
                    10x22-10;   rim; diameter x width - rim
                    130/90-2;   285 mm; 305 mm
                    11x4-5;     279 mm; 12 in
                    33x12.5R15; 838 mm; 32 in
                    35/12.5-15; 390 mm; 35x12.5-15
                    0x0-0;      rim; 22x11-10
                    large;      205/50-10; 22x11-10
                    """)
    void asksWhenTheMarkingCanNotBeMeant(String marking, String says, String andSays) {
        assertThatThrownBy(() -> TyreSize.parse(marking))
                .isInstanceOf(Unreadable.class)
                .hasMessageContaining(marking)
                .hasMessageContaining(says)
                .hasMessageContaining(andSays);
    }
}

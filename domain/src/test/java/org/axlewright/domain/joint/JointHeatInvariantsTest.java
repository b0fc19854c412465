package org.axlewright.domain.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.axlewright.domain.joint.JointHeat.Joint;
import org.axlewright.domain.joint.JointHeat.Result;
import org.axlewright.domain.joint.JointInput.Stretch;
import org.junit.jupiter.api.Test;

/** What must hold whatever the numbers. */
class JointHeatInvariantsTest {

    /** Heat of the cycle, summed stretch by stretch, is the mean heat times the time. */
    @Property(seed = "20261125", tries = 200)
    void theMeanHeatTimesTheTimeIsTheHeatOfTheCycle(
            @ForAll @DoubleRange(min = 0.01, max = 50) double milliohm,
            @ForAll @DoubleRange(min = 0, max = 500) double a,
            @ForAll @DoubleRange(min = 0, max = 500) double b,
            @ForAll @DoubleRange(min = 1, max = 600) double seconds) {
        double ohm = milliohm / 1000;
        Joint joint = Measured.ohm(ohm)
                .carries(new Stretch(a, seconds), new Stretch(b, 60))
                .joint();

        double cycle = a * a * ohm * seconds + b * b * ohm * 60;
        assertThat(Objects.requireNonNull(joint.meanW()) * (seconds + 60))
                .isCloseTo(cycle, within(cycle * 1e-12 + 1e-12));
        assertThat(joint.meanW()).isLessThanOrEqualTo(Objects.requireNonNull(joint.peakW()) * (1 + 1e-12));
    }

    @Property(seed = "20261125", tries = 200)
    void dropAndResistanceSayTheSame(
            @ForAll @DoubleRange(min = 0.01, max = 50) double milliohm,
            @ForAll @DoubleRange(min = 1, max = 500) double a) {
        double ohm = milliohm / 1000;
        Joint byDrop = Measured.drop(ohm * a, a).carries(new Stretch(120, 1)).joint();
        Joint byOhm = Measured.ohm(ohm).carries(new Stretch(120, 1)).joint();

        assertThat(byDrop.resistanceOhm()).isCloseTo(ohm, within(ohm * 1e-12));
        assertThat(Objects.requireNonNull(byDrop.meanW()))
                .isCloseTo(Objects.requireNonNull(byOhm.meanW()), within(byOhm.meanW() * 1e-12));
    }

    /** At the current of the reading a joint settles where it was read. */
    @Property(seed = "20261125", tries = 200)
    void atTheCurrentOfTheReadingItSettlesWhereItWasRead(
            @ForAll @DoubleRange(min = 1, max = 500) double a,
            @ForAll @DoubleRange(min = -20, max = 40) double air,
            @ForAll @DoubleRange(min = 0, max = 80) double rise) {
        Joint joint = Measured.drop(0.02, a)
                .warm(air + rise, air)
                .carries(new Stretch(a, 1))
                .joint();

        assertThat(Objects.requireNonNull(joint.settledC())).isCloseTo(air + rise, within(1e-9));
        assertThat(Objects.requireNonNull(joint.peakC())).isCloseTo(air + rise, within(1e-9));
    }

    @Test
    void theOddJointIsFound() {
        Measured sound = Measured.drop(0.02, 100).warm(40, 25);
        Result result = Measured.of(sound, Measured.drop(0.2, 100).warm(80, 25), sound, sound);

        assertThat(result.oddIndex()).isEqualTo(1);
        assertThat(result.medianOhm()).isCloseTo(0.0002, within(1e-15));
        assertThat(result.joints().get(1).ofMedian()).isCloseTo(10, within(1e-9));
        assertThat(result.joints().get(1).aboveOthersK()).isCloseTo(40, within(1e-9));
        assertThat(Measured.of(sound, sound, sound).oddIndex()).isNull();
        assertThat(Measured.of(sound, sound).medianOhm()).isNull();
        assertThat(Measured.findings(sound, Measured.drop(0.2, 100).warm(80, 25), sound, sound))
                .contains("odd-joint", "hotter-than-others", "hot-to-touch", "joint-above-rating");
    }

    @Test
    void whatMeltsIsSaid() {
        assertThat(Measured.findings(Measured.ohm(0.01).carries(new Stretch(300, 10), new Stretch(0, 600))))
                .contains("melts-terminal", "cuts-out-on-hills");
        assertThat(Measured.findings(Measured.ohm(0.001).carries(new Stretch(110, 60))))
                .contains("joint-heat")
                .doesNotContain("melts-terminal");
        assertThat(Measured.findings(Measured.drop(0.02, 100).cable("4", 0.02, 0.1)))
                .contains("above-its-cable", "joint-outweighs-cable");
        assertThat(Measured.findings(Measured.drop(0.0002, 10))).contains("small-reading");
        assertThat(Measured.findings(Measured.drop(0.02, 50).warm(30, 20).carries(new Stretch(150, 60))))
                .contains("rise-far-from-reading", "joint-above-rating");
        assertThat(Measured.findings(Measured.drop(0.002, 50).warm(18, 20))).contains("colder-than-air");
        assertThat(Measured.findings(
                        Measured.drop(0.02, 100).warm(40, 20).carries(new Stretch(250, 5), new Stretch(10, 600))))
                .contains("peak-must-be-short");
        assertThat(Measured.findings(Measured.drop(0.002, 100).warm(30, 25).carries(new Stretch(100, 60))))
                .isEmpty();
    }
}

package org.axlewright.domain.joint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import java.util.stream.Stream;
import org.axlewright.domain.PublishedChecks;
import org.axlewright.domain.PublishedChecks.Case;
import org.axlewright.domain.joint.JointInput.Stretch;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Joints against what was printed of them, wire tables and arithmetic by hand. */
class JointHeatPublishedTest {

    static Stream<Case> rows() {
        return PublishedChecks.read("/joint/checks.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void agreesWithTheSource(Case row) {
        switch (row.topic()) {
            case "heat of a joint" -> row.check("p", JointHeat.heatW(row.in("i"), row.in("r") / 1000));
            case "resistance of a joint" -> {
                double volt = row.inText("u").contains("mV") ? row.in("u") / 1000 : row.in("u");
                row.check("r", 1000 * JointHeat.resistanceOhm(volt, row.in("i")));
            }
            case "heat of a cable" -> {
                double ofOneOhm = asCable(1, row.inText("awg"));
                row.check("p", JointHeat.heatW(row.in("i"), row.in("length") / ofOneOhm));
            }
            case "same length of cable" -> row.check("length", asCable(row.in("r") / 1000, row.inText("awg")));
            default -> {
                assertThat(row.topic()).isEqualTo("rise with the square of the current");
                row.check(
                        "t2",
                        Objects.requireNonNull(Measured.drop(0.01, row.in("i"))
                                .warm(row.in("t"), row.in("ambient"))
                                .carries(new Stretch(row.in("i2"), 60))
                                .joint()
                                .settledC()));
            }
        }
    }

    private static double asCable(double ohm, String awg) {
        return Objects.requireNonNull(
                Measured.ohm(ohm).cable(awg, null, null).joint().asCableM());
    }
}

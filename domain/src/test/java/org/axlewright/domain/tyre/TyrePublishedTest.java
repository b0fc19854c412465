package org.axlewright.domain.tyre;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.axlewright.domain.PublishedChecks;
import org.axlewright.domain.PublishedChecks.Case;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Tyre sizes, radii, load indices and the speedometer band against their sources. */
class TyrePublishedTest {

    private static final String CHECKS = "/tyre/checks.csv";

    static List<Case> diameters() {
        return PublishedChecks.read(CHECKS, "diameter");
    }

    @ParameterizedTest
    @MethodSource("diameters")
    void readsTheDiameterFromTheMarking(Case row) {
        TyreSize size = TyreSize.parse(row.inText("size"));

        row.check("d", size.diameterM() * 1000);
        assertThat(size.sectionWidthM() * 1000).isCloseTo(row.in("w"), within(1e-9));
    }

    static List<Case> ratios() {
        return PublishedChecks.read(CHECKS, "speedometer ratio");
    }

    @ParameterizedTest
    @MethodSource("ratios")
    void findsTheRatioOfTwoMarkings(Case row) {
        double former = TyreSize.parse("185/70R14").diameterM();
        double now = TyreSize.parse("195/50R15").diameterM();

        assertThat(former * 1000).isCloseTo(row.in("d_old"), within(1e-9));
        row.check("ratio", former / now);
    }

    static List<Case> speeds() {
        return PublishedChecks.read(CHECKS, "speedometer upper limit");
    }

    @ParameterizedTest
    @MethodSource("speeds")
    void allowsWhatTheRegulationAllows(Case row) {
        row.check("v_shown_max", Speedometer.highestShown(row.in("v_true") / 3.6) * 3.6);
    }

    static List<Case> indices() {
        return PublishedChecks.read(CHECKS, "load index", "load index, misprint guard");
    }

    @ParameterizedTest
    @MethodSource("indices")
    void looksUpTheLoadIndex(Case row) {
        row.check("mass", LoadIndex.massKg((int) row.in("li")));
    }

    static List<Case> circumferences() {
        return PublishedChecks.read(CHECKS, "rolling circumference");
    }

    @ParameterizedTest
    @MethodSource("circumferences")
    void findsTheRollingCircumference(Case row) {
        TyreSize size = TyreSize.parse(row.inText("size"));

        row.check("c", TyreRadii.rolloutM(size.diameterM(), size.radial()) * 1000);
    }

    static List<Case> loadedRadii() {
        return PublishedChecks.read(CHECKS, "loaded radius");
    }

    @ParameterizedTest
    @MethodSource("loadedRadii")
    void findsTheLoadedRadius(Case row) {
        row.check("c", 2 * Math.PI * TyreRadii.loadedM(row.in("d") / 1000) * 1000);
    }
}

package org.axlewright.domain.roadload;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.axlewright.domain.PublishedChecks;
import org.axlewright.domain.PublishedChecks.Case;
import org.axlewright.domain.check.InvalidInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Inertia classes against the regulation. */
class TestWeightPublishedTest {

    static List<Case> classes() {
        return PublishedChecks.read("/roadload/checks.csv", "equivalent test weight");
    }

    @ParameterizedTest
    @MethodSource("classes")
    void fallsIntoTheClassOfTheRegulation(Case row) {
        row.check("etw", TestWeight.ofKg(row.in("m")));
    }

    @Test
    void refusesWhatTheTableDoesNotHold() {
        assertThatThrownBy(() -> TestWeight.ofKg(1000)).isInstanceOf(InvalidInput.class);
    }
}

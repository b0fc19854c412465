package org.axlewright.domain.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.axlewright.domain.quantity.Dimension;
import org.axlewright.domain.trace.Trace.Term;
import org.junit.jupiter.api.Test;

class TraceTest {

    private static final Symbol A = new Symbol("a", Dimension.LENGTH);
    private static final Step STEP = Step.of(
            "c", "sum", "c = a + b", Dimension.LENGTH, Source.derived("sum"), A, new Symbol("b", Dimension.LENGTH));

    @Test
    void takesDownAStepWithItsInputsAndReturnsItsValue() {
        Trace trace = Trace.withWorking();
        assertThat(trace.note(STEP, 5, 2, 3)).isEqualTo(5);
        assertThat(trace.lines())
                .containsExactly(new Trace.Line(
                        STEP, List.of(new Term(A, 2), new Term(new Symbol("b", Dimension.LENGTH), 3)), 5));
    }

    @Test
    void refusesAWrongNumberOfInputs() {
        Trace trace = Trace.withWorking();
        assertThatIllegalArgumentException().isThrownBy(() -> trace.note(STEP, 5, 2));
        assertThatIllegalArgumentException().isThrownBy(() -> trace.note(STEP, 5, 2, 3, 4));
        assertThat(trace.lines()).isEmpty();
    }

    @Test
    void keepsNoStepWithoutWorking() {
        Trace trace = Trace.withoutWorking();
        assertThat(trace.note(STEP, 5, 2, 3)).isEqualTo(5);
        assertThat(trace.noteTerms(STEP, 6, List.of(new Term(A, 6)))).isEqualTo(6);
        assertThat(trace.keepsWorking()).isFalse();
        assertThat(trace.lines()).isEmpty();
    }

    @Test
    void keepsFindingsAndCautionsWithoutWorkingAndACautionOnce() {
        Trace trace = Trace.withoutWorking();
        Finding finding = Finding.of("light", Level.WARNING, "too light", Source.COMMON_PRACTICE);
        trace.find(finding);
        trace.caution(new Caution("chock", "Chock the wheels"));
        trace.caution(new Caution("chock", "Chock the wheels"));
        assertThat(trace.findings()).containsExactly(finding);
        assertThat(trace.cautions()).hasSize(1);
    }

    @Test
    void saysOfWhichStateAStepIs() {
        Trace trace = Trace.withWorking();
        trace.of("empty").note(STEP, 5, 2, 3);
        assertThat(trace.lines()).extracting(line -> line.step().meaning()).containsExactly("sum, empty");
        assertThat(STEP.meaning()).isEqualTo("sum");
    }

    @Test
    void marksWhatASourceIsWorth() {
        assertThat(Source.published("Handbook, p. 3")).hasToString("Handbook, p. 3");
        assertThat(Source.regulation("49 CFR 571.3")).hasToString("49 CFR 571.3");
        assertThat(Source.derived("statics")).hasToString("statics [derived]");
        assertThat(Source.weak("a page")).hasToString("a page [weak]");
        assertThat(Source.memory("a book")).hasToString("a book [from memory]");
        assertThat(Source.COMMON_PRACTICE).hasToString("common practice, no source");
    }
}

package org.axlewright.api.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jakarta.validation.Validation;
import java.util.List;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.problem.StrictJson;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.exc.MismatchedInputException;
import tools.jackson.databind.json.JsonMapper;

/** A reduction is a number or two tooth counts, and nothing else. */
class RatioTest {

    private static final JsonMapper JSON = strict();
    private static final Form FORM =
            new Form(Validation.buildDefaultValidatorFactory().getValidator());

    private static JsonMapper strict() {
        JsonMapper.Builder builder = JsonMapper.builder();
        StrictJson.strict(builder);
        return builder.build();
    }

    @ParameterizedTest
    @CsvSource({
        "12.44, 12.44",
        "'\"14:60\"', 4.285714285714286",
        "'\"60:14\"', 4.285714285714286",
        "'\"60/14\"', 4.285714285714286",
        "'\"12.44:1\"', 12.44",
        "'\" 11 : 55 \"', 5"
    })
    void readsNumbersAndTeethEitherWayRound(String sent, double reduction) {
        Ratio ratio = read(sent);

        assertThat(ratio.value()).isCloseTo(reduction, within(1e-12));
        assertThat(JSON.writeValueAsString(ratio)).isEqualTo(sent);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"\"12.44\"", "\"14-60\"", "\"0:60\"", "\"14:60:2\"", "\"\"", "true", "{}", "[14, 60]", "1e999"})
    void refusesWhatIsNeither(String sent) {
        assertThatThrownBy(() -> read(sent)).isInstanceOf(MismatchedInputException.class);
    }

    @Test
    void holdsTheBoundsAgainstTheReduction() {
        assertThat(faults("12.44")).isEmpty();
        assertThat(faults("0.05")).containsExactly("/drive/ratio Must be at least 0.1, was 0.05");
        assertThat(faults("\"1:400\"")).containsExactly("/drive/ratio Must be at most 200, was 400");
        assertThat(FORM.faults(JSON.readValue("{\"drive\": {}}", Setup.class))).isEmpty();
    }

    private static Ratio read(String sent) {
        Setup setup = JSON.readValue("{\"drive\": {\"ratio\": " + sent + "}}", Setup.class);
        return setup.drive().ratio();
    }

    private static List<String> faults(String sent) {
        return FORM.faults(JSON.readValue("{\"drive\": {\"ratio\": " + sent + "}}", Setup.class)).stream()
                .map((Fault fault) -> fault.pointer() + " " + fault.message())
                .toList();
    }
}

package org.axlewright.api.setup;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.axlewright.api.assessment.MergePatch;
import org.axlewright.api.problem.CutShort;
import org.axlewright.api.problem.Declined;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.problem.Refused;
import org.axlewright.api.section.Form;
import org.axlewright.api.section.Setup;
import org.springframework.stereotype.Component;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.cfg.JsonNodeFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * A setup that may be saved: form and range are in order and it has a name; whether it is complete is for the calculations to say.
 *
 * @param name of the setup
 * @param text the document as it was sent
 * @param found what an assessment finds about it
 */
record SetupDocument(String name, String text, Findings.Found found) {

    private static final String BYTE_ORDER_MARK = "\uFEFF";
    private static final Pattern HALF_A_PAIR = Pattern.compile("\\p{Cs}");

    /** Reads and checks what is sent. */
    @Component
    static class Reader {

        private final JsonMapper json;
        private final JsonMapper exact;
        private final Form form;
        private final Findings findings;

        Reader(JsonMapper json, Form form, Findings findings) {
            this.json = json;
            this.exact = JsonMapper.builder(json.tokenStreamFactory())
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
                    .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
                    .build();
            this.form = form;
            this.findings = findings;
        }

        /**
         * @throws Declined 400 when it is no JSON object in UTF-8
         * @throws tools.jackson.core.JacksonException when it can't be read into sections
         * @throws Refused with everything that is not valid
         */
        SetupDocument read(byte[] body) {
            return check(decode(body));
        }

        /**
         * A merge patch (RFC 7396).
         *
         * @throws Declined 400 when it is no JSON object in UTF-8
         */
        JsonNode readPatch(byte[] body) {
            JsonNode patch = exact.readTree(decode(body));
            if (patch == null || !patch.isObject()) {
                throw Declined.unreadable("The body must be a JSON object");
            }
            return patch;
        }

        /**
         * The document with a patch, checked like one that is sent. What the patch leaves alone keeps its value to the last digit.
         *
         * @throws Declined 413 when it has grown too large
         */
        SetupDocument patched(String document, JsonNode patch) {
            String patched = exact.writeValueAsString(MergePatch.apply(exact.readTree(document), patch));
            // UTF-8 has no halves of surrogate pairs; JSON writes them as escapes.
            patched = HALF_A_PAIR
                    .matcher(patched)
                    .replaceAll(half -> String.format(
                            Locale.ROOT, "\\\\u%04x", (int) half.group().charAt(0)));
            if (patched.getBytes(StandardCharsets.UTF_8).length > CutShort.MAXIMUM_BYTES) {
                throw new Declined(CutShort.tooLarge(CutShort.MAXIMUM_BYTES).problem());
            }
            return check(patched);
        }

        private SetupDocument check(String text) {
            Setup setup = parse(text);
            List<Fault> faults = new ArrayList<>(form.faults(setup));
            String name = setup.name();
            if (name == null) {
                faults.add(Fault.missing("/name"));
            } else if (!isOneLine(name)) {
                faults.add(new Fault("/name", "unreadable", "Must be one line of printable characters", null, null));
            }
            if (name == null || !faults.isEmpty()) {
                faults.sort(Comparator.comparing(Fault::pointer).thenComparing(Fault::code));
                throw new Refused(faults);
            }
            return new SetupDocument(name, text, findings.of(setup));
        }

        Setup parse(String text) {
            Setup setup = json.readValue(text, Setup.class);
            if (setup == null) {
                throw Declined.unreadable("The body must be a JSON object");
            }
            return setup;
        }

        private static String decode(byte[] body) {
            try {
                String text = StandardCharsets.UTF_8
                        .newDecoder()
                        .decode(ByteBuffer.wrap(body))
                        .toString();
                return text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
            } catch (CharacterCodingException e) {
                throw Declined.unreadable("The body must be UTF-8");
            }
        }

        /** Fit for a list. PostgreSQL holds no NUL in a text and no half of a surrogate pair. */
        private static boolean isOneLine(String name) {
            return !name.isBlank()
                    && name.codePoints().noneMatch(character -> switch (Character.getType(character)) {
                        case Character.CONTROL,
                                Character.SURROGATE,
                                Character.LINE_SEPARATOR,
                                Character.PARAGRAPH_SEPARATOR -> true;
                        default -> false;
                    });
        }
    }
}

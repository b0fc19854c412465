package org.axlewright.api.setup;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.axlewright.api.problem.Declined;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.problem.Refused;
import org.axlewright.api.section.Form;
import org.axlewright.api.section.Setup;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/**
 * A setup that may be saved: form and range are in order and it has a name; whether it is complete is for the calculations to say.
 *
 * @param name of the setup
 * @param text the document as it was sent
 */
record SetupDocument(String name, String text) {

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    /** Reads and checks what is sent. */
    @Component
    static class Reader {

        private final JsonMapper json;
        private final Form form;

        Reader(JsonMapper json, Form form) {
            this.json = json;
            this.form = form;
        }

        /**
         * @throws Declined 400 when it is no JSON object in UTF-8
         * @throws tools.jackson.core.JacksonException when it can't be read into sections
         * @throws Refused with everything that is not valid
         */
        SetupDocument read(byte[] body) {
            String text = decode(body);
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
            return new SetupDocument(name, text);
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

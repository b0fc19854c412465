package org.axlewright.domain.trace;

import org.jspecify.annotations.Nullable;

/**
 * What a good foreman would say of an answer (contract R10).
 *
 * @param code stable name, lower case with hyphens
 * @param level signal word
 * @param message for people; {@code {actual}} and {@code {limit}} stand for the two values, written in the reader's units
 * @param pointer what in the request causes it, RFC 6901, or null for the whole
 * @param state {@code empty} or {@code occupied}, where the two are told apart
 * @param actual the value found
 * @param limit the value it is held against
 * @param action what to do about it
 * @param source where the limit comes from
 */
public record Finding(
        String code,
        Level level,
        String message,
        @Nullable String pointer,
        @Nullable String state,
        @Nullable Measure actual,
        @Nullable Measure limit,
        @Nullable String action,
        Source source) {

    public static Finding of(String code, Level level, String message, Source source) {
        return new Finding(code, level, message, null, null, null, null, null, source);
    }

    public Finding at(@Nullable String where) {
        return new Finding(code, level, message, where, state, actual, limit, action, source);
    }

    public Finding in(@Nullable String when) {
        return new Finding(code, level, message, pointer, when, actual, limit, action, source);
    }

    public Finding actual(Measure value) {
        return new Finding(code, level, message, pointer, state, value, limit, action, source);
    }

    public Finding limit(Measure value) {
        return new Finding(code, level, message, pointer, state, actual, value, action, source);
    }

    public Finding action(String advice) {
        return new Finding(code, level, message, pointer, state, actual, limit, advice, source);
    }
}

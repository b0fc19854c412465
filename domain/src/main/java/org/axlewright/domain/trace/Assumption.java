package org.axlewright.domain.trace;

/**
 * A default or a derived value that an answer stands on (contract R9).
 *
 * @param code stable name, lower case with hyphens
 * @param pointer where the sender could have given it, RFC 6901
 * @param value exactly what could be sent there: a {@link Measure}, a number, a text, or a map or list of these
 * @param reason why this value
 * @param source where it comes from
 */
public record Assumption(String code, String pointer, Object value, String reason, Source source) {}

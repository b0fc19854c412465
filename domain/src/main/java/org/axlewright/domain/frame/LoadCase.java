package org.axlewright.domain.frame;

import java.util.Map;
import org.axlewright.domain.trace.Datum;

/** How the ground loads the frame. {@code toString} is the name in requests. */
public enum LoadCase {
    /** Standing still: the weight alone. */
    STATIC("static"),
    /** Paths and roads: the lower end of the published factors. */
    SMOOTH("smooth"),
    /** Tracks, grass, kerbs: the upper end of the published factors. */
    ROUGH("rough");

    private static final Map<String, Map<String, Datum>> TABLE = Datum.table("/frame/load-factors.csv");

    private final String token;

    LoadCase(String token) {
        this.token = token;
    }

    /** Multiple of the weight when both wheels of an axle hit a bump together. */
    public Datum vertical() {
        return Datum.in(row(token), "vertical");
    }

    /** Multiple of the weight when one wheel does. */
    public Datum torsion() {
        return Datum.in(row(token), "torsion");
    }

    /** What a box must be held with in a case such as {@code forward}, as a multiple of its weight. */
    static Datum holdDown(String name) {
        return Datum.in(row(name), "hold-down");
    }

    private static Map<String, Datum> row(String name) {
        return TABLE.getOrDefault(name, Map.of());
    }

    @Override
    public String toString() {
        return token;
    }
}

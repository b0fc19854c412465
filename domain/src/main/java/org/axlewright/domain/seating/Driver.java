package org.axlewright.domain.seating;

import java.util.Map;
import org.axlewright.domain.trace.Datum;
import org.axlewright.domain.trace.Source;

/** A driver of a surveyed size. {@code toString} is the name in answers. */
public enum Driver {
    /** A small woman: the 5th percentile of each size. */
    SMALL("small", "female-5"),
    /** Midway between the middle woman and the middle man. */
    MIDDLE("middle", "middle"),
    /** A large man: the 95th percentile of each size. */
    LARGE("large", "male-95");

    private static final double MILLIMETRE = 1e-3;

    private static final Map<String, Map<String, Datum>> TABLE = Datum.table("/seating/anthropometry.csv");

    private final String token;
    private final String group;

    Driver(String token, String group) {
        this.token = token;
        this.group = group;
    }

    /** A size of a group of the survey, m. */
    static double sizeM(String group, String item) {
        return datum(group, item).value() * MILLIMETRE;
    }

    private static Datum datum(String group, String item) {
        return Datum.in(TABLE.getOrDefault(group, Map.of()), item);
    }

    /** Back of the buttocks to the front of the knee, sitting, m. */
    double buttockKneeM() {
        return sizeM(group, "buttock-knee");
    }

    /** Floor to the top of the knee, sitting, barefoot, m. */
    double kneeHeightM() {
        return sizeM(group, "knee-height");
    }

    /** Height, standing, barefoot, m. */
    public double statureM() {
        return sizeM(group, "stature");
    }

    /** Where the sizes come from. */
    public Source source() {
        return datum(group, "knee-height").source();
    }

    /** Hip pivot ahead of the back of the buttocks, m. */
    static double hipOffsetM() {
        return sizeM("model", "hip-offset");
    }

    /** Sole under the heel, m. */
    static double shoeM() {
        return sizeM("model", "shoe");
    }

    /** Least comfortable knee angle, rad. */
    public static double kneeBentRad() {
        return Math.toRadians(datum("model", "knee-bent").value());
    }

    /** Greatest comfortable knee angle, rad. */
    public static double kneeStraightRad() {
        return Math.toRadians(datum("model", "knee-straight").value());
    }

    @Override
    public String toString() {
        return token;
    }
}

package org.axlewright.domain.quantity;

/** Units of grade; inside: radian. Conversions are exact (NIST SP 811, 2008, Appendix B). */
public enum GradeUnit implements Unit {
    PERCENT("%") {
        @Override
        public double toSi(double value) {
            return Math.atan(value / 100);
        }

        @Override
        public double fromSi(double si) {
            return 100 * Math.tan(si);
        }
    },
    DEGREE("deg") {
        @Override
        public double toSi(double value) {
            return Math.toRadians(value);
        }

        @Override
        public double fromSi(double si) {
            return Math.toDegrees(si);
        }
    };

    private final String token;

    GradeUnit(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}

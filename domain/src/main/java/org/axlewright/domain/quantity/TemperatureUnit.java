package org.axlewright.domain.quantity;

/** Units of temperature; inside: degree Celsius. Conversions are exact (NIST SP 811, 2008, Appendix B). */
public enum TemperatureUnit implements Unit {
    DEGREE_CELSIUS("degC") {
        @Override
        public double toSi(double value) {
            return value;
        }

        @Override
        public double fromSi(double si) {
            return si;
        }
    },
    DEGREE_FAHRENHEIT("degF") {
        @Override
        public double toSi(double value) {
            return (value - 32) / 1.8;
        }

        @Override
        public double fromSi(double si) {
            return si * 1.8 + 32;
        }
    };

    private final String token;

    TemperatureUnit(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}

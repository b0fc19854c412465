package org.axlewright.domain.fit;

import org.axlewright.domain.trace.Source;

/** Voltages at which rules or parts change. What counts is the pack fully charged, not its nominal voltage. */
public enum VoltageClass {
    /** Touch voltage outside dry rooms. */
    TOUCH_30_V("touch-30-v", 30, "basic protection outside dry rooms"),
    /** Fuse and bundling rules of the boat law, used as a written stand-in. */
    RULE_50_V("rule-50-v", 50, "fuse rule of 33 CFR 183.455(c), boat law used as a written stand-in"),
    /** Road-vehicle fuse-links. */
    FUSE_58_V("fuse-58-v", 58, "road-vehicle fuse-links of the 58 V class"),
    /** Voltage class B. */
    CLASS_B_60_V("class-b-60-v", 60, "voltage class B of road vehicles; touching both poles can kill"),
    /** Battery cable to SAE J1127. */
    CABLE_60_V("cable-60-v", 60, "scope of battery cable to SAE J1127");

    private final String token;
    private final double limitV;
    private final String meaning;

    VoltageClass(String token, double limitV, String meaning) {
        this.token = token;
        this.limitV = limitV;
        this.meaning = meaning;
    }

    /** V. */
    public double limitV() {
        return limitV;
    }

    public String meaning() {
        return meaning;
    }

    public Source source() {
        return switch (this) {
            case TOUCH_30_V -> Source.weak("IEC 60364-4-41 cl. 414.4.5 as quoted: 30 V DC outside dry locations");
            case RULE_50_V -> Source.regulation("33 CFR 183.455(c)");
            case FUSE_58_V -> Source.published("ISO 8820-3 and ISO 8820-4: 32 V or 58 V");
            case CLASS_B_60_V ->
                Source.weak("ISO 6469-3 and UN R100: class B above 60 V DC, as described in a trade article");
            case CABLE_60_V -> Source.regulation("SAE J1127: 60 V DC nominal");
        };
    }

    /** Whether a pack of that voltage is beyond the limit; at the limit it is not. */
    public boolean passedAt(double voltageV) {
        return voltageV > limitV;
    }

    @Override
    public String toString() {
        return token;
    }
}

package org.axlewright.domain.charging;

/** Household outlets, by the standard that draws them. {@code toString} is the name in requests. */
public enum Outlet {
    NEMA_5_15("nema-5-15"),
    NEMA_5_20("nema-5-20"),
    NEMA_6_20("nema-6-20"),
    NEMA_14_30("nema-14-30"),
    NEMA_14_50("nema-14-50"),
    NEMA_TT_30("nema-tt-30"),
    BS_1363("bs-1363"),
    CEE_7("cee-7"),
    IEC_60309_16("iec-60309-16"),
    AS_3112("as-3112"),
    JIS_C_8303("jis-c-8303"),
    SN_441011_T13("sn-441011-t13");

    private final String token;

    Outlet(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}

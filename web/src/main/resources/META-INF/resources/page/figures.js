// @ts-check
/** Numbers and signs of units for people. Pure: rounding happens here and nowhere else, the service sends full numbers. */

/** Signs of units as printed (SI Brochure, NIST SP 811); a token that is not listed is its own sign. @type {Record<string, string>} */
const SIGNS = {
    degC: '°C', degF: '°F', deg: '°', mohm: 'mΩ', ohm: 'Ω', 'mohm/m': 'mΩ/m', 'ohm/km': 'Ω/km', 'ohm/kft': 'Ω/kft',
    uF: 'µF', mm2: 'mm²', cm2: 'cm²', m2: 'm²', ft2: 'ft²', 'm/s2': 'm/s²', 'm3/h': 'm³/h', Nm: 'N·m', 'lbf.ft': 'lbf·ft',
    'deg/g': '°/g',
};

/** @param {string} token */
export function unitSign(token) {
    return SIGNS[token] ?? token;
}

/** @type {Map<string, Intl.NumberFormat>} */
const formats = new Map();

/** @param {string} locale @param {number} digits */
function format(locale, digits) {
    const key = locale + digits;
    const found = formats.get(key) ?? new Intl.NumberFormat(locale, { maximumSignificantDigits: digits, useGrouping: false });
    formats.set(key, found);
    return found;
}

/**
 * A number with so many significant digits in the spelling of a locale, without an exponent where people can do without. No marks between
 * thousands: a comma there and a comma here have been taken for each other too often.
 * @param {number} value
 * @param {number} digits
 * @param {string} locale
 */
export function spell(value, digits, locale) {
    const rounded = Number(value.toPrecision(digits));
    if (rounded === 0) {
        return '0';
    }
    const size = Math.abs(rounded);
    if (size >= 1e9 || size < 1e-6) {
        const [mantissa, exponent] = rounded.toExponential().split('e');
        return (format(locale, digits).format(Number(mantissa)) + 'e' + exponent).replace(/-/g, '−');
    }
    return format(locale, digits).format(rounded).replace('-', '−');
}

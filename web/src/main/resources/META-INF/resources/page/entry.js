// @ts-check
/**
 * Reads what people type, as a shop spells it: `6"`, `5' 6"`, `3 1/2 in`, `182 kg`, `14:60`, `2/0`, `18x8.5-8`, comma or point. Pure: text
 * in, what it says or a fault out. A fault is a key of the catalogue, so that it can be told in any language.
 */

/**
 * @typedef {{fault: 'notNumber' | 'ambiguous' | 'otherUnit', typed: string, one?: number, other?: number, units?: string[]}} Unread
 * @typedef {{number: number, plainly: boolean}} ReadNumber `plainly`: the text is the number, nothing needs to be shown beside it
 * @typedef {{value: number, unit: string, plainly: boolean}} ReadQuantity
 * @typedef {{text: string, plainly: boolean}} ReadText
 * @typedef {{unitless?: boolean, reduction?: boolean, cells?: boolean, decimalComma?: boolean}} Kind
 *     `decimalComma`: the reader's own language writes the decimal comma, so that `1,250` is no thousand
 */

/** Spellings of a unit, lower case, beside its token. Metric horsepower (PS, cv) is another unit and is not read. @type {Record<string, string[]>} */
const SPELLINGS = {
    mm: ['millimetre', 'millimetres', 'millimeter', 'millimeters', 'milímetros'],
    cm: ['centimetre', 'centimetres', 'centimeter', 'centimeters', 'centímetros'],
    m: ['metre', 'metres', 'meter', 'meters', 'metro', 'metros'],
    in: ['"', 'in.', 'inch', 'inches', 'pulg', 'pulg.', 'pulgada', 'pulgadas'],
    ft: ["'", 'ft.', 'foot', 'feet', 'pie', 'pies'],
    km: ['kilometre', 'kilometres', 'kilometer', 'kilometers', 'kilómetros'],
    mi: ['mile', 'miles', 'milla', 'millas'],
    kg: ['kgs', 'kilo', 'kilos'],
    lb: ['lbs', 'lb.', 'lbs.', '#', 'pound', 'pounds', 'libra', 'libras'],
    'm/s': ['mps'],
    'km/h': ['kmh', 'kph'],
    mph: ['mi/h'],
    'ft/min': ['fpm'],
    rpm: ['r/min', '1/min'],
    Nm: ['n·m', 'n.m', 'n m', 'n-m'],
    'lbf.ft': ['lbf·ft', 'lbf-ft', 'lb-ft', 'lb.ft', 'lb·ft', 'lbft', 'ft-lb', 'ft.lb', 'ftlb', 'ft lb', 'ft-lbs'],
    W: ['watt', 'watts'],
    hp: ['horsepower'],
    V: ['volt', 'volts', 'voltios'],
    A: ['amp', 'amps', 'amperes', 'amperios'],
    Ah: ['amp-hours', 'amp hours', 'a·h'],
    mohm: ['mω', 'milliohm', 'milliohms'],
    ohm: ['ω', 'ohms', 'ohmios'],
    uF: ['µf', 'μf'],
    degC: ['°c', 'ºc', 'c', 'deg c', '° c'],
    degF: ['°f', 'ºf', 'f', 'deg f', '° f'],
    K: ['kelvin'],
    s: ['sec', 'secs', 'second', 'seconds', 'segundo', 'segundos'],
    min: ['mins', 'minute', 'minutes', 'minuto', 'minutos'],
    h: ['hr', 'hrs', 'hour', 'hours', 'hora', 'horas'],
    d: ['day', 'days', 'día', 'días'],
    week: ['weeks', 'wk', 'semana', 'semanas'],
    month: ['months', 'mo', 'mes', 'meses'],
    a: ['yr', 'yrs', 'year', 'years', 'año', 'años'],
    deg: ['°', 'º', 'degree', 'degrees', 'grado', 'grados'],
    '%': ['percent', 'per cent', 'por ciento'],
    'm/s2': ['m/s²'],
    mm2: ['mm²', 'sq mm'],
    cm2: ['cm²', 'sq cm'],
    m2: ['m²', 'sq m'],
    ft2: ['ft²', 'sq ft'],
    'm3/h': ['m³/h'],
    'lbf/in': ['lb/in', 'lbs/in'],
    'deg/g': ['°/g'],
};

const FRACTIONS = /** @type {Record<string, string>} */ ({
    '½': '1/2', '¼': '1/4', '¾': '3/4', '⅛': '1/8', '⅜': '3/8', '⅝': '5/8', '⅞': '7/8', '⅓': '1/3', '⅔': '2/3',
});

const PLAIN = /^[+-]?(\d+([.,]\d*)?|[.,]\d+)(e[+-]?\d{1,3})?$/i;
const NUMBER = String.raw`[+-]?(?:\d[\d.,]*|[.,]\d+)(?:[ -]\d+\/\d+)?|\d+\/\d+`;

/** One kind of blank, minus and quotation mark, and fractions written out. @param {string} text */
function tidy(text) {
    return text.replace(/[\s\u00a0\u2009\u202f]+/g, ' ').trim()
        .replace(/[−–]/g, '-')
        .replace(/[’‘′`]/g, "'")
        .replace(/[”“″]|''/g, '"')
        .replace(/(\d?) ?([½¼¾⅛⅜⅝⅞⅓⅔])/g, (_, whole, sign) => (whole ? whole + ' ' : '') + FRACTIONS[sign]);
}

/**
 * The number of a tidy text in JavaScript's spelling, or null, or both readings of one that may be two.
 * @param {string} text
 * @param {boolean} decimalComma
 * @returns {string | null | {one: number, other: number}}
 */
function spelled(text, decimalComma) {
    if (PLAIN.test(text)) {
        const point = text.replace(',', '.');
        if (!decimalComma && /^[+-]?[1-9]\d{0,2},\d{3}$/.test(text)) {
            return { one: Number(point), other: Number(text.replace(',', '')) };
        }
        return point;
    }
    if (/^[+-]?\d{1,3}((,\d{3})+\.\d+|(,\d{3}){2,})$/.test(text)) {
        return text.replace(/,/g, '');
    }
    if (/^[+-]?\d{1,3}((\.\d{3})+,\d+|(\.\d{3}){2,})$/.test(text)) {
        return text.replace(/\./g, '').replace(',', '.');
    }
    if (/^[+-]?\d{1,3}( \d{3})+([.,]\d+)?$/.test(text)) {
        return text.replace(/ /g, '').replace(',', '.');
    }
    const mixed = /^([+-]?)(?:(\d+)[ -])?(\d+)\/([1-9]\d*)$/.exec(text);
    if (mixed) {
        const size = Number(mixed[2] ?? 0) + Number(mixed[3]) / Number(mixed[4]);
        return String(mixed[1] === '-' ? -size : size);
    }
    return null;
}

/**
 * A plain number: also per cent where no unit stands beside it, `14:60` teeth or `12.3:1` for a reduction (the larger over the smaller,
 * since a reduction turns the motor faster than the wheel), and `16S` for cells in series.
 * @param {string} typed
 * @param {Kind} [kind]
 * @returns {ReadNumber | Unread}
 */
export function readNumber(typed, kind = {}) {
    const text = tidy(typed);
    const comma = kind.decimalComma ?? false;
    const teeth = kind.reduction ? /^(.+?) ?[:/] ?(.+)$/.exec(text) : null;
    if (teeth) {
        const [one, other] = teeth.slice(1).map((part) => Number(spelled(part, true) ?? NaN));
        if (one > 0 && other > 0) {
            return { number: Math.max(one, other) / Math.min(one, other), plainly: false };
        }
    }
    const read = spelled(text, comma);
    if (typeof read === 'string') {
        return { number: Number(read), plainly: read === text };
    }
    if (read !== null) {
        return { fault: 'ambiguous', typed: text, ...read };
    }
    const percent = /^(.+?) ?%$/.exec(text);
    const share = kind.unitless && percent ? spelled(percent[1], comma) : null;
    if (typeof share === 'string') {
        return { number: Number((Number(share) / 100).toPrecision(15)), plainly: false };
    }
    const cells = kind.cells ? /^(\d+) ?s$/i.exec(text) : null;
    if (cells) {
        return { number: Number(cells[1]), plainly: false };
    }
    return { fault: 'notNumber', typed: text };
}

/** The units that a text names at its end, among these. @param {string} text lower case @param {string[]} units */
function ending(text, units) {
    const found = units.flatMap((unit) => [unit.toLowerCase(), ...(SPELLINGS[unit] ?? [])].map((spelling) => ({ unit, spelling })))
        .filter(({ spelling }) => text.endsWith(spelling) && /[\d.,/) ]$/.test(text.slice(0, -spelling.length)));
    return found.sort((one, other) => other.spelling.length - one.spelling.length)[0];
}

/**
 * A quantity. A unit that is typed holds; else the one chosen beside the field.
 * @param {string} typed
 * @param {string[]} units that the field takes
 * @param {string} chosen
 * @param {Kind} [kind]
 * @returns {ReadQuantity | Unread}
 */
export function readQuantity(typed, units, chosen, kind = {}) {
    const text = tidy(typed);
    const alone = readNumber(text, { decimalComma: kind.decimalComma });
    if (!('fault' in alone)) {
        return { value: alone.number, unit: chosen, plainly: alone.plainly };
    }
    if (alone.fault === 'ambiguous') {
        return alone;
    }
    return twoUnits(text, units, kind) ?? oneUnit(text, units, kind);
}

/** `5' 6"` and `1 h 30 min`: exact in the smaller unit. @param {string} text @param {string[]} units @param {Kind} kind @returns {ReadQuantity | null} */
function twoUnits(text, units, kind) {
    for (const [large, small, times] of /** @type {[string, string, number][]} */ ([['ft', 'in', 12], ['h', 'min', 60], ['min', 's', 60]])) {
        if (!units.includes(large) || !units.includes(small)) {
            continue;
        }
        /** @param {string} unit */
        const any = (unit) => [unit, ...SPELLINGS[unit]].sort((one, other) => other.length - one.length)
            .map((spelling) => spelling.replace(/[.]/g, '\\.')).join('|');
        const parts = new RegExp(`^(${NUMBER}) ?(?:${any(large)})[ -]?(${NUMBER}) ?(?:${any(small)})?$`, 'i').exec(text);
        if (parts) {
            const [whole, rest] = [parts[1], parts[2]].map((part) => readNumber(part, kind));
            if ('number' in whole && 'number' in rest && rest.number >= 0 && rest.number < times) {
                const size = Math.abs(whole.number) * times + rest.number;
                return { value: parts[1].startsWith('-') ? -size : size, unit: small, plainly: false };
            }
        }
    }
    return null;
}

/** @param {string} text @param {string[]} units @param {Kind} kind @returns {ReadQuantity | Unread} */
function oneUnit(text, units, kind) {
    const lower = text.toLowerCase();
    const named = ending(lower, units);
    if (named !== undefined) {
        const read = readNumber(text.slice(0, -named.spelling.length), { decimalComma: kind.decimalComma });
        return 'fault' in read ? { ...read, typed: text } : { value: read.number, unit: named.unit, plainly: false };
    }
    return ending(lower, Object.keys(SPELLINGS)) === undefined ? { fault: 'notNumber', typed: text } : { fault: 'otherUnit', typed: text, units };
}

/**
 * A conductor size to the designation that the service reads: `2/0`, `00` and `#6` are American wire gauge. What is not known passes as
 * it is: the service says what it lacks.
 * @param {string} typed
 * @returns {ReadText}
 */
export function readConductor(typed) {
    const text = tidy(typed);
    const bare = text.replace(/^(?:#|no\.?) ?/i, '');
    const marked = bare !== text;
    const gauge = / ?(?:awg|ga\.?|gauge)$/i;
    const size = bare.replace(gauge, '');
    /** @param {string} read */
    const as = (read) => ({ text: read, plainly: read === text });
    if (/^0{1,4}$/.test(size)) {
        return as(size.length + '/0 AWG');
    }
    if (/^[1-4]\/0$/.test(size) || (/^\d{1,2}$/.test(size) && (marked || gauge.test(bare)))) {
        return as(size + ' AWG');
    }
    const square = /^(\d+(?:[.,]\d+)?) ?(?:mm2|mm²|mm\^2|sq\.? ?mm)$/i.exec(text);
    return as(square ? square[1].replace(',', '.') + ' mm2' : text);
}

/**
 * A tyre marking with one multiplication sign and decimal points.
 * @param {string} typed
 * @returns {ReadText}
 */
export function readTyre(typed) {
    const text = tidy(typed);
    const read = text.replace(/ ?[×*] ?|(?<=\d) ?x ?(?=\d)/gi, 'x').replace(/(\d),(\d)/g, '$1.$2').replace(/ ?([-/]) ?/g, '$1');
    return { text: read, plainly: read === text };
}

/**
 * An amount of money as the contract writes it, and the currency where a sign names exactly one.
 * @param {string} typed
 * @param {Kind} [kind]
 * @returns {{amount: string, currency?: string} | Unread}
 */
export function readAmount(typed, kind = {}) {
    const text = tidy(typed);
    const signs = /** @type {Record<string, string>} */ ({ '€': 'EUR', '£': 'GBP', 'US$': 'USD' });
    const sign = Object.keys(signs).find((one) => text.toUpperCase().includes(one));
    const bare = (sign ? text.toUpperCase().replace(sign, '') : text.replace(/^\$/, '')).trim();
    const read = spelled(bare, kind.decimalComma ?? false);
    if (read === null || typeof read !== 'string') {
        return read === null ? { fault: 'notNumber', typed: text } : { fault: 'ambiguous', typed: text, ...read };
    }
    return sign ? { amount: read, currency: signs[sign] } : { amount: read };
}

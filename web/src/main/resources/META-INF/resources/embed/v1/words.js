// @ts-check
/**
 * What an element says, in the language of the document around it. What the service says itself stays in its own words, marked as English,
 * where there is no translation.
 */

import { spell, unitSign } from '../../page/figures.js';

/** @typedef {{texts: Record<string, string>, names: Record<string, string>}} Catalogue `texts`: what the elements say; `names`: of fields, results and choices */
/** @typedef {{message: string, action?: string}} Said */

/** Significant digits that people get; the working has more, so that somebody may follow it by hand. */
const DIGITS = 4;
const WORKING_DIGITS = 6;

const LANGUAGES = ['en', 'es'];

/** @type {Map<string, Promise<Words>>} */
const loaded = new Map();

/** @param {string} tag BCP 47, such as `es-MX`; any other language than English and Spanish is answered in English */
export function words(tag) {
    const found = loaded.get(tag) ?? load(tag);
    loaded.set(tag, found);
    return found;
}

/** @param {string} tag */
async function load(tag) {
    const wanted = tag.split('-')[0].toLowerCase();
    const language = LANGUAGES.includes(wanted) ? wanted : 'en';
    return new Words(language, locale(tag), (await import(`./${language}.js`)).default);
}

/** A tag without a region takes that of the reader's browser; a tag that is none, the reader's own. @param {string} tag */
function locale(tag) {
    const own = navigator.languages.find((one) => one.split('-')[0] === tag);
    try {
        return Intl.getCanonicalLocales(own ?? tag)[0] ?? navigator.language;
    } catch {
        return navigator.language;
    }
}

export class Words {
    #catalogue;
    #plurals;

    /** @param {string} language @param {string} locale @param {Catalogue} catalogue */
    constructor(language, locale, catalogue) {
        this.language = language;
        this.locale = locale;
        /** Whether the reader's numbers have a decimal comma. */
        this.decimalComma = (1.5).toLocaleString(locale).includes(',');
        this.#catalogue = catalogue;
        this.#plurals = new Intl.PluralRules(locale);
    }

    /** A text; `{name}` stands for a value, and one with `count` has the forms `key.one` and `key.other`. @param {string} key @param {Record<string, string | number>} [values] */
    t(key, values = {}) {
        const { texts } = this.#catalogue;
        const form = typeof values.count === 'number' ? texts[key + '.' + this.#plurals.select(values.count)] ?? texts[key + '.other'] : texts[key];
        return (form ?? key).replace(/\{(\w+)\}/g, (whole, name) => (name in values ? String(values[name]) : whole));
    }

    /** A name of the contract as people read it: from the catalogue, else `cellsInSeries` taken apart. @param {string} name */
    label(name) {
        const spaced = name.replace(/-/g, ' ').replace(/([a-z0-9])([A-Z])/g, '$1 $2').toLowerCase();
        return this.#catalogue.names[name] ?? spaced.charAt(0).toUpperCase() + spaced.slice(1);
    }

    /** Within a sentence; abbreviations stay as they are. @param {string} name */
    within(name) {
        const text = this.label(name);
        return /^[A-Z][A-Z0-9]/.test(text) ? text : text.charAt(0).toLowerCase() + text.slice(1);
    }

    /** `['Mass', 'Position', 'X']` becomes `Mass, position, x`. @param {string[]} labels */
    joined(labels) {
        return labels.map((one, at) => (at === 0 || /^[A-Z][A-Z0-9]/.test(one) ? one : one.charAt(0).toLowerCase() + one.slice(1))).join(', ');
    }

    /** `/circuits/0/length/value` becomes `Circuits 1, length`. @param {string} pointer */
    place(pointer) {
        /** @type {string[]} */
        const named = [];
        for (const part of segments(pointer).filter((name, at, all) => at < 2 || at < all.length - 1 || !/^(value|unit)$/.test(name))) {
            if (/^\d+$/.test(part) && named.length > 0) {
                named[named.length - 1] += ' ' + (Number(part) + 1);
            } else {
                named.push(this.label(part));
            }
        }
        return this.joined(named);
    }

    /** @param {number} value @param {number} [digits] */
    number(value, digits = DIGITS) {
        return spell(value, digits, this.locale);
    }

    /** Value and unit, kept on one line. @param {number} value @param {string} unit @param {number} [digits] */
    measured(value, unit, digits = DIGITS) {
        const sign = unit === '1' ? '' : unitSign(unit);
        return this.number(value, digits) + (sign === '' || sign === '°' ? '' : ' ') + sign;
    }

    /** A line of the working. @param {number} value @param {string} unit */
    exactly(value, unit) {
        return this.measured(value, unit, WORKING_DIGITS);
    }

    /**
     * Any leaf of an answer. Shares, plain numbers from 0 to 1 in the contract, are read as per cent.
     * @param {any} value
     * @param {string} [name] the last name of its pointer
     * @returns {string}
     */
    leaf(value, name = '') {
        if (Array.isArray(value)) {
            return value.map((one) => this.leaf(one, name)).join(', ');
        }
        if (typeof value === 'number') {
            return /share$|^stateOfCharge/i.test(name) ? this.measured(value * 100, '%') : this.number(value);
        }
        if (typeof value === 'boolean') {
            return this.t(value ? 'yes' : 'no');
        }
        if (typeof value === 'object' && value !== null) {
            return 'unit' in value && typeof value.value === 'number' ? this.measured(value.value, value.unit)
                : 'currency' in value ? this.#money(value)
                    : Object.entries(value).map(([inner, part]) => this.within(inner) + ' ' + this.leaf(part, inner)).join(', ');
        }
        const date = /^\d{4}-\d\d-\d\d$/.test(value) ? new Date(value + 'T00:00:00Z') : null;
        return date !== null ? date.toLocaleDateString(this.locale, { dateStyle: 'long', timeZone: 'UTC' })
            : !/^(name|reference|message|printed)$/.test(name) && /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/.test(value) ? this.within(value) : String(value);
    }

    /** @param {{amount: string, currency: string}} money */
    #money({ amount, currency }) {
        const size = Number(amount);
        const digits = { minimumFractionDigits: 2, maximumFractionDigits: size !== 0 && Math.abs(size) < 1 ? 4 : 2, useGrouping: false };
        return (Number.isFinite(size) ? size.toLocaleString(this.locale, digits) : amount) + ' ' + currency;
    }
}

/** @param {string} pointer RFC 6901 @returns {string[]} */
export function segments(pointer) {
    return pointer.split('/').slice(1).map((part) => part.replace(/~1/g, '/').replace(/~0/g, '~'));
}

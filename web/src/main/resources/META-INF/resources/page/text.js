// @ts-check
/** Turns names, numbers and quantities of the contract into text for people. */

import { spell, unitSign } from './figures.js';
import { foreignLabelWithin, label, labelWithin, locale, t } from './words.js';

export { unitSign };

/** @typedef {{value: number, unit: string}} Quantity */

/** Significant digits that people get. */
export const DIGITS = 4;

/** Significant digits of the working, which somebody may want to follow by hand. */
export const WORKING_DIGITS = 6;

/**
 * A number in the reader's spelling.
 * @param {number} value
 * @param {number} [digits]
 */
export function number(value, digits = DIGITS) {
    return spell(value, digits, locale);
}

/**
 * Value and unit, kept on one line.
 * @param {Quantity} quantity
 * @param {number} [digits]
 */
export function quantity({ value, unit }, digits = DIGITS) {
    const gap = unit === 'deg' ? '' : ' ';
    return number(value, digits) + gap + unitSign(unit);
}

/**
 * @param {unknown} value
 * @returns {value is Quantity}
 */
export function isQuantity(value) {
    return typeof value === 'object' && value !== null && 'value' in value && 'unit' in value
        && typeof value.value === 'number' && typeof value.unit === 'string';
}

/**
 * @param {unknown} value
 * @returns {value is {amount: string, currency: string}}
 */
export function isMoney(value) {
    return typeof value === 'object' && value !== null && 'amount' in value && 'currency' in value;
}

/**
 * Any leaf of an answer. Shares, plain numbers from 0 to 1 in the contract, are read as per cent; a pointer as the place it points to.
 * @param {unknown} value
 * @param {string} [name] the last name of its pointer
 * @returns {string}
 */
export function leaf(value, name = '') {
    if (isQuantity(value)) {
        return quantity(value);
    }
    if (isMoney(value)) {
        const amount = Number(value.amount);
        return (Number.isFinite(amount) ? amount.toLocaleString(locale, { minimumFractionDigits: 2, maximumFractionDigits: 2, useGrouping: false }) : value.amount)
            + ' ' + value.currency;
    }
    if (typeof value === 'number') {
        return /share$/i.test(name) ? number(value * 100) + ' %' : number(value);
    }
    if (typeof value === 'boolean') {
        return t(value ? 'yes' : 'no');
    }
    if (name === 'pointer' && typeof value === 'string') {
        return place(value);
    }
    if (Array.isArray(value)) {
        return value.map((one) => (isComposite(one) ? composite(one) : leaf(one))).join(', ');
    }
    return isComposite(value) ? composite(value) : typeof value === 'string' && !/^(name|reference)$/.test(name) && /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/.test(value) ? labelWithin(value) : String(value);
}

/** @param {object} value @returns {string} */
function composite(value) {
    return Object.entries(value).map(([name, part]) => labelWithin(name) + ' ' + leaf(part, name)).join(', ');
}

/**
 * An object or list that is neither a quantity nor money.
 * @param {unknown} value
 * @returns {value is object}
 */
export function isComposite(value) {
    return typeof value === 'object' && value !== null && !isQuantity(value) && !isMoney(value);
}

/**
 * `/circuits/0/length` becomes `Circuits 1 › length`.
 * @param {string} pointer RFC 6901
 */
export function place(pointer) {
    const parts = segments(pointer).filter((part, at, all) => at < all.length - 1 || !/^(value|unit)$/.test(part) || at < 2);
    /** @type {string[]} */
    const named = [];
    for (const part of parts) {
        if (/^\d+$/.test(part) && named.length > 0) {
            named[named.length - 1] += ' ' + (Number(part) + 1);
        } else {
            named.push(named.length === 0 ? label(part) : labelWithin(part));
        }
    }
    return named.length === 0 ? t('wholeSetup') : named.join(' › ');
}

/**
 * @param {string} pointer RFC 6901
 * @returns {string[]}
 */
export function segments(pointer) {
    return pointer.split('/').slice(1).map((part) => part.replace(/~1/g, '/').replace(/~0/g, '~'));
}

/** Names in a text of the catalogue stand between backticks; people read them as words. @param {string} text */
export function prose(text) {
    return named(text, labelWithin);
}

/** The same of a description of the contract, which is in English. @param {string} description */
export function foreignProse(description) {
    return named(description, foreignLabelWithin);
}

/** @param {string} text @param {(name: string) => string} words */
function named(text, words) {
    return text.replace(/`([^`]+)`/g, (_, name) => (/^[a-z]+([A-Z][a-z]+)*$/.test(name) ? words(name) : name));
}

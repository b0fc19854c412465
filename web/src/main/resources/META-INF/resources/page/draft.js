// @ts-check
/**
 * What has been typed, before it is a setup: the same tree with texts as leaves, so that nothing typed is ever lost, readable or not.
 * A quantity is `{value: '66', unit: 'in'}`; a unit within the text holds before the one beside it. Pure functions.
 */

import { readAmount, readConductor, readNumber, readQuantity, readTyre } from './entry.js';
import { number as shownNumber, unitSign } from './text.js';
import { locale, t } from './words.js';

/** @typedef {import('./contract.js').Field} Field */
/** @typedef {{[name: string]: any}} Draft */
/** @typedef {{pointer: string, message: string}} EntryFault */

/** Whether the reader's numbers have a decimal comma. */
const decimalComma = (1.5).toLocaleString(locale).includes(',');

/** Unit of a quantity that may be sent as a plain number. */
export const PLAIN_NUMBER = '1';

/**
 * The setup that the draft says, and what of it can't be read.
 * @param {Draft} draft
 * @param {Field[]} fields
 * @returns {{setup: Record<string, unknown>, faults: EntryFault[]}}
 */
export function toSetup(draft, fields) {
    /** @type {EntryFault[]} */
    const faults = [];
    return { setup: /** @type {Record<string, unknown>} */ (group(draft, fields, '', faults) ?? {}), faults };
}

/**
 * @param {Draft} draft
 * @param {Field[]} fields
 * @param {string} pointer
 * @param {EntryFault[]} faults
 */
function group(draft, fields, pointer, faults) {
    /** @type {Record<string, unknown>} */
    const setup = {};
    for (const field of fields) {
        const value = leaf(draft?.[field.name], field, pointer + '/' + field.name, faults);
        if (value !== undefined) {
            setup[field.name] = value;
        }
    }
    return Object.keys(setup).length === 0 ? undefined : setup;
}

/**
 * @param {any} typed
 * @param {Field} field
 * @param {string} pointer
 * @param {EntryFault[]} faults
 * @returns {unknown}
 */
function leaf(typed, field, pointer, faults) {
    if (typed === undefined) {
        return undefined;
    }
    switch (field.kind) {
        case 'group':
            return group(typed, field.fields ?? [], pointer, faults);
        case 'list': {
            const item = /** @type {Field} */ (field.item);
            const list = typed.map((/** @type {any} */ one, /** @type {number} */ at) => leaf(one, item, pointer + '/' + at, faults) ?? {});
            return list.length === 0 ? undefined : list;
        }
        case 'quantity': {
            if (text(typed.value) === undefined) {
                return undefined;
            }
            const read = understood(typed.value, field, pointer, typed.unit);
            if ('fault' in read) {
                faults.push({ pointer: pointer + '/value', message: told(read) });
                return undefined;
            }
            return 'value' in read ? { value: read.value, unit: read.unit } : /** @type {any} */ (read).number;
        }
        case 'money': {
            const currency = text(typed.currency)?.toUpperCase();
            if (text(typed.amount) === undefined) {
                return currency === undefined ? undefined : { currency };
            }
            const read = readAmount(typed.amount, { decimalComma });
            if ('fault' in read) {
                faults.push({ pointer: pointer + '/amount', message: told(read) });
                return undefined;
            }
            return { amount: read.amount, currency: currency ?? read.currency };
        }
        case 'flag':
            return text(typed) === undefined ? undefined : typed === 'yes';
        default: {
            const given = text(typed);
            if (given === undefined) {
                return undefined;
            }
            const read = understood(given, field, pointer);
            if ('fault' in read) {
                faults.push({ pointer, message: told(read) });
                return undefined;
            }
            return 'number' in read ? read.number : /** @type {any} */ (read).text;
        }
    }
}

/** @param {string | undefined} typed */
function text(typed) {
    const trimmed = typed?.trim();
    return trimmed === '' ? undefined : trimmed;
}

/**
 * What a text in a field says.
 * @param {string} typed
 * @param {Field} field
 * @param {string} pointer
 * @param {string} [unit] chosen beside a quantity
 */
export function understood(typed, field, pointer, unit) {
    if (field.kind === 'quantity' && unit !== PLAIN_NUMBER) {
        return readQuantity(typed, field.units ?? [], unit ?? field.units?.[0] ?? '', { decimalComma });
    }
    if (field.kind === 'quantity' || field.kind === 'number') {
        return readNumber(typed, { unitless: true, reduction: field.name === 'ratio', cells: field.name === 'cellsInSeries', decimalComma });
    }
    if (field.kind === 'text' && /\/size$/.test(pointer)) {
        return /\/(tyres\/(front|rear)|tyreBefore)\/size$/.test(pointer) ? readTyre(typed) : readConductor(typed);
    }
    return { text: typed, plainly: true };
}

/** Beside the field: what has been understood, where that is not plainly what was typed. @param {ReturnType<typeof understood>} read */
export function echo(read) {
    if ('fault' in read || read.plainly) {
        return '';
    }
    const reading = 'text' in read ? read.text : 'unit' in read ? shownNumber(read.value, 12) + ' ' + unitSign(read.unit) : shownNumber(read.number, 5);
    return t('readAs', { reading });
}

/** @param {import('./entry.js').Unread} read */
export function told(read) {
    return t('fault.' + read.fault, {
        typed: read.typed,
        one: read.one === undefined ? '' : shownNumber(read.one, 12),
        other: read.other === undefined ? '' : shownNumber(read.other, 12),
        units: (read.units ?? []).map(unitSign).join(', '),
    });
}

/**
 * The draft that says a setup.
 * @param {Record<string, any>} setup
 * @param {Field[]} fields
 * @returns {Draft}
 */
export function toDraft(setup, fields) {
    /** @type {Draft} */
    const draft = {};
    for (const field of fields) {
        if (setup[field.name] !== undefined) {
            draft[field.name] = typed(setup[field.name], field);
        }
    }
    return draft;
}

/**
 * A value of the contract as the text that says it.
 * @param {any} value
 * @param {Field} field
 * @returns {any}
 */
export function typed(value, field) {
    switch (field.kind) {
        case 'group':
            return toDraft(value, field.fields ?? []);
        case 'list':
            return value.map((/** @type {any} */ one) => typed(one, /** @type {Field} */ (field.item)));
        case 'quantity':
            return typeof value === 'number'
                ? { value: String(value), unit: PLAIN_NUMBER }
                : { value: String(value.value), unit: value.unit };
        case 'money':
            return { amount: value.amount, currency: value.currency };
        case 'flag':
            return value ? 'yes' : 'no';
        default:
            return String(value);
    }
}

/**
 * @param {Draft} draft
 * @param {string[]} path
 * @returns {any}
 */
export function get(draft, path) {
    return path.reduce((/** @type {any} */ at, name) => at?.[name], draft);
}

/**
 * Sets one text, making groups on the way; lists must be there.
 * @param {Draft} draft
 * @param {string[]} path
 * @param {any} value
 */
export function set(draft, path, value) {
    const last = path[path.length - 1];
    let at = draft;
    for (const name of path.slice(0, -1)) {
        at[name] ??= {};
        at = at[name];
    }
    at[last] = value;
}

/**
 * How many values have been typed; a unit alone is none.
 * @param {any} typed
 * @returns {number}
 */
export function count(typed) {
    if (typed === undefined || typed === null) {
        return 0;
    }
    if (typeof typed === 'string') {
        return typed.trim() === '' ? 0 : 1;
    }
    if (typeof typed.value === 'string' || typeof typed.unit === 'string') {
        return count(typed.value);
    }
    return Object.values(typed).reduce((/** @type {number} */ sum, part) => sum + count(part), 0);
}

// @ts-check
/**
 * What has been typed, before it is a setup: the same tree with texts as leaves, so that nothing typed is ever lost, readable or not.
 * A quantity is `{value: '66', unit: 'in'}`. Pure functions.
 */

import { readNumber } from './entry.js';

/** @typedef {import('./contract.js').Field} Field */
/** @typedef {{[name: string]: any}} Draft */
/** @typedef {{pointer: string, message: string}} EntryFault */

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
            const value = number(typed.value, field, pointer + '/value', faults);
            if (value === undefined || typed.unit === PLAIN_NUMBER) {
                return value;
            }
            return { value, unit: typed.unit };
        }
        case 'money': {
            const amount = text(typed.amount)?.replace(',', '.');
            const currency = text(typed.currency)?.toUpperCase();
            return amount === undefined && currency === undefined ? undefined : { amount, currency };
        }
        case 'number':
            return number(typed, field, pointer, faults);
        case 'flag':
            return text(typed) === undefined ? undefined : typed === 'yes';
        default:
            return text(typed);
    }
}

/** @param {string | undefined} typed */
function text(typed) {
    const trimmed = typed?.trim();
    return trimmed === '' ? undefined : trimmed;
}

/**
 * @param {string | undefined} typed
 * @param {Field} field
 * @param {string} pointer
 * @param {EntryFault[]} faults
 */
function number(typed, field, pointer, faults) {
    if (text(typed) === undefined) {
        return undefined;
    }
    const read = readNumber(/** @type {string} */ (typed), kindOfNumber(field));
    if ('fault' in read) {
        faults.push({ pointer, message: read.fault });
        return undefined;
    }
    return read.number;
}

/** @param {Field} field */
export function kindOfNumber(field) {
    return { unitless: field.kind === 'number', reduction: field.kind === 'number' && field.name === 'ratio' };
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
 * @param {any} value
 * @param {Field} field
 * @returns {any}
 */
function typed(value, field) {
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

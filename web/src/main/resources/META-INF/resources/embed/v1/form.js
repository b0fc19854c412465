// @ts-check
/** Names of attributes and what stands in them, to a setup of the contract. Pure. */

import { readAmount, readConductor, readNumber, readQuantity, readTyre } from '../../page/entry.js';
import { FIELDS, UNITS } from './contract.js';
import { segments } from './words.js';

/**
 * One field of a setup.
 * @typedef {object} Field
 * @property {string} name of its attribute, `pack-cells-in-series`
 * @property {string} pointer into the setup, `/pack/cellsInSeries`
 * @property {string} kind a dimension, `Money`, `number`, `flag`, `text`, or choices between bars
 * @property {string[]} units of a quantity, else none
 *
 * @typedef {import('../../page/entry.js').Unread} Unread
 */

/** @param {string} name */
const kebab = (name) => name.replace(/([a-z0-9])([A-Z])/g, '$1-$2').toLowerCase();

/** The attribute of a field: its pointer with hyphens. @param {string} pointer */
export function attribute(pointer) {
    return segments(pointer).map(kebab).join('-');
}

/** Pointers by attribute, `*` for the index into a list. @type {Map<string, {pointer: string, kind: string}>} */
const KNOWN = new Map();

/** @param {import('./contract.js').Field} at @param {string} pointer */
function learn(at, pointer) {
    if (typeof at === 'string') {
        KNOWN.set(attribute(pointer), { pointer, kind: at });
    } else if (Array.isArray(at)) {
        learn(at[0], pointer + '/*');
    } else {
        Object.entries(at).forEach(([name, inner]) => learn(inner, pointer + '/' + name));
    }
}
learn(FIELDS, '');

const SECTIONS = Object.keys(FIELDS).map(kebab);

/** Whether a name is meant for a section of the setup, known or misspelt. @param {string} name of an attribute */
export function meantForSetup(name) {
    return SECTIONS.some((section) => name === section || name.startsWith(section + '-'));
}

/** @param {string} name of an attribute, `circuits-0-length` @returns {Field | null} */
export function field(name) {
    const found = KNOWN.get(name.replace(/-\d+(?=-|$)/g, '-*'));
    if (found === undefined) {
        return null;
    }
    const indices = name.match(/-\d+(?=-|$)/g) ?? [];
    const pointer = found.pointer.replace(/\*/g, () => (indices.shift() ?? '').slice(1));
    return { name, pointer, kind: found.kind, units: UNITS[found.kind] ?? [] };
}

/** The field that a pointer of the service leads to: itself, or the one around it. @param {string} pointer @param {Field[]} fields */
export function fieldAt(pointer, fields) {
    return fields.find((one) => pointer === one.pointer || pointer.startsWith(one.pointer + '/'))
        ?? fields.find((one) => one.pointer.startsWith(pointer + '/'));
}

/** Units as shops of the two habits write them. @type {Record<string, string[]>} */
const USUAL = {
    metric: ['mm', 'kg', 'km', 'km/h', 'degC', '%', 'kPa', 'Nm', 'kW', 'm2', 'N/mm', 'N', 'V', 'Wh', 'h', 'mohm', 'uF', 'rpm'],
    us: ['in', 'lb', 'mi', 'mph', 'degF', '%', 'psi', 'lbf.ft', 'hp', 'ft2', 'lbf/in', 'lbf', 'V', 'Wh', 'h', 'mohm', 'uF', 'rpm'],
};

/** The unit of a field where nobody names one. @param {Field} field @param {string} system `metric` or `us` */
export function usualUnit({ units }, system) {
    return USUAL[system].find((unit) => units.includes(unit)) ?? units[0] ?? '';
}

/**
 * What a text in a field says.
 * @param {string} text
 * @param {Field} field
 * @param {string} unit chosen beside it, of a quantity or the currency of money
 * @param {boolean} decimalComma
 * @returns {{value: any} | Unread | null} null when it says nothing
 */
export function read(text, { pointer, kind, units }, unit, decimalComma) {
    if (text.trim() === '' && kind !== 'flag') {
        return null;
    }
    if (units.length > 0) {
        const quantity = readQuantity(text, units, unit, { decimalComma });
        return 'fault' in quantity ? quantity : { value: { value: quantity.value, unit: quantity.unit } };
    }
    if (kind === 'number') {
        const number = readNumber(text, { unitless: true, reduction: /\/ratio$/.test(pointer), cells: /\/cellsInSeries$/.test(pointer), decimalComma });
        return 'fault' in number ? number : { value: number.number };
    }
    if (kind === 'Money') {
        const [, digits, currency] = /^(.*?) *([a-z]{3})?$/i.exec(text.trim()) ?? ['', text, ''];
        const money = readAmount(digits, { decimalComma });
        return 'fault' in money ? money : { value: { amount: money.amount, currency: (currency ?? money.currency ?? unit).toUpperCase() } };
    }
    if (kind === 'flag') {
        return { value: /^(|yes|true|sí|si)$/i.test(text.trim()) };
    }
    return { value: kind !== 'text' || !/\/size$/.test(pointer) ? text.trim()
        : (/\/(tyres\/(front|rear)|tyreBefore)\/size$/.test(pointer) ? readTyre(text) : readConductor(text)).text };
}

/**
 * How a value of the contract stands in a field: the text, and the unit beside it.
 * @param {any} value
 * @param {Field} field
 * @param {boolean} decimalComma
 * @returns {{text: string, unit: string}}
 */
export function shown(value, { kind }, decimalComma) {
    /** @param {number | string} number */
    const spelled = (number) => (decimalComma ? String(number).replace('.', ',') : String(number));
    if (kind === 'Money') {
        return { text: spelled(value?.amount ?? ''), unit: value?.currency ?? '' };
    }
    if (typeof value === 'object' && value !== null) {
        return { text: spelled(value.value ?? ''), unit: value.unit ?? '' };
    }
    return { text: typeof value === 'number' ? spelled(value) : typeof value === 'boolean' ? (value ? 'yes' : 'no') : String(value ?? ''), unit: '' };
}

/** @param {any} tree @param {string} pointer @returns {any} */
export function at(tree, pointer) {
    return segments(pointer).reduce((inner, name) => inner?.[name], tree);
}

/**
 * Puts a value at a pointer; `undefined` takes away what stands there, and the groups that this leaves empty.
 * @param {any} tree
 * @param {string} pointer
 * @param {any} value
 */
export function put(tree, pointer, value) {
    const path = segments(pointer);
    const last = path.pop() ?? '';
    if (value === undefined) {
        const around = at(tree, pointer.slice(0, pointer.lastIndexOf('/')));
        if (around !== undefined && !Array.isArray(around)) {
            delete around[last];
            if (Object.keys(around).length === 0 && path.length > 0) {
                put(tree, '/' + path.join('/'), undefined);
            }
        }
        return;
    }
    let inner = tree;
    path.forEach((name, index) => {
        if (Array.isArray(inner)) {
            while (inner.length < Number(name)) {
                inner.push({}); // what has no field yet is an entry all the same: the service says what it lacks
            }
        }
        inner = inner[name] ??= /^\d+$/.test(path[index + 1] ?? last) ? [] : {};
    });
    inner[last] = value;
}

// @ts-check
/** An answer of the service as nodes. Data enters as text only, never as markup. */

import { segments } from './words.js';

/**
 * @typedef {import('./words.js').Words} Words
 * @typedef {Node | string | undefined} Child
 *
 * @typedef {object} Told
 * @property {Words} words
 * @property {string[]} leads pointers into the result, in the order people ask for them
 * @property {any} answer the envelope of the contract
 * @property {(pointer: string) => Node} field what leads to the field at a pointer: a button where the customer sees it, else its name
 */

const LEVELS = ['danger', 'warning', 'caution', 'notice'];

/**
 * @template {keyof HTMLElementTagNameMap} T
 * @param {T} tag
 * @param {Record<string, string | number | boolean | undefined>} [attributes] `true` sets an empty attribute, `false` and `undefined` none
 * @param {...Child} children
 * @returns {HTMLElementTagNameMap[T]}
 */
export function el(tag, attributes = {}, ...children) {
    const node = document.createElement(tag);
    for (const [name, value] of Object.entries(attributes)) {
        if (value !== false && value !== undefined) {
            node.setAttribute(name, value === true ? '' : String(value));
        }
    }
    node.append(...children.filter((child) => child !== undefined));
    return node;
}

/** What the service says itself, marked as English where the element speaks another language. @param {Words} words @param {string} text */
export function foreign(words, text) {
    return words.language === 'en' ? text : el('span', { lang: 'en' }, text);
}

/** @param {Told} told @returns {HTMLElement[]} */
export function answered(told) {
    const { words, answer } = told;
    const { findings = [], notAnswered = [], assumptions = [], cautions = [], working = [] } = answer;
    const serious = [...findings].sort((one, other) => LEVELS.indexOf(one.level) - LEVELS.indexOf(other.level));
    return [
        el('dl', { class: 'leads', part: 'leads' }, ...leading(told).map(({ label, value, pointer }) =>
            el('div', { part: 'lead' }, el('dt', { part: 'lead-name' }, label), el('dd', { part: 'lead-value', 'data-result': pointer }, value)))),
        ...(serious.length > 0 ? [el('ol', { class: 'findings', part: 'findings', 'aria-label': words.t('findings') }, ...serious.map((one) => finding(told, one)))] : []),
        ...(cautions.length > 0 ? [el('ul', { class: 'cautions', part: 'cautions', 'aria-label': words.t('cautions') },
            ...cautions.map((/** @type {any} */ one) => el('li', { 'data-code': one.code }, foreign(words, one.message))))] : []),
        ...opened('not-answered', words.t('notAnswered', { count: notAnswered.length }), notAnswered.map((/** @type {any} */ one) =>
            el('li', {}, words.place(one.result) + ': ' + words.t('enter') + ' ', ...separated(one.missing.map(told.field))))),
        ...opened('assumptions', words.t('assumed', { count: assumptions.length }), assumptions.map((/** @type {any} */ one) =>
            el('li', {}, told.field(one.pointer), ': ', el('b', {}, words.leaf(one.value, segments(one.pointer).at(-1))), '. ', foreign(words, one.reason),
                el('p', { class: 'source' }, foreign(words, one.source))))),
        ...opened('working', words.t('working'), working.map((/** @type {any} */ one) => step(words, one)), 'ol'),
    ];
}

/** The first leading result in words, for those who hear it. @param {Told} told */
export function summary(told) {
    const [first] = leading(told);
    return first === undefined ? '' : first.label + ': ' + first.value;
}

/** @param {string} part @param {string} title @param {HTMLElement[]} entries @param {'ul' | 'ol'} [list] */
function opened(part, title, entries, list = 'ul') {
    return entries.length === 0 ? [] : [el('details', { part }, el('summary', {}, title), el(list, {}, ...entries))];
}

/** @param {Node[]} nodes */
function separated(nodes) {
    return nodes.flatMap((node, at) => (at === 0 ? [node] : [', ', node]));
}

/** @param {Told} told @param {any} one */
function finding({ words, field }, one) {
    return el('li', { class: 'finding ' + one.level, part: 'finding ' + one.level, 'data-code': one.code },
        el('strong', { class: 'signal', part: 'signal' }, words.t('signal.' + one.level)), one.state ? ' ' + words.t('state.' + one.state) : undefined,
        el('p', {}, foreign(words, one.message)),
        one.action ? el('p', { class: 'action' }, foreign(words, one.action)) : undefined,
        one.pointer ? el('p', {}, words.t('at') + ' ', field(one.pointer)) : undefined,
        el('p', { class: 'source' }, foreign(words, one.source)));
}

/** @param {Words} words @param {any} one */
function step(words, one) {
    const inputs = one.inputs.map((/** @type {any} */ term) => term.symbol + ' = ' + words.exactly(term.value, term.unit)).join('; ');
    return el('li', {}, el('p', {}, foreign(words, one.meaning)), el('p', { class: 'formula' }, one.formula), inputs ? el('p', {}, inputs) : undefined,
        el('p', { class: 'formula' }, one.symbol + ' = ' + words.exactly(one.value, one.unit)), el('p', { class: 'source' }, foreign(words, one.source)));
}

/** @typedef {{label: string, value: string, pointer: string}} Lead */

/** Leading results that the answer holds; what belongs to one entry of a list stands together. @param {Told} told @returns {Lead[]} */
function leading({ words, leads, answer }) {
    const found = leads.flatMap((pointer) => leaves(words, answer.result, segments(pointer), '', []));
    const lists = [...new Set(found.map(({ pointer }) => listed(pointer).list))].filter((list) => list !== '');
    return found.map((lead) => ({ lead, ...listed(lead.pointer) }))
        .sort((one, other) => lists.indexOf(one.list) - lists.indexOf(other.list) || one.index - other.index)
        .map(({ lead }) => lead);
}

/** The list that a pointer goes into, and the entry; no list comes before every list. @param {string} pointer */
function listed(pointer) {
    const [, list = '', index = '0'] = /^(.*?)\/(\d+)(?:\/|$)/.exec(pointer) ?? [];
    return { list, index: Number(index) };
}

/** What explains a group of results and is none itself; the working has it. */
const BESIDE = /^(name|pointer|code|reference|source|meaning|reason)$/;

/** @param {any} value */
const isGroup = (value) => typeof value === 'object' && value !== null && !('unit' in value) && !('currency' in value);

/**
 * Values at a pointer into the result; an index stands for every entry of its list, a group for its single values.
 * @param {Words} words
 * @param {any} at
 * @param {string[]} path what is left of the pointer
 * @param {string} pointer so far
 * @param {string[]} named so far
 * @returns {Lead[]}
 */
function leaves(words, at, path, pointer, named) {
    if (at === undefined || at === null) {
        return [];
    }
    if (Array.isArray(at) && at.some(isGroup)) {
        const rest = path.length > 0 && /^\d+$/.test(path[0]) ? path.slice(1) : path;
        return at.flatMap((one, index) => {
            const number = at.length === 1 ? '' : ' ' + (index + 1);
            const name = (/^[a-z0-9]+(-[a-z0-9]+)+$/.test(one.name ?? '') ? words.label(one.name) : one.name) ?? one.between?.map((/** @type {string} */ part) => words.within(part)).join(' – ') ?? (named.at(-1) ?? '') + number;
            const entry = [...named.slice(0, -1), name];
            return rest.length > 0 || !('verdict' in one) ? leaves(words, one, rest, pointer + '/' + index, entry)
                : [{ label: words.joined(entry), value: words.leaf(one.verdict), pointer: pointer + '/' + index + '/verdict' }];
        });
    }
    if (path.length > 0) {
        return leaves(words, at[path[0]], path.slice(1), pointer + '/' + path[0], [...named, words.label(path[0])]);
    }
    if (isGroup(at) && !Array.isArray(at)) {
        return Object.entries(at).filter(([name, value]) => !isGroup(value) && !BESIDE.test(name))
            .flatMap(([name, value]) => leaves(words, value, [], pointer + '/' + name, [...named, words.label(name)]));
    }
    if (Array.isArray(at) && at.length === 0) {
        return [];
    }
    const share = /\/stateOfCharge\//.test(pointer) ? 'stateOfCharge' : segments(pointer).at(-1);
    return [{ label: words.joined(named), value: words.leaf(at, share), pointer }];
}

// @ts-check
import { finding } from './findings-element.js';
import { el, fieldLink, foreign, scroller } from './dom.js';
import { foreignProse, isComposite, leaf, number, place, segments, unitSign, WORKING_DIGITS } from './text.js';
import { asked, label, labelWithin, reason, t } from './words.js';

/**
 * What the assessment says to one question.
 * @typedef {object} Told
 * @property {any} [result]
 * @property {any[]} findings
 * @property {any[]} assumptions
 * @property {{result: string, missing: string[]}[]} notAnswered
 * @property {string[]} missing what it lacks when there is no result
 * @property {{pointer: string, code: string, message: string}[]} faults what it refuses
 */

/**
 * `<axlewright-answer>`: one question and what the service says to it.
 *
 * Property `asked`: `{question, resolve, told, working}`; `working` fetches the steps when somebody opens them.
 * Event `entry` with `{pointer, value}`: an assumption is to become an entry.
 */
export class Answer extends HTMLElement {
    /** @typedef {import('./contract.js').Question} Question */
    /** @typedef {import('./contract.js').Schema} Schema */
    /** @typedef {{question: Question, resolve: (schema: Schema) => Schema, told: Told, working: () => Promise<any[] | null>}} Asked */

    /** @param {Asked} asked */
    set asked({ question, resolve, told, working }) {
        const id = 'answer-' + question.name;
        this.dataset.question = question.name;
        this.id = question.name;
        const own = asked(question.name);
        this.replaceChildren(el('section', { 'aria-labelledby': id },
            el('h3', { id }, label(question.name)),
            el('p', { class: 'summary' }, own ?? foreign(question.summary)),
            ...(told.result === undefined ? unanswered(told) : answered(question, resolve, told, working))));
    }
}

/** @param {Told} told */
function unanswered({ missing, faults }) {
    const blocks = [];
    if (missing.length > 0) {
        blocks.push(el('p', { class: 'open' }, t('answerNeeds')),
            el('ul', { class: 'missing' }, ...missing.map((pointer) => el('li', {}, fieldLink(pointer, place(pointer))))));
    }
    if (faults.length > 0) {
        blocks.push(el('p', { class: 'open' }, t('answerRefused')),
            el('ul', { class: 'missing' }, ...faults.map((fault) => el('li', {}, fieldLink(fault.pointer, place(fault.pointer)), ': ', foreign(fault.message)))));
    }
    return blocks;
}

/**
 * @param {Question} question
 * @param {(schema: Schema) => Schema} resolve
 * @param {Told} told
 * @param {() => Promise<any[] | null>} working
 */
function answered(question, resolve, { result, findings, notAnswered, assumptions }, working) {
    /** @type {HTMLElement[]} */
    const blocks = [leads(question, result)];
    if (findings.length > 0) {
        blocks.push(el('ul', { class: 'findings', 'aria-label': t('findings') }, ...findings.map((one) => finding(one))));
    }
    if (notAnswered.length > 0) {
        blocks.push(el('h4', {}, t('notAnswered')), el('ul', { class: 'missing' }, ...notAnswered.map(leftOut)));
    }
    if (assumptions.length > 0) {
        blocks.push(el('details', { class: 'assumed' }, el('summary', {}, t('assumed', { count: assumptions.length })),
            el('ul', {}, ...assumptions.map(assumption))));
    }
    blocks.push(later('all', t('allResults'), async () => whole(result, question.result, resolve, '', t('resultsOf', { question: labelWithin(question.name) }))));
    blocks.push(later('working', t('working'), async () => {
        const steps = await working();
        return steps === null ? null : [el('ol', {}, ...steps.map(step))];
    }));
    return blocks;
}

/** Filled when it is opened; what does not come is asked again at the next opening. @param {string} kind @param {string} title @param {() => Promise<HTMLElement[] | null>} content */
function later(kind, title, content) {
    const details = el('details', { class: kind }, el('summary', {}, title));
    details.addEventListener('toggle', async () => {
        if (details.open && details.childElementCount === 1) {
            const wait = el('p', { class: 'open' }, t('asking'));
            details.append(wait);
            wait.replaceWith(...(await content() ?? []));
            if (details.childElementCount === 1) {
                details.open = false;
            }
        }
    });
    return details;
}

/** What the shop asks first, in that order. @param {Question} question @param {any} result */
function leads(question, result) {
    const pointers = question.leads.length > 0 ? question.leads : Object.keys(result).map((name) => '/' + name);
    const pairs = pointers.flatMap((pointer) => found(result, segments(pointer), '', []));
    /** What belongs to one entry of a list stands together. @param {{pointer: string}} pair */
    const entry = ({ pointer }) => Number(/\/(\d+)(\/|$)/.exec(pointer)?.[1] ?? -1);
    pairs.sort((one, other) => entry(one) - entry(other));
    return el('dl', { class: 'leads' }, ...pairs.map(({ label, pointer, value, name }) =>
        el('div', {}, el('dt', {}, label), el('dd', { 'data-result': pointer }, leaf(value, name)))));
}

/**
 * Values at a pointer into the result; an index into a list stands for every entry, which is named. A composite gives its leaves.
 * @param {any} at
 * @param {string[]} path what is left of the pointer
 * @param {string} pointer so far
 * @param {string[]} named so far
 * @returns {{label: string, pointer: string, value: unknown, name: string}[]}
 */
function found(at, path, pointer, named) {
    if (at === undefined || at === null) {
        return [];
    }
    if (Array.isArray(at)) {
        const rest = /^(\d+|\*|-)$/.test(path[0] ?? '') ? path.slice(1) : path;
        return path.length === 0 ? [] : at.flatMap((one, index) =>
            found(one, rest, pointer + '/' + index, at.length === 1 && !one?.name ? named : [...named.slice(0, -1), one?.name ?? (named.at(-1) ?? '') + ' ' + (index + 1)]));
    }
    if (path.length > 0) {
        return found(at[path[0]], path.slice(1), pointer + '/' + path[0], [...named, label(path[0])]);
    }
    if (isComposite(at)) {
        return Object.entries(at).filter(([, value]) => !Array.isArray(value) && !isComposite(value))
            .flatMap(([name, value]) => found(value, [], pointer + '/' + name, [...named, label(name)]));
    }
    const name = segments(pointer).at(-1) ?? '';
    return [{ label: named.map((part, index) => (index === 0 ? part : part.charAt(0).toLowerCase() + part.slice(1))).join(', '), pointer, value: at, name }];
}

/** @param {{result: string, missing: string[]}} one */
function leftOut({ result, missing }) {
    /** @type {(Node | string)[]} */
    const links = [];
    missing.forEach((pointer, index) => links.push(index > 0 ? ', ' : '', fieldLink(pointer, place(pointer))));
    return el('li', {}, place(result) + ': ' + t('enter') + ' ', ...links);
}

/** @param {any} one */
function assumption(one) {
    const name = segments(one.pointer).at(-1);
    return el('li', {}, fieldLink(one.pointer, place(one.pointer)), ': ', el('b', {}, leaf(one.value, name)), '. ', reason(one.code) ?? foreign(one.reason), ' ',
        el('button', { type: 'button', class: 'quiet small', 'data-enter': one.pointer, 'data-sent': JSON.stringify(one.value), 'aria-label': t('enterIt', { place: place(one.pointer) }) },
            t('enterShort')),
        el('p', { class: 'source' }, foreign(one.source)));
}

/** @param {any} one */
function step(one) {
    /** @param {number} value @param {string} unit */
    const measured = (value, unit) => number(value, WORKING_DIGITS) + (unit === '1' || unit === '' ? '' : ' ' + unitSign(unit));
    const inputs = one.inputs.map((/** @type {any} */ term) => term.symbol + ' = ' + measured(term.value, term.unit)).join('; ');
    return el('li', {},
        el('p', { class: 'meaning' }, foreign(one.meaning)),
        el('p', { class: 'formula' }, one.formula),
        inputs ? el('p', { class: 'inputs' }, inputs) : undefined,
        el('p', { class: 'value' }, one.symbol + ' = ' + measured(one.value, one.unit)),
        el('p', { class: 'source' }, foreign(one.source)));
}

/**
 * The whole result: one table of its single values, and one for each list.
 * @param {any} result
 * @param {Schema} schema
 * @param {(schema: Schema) => Schema} resolve
 * @param {string} [pointer]
 * @param {string} [title]
 * @returns {HTMLElement[]}
 */
function whole(result, schema, resolve, pointer = '', title = '') {
    /** @type {HTMLElement[]} */
    const singles = [];
    /** @type {HTMLElement[]} */
    const lists = [];
    /** @param {any} value @param {Schema} at @param {string} where @param {string[]} before */
    const gather = (value, at, where, before) => {
        for (const [name, part] of Object.entries(value)) {
            const described = resolve(at.properties?.[name]);
            const named = [...before, before.length === 0 ? label(name) : labelWithin(name)];
            if (Array.isArray(part) && part.some(isComposite)) {
                const heading = (pointer === '' ? '' : title + ', ') + named.join(', ');
                lists.push(...list(part, resolve(described.items), resolve, where + '/' + name, heading));
            } else if (isComposite(part) && !Array.isArray(part)) {
                gather(part, described, where + '/' + name, named);
            } else {
                singles.push(el('tr', {}, el('th', { scope: 'row' }, named.join(', ')), el('td', { 'data-value': where + '/' + name }, leaf(part, name)),
                    el('td', { class: 'prose' }, foreign(foreignProse(described.description ?? '')))));
            }
        }
    };
    gather(result, schema, pointer, []);
    const table = singles.length === 0 ? [] : [scroller(title, el('table', {},
        el('caption', {}, title),
        el('thead', {}, el('tr', {}, ...['columnResult', 'columnValue', 'columnMeaning'].map((name) => el('th', { scope: 'col' }, t(name))))),
        el('tbody', {}, ...singles)))];
    return [...table, ...lists];
}

/**
 * Entries that hold lists themselves are shown one by one, the others as rows of one table.
 * @param {any[]} entries
 * @param {Schema} schema
 * @param {(schema: Schema) => Schema} resolve
 * @param {string} pointer
 * @param {string} title
 * @returns {HTMLElement[]}
 */
function list(entries, schema, resolve, pointer, title) {
    const nested = entries.some((entry) => Object.values(entry).some((part) => Array.isArray(part) && part.some(isComposite)));
    if (nested) {
        return entries.flatMap((entry, index) =>
            whole(entry, schema, resolve, pointer + '/' + index, title + ' ' + (index + 1) + (entry.name ? ': ' + entry.name : '')));
    }
    const columns = [...new Set(entries.flatMap((entry) => Object.keys(entry)))].filter((name) => name !== 'pointer');
    return [scroller(title, el('table', {},
        el('caption', {}, title),
        el('thead', {}, el('tr', {}, ...columns.map((name) => el('th', { scope: 'col' }, label(name))))),
        el('tbody', {}, ...entries.map((entry) => el('tr', {}, ...columns.map((name) =>
            el('td', {}, entry[name] === undefined ? '' : leaf(entry[name], name))))))))];
}

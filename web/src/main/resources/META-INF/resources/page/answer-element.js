// @ts-check
import { el, fieldLink } from './dom.js';
import { isComposite, leaf, number, place, prose, segments, unitSign, words, WORKING_DIGITS } from './text.js';

/**
 * `<axlewright-answer>`: one question and what the service says to it.
 *
 * Property `asked`: `{question, resolve, reply}`; a `reply` of null means that it has not been asked.
 */
export class Answer extends HTMLElement {
    /** @typedef {import('./contract.js').Question} Question */
    /** @typedef {import('./contract.js').Schema} Schema */
    /** @typedef {{question: Question, resolve: (schema: Schema) => Schema, reply: import('./service.js').Reply | null}} Asked */

    /** @param {Asked} asked */
    set asked({ question, resolve, reply }) {
        const id = 'answer-' + question.name;
        this.dataset.question = question.name;
        const heading = el('h3', { id }, words(question.name));
        const summary = question.summary ? el('p', { class: 'summary' }, question.summary) : undefined;
        this.replaceChildren(el('section', { 'aria-labelledby': id }, heading, summary, ...content(question, resolve, reply)));
    }
}

/**
 * @param {Question} question
 * @param {(schema: Schema) => Schema} resolve
 * @param {import('./service.js').Reply | null} reply
 * @returns {HTMLElement[]}
 */
function content(question, resolve, reply) {
    if (reply === null) {
        return [el('p', { class: 'open' }, 'Not asked yet.')];
    }
    if (reply.status === 200) {
        return answered(question, resolve, reply.body);
    }
    if (reply.status === 0) {
        return [el('p', { class: 'open' }, 'The service was not reached. What you typed is kept; ask again.')];
    }
    return refused(reply.body);
}

/** @param {any} problem RFC 9457 */
function refused(problem) {
    /** @type {{pointer: string, code: string, message: string}[]} */
    const errors = problem?.errors ?? [];
    const missing = errors.filter((error) => error.code === 'missing');
    const others = errors.filter((error) => error.code !== 'missing');
    const blocks = [];
    if (missing.length > 0) {
        blocks.push(el('p', { class: 'open' }, 'Not answered. It needs:'),
            el('ul', { class: 'missing' }, ...missing.map((error) => el('li', {}, fieldLink(error.pointer, place(error.pointer))))));
    }
    if (others.length > 0) {
        blocks.push(el('p', { class: 'open' }, 'Not answered: entries are refused.'),
            el('ul', { class: 'missing' }, ...others.map((error) =>
                el('li', {}, fieldLink(error.pointer, place(error.pointer)), ': ' + error.message))));
    }
    if (blocks.length === 0) {
        blocks.push(el('p', { class: 'open' }, 'Not answered. ' + (problem?.detail ?? problem?.title ?? 'The service refused without a reason.')));
    }
    return blocks;
}

/**
 * @param {Question} question
 * @param {(schema: Schema) => Schema} resolve
 * @param {any} answer the envelope
 */
function answered(question, resolve, answer) {
    const { result, findings = [], notAnswered = [], assumptions = [], working = [], cautions = [] } = answer;
    /** @type {HTMLElement[]} */
    const blocks = [leads(question, result)];
    if (findings.length > 0) {
        blocks.push(el('ul', { class: 'findings', 'aria-label': 'Findings' }, ...findings.map(finding)));
    }
    if (notAnswered.length > 0) {
        blocks.push(el('h4', {}, 'Not answered'), el('ul', { class: 'missing' }, ...notAnswered.map(unanswered)));
    }
    blocks.push(el('details', { class: 'all' }, el('summary', {}, 'All results'), ...whole(result, question.result, resolve, '', 'Results of ' + words(question.name).toLowerCase())));
    if (assumptions.length > 0) {
        blocks.push(el('details', { class: 'assumed', open: true }, el('summary', {}, 'Assumed (' + assumptions.length + ')'),
            el('ul', {}, ...assumptions.map(assumption))));
    }
    if (working.length > 0) {
        blocks.push(el('details', { class: 'working' }, el('summary', {}, 'Working (' + working.length + ' steps, SI)'),
            el('ol', {}, ...working.map(step))));
    }
    if (cautions.length > 0) {
        blocks.push(el('ul', { class: 'cautions', 'aria-label': 'Cautions' },
            ...cautions.map((/** @type {any} */ one) => el('li', {}, el('strong', {}, 'Caution: '), one.message))));
    }
    return blocks;
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
 * @param {string[]} label so far
 * @returns {{label: string, pointer: string, value: unknown, name: string}[]}
 */
function found(at, path, pointer, label) {
    if (at === undefined || at === null) {
        return [];
    }
    if (Array.isArray(at)) {
        const rest = /^(\d+|\*|-)$/.test(path[0] ?? '') ? path.slice(1) : path;
        return path.length === 0 ? [] : at.flatMap((one, index) =>
            found(one, rest, pointer + '/' + index, at.length === 1 && !one?.name ? label : [...label.slice(0, -1), one?.name ?? (label.at(-1) ?? '') + ' ' + (index + 1)]));
    }
    if (path.length > 0) {
        return found(at[path[0]], path.slice(1), pointer + '/' + path[0], [...label, words(path[0])]);
    }
    if (isComposite(at)) {
        return Object.entries(at).filter(([, value]) => !Array.isArray(value) && !isComposite(value))
            .flatMap(([name, value]) => found(value, [], pointer + '/' + name, [...label, words(name)]));
    }
    const name = segments(pointer).at(-1) ?? '';
    return [{ label: label.map((part, index) => (index === 0 ? part : part.charAt(0).toLowerCase() + part.slice(1))).join(', '), pointer, value: at, name }];
}

/** @param {any} one */
function finding(one) {
    const where = one.pointer ? el('p', { class: 'where' }, 'At ', fieldLink(one.pointer, place(one.pointer))) : undefined;
    return el('li', { class: 'finding ' + one.level, 'data-code': one.code },
        el('strong', { class: 'signal' }, one.level), one.state ? el('span', { class: 'state' }, ' ' + one.state) : undefined,
        el('p', { class: 'message' }, one.message),
        one.action ? el('p', { class: 'action' }, one.action) : undefined,
        where, el('p', { class: 'source' }, one.source));
}

/** @param {{result: string, missing: string[]}} one */
function unanswered({ result, missing }) {
    /** @type {(Node | string)[]} */
    const links = [];
    missing.forEach((pointer, index) => links.push(index > 0 ? ', ' : '', fieldLink(pointer, place(pointer))));
    return el('li', {}, place(result) + ': enter ', ...links);
}

/** @param {any} one */
function assumption(one) {
    return el('li', {}, fieldLink(one.pointer, place(one.pointer)), ': ', el('b', {}, leaf(one.value, segments(one.pointer).at(-1))),
        '. ' + one.reason, el('p', { class: 'source' }, one.source));
}

/** @param {any} one */
function step(one) {
    /** @param {number} value @param {string} unit */
    const measured = (value, unit) => number(value, WORKING_DIGITS) + (unit === '1' || unit === '' ? '' : ' ' + unitSign(unit));
    const inputs = one.inputs.map((/** @type {any} */ term) => term.symbol + ' = ' + measured(term.value, term.unit)).join('; ');
    return el('li', {},
        el('p', { class: 'meaning' }, one.meaning),
        el('p', { class: 'formula' }, one.formula),
        inputs ? el('p', { class: 'inputs' }, inputs) : undefined,
        el('p', { class: 'value' }, one.symbol + ' = ' + measured(one.value, one.unit)),
        el('p', { class: 'source' }, one.source));
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
function whole(result, schema, resolve, pointer = '', title = 'Result') {
    /** @type {HTMLElement[]} */
    const singles = [];
    /** @type {HTMLElement[]} */
    const lists = [];
    /** @param {any} value @param {Schema} at @param {string} where @param {string[]} label */
    const gather = (value, at, where, label) => {
        for (const [name, part] of Object.entries(value)) {
            const described = resolve(at.properties?.[name]);
            const named = [...label, label.length === 0 ? words(name) : words(name).toLowerCase()];
            if (Array.isArray(part) && part.some(isComposite)) {
                const heading = (pointer === '' ? '' : title + ', ') + named.join(', ');
                lists.push(...list(part, resolve(described.items), resolve, where + '/' + name, heading));
            } else if (isComposite(part) && !Array.isArray(part)) {
                gather(part, described, where + '/' + name, named);
            } else {
                singles.push(el('tr', {}, el('th', { scope: 'row' }, named.join(', ')), el('td', { 'data-value': where + '/' + name }, leaf(part, name)),
                    el('td', { class: 'prose' }, prose(described.description ?? ''))));
            }
        }
    };
    gather(result, schema, pointer, []);
    const table = singles.length === 0 ? [] : [scroller(title, el('table', {},
        el('caption', {}, title),
        el('thead', {}, el('tr', {}, ...['Result', 'Value', 'Meaning'].map((name) => el('th', { scope: 'col' }, name)))),
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
        el('thead', {}, el('tr', {}, ...columns.map((name) => el('th', { scope: 'col' }, words(name))))),
        el('tbody', {}, ...entries.map((entry) => el('tr', {}, ...columns.map((name) =>
            el('td', {}, entry[name] === undefined ? '' : leaf(entry[name], name))))))))];
}

/** A table wider than the paper scrolls by itself, by keyboard too. @param {string} label @param {HTMLTableElement} table */
function scroller(label, table) {
    return el('div', { class: 'scroller', role: 'region', tabindex: 0, 'aria-label': label }, table);
}

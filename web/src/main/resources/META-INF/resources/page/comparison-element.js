// @ts-check
import { el, foreign, scroller } from './dom.js';
import { finding } from './findings-element.js';
import { service } from './service.js';
import { leaf, number, place, segments } from './text.js';
import { label, t } from './words.js';

const KEPT = 'axlewright.found';

/**
 * `<axlewright-comparison>`: the vehicle as found and as planned, side by side. As found is what somebody kept, a demo vehicle or a saved
 * setup; as planned is what the entries say.
 *
 * Property `surroundings`, set once: where the entries and the demo vehicles come from.
 */
export class Comparison extends HTMLElement {
    #found = el('select', { id: 'found' });
    #answer = el('div', { class: 'compared' });
    /** @type {import('./answers.js').Surroundings | null} */
    #surroundings = null;

    /** @param {import('./answers.js').Surroundings} surroundings */
    set surroundings(surroundings) {
        this.#surroundings = surroundings;
        const keep = el('button', { type: 'button', class: 'quiet', id: 'keep-found' }, t('keepAsFound'));
        const ask = el('button', { type: 'button', id: 'ask-comparison' }, t('compareNow'));
        this.replaceChildren(
            el('p', { class: 'prose' }, t('comparisonHow')),
            el('div', { class: 'choices' }, keep, el('label', { for: 'found' }, t('asFound')), this.#found, ask), this.#answer);
        keep.addEventListener('click', () => this.#keep());
        ask.addEventListener('click', () => this.#compare());
        this.#found.addEventListener('focus', () => this.#offer(), { once: true });
        this.#list([]);
    }

    /** @param {{id: string, name: string}[]} saved */
    #list(saved) {
        const before = this.#found.value;
        const own = kept();
        const demos = this.#surroundings?.demos ?? [];
        this.#found.replaceChildren(
            el('option', { value: '' }, '–'),
            ...(own === null ? [] : [el('option', { value: 'kept' }, t('keptEntries', { name: own.name ?? t('ownVehicle') }))]),
            ...demos.map((demo, at) => el('option', { value: 'demo:' + at }, demo.name)),
            ...saved.map((one) => el('option', { value: 'saved:' + one.id }, one.name)));
        this.#found.value = before;
    }

    async #offer() {
        const reply = await service.setups();
        this.#list(reply.status === 200 ? reply.body.items : []);
    }

    #keep() {
        const { setup, faults } = /** @type {import('./answers.js').Surroundings} */ (this.#surroundings).current();
        if (faults.length > 0) {
            this.#answer.replaceChildren(el('p', { class: 'open', role: 'status' }, t('notSavedUnread')));
            return;
        }
        localStorage.setItem(KEPT, JSON.stringify(setup));
        this.#list([]);
        this.#found.value = 'kept';
        this.#answer.replaceChildren(el('p', { class: 'open', role: 'status' }, t('keptNow')));
    }

    /** What stands for the vehicle as found: a setup, the id of a saved one, or null. */
    #before() {
        const [kind, which] = this.#found.value.split(/:(.*)/s);
        return kind === 'kept' ? kept() : kind === 'demo' ? this.#surroundings?.demos[Number(which)] : kind === 'saved' ? which : null;
    }

    async #compare() {
        const surroundings = /** @type {import('./answers.js').Surroundings} */ (this.#surroundings);
        const before = this.#before();
        const { setup, faults } = surroundings.current();
        if (before === null || faults.length > 0) {
            this.#answer.replaceChildren(el('p', { class: 'open', role: 'status' }, t(before === null ? 'chooseFound' : 'notSavedUnread')));
            return;
        }
        this.#answer.replaceChildren(el('p', { class: 'open', role: 'status' }, t('asking')));
        const reply = await service.compare(before, setup, surroundings.units());
        if (reply.status !== 200) {
            const errors = reply.body?.errors ?? [];
            this.#answer.replaceChildren(el('p', { class: 'open', role: 'status' }, reply.status === 0 ? t('notReachedKept') : t('refused')),
                el('ul', {}, ...errors.map((/** @type {any} */ one) => el('li', {}, place(one.pointer) + ': ', foreign(one.message)))));
            return;
        }
        this.#answer.replaceChildren(...compared(reply.body, surroundings.leading()));
    }
}

/** @returns {Record<string, any> | null} */
function kept() {
    try {
        return JSON.parse(localStorage.getItem(KEPT) ?? 'null');
    } catch {
        return null;
    }
}

/** @param {any} comparison @param {string[]} leading results of the questions: their name and pointer in one */
function compared({ changes, findings, notCompared }, leading) {
    /** Lists are compared entry by entry: where an entry is another thing than before, its numbers say nothing. */
    const others = changes.filter((/** @type {any} */ one) => /\/\d+\/name$/.test(one.pointer) && one.before !== one.after)
        .map((/** @type {any} */ one) => one.calculation + one.pointer.replace(/name$/, ''));
    /** @type {Map<string, any[]>} */
    const byQuestion = new Map();
    for (const change of changes) {
        if (others.some((/** @type {string} */ other) => (change.calculation + change.pointer).startsWith(other))) {
            continue;
        }
        if (change.change !== 0 && change.relative !== 0 && JSON.stringify(change.before) !== JSON.stringify(change.after)) {
            byQuestion.set(change.calculation, [...(byQuestion.get(change.calculation) ?? []), change]);
        }
    }
    /** @param {string} title @param {any[]} list @param {string} kind */
    const found = (title, list, kind) => (list.length === 0 ? [] : [
        el('h3', {}, title), el('ul', { class: 'findings ' + kind }, ...list.map((one) => finding(one, true)))]);
    const tables = [...byQuestion].map(([name, all], at) => el('details', { class: 'compared-question', open: at === 0 },
        el('summary', {}, label(name) + ' (' + all.length + ')'),
        scroller(label(name), el('table', {},
            el('caption', {}, label(name)),
            el('thead', {}, el('tr', {}, ...['columnResult', 'asFound', 'asPlanned', 'columnChange'].map((key) => el('th', { scope: 'col' }, t(key))))),
            el('tbody', {}, ...all.map(row))))));
    const leads = changes.filter((/** @type {any} */ one) => leading.includes(one.calculation + one.pointer.replace(/\/\d+(?=\/)/g, '/0')));
    return [
        leads.length === 0 ? el('p', {}) : scroller(t('leadingResults'), el('table', { class: 'leading' },
            el('caption', {}, t('leadingResults')),
            el('thead', {}, el('tr', {}, ...['columnQuestion', 'columnResult', 'asFound', 'asPlanned', 'columnChange'].map((key) => el('th', { scope: 'col' }, t(key))))),
            el('tbody', {}, ...leads.map((/** @type {any} */ one) => row(one, label(one.calculation)))))),
        ...found(t('findingsGained'), findings.gained, 'gained'),
        ...found(t('findingsLost'), findings.lost, 'lost'),
        el('h3', {}, t('changedResults')),
        ...(tables.length === 0 ? [el('p', {}, t('nothingChanges'))] : tables),
        notCompared.length === 0 ? el('p', {}) : el('p', { class: 'open' }, t('notCompared', { questions: notCompared.map((/** @type {any} */ one) => label(one.calculation)).join(', ') })),
    ];
}

/** @param {any} one @param {string} [question] in a column of its own */
function row(one, question) {
    const name = segments(one.pointer).at(-1);
    const relative = typeof one.relative === 'number' && Number.isFinite(one.relative) ? (one.relative > 0 ? '+' : '') + number(one.relative * 100, 3) + ' %' : '';
    return el('tr', {}, question === undefined ? undefined : el('td', {}, question), el('th', { scope: 'row' }, place(one.pointer)), el('td', {}, leaf(one.before, name)), el('td', {}, leaf(one.after, name)), el('td', {}, relative));
}

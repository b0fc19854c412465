// @ts-check
/** What the service says to the whole vehicle: findings first, then each question, then plots and the comparison. */

import { Answer } from './answer-element.js';
import { Comparison } from './comparison-element.js';
import { el, scroller } from './dom.js';
import { Findings, tally } from './findings-element.js';
import { Plots } from './plots-element.js';
import { service } from './service.js';
import { leaf, place, segments } from './text.js';
import { label, t } from './words.js';

/**
 * @typedef {object} Shown
 * @property {any} assessed the answer of the assessment
 * @property {import('./contract.js').Contract} contract
 * @property {Record<string, unknown>} setup as asked
 * @property {import('./service.js').Units} units
 * @property {string | null} id of the saved setup
 *
 * @typedef {object} Surroundings
 * @property {any[]} demos
 * @property {() => {setup: Record<string, unknown>, faults: {pointer: string, message: string}[]}} current
 * @property {() => import('./service.js').Units} units
 * @property {() => string[]} leading results: name of the question and pointer in one
 */

customElements.define('axlewright-findings', Findings);
customElements.define('axlewright-answer', Answer);
customElements.define('axlewright-plots', Plots);
customElements.define('axlewright-comparison', Comparison);

/** @param {Surroundings} surroundings */
export function begin(surroundings) {
    const comparison = new Comparison();
    comparison.surroundings = surroundings;
    document.getElementById('comparison')?.append(comparison);
}

/** @param {Shown | null} shown null clears everything */
export function show(shown) {
    /** @type {Findings} */ (document.querySelector('axlewright-findings')).assessed = shown === null ? null : shown.assessed;
    for (const id of ['overview', 'plots']) {
        /** @type {HTMLElement} */ (document.getElementById(id)).hidden = shown === null;
    }
    const list = /** @type {HTMLElement} */ (document.getElementById('answers'));
    if (shown === null) {
        list.replaceChildren();
        return;
    }
    const told = byQuestion(shown);
    const opened = new Set([...list.querySelectorAll('details[open]')].map(key));
    /** @type {HTMLElement} */ (document.getElementById('overview-table')).replaceChildren(overview(told));
    list.replaceChildren(...told.map(({ question, says }) => {
        const answer = new Answer();
        answer.asked = {
            question, resolve: shown.contract.resolve, told: says,
            working: async () => {
                const reply = await service.ask(question.path, shown.setup, shown.units);
                return reply.status === 200 ? reply.body.working ?? [] : null;
            },
        };
        answer.querySelectorAll('details').forEach((one) => (one.open = opened.has(key(one))));
        return answer;
    }));
    const plots = /** @type {HTMLElement} */ (document.getElementById('plot-list'));
    const element = plots.querySelector('axlewright-plots') instanceof Plots ? /** @type {Plots} */ (plots.querySelector('axlewright-plots')) : new Plots();
    element.shown = { results: shown.assessed.results, setup: shown.setup, units: shown.units, sweeps: shown.contract.sweeps };
    if (!element.isConnected) {
        plots.replaceChildren(element);
    }
}

/** What somebody has opened stays open when the answers are renewed. @param {Element} details */
const key = (details) => (/** @type {HTMLElement | null} */ (details.closest('axlewright-answer'))?.dataset.question ?? '') + '/' + details.className;

/** The answers in the order of the registry, which is that of the results; what is not assessed comes after. @param {Shown} shown */
function byQuestion({ assessed, contract }) {
    const names = [...Object.keys(assessed.results), ...assessed.notAssessed.map((/** @type {any} */ one) => one.calculation)];
    return names.flatMap((name) => {
        const question = contract.questions.find((one) => one.name === name);
        const open = assessed.notAssessed.find((/** @type {any} */ one) => one.calculation === name);
        /** @param {any} one */
        const concerns = (one) => one.calculations.includes(name);
        return question === undefined ? [] : [{
            question,
            says: {
                result: assessed.results[name],
                findings: assessed.findings.filter(concerns),
                assumptions: assessed.assumptions.filter(concerns),
                notAnswered: assessed.notAnswered.filter((/** @type {any} */ one) => one.calculation === name),
                missing: open?.missing ?? [],
                faults: open?.faults ?? [],
            },
        }];
    });
}

/** One line per question: what it leads with, and how serious its findings are. @param {ReturnType<typeof byQuestion>} told */
function overview(told) {
    return scroller(t('overview'), el('table', { class: 'overview' },
        el('caption', {}, t('overview')),
        el('thead', {}, el('tr', {}, ...['columnQuestion', 'columnLeading', 'columnFindings'].map((name) => el('th', { scope: 'col' }, t(name))))),
        el('tbody', {}, ...told.map(({ question, says }) => {
            const lead = question.leads.map((pointer) => ({ pointer, value: at(says.result, pointer) })).find(({ value }) => value !== undefined && typeof value !== 'object' || value?.unit || value?.amount);
            return el('tr', {},
                el('th', { scope: 'row' }, el('a', { href: '#' + question.name }, label(question.name))),
                el('td', {}, says.result === undefined ? t('open') : lead === undefined ? '' : place(lead.pointer.replace(/\/\d+(?=\/)/g, '')) + ': ' + leaf(lead.value, segments(lead.pointer).at(-1))),
                el('td', {}, says.result === undefined ? '' : tally(says.findings)));
        }))));
}

/** @param {any} value @param {string} pointer */
function at(value, pointer) {
    return segments(pointer).reduce((here, name) => here?.[name], value);
}

// @ts-check
/** The page: registers the elements and joins them. What is typed is kept on this device until it is saved or cleared. */

import { Answer } from './answer-element.js';
import { readContract } from './contract.js';
import { el, fieldLink } from './dom.js';
import { count, toDraft, toSetup } from './draft.js';
import { Elevation } from './elevation-element.js';
import { vehicle } from './elevation.js';
import { Entries } from './entries-element.js';
import { service } from './service.js';
import { Setups } from './setups-element.js';
import { place, words } from './text.js';

customElements.define('axlewright-entries', Entries);
customElements.define('axlewright-answer', Answer);
customElements.define('axlewright-elevation', Elevation);
customElements.define('axlewright-setups', Setups);

const KEPT = 'axlewright.draft';

/** @typedef {{draft: import('./draft.js').Draft, units: import('./service.js').Units, opened: import('./setups-element.js').Opened | null}} Kept */

/** @template {Element} T @param {string} selector @param {new () => T} type @returns {T} */
function part(selector, type) {
    const node = document.querySelector(selector);
    if (!(node instanceof type)) {
        throw new Error('The page lacks ' + selector);
    }
    return node;
}

const entries = part('axlewright-entries', Entries);
const elevation = part('axlewright-elevation', Elevation);
const setups = part('axlewright-setups', Setups);
const form = part('#form', HTMLFormElement);
const status = part('#status', HTMLElement);
const refusals = part('#refusals', HTMLElement);
const answers = part('#answers', HTMLElement);
const demos = part('#demos', HTMLElement);
const start = part('#start-choices', HTMLElement);
const sheet = part('#sheet', HTMLElement);

/** @type {import('./contract.js').Contract} */
let contract = { fields: [], questions: [], resolve: (schema) => schema };
/** @type {Map<string, Answer>} */
const shown = new Map();
/** @type {import('./draft.js').Draft | null} */
let before = null;
/** Counts askings, so that a late answer to an old one is dropped. */
let asking = 0;
let engine = 'Axlewright';

/** @returns {import('./service.js').Units} */
const units = () => (/** @type {HTMLInputElement | null} */ (document.querySelector('input[name=units]:checked'))?.value === 'us' ? 'us' : 'metric');

/** @returns {Kept | null} */
function kept() {
    try {
        return JSON.parse(localStorage.getItem(KEPT) ?? 'null');
    } catch {
        return null;
    }
}

function keep() {
    try {
        localStorage.setItem(KEPT, JSON.stringify({ draft: entries.draft, units: units(), opened: setups.opened }));
    } catch {
        status.textContent = 'This device does not keep what you type; save it before you leave.';
    }
}

/**
 * Puts another vehicle into the form; the one before can be brought back.
 * @param {import('./draft.js').Draft} draft
 * @param {import('./setups-element.js').Opened | null} opened
 */
function change(draft, opened) {
    before = count(entries.draft) > 0 ? entries.draft : null;
    part('#back', HTMLButtonElement).hidden = before === null;
    entries.draft = draft;
    setups.opened = opened;
    keep();
}

/** Asks every question at once. @param {{moveFocus: boolean}} how */
async function ask({ moveFocus }) {
    const turn = ++asking;
    const { setup, faults: unread } = toSetup(entries.draft, contract.fields);
    status.textContent = 'Asking …';
    const replies = await Promise.all(contract.questions.map((question) => service.ask(question.path, setup, units())));
    if (turn !== asking) {
        return;
    }
    answers.classList.remove('stale');
    showRefusals(replies, unread);
    const results = new Map();
    contract.questions.forEach((question, at) => {
        // a number that can't be read was left out of what was asked: no answer may pretend that it was not typed
        const reply = unread.length > 0 && replies[at].status === 200
            ? { ...replies[at], status: 422, body: { errors: unread.map((fault) => ({ ...fault, code: 'unreadable' })) } }
            : replies[at];
        shown.get(question.name)?.replaceWith(answerElement(question, reply));
        if (reply.status === 200) {
            results.set(question.name, reply.body.result);
            engine = 'Axlewright ' + reply.body.engine.version;
        }
    });
    draw(setup, results);
    const all = contract.questions.length;
    status.textContent = results.size + ' of ' + all + ' questions answered' + (results.size < all ? '; the others say what they need.' : '.');
    if (moveFocus) {
        (refusals.hidden ? sheet : refusals).focus();
    }
}

/** @param {import('./contract.js').Question} question @param {import('./service.js').Reply | null} reply */
function answerElement(question, reply) {
    const answer = new Answer();
    answer.asked = { question, resolve: contract.resolve, reply };
    shown.set(question.name, answer);
    return answer;
}

/**
 * All refusals at their fields and in one list; what only one question needs is marked at the field, and is no fault.
 * @param {import('./service.js').Reply[]} replies
 * @param {import('./draft.js').EntryFault[]} unread
 */
function showRefusals(replies, unread) {
    /** @type {Map<string, {pointer: string, message: string}>} */
    const refused = new Map(unread.map((fault) => [fault.pointer, fault]));
    /** @type {Map<string, string[]>} */
    const needed = new Map();
    replies.forEach((reply, at) => {
        for (const error of reply.body?.errors ?? []) {
            if (unread.some((fault) => fault.pointer.startsWith(error.pointer))) {
                continue; // left out because it can't be read, so of course it is missing
            }
            if (error.code === 'missing' && !/\/(value|unit|energyPrice\/amount|currency)$/.test(error.pointer)) {
                needed.set(error.pointer, [...(needed.get(error.pointer) ?? []), words(contract.questions[at].name).toLowerCase()]);
            } else {
                refused.set(error.pointer + error.code, error);
            }
        }
    });
    entries.showFaults([
        ...refused.values(),
        ...[...needed].map(([pointer, names]) => ({ pointer, message: 'Needed for ' + names.join(', ') + '.', needed: true })),
    ]);
    listRefusals([...refused.values()]);
}

/** @param {{pointer: string, message: string}[]} faults */
function listRefusals(faults) {
    refusals.hidden = faults.length === 0;
    refusals.replaceChildren(...(faults.length === 0 ? [] : [
        el('h3', {}, faults.length === 1 ? 'One entry is refused' : faults.length + ' entries are refused'),
        el('ul', {}, ...faults.map((fault) => el('li', {}, fieldLink(fault.pointer, place(fault.pointer)), ': ' + fault.message))),
    ]));
}

/** @param {Record<string, any>} setup @param {Map<string, any>} results by question */
function draw(setup, results) {
    elevation.drawing = {
        vehicle: vehicle(setup, results.get('centre-of-gravity') ?? null, results.get('lift-geometry') ?? null),
        title: typeof setup.name === 'string' ? setup.name : 'Own vehicle',
        identification: setups.opened ? setups.opened.id : 'not saved',
        units: units(),
        engine,
    };
}

/** Before anything is typed there is nothing to ask. */
function empty() {
    asking++;
    contract.questions.forEach((question) => shown.get(question.name)?.replaceWith(answerElement(question, null)));
    showRefusals([], []);
    draw({}, new Map());
    status.textContent = 'Choose a vehicle or enter your own numbers.';
}

function listen() {
    form.addEventListener('submit', (event) => {
        event.preventDefault();
        void ask({ moveFocus: true });
    });
    entries.addEventListener('entered', () => {
        keep();
        if (answers.querySelector('.leads')) {
            answers.classList.add('stale');
            status.textContent = 'Entries have changed since; work it out again.';
        }
    });
    document.addEventListener('click', (event) => {
        const link = event.target instanceof Element ? /** @type {HTMLElement | null} */ (event.target.closest('a[data-field]')) : null;
        if (link?.dataset.field !== undefined) {
            event.preventDefault();
            entries.focusField(link.dataset.field);
        }
    });
    document.querySelectorAll('input[name=units]').forEach((input) => input.addEventListener('change', () => {
        entries.units = units();
        keep();
        if (count(entries.draft) > 0) {
            void ask({ moveFocus: false });
        }
    }));
    setups.addEventListener('opened', (event) => {
        const { setup, opened } = /** @type {CustomEvent} */ (event).detail;
        change(toDraft(setup, contract.fields), opened);
        void ask({ moveFocus: true });
    });
    setups.addEventListener('saved', () => {
        keep();
        void ask({ moveFocus: false });
    });
    setups.addEventListener('refused', (event) => {
        const errors = (/** @type {CustomEvent} */ (event).detail.problem?.errors ?? []).map((/** @type {any} */ error) =>
            (error.code === 'missing' ? { ...error, message: 'Needed to save.' } : error));
        entries.showFaults(errors);
        listRefusals(errors);
    });
    part('#own', HTMLButtonElement).addEventListener('click', () => {
        change({}, null);
        empty();
        entries.focusField(firstNeeded());
    });
    part('#back', HTMLButtonElement).addEventListener('click', () => {
        if (before !== null) {
            change(before, null);
            void ask({ moveFocus: true });
        }
    });
}

/** The section to begin with: its first field. */
function firstNeeded() {
    const section = contract.fields.find((field) => field.kind === 'group');
    return contract.fields.some((field) => field.name === 'name') ? '/name' : '/' + (section?.name ?? '');
}

async function showDemos() {
    const reply = await service.demoSetups();
    const items = reply.status === 200 ? reply.body.items : [];
    start.prepend(...items.map((/** @type {any} */ setup) => {
        const button = el('button', { type: 'button' }, setup.name);
        button.addEventListener('click', () => {
            change(toDraft(setup, contract.fields), null);
            void ask({ moveFocus: true });
        });
        return button;
    }));
    demos.hidden = false;
}

async function begin() {
    const reply = await service.contract();
    if (reply.status !== 200) {
        status.textContent = 'The service was not reached. Load the page again.';
        return;
    }
    contract = readContract(reply.body);
    const found = kept();
    if (found?.units === 'us') {
        part('input[name=units][value=us]', HTMLInputElement).checked = true;
    }
    entries.fields = contract.fields;
    entries.units = units();
    entries.draft = found?.draft ?? {};
    setups.opened = found?.opened ?? null;
    setups.current = () => {
        const { setup, faults } = toSetup(entries.draft, contract.fields);
        entries.showFaults(faults);
        listRefusals(faults);
        return faults.length > 0 ? null : setup;
    };
    answers.append(...contract.questions.map((question) => answerElement(question, null)));
    listen();
    document.body.dataset.ready = '';
    if (count(entries.draft) > 0) {
        void ask({ moveFocus: false });
    } else {
        empty();
    }
    await Promise.all([showDemos(), setups.refresh()]);
}

void begin();

// @ts-check
/** The desk: registers the elements and joins them. What is typed is kept on this device until it is saved or cleared. */

import { readContract } from './contract.js';
import { el, fieldLink, part } from './dom.js';
import { count, toDraft, toSetup } from './draft.js';
import { Entries } from './entries-element.js';
import { service } from './service.js';
import { Setups } from './setups-element.js';
import { leaf, place, segments } from './text.js';
import { fetchHints, fetchSaid, kept, label, labelWithin, language, t } from './words.js';

/** What answers and drawing need is fetched with the first entry or question, and again when it could not be reached. @type {ReturnType<typeof fetchParts> | undefined} */
let fetched;
const later = () => (fetched ??= fetchParts().catch((failure) => {
    fetched = undefined;
    throw failure;
}));

/** The demo vehicles. @type {any[]} */
let demos = [];

const KEPT = 'axlewright.draft';

/** How long a drag rests before the service is asked, ms. */
const REST = 90;

/** @typedef {{draft: import('./draft.js').Draft, opened: import('./setups-element.js').Opened | null, vehicle: number}} Moment */
/** @typedef {{draft: import('./draft.js').Draft, opened: import('./setups-element.js').Opened | null, units: import('./service.js').Units}} Kept */

customElements.define('axlewright-entries', Entries);
customElements.define('axlewright-setups', Setups);

const entries = part('axlewright-entries', Entries);
const setups = part('axlewright-setups', Setups);
const form = part('#form', HTMLFormElement);
const status = part('#status', HTMLElement);
const refusals = part('#refusals', HTMLElement);
const told = part('#told', HTMLElement);
const sheet = part('#sheet', HTMLElement);
const undo = part('#undo', HTMLButtonElement);
const redo = part('#redo', HTMLButtonElement);

/** @type {import('./contract.js').Contract} */
let contract = { fields: [], questions: [], buildSheets: false, sweeps: false, resolve: (schema) => schema };
/** The contract, once it is here; everything that needs the fields waits for it. */
const known = learn();
/** Counts askings, so that a late answer to an old one is dropped. */
let asking = 0;
let engine = 'Axlewright';
/** What the drawing shows. @type {{setup: Record<string, any>, answers: import('./drawing.js').Answers}} */
let drawn = { setup: {}, answers: { balance: null, weighed: null, lift: null } };
/** Earlier and later states of the entries, as texts; `name` is the field whose typing made the last step. @type {{past: string[], future: string[], now: string, name: string, at: number}} */
const history = { past: [], future: [], now: '', name: '', at: 0 };

/** @returns {Kept | null} */
function keptDraft() {
    try {
        return JSON.parse(kept(KEPT) ?? 'null');
    } catch {
        return null;
    }
}

/** @returns {import('./service.js').Units} */
const units = () => (/** @type {HTMLInputElement | null} */ (document.querySelector('input[name=units]:checked'))?.value === 'us' ? 'us' : 'metric');

function keep() {
    try {
        localStorage.setItem(KEPT, JSON.stringify({ draft: entries.draft, units: units(), opened: setups.opened }));
    } catch {
        status.textContent = t('notKept');
    }
}

/** Counts the vehicles that have been in the form, so that undoing never saves one over another. */
let vehicles = 0;
let vehicle = 0;

/** The state of the entries, as a text. */
const moment = () => JSON.stringify({ draft: entries.draft, opened: setups.opened, vehicle });

/** What has been saved now stands for every earlier state of the same vehicle, or undoing would save over an older revision. */
function settle() {
    const opened = setups.opened;
    /** @param {string} text */
    const settled = (text) => {
        const one = /** @type {Moment} */ (JSON.parse(text));
        return one.vehicle === vehicle ? JSON.stringify({ ...one, opened }) : text;
    };
    Object.assign(history, { now: moment(), past: history.past.map(settled), future: history.future.map(settled) });
}

/** Takes a step of the history, unless the same field is being typed in. @param {string} name */
function remember(name) {
    const now = moment();
    if (now === history.now) {
        return;
    }
    const typing = name !== '' && name === history.name && performance.now() - history.at < 2000;
    if (!typing) {
        history.past.push(history.now);
        history.past.splice(0, history.past.length - 100);
    }
    Object.assign(history, { now, name, at: performance.now(), future: [] });
    offer();
}

function offer() {
    undo.disabled = history.past.length === 0;
    redo.disabled = history.future.length === 0;
}

/** @param {string[]} from @param {string[]} to */
function step(from, to) {
    const other = from.pop();
    if (other === undefined) {
        return;
    }
    to.push(history.now);
    Object.assign(history, { now: other, name: '' });
    const { draft, opened, vehicle: which } = /** @type {Moment} */ (JSON.parse(other));
    vehicle = which;
    entries.draft = draft;
    setups.opened = opened;
    keep();
    offer();
    if (count(draft) > 0) {
        void ask({ moveFocus: false });
    } else {
        void empty();
    }
}

/**
 * Puts another vehicle into the form; `Undo` brings back the one before.
 * @param {import('./draft.js').Draft} draft
 * @param {import('./setups-element.js').Opened | null} opened
 */
function change(draft, opened) {
    vehicle = ++vehicles;
    entries.draft = draft;
    setups.opened = opened;
    keep();
    remember('');
}

/** Asks every question at once. @param {{moveFocus: boolean}} how */
export async function ask({ moveFocus }) {
    const turn = ++asking;
    await known;
    const asked = history.now;
    const { setup, faults: unread } = toSetup(entries.draft, contract.fields);
    status.textContent = t('asking');
    const [reply, weighed, parts] = await Promise.all([service.assess(setup, units()), asWeighed(setup), later().catch(() => null)]);
    if (turn !== asking) {
        return;
    }
    const changed = history.now !== asked; // typed while the service was working
    told.classList.toggle('stale', changed);
    if (reply.status !== 200 || parts === null) {
        unanswered(parts === null ? { ...reply, status: 0 } : reply, unread, moveFocus);
        return;
    }
    const [answers] = parts;
    engine = 'Axlewright ' + reply.body.engine.version;
    const assessed = reply.body;
    // a number that can't be read was left out of what was asked: no answer may pretend that it was not typed
    answers.show(unread.length > 0 ? null : { assessed, contract, setup, units: units(), id: setups.opened?.id ?? null });
    mark(assessed.notAssessed, unread);
    drawn = { setup, answers: { balance: assessed.results['centre-of-gravity'] ?? null, weighed, lift: assessed.results['lift-geometry'] ?? null } };
    await draw();
    const answered = Object.keys(assessed.results).length;
    const all = answered + assessed.notAssessed.length;
    status.textContent = changed ? t('changedSince') : t('answered', { answered, all }) + (answered < all ? t('othersNeed') : '.');
    if (moveFocus) {
        (refusals.hidden ? sheet : refusals).focus();
    }
}

/** @param {import('./service.js').Reply} reply @param {import('./draft.js').EntryFault[]} unread @param {boolean} moveFocus */
function unanswered(reply, unread, moveFocus) {
    if (reply.status === 0) {
        status.textContent = t('notReachedKept');
        told.classList.add('stale');
        return;
    }
    /** @type {any[]} */
    const errors = reply.body?.errors ?? [];
    const refused = [...unread, ...errors.filter((error) => !unread.some((fault) => fault.pointer.startsWith(error.pointer))).map(refusal)];
    void later().then(([answers]) => answers.show(null));
    entries.showFaults(refused);
    list(refused);
    status.textContent = errors.length > 0 ? t('refused') : t('serviceAnswered', { status: reply.status });
    if (moveFocus && refused.length > 0) {
        refusals.focus();
    }
}

/** What the service refuses, in the reader's words where the catalogue knows its code. @param {{pointer: string, code: string, message: string, actual?: any, limit?: any}} error */
function refusal(error) {
    const key = 'refusal.' + error.code;
    const own = language === 'en' ? key : t(key, { actual: leaf(error.actual ?? ''), limit: leaf(error.limit ?? '') });
    return own === key || (error.limit === undefined && error.code === 'out-of-range')
        ? { ...error, lang: language === 'en' ? undefined : 'en' } : { ...error, message: own };
}

/**
 * Refusals at their fields and in one list; what only one question needs is marked at the field, and is no fault.
 * @param {{calculation: string, missing: string[], faults: any[]}[]} notAssessed
 * @param {import('./draft.js').EntryFault[]} unread
 */
function mark(notAssessed, unread) {
    /** @type {Map<string, {pointer: string, message: string, lang?: string}>} */
    const refused = new Map(unread.map((fault) => [fault.pointer, fault]));
    /** @type {Map<string, string[]>} */
    const needed = new Map();
    for (const { calculation, missing, faults } of notAssessed) {
        for (const pointer of missing) {
            if (!unread.some((fault) => fault.pointer.startsWith(pointer))) {
                needed.set(pointer, [...(needed.get(pointer) ?? []), labelWithin(calculation)]);
            }
        }
        faults.forEach((fault) => refused.set(fault.pointer + fault.code, refusal(fault)));
    }
    entries.showFaults([
        ...refused.values(),
        ...[...needed].map(([pointer, names]) => ({ pointer, message: t('neededFor', { questions: names.join(', ') }), needed: true })),
    ]);
    list([...refused.values()]);
}

/** @param {{pointer: string, message: string, lang?: string}[]} faults */
function list(faults) {
    refusals.hidden = faults.length === 0;
    refusals.replaceChildren(...(faults.length === 0 ? [] : [
        el('h3', {}, t('refusals', { count: faults.length })),
        el('ul', {}, ...faults.map((fault) => el('li', {}, fieldLink(fault.pointer, place(fault.pointer)), ': ', el('span', { lang: fault.lang }, fault.message)))),
    ]));
}

/** The vehicle as weighed, before parts, people and lift. @param {Record<string, any>} setup @returns {Promise<any>} */
async function asWeighed(setup) {
    const changed = setup.items !== undefined || setup.occupants !== undefined || setup.lift !== undefined || setup.laden !== undefined;
    if (!changed || setup.bare === undefined || setup.chassis === undefined) {
        return null;
    }
    const reply = await service.ask('/v1/centre-of-gravity', { chassis: setup.chassis, bare: setup.bare }, units());
    return reply.status === 200 ? reply.body.result : null;
}

async function draw() {
    const [, { DrawingElement }, drawing] = await later();
    part('axlewright-drawing', DrawingElement).drawing = {
        vehicle: drawing.vehicle(drawn.setup, drawn.answers),
        title: typeof drawn.setup.name === 'string' ? drawn.setup.name : t('ownVehicle'),
        identification: setups.opened ? setups.opened.id : t('notSavedYet'),
        units: units(),
        engine,
    };
}

/** @type {AbortController | undefined} */
let dragging;
let rest = 0;

/** A part has been moved on the drawing: its entry follows at once, the loads as soon as the drag rests. @param {{pointer: string, x: number | null, y: number | null, z: number | null, done: boolean}} to */
async function moved({ pointer, x, y, z, done }) {
    asking++; // an answer on its way is to a place that the part has left
    const [, , drawing] = await later();
    const [section, at] = segments(pointer);
    const partOf = drawn.setup[section]?.[Number(at)];
    const model = drawing.vehicle(drawn.setup, drawn.answers);
    if (!partOf || model === null) {
        return;
    }
    const place = x ?? model.parts.find((one) => one.pointer === pointer)?.at?.x ?? 0;
    for (const [axis, metres] of /** @type {[string, number | null][]} */ ([['x', x], ['y', y], ['z', z === null ? null : z - model.rise(place)]])) {
        if (metres !== null) {
            const unit = partOf.position?.[axis]?.unit ?? (units() === 'us' ? 'in' : 'mm');
            const value = { value: Number(drawing.inUnit(metres, unit).toFixed({ mm: 0, cm: 1, in: 2, ft: 3 }[/** @type {'mm'} */ (unit)] ?? 3)), unit };
            partOf.position = { ...partOf.position, [axis]: value };
            entries.put(pointer + '/position/' + axis, value);
        }
    }
    await draw();
    clearTimeout(rest);
    rest = window.setTimeout(() => (done ? ask({ moveFocus: false }) : follow()), REST);
}

/** The axle loads of the moment, while the part is still held. */
async function follow() {
    dragging?.abort();
    dragging = new AbortController();
    const reply = await service.askAgain('/v1/centre-of-gravity', drawn.setup, units(), dragging.signal);
    if (reply.status === 200) {
        drawn.answers = { ...drawn.answers, balance: reply.body.result };
        await draw();
    }
}

/** Before anything is typed there is nothing to ask. */
async function empty() {
    asking++;
    if (fetched === undefined) {
        part('axlewright-drawing', HTMLElement).replaceChildren(el('p', { class: 'needed' }, t('drawingBegins') + ' ', fieldLink('/chassis/wheelbase', t('drawingBeginsWith')), '.'));
        status.textContent = t('chooseVehicle');
        return;
    }
    const [answers] = await fetched;
    answers.show(null);
    entries.showFaults([]);
    list([]);
    drawn = { setup: {}, answers: { balance: null, weighed: null, lift: null } };
    await draw();
    status.textContent = t('chooseVehicle');
}

function listen() {
    entries.addEventListener('entered', (event) => {
        keep();
        remember(/** @type {CustomEvent} */ (event).detail.name);
        later().catch(() => undefined); // told when something is asked
        if (part('#overview', HTMLElement).hidden === false) {
            told.classList.add('stale');
            status.textContent = t('changedSince');
        }
    });
    document.addEventListener('moved', (event) => void moved(/** @type {CustomEvent} */ (event).detail));
    document.addEventListener('click', (event) => {
        const target = event.target instanceof Element ? event.target : null;
        const link = /** @type {HTMLElement | null} */ (target?.closest('a[data-field]') ?? null);
        if (link?.dataset.field !== undefined) {
            event.preventDefault();
            entries.focusField(link.dataset.field);
        }
        const enter = /** @type {HTMLElement | null} */ (target?.closest('button[data-enter]') ?? null);
        if (enter?.dataset.enter !== undefined) {
            entries.put(enter.dataset.enter, JSON.parse(enter.dataset.sent ?? 'null'));
            entries.focusField(enter.dataset.enter);
        }
    });
    document.addEventListener('keydown', (event) => {
        const typing = event.target instanceof HTMLInputElement || event.target instanceof HTMLTextAreaElement; // has an undo of its own
        if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'z' && !typing) {
            event.preventDefault();
            (event.shiftKey ? redo : undo).click();
        }
    });
    undo.addEventListener('click', () => step(history.past, history.future));
    redo.addEventListener('click', () => step(history.future, history.past));
    part('#print', HTMLButtonElement).addEventListener('click', () => window.print());
    document.querySelectorAll('input[name=units]').forEach((input) => input.addEventListener('change', () => {
        entries.units = units();
        keep();
        if (count(entries.draft) > 0) {
            void ask({ moveFocus: false });
        }
    }));
    setups.addEventListener('opened', async (event) => {
        const { setup, opened } = /** @type {CustomEvent} */ (event).detail;
        await known;
        change(toDraft(setup, contract.fields), opened);
        void ask({ moveFocus: true });
    });
    setups.addEventListener('saved', () => {
        keep();
        settle();
        void ask({ moveFocus: false });
    });
    setups.addEventListener('refused', (event) => {
        const errors = (/** @type {CustomEvent} */ (event).detail.problem?.errors ?? []).map((/** @type {any} */ error) =>
            (error.code === 'missing' ? { ...error, message: t('neededToSave') } : refusal(error)));
        entries.showFaults(errors);
        list(errors);
    });
}

/** Puts a demo vehicle into the form and asks. @param {Record<string, unknown>} setup */
export function take(setup) {
    change(toDraft(setup, contract.fields), null);
    void ask({ moveFocus: true });
}

/** Clears the form for somebody's own numbers. */
export function own() {
    change({}, null);
    void empty();
    entries.focusField(firstNeeded());
}

/** The section to begin with: its first field. */
function firstNeeded() {
    const section = contract.fields.find((field) => field.kind === 'group');
    return contract.fields.some((field) => field.name === 'name') ? '/name' : '/' + (section?.name ?? '');
}

/** What the form needs of the contract. @returns {Promise<void>} */
async function learn() {
    const [form] = await Promise.all([reach(service.form), fetchHints()]);
    contract = readContract(form);
}

/** Asks until the service answers. @param {() => Promise<import('./service.js').Reply>} ask @returns {Promise<any>} */
async function reach(ask) {
    let reply = await ask();
    while (reply.status !== 200) {
        status.textContent = t('notReached');
        await new Promise((done) => setTimeout(done, 3000));
        reply = await ask();
    }
    return reply.body;
}

/** What an element on another page hands over in the address, or null. @returns {{setup: Record<string, unknown>, units: string | null} | null} */
function handedOver() {
    const parts = new URLSearchParams(location.hash.slice(1));
    try {
        return parts.has('setup') ? { setup: JSON.parse(parts.get('setup') ?? ''), units: parts.get('units') } : null;
    } catch {
        return null; // an address that somebody has cut
    }
}

async function fetchParts() {
    const modules = Promise.all([import('./answers.js'), import('./drawing-element.js'), import('./drawing.js')]);
    const [parts, whole] = await Promise.all([modules, service.contract(), fetchSaid()]);
    if (whole.status !== 200) {
        throw new Error('The contract was not reached');
    }
    const [answers, { DrawingElement }] = parts;
    contract = readContract(whole.body);
    customElements.define('axlewright-drawing', DrawingElement);
    answers.begin({
        demos,
        current: () => toSetup(entries.draft, contract.fields),
        units,
        leading: () => contract.questions.flatMap((question) => question.leads.map((pointer) => question.name + pointer)),
    });
    part('#compare', HTMLElement).hidden = false;
    return parts;
}

/** @param {any[]} shown the vehicles to begin with */
export async function begin(shown) {
    demos = shown;
    const found = keptDraft();
    const handed = handedOver();
    if ((handed?.units ?? found?.units) === 'us') {
        part('input[name=units][value=us]', HTMLInputElement).checked = true;
    }
    setups.opened = found?.opened ?? null;
    listen();
    await known;
    entries.units = units();
    entries.fields = contract.fields;
    entries.draft = found?.draft ?? {};
    history.now = moment();
    setups.buildSheets = contract.buildSheets;
    if (handed !== null) {
        change(toDraft(handed.setup, contract.fields), null);
        window.history.replaceState(null, '', location.pathname); // a reload keeps what is typed from here on
    }
    setups.current = () => {
        const { setup, faults } = toSetup(entries.draft, contract.fields);
        entries.showFaults(faults);
        list(faults);
        return faults.length > 0 ? null : setup;
    };
    document.body.dataset.ready = '';
    void (count(entries.draft) > 0 ? ask({ moveFocus: false }) : empty());
    void setups.refresh();
}

// @ts-check
import { answered, el, summary } from './answer.js';
import { CALCULATIONS } from './contract.js';
import { at, field, fieldAt, meantForSetup, put, read, shown, usualUnit } from './form.js';
import { SHOWS } from './shows.js';
import { sheet } from './style.js';
import { words } from './words.js';

/** Where the script comes from is where the service answers. */
const SERVICE = new URL('../../', import.meta.url).href;

/** Attributes beside the fields of a setup. */
export const ATTRIBUTES = ['setup', 'fields', 'units', 'lang', 'heading-level', 'service'];

/** How long a customer's typing rests before the service is asked, ms. */
const REST = 300;

/** How long an answer may take, ms. */
const PATIENCE = 20_000;

/** Waits before the service is asked again by itself, s. */
const AGAIN = [5, 15, 60];

/**
 * One calculation of the service on somebody's page: a form of few fields, and what the service answers to it. It knows no physics.
 *
 * Attributes: any field of a setup by its pointer with hyphens (`pack-capacity="105 Ah"`), and `setup`, `fields`, `units`, `lang`, `service`,
 * `heading-level`. Properties: `setup`, `request`, `answer`. Events: `change`, `result`, `refusal` (bubbling) and `error`. What stands inside
 * the element is shown until the first answer. See docs/embed.md.
 */
export class Calculation extends HTMLElement {
    /** @typedef {import('./form.js').Field} Field */
    /** @typedef {import('./words.js').Words} Words */
    /** @typedef {{calculation: string, units: string, setup: Record<string, any>}} Asked */
    /** @typedef {{pointer: string, message: string, lang?: string, needed?: boolean}} Fault */

    /** Name of the calculation in the contract; each element has its own. */
    static calculation = '';

    /** @type {Record<string, any>} */
    #setup = {};
    /** What the customer has typed, by attribute. @type {Map<string, {text: string, unit: string}>} */
    #typed = new Map();
    /** @type {Field[]} */
    #fields = [];
    /** @type {Words | undefined} */
    #words;
    /** @type {any} */
    #answer = null;
    /** @type {AbortController | undefined} */
    #asking;
    /** Ends the listeners when the element leaves the page. */
    #here = new AbortController();
    #timer = 0;
    #failures = 0;

    #observer = new MutationObserver((changes) => this.#attributesChanged(changes.map((one) => one.attributeName ?? '')));

    constructor() {
        super();
        const shadow = this.attachShadow({ mode: 'open' });
        shadow.adoptedStyleSheets = [sheet];
        shadow.append(el('slot'));
    }

    connectedCallback() {
        this.#here = new AbortController();
        this.#observer.observe(this, { attributes: true });
        window.addEventListener('online', () => this.#later(0), { signal: this.#here.signal });
        void this.#begin();
    }

    disconnectedCallback() {
        this.#observer.disconnect();
        this.#here.abort();
        this.#asking?.abort();
        clearTimeout(this.#timer);
    }

    /** The whole setup underneath what attributes and customer say. */
    get setup() {
        return structuredClone(this.#setup);
    }

    /** @param {Record<string, any> | null | undefined} setup */
    set setup(setup) {
        this.#setup = structuredClone(setup ?? {});
        this.#typed.clear();
        this.#build();
        this.#later(0);
    }

    /** What would be asked now. @returns {Asked} */
    get request() {
        return { calculation: this.#name, units: this.#system, setup: this.#collect().setup };
    }

    /** The last answer, or null when the entries of now have none. */
    get answer() {
        return this.#answer;
    }

    get #name() {
        return /** @type {typeof Calculation} */ (this.constructor).calculation;
    }

    get #system() {
        return this.getAttribute('units') === 'us' ? 'us' : 'metric';
    }

    get #service() {
        const given = this.getAttribute('service');
        return given === null ? SERVICE : new URL(given.replace(/\/?$/, '/'), document.baseURI).href;
    }

    async #begin() {
        this.#readSetup();
        const { signal } = this.#here;
        const said = await words(this.closest('[lang]')?.getAttribute('lang') || navigator.language);
        if (!signal.aborted) {
            this.#words = said;
            this.#build();
            await this.#ask();
        }
    }

    #readSetup() {
        const json = this.getAttribute('setup');
        if (json !== null) {
            try {
                this.#setup = JSON.parse(json);
            } catch (unreadable) {
                console.error(this.localName + ': the attribute setup is no JSON', unreadable);
            }
        }
    }

    /** @param {string[]} names */
    #attributesChanged(names) {
        if (names.some((name) => name === 'lang' || name === 'service')) {
            void this.#begin();
            return;
        }
        const own = names.filter((name) => meantForSetup(name) || ATTRIBUTES.includes(name));
        if (own.length === 0) {
            return;
        }
        if (own.includes('setup')) {
            this.#readSetup();
            this.#typed.clear();
        }
        own.forEach((name) => this.#typed.delete(name));
        this.#build();
        this.#later(0);
    }

    /** The parts that stay while answers come and go. */
    #build() {
        const said = this.#words;
        if (said === undefined || this.shadowRoot === null) {
            return;
        }
        const focused = this.shadowRoot.activeElement?.id;
        const names = this.getAttribute('fields')?.split(/[\s,]+/).filter((name) => name !== '' && name !== 'none') ?? SHOWS[this.#name] ?? [];
        this.#fields = names.flatMap((name) => field(name) ?? (console.error(this.localName + ': no field ' + name), []));
        const level = Math.min(6, Math.max(1, Number(this.getAttribute('heading-level') ?? 3) || 3));
        const form = el('form', { part: 'form', novalidate: true, hidden: this.#fields.length === 0 }, el('div', { class: 'form' }, ...this.#sections(said)));
        form.addEventListener('input', (event) => this.#entered(event.target));
        form.addEventListener('submit', (event) => {
            event.preventDefault();
            this.#later(0);
        });
        this.shadowRoot.replaceChildren(el('div', { part: 'element', role: 'group', lang: said.language, 'aria-labelledby': 'title' },
            el('p', { part: 'title', id: 'title', role: 'heading', 'aria-level': level }, said.label(this.#name)),
            form,
            el('div', { id: 'fallback' }, el('slot')),
            el('div', { id: 'told', part: 'answer' }),
            el('p', { id: 'status', class: 'status quiet', part: 'status', role: 'status' }),
            el('ul', { id: 'faults', part: 'faults', hidden: true }),
            el('p', { class: 'claim', part: 'claim' }, said.t('claim') + ' ', el('a', { id: 'link', part: 'link', target: '_blank', rel: 'noopener' }, said.t('wholePage')))));
        this.#part('fallback').hidden = this.#answer !== null || this.#typed.size > 0;
        if (this.#answer !== null) {
            this.#show();
        }
        if (focused) {
            this.shadowRoot.getElementById(focused)?.focus();
        }
    }

    /** @param {string} id @returns {HTMLElement} */
    #part(id) {
        return /** @type {HTMLElement} */ (this.shadowRoot?.getElementById(id));
    }

    /** Fields of one section stand together under its name. @param {Words} said */
    #sections(said) {
        /** @type {Map<string, Field[]>} */
        const sections = new Map();
        for (const one of this.#fields) {
            const [, section, index] = /^\/([^/]+)(?:\/(\d+))?/.exec(one.pointer) ?? [];
            const title = said.label(section) + (Number(index) > 0 || this.#fields.some((other) => other.pointer.startsWith(`/${section}/1/`)) ? ' ' + (Number(index) + 1) : '');
            sections.set(title, [...(sections.get(title) ?? []), one]);
        }
        /** A section that is a single field needs no second name. @param {string} title @param {Field[]} fields */
        const named = (title, fields) => (fields.every(({ pointer }) => pointer.lastIndexOf('/') === 0) ? [] : [el('legend', { part: 'legend' }, title)]);
        return [...sections].map(([title, fields]) => el('fieldset', {}, ...named(title, fields), ...fields.map((one) => this.#entry(one, said))));
    }

    /** @param {Field} one @param {Words} said */
    #entry(one, said) {
        const { text, unit } = this.#text(one, said);
        const inner = one.pointer.split('/').slice(2).filter((part, index) => index > 0 || !/^\d+$/.test(part));
        const name = said.joined((inner.length === 0 ? [one.pointer.slice(1)] : inner).map((part) => (/^\d+$/.test(part) ? String(Number(part) + 1) : said.label(part))));
        const described = { id: one.name, name: one.name, part: 'input', 'aria-describedby': 'fault-' + one.name };
        /** @param {string[]} choices @param {Record<string, string>} attributes @param {string} chosen @param {(choice: string) => string} label */
        const select = (choices, attributes, chosen, label) =>
            el('select', attributes, ...choices.map((choice) => el('option', { value: choice, selected: choice === chosen }, label(choice))));
        const choices = one.kind === 'flag' ? ['yes', 'no'] : one.kind.includes('|') ? one.kind.split('|') : null;
        const value = choices === null
            ? el('input', { type: 'text', value: text, autocomplete: 'off', autocapitalize: 'off', spellcheck: 'false', ...described })
            : select(['', ...choices], described, text, (choice) => (choice === '' ? '–' : one.kind === 'flag' ? said.t(choice) : said.label(choice)));
        const beside = { id: one.name + '-unit', part: 'unit', class: 'unit', 'aria-label': said.t('unitOf', { field: name }) };
        return el('div', { part: 'field' }, el('label', { for: one.name, part: 'label' }, name),
            el('div', { class: 'entry' }, value,
                one.units.length > 0 ? select(one.units, beside, unit, (token) => said.measured(1, token).replace(/^1[\s\u00a0]*/, '')) : undefined,
                one.kind === 'Money' ? el('input', { type: 'text', value: unit, maxlength: 3, ...beside, 'aria-label': said.t('currencyOf', { field: name }) }) : undefined),
            el('p', { id: 'fault-' + one.name, class: 'fault', part: 'fault', hidden: true }));
    }

    /** What stands in a field: what was typed, else what its attribute says, else the setup. @param {Field} one @param {Words} said @returns {{text: string, unit: string}} */
    #text(one, said) {
        const typed = this.#typed.get(one.name);
        if (typed !== undefined) {
            return typed;
        }
        const usual = one.kind === 'Money' ? 'USD' : usualUnit(one, this.#system);
        const given = this.getAttribute(one.name);
        const entered = given === null ? null : read(given, one, usual, false);
        const value = given === null ? at(this.#setup, one.pointer) : entered !== null && 'value' in entered ? entered.value : undefined;
        if (given !== null && (value === undefined || (one.kind === 'number' && / ?%$/.test(given)))) {
            return { text: given, unit: usual };
        }
        const { text, unit } = value === undefined ? { text: '', unit: '' } : shown(value, one, said.decimalComma);
        return { text, unit: unit || usual };
    }

    /** @param {EventTarget | null} target */
    #entered(target) {
        const one = this.#fields.find(({ name }) => target instanceof HTMLElement && (target.id === name || target.id === name + '-unit'));
        if (one === undefined || this.#words === undefined) {
            return;
        }
        const value = /** @type {HTMLInputElement | HTMLSelectElement} */ (this.#part(one.name)).value;
        const beside = /** @type {HTMLInputElement | HTMLSelectElement | null} */ (this.#part(one.name + '-unit'));
        const understood = read(value, one, beside?.value ?? '', this.#words.decimalComma);
        if (beside instanceof HTMLSelectElement && understood !== null && 'value' in understood && target !== beside) {
            beside.value = understood.value.unit; // a unit that is typed holds from now on
        }
        this.#typed.set(one.name, { text: value, unit: beside?.value ?? '' });
        this.#part('fallback').hidden = true;
        this.dispatchEvent(new CustomEvent('change', { detail: { request: this.request }, bubbles: true, composed: true }));
        this.#later(REST);
    }

    /** The setup of now: the one given, what attributes say over it, and what stands in the fields over both. @returns {{setup: Record<string, any>, faults: Fault[]}} */
    #collect() {
        const setup = structuredClone(this.#setup);
        /** @type {Fault[]} */
        const faults = [];
        /** @param {Field} one @param {string} text @param {string} unit @param {boolean} comma */
        const enter = (one, text, unit, comma) => {
            const said = read(text, one, unit, comma);
            if (said !== null && 'fault' in said) {
                faults.push({ pointer: one.pointer, message: this.#unread(said) });
            } else {
                put(setup, one.pointer, said === null || said.value === '' ? undefined : said.value);
            }
        };
        for (const { name, value } of this.attributes) {
            const one = field(name);
            if (one !== null && !this.#typed.has(name)) {
                enter(one, value, usualUnit(one, this.#system) || 'USD', false);
            } else if (one === null && meantForSetup(name) && name !== 'setup') {
                faults.push({ pointer: '', message: this.#words?.t('noSuchField', { name }) ?? name });
            }
        }
        for (const [name, { text, unit }] of this.#typed) {
            const one = field(name);
            if (one !== null && one.kind === 'flag' && text === '') {
                put(setup, one.pointer, undefined);
            } else if (one !== null) {
                enter(one, text, unit, this.#words?.decimalComma ?? false);
            }
        }
        return { setup, faults };
    }

    /** @param {import('./form.js').Unread} said */
    #unread({ fault, typed, one = 0, other = 0, units = [] }) {
        return this.#words?.t('fault.' + fault, { typed, one: this.#words.exactly(one, '1'), other: this.#words.exactly(other, '1'), units: units.join(', ') }) ?? fault;
    }

    /** Asks when nothing more happens for a while; what was about to be asked is dropped. @param {number} rest ms */
    #later(rest) {
        clearTimeout(this.#timer);
        if (this.#words !== undefined) {
            this.#timer = window.setTimeout(() => void this.#ask(), rest);
        }
    }

    /** The newest question alone is answered. */
    async #ask() {
        clearTimeout(this.#timer);
        this.#asking?.abort();
        const asking = (this.#asking = new AbortController());
        const { setup, faults } = this.#collect();
        const request = { calculation: this.#name, units: this.#system, setup };
        this.#part('link').setAttribute('href', this.#service + `#units=${request.units}&setup=${encodeURIComponent(JSON.stringify(setup))}`);
        if (faults.length > 0) {
            this.#refuse(faults);
            return;
        }
        const late = setTimeout(() => this.#say('asking'), 1000);
        /** @type {Response | null} */
        let response = null;
        /** @type {any} */
        let body = null;
        try {
            response = await fetch(`${this.#service}v1/${request.calculation}?units=${request.units}`, {
                method: 'POST', credentials: 'omit', body: JSON.stringify(setup), headers: { 'Content-Type': 'application/json', Accept: 'application/json' },
                signal: AbortSignal.any([asking.signal, AbortSignal.timeout(PATIENCE)]),
            });
            body = await response.json();
        } catch {
            response = null;
        } finally {
            clearTimeout(late);
        }
        if (asking.signal.aborted) {
            return;
        }
        if (response?.status === 200) {
            this.#failures = 0;
            this.#answer = body;
            this.#faults([]);
            this.#show();
            this.#fire('result', { request, answer: body });
        } else if (response !== null && (response.status === 400 || response.status === 422)) {
            this.#failures = 0;
            this.#refuse((body.errors ?? []).map((/** @type {any} */ error) => this.#refusal(error)));
            this.#fire('refusal', { request, problem: body });
        } else {
            this.#away(response);
            this.dispatchEvent(new CustomEvent('error', { detail: { request, status: response?.status ?? 0 } }));
        }
    }

    /** @param {string} type @param {any} detail */
    #fire(type, detail) {
        this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
    }

    #show() {
        const said = /** @type {Words} */ (this.#words);
        const told = this.#part('told');
        const open = new Set([...told.querySelectorAll('details[open]')].map((one) => one.getAttribute('part')));
        const shownNow = { words: said, leads: CALCULATIONS[this.#name], answer: this.#answer, field: (/** @type {string} */ pointer) => this.#way(pointer) };
        told.classList.remove('stale');
        told.replaceChildren(...answered(shownNow));
        told.querySelectorAll('details').forEach((one) => (one.open = open.has(one.getAttribute('part'))));
        this.#part('fallback').hidden = true;
        this.#say(null, summary(shownNow));
    }

    /** What leads to a field: a button where the customer sees it. @param {string} pointer @returns {Node} */
    #way(pointer) {
        const place = /** @type {Words} */ (this.#words).place(pointer);
        const one = fieldAt(pointer, this.#fields);
        if (one === undefined) {
            return document.createTextNode(place);
        }
        const button = el('button', { type: 'button', class: 'link' }, place);
        button.addEventListener('click', () => this.#part(one.name).focus());
        return button;
    }

    /** A refusal of the service in the customer's words, where its code says enough. @param {{pointer: string, code: string, message: string, actual?: any, limit?: any}} error @returns {Fault} */
    #refusal({ pointer, code, message, actual, limit }) {
        const said = /** @type {Words} */ (this.#words);
        if (code === 'missing') {
            return { pointer, message: said.t('needed'), needed: true };
        }
        /** @param {any} value */
        const size = (value) => Number(value?.value ?? value);
        if (code === 'out-of-range' && limit !== undefined && size(actual) !== size(limit)) {
            return { pointer, message: said.t(size(actual) < size(limit) ? 'atLeast' : 'atMost', { limit: said.leaf(limit), actual: said.leaf(actual) }) };
        }
        return { pointer, message, lang: said.language === 'en' ? undefined : 'en' };
    }

    /** No answer may pretend that a refused entry was not there. @param {Fault[]} faults */
    #refuse(faults) {
        this.#answer = null;
        this.#part('told').replaceChildren();
        this.#faults(faults);
        this.#say(faults.every(({ needed }) => needed) ? 'enterNeeded' : 'refused');
    }

    /** Each fault stands at its field; what the customer does not see stands in the list below. @param {Fault[]} faults */
    #faults(faults) {
        for (const { name } of this.#fields) {
            this.#part('fault-' + name).hidden = true;
            this.#part(name).removeAttribute('aria-invalid');
        }
        const others = faults.filter((fault) => {
            const one = fault.pointer === '' ? undefined : fieldAt(fault.pointer, this.#fields);
            if (one !== undefined) {
                const slot = this.#part('fault-' + one.name);
                slot.replaceChildren(el('span', { lang: fault.lang }, fault.message));
                slot.classList.toggle('needed', fault.needed === true);
                slot.hidden = false;
                if (!fault.needed) {
                    this.#part(one.name).setAttribute('aria-invalid', 'true');
                }
            }
            return one === undefined;
        });
        this.#part('faults').hidden = others.length === 0;
        this.#part('faults').replaceChildren(...others.map(({ pointer, message, lang }) =>
            el('li', {}, pointer === '' ? '' : /** @type {Words} */ (this.#words).place(pointer) + ': ', el('span', { lang }, message))));
    }

    /** Nothing is lost: what was typed stays, the last answer stays and is marked, and the service is asked again. @param {Response | null} response */
    #away(response) {
        this.#part('told').classList.add('stale');
        const again = Number(response?.headers.get('Retry-After')) || AGAIN[Math.min(this.#failures, AGAIN.length - 1)];
        this.#failures += 1;
        const button = el('button', { type: 'button' }, this.#words?.t('tryAgain') ?? '');
        button.addEventListener('click', () => this.#later(0));
        this.#say('away');
        this.#part('status').append(' ', button);
        this.#later(again * 1000);
    }

    /** @param {string | null} key of a text that everybody sees @param {string} [heard] else what is only heard */
    #say(key, heard = '') {
        const status = this.#part('status');
        status.classList.toggle('quiet', key === null);
        status.replaceChildren(key === null ? heard : this.#words?.t(key) ?? '');
    }
}

// @ts-check
import { el } from './dom.js';
import { count, get, kindOfNumber, PLAIN_NUMBER, set } from './draft.js';
import { readNumber } from './entry.js';
import { place, prose, segments, unitSign, words } from './text.js';

/** @typedef {import('./contract.js').Field} Field */
/** @typedef {import('./draft.js').Draft} Draft */
/** @typedef {{pointer: string, message: string, needed?: boolean}} Fault */

/** Units that an empty field offers first, by system; else the first of its list. */
const USUAL = {
    metric: ['mm', 'kg', 'km', 'km/h', 'degC', '%', 'kPa', 'Nm', 'kW', 'm2', 'N/mm'],
    us: ['in', 'lb', 'mi', 'mph', 'degF', '%', 'psi', 'lbf.ft', 'hp', 'ft2', 'lbf/in'],
};

/**
 * `<axlewright-entries>`: the form of a setup, made from the contract. An input's `name` is the pointer of what it sends.
 *
 * Properties: `fields` (set once), `units` (what empty fields offer), `draft` (what is typed; set to fill the form).
 * Methods: `showFaults(faults)`, `focusField(pointer)`.
 * Event: `entered`, after every change of the draft.
 */
export class Entries extends HTMLElement {
    /** @type {Field[]} */
    #fields = [];
    /** @type {Draft} */
    #draft = {};
    /** @type {'metric' | 'us'} */
    #units = 'metric';
    #connection = new AbortController();

    connectedCallback() {
        this.#connection = new AbortController();
        const { signal } = this.#connection;
        this.addEventListener('input', (event) => this.#entered(event.target), { signal });
        this.addEventListener('click', (event) => this.#pressed(event.target), { signal });
    }

    disconnectedCallback() {
        this.#connection.abort();
    }

    /** @param {Field[]} fields */
    set fields(fields) {
        this.#fields = fields;
        this.#build();
    }

    /** @param {'metric' | 'us'} units */
    set units(units) {
        this.#units = units;
        for (const select of this.querySelectorAll('select.unit')) {
            const value = this.#valueBeside(/** @type {HTMLSelectElement} */ (select));
            if (value.value.trim() === '') {
                this.#offer(/** @type {HTMLSelectElement} */ (select));
            }
        }
    }

    get draft() {
        return this.#draft;
    }

    /** @param {Draft} draft */
    set draft(draft) {
        this.#draft = draft;
        this.#build();
    }

    #build() {
        const roomy = matchMedia('(min-width: 64rem)').matches;
        this.replaceChildren(...this.#fields.map((field) => {
            if (field.kind !== 'group' && field.kind !== 'list' && field.kind !== 'money') {
                return this.#field(field, '');
            }
            const pointer = '/' + field.name;
            const inUse = count(this.#draft[field.name]) > 0;
            return el('details', { class: 'section', 'data-section': field.name, open: inUse && roomy },
                el('summary', {}, el('span', { class: 'name' }, words(field.name)), ' ', el('span', { class: 'tally' })),
                field.description ? el('p', { class: 'prose' }, prose(field.description)) : undefined,
                this.#fault(pointer),
                ...this.#inside(field, pointer));
        }));
        this.#tally();
    }

    /** @param {Field} field @param {string} pointer @returns {HTMLElement[]} */
    #inside(field, pointer) {
        if (field.kind === 'group') {
            return (field.fields ?? []).map((inner) => this.#field(inner, pointer));
        }
        return field.kind === 'list' ? [this.#list(field, pointer)] : [this.#money(field, pointer)];
    }

    /** @param {Field} field @param {string} parent pointer @returns {HTMLElement} */
    #field(field, parent) {
        const pointer = parent + '/' + field.name;
        if (field.kind === 'group' || field.kind === 'list' || field.kind === 'money') {
            return el('fieldset', { class: field.kind, 'data-group': pointer },
                el('legend', {}, words(field.name)),
                field.description ? el('p', { class: 'prose' }, prose(field.description)) : undefined,
                this.#fault(pointer),
                ...this.#inside(field, pointer));
        }
        const input = this.#input(field, pointer);
        const name = input instanceof HTMLElement && 'name' in input ? String(input.name) : pointer + '/value';
        const hint = prose(field.description) + (field.range && !/\d to \d/.test(field.description) ? ' ' + field.range + '.' : '');
        return el('div', { class: 'field', 'data-group': pointer },
            el('label', { for: name }, words(field.name)),
            input,
            el('p', { class: 'echo', id: 'echo:' + name, hidden: true }),
            this.#fault(pointer),
            hint ? el('p', { class: 'prose', id: 'hint:' + name }, hint) : undefined);
    }

    /** @param {Field} field @param {string} pointer */
    #input(field, pointer) {
        const text = get(this.#draft, segments(pointer));
        if (field.kind === 'quantity') {
            const name = pointer + '/value';
            const value = this.#text(name, text?.value ?? '', pointer, { inputmode: 'decimal' });
            const units = [...(field.units ?? []), ...(field.plain ? [PLAIN_NUMBER] : [])];
            const unit = el('select', { class: 'unit', name: pointer + '/unit', id: pointer + '/unit', 'aria-label': 'Unit of ' + place(pointer).toLowerCase() },
                ...units.map((token) => el('option', { value: token }, token === PLAIN_NUMBER ? 'plain number' : unitSign(token))));
            if (text?.unit) {
                unit.value = text.unit;
            } else {
                this.#offer(unit);
            }
            return el('div', { class: 'quantity' }, value, unit);
        }
        if (field.kind === 'choice' || field.kind === 'flag') {
            const choices = field.kind === 'flag' ? ['yes', 'no'] : (field.choices ?? []);
            const select = el('select', { name: pointer, id: pointer, 'aria-describedby': this.#describing(pointer, pointer) },
                el('option', { value: '' }, '–'), ...choices.map((choice) => el('option', { value: choice }, choice)));
            select.value = text ?? '';
            return select;
        }
        if (field.long) {
            const area = el('textarea', { name: pointer, id: pointer, rows: 3, 'aria-describedby': this.#describing(pointer, pointer) });
            area.value = text ?? '';
            return area;
        }
        const { reduction } = kindOfNumber(field);
        /** @type {Record<string, string>} */
        const extra = field.kind === 'number' ? { inputmode: reduction ? 'text' : 'decimal', 'data-number': reduction ? 'reduction' : 'plain' } : {};
        return this.#text(pointer, text ?? '', pointer, extra);
    }

    /** @param {string} name @param {string} value @param {string} pointer @param {Record<string, string>} extra */
    #text(name, value, pointer, extra) {
        const input = el('input', {
            type: 'text', name, id: name, autocomplete: 'off', spellcheck: 'false', 'aria-describedby': this.#describing(name, pointer), ...extra,
        });
        input.value = value;
        return input;
    }

    /** @param {string} name @param {string} pointer */
    #describing(name, pointer) {
        return ['fault:' + pointer, 'echo:' + name, 'hint:' + name].join(' ');
    }

    /** @param {Field} field @param {string} pointer */
    #money(field, pointer) {
        const text = get(this.#draft, segments(pointer)) ?? {};
        return el('div', { class: 'quantity' },
            el('label', { for: pointer + '/amount' }, 'Amount'), this.#text(pointer + '/amount', text.amount ?? '', pointer, { inputmode: 'decimal' }),
            el('label', { for: pointer + '/currency' }, 'Currency'), this.#text(pointer + '/currency', text.currency ?? '', pointer, { size: '4' }));
    }

    /** @param {Field} field @param {string} pointer */
    #list(field, pointer) {
        const item = /** @type {Field} */ (field.item);
        const entries = get(this.#draft, segments(pointer)) ?? [];
        const name = words(field.name).toLowerCase();
        return el('div', { class: 'entries', 'data-list': pointer },
            ...entries.map((/** @type {any} */ entry, /** @type {number} */ at) => {
                const here = pointer + '/' + at;
                const title = words(field.name) + ' ' + (at + 1);
                return el('details', { class: 'entry', 'data-group': here, open: count(entry) === 0 },
                    el('summary', {}, title + (entry.name ? ': ' + entry.name : '')),
                    this.#fault(here),
                    ...(item.kind === 'group' ? (item.fields ?? []).map((inner) => this.#field(inner, here)) : []),
                    el('button', { type: 'button', class: 'quiet', 'data-remove': here }, 'Remove ' + name + ' ' + (at + 1)));
            }),
            el('button', { type: 'button', class: 'quiet', 'data-add': pointer }, 'Add to ' + name));
    }

    /** @param {string} pointer */
    #fault(pointer) {
        return el('p', { class: 'fault', id: 'fault:' + pointer, 'data-fault': pointer, hidden: true });
    }

    /** @param {HTMLSelectElement} unit */
    #offer(unit) {
        const tokens = [...unit.options].map((option) => option.value);
        unit.value = tokens.includes(PLAIN_NUMBER) ? PLAIN_NUMBER : USUAL[this.#units].find((token) => tokens.includes(token)) ?? tokens[0];
    }

    /** @param {HTMLSelectElement} unit @returns {HTMLInputElement} */
    #valueBeside(unit) {
        return /** @type {HTMLInputElement} */ (unit.previousElementSibling);
    }

    /** @param {EventTarget | null} target */
    #entered(target) {
        if (!(target instanceof HTMLInputElement || target instanceof HTMLSelectElement || target instanceof HTMLTextAreaElement) || !target.name) {
            return;
        }
        set(this.#draft, segments(target.name), target.value);
        if (target instanceof HTMLInputElement && target.nextElementSibling instanceof HTMLSelectElement) {
            set(this.#draft, segments(target.nextElementSibling.name), target.nextElementSibling.value);
        }
        if (target instanceof HTMLInputElement) {
            this.#echo(target);
        }
        this.#tally();
        this.dispatchEvent(new CustomEvent('entered', { bubbles: true }));
    }

    /** What has been understood, where it is not plainly what was typed. @param {HTMLInputElement} input */
    #echo(input) {
        const slot = document.getElementById('echo:' + input.name);
        if (slot === null || input.inputMode === '' || input.value.trim() === '') {
            slot?.setAttribute('hidden', '');
            return;
        }
        const read = readNumber(input.value, { unitless: 'number' in input.dataset, reduction: input.dataset.number === 'reduction' });
        slot.textContent = 'echo' in read ? read.echo ?? '' : '';
        slot.hidden = slot.textContent === '';
    }

    /** @param {EventTarget | null} target */
    #pressed(target) {
        const button = target instanceof Element ? target.closest('button') : null;
        if (button?.dataset.add !== undefined) {
            this.#add(button.dataset.add);
            this.focusField(button.dataset.add + '/' + (get(this.#draft, segments(button.dataset.add)).length - 1));
        } else if (button?.dataset.remove !== undefined) {
            const path = segments(button.dataset.remove);
            get(this.#draft, path.slice(0, -1)).splice(Number(path.at(-1)), 1);
            const pointer = button.dataset.remove.replace(/\/\d+$/, '');
            this.#redraw(pointer);
            this.querySelector(`[data-add="${CSS.escape(pointer)}"]`)?.scrollIntoView({ block: 'nearest' });
            /** @type {HTMLElement | null} */ (this.querySelector(`[data-add="${CSS.escape(pointer)}"]`))?.focus();
        } else {
            return;
        }
        this.#tally();
        this.dispatchEvent(new CustomEvent('entered', { bubbles: true }));
    }

    /** @param {string} pointer of the list */
    #add(pointer) {
        const path = segments(pointer);
        const entries = get(this.#draft, path) ?? [];
        set(this.#draft, path, [...entries, {}]);
        this.#redraw(pointer);
    }

    /** @param {string} pointer of a list */
    #redraw(pointer) {
        const old = this.querySelector(`[data-list="${CSS.escape(pointer)}"]`);
        const field = this.#described(segments(pointer));
        if (old && field) {
            const opened = new Set([...old.querySelectorAll('details[open]')].map((one) => /** @type {HTMLElement} */ (one).dataset.group));
            const fresh = this.#list(field, pointer);
            old.replaceWith(fresh);
            fresh.querySelectorAll('details').forEach((one) => (one.open ||= opened.has(one.dataset.group)));
        }
    }

    /** The field at a path; an index steps into a list. @param {string[]} path @returns {Field | undefined} */
    #described(path) {
        /** @type {Field | undefined} */
        let at = { name: '', kind: 'group', description: '', fields: this.#fields };
        for (const name of path) {
            at = at?.kind === 'list' ? at.item : at?.fields?.find((field) => field.name === name);
        }
        return at;
    }

    /**
     * Shows faults where they belong: at the field of the pointer, else at the nearest group around it.
     * @param {Fault[]} faults
     */
    showFaults(faults) {
        for (const slot of this.querySelectorAll('[data-fault]')) {
            slot.replaceChildren();
            slot.setAttribute('hidden', '');
            slot.classList.remove('needed');
        }
        this.querySelectorAll('[aria-invalid]').forEach((input) => input.removeAttribute('aria-invalid'));
        for (const fault of faults) {
            const slot = this.#slot(fault.pointer);
            if (slot !== null) {
                slot.append(el('span', {}, fault.message));
                slot.hidden = false;
                slot.classList.toggle('needed', faults.filter((other) => this.#slot(other.pointer) === slot).every((other) => other.needed));
                if (!fault.needed) {
                    this.#inputAt(fault.pointer)?.setAttribute('aria-invalid', 'true');
                }
            }
        }
        this.#tally();
    }

    /** @param {string} pointer @returns {HTMLElement | null} */
    #slot(pointer) {
        for (let at = pointer; at !== ''; at = at.slice(0, at.lastIndexOf('/'))) {
            const slot = this.querySelector(`[data-fault="${CSS.escape(at)}"]`);
            if (slot) {
                return /** @type {HTMLElement} */ (slot);
            }
        }
        return null;
    }

    /** @param {string} pointer @returns {HTMLElement | null} */
    #inputAt(pointer) {
        for (let at = pointer; at !== ''; at = at.slice(0, at.lastIndexOf('/'))) {
            const exact = this.querySelector(`[name="${CSS.escape(at)}"], [name="${CSS.escape(at)}/value"]`);
            const inside = exact ?? this.querySelector(
                ['data-group', 'data-list', 'data-section'].map((kind) =>
                    `[${kind}="${CSS.escape(kind === 'data-section' ? at.slice(1) : at)}"] :is(input, select, textarea, button)`).join(', '));
            if (inside) {
                return /** @type {HTMLElement} */ (inside);
            }
        }
        return null;
    }

    /**
     * Opens what hides a field and puts the cursor there; an entry that a list does not have yet is added.
     * @param {string} pointer
     */
    focusField(pointer) {
        const path = segments(pointer);
        path.forEach((part, at) => {
            const list = '/' + path.slice(0, at).join('/');
            if (/^\d+$/.test(part) && this.querySelector(`[data-list="${CSS.escape(list)}"]`)) {
                const entries = get(this.#draft, path.slice(0, at)) ?? [];
                if (Number(part) >= entries.length) {
                    this.#add(list);
                }
            }
        });
        const input = this.#inputAt(pointer);
        for (let around = input?.closest('details'); around; around = around.parentElement?.closest('details')) {
            around.open = true;
        }
        input?.focus();
        input?.scrollIntoView({ block: 'center' });
    }

    #tally() {
        for (const section of this.querySelectorAll('details.section')) {
            const entered = count(this.#draft[/** @type {HTMLElement} */ (section).dataset.section ?? '']);
            const refused = section.querySelectorAll('.fault:not([hidden], .needed)').length;
            const needed = section.querySelectorAll('.fault.needed:not([hidden])').length;
            const parts = [entered && entered + ' entered', refused && refused + ' refused', needed && needed + ' needed'].filter(Boolean);
            /** @type {Element} */ (section.querySelector('.tally')).textContent = parts.join(', ');
        }
    }
}

// @ts-check
import { el, foreign } from './dom.js';
import { count, echo, get, PLAIN_NUMBER, set, typed, understood } from './draft.js';
import { foreignProse, number, place, prose, segments, unitSign, WORKING_DIGITS } from './text.js';
import { hint, label, labelWithin, t } from './words.js';

/** @typedef {import('./contract.js').Field} Field */
/** @typedef {import('./draft.js').Draft} Draft */
/** @typedef {{pointer: string, message: string, needed?: boolean, lang?: string}} Fault `lang` when it is not the page's */

/** Key under which the units that somebody chose are kept: a field's pointer, its indices as `*`, to the unit. */
const KEPT_UNITS = 'axlewright.units';

/** Units that an empty field offers first, by system; else the first of its list. */
const USUAL = {
    metric: ['mm', 'kg', 'km', 'km/h', 'degC', '%', 'kPa', 'Nm', 'kW', 'm2', 'N/mm'],
    us: ['in', 'lb', 'mi', 'mph', 'degF', '%', 'psi', 'lbf.ft', 'hp', 'ft2', 'lbf/in'],
};

/**
 * `<axlewright-entries>`: the form of a setup, made from the contract. An input's `name` is the pointer of what it sends. A section is
 * built when it is opened.
 *
 * Properties: `fields` (set once), `units` (what empty fields offer), `draft` (what is typed; set to fill the form).
 * Methods: `showFaults(faults)`, `focusField(pointer)`, `put(pointer, value)`.
 * Event: `entered`, after every change of the draft, with `{name}` of what was changed.
 */
export class Entries extends HTMLElement {
    /** @type {Field[]} */
    #fields = [];
    /** @type {Draft} */
    #draft = {};
    /** @type {Fault[]} */
    #faults = [];
    /** @type {'metric' | 'us'} */
    #units = 'metric';
    #remembered = remembered();
    #connection = new AbortController();

    connectedCallback() {
        this.#connection = new AbortController();
        const { signal } = this.#connection;
        this.addEventListener('input', (event) => this.#entered(event.target), { signal });
        this.addEventListener('click', (event) => this.#pressed(event.target), { signal });
        this.addEventListener('toggle', (event) => this.#toggled(event.target), { signal, capture: true });
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
        for (const select of /** @type {NodeListOf<HTMLSelectElement>} */ (this.querySelectorAll('select.unit'))) {
            if (this.#valueBeside(select).value.trim() === '') {
                this.#offer(select);
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
        this.#faults = [];
        const opened = new Set([...this.querySelectorAll('details.section[open]')].map((one) => /** @type {HTMLElement} */ (one).dataset.section));
        this.replaceChildren(...this.#fields.map((field) => {
            if (!isSection(field)) {
                return this.#field(field, '');
            }
            const inUse = count(this.#draft[field.name]) > 0;
            const section = el('details', { class: 'section', 'data-section': field.name, open: inUse && (roomy || opened.has(field.name)) },
                el('summary', {}, el('span', { class: 'name' }, label(field.name)), ' ', el('span', { class: 'tally' })));
            if (section.open) {
                this.#fill(section, field);
            }
            return section;
        }));
        this.#tally();
    }

    /** @param {HTMLDetailsElement} section @param {Field} field */
    #fill(section, field) {
        if (section.childElementCount > 1) {
            return;
        }
        const pointer = '/' + field.name;
        section.append(
            ...[describe(field, pointer), this.#fault(pointer), ...this.#inside(field, pointer)].filter((node) => node !== undefined));
        this.#showFaultsIn(section);
    }

    /** @param {EventTarget | null} target */
    #toggled(target) {
        if (target instanceof HTMLDetailsElement && target.open && target.dataset.section !== undefined) {
            this.#ensure(target.dataset.section);
        }
    }

    /** Builds a section that has not been opened yet. @param {string} name */
    #ensure(name) {
        const section = this.querySelector(`details[data-section="${CSS.escape(name)}"]`);
        const field = this.#fields.find((one) => one.name === name);
        if (section instanceof HTMLDetailsElement && field) {
            this.#fill(section, field);
        }
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
        if (isSection(field)) {
            return el('fieldset', { class: field.kind, 'data-group': pointer },
                el('legend', {}, label(field.name)),
                describe(field, pointer),
                this.#fault(pointer),
                ...this.#inside(field, pointer));
        }
        const name = field.kind === 'quantity' ? pointer + '/value' : pointer;
        return el('div', { class: 'field', 'data-group': pointer },
            el('label', { for: name }, label(field.name)),
            this.#input(field, pointer),
            el('p', { class: 'echo', id: 'echo:' + name, hidden: true }),
            this.#fault(pointer),
            describe(field, pointer, 'hint:' + name));
    }

    /** @param {Field} field @param {string} pointer */
    #input(field, pointer) {
        const text = get(this.#draft, segments(pointer));
        if (field.kind === 'quantity') {
            const value = this.#text(pointer + '/value', text?.value ?? '', pointer, {});
            const units = [...(field.units ?? []), ...(field.plain ? [PLAIN_NUMBER] : [])];
            const unit = el('select', { class: 'unit', name: pointer + '/unit', id: pointer + '/unit', 'aria-label': t('unitOf', { place: place(pointer) }) },
                ...units.map((token) => el('option', { value: token }, token === PLAIN_NUMBER ? t('plainNumber') : unitSign(token))));
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
                el('option', { value: '' }, '–'),
                ...choices.map((choice) => el('option', { value: choice }, field.kind === 'flag' ? t(choice) : label(choice))));
            select.value = text ?? '';
            return select;
        }
        if (field.long) {
            const area = el('textarea', { name: pointer, id: pointer, rows: 3, 'aria-describedby': this.#describing(pointer, pointer) });
            area.value = text ?? '';
            return area;
        }
        return this.#text(pointer, text ?? '', pointer, {});
    }

    /** Any text may hold a unit, so the keyboard of a phone must offer letters and marks. @param {string} name @param {string} value @param {string} pointer @param {Record<string, string>} extra */
    #text(name, value, pointer, extra) {
        const input = el('input', {
            type: 'text', name, id: name, autocomplete: 'off', autocapitalize: 'off', spellcheck: 'false', 'aria-describedby': this.#describing(name, pointer), ...extra,
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
            el('label', { for: pointer + '/amount' }, t('amount')), this.#text(pointer + '/amount', text.amount ?? '', pointer, {}),
            el('label', { for: pointer + '/currency' }, t('currency')), this.#text(pointer + '/currency', text.currency ?? '', pointer, { size: '4' }));
    }

    /** @param {Field} field @param {string} pointer */
    #list(field, pointer) {
        const item = /** @type {Field} */ (field.item);
        const entries = get(this.#draft, segments(pointer)) ?? [];
        const name = labelWithin(field.name);
        return el('div', { class: 'entries', 'data-list': pointer },
            ...entries.map((/** @type {any} */ entry, /** @type {number} */ at) => {
                const here = pointer + '/' + at;
                const title = label(field.name) + ' ' + (at + 1);
                const inside = item.kind === 'group'
                    ? (item.fields ?? []).map((inner) => this.#field(inner, here))
                    : [el('label', { for: here }, title), this.#input(item, here)];
                return el('details', { class: 'entry', 'data-group': here, open: count(entry) === 0 },
                    el('summary', {}, title + (entry.name ? ': ' + entry.name : '')),
                    this.#fault(here),
                    ...inside,
                    el('button', { type: 'button', class: 'quiet', 'data-remove': here }, t('removeFrom', { list: name, number: at + 1 })));
            }),
            el('button', { type: 'button', class: 'quiet', 'data-add': pointer }, t('addTo', { list: name })));
    }

    /** @param {string} pointer */
    #fault(pointer) {
        return el('p', { class: 'fault', id: 'fault:' + pointer, 'data-fault': pointer, hidden: true });
    }

    /** The unit chosen for this field before, else the usual one. @param {HTMLSelectElement} unit */
    #offer(unit) {
        const tokens = [...unit.options].map((option) => option.value);
        const before = this.#remembered[pattern(unit.name)];
        unit.value = tokens.includes(before) ? before
            : tokens.includes(PLAIN_NUMBER) ? PLAIN_NUMBER
                : USUAL[this.#units].find((token) => tokens.includes(token)) ?? tokens[0];
    }

    /** @param {HTMLSelectElement} unit */
    #remember(unit) {
        this.#remembered[pattern(unit.name)] = unit.value;
        try {
            localStorage.setItem(KEPT_UNITS, JSON.stringify(this.#remembered));
        } catch {
            // a browser that keeps nothing: the usual unit is offered next time
        }
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
        const unit = target instanceof HTMLInputElement && target.nextElementSibling instanceof HTMLSelectElement ? target.nextElementSibling : null;
        if (target instanceof HTMLInputElement) {
            this.#read(target, unit);
        }
        if (unit !== null) {
            set(this.#draft, segments(unit.name), unit.value);
        }
        if (target instanceof HTMLSelectElement && target.classList.contains('unit')) {
            this.#remember(target);
        }
        this.#tally();
        this.dispatchEvent(new CustomEvent('entered', { detail: { name: target.name }, bubbles: true }));
    }

    /** Shows how a text is read; the unit that it names is the unit of the field from now on. @param {HTMLInputElement} input @param {HTMLSelectElement | null} unit */
    #read(input, unit) {
        const pointer = unit === null ? input.name : input.name.replace(/\/value$/, '');
        const field = this.#described(segments(pointer));
        const slot = document.getElementById('echo:' + input.name);
        if (slot === null || field === undefined) {
            return;
        }
        const read = input.value.trim() === '' ? null : understood(input.value, field, pointer, unit?.value);
        if (unit !== null && read !== null && 'unit' in read && read.unit !== unit.value) {
            unit.value = read.unit;
            this.#remember(unit);
        }
        slot.textContent = read === null ? '' : echo(read);
        slot.hidden = slot.textContent === '';
    }

    /**
     * Enters a value of the contract at its pointer, as if it had been typed.
     * @param {string} pointer
     * @param {unknown} value
     */
    put(pointer, value) {
        const path = segments(pointer);
        const field = this.#described(path);
        if (field === undefined) {
            return;
        }
        path.forEach((part, at) => {
            const list = path.slice(0, at);
            if (/^\d+$/.test(part) && get(this.#draft, list) === undefined) {
                set(this.#draft, list, []);
            }
        });
        const text = typed(value, field);
        set(this.#draft, path, text);
        const section = this.querySelector(`details[data-section="${CSS.escape(path[0])}"]`);
        const input = this.#inputs(pointer);
        if (input === null) {
            section?.replaceChildren(...[...section.children].slice(0, 1));
            if (section instanceof HTMLDetailsElement && section.open) {
                this.#ensure(path[0]);
            }
        } else {
            input.value.value = typeof text === 'string' ? text : text.value;
            if (input.unit !== null) {
                input.unit.value = text.unit;
            }
        }
        this.#tally();
        this.dispatchEvent(new CustomEvent('entered', { detail: { name: pointer }, bubbles: true }));
    }

    /** @param {string} pointer @returns {{value: HTMLInputElement, unit: HTMLSelectElement | null} | null} of one plain field */
    #inputs(pointer) {
        const value = this.querySelector(`[name="${CSS.escape(pointer)}"], [name="${CSS.escape(pointer)}/value"]`);
        const unit = this.querySelector(`[name="${CSS.escape(pointer)}/unit"]`);
        return value === null ? null : { value: /** @type {HTMLInputElement} */ (value), unit: /** @type {HTMLSelectElement | null} */ (unit) };
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
        this.dispatchEvent(new CustomEvent('entered', { detail: { name: '' }, bubbles: true }));
    }

    /** @param {string} pointer of the list */
    #add(pointer) {
        const path = segments(pointer);
        const entries = get(this.#draft, path) ?? [];
        set(this.#draft, path, [...entries, this.#described(path)?.item?.kind === 'group' ? {} : '']);
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
        this.#faults = faults;
        for (const slot of this.querySelectorAll('[data-fault]')) {
            slot.replaceChildren();
            slot.setAttribute('hidden', '');
            slot.classList.remove('needed');
        }
        this.querySelectorAll('[aria-invalid]').forEach((input) => input.removeAttribute('aria-invalid'));
        this.#showFaultsIn(this);
        this.#tally();
    }

    /** @param {HTMLElement} around only what stands in it is new */
    #showFaultsIn(around) {
        for (const fault of this.#faults) {
            const slot = this.#slot(fault.pointer);
            if (slot !== null && around.contains(slot)) {
                slot.classList.toggle('needed', fault.needed === true && (slot.childElementCount === 0 || slot.classList.contains('needed')));
                slot.append(el('span', { lang: fault.lang }, fault.message));
                slot.hidden = false;
                if (!fault.needed) {
                    this.#inputAt(fault.pointer)?.setAttribute('aria-invalid', 'true');
                }
            }
        }
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
        this.#ensure(path[0] ?? '');
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
            const inside = this.#faults.filter((fault) => segments(fault.pointer)[0] === /** @type {HTMLElement} */ (section).dataset.section);
            const needed = inside.filter((fault) => fault.needed).length;
            const refused = inside.length - needed;
            const parts = [
                entered && t('tally.entered', { count: entered }), refused && t('tally.refused', { count: refused }), needed && t('tally.needed', { count: needed }),
            ].filter(Boolean);
            /** @type {Element} */ (section.querySelector('.tally')).textContent = parts.join(', ');
        }
    }
}

/** @param {Field} field */
function isSection(field) {
    return field.kind === 'group' || field.kind === 'list' || field.kind === 'money';
}

/** The end of a description that gives the range of a quantity. */
const RANGE = / ?From (?<least>-?[\d.e-]+)(?<leastUnit> \S+)? to (?<most>-?[\d.e-]+)(?<mostUnit> \S+)?\.$/;

/** What a field wants, in the words of the catalogue, else in those of the contract; and its range. @param {Field} field @param {string} pointer @param {string} [id] */
function describe(field, pointer, id) {
    const described = field.description.replace(RANGE, '');
    const own = hint(pattern(pointer));
    const range = rangeOf(field);
    /** @type {(Node | string)[]} */
    const said = described === '' ? [] : [own === undefined ? foreign(foreignProse(described)) : prose(own)];
    return said.length === 0 && range === '' ? undefined : el('p', { class: 'prose', id }, ...said, said.length > 0 && range !== '' ? ' ' : '', range);
}

/** @param {Field} field */
function rangeOf({ description, least, most }) {
    const printed = RANGE.exec(description)?.groups;
    if (printed !== undefined) {
        return t('range.units', { least: bound(printed.least, printed.leastUnit), most: bound(printed.most, printed.mostUnit) });
    }
    if ((least === undefined && most === undefined) || /\d to \d/.test(description)) {
        return '';
    }
    return t(least === undefined ? 'range.most' : most === undefined ? 'range.least' : 'range.both', { least: number(least ?? 0, WORKING_DIGITS), most: number(most ?? 0, WORKING_DIGITS) });
}

/** @param {string} value @param {string} [unit] */
function bound(value, unit) {
    return number(Number(value), WORKING_DIGITS) + (unit === undefined ? '' : ' ' + unitSign(unit.trim()));
}

/** The units that somebody chose. @returns {Record<string, string>} */
function remembered() {
    try {
        return JSON.parse(localStorage.getItem(KEPT_UNITS) ?? '{}');
    } catch {
        return {};
    }
}

/** The same field of every entry of a list. @param {string} name of a unit's input */
function pattern(name) {
    return name.replace(/\/\d+(?=\/|$)/g, '/*').replace(/\/unit$/, '');
}

// @ts-check
import { el } from './dom.js';
import { service } from './service.js';
import { t } from './words.js';

/** @typedef {{id: string, etag: string, name: string}} Opened */

/**
 * `<axlewright-setups>`: saves, lists, opens and deletes setups.
 *
 * Properties: `current` (a function that gives the setup as typed, or null when it can't be read), `opened` (what is being edited, or null),
 * `buildSheets` (whether to link to the sheet of what is opened).
 * Events: `opened` with `{setup, opened}`, `saved` with `{opened}`, `refused` with `{problem}`.
 */
export class Setups extends HTMLElement {
    /** @type {() => Record<string, unknown> | null} */
    current = () => null;
    /** @type {Opened | null} */
    #opened = null;
    #sheet = el('a', { class: 'sheet', target: '_blank', hidden: true }, t('buildSheet'));
    #sheets = false;
    #connection = new AbortController();
    #message = el('p', { class: 'message', role: 'status' });
    #choices = el('div', { class: 'choices' });
    #list = el('div', { class: 'list' });
    #state = el('p', { class: 'state' });
    #replace = el('button', { type: 'button', 'data-do': 'replace' }, t('save'));

    connectedCallback() {
        this.#connection = new AbortController();
        this.addEventListener('click', (event) => this.#pressed(event.target), { signal: this.#connection.signal });
        this.replaceChildren(
            this.#state,
            el('div', { class: 'choices' }, this.#replace, el('button', { type: 'button', 'data-do': 'create', class: 'quiet' }, t('saveAsNew')), this.#sheet),
            this.#message, this.#choices, this.#list);
        this.opened = this.#opened;
    }

    disconnectedCallback() {
        this.#connection.abort();
    }

    get opened() {
        return this.#opened;
    }

    /** @param {Opened | null} opened */
    set opened(opened) {
        this.#opened = opened;
        this.#state.textContent = opened ? t('editing', { name: opened.name }) : t('notSavedYet');
        this.#choices.replaceChildren();
        this.#offerSheet();
    }

    /** @param {boolean} offered whether the service gives a saved setup as a sheet for the shop */
    set buildSheets(offered) {
        this.#sheets = offered;
        this.#offerSheet();
    }

    #offerSheet() {
        this.#sheet.hidden = !this.#sheets || this.#opened === null;
        if (this.#opened !== null) {
            this.#sheet.href = service.buildSheet(this.#opened.id);
        }
    }

    /** Reads the list anew. */
    async refresh() {
        /** @type {any[]} */
        const items = [];
        /** @type {string | undefined} */
        let next;
        do {
            const reply = await service.setups(next);
            if (reply.status !== 200) {
                this.#list.replaceChildren(el('p', { class: 'open' }, away(reply)));
                return;
            }
            items.push(...reply.body.items);
            next = reply.body.next ?? undefined;
        } while (next !== undefined && items.length < 1000);
        this.#list.replaceChildren(items.length === 0
            ? el('p', { class: 'open' }, t('nothingSaved'))
            : el('ul', {}, ...items.map((item) => el('li', {},
                el('button', { type: 'button', class: 'link', 'data-do': 'open', 'data-id': item.id }, item.name),
                el('button', { type: 'button', class: 'quiet', 'data-do': 'remove', 'data-id': item.id, 'data-name': item.name, 'aria-label': t('deleteNamed', { name: item.name }) }, t('delete'))))));
    }

    /** @param {EventTarget | null} target */
    async #pressed(target) {
        const button = target instanceof Element ? /** @type {HTMLButtonElement | null} */ (target.closest('button[data-do]')) : null;
        if (button === null) {
            return;
        }
        const { do: what, id = '', name = '' } = button.dataset;
        button.disabled = true;
        try {
            await { replace: () => this.#save(), create: () => this.#create(), open: () => this.#open(id), remove: () => this.#remove(id, name) }[/** @type {'open'} */ (what)]?.();
        } finally {
            button.disabled = false;
        }
    }

    /** @param {string} text */
    #say(text) {
        this.#message.textContent = text;
    }

    #toSave() {
        const setup = this.current();
        if (setup === null) {
            this.#say(t('notSavedUnread'));
        }
        return setup;
    }

    async #save() {
        if (this.#opened === null) {
            await this.#create();
            return;
        }
        const setup = this.#toSave();
        if (setup === null) {
            return;
        }
        const { id, etag } = this.#opened;
        const reply = await service.replace(id, setup, etag);
        if (reply.status === 412) {
            this.#say(t('changedMeanwhile'));
            this.#choices.replaceChildren(
                el('button', { type: 'button', 'data-do': 'create' }, t('saveMine')),
                el('button', { type: 'button', class: 'quiet', 'data-do': 'open', 'data-id': id }, t('openTheirs')));
            return;
        }
        await this.#saved(reply, setup, id);
    }

    async #create() {
        const setup = this.#toSave();
        if (setup !== null) {
            const reply = await service.create(setup);
            await this.#saved(reply, setup, decodeURIComponent(reply.location?.split('/').at(-1) ?? ''));
        }
    }

    /** @param {import('./service.js').Reply} reply @param {Record<string, unknown>} setup @param {string} id */
    async #saved(reply, setup, id) {
        if (reply.status < 200 || reply.status > 299) {
            this.#say(t('notSaved') + ' ' + (reply.body?.errors ? t('notSavedRefused') : away(reply)));
            this.dispatchEvent(new CustomEvent('refused', { detail: { problem: reply.body }, bubbles: true }));
            return;
        }
        this.opened = { id, etag: reply.etag ?? '', name: String(setup.name) };
        this.#say(t('saved', { name: String(setup.name) }));
        this.dispatchEvent(new CustomEvent('saved', { detail: { opened: this.#opened }, bubbles: true }));
        await this.refresh();
    }

    /** @param {string} id */
    async #open(id) {
        const reply = await service.setup(id);
        if (reply.status !== 200) {
            this.#say(t('notOpened') + ' ' + away(reply));
            return;
        }
        this.opened = { id, etag: reply.etag ?? '', name: reply.body.name };
        this.#say(t('opened', { name: reply.body.name }));
        this.dispatchEvent(new CustomEvent('opened', { detail: { setup: reply.body, opened: this.#opened }, bubbles: true }));
    }

    /** @param {string} id @param {string} name */
    async #remove(id, name) {
        if (!window.confirm(t('deleteForGood', { name }))) {
            return;
        }
        const found = await service.setup(id);
        const reply = found.status === 200 ? await service.remove(id, found.etag ?? '') : found;
        this.#say(reply.status === 204 ? t('deleted', { name }) : t('notDeleted') + ' ' + away(reply));
        if (reply.status === 204 && this.#opened?.id === id) {
            this.opened = null;
            this.dispatchEvent(new CustomEvent('saved', { detail: { opened: null }, bubbles: true }));
        }
        await this.refresh();
    }
}

/** @param {import('./service.js').Reply} reply */
function away(reply) {
    if (reply.status === 0) {
        return t('notReachedKept');
    }
    if (reply.status === 503) {
        return t('storeAway');
    }
    return reply.body?.detail ?? reply.body?.title ?? t('serviceAnswered', { status: reply.status });
}

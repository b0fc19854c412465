// @ts-check
/**
 * The first view: texts, language, look, and the vehicles to begin with. The desk, where everything else is, is fetched behind it; what is
 * pressed meanwhile waits for it.
 */

import { el, foreign, part } from './dom.js';
import { service } from './service.js';
import { choose, kept, language, LANGUAGES, locale, t } from './words.js';

const LOOK = 'axlewright.look';

const status = part('#status', HTMLElement);

write();
listen();
const desk = showDemos().then(async (vehicles) => {
    performance.mark('usable'); // what is pressed from here on is answered, at the latest when the desk is there
    const module = await fetched(() => import('./desk.js'));
    await module.begin(vehicles);
    return module;
});

/** Tries until the service gives it. @template T @param {() => Promise<T>} part @returns {Promise<T>} */
async function fetched(part) {
    try {
        return await part();
    } catch {
        status.textContent = t('notReached');
        await new Promise((done) => setTimeout(done, 3000));
        return fetched(part);
    }
}

/** Puts the texts of the catalogue into the document. */
function write() {
    document.documentElement.lang = locale;
    const look = kept(LOOK) ?? 'auto';
    document.documentElement.dataset.look = look;
    document.querySelectorAll('[data-text]').forEach((node) => (node.textContent = t(/** @type {HTMLElement} */ (node).dataset.text ?? '')));
    part('#bar', HTMLElement).setAttribute('aria-label', t('workItOut'));
    part('#jump', HTMLElement).setAttribute('aria-label', t('onThisPage'));
    part('#language', HTMLSelectElement).append(...Object.entries(LANGUAGES).map(([tag, name]) => el('option', { value: tag, lang: tag, selected: tag === language }, name)));
    part('#look', HTMLSelectElement).value = look;
    status.textContent = t('loading');
}

function listen() {
    part('#language', HTMLSelectElement).addEventListener('change', (event) => choose(/** @type {HTMLSelectElement} */ (event.target).value));
    part('#look', HTMLSelectElement).addEventListener('change', (event) => {
        const look = /** @type {HTMLSelectElement} */ (event.target).value;
        document.documentElement.dataset.look = look;
        localStorage.setItem(LOOK, look);
    });
    part('#form', HTMLFormElement).addEventListener('submit', async (event) => {
        event.preventDefault();
        void (await desk).ask({ moveFocus: true });
    });
    part('#own', HTMLButtonElement).addEventListener('click', async () => (await desk).own());
}

/** A button a vehicle. @returns {Promise<any[]>} the vehicles, none when the service is not reached */
async function showDemos() {
    const reply = await service.demoSetups();
    const items = reply.status === 200 ? reply.body.items : [];
    part('#start-choices', HTMLElement).prepend(...items.map((/** @type {any} */ setup) => {
        const button = el('button', { type: 'button' }, foreign(setup.name));
        button.addEventListener('click', async () => (await desk).take(setup));
        return button;
    }));
    return items;
}

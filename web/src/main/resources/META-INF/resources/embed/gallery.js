// @ts-check
/** The gallery: beside each live element its fields as a table and its snippet to copy, both made from the element itself. */

import { CALCULATIONS } from './v1/contract.js';
import { field } from './v1/form.js';
import { SHOWS } from './v1/shows.js';
import { el } from './v1/answer.js';
import { words } from './v1/words.js';

const SCRIPT = new URL('v1/axlewright.js', import.meta.url).href;

const said = await words('en-GB');

/** @param {string} text @param {string} what */
function snippet(text, what) {
    const button = el('button', { type: 'button', class: 'quiet', 'aria-label': 'Copy ' + what }, 'Copy');
    const told = el('span', { role: 'status' });
    button.addEventListener('click', async () => {
        try {
            await navigator.clipboard.writeText(text);
            told.textContent = 'Copied.';
        } catch {
            told.textContent = 'This browser does not let the page copy; select the text and copy it.';
        }
    });
    return el('div', { class: 'snippet' }, el('pre', { tabindex: 0, role: 'region', 'aria-label': what }, el('code', {}, text)), button, ' ', told);
}

/** The element as its markup says it, before anything was typed. @param {Element} element */
function markup(element) {
    const attributes = [...element.attributes].map(({ name, value }) => `    ${name}="${value.replace(/&/g, '&amp;').replace(/"/g, '&quot;')}"`);
    return `<${element.localName}\n${attributes.join('\n')}>\n  ${element.innerHTML.trim()}\n</${element.localName}>`;
}

/** @param {Element} element @param {string} name of the calculation */
function table(element, name) {
    const shown = SHOWS[name];
    const names = [...shown, ...[...element.attributes].map((one) => one.name).filter((one) => !shown.includes(one) && field(one) !== null)];
    const rows = names.map((one) => {
        const { pointer, kind, units } = /** @type {import('./v1/form.js').Field} */ (field(one));
        const takes = units.length > 0 ? units.join(', ') : kind === 'Money' ? 'an amount and a currency' : kind.replace(/\|/g, ', ');
        return el('tr', {}, el('th', { scope: 'row' }, el('code', {}, one)), el('td', {}, said.place(pointer)), el('td', {}, takes), el('td', {}, shown.includes(one) ? 'yes' : 'no'));
    });
    return el('details', {}, el('summary', {}, 'Fields of ' + said.within(name)),
        el('div', { class: 'scroller', role: 'region', tabindex: 0, 'aria-label': 'Fields of ' + said.within(name) },
            el('table', {}, el('thead', {}, el('tr', {}, ...['Attribute', 'Field', 'Takes', 'Seen by the customer'].map((title) => el('th', { scope: 'col' }, title)))),
                el('tbody', {}, ...rows))));
}

document.getElementById('script')?.append(snippet(`<script type="module" src="${SCRIPT}"></script>`, 'the script'));

const elements = Object.keys(CALCULATIONS).flatMap((name) => {
    const element = document.querySelector('axlewright-' + name);
    element?.after(snippet(markup(element), 'the element ' + said.within(name)), table(element, name));
    return element ?? [];
});

const settings = /** @type {HTMLFormElement} */ (document.getElementById('settings'));
settings.hidden = false;
settings.addEventListener('change', () => {
    for (const [name, value] of new FormData(settings)) {
        elements.forEach((element) => element.setAttribute(name, String(value)));
    }
});
document.body.dataset.ready = '';

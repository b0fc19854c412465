// @ts-check
/**
 * All that the page says: one catalogue per language. What the service says is known by its `code` or name; a code that the catalogue
 * lacks is shown in the service's own words, marked as English.
 */

import english from './catalogue/en.js';

/** @typedef {Record<string, string>} Texts */
/** @typedef {{texts: Texts, names: Texts, questions: Texts}} Catalogue */
/** @typedef {{findings: Record<string, {message: string, action?: string}>, cautions: Texts, assumptions: Texts}} Said what the service says, by code */

export const LANGUAGES = /** @type {const} */ ({ en: 'English', es: 'Español' });
const KEPT = 'axlewright.language';

/** What the reader chose, else the first of the browser's languages that there is. @returns {keyof LANGUAGES} */
function chosen() {
    const wanted = [kept(KEPT), ...navigator.languages.map((tag) => tag.split('-')[0])];
    return /** @type {keyof LANGUAGES} */ (wanted.find((one) => one !== null && one in LANGUAGES) ?? 'en');
}

/** What this device keeps under a key. @param {string} key @returns {string | null} */
export function kept(key) {
    try {
        return localStorage.getItem(key);
    } catch {
        return null; // a browser that keeps nothing
    }
}

export const language = chosen();

/** The reader's own variety of the language, which decides how numbers are written. */
export const locale = navigator.languages.find((tag) => tag.split('-')[0] === language) ?? (language === 'en' ? 'en-GB' : language);

/** English comes along, so that most readers wait for nothing; another language is fetched. @type {Catalogue} */
const catalogue = language === 'en' ? english : (await import(`./catalogue/${language}.js`)).default;
/** Made when something is counted: the first view counts nothing. @type {Intl.PluralRules | undefined} */
let plurals;

/** Takes effect when the page is loaded again; entries are kept. @param {string} other */
export function choose(other) {
    localStorage.setItem(KEPT, other);
    location.reload();
}

/**
 * A text of the page; `{name}` stands for a value, and a text with `count` has the forms `key.one` and `key.other`.
 * @param {string} key
 * @param {Record<string, string | number>} [values]
 */
export function t(key, values = {}) {
    const form = typeof values.count === 'number' ? catalogue.texts[key + '.' + (plurals ??= new Intl.PluralRules(locale)).select(values.count)] ?? catalogue.texts[key + '.other'] : undefined;
    return (form ?? catalogue.texts[key] ?? key).replace(/\{(\w+)\}/g, (whole, name) => (name in values ? String(values[name]) : whole));
}

/**
 * A name of the contract as people read it: from the catalogue, else `cellsInSeries` taken apart.
 * @param {string} name
 */
export function label(name) {
    return catalogue.names[name] ?? apart(name);
}

/** `cellsInSeries` becomes `Cells in series`. @param {string} name */
function apart(name) {
    const spaced = name.replace(/-/g, ' ').replace(/([a-z0-9])([A-Z])/g, '$1 $2').toLowerCase();
    return spaced.charAt(0).toUpperCase() + spaced.slice(1);
}

/** Within a sentence. @param {string} name */
export function labelWithin(name) {
    return within(label(name));
}

/** Within a sentence that the service says in its own English. @param {string} name */
export function foreignLabelWithin(name) {
    return language === 'en' ? labelWithin(name) : within(apart(name));
}

/** @param {string} text */
function within(text) {
    return /^[A-Z][A-Z0-9]/.test(text) ? text : text.charAt(0).toLowerCase() + text.slice(1);
}

/**
 * The question behind a calculation, or null when the catalogue has none.
 * @param {string} name
 * @returns {string | null}
 */
export const asked = (name) => catalogue.questions[name] ?? null;

/** What the service says, in the reader's language; in English there is nothing to replace. @type {Said} */
let said = { findings: {}, cautions: {}, assumptions: {} };

/** Fetched with what shows answers. */
export async function fetchSaid() {
    if (language !== 'en') {
        said = (await import(`./catalogue/${language}-said.js`)).default;
    }
}

/** What a field wants, by its pointer with `*` for an index. @type {Texts} */
let hints = {};

/** Fetched before the form is built. */
export async function fetchHints() {
    if (language !== 'en') {
        hints = (await import(`./catalogue/${language}-hints.js`)).default;
    }
}

/** @param {string} pattern of the field's pointer @returns {string | undefined} */
export const hint = (pattern) => hints[pattern];

/**
 * What the catalogue says to the code of a finding, with its numbers; null when it has nothing to say.
 * @param {string} code
 * @param {Record<string, string>} values
 * @returns {{message: string, action?: string} | null}
 */
export function finding(code, values) {
    const found = said.findings[code];
    const needs = found?.message.match(/\{(\w+)\}/g)?.map((name) => name.slice(1, -1)) ?? [];
    if (found === undefined || needs.some((name) => !(name in values))) {
        return null;
    }
    return { ...found, message: found.message.replace(/\{(\w+)\}/g, (_, name) => values[name]) };
}

/** What the catalogue says to the code of a caution. @param {string} code @returns {string | undefined} */
export const caution = (code) => said.cautions[code];

/** Why something was assumed. @param {string} code @returns {string | undefined} */
export const reason = (code) => said.assumptions[code];

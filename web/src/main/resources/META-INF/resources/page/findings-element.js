// @ts-check
import { el, fieldLink, foreign } from './dom.js';
import { isQuantity, leaf, place } from './text.js';
import { caution, finding as own, label, t } from './words.js';

/**
 * `<axlewright-findings>`: what a good foreman would say, most serious on top, and the cautions of this work.
 *
 * Property `assessed`: the answer of the assessment.
 */
export class Findings extends HTMLElement {
    /** @param {{findings: any[], cautions: any[]} | null} assessed null before anything has been asked */
    set assessed(assessed) {
        if (assessed === null) {
            this.replaceChildren();
            return;
        }
        const { findings, cautions } = assessed;
        const serious = findings.filter((one) => one.level === 'danger' || one.level === 'warning');
        /** @param {string} level @param {string} title */
        const folded = (level, title) => {
            const some = findings.filter((one) => one.level === level);
            return some.length === 0 ? undefined : el('details', { class: level }, el('summary', {}, t(title, { count: some.length })),
                el('ol', { class: 'findings' }, ...some.map((one) => finding(one, true))));
        };
        this.replaceChildren(el('section', { 'aria-labelledby': 'findings-title' },
            el('h2', { id: 'findings-title' }, t('findings')),
            el('p', { class: 'tallies' }, tally(findings)),
            serious.length === 0 ? undefined : el('ol', { class: 'findings' }, ...serious.map((one) => finding(one, true))),
            folded('caution', 'level.caution'),
            folded('notice', 'level.notice'),
            cautions.length === 0 ? undefined : el('details', { class: 'usual' }, el('summary', {}, t('usualCautions')),
                el('ul', {}, ...cautions.map((one) => el('li', { 'data-code': one.code }, caution(one.code) ?? foreign(one.message)))))));
    }
}

/** How many of each signal word. @param {any[]} findings */
export function tally(findings) {
    const counted = ['danger', 'warning', 'caution', 'notice'].map((level) => [level, findings.filter((one) => one.level === level).length])
        .filter(([, count]) => count > 0);
    return counted.length === 0 ? t('noFindings') : counted.map(([level, count]) => t('level.' + level, { count: Number(count) })).join(', ');
}

/**
 * @param {any} one
 * @param {boolean} [linked] to the answers that made it
 */
export function finding(one, linked = false) {
    /** @type {Record<string, string>} */
    const values = {};
    for (const [name, value] of Object.entries({ actual: one.actual, limit: one.limit })) {
        if (isQuantity(value) || typeof value === 'number') {
            values[name] = leaf(value);
        }
    }
    if (one.pointer) {
        values.place = place(one.pointer);
    }
    if (one.part?.name) {
        values.part = one.part.name;
    }
    const said = own(one.code, values);
    const from = linked ? (one.calculations ?? []) : [];
    /** @type {(Node | string)[]} */
    const links = [];
    from.forEach((/** @type {string} */ name, /** @type {number} */ at) => links.push(at > 0 ? ', ' : '', el('a', { href: '#' + name }, label(name))));
    return el('li', { class: 'finding ' + one.level, 'data-code': one.code },
        el('strong', { class: 'signal' }, t('signal.' + one.level)), one.state ? el('span', { class: 'state' }, ' ' + t('state.' + one.state)) : undefined,
        el('p', { class: 'message' }, said?.message ?? foreign(one.message)),
        one.action ? el('p', { class: 'action' }, said?.action ?? foreign(one.action)) : undefined,
        one.pointer ? el('p', { class: 'where' }, t('at') + ' ', fieldLink(one.pointer, place(one.pointer))) : undefined,
        links.length > 0 ? el('p', { class: 'where' }, t('see') + ' ', ...links) : undefined,
        el('p', { class: 'source' }, foreign(one.source)));
}

// @ts-check
/** Builds nodes. Data enters as text nodes and attributes only, never as markup. */

import { language } from './words.js';

const SVG = 'http://www.w3.org/2000/svg';

/**
 * @typedef {Record<string, string | number | boolean | undefined>} Attributes `true` sets an empty attribute, `false` and `undefined` none
 * @typedef {Node | string | undefined} Child
 */

/**
 * @template {keyof HTMLElementTagNameMap} T
 * @param {T} tag
 * @param {Attributes} [attributes]
 * @param {...Child} children
 * @returns {HTMLElementTagNameMap[T]}
 */
export function el(tag, attributes = {}, ...children) {
    return /** @type {HTMLElementTagNameMap[T]} */ (filled(document.createElement(tag), attributes, children));
}

/**
 * @param {string} tag
 * @param {Attributes} [attributes]
 * @param {...Child} children
 * @returns {SVGElement}
 */
export function svg(tag, attributes = {}, ...children) {
    return /** @type {SVGElement} */ (filled(document.createElementNS(SVG, tag), attributes, children));
}

/**
 * @param {Element} node
 * @param {Attributes} attributes
 * @param {Child[]} children
 */
function filled(node, attributes, children) {
    for (const [name, value] of Object.entries(attributes)) {
        if (value !== false && value !== undefined) {
            node.setAttribute(name, value === true ? '' : String(value));
        }
    }
    node.append(...children.filter((child) => child !== undefined));
    return node;
}

/**
 * A link to the field at a pointer; the page opens what hides it.
 * @param {string} pointer
 * @param {string} text
 */
export function fieldLink(pointer, text) {
    return el('a', { href: '#' + encodeURI(pointer), 'data-field': pointer }, text);
}

/**
 * What the service says itself, marked as English where the page is not.
 * @param {string} text
 */
export function foreign(text) {
    return language === 'en' ? text : el('span', { lang: 'en' }, text);
}

/** A table wider than the paper scrolls by itself, by keyboard too. @param {string} label @param {HTMLTableElement} table */
export function scroller(label, table) {
    return el('div', { class: 'scroller', role: 'region', tabindex: 0, 'aria-label': label }, table);
}

/** What the document must hold. @template {Element} T @param {string} selector @param {new () => T} type @returns {T} */
export function part(selector, type) {
    const node = document.querySelector(selector);
    if (!(node instanceof type)) {
        throw new Error('The page lacks ' + selector);
    }
    return node;
}

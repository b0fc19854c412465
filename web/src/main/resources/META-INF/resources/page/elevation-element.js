// @ts-check
import { el, fieldLink, svg } from './dom.js';
import { rows, sheet } from './elevation.js';

/**
 * `<axlewright-elevation>`: the side elevation to scale, its title block and its table.
 *
 * Property `drawing`: `{vehicle, title, identification, units, engine}`; a `vehicle` of null asks for the wheelbase.
 */
export class Elevation extends HTMLElement {
    /** @typedef {{vehicle: import('./elevation.js').Vehicle | null, title: string, identification: string, units: 'metric' | 'us', engine: string}} Drawing */

    /** @type {Drawing | null} */
    #drawing = null;
    /** @type {ResizeObserver | undefined} */
    #size;
    #width = 0;

    connectedCallback() {
        this.#size = new ResizeObserver(() => {
            if (Math.abs(this.clientWidth - this.#width) > 1) {
                this.#show();
            }
        });
        this.#size.observe(this);
    }

    disconnectedCallback() {
        this.#size?.disconnect();
    }

    /** @param {Drawing} drawing */
    set drawing(drawing) {
        this.#drawing = drawing;
        this.#show();
    }

    #show() {
        this.#width = this.clientWidth;
        if (this.#drawing === null || this.#width === 0) {
            return;
        }
        const { vehicle, units } = this.#drawing;
        if (vehicle === null) {
            this.replaceChildren(el('p', { class: 'needed' }, 'The drawing begins with the ', fieldLink('/chassis/wheelbase', 'wheelbase'), '.'));
            return;
        }
        const paper = sheet(vehicle, this.#width, units);
        const picture = svg('svg', {
            viewBox: `0 0 ${paper.width} ${paper.height}`,
            role: 'img',
            'aria-label': 'Side elevation to scale; the table below says the same.',
            'data-per-metre': paper.perMetre,
        });
        picture.append(...paper.shapes.map(({ tag, attributes, text }) => svg(tag, attributes, text)));
        this.replaceChildren(picture, titleBlock(this.#drawing), table(this.#drawing));
    }
}

/** Data fields in the sense of ISO 7200. @param {Drawing} drawing */
function titleBlock({ title, identification, units, engine, vehicle }) {
    const cells = [
        ['Title', title],
        ['Document type', 'Side elevation' + (vehicle?.raised ? ', as raised' : '')],
        ['Identification', identification],
        ['Dimensions', units === 'us' ? 'inches' : 'millimetres'],
        ['Scale', 'bar in drawing'],
        ['Date', new Date().toISOString().slice(0, 10)],
        ['Creator', engine],
        ['Approved', 'none: no approval'],
    ];
    return el('dl', { class: 'title-block' }, ...cells.map(([name, value]) => el('div', {}, el('dt', {}, name), el('dd', {}, value))));
}

/** @param {Drawing} drawing */
function table({ vehicle, units }) {
    const body = rows(/** @type {import('./elevation.js').Vehicle} */ (vehicle), units).map((row) => el('tr', {},
        el('th', { scope: 'row' }, row.pointer ? fieldLink(row.pointer, row.label) : row.label),
        el('td', {}, row.mass), el('td', {}, row.x), el('td', {}, row.z)));
    return el('table', { class: 'parts' },
        el('caption', {}, 'The drawing as a table'),
        el('thead', {}, el('tr', {}, ...['Point', 'Mass or load', 'Behind front axle', 'Above ground'].map((name) => el('th', { scope: 'col' }, name)))),
        el('tbody', {}, ...body));
}

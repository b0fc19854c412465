// @ts-check
import { el, fieldLink, scroller, svg } from './dom.js';
import { dimension, elevation, extent, plan, rows } from './drawing.js';
import { t } from './words.js';

/** How far a key moves a part, m: a step, and a fine step with Shift. */
const STEP = { metric: [0.01, 0.001], us: [0.0127, 0.00254] };

/** What a drag is rounded to, m: 5 mm or a quarter inch. */
const SNAP = { metric: 0.005, us: 0.00635 };

/**
 * `<axlewright-drawing>`: side elevation and plan to scale, their title block and their table. Items and people can be moved by pointer
 * and by arrow keys.
 *
 * Property `drawing`: `{vehicle, title, identification, units, engine}`; a `vehicle` of null asks for the wheelbase.
 * Event `moved` with `{pointer, x, y, z, done}`: where a part goes, in metres as drawn; what is null stays. `done` at the end of a drag.
 */
export class DrawingElement extends HTMLElement {
    /** @typedef {{vehicle: import('./drawing.js').Vehicle | null, title: string, identification: string, units: 'metric' | 'us', engine: string}} Drawing */
    /** @typedef {{pointer: string, view: string, perMetre: number, from: {x: number, y: number, z: number}, at: {x: number, y: number}, moved: boolean}} Grip */

    /** @type {Drawing | null} */
    #drawing = null;
    /** @type {ResizeObserver | undefined} */
    #size;
    #width = 0;
    /** @type {import('./drawing.js').Extent | null} kept while something is dragged */
    #shown = null;
    /** @type {Grip | null} */
    #grip = null;
    #connection = new AbortController();

    connectedCallback() {
        this.#size = new ResizeObserver(() => {
            if (Math.abs(this.clientWidth - this.#width) > 1) {
                this.#show();
            }
        });
        this.#size.observe(this);
        this.#connection = new AbortController();
        const { signal } = this.#connection;
        this.addEventListener('pointerdown', (event) => this.#take(event), { signal });
        this.addEventListener('pointermove', (event) => this.#drag(event), { signal });
        this.addEventListener('pointerup', () => this.#drop(), { signal });
        this.addEventListener('pointercancel', () => this.#drop(), { signal });
        this.addEventListener('keydown', (event) => this.#key(event), { signal });
    }

    disconnectedCallback() {
        this.#size?.disconnect();
        this.#connection.abort();
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
            this.replaceChildren(el('p', { class: 'needed' }, t('drawingBegins') + ' ', fieldLink('/chassis/wheelbase', t('drawingBeginsWith')), '.'));
            return;
        }
        if (this.#grip === null || this.#shown === null) {
            this.#shown = extent(vehicle);
        }
        const focused = document.activeElement instanceof SVGElement && this.contains(document.activeElement)
            ? [document.activeElement.dataset.part, /** @type {SVGElement} */ (document.activeElement.closest('svg')).dataset.view] : null;
        const above = picture(elevation(vehicle, this.#shown, this.#width, units), 'elevation', vehicle, units);
        const below = picture(plan(vehicle, this.#shown, this.#width, units), 'plan', vehicle, units);
        const first = this.querySelector('svg');
        if (first === null || this.#grip === null) {
            this.replaceChildren(above, below, titleBlock(this.#drawing), table(this.#drawing));
        } else {
            first.replaceWith(above);
            this.querySelector('svg[data-view=plan]')?.replaceWith(below);
        }
        if (focused !== null) {
            /** @type {SVGElement | null} */ (this.querySelector(`svg[data-view="${focused[1]}"] [data-part="${CSS.escape(focused[0] ?? '')}"]`))?.focus();
        }
    }

    /** @param {Element} handle @returns {Grip | null} */
    #gripOf(handle) {
        const node = /** @type {SVGElement | null} */ (handle.closest('[data-part]'));
        const sheet = /** @type {SVGElement | null} */ (node?.closest('svg') ?? null);
        const part = this.#drawing?.vehicle?.parts.find((one) => one.pointer === node?.dataset.part);
        if (!node || !sheet || !part?.at) {
            return null;
        }
        return {
            pointer: part.pointer, view: sheet.dataset.view ?? '', perMetre: Number(sheet.dataset.perMetre), from: part.at, at: { x: 0, y: 0 }, moved: false,
        };
    }

    /** @param {PointerEvent} event */
    #take(event) {
        const grip = event.button === 0 && event.target instanceof Element ? this.#gripOf(event.target) : null;
        if (grip !== null) {
            event.preventDefault();
            /** @type {SVGElement | null} */ (/** @type {Element} */ (event.target).closest('[data-part]'))?.focus();
            this.#grip = { ...grip, at: { x: event.clientX, y: event.clientY } };
            this.setPointerCapture(event.pointerId);
        }
    }

    /** @param {PointerEvent} event */
    #drag(event) {
        if (this.#grip === null || this.#drawing === null) {
            return;
        }
        const { view, perMetre, from, at } = this.#grip;
        const snap = SNAP[this.#drawing.units];
        /** @param {number} m */
        const rounded = (m) => Math.round(m / snap) * snap;
        const up = -(event.clientY - at.y) / perMetre;
        this.#grip.moved = true;
        this.#tell({ x: rounded(from.x + (event.clientX - at.x) / perMetre), ...upward(view, rounded(sideways(view, from) + up)) }, this.#grip, false);
    }

    #drop() {
        const grip = this.#grip;
        this.#grip = null;
        if (grip?.moved) {
            this.#tell({ x: null, y: null, z: null }, grip, true);
        }
    }

    /** @param {KeyboardEvent} event */
    #key(event) {
        const direction = /** @type {Record<string, [number, number]>} */ ({ ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] })[event.key];
        const grip = direction && event.target instanceof Element ? this.#gripOf(event.target) : null;
        if (grip === null || this.#drawing === null) {
            return;
        }
        event.preventDefault();
        const step = STEP[this.#drawing.units][event.shiftKey ? 1 : 0];
        this.#tell(direction[0] !== 0
            ? { x: grip.from.x + direction[0] * step, y: null, z: null }
            : { x: null, ...upward(grip.view, sideways(grip.view, grip.from) + direction[1] * step) }, grip, true);
    }

    /** @param {{x: number | null, y: number | null, z: number | null}} to @param {Grip} grip @param {boolean} done */
    #tell(to, grip, done) {
        this.dispatchEvent(new CustomEvent('moved', { detail: { pointer: grip.pointer, ...to, done }, bubbles: true }));
    }
}

/** What is up on the paper: z in the elevation, y in the plan. @param {string} view @param {number} value */
const upward = (view, value) => (view === 'plan' ? { y: value, z: null } : { y: null, z: value });

/** @param {string} view @param {{y: number, z: number}} at */
const sideways = (view, at) => (view === 'plan' ? at.y : at.z);

/**
 * @param {import('./drawing.js').Paper} paper
 * @param {'elevation' | 'plan'} view
 * @param {import('./drawing.js').Vehicle} vehicle
 * @param {'metric' | 'us'} units
 */
function picture(paper, view, vehicle, units) {
    const node = svg('svg', {
        viewBox: `0 0 ${paper.width} ${paper.height}`, role: 'group', 'aria-label': t(view + 'Label'), 'data-view': view, 'data-per-metre': paper.perMetre,
    });
    node.append(...paper.shapes.map(shape));
    for (const handle of /** @type {NodeListOf<SVGElement>} */ (node.querySelectorAll('[data-part]'))) {
        const part = vehicle.parts.find((one) => one.pointer === handle.dataset.part);
        if (part?.at) {
            const { x, y, z } = part.at;
            const values = { x: dimension(x, units), y: dimension(Math.abs(y), units), z: dimension(z, units), side: t(y < 0 ? 'toLeft' : 'toRight') };
            const attributes = {
                tabindex: 0, role: 'slider', 'aria-label': part.number + ' ' + part.name, 'aria-valuenow': Math.round(x * 1000),
                'aria-valuemin': Math.min(-1000, Math.round(x * 1000)), 'aria-valuemax': Math.max(Math.round(vehicle.wheelbase * 1000) + 2000, Math.round(x * 1000)),
                'aria-valuetext': t(view === 'plan' ? 'placeInPlan' : 'placeInElevation', values),
            };
            Object.entries(attributes).forEach(([name, value]) => handle.setAttribute(name, String(value)));
            handle.append(svg('title', {}, part.number + ' ' + part.name));
        }
    }
    return node;
}

/** @param {import('./paper.js').Shape} one @returns {SVGElement} */
function shape({ tag, attributes, text, children }) {
    return svg(tag, attributes, text, ...(children ?? []).map(shape));
}

/** Data fields in the sense of ISO 7200. @param {Drawing} drawing */
function titleBlock({ title, identification, units, engine, vehicle }) {
    const cells = [
        ['blockTitle', title],
        ['blockType', t(vehicle?.raised ? 'blockTypeRaised' : 'blockTypePlain')],
        ['blockNumber', identification],
        ['blockSheet', '1/1'],
        ['blockUnits', t(units === 'us' ? 'inches' : 'millimetres')],
        ['blockScale', t('blockScaleBar')],
        ['blockProjection', t('firstAngle')],
        ['blockDate', new Date().toISOString().slice(0, 10)],
        ['blockOwner', t('notStated')],
        ['blockCreator', engine],
        ['blockApproved', t('blockNoApproval')],
        ['blockStatus', t('blockCalculated')],
    ];
    return el('dl', { class: 'title-block' }, ...cells.map(([name, value]) => el('div', {}, el('dt', {}, t(name)), el('dd', {}, value))));
}

/** @param {Drawing} drawing */
function table({ vehicle, units }) {
    const body = rows(/** @type {import('./drawing.js').Vehicle} */ (vehicle), units).map((row) => el('tr', {},
        el('th', { scope: 'row' }, row.pointer ? fieldLink(row.pointer, row.label) : row.label),
        el('td', {}, row.mass), el('td', {}, row.x), el('td', {}, row.y), el('td', {}, row.z)));
    return scroller(t('drawingTable'), el('table', { class: 'parts' },
        el('caption', {}, t('drawingTable')),
        el('thead', {}, el('tr', {}, ...['columnPoint', 'columnMass', 'columnX', 'columnY', 'columnZ'].map((name) => el('th', { scope: 'col' }, t(name))))),
        el('tbody', {}, ...body)));
}

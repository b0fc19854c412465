// @ts-check
/**
 * The side elevation, in two pure steps: what there is to draw in metres (`vehicle`), and where it goes on paper (`sheet`).
 * x rearward from the front axle, z up from the ground; the front is on the left.
 */

import { leaf, quantity } from './text.js';

/** @typedef {import('./text.js').Quantity} Quantity */
/** @typedef {{x: number, z: number}} Point metres */

/** Exact factors to metres (NIST SP 811); only lengths are drawn. @type {Record<string, number>} */
const METRES = { mm: 0.001, cm: 0.01, m: 1, in: 0.0254, ft: 0.3048 };

/** Wheel drawn, dashed, when nothing says its diameter, m. */
const UNKNOWN_WHEEL = 0.45;

/**
 * @typedef {object} Wheel
 * @property {number} diameter m
 * @property {boolean} known
 *
 * @typedef {object} Part
 * @property {number} number balloon, also in the table
 * @property {string} name
 * @property {string} pointer
 * @property {boolean} person
 * @property {boolean} removed
 * @property {string} mass
 * @property {Point | null} at null when its position is not known
 *
 * @typedef {object} AxleLoad
 * @property {string} load
 * @property {string} percent
 * @property {number} share 0 to 1
 *
 * @typedef {object} Vehicle
 * @property {number} wheelbase m
 * @property {Wheel} front
 * @property {Wheel} rear
 * @property {Point[]} underside from front overhang to rear overhang, as far as known
 * @property {Part[]} parts
 * @property {{x: number, z: number | null} | null} centre centre of gravity as driven
 * @property {{x: number, z: number | null} | null} emptyCentre without occupants
 * @property {AxleLoad | null} frontLoad
 * @property {AxleLoad | null} rearLoad
 * @property {boolean} raised whether points of the setup are drawn raised by the lift
 */

/** @param {any} length @returns {number | null} metres */
export function metres(length) {
    const factor = METRES[length?.unit];
    return factor === undefined || typeof length.value !== 'number' ? null : length.value * factor;
}

/**
 * Free diameter from `diameter` or from the two size markings that state it: width/aspect and rim, or diameter x width - rim.
 * @param {any} tyre
 * @returns {Wheel}
 */
export function wheel(tyre) {
    const measured = metres(tyre?.diameter);
    if (measured !== null) {
        return { diameter: measured, known: true };
    }
    const size = String(tyre?.size ?? '').toUpperCase().replace(/×/g, 'X').replace(/,/g, '.');
    const metric = /(\d{3}(?:\.\d+)?)\s*\/\s*(\d{2,3}(?:\.\d+)?)\s*(?:[SHVZ]?R|B|D|-)\s*(\d{1,2}(?:\.\d+)?)/.exec(size);
    if (metric) {
        const [width, aspect, rim] = metric.slice(1).map(Number);
        return { diameter: rim * METRES.in + 2 * width * METRES.mm * aspect / 100, known: true };
    }
    const inches = /(\d{2}(?:\.\d+)?)\s*[X*]\s*\d/.exec(size);
    return inches ? { diameter: Number(inches[1]) * METRES.in, known: true } : { diameter: UNKNOWN_WHEEL, known: false };
}

/**
 * @param {Record<string, any>} setup as sent
 * @param {any} balance result of centre-of-gravity, or null
 * @param {any} lift result of lift-geometry, or null
 * @returns {Vehicle | null} null without a wheelbase
 */
export function vehicle(setup, balance, lift) {
    const wheelbase = metres(setup.chassis?.wheelbase);
    if (wheelbase === null || !(wheelbase > 0)) {
        return null;
    }
    const frontRise = metres(lift?.frontRise) ?? 0;
    const rearRise = metres(lift?.rearRise) ?? 0;
    /** Points of a setup hold for the vehicle as found; the lift raises them, axle by axle. @param {number} x */
    const rise = (x) => frontRise + (rearRise - frontRise) * x / wheelbase;

    /** @param {any[] | undefined} list @param {string} section */
    const parts = (list, section) => (list ?? []).map((part, at) => {
        const x = metres(part.position?.x);
        const z = metres(part.position?.z);
        return {
            number: 0,
            name: part.name ?? (section === 'items' ? 'item ' : 'occupant ') + (at + 1),
            pointer: '/' + section + '/' + at,
            person: section === 'occupants',
            removed: part.removed === true,
            mass: part.mass ? leaf(part.mass) : '',
            at: x === null || z === null ? null : { x, z: z + rise(x) },
        };
    });
    const all = [...parts(setup.items, 'items'), ...parts(setup.occupants, 'occupants')];
    all.forEach((part, at) => (part.number = at + 1));

    const { frontOverhang, rearOverhang } = setup.chassis;
    const clearance = metres(setup.chassis.groundClearance);
    /** @type {Point[]} */
    const underside = [];
    /** @param {number | null} x @param {number | null} z */
    const touch = (x, z) => {
        if (x !== null && z !== null) {
            underside.push({ x, z: z + rise(x) });
        }
    };
    const ahead = metres(frontOverhang?.reach);
    const behind = metres(rearOverhang?.reach);
    touch(ahead === null ? null : -ahead, metres(frontOverhang?.height));
    touch(0.3 * wheelbase, clearance);
    touch(0.7 * wheelbase, clearance);
    touch(behind === null ? null : wheelbase + behind, metres(rearOverhang?.height));

    /** @param {any} result */
    const centre = (result) => {
        const x = metres(result?.position?.x);
        return x === null ? null : { x, z: metres(result.position.z) };
    };
    /** @param {any} axle @returns {AxleLoad | null} */
    const load = (axle) => (axle?.load ? { load: quantity(axle.load), percent: leaf(axle.share, 'share'), share: axle.share } : null);
    return {
        wheelbase,
        front: wheel(setup.tyres?.front),
        rear: wheel(setup.tyres?.rear),
        underside,
        parts: all,
        centre: centre(balance),
        emptyCentre: (setup.occupants ?? []).length > 0 ? centre(balance?.empty) : null,
        frontLoad: load(balance?.frontAxle),
        rearLoad: load(balance?.rearAxle),
        raised: frontRise !== 0 || rearRise !== 0,
    };
}

/**
 * A length as drawings give it: millimetres or inches.
 * @param {number} m
 * @param {'metric' | 'us'} units
 */
export function dimension(m, units) {
    return units === 'us' ? quantity({ value: m / METRES.in, unit: 'in' }) : quantity({ value: m / METRES.mm, unit: 'mm' });
}

/**
 * A shape on paper: an SVG element by name, its attributes and its text.
 * @typedef {{tag: string, attributes: Record<string, string | number>, text?: string}} Shape
 * @typedef {{width: number, height: number, perMetre: number, shapes: Shape[]}} Sheet
 */

const ARROW = { long: 10, half: 2.6 }; // filled, about 30 degrees (ISO 129-1)

/**
 * @param {Vehicle} vehicle
 * @param {number} width of the paper, px
 * @param {'metric' | 'us'} units
 * @returns {Sheet}
 */
export function sheet(vehicle, width, units) {
    const { wheelbase, front, rear, centre, emptyCentre, underside } = vehicle;
    const drawn = vehicle.parts.filter((part) => part.at !== null);
    const points = [
        ...underside,
        ...drawn.map((part) => /** @type {Point} */ (part.at)),
        ...[centre, emptyCentre].filter((point) => point !== null).map((point) => ({ x: point.x, z: point.z ?? 0 })),
    ];
    const left = Math.min(-front.diameter / 2, ...points.map((point) => point.x));
    const right = Math.max(wheelbase + rear.diameter / 2, ...points.map((point) => point.x));
    const top = Math.max(front.diameter, rear.diameter, ...points.map((point) => point.z));
    const margin = { left: 16, right: 58, top: 56 };
    const perMetre = Math.min((width - margin.left - margin.right) / (right - left), 460 / top);
    const slack = (width - margin.left - margin.right - (right - left) * perMetre) / 2;
    const ground = margin.top + top * perMetre;
    /** @param {number} x */
    const px = (x) => margin.left + slack + (x - left) * perMetre;
    /** @param {number} z */
    const pz = (z) => ground - z * perMetre;

    /** @type {Shape[]} */
    const shapes = [];
    /** @param {string} tag @param {string} kind class @param {Record<string, string | number>} attributes @param {string} [text] */
    const draw = (tag, kind, attributes, text) => shapes.push({ tag, attributes: { class: kind, ...attributes }, text });
    /** @param {string} kind @param {number} x1 @param {number} y1 @param {number} x2 @param {number} y2 */
    const line = (kind, x1, y1, x2, y2) => draw('line', kind, { x1, y1, x2, y2 });
    /** @param {string} kind @param {number} x @param {number} y @param {string} text @param {string} [anchor] */
    const write = (kind, x, y, text, anchor = 'middle') => draw('text', kind, { x, y, 'text-anchor': anchor }, text);
    /** @param {string} kind @param {number} x @param {number} y @param {number} dx @param {number} dy unit vector the head points along */
    const head = (kind, x, y, dx, dy) => {
        const [bx, by] = [x - dx * ARROW.long, y - dy * ARROW.long];
        const [wx, wy] = [-dy * ARROW.half, dx * ARROW.half];
        draw('path', kind, { d: `M${x} ${y}L${bx + wx} ${by + wy}L${bx - wx} ${by - wy}Z` });
    };

    // ground, with the hatching of a section
    line('ground', margin.left - 8, ground, width - margin.right + 20, ground);
    for (let x = margin.left; x < width - margin.right + 20; x += 14) {
        line('hatch', x, ground, x - 7, ground + 7);
    }

    if (underside.length > 1) {
        draw('polyline', 'underside', { points: underside.map((point) => px(point.x) + ',' + pz(point.z)).join(' ') });
    }

    for (const [name, x, tyre] of /** @type {[string, number, Wheel][]} */ ([['front', 0, front], ['rear', wheelbase, rear]])) {
        const radius = tyre.diameter / 2 * perMetre;
        const [cx, cy] = [px(x), ground - radius];
        draw('circle', tyre.known ? 'tyre' : 'tyre unknown', { cx, cy, r: radius, 'data-wheel': name });
        line('axis', cx - radius - 6, cy, cx + radius + 6, cy);
        line('axis', cx, cy - radius - 6, cx, ground + 134);
    }

    /** Boxes that texts and marks take up already. @type {{x: number, y: number, r: number}[]} */
    const taken = [];
    for (const point of [centre, emptyCentre]) {
        if (point !== null && point.z !== null) {
            taken.push({ x: px(point.x), y: pz(point.z), r: 12 });
        }
    }
    for (const part of drawn) {
        const at = /** @type {Point} */ (part.at);
        taken.push({ x: px(at.x), y: pz(at.z), r: 7 });
    }
    for (const part of drawn) {
        const at = /** @type {Point} */ (part.at);
        const [x, y] = [px(at.x), pz(at.z)];
        const kind = 'part' + (part.removed ? ' removed' : '');
        if (part.person) {
            draw('circle', kind, { cx: x, cy: y, r: 6 });
        } else {
            draw('rect', kind, { x: x - 6, y: y - 6, width: 12, height: 12 });
        }
        line(kind, x - 3, y, x + 3, y);
        line(kind, x, y - 3, x, y + 3);
        const balloon = freePlace(x, y, taken, width, ground);
        const far = Math.hypot(balloon.x - x, balloon.y - y);
        const [ux, uy] = [(balloon.x - x) / far, (balloon.y - y) / far];
        line('leader', x + ux * 7, y + uy * 7, balloon.x - ux * 9, balloon.y - uy * 9);
        draw('circle', 'balloon', { cx: balloon.x, cy: balloon.y, r: 9 });
        write('number', balloon.x, balloon.y + 4, String(part.number));
        taken.push({ ...balloon, r: 10 });
    }

    // centre of gravity, quartered disc
    for (const [point, kind, r] of /** @type {[typeof centre, string, number][]} */ ([[emptyCentre, 'empty', 6], [centre, 'driven', 9]])) {
        if (point === null) {
            continue;
        }
        const x = px(point.x);
        if (point.z === null) {
            if (kind === 'driven') {
                line('centre-line', x, margin.top - 20, x, ground);
            }
            continue;
        }
        const y = pz(point.z);
        draw('circle', 'centre ' + kind, { cx: x, cy: y, r, 'data-centre': kind });
        draw('path', 'centre-quarter ' + kind, {
            d: `M${x} ${y}V${y - r}A${r} ${r} 0 0 1 ${x + r} ${y}ZM${x} ${y}V${y + r}A${r} ${r} 0 0 1 ${x - r} ${y}Z`,
        });
    }

    // what the ground carries, pointing at the tyre
    const loads = /** @type {[number, AxleLoad | null][]} */ ([[0, vehicle.frontLoad], [wheelbase, vehicle.rearLoad]]);
    for (const [x, load] of loads) {
        if (load !== null) {
            const tail = ground + 12 + 34 * Math.min(1, Math.max(0.35, load.share));
            line('load', px(x), tail, px(x), ground + 9);
            head('load head', px(x), ground + 2, 0, -1);
            write('load value', px(x), ground + 60, load.load);
            write('load part-of', px(x), ground + 75, load.percent);
        }
    }

    /** A horizontal dimension; arrows outside when there is no room between. @param {number} a @param {number} b @param {number} y @param {string} kind */
    const across = (a, b, y, kind) => {
        const [from, to] = [px(Math.min(a, b)), px(Math.max(a, b))];
        const inside = to - from > 3 * ARROW.long;
        line('dimension', inside ? from : from - 18, y, inside ? to : to + 18, y);
        head('dimension head', from, y, inside ? -1 : 1, 0);
        head('dimension head', to, y, inside ? 1 : -1, 0);
        const text = dimension(b - a, units);
        const fits = to - from > text.length * 7.4;
        write('dimension value ' + kind, fits ? (from + to) / 2 : to + 22, fits ? y - 5 : y + 4, text, fits ? 'middle' : 'start');
    };
    if (centre !== null) {
        const x = px(centre.x);
        line('projection', x, centre.z === null ? ground : pz(centre.z) + 9, x, ground + 108);
        across(0, centre.x, ground + 104, 'of-centre');
    }
    across(0, wheelbase, ground + 130, 'of-wheelbase');

    if (centre !== null && centre.z !== null) {
        const x = width - 22;
        const y = pz(centre.z);
        line('projection', px(centre.x) + 9, y, x + 4, y);
        line('dimension', x, y, x, ground);
        const inside = ground - y > 3 * ARROW.long;
        head('dimension head', x, y, 0, inside ? -1 : 1);
        head('dimension head', x, ground, 0, inside ? 1 : -1);
        const middle = (y + ground) / 2;
        draw('text', 'dimension value of-height', {
            x: x - 5, y: middle, 'text-anchor': 'middle', transform: `rotate(-90 ${x - 5} ${middle})`,
        }, dimension(centre.z, units));
    }

    // scale bar and direction of travel
    const bar = units === 'us' ? 24 * METRES.in : 0.5;
    const base = ground + 160;
    line('scale', margin.left, base, margin.left + bar * perMetre, base);
    line('scale', margin.left, base - 4, margin.left, base + 4);
    line('scale', margin.left + bar * perMetre, base - 4, margin.left + bar * perMetre, base + 4);
    write('note', margin.left + bar * perMetre + 6, base + 4, dimension(bar, units), 'start');
    line('travel', margin.left + 34, 20, margin.left + 10, 20);
    head('travel head', margin.left, 20, -1, 0);
    write('note', margin.left + 40, 24, 'front', 'start');
    return { width, height: base + 14, perMetre, shapes };
}

/**
 * A place for a balloon that covers nothing, near its part.
 * @param {number} x
 * @param {number} y
 * @param {{x: number, y: number, r: number}[]} taken
 * @param {number} width
 * @param {number} ground
 */
function freePlace(x, y, taken, width, ground) {
    let best = { x: x + 20, y: y - 20 };
    let least = Infinity;
    for (const distance of [26, 40, 56]) {
        for (const angle of [-45, -90, -135, 0, 180, -70, -110, 45, 135]) {
            const place = {
                x: x + distance * Math.cos(angle * Math.PI / 180),
                y: y + distance * Math.sin(angle * Math.PI / 180),
            };
            const covered = taken.filter((other) => Math.hypot(other.x - place.x, other.y - place.y) < other.r + 11).length;
            const off = place.x < 12 || place.x > width - 48 || place.y < 14 || place.y > ground - 12 ? 5 : 0;
            if (covered + off < least) {
                least = covered + off;
                best = place;
            }
            if (least === 0) {
                return best;
            }
        }
    }
    return best;
}

/**
 * The same as a table: rows of what, number, value.
 * @param {Vehicle} vehicle
 * @param {'metric' | 'us'} units
 * @returns {{label: string, mass: string, x: string, z: string, pointer?: string}[]}
 */
export function rows(vehicle, units) {
    /** @param {number} m */
    const length = (m) => dimension(m, units);
    /** @param {Wheel} tyre */
    const across = (tyre) => length(tyre.diameter) + (tyre.known ? ' across' : ' across, not given: drawn dashed');
    /** @param {AxleLoad | null} axle */
    const loaded = (axle) => (axle === null ? '' : axle.load + ' (' + axle.percent + ')');
    const table = [
        { label: 'Front axle, tyre ' + across(vehicle.front), mass: loaded(vehicle.frontLoad), x: length(0), z: '' },
        { label: 'Rear axle, tyre ' + across(vehicle.rear), mass: loaded(vehicle.rearLoad), x: length(vehicle.wheelbase), z: '' },
    ];
    for (const [point, name] of /** @type {[Vehicle['centre'], string][]} */ ([
        [vehicle.centre, 'Centre of gravity, as driven'], [vehicle.emptyCentre, 'Centre of gravity, nobody aboard'],
    ])) {
        if (point !== null) {
            table.push({ label: name, mass: '', x: length(point.x), z: point.z === null ? 'not known' : length(point.z) });
        }
    }
    return [
        ...table,
        ...vehicle.parts.map((part) => ({
            label: part.number + '  ' + part.name + (part.removed ? ' (taken off)' : ''),
            mass: part.mass,
            x: part.at === null ? 'not drawn' : length(part.at.x),
            z: part.at === null ? 'position missing' : length(part.at.z),
            pointer: part.at === null ? part.pointer + '/position' : undefined,
        })),
    ];
}

// @ts-check
/**
 * The sheet in two pure steps: what there is to draw, in metres (`vehicle`), and where it goes on paper (`elevation`, `plan`).
 * x rearward from the front axle, y to the right, z up from the ground. The front is on the left of the paper; the plan stands below the
 * elevation, so that the right-hand side of the vehicle is up (first-angle projection, ISO 5456-2).
 */

import { freePlace, Pen } from './paper.js';
import { leaf, quantity } from './text.js';
import { label, t } from './words.js';

/** @typedef {import('./text.js').Quantity} Quantity */
/** @typedef {import('./paper.js').Shape} Shape */
/** @typedef {'metric' | 'us'} Units */
/** @typedef {{x: number, z: number}} Point metres */
/** @typedef {{x: number, y: number | null, z: number | null}} Centre metres */

/** Exact factors to metres (NIST SP 811); only lengths are drawn. @type {Record<string, number>} */
const METRES = { mm: 0.001, cm: 0.01, m: 1, in: 0.0254, ft: 0.3048 };

/** Drawn, dashed, when nothing says otherwise, m. */
const UNKNOWN = { diameter: 0.45, width: 0.2, track: 0.9 };

/**
 * @typedef {object} Wheel
 * @property {number} diameter m
 * @property {boolean} known
 * @property {number} width m
 * @property {boolean} widthKnown
 *
 * @typedef {object} Part
 * @property {number} number balloon, also in the table
 * @property {string} name
 * @property {string} pointer
 * @property {boolean} person
 * @property {boolean} removed
 * @property {string} mass
 * @property {{x: number, y: number, z: number} | null} at null when its position is not known
 * @property {{length: number, width: number, height: number} | null} size outside dimensions
 *
 * @typedef {object} AxleLoad
 * @property {string} load
 * @property {string} percent
 * @property {number} share 0 to 1
 *
 * @typedef {{degrees: number, text: string} | null} Angle
 *
 * @typedef {object} Vehicle
 * @property {number} wheelbase m
 * @property {Wheel} front
 * @property {Wheel} rear
 * @property {{front: number, rear: number, frontKnown: boolean, rearKnown: boolean}} track m; 0 for a single wheel on the centre plane
 * @property {{left: number, right: number, width: number} | null} body outline seen from above: x of its ends, m
 * @property {{y: number, width: number}[]} rails
 * @property {Point[]} underside from front overhang to rear overhang, as far as known
 * @property {{approach: Angle, breakover: Angle, departure: Angle}} angles as the service gives them, after
 * @property {Part[]} parts
 * @property {Centre | null} centre centre of gravity as driven
 * @property {Centre | null} emptyCentre without occupants
 * @property {Centre | null} weighedCentre before: as weighed, without parts, people and lift
 * @property {AxleLoad | null} frontLoad
 * @property {AxleLoad | null} rearLoad
 * @property {boolean} raised whether points of the setup are drawn raised by the lift
 * @property {(x: number) => number} rise how far the lift raises a point of the setup, m
 *
 * @typedef {{balance: any, weighed: any, lift: any}} Answers results of centre-of-gravity (as entered, and as weighed) and lift-geometry, or null
 */

/** @param {any} length @returns {number | null} metres */
export function metres(length) {
    const factor = METRES[length?.unit];
    return factor === undefined || typeof length.value !== 'number' ? null : length.value * factor;
}

/** A length in a unit of the contract. @param {number} m @param {string} unit */
export function inUnit(m, unit) {
    return m / (METRES[unit] ?? 1);
}

/**
 * Free diameter and width from `diameter` or from the two size markings that state them: width/aspect and rim, or diameter x width - rim.
 * @param {any} tyre
 * @returns {Wheel}
 */
export function wheel(tyre) {
    const measured = metres(tyre?.diameter);
    const size = String(tyre?.size ?? '').toUpperCase().replace(/×/g, 'X').replace(/,/g, '.');
    const metric = /(\d{3}(?:\.\d+)?)\s*\/\s*(\d{2,3}(?:\.\d+)?)\s*(?:[SHVZ]?R|B|D|-)\s*(\d{1,2}(?:\.\d+)?)/.exec(size);
    const inches = metric ? null : /(\d{2}(?:\.\d+)?)\s*[X*]\s*(\d{1,2}(?:\.\d+)?)/.exec(size);
    const [first, second, rim] = (metric ?? inches ?? []).slice(1).map(Number);
    const width = metric ? first * METRES.mm : inches ? second * METRES.in : null;
    const marked = metric ? rim * METRES.in + 2 * first * METRES.mm * second / 100 : inches ? first * METRES.in : null;
    const diameter = measured ?? marked;
    return { diameter: diameter ?? UNKNOWN.diameter, known: diameter !== null, width: width ?? UNKNOWN.width, widthKnown: width !== null };
}

/**
 * @param {Record<string, any>} setup as sent
 * @param {Answers} answers
 * @returns {Vehicle | null} null without a wheelbase
 */
export function vehicle(setup, { balance, weighed, lift }) {
    const chassis = setup.chassis ?? {};
    const wheelbase = metres(chassis.wheelbase);
    if (wheelbase === null || !(wheelbase > 0)) {
        return null;
    }
    const frontRise = metres(lift?.frontRise) ?? 0;
    const rearRise = metres(lift?.rearRise) ?? 0;
    /** Points of a setup hold for the vehicle as found; the lift raises them, axle by axle. @param {number} x */
    const rise = (x) => frontRise + (rearRise - frontRise) * x / wheelbase;

    /** @param {any[] | undefined} list @param {string} section @returns {Part[]} */
    const parts = (list, section) => (list ?? []).map((part, at) => {
        const x = metres(part.position?.x);
        const z = metres(part.position?.z);
        const [length, width, height] = [part.size?.length, part.size?.width, part.size?.height].map(metres);
        return {
            number: 0,
            name: part.name ?? t(section === 'items' ? 'itemNumber' : 'occupantNumber', { number: at + 1 }),
            pointer: '/' + section + '/' + at,
            person: section === 'occupants',
            removed: part.removed === true,
            mass: part.mass ? leaf(part.mass) : '',
            at: x === null || z === null ? null : { x, y: metres(part.position?.y) ?? 0, z: z + rise(x) },
            size: length === null || width === null || height === null ? null : { length, width, height },
        };
    });
    const all = [...parts(setup.items, 'items'), ...parts(setup.occupants, 'occupants')];
    all.forEach((part, at) => (part.number = at + 1));

    const clearance = metres(chassis.groundClearance);
    const ahead = metres(chassis.frontOverhang?.reach);
    const behind = metres(chassis.rearOverhang?.reach);
    /** @type {Point[]} */
    const underside = [];
    /** @param {number | null} x @param {number | null} z */
    const touch = (x, z) => {
        if (x !== null && z !== null) {
            underside.push({ x, z: z + rise(x) });
        }
    };
    touch(ahead === null ? null : -ahead, metres(chassis.frontOverhang?.height));
    touch(0.3 * wheelbase, clearance);
    touch(0.7 * wheelbase, clearance);
    touch(behind === null ? null : wheelbase + behind, metres(chassis.rearOverhang?.height));

    /** @param {any} result @returns {Centre | null} */
    const centre = (result) => {
        const x = metres(result?.position?.x);
        return x === null ? null : { x, y: metres(result.position.y), z: metres(result.position.z) };
    };
    /** @param {any} axle @returns {AxleLoad | null} */
    const load = (axle) => (axle?.load ? { load: quantity(axle.load), percent: leaf(axle.share, 'share'), share: axle.share } : null);
    /** @param {any} angle @returns {Angle} */
    const angle = (angle) => (angle?.after?.unit === 'deg' ? { degrees: angle.after.value, text: quantity(angle.after, 3) } : null);
    const width = metres(chassis.width);
    const length = metres(chassis.length);
    const left = ahead === null ? null : -ahead;
    const right = behind !== null ? wheelbase + behind : left !== null && length !== null ? left + length : null;
    const [frontTrack, rearTrack] = [metres(chassis.frontTrack), metres(chassis.rearTrack)];
    return {
        wheelbase,
        front: wheel(setup.tyres?.front),
        rear: wheel(setup.tyres?.rear),
        track: {
            front: chassis.wheelPlan === 'one-in-front' ? 0 : frontTrack ?? rearTrack ?? UNKNOWN.track,
            rear: chassis.wheelPlan === 'one-behind' ? 0 : rearTrack ?? frontTrack ?? UNKNOWN.track,
            frontKnown: frontTrack !== null,
            rearKnown: rearTrack !== null,
        },
        body: width === null || left === null || right === null ? null : { left, right, width },
        rails: (setup.frame?.rails ?? []).flatMap((/** @type {any} */ rail) => {
            const y = metres(rail.y);
            return y === null ? [] : [{ y, width: metres(rail.section?.width) ?? 0.04 }];
        }),
        underside,
        angles: { approach: angle(lift?.approachAngle), breakover: angle(lift?.breakoverAngle), departure: angle(lift?.departureAngle) },
        parts: all,
        centre: centre(balance),
        emptyCentre: (setup.occupants ?? []).length > 0 ? centre(balance?.empty) : null,
        weighedCentre: centre(weighed),
        frontLoad: load(balance?.frontAxle),
        rearLoad: load(balance?.rearAxle),
        raised: frontRise !== 0 || rearRise !== 0,
        rise,
    };
}

/**
 * A length as drawings give it: millimetres or inches.
 * @param {number} m
 * @param {Units} units
 */
export function dimension(m, units) {
    const [unit, steps] = units === 'us' ? ['in', 100] : ['mm', 10]; // nobody measures a vehicle finer
    return quantity({ value: Math.round(m / METRES[unit] * steps) / steps, unit });
}

/**
 * Which part of the world is on the paper, m. It stays while something is dragged.
 * @typedef {{left: number, right: number, top: number, half: number}} Extent
 * @typedef {{width: number, height: number, perMetre: number, shapes: Shape[]}} Paper
 */

const MARGIN = { left: 40, right: 58, top: 56 };

/** @param {Vehicle} vehicle @returns {Extent} */
export function extent(vehicle) {
    const { wheelbase, front, rear, underside, body, track } = vehicle;
    const parts = vehicle.parts.flatMap((part) => (part.at === null ? [] : [{ ...part.at, size: part.size }]));
    const centres = [vehicle.centre, vehicle.emptyCentre, vehicle.weighedCentre].filter((point) => point !== null);
    return {
        left: Math.min(-front.diameter / 2, ...underside.map((point) => point.x), ...parts.map((part) => part.x - (part.size?.length ?? 0) / 2)),
        right: Math.max(wheelbase + rear.diameter / 2, ...underside.map((point) => point.x), ...parts.map((part) => part.x + (part.size?.length ?? 0) / 2)),
        top: Math.max(front.diameter, rear.diameter, ...centres.map((point) => point.z ?? 0), ...parts.map((part) => part.z + (part.size?.height ?? 0) / 2)),
        half: Math.max(track.front / 2 + front.width / 2, track.rear / 2 + rear.width / 2, (body?.width ?? 0) / 2,
            ...parts.map((part) => Math.abs(part.y) + (part.size?.width ?? 0) / 2)),
    };
}

/** Both views have one scale and one place of x. @param {Extent} shown @param {number} width */
function placing(shown, width) {
    const long = shown.right - shown.left;
    const perMetre = Math.min((width - MARGIN.left - MARGIN.right) / long, 460 / shown.top);
    const slack = (width - MARGIN.left - MARGIN.right - long * perMetre) / 2;
    return { perMetre, /** @param {number} x */ px: (x) => MARGIN.left + slack + (x - shown.left) * perMetre };
}

/**
 * @param {Vehicle} vehicle
 * @param {Extent} shown
 * @param {number} width of the paper, px
 * @param {Units} units
 * @returns {Paper}
 */
export function elevation(vehicle, shown, width, units) {
    const { wheelbase, front, rear, centre, underside } = vehicle;
    const { perMetre, px } = placing(shown, width);
    const ground = MARGIN.top + shown.top * perMetre;
    /** @param {number} z */
    const pz = (z) => ground - z * perMetre;
    const pen = new Pen();

    // ground, with the hatching of a section
    pen.line('ground', 8, ground, width - MARGIN.right + 20, ground);
    for (let x = 16; x < width - MARGIN.right + 20; x += 14) {
        pen.line('hatch', x, ground, x - 7, ground + 7);
    }

    clearances(pen, vehicle, px, pz);
    if (underside.length > 1) {
        pen.draw('polyline', 'underside', { points: underside.map((point) => px(point.x) + ',' + pz(point.z)).join(' ') });
    }

    for (const [name, x, tyre] of /** @type {[string, number, Wheel][]} */ ([['front', 0, front], ['rear', wheelbase, rear]])) {
        const radius = tyre.diameter / 2 * perMetre;
        const [cx, cy] = [px(x), ground - radius];
        pen.draw('circle', tyre.known ? 'tyre' : 'tyre unknown', { cx, cy, r: radius, 'data-wheel': name });
        pen.line('axis', cx - radius - 6, cy, cx + radius + 6, cy);
        pen.line('axis', cx, cy - radius - 6, cx, ground + 134);
    }

    parts(pen, vehicle, (at) => [px(at.x), pz(at.z)], (size) => [size.length * perMetre, size.height * perMetre], centrePlaces(vehicle, (point) =>
        (point.z === null ? null : [px(point.x), pz(point.z)])), { left: 12, right: width - 48, top: 14, bottom: ground - 12 });

    for (const [point, kind, r] of centres(vehicle)) {
        if (point.z !== null) {
            pen.disc(kind, px(point.x), pz(point.z), r);
        } else if (kind === 'driven') {
            pen.line('centre-line', px(point.x), MARGIN.top - 20, px(point.x), ground);
        }
    }

    // what the ground carries, pointing at the tyre
    const loads = /** @type {[number, AxleLoad | null][]} */ ([[0, vehicle.frontLoad], [wheelbase, vehicle.rearLoad]]);
    for (const [x, load] of loads) {
        if (load !== null) {
            const tail = ground + 12 + 34 * Math.min(1, Math.max(0.35, load.share));
            pen.line('load', px(x), tail, px(x), ground + 9);
            pen.head('load head', px(x), ground + 2, 0, -1);
            pen.write('load value', px(x), ground + 60, load.load);
            pen.write('load part-of', px(x), ground + 75, load.percent);
        }
    }

    if (centre !== null) {
        const x = px(centre.x);
        pen.line('projection', x, centre.z === null ? ground : pz(centre.z) + 9, x, ground + 108);
        pen.across(px(0), x, ground + 104, dimension(Math.abs(centre.x), units), 'of-centre');
    }
    pen.across(px(0), px(wheelbase), ground + 130, dimension(wheelbase, units), 'of-wheelbase');
    if (centre !== null && centre.z !== null) {
        const x = width - 22;
        pen.line('projection', px(centre.x) + 9, pz(centre.z), x + 4, pz(centre.z));
        pen.upright(pz(centre.z), ground, x, dimension(centre.z, units), 'of-height');
    }

    // scale bar and direction of travel
    const bar = units === 'us' ? 24 * METRES.in : 0.5;
    const base = ground + 160;
    pen.line('scale', 16, base, 16 + bar * perMetre, base);
    pen.line('scale', 16, base - 4, 16, base + 4);
    pen.line('scale', 16 + bar * perMetre, base - 4, 16 + bar * perMetre, base + 4);
    pen.write('note', 16 + bar * perMetre + 6, base + 4, dimension(bar, units), 'start');
    pen.line('travel', 50, 20, 26, 20);
    pen.head('travel head', 16, 20, -1, 0);
    pen.write('note', 56, 24, t('frontEnd'), 'start');
    return { width, height: base + 14, perMetre, shapes: pen.shapes };
}

/**
 * Angles of approach, ramp breakover and departure (ISO 612): tangents to the tyres, with the service's figures.
 * @param {Pen} pen
 * @param {Vehicle} vehicle
 * @param {(x: number) => number} px
 * @param {(z: number) => number} pz
 */
function clearances(pen, { wheelbase, front, rear, underside, angles }, px, pz) {
    /** Where the tangent through a point touches a tyre from below, m. @param {Point} point @param {number} x of the axle @param {number} r */
    const touching = (point, x, r) => {
        const [dx, dz] = [point.x - x, point.z - r];
        const far = Math.hypot(dx, dz);
        if (far <= r) {
            return null;
        }
        const places = [1, -1].map((side) => {
            const turn = Math.atan2(dz, dx) + side * Math.acos(r / far);
            return { x: x + r * Math.cos(turn), z: r + r * Math.sin(turn) };
        });
        return places[0].z < places[1].z ? places[0] : places[1];
    };
    /** @param {Point | undefined} point @param {number} x @param {number} r @param {Angle} angle @param {string} kind @param {number} side outward */
    const overhang = (point, x, r, angle, kind, side) => {
        const touch = point && angle ? touching(point, x, r) : null;
        if (!point || !angle || touch === null) {
            return;
        }
        const slope = (point.z - touch.z) / (point.x - touch.x);
        const foot = touch.x - touch.z / slope;
        const end = { x: point.x + side * 0.06, z: point.z + side * 0.06 * slope };
        pen.line('clearance', px(foot), pz(0), px(end.x), pz(end.z));
        const r2 = 0.16;
        const tip = { x: foot + side * r2 * Math.cos(Math.atan(Math.abs(slope))), z: r2 * Math.sin(Math.atan(Math.abs(slope))) };
        const size = Math.abs(px(foot + r2) - px(foot));
        pen.draw('path', 'clearance', { d: `M${px(foot + side * r2)} ${pz(0)}A${size} ${size} 0 0 ${side > 0 ? 0 : 1} ${px(tip.x)} ${pz(tip.z)}` });
        pen.write('angle ' + kind, px(foot + side * (r2 + 0.02)), pz(0.03), angle.text, side > 0 ? 'start' : 'end');
    };
    overhang(underside.find((point) => point.x < 0), 0, front.diameter / 2, angles.approach, 'approach', -1);
    overhang(underside.find((point) => point.x > wheelbase), wheelbase, rear.diameter / 2, angles.departure, 'departure', 1);
    const low = underside.filter((point) => point.x > 0 && point.x < wheelbase);
    if (angles.breakover !== null && low.length > 0) {
        const apex = { x: wheelbase / 2, z: low.reduce((sum, point) => sum + point.z, 0) / low.length };
        for (const touch of [touching(apex, 0, front.diameter / 2), touching(apex, wheelbase, rear.diameter / 2)]) {
            if (touch !== null) {
                pen.line('clearance', px(touch.x), pz(touch.z), px(apex.x), pz(apex.z));
            }
        }
        pen.write('angle breakover', px(apex.x), pz(apex.z) + 28, angles.breakover.text);
    }
}

/**
 * Items and people, each in a group that can be moved.
 * @param {Pen} pen
 * @param {Vehicle} vehicle
 * @param {(at: {x: number, y: number, z: number}) => [number, number]} place
 * @param {(size: {length: number, width: number, height: number}) => [number, number]} box
 * @param {{x: number, y: number, r: number}[]} taken
 * @param {{left: number, right: number, top: number, bottom: number}} within
 */
function parts(pen, vehicle, place, box, taken, within) {
    const drawn = vehicle.parts.flatMap((part) => (part.at === null ? [] : [{ part, spot: place(part.at) }]));
    drawn.forEach(({ spot: [x, y] }) => taken.push({ x, y, r: 7 }));
    for (const { part, spot: [x, y] } of drawn) {
        const balloon = freePlace(x, y, taken, within);
        taken.push({ ...balloon, r: 10 });
        const kind = 'part' + (part.removed ? ' removed' : '');
        pen.group({ class: 'movable', 'data-part': part.pointer }, () => {
            if (part.size !== null) {
                const [wide, high] = box(part.size);
                pen.draw('rect', kind + ' sized', { x: x - wide / 2, y: y - high / 2, width: wide, height: high });
            }
            pen.draw('rect', 'grip', { x: x - 16, y: y - 16, width: 32, height: 32 });
            if (part.person) {
                pen.draw('circle', kind, { cx: x, cy: y, r: 6 });
            } else {
                pen.draw('rect', kind, { x: x - 6, y: y - 6, width: 12, height: 12 });
            }
            pen.line(kind, x - 3, y, x + 3, y);
            pen.line(kind, x, y - 3, x, y + 3);
            const far = Math.hypot(balloon.x - x, balloon.y - y);
            const [ux, uy] = [(balloon.x - x) / far, (balloon.y - y) / far];
            pen.line('leader', x + ux * 7, y + uy * 7, balloon.x - ux * 9, balloon.y - uy * 9);
            pen.draw('circle', 'balloon', { cx: balloon.x, cy: balloon.y, r: 9 });
            pen.write('number', balloon.x, balloon.y + 4, String(part.number));
        });
    }
}

/** Before, nobody aboard, as driven; the last is drawn on top. @param {Vehicle} vehicle @returns {[Centre, string, number][]} */
function centres(vehicle) {
    return /** @type {[Centre, string, number][]} */ ([
        [vehicle.weighedCentre, 'weighed', 6], [vehicle.emptyCentre, 'empty', 6], [vehicle.centre, 'driven', 9],
    ].filter(([point]) => point !== null));
}

/** @param {Vehicle} vehicle @param {(point: Centre) => [number, number] | null} place */
function centrePlaces(vehicle, place) {
    return centres(vehicle).flatMap(([point]) => {
        const at = place(point);
        return at === null ? [] : [{ x: at[0], y: at[1], r: 12 }];
    });
}

/**
 * @param {Vehicle} vehicle
 * @param {Extent} shown
 * @param {number} width of the paper, px
 * @param {Units} units
 * @returns {Paper}
 */
export function plan(vehicle, shown, width, units) {
    const { wheelbase, front, rear, track, body, centre } = vehicle;
    const { perMetre, px } = placing(shown, width);
    const middle = 36 + shown.half * perMetre;
    /** @param {number} y to the right of the vehicle */
    const py = (y) => middle - y * perMetre;
    const pen = new Pen();
    pen.line('axis', px(shown.left) - 14, middle, px(shown.right) + 14, middle);
    if (body !== null) {
        pen.draw('rect', 'underside', { x: px(body.left), y: py(body.width / 2), width: (body.right - body.left) * perMetre, height: body.width * perMetre });
    }
    for (const rail of vehicle.rails) {
        const [from, to] = body === null ? [0, wheelbase] : [body.left, body.right];
        pen.draw('rect', 'rail', { x: px(from), y: py(rail.y + rail.width / 2), width: (to - from) * perMetre, height: rail.width * perMetre });
    }
    for (const [x, tyre, apart, known] of /** @type {[number, Wheel, number, boolean][]} */ ([
        [0, front, track.front, track.frontKnown], [wheelbase, rear, track.rear, track.rearKnown],
    ])) {
        pen.line('axis', px(x), py(apart / 2 + 0.16), px(x), py(-apart / 2 - 0.16));
        for (const side of apart === 0 ? [0] : [1, -1]) {
            pen.draw('rect', tyre.known && tyre.widthKnown && known ? 'tyre' : 'tyre unknown', {
                x: px(x - tyre.diameter / 2), y: py(side * apart / 2 + tyre.width / 2), width: tyre.diameter * perMetre, height: tyre.width * perMetre,
            });
        }
    }
    parts(pen, vehicle, (at) => [px(at.x), py(at.y)], (size) => [size.length * perMetre, size.width * perMetre], centrePlaces(vehicle, (point) =>
        [px(point.x), py(point.y ?? 0)]), { left: 12, right: width - 48, top: 14, bottom: middle + shown.half * perMetre });
    for (const [point, kind, r] of centres(vehicle)) {
        pen.disc(kind, px(point.x), py(point.y ?? 0), r);
    }
    const base = middle + shown.half * perMetre;
    if (track.front > 0 && track.frontKnown) {
        pen.line('projection', 14, py(track.front / 2), px(0), py(track.front / 2));
        pen.line('projection', 14, py(-track.front / 2), px(0), py(-track.front / 2));
        pen.upright(py(track.front / 2), py(-track.front / 2), 20, dimension(track.front, units), 'of-front-track');
    }
    if (track.rear > 0 && track.rearKnown) {
        const x = width - 22;
        pen.line('projection', px(wheelbase), py(track.rear / 2), x + 4, py(track.rear / 2));
        pen.line('projection', px(wheelbase), py(-track.rear / 2), x + 4, py(-track.rear / 2));
        pen.upright(py(track.rear / 2), py(-track.rear / 2), x, dimension(track.rear, units), 'of-rear-track');
    }
    if (centre !== null && centre.y !== null && Math.abs(centre.y) >= 0.0005) {
        const right = px(centre.x) < width / 2;
        pen.write('note', px(centre.x) + (right ? 14 : -14), py(centre.y) + 22, dimension(Math.abs(centre.y), units) + ' ' + t(centre.y > 0 ? 'toRight' : 'toLeft'), right ? 'start' : 'end');
    }
    pen.write('note', px(shown.left), 16, t('rightSide'), 'start');
    return { width, height: base + 16, perMetre, shapes: pen.shapes };
}

/**
 * The same as a table: rows of what, number, value.
 * @param {Vehicle} vehicle
 * @param {Units} units
 * @returns {{label: string, mass: string, x: string, y: string, z: string, pointer?: string}[]}
 */
export function rows(vehicle, units) {
    /** @param {number} m */
    const length = (m) => dimension(m, units);
    /** @param {Wheel} tyre */
    const across = (tyre) => t(tyre.known ? 'tyreAcross' : 'tyreUnknown', { diameter: length(tyre.diameter) });
    /** @param {AxleLoad | null} axle */
    const loaded = (axle) => (axle === null ? '' : axle.load + ' (' + axle.percent + ')');
    /** @param {number} track @param {boolean} known */
    const half = (track, known) => (known && track > 0 ? '± ' + length(track / 2) : '');
    const table = [
        { label: t('frontAxleRow', { tyre: across(vehicle.front) }), mass: loaded(vehicle.frontLoad), x: length(0), y: half(vehicle.track.front, vehicle.track.frontKnown), z: '' },
        { label: t('rearAxleRow', { tyre: across(vehicle.rear) }), mass: loaded(vehicle.rearLoad), x: length(vehicle.wheelbase), y: half(vehicle.track.rear, vehicle.track.rearKnown), z: '' },
    ];
    for (const [point, name] of /** @type {[Centre | null, string][]} */ ([
        [vehicle.centre, 'centreDriven'], [vehicle.emptyCentre, 'centreEmpty'], [vehicle.weighedCentre, 'centreWeighed'],
    ])) {
        if (point !== null) {
            table.push({
                label: t(name), mass: '', x: length(point.x), y: point.y === null ? t('notKnown') : length(point.y), z: point.z === null ? t('notKnown') : length(point.z),
            });
        }
    }
    const { approach, breakover, departure } = vehicle.angles;
    const angles = /** @type {[Angle, string][]} */ ([[approach, 'approachAngle'], [breakover, 'breakoverAngle'], [departure, 'departureAngle']])
        .flatMap(([angle, name]) => (angle === null ? [] : [{ label: label(name), mass: angle.text, x: '', y: '', z: '' }]));
    return [
        ...table,
        ...angles,
        ...vehicle.parts.map((part) => ({
            label: part.number + '  ' + part.name + (part.removed ? ' ' + t('takenOff') : ''),
            mass: part.mass,
            x: part.at === null ? t('notDrawn') : length(part.at.x),
            y: part.at === null ? '' : length(part.at.y),
            z: part.at === null ? t('positionMissing') : length(part.at.z),
            pointer: part.at === null ? part.pointer + '/position' : undefined,
        })),
    ];
}

// @ts-check
/**
 * What can be plotted, and where its numbers come from: results that already hold a series, or a sweep of the service. Nothing is
 * calculated here; columns are only put beside each other.
 */

import { metres } from './drawing.js';
import { service } from './service.js';
import { label, t } from './words.js';

/**
 * @typedef {{results: Record<string, any>, setup: Record<string, any>, units: import('./service.js').Units, sweeps: boolean}} Basis
 *
 * @typedef {object} Column
 * @property {string} label
 * @property {string} unit token of the contract, `''` for a plain number
 * @property {(number | null)[]} values
 *
 * @typedef {object} Table
 * @property {Column} x
 * @property {string[]} [names] in place of numbers on x: bars
 * @property {Column[]} series all in one unit
 * @property {{label: string, value: number}[]} [limits] across, in the unit of the series
 * @property {string[]} notes findings where they begin, in the service's words
 *
 * @typedef {{value: string, label: string}} Choice
 *
 * @typedef {object} Plot
 * @property {string} name
 * @property {boolean} [held] the answers hold its series: no sweep is needed
 * @property {(basis: Basis) => boolean} possible
 * @property {(basis: Basis) => Choice[]} [choices]
 * @property {(basis: Basis, choice: string, progress: (share: number) => void, signal: AbortSignal) => Promise<Table | import('./service.js').Reply>} load
 */

/** A share as people read it. @param {any} value */
const percent = (value) => (value === null || value === undefined ? null : Number(value) * 100);

/** @param {any} value a quantity, a number, or nothing */
const bare = (value) => (value === undefined || value === null ? null : typeof value === 'object' ? value.value : Number(value));

/** @param {any} answer of a sweep @param {number} at @param {string} name */
function column(answer, at, name) {
    const { unit = '', values } = answer.series[at];
    return { label: name, unit, values: values.map(bare) };
}

/** Findings from the point where they begin. @param {any} answer of a sweep */
function notes(answer) {
    return answer.findings.filter((/** @type {any} */ one) => one.level !== 'notice' && one.runs.some((/** @type {any} */ run) => run.first > 0))
        .map((/** @type {any} */ one) => one.message);
}

/**
 * @param {Basis} basis
 * @param {object} request
 * @param {(share: number) => void} progress
 * @param {AbortSignal} signal
 * @param {(answer: any) => Table} table
 */
async function swept({ units }, request, progress, signal, table) {
    const reply = await service.sweep(request, units, progress, signal);
    return reply.status === 200 ? table(reply.body) : reply;
}

/** @param {import('./service.js').Units} units @param {{metric: [number, string], us: [number, string]}} two */
const inUnits = (units, two) => ({ value: two[units][0], unit: two[units][1] });

/** @param {Basis} basis */
const movable = ({ setup }) => (setup.items ?? []).flatMap((/** @type {any} */ item, /** @type {number} */ at) =>
    (item.removed === true || item.position?.x === undefined || item.mass === undefined ? [] : [{ value: String(at), label: item.name ?? t('itemNumber', { number: at + 1 }) }]));

/** @param {Basis} basis */
const circuits = ({ results }) => results['conductor-size'].circuits.map((/** @type {any} */ one, /** @type {number} */ at) => ({ value: String(at), label: one.name ?? String(at + 1) }));

/** @type {Plot[]} */
export const PLOTS = [
    {
        name: 'thrust',
        held: true,
        possible: ({ results }) => (results['drive-performance']?.thrust ?? []).length > 1,
        async load({ results, setup, units }, _, progress, signal) {
            const thrust = results['drive-performance'].thrust;
            // the question answers a force for every leg of a route: one leg for each grade and speed
            const grades = [10, 20, 30];
            const moving = thrust.filter((/** @type {any} */ one) => one.speed.value > 0);
            const route = grades.flatMap((grade) => moving.map((/** @type {any} */ one) => ({
                distance: { value: 1, unit: 'km' }, grade: { value: grade, unit: '%' }, speed: one.speed, surface: setup.ground?.surface,
            })));
            const reply = await service.askAgain('/v1/drive-performance', { ...setup, route }, units, signal);
            progress(1);
            if (reply.status !== 200) {
                return reply;
            }
            const unit = thrust[0].thrust.unit;
            const legs = new Map(reply.body.result.climbs.map((/** @type {any} */ one) => [one.pointer, bare(one.force)]));
            return {
                x: { label: label('speed'), unit: thrust[0].speed.unit, values: thrust.map((/** @type {any} */ one) => bare(one.speed)) },
                series: [
                    { label: label('thrust'), unit, values: thrust.map((/** @type {any} */ one) => bare(one.thrust)) },
                    { label: t('roadLoadAt', { grade: 0 }), unit, values: thrust.map((/** @type {any} */ one) => bare(one.resistance)) },
                    ...grades.map((grade, at) => ({
                        label: t('roadLoadAt', { grade }), unit,
                        values: [...Array(thrust.length - moving.length).fill(null), ...moving.map((/** @type {any} */ _one, /** @type {number} */ point) =>
                            legs.get('/route/' + (at * moving.length + point)) ?? null)],
                    })),
                ],
                notes: [],
            };
        },
    },
    {
        name: 'climb',
        possible: ({ results }) => results['drive-performance'] !== undefined,
        load: (basis, _, progress, signal) => swept(basis, {
            calculation: 'drive-performance', input: basis.setup,
            vary: [{ pointer: '/ground/grade', from: { value: 0, unit: '%' }, to: { value: 40, unit: '%' }, steps: 41 }], watch: ['/climbs/0/reachable/speed'],
        }, progress, signal, (answer) => ({
            x: { label: label('grade'), unit: '%', values: answer.vary[0].values }, series: [column(answer, 0, t('speedReached'))], notes: notes(answer),
        })),
    },
    {
        name: 'range',
        possible: ({ results }) => results['pack-range'] !== undefined,
        load: (basis, _, progress, signal) => {
            const { load: constant, ...setup } = basis.setup;
            const from = inUnits(basis.units, { metric: [5, 'km/h'], us: [3, 'mph'] });
            const leg = { distance: { value: 1, unit: 'km' }, grade: { value: 0, unit: '%' }, speed: from, surface: setup.route?.[0]?.surface ?? 'asphalt' };
            return swept(basis, {
                calculation: 'pack-range', input: { ...setup, route: [leg] },
                vary: [{ pointer: '/route/0/speed', from, to: inUnits(basis.units, { metric: [40, 'km/h'], us: [25, 'mph'] }), steps: 36 }], watch: ['/range'],
            }, progress, signal, (answer) => ({
                x: { label: label('speed'), unit: answer.vary[0].unit, values: answer.vary[0].values }, series: [column(answer, 0, label('range'))], notes: notes(answer),
            }));
        },
    },
    {
        name: 'charge',
        possible: ({ results }) => results['charge-time'] !== undefined,
        load: (basis, _, progress, signal) => {
            const from = basis.setup.charge?.from ?? 0.2;
            return swept(basis, {
                calculation: 'charge-time', input: { ...basis.setup, charge: { ...basis.setup.charge, from } },
                vary: [{ pointer: '/charge/to', from: from + (1 - from) / 40, to: 1, steps: 40 }], watch: ['/time'],
            }, progress, signal, (answer) => ({
                x: { ...column(answer, 0, label('time')), values: [0, ...answer.series[0].values.map(bare)] },
                series: [{ label: label('stateOfCharge'), unit: '%', values: [from, ...answer.vary[0].values].map(percent) }],
                notes: notes(answer),
            }));
        },
    },
    {
        name: 'charger',
        possible: ({ results, setup }) => results['charge-time'] !== undefined && setup.supply !== undefined,
        load: (basis, _, progress, signal) => {
            const { power, ...charger } = basis.setup.charger ?? {};
            return swept(basis, {
                calculation: 'charge-time', input: { ...basis.setup, charger: { ...charger, current: { value: 5, unit: 'A' } } },
                vary: [{ pointer: '/charger/current', from: { value: 5, unit: 'A' }, to: { value: 40, unit: 'A' }, steps: 36 }], watch: ['/mainsCurrent', '/supplyLimit'],
            }, progress, signal, (answer) => ({
                x: { label: t('chargerCurrent'), unit: 'A', values: answer.vary[0].values },
                series: [column(answer, 0, label('mainsCurrent')), column(answer, 1, label('supplyLimit'))],
                notes: notes(answer),
            }));
        },
    },
    {
        name: 'cable',
        possible: ({ results, setup }) => (results['conductor-size']?.circuits ?? []).length > 0 && (setup.circuits ?? []).some((/** @type {any} */ one) => one.profile?.length > 0),
        choices: (basis) => circuits(basis).filter((/** @type {Choice} */ one) => basis.setup.circuits[Number(one.value)].profile?.length > 0),
        load: (basis, choice, progress, signal) => {
            const profile = basis.setup.circuits[Number(choice)].profile;
            const peak = profile.reduce((/** @type {number} */ best, /** @type {any} */ one, /** @type {number} */ at) => (one.current.value > profile[best].current.value ? at : best), 0);
            return swept(basis, {
                calculation: 'conductor-size', input: basis.setup,
                vary: [{ pointer: `/circuits/${choice}/profile/${peak}/duration`, from: { value: 5, unit: 's' }, to: { value: 300, unit: 's' }, steps: 60 }],
                watch: [`/circuits/${choice}/peakTemperature`, `/circuits/${choice}/conductorTemperature`],
            }, progress, signal, (answer) => ({
                x: { label: t('peakLasts'), unit: 's', values: answer.vary[0].values },
                series: [column(answer, 0, label('peakTemperature')), column(answer, 1, t('temperatureAllowed'))],
                notes: notes(answer),
            }));
        },
    },
    {
        name: 'share',
        possible: (basis) => basis.results['centre-of-gravity'] !== undefined && movable(basis).length > 0,
        choices: movable,
        load: (basis, choice, progress, signal) => {
            const wheelbase = metres(basis.setup.chassis?.wheelbase) ?? 1.7;
            const long = { metric: [1000, 'mm'], us: [1 / 0.0254, 'in'] }[basis.units];
            /** @param {number} m */
            const sent = (m) => ({ value: Math.round(m * Number(long[0])), unit: String(long[1]) });
            return swept(basis, {
                calculation: 'centre-of-gravity', input: basis.setup,
                vary: [{ pointer: `/items/${choice}/position/x`, from: sent(-0.4), to: sent(wheelbase + 0.8), steps: 60 }], watch: ['/frontAxle/share'],
            }, progress, signal, (answer) => ({
                x: { label: label('x'), unit: answer.vary[0].unit, values: answer.vary[0].values },
                series: [{ label: t('frontShare'), unit: '%', values: answer.series[0].values.map(percent) }],
                notes: notes(answer),
            }));
        },
    },
    {
        name: 'drop',
        held: true,
        possible: ({ results }) => (results['conductor-size']?.circuits ?? []).some((/** @type {any} */ one) => one.candidates?.length > 0),
        choices: circuits,
        async load({ results, setup }, choice) {
            const { candidates } = results['conductor-size'].circuits[Number(choice)];
            const allowed = setup.circuits?.[Number(choice)]?.allowedDropShare;
            return {
                x: { label: label('size'), unit: '', values: candidates.map((/** @type {any} */ _, /** @type {number} */ at) => at) },
                names: candidates.map((/** @type {any} */ one) => (one.parallel > 1 ? one.parallel + ' × ' : '') + one.size),
                series: [{ label: label('dropShare'), unit: '%', values: candidates.map((/** @type {any} */ one) => percent(one.dropShare)) }],
                limits: allowed === undefined ? [] : [{ label: label('allowedDropShare'), value: allowed * 100 }],
                notes: [],
            };
        },
    },
    {
        name: 'cost',
        possible: ({ results }) => (results['ownership-cost']?.options ?? []).length > 0,
        load: (basis, _, progress, signal) => {
            const { options } = basis.results['ownership-cost'];
            return swept(basis, {
                calculation: 'ownership-cost', input: basis.setup,
                vary: [{ pointer: '/ownership/horizon', from: { value: 1, unit: 'a' }, to: { value: 15, unit: 'a' }, steps: 15 }],
                watch: options.map((/** @type {any} */ _, /** @type {number} */ at) => `/options/${at}/presentValue`),
            }, progress, signal, (answer) => ({
                x: { label: label('horizon'), unit: 'a', values: answer.vary[0].values },
                series: options.map((/** @type {any} */ one, /** @type {number} */ at) => column(answer, at, one.name ?? String(at + 1))),
                notes: notes(answer),
            }));
        },
    },
];

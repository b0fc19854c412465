// @ts-check
import * as echarts from './lib/echarts.esm.min.js';
import { el, fieldLink, foreign, scroller } from './dom.js';
import { number, place, unitSign } from './text.js';
import { language, t } from './words.js';

/** @typedef {import('./plots.js').Table} Table */
/** @typedef {import('./plots.js').Column} Column */

/** Told apart without colour: dashes and marks, as on a drawing. */
const LINES = ['solid', [8, 4], [2, 3], [12, 3, 2, 3], [1, 5]];
const MARKS = ['none', 'circle', 'rect', 'triangle', 'diamond'];

/**
 * One plot: fetched, drawn, told as a table, to be saved.
 * @param {import('./plots.js').Plot} plot
 * @param {import('./plots.js').Basis} basis
 */
export function plotFigure(plot, basis) {
    const title = t('plot.' + plot.name);
    const figure = el('figure', { 'aria-label': title });
    const body = el('div', {});
    const choices = plot.choices?.(basis) ?? [];
    const select = el('select', { id: 'choice-' + plot.name }, ...choices.map((one) => el('option', { value: one.value }, one.label)));
    if (choices.length > 1) {
        figure.append(el('p', { class: 'fields' }, el('label', { for: select.id }, t('choiceOf.' + plot.name)), select));
    }
    figure.append(body);
    let asking = new AbortController();
    const fetchIt = async () => {
        asking.abort();
        asking = new AbortController();
        const { signal } = asking;
        const bar = el('progress', { max: 1, 'aria-label': t('asking') });
        body.replaceChildren(el('p', { class: 'open', role: 'status' }, t('asking'), ' ', bar));
        const loaded = await plot.load(basis, select.value, (share) => (bar.value = share), signal);
        if (signal.aborted) {
            return;
        }
        if ('status' in loaded) {
            body.replaceChildren(...refused(loaded));
        } else {
            body.replaceChildren(...drawn(plot.name, title, loaded));
        }
    };
    select.addEventListener('change', fetchIt);
    void fetchIt();
    return figure;
}

/** @param {import('./service.js').Reply} reply */
function refused(reply) {
    const errors = reply.body?.errors ?? [];
    return [
        el('p', { class: 'open', role: 'status' }, reply.status === 0 ? t('notReached') : t('plotRefused')),
        el('ul', {}, ...errors.map((/** @type {any} */ one) => {
            const pointer = String(one.pointer).replace(/^\/input/, '');
            return el('li', {}, fieldLink(pointer, place(pointer)), ': ', foreign(one.message));
        })),
    ];
}

/** @param {string} name @param {string} title @param {Table} table */
function drawn(name, title, table) {
    const paper = el('div', { class: 'paper', role: 'img', 'aria-label': t('plotLabel', { title }) });
    const chart = { /** @type {any} */ drawn: null };
    new ResizeObserver((_, observer) => {
        if (!paper.isConnected) {
            observer.disconnect();
            chart.drawn?.dispose();
        } else if (paper.clientWidth > 0) {
            if (chart.drawn === null) {
                chart.drawn = echarts.init(paper, null, { renderer: 'svg' });
                chart.drawn.setOption(option(table, getComputedStyle(paper), paper.clientWidth));
            } else {
                chart.drawn.resize();
                chart.drawn.setOption(option(table, getComputedStyle(paper), paper.clientWidth));
            }
        }
    }).observe(paper);
    matchMedia('(prefers-color-scheme: dark)').addEventListener('change', () => chart.drawn?.setOption(option(table, getComputedStyle(paper), paper.clientWidth)));
    const buttons = el('p', { class: 'choices' },
        saver('SVG', () => save(name + '.svg', new Blob([forPaper(table, paper)], { type: 'image/svg+xml' }))),
        saver('PNG', async () => save(name + '.png', await asPng(forPaper(table, paper), paper.clientWidth, paper.clientHeight))),
        saver('CSV', () => save(name + '.csv', new Blob([csv(table)], { type: 'text/csv' }))));
    const notes = table.notes.length === 0 ? [] : [el('ul', { class: 'notes' }, ...table.notes.map((note) => el('li', {}, foreign(note))))];
    return [paper, ...notes, buttons, el('details', { class: 'plot-table' }, el('summary', {}, t('plotTable')), scroller(title, asTable(title, table)))];
}

/** @param {string} kind @param {() => void} action */
function saver(kind, action) {
    const button = el('button', { type: 'button', class: 'quiet small', 'data-save': kind.toLowerCase() }, t('saveAs', { kind }));
    button.addEventListener('click', action);
    return button;
}

/** @param {Column} column */
const titled = ({ label, unit }) => (unit === '' ? label : label + ' / ' + unitSign(unit));

/** Black lines of two widths on paper; only the first series has the accent. @param {Table} table @param {{getPropertyValue: (name: string) => string}} style @param {number} width */
function option(table, style, width) {
    const [ink, accent, paper] = ['--ink', '--accent', '--paper'].map((name) => style.getPropertyValue(name).trim());
    const text = { color: ink, fontFamily: 'DejaVu Sans Condensed, Arial Narrow, Roboto Condensed, sans-serif', fontSize: 13 };
    const line = { lineStyle: { color: ink, width: 1 } };
    const axis = {
        nameLocation: 'middle', nameTextStyle: text, axisLabel: { ...text, formatter: (/** @type {any} */ value) => (typeof value === 'number' ? number(value) : value) },
        axisLine: { show: true, onZero: false, ...line }, axisTick: { show: true, ...line }, splitLine: { lineStyle: { color: ink, opacity: 0.25, width: 0.5 } },
    };
    const bars = table.names !== undefined;
    return {
        animation: false,
        textStyle: text,
        grid: { left: 64, right: 18, top: table.series.length > 1 ? 22 + 24 * Math.ceil(table.series.reduce((wide, one) => wide + 60 + 7 * one.label.length, 0) / Math.max(260, width)) : 24, bottom: bars ? 92 : 56 },
        legend: table.series.length > 1 ? { top: 0, left: 0, textStyle: text, itemWidth: 36, inactiveColor: ink, selectedMode: false } : undefined,
        tooltip: { trigger: 'axis', renderMode: 'richText', confine: true, transitionDuration: 0, backgroundColor: paper, borderColor: ink, textStyle: text, valueFormatter: (/** @type {any} */ value) => (value === null || value === undefined ? '–' : number(Array.isArray(value) ? value[1] : value)) },
        xAxis: bars
            ? { ...axis, type: 'category', data: table.names, name: titled(table.x), nameGap: 66, axisLabel: { ...axis.axisLabel, rotate: 55, interval: 0 } }
            : { ...axis, type: 'value', name: titled(table.x), nameGap: 30, min: 'dataMin', max: 'dataMax' },
        yAxis: { ...axis, type: 'value', name: titled(table.series[0]), nameGap: 46, scale: !bars },
        series: table.series.map((series, at) => ({
            name: series.label, type: bars ? 'bar' : 'line', symbol: MARKS[at % MARKS.length], symbolSize: 7, showSymbol: at > 0, connectNulls: false,
            data: bars ? series.values : series.values.map((value, point) => [table.x.values[point], value]),
            lineStyle: { color: at === 0 ? accent : ink, width: at === 0 ? 2.5 : 1.5, type: LINES[at % LINES.length] },
            itemStyle: bars ? { color: paper, borderColor: ink, borderWidth: 1.5 } : { color: at === 0 ? accent : ink },
            markLine: at > 0 || !table.limits?.length ? undefined : {
                symbol: 'none', silent: true, lineStyle: { color: ink, type: [8, 4], width: 1.5 },
                data: table.limits.map((limit) => ({ yAxis: limit.value, label: { formatter: limit.label, position: 'insideEndTop', ...text } })),
            },
        })),
    };
}

/** The plot for paper, black on white whatever the screen shows. @param {Table} table @param {HTMLElement} shown */
function forPaper(table, shown) {
    const place = el('div', {});
    const chart = echarts.init(place, null, { renderer: 'svg', width: shown.clientWidth, height: shown.clientHeight });
    const black = /** @type {Record<string, string>} */ ({ '--ink': '#000', '--accent': '#000', '--paper': '#fff' });
    chart.setOption({ ...option(table, { getPropertyValue: (name) => black[name] }, shown.clientWidth), backgroundColor: '#fff' });
    const drawing = chart.renderToSVGString();
    chart.dispose();
    return drawing;
}

/** @param {string} drawing SVG @param {number} width @param {number} height @returns {Promise<Blob>} */
async function asPng(drawing, width, height) {
    const picture = new Image();
    picture.src = 'data:image/svg+xml;charset=utf-8,' + encodeURIComponent(drawing);
    await picture.decode();
    const canvas = el('canvas', { width: 2 * width, height: 2 * height });
    canvas.getContext('2d')?.drawImage(picture, 0, 0, 2 * width, 2 * height);
    return new Promise((done, failed) => canvas.toBlob((blob) => (blob ? done(blob) : failed(new Error('No picture'))), 'image/png'));
}

/** RFC 4180, with the decimal point that programs read. @param {Table} table */
function csv(table) {
    /** @param {string} text */
    const cell = (text) => (/[",\n]/.test(text) ? '"' + text.replace(/"/g, '""') + '"' : text);
    const lines = [[table.x, ...table.series].map((column) => cell(titled(column)))];
    table.x.values.forEach((x, at) => lines.push([table.names?.[at] ?? String(x ?? ''), ...table.series.map((series) => String(series.values[at] ?? ''))].map(cell)));
    return lines.map((line) => line.join(',')).join('\r\n') + '\r\n';
}

/** @param {string} title @param {Table} table */
function asTable(title, table) {
    /** @param {number | null | undefined} value */
    const shown = (value) => (value === null || value === undefined ? '–' : number(value));
    return el('table', {},
        el('caption', {}, title),
        el('thead', {}, el('tr', {}, ...[table.x, ...table.series].map((column) => el('th', { scope: 'col' }, titled(column))))),
        el('tbody', {}, ...table.x.values.map((x, at) => el('tr', {},
            el('th', { scope: 'row' }, table.names?.[at] ?? shown(x)), ...table.series.map((series) => el('td', {}, shown(series.values[at])))))));
}

/** @param {string} name @param {Blob} blob */
function save(name, blob) {
    const address = URL.createObjectURL(blob);
    el('a', { href: address, download: 'axlewright-' + name, hreflang: language }).click();
    setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

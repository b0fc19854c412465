// @ts-check
import { el } from './dom.js';
import { PLOTS } from './plots.js';
import { t } from './words.js';

/**
 * `<axlewright-plots>`: the plots that the answers allow, each fetched and drawn when it is opened.
 *
 * Property `shown`: `{results, setup, units, sweeps}`.
 */
export class Plots extends HTMLElement {
    /** @param {import('./plots.js').Basis} shown */
    set shown(shown) {
        const opened = new Set([...this.querySelectorAll('details[open]')].map((one) => /** @type {HTMLElement} */ (one).dataset.plot));
        this.replaceChildren(...PLOTS.filter((plot) => (plot.held || shown.sweeps) && plot.possible(shown)).map((plot) => {
            const details = el('details', { class: 'plot', 'data-plot': plot.name }, el('summary', {}, t('plot.' + plot.name)));
            details.addEventListener('toggle', async () => {
                if (details.open && details.childElementCount === 1) {
                    const { plotFigure } = await import('./plot-figure.js');
                    details.append(plotFigure(plot, shown));
                }
            });
            details.open = opened.has(plot.name);
            return details;
        }));
    }
}

// @ts-check
/** The one address that a page needs: one element for each calculation of the service, `<axlewright-charge-time>` and the others. */

import { CALCULATIONS } from './contract.js';
import { Calculation } from './element.js';

for (const name of Object.keys(CALCULATIONS)) {
    const tag = 'axlewright-' + name;
    if (customElements.get(tag) === undefined) {
        customElements.define(tag, class extends Calculation {
            static calculation = name;
        });
    }
}

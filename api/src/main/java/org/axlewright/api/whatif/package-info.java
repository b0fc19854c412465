/** What if: the same questions with other values in the same documents. Sweeps, goals, tolerances, batches. */
@NullMarked
package org.axlewright.api.whatif;

import org.jspecify.annotations.NullMarked;

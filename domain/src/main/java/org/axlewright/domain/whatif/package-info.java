/** What if: where a result crosses a level, and how sure it is when its inputs are not sure. Numerics over any function of numbers. */
@NullMarked
package org.axlewright.domain.whatif;

import org.jspecify.annotations.NullMarked;

/** How long does charging take on a household outlet, through this cord, and does the breaker hold? */
@NullMarked
package org.axlewright.api.charging;

import org.jspecify.annotations.NullMarked;

/** Terminals, lugs and other joints: resistance from millivolts at amperes, heat, and which one is odd. */
@NullMarked
package org.axlewright.domain.joint;

import org.jspecify.annotations.NullMarked;

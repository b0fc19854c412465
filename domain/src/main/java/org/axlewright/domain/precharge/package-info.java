/** Filling the controller's capacitor through a resistor before the contactor closes, and the coil that closes it. */
@NullMarked
package org.axlewright.domain.precharge;

import org.jspecify.annotations.NullMarked;

/** Will it stop, and will it stay on the ramp, nose up and nose down? */
@NullMarked
package org.axlewright.domain.braking;

import org.jspecify.annotations.NullMarked;

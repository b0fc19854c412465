/** Will it stop, and will it stay on the ramp, nose up and nose down? */
@NullMarked
package org.axlewright.api.braking;

import org.jspecify.annotations.NullMarked;

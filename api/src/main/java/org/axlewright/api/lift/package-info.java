/** What does the lift and the bigger tyre do to height, clearance, camber, track and gearing? */
@NullMarked
package org.axlewright.api.lift;

import org.jspecify.annotations.NullMarked;

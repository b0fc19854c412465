/** How much does it squat, how much travel is left, which spring? */
@NullMarked
package org.axlewright.api.ride;

import org.jspecify.annotations.NullMarked;

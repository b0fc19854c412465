/** How much energy is really in the pack, and how far does it go on this route? */
@NullMarked
package org.axlewright.api.energy;

import org.jspecify.annotations.NullMarked;

/** The physics. Plain Java without a framework: SI doubles inside, units only at the edge. */
@NullMarked
package org.axlewright.domain;

import org.jspecify.annotations.NullMarked;

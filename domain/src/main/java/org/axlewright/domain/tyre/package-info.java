/** Tyres: what a size marking says, and the radii that follow from it. */
@NullMarked
package org.axlewright.domain.tyre;

import org.jspecify.annotations.NullMarked;

/** Values with units, as people send and read them; one closed unit enum per dimension. */
@NullMarked
package org.axlewright.domain.quantity;

import org.jspecify.annotations.NullMarked;

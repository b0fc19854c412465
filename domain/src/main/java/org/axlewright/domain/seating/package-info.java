/** How far must the pedals or the frame move when the seat goes down? */
@NullMarked
package org.axlewright.domain.seating;

import org.jspecify.annotations.NullMarked;

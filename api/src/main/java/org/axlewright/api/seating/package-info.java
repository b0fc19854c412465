/** How far must the pedals or the frame move when the seat goes down? */
@NullMarked
package org.axlewright.api.seating;

import org.jspecify.annotations.NullMarked;

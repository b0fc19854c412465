/** Copper cable: sizes, their area and resistance, and what a flexible cord may carry. */
@NullMarked
package org.axlewright.domain.cable;

import org.jspecify.annotations.NullMarked;

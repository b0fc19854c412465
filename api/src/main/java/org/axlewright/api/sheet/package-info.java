/** The build sheet: one setup and what every question says about it, on paper. */
@NullMarked
package org.axlewright.api.sheet;

import org.jspecify.annotations.NullMarked;

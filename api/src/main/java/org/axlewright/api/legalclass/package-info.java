/** Which class of vehicle is this, by which figure, and how far is the next threshold? */
@NullMarked
package org.axlewright.api.legalclass;

import org.jspecify.annotations.NullMarked;

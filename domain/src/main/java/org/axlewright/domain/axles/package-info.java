/** What the axles of a vehicle share between all questions: which axle, and the statics of two supports. */
@NullMarked
package org.axlewright.domain.axles;

import org.jspecify.annotations.NullMarked;

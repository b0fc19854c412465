/** The few argument checks, in positive form so that NaN fails. */
@NullMarked
package org.axlewright.domain.check;

import org.jspecify.annotations.NullMarked;

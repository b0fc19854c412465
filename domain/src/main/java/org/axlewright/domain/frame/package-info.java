/** Does the stretched rail and the overhung battery box stand the loads? */
@NullMarked
package org.axlewright.domain.frame;

import org.jspecify.annotations.NullMarked;

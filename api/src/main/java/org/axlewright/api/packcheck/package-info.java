/** {@code domain/packcheck} over HTTP. */
@NullMarked
package org.axlewright.api.packcheck;

import org.jspecify.annotations.NullMarked;

/** {@code domain/fit} over HTTP. */
@NullMarked
package org.axlewright.api.fit;

import org.jspecify.annotations.NullMarked;

/** {@code POST /v1/pack-weight-change}. */
@NullMarked
package org.axlewright.api.repack;

import org.jspecify.annotations.NullMarked;

/** Serves the question of precharge. */
@NullMarked
package org.axlewright.api.precharge;

import org.jspecify.annotations.NullMarked;

/** Serves the question of joints. */
@NullMarked
package org.axlewright.api.joint;

import org.jspecify.annotations.NullMarked;

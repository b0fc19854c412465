/** What resists a vehicle on its way: rolling, grade and air. */
@NullMarked
package org.axlewright.domain.roadload;

import org.jspecify.annotations.NullMarked;

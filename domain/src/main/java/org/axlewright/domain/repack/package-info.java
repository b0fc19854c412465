/** What does another pack do to mass, axle loads, braking, acceleration and climb? */
@NullMarked
package org.axlewright.domain.repack;

import org.jspecify.annotations.NullMarked;

/** Which cable, which fuse, how hot, how many volts lost? */
@NullMarked
package org.axlewright.domain.conductor;

import org.jspecify.annotations.NullMarked;

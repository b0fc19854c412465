/** Which cable, which fuse, how hot, how many volts lost? */
@NullMarked
package org.axlewright.api.conductor;

import org.jspecify.annotations.NullMarked;

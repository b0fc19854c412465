/** What do voltmeter, hydrometer, clamp meter and clock say about this pack? */
@NullMarked
package org.axlewright.domain.packcheck;

import org.jspecify.annotations.NullMarked;

/** How fast will it go, what will it climb, how does it pull away? */
@NullMarked
package org.axlewright.api.drive;

import org.jspecify.annotations.NullMarked;

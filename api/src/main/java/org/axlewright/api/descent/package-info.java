/** Down a long hill with a full pack: where does the braking energy go? */
@NullMarked
package org.axlewright.api.descent;

import org.jspecify.annotations.NullMarked;

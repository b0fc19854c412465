/** Down a long hill with a full pack: where does the braking energy go? */
@NullMarked
package org.axlewright.domain.descent;

import org.jspecify.annotations.NullMarked;

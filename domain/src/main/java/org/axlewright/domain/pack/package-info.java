/** Battery packs: chemistry, cells and what they hold. */
@NullMarked
package org.axlewright.domain.pack;

import org.jspecify.annotations.NullMarked;

/** Will it tip, slide, lift its front wheels or lose the rear? */
@NullMarked
package org.axlewright.api.stability;

import org.jspecify.annotations.NullMarked;

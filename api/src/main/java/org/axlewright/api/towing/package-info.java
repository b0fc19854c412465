/** What may it tow, and what does the drawbar do to the front? */
@NullMarked
package org.axlewright.api.towing;

import org.jspecify.annotations.NullMarked;

/** What does it cost over the years against the alternatives? No winner is built in. */
@NullMarked
package org.axlewright.domain.ownership;

import org.jspecify.annotations.NullMarked;

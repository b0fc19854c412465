/** The headers of the page, and nothing else: what stands in the page itself is the module {@code web}. */
@NullMarked
package org.axlewright.api.page;

import org.jspecify.annotations.NullMarked;

/** How an answer explains itself: sources, steps, findings, assumptions, cautions. */
@NullMarked
package org.axlewright.domain.trace;

import org.jspecify.annotations.NullMarked;

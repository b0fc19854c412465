/** Programs that measure. Nothing here is a test, and no build waits for it. */
@NullMarked
package org.axlewright.benchmarks;

import org.jspecify.annotations.NullMarked;

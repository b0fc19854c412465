/** The registry of calculations and the one way every question takes: form, needs, resolve, calculate, show. */
@NullMarked
package org.axlewright.api.calculation;

import org.jspecify.annotations.NullMarked;

/** Motors: how they are built and for which duty they are rated. */
@NullMarked
package org.axlewright.domain.motor;

import org.jspecify.annotations.NullMarked;

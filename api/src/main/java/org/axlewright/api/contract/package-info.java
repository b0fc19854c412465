/** The OpenAPI document: what the generator can't see is added here, and nowhere else. */
@NullMarked
package org.axlewright.api.contract;

import org.jspecify.annotations.NullMarked;

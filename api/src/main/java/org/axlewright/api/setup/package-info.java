/** Saved setups, and the only room that knows PostgreSQL. No calculation reaches it: they answer while the database is away (contract R12). */
@NullMarked
package org.axlewright.api.setup;

import org.jspecify.annotations.NullMarked;

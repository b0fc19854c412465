/** Saved setups, each in its workspace. No calculation reaches them: those answer while the database is away (contract R12). */
@NullMarked
package org.axlewright.api.setup;

import org.jspecify.annotations.NullMarked;

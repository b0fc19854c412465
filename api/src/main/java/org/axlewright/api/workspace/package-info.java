/** Whose setups: workspaces, the tokens that open them, and how often somebody may ask. */
@NullMarked
package org.axlewright.api.workspace;

import org.jspecify.annotations.NullMarked;

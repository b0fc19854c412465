/** How long does a pack stand, when must it be recharged, and does it freeze? */
@NullMarked
package org.axlewright.api.storage;

import org.jspecify.annotations.NullMarked;

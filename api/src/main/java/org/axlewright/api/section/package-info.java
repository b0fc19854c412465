/** The sections of a request as people send them: nullable, annotated with ranges, one schema and one meaning everywhere (contract R3). */
@NullMarked
package org.axlewright.api.section;

import org.jspecify.annotations.NullMarked;

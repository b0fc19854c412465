/** How a refusal reads: RFC 9457 problem documents with a pointer, a code, the value and the limit for every fault (contract R8). */
@NullMarked
package org.axlewright.api.problem;

import org.jspecify.annotations.NullMarked;

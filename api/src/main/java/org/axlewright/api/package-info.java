/** HTTP and nothing else: what people send, what they get back, and how a refusal reads. */
@NullMarked
package org.axlewright.api;

import org.jspecify.annotations.NullMarked;

/** One setup through every question: assessed, compared with another, and tried with other parts. */
@NullMarked
package org.axlewright.api.assessment;

import org.jspecify.annotations.NullMarked;

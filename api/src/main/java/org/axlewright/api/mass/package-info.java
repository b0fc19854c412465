/** Where does the weight sit, on which axle, how high, and what does this part do to it? */
@NullMarked
package org.axlewright.api.mass;

import org.jspecify.annotations.NullMarked;

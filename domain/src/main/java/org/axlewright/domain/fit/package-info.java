/** Do pack, controller, motor, charger, converter, contactor and accessories fit each other? */
@NullMarked
package org.axlewright.domain.fit;

import org.jspecify.annotations.NullMarked;

/** The three vehicles that come with the service, as setups to start from. */
@NullMarked
package org.axlewright.api.demo;

import org.jspecify.annotations.NullMarked;

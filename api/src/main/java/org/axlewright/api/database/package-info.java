/**
 * PostgreSQL: the one that comes along or one that is given, its tables brought up to date, and the way to ask it. No calculation reaches
 * it: they answer while the database is away (contract R12).
 */
@NullMarked
package org.axlewright.api.database;

import org.jspecify.annotations.NullMarked;

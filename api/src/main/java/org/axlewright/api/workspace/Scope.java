package org.axlewright.api.workspace;

import java.util.Locale;

/** What a token lets its holder do in its workspace. */
enum Scope {
    READ,
    WRITE;

    /** As it stands in the database and in commands. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}

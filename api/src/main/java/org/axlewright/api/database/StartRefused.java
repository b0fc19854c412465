package org.axlewright.api.database;

import org.jspecify.annotations.Nullable;

/** Why the service doesn't start as it is set up, and what its operator can do about it. */
public class StartRefused extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String action;

    public StartRefused(String reason, String action, @Nullable Throwable cause) {
        super(reason, cause);
        this.action = action;
    }

    public StartRefused(String reason, String action) {
        this(reason, action, null);
    }

    public String action() {
        return action;
    }
}

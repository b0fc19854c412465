package org.axlewright.api.setup;

import org.jspecify.annotations.Nullable;

/** Why the service doesn't start with this data directory, and what its operator can do about it. */
final class StartRefused extends RuntimeException {

    private final String action;

    StartRefused(String reason, String action, @Nullable Throwable cause) {
        super(reason, cause);
        this.action = action;
    }

    StartRefused(String reason, String action) {
        this(reason, action, null);
    }

    String action() {
        return action;
    }
}

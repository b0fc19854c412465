package org.axlewright.api.workspace;

import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * The workspace that this thread works for. Work that goes on in another thread takes it along: {@code UUID id = CurrentWorkspace.id()}
 * here, {@code CurrentWorkspace.in(id, ...)} there.
 */
public final class CurrentWorkspace {

    /** The one that needs no token on the service's own machine. */
    public static final UUID LOCAL = UUID.fromString("00000000-0000-4000-8000-000000000000");

    private static final ThreadLocal<@Nullable UUID> ID = new ThreadLocal<>();

    private CurrentWorkspace() {}

    /**
     * Its id.
     *
     * @throws IllegalStateException when this thread works for none: saved setups without a workspace are nobody's to see
     */
    public static UUID id() {
        UUID id = ID.get();
        if (id == null) {
            throw new IllegalStateException("No workspace is set");
        }
        return id;
    }

    /** Works for a workspace, and after that again for the one before. */
    public static <T> T in(UUID workspace, Supplier<T> work) {
        UUID before = ID.get();
        ID.set(workspace);
        try {
            return work.get();
        } finally {
            if (before == null) {
                ID.remove();
            } else {
                ID.set(before);
            }
        }
    }

    static void enter(UUID workspace) {
        ID.set(workspace);
    }

    static void leave() {
        ID.remove();
    }
}

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

    private static final ThreadLocal<@Nullable Supplier<UUID>> DOOR = new ThreadLocal<>();

    private CurrentWorkspace() {}

    /**
     * Its id.
     *
     * @throws org.axlewright.api.problem.Declined when the request may not work in any
     * @throws IllegalStateException when this thread works for none: saved setups without a workspace are nobody's to see
     */
    public static UUID id() {
        Supplier<UUID> door = DOOR.get();
        if (door == null) {
            throw new IllegalStateException("No workspace is set");
        }
        return door.get();
    }

    /** Works for a workspace, and after that again for the one before. */
    public static <T> T in(UUID workspace, Supplier<T> work) {
        Supplier<UUID> before = DOOR.get();
        DOOR.set(() -> workspace);
        try {
            return work.get();
        } finally {
            if (before == null) {
                DOOR.remove();
            } else {
                DOOR.set(before);
            }
        }
    }

    static void enter(Supplier<UUID> door) {
        DOOR.set(door);
    }

    static void leave() {
        DOOR.remove();
    }
}

package org.axlewright.api.setup;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A page of the list of revisions. */
@Schema(description = "A page of the revisions of a setup, newest first; the first is the one it is at.")
record RevisionPage(
        @Schema(description = "The revisions of this page.") List<RevisionEntry> items,

        @Schema(description = "Send it as `cursor` for the next page; absent on the last.") @Nullable
        String next) {}

package org.axlewright.api.setup;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A page of the list of deleted setups. */
@Schema(description = "A page of the deleted setups that can be restored, newest first.")
record DeletedPage(
        @Schema(description = "The deleted setups of this page.")
        List<DeletedEntry> items,

        @Schema(description = "Send it as `cursor` for the next page; absent on the last.") @Nullable
        String next) {}

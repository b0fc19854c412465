package org.axlewright.api.setup;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A page of the list of setups. */
@Schema(description = "A page of the list of setups, newest first.")
record SetupPage(
        @Schema(description = "The setups of this page.") List<SetupEntry> items,

        @Schema(description = "Send it as `cursor` for the next page; absent on the last.") @Nullable
        String next) {}

package org.axlewright.api.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;

/** A result that was left out. */
@Schema(description = "A result that is left out for want of an optional input.")
public record NotAnswered(
        @Schema(description = "The result, a pointer into `result`.")
        String result,

        @Schema(
                description =
                        "What would answer it: pointers into the request, the usual one first; one of them suffices where they are alternatives.")
        List<String> missing) {}

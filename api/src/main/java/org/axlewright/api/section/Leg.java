package org.axlewright.api.section;

import com.fasterxml.jackson.annotation.JsonProperty;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.Size;
import org.axlewright.domain.quantity.Distance;
import org.axlewright.domain.quantity.Grade;
import org.axlewright.domain.quantity.Speed;
import org.axlewright.domain.quantity.Time;
import org.axlewright.domain.roadload.Surface;
import org.jspecify.annotations.Nullable;

/** A stretch of the route. */
@Schema(description = "A stretch of the route at one speed, grade and surface.")
public record Leg(
        @Schema(description = "Length of the stretch.") @Within(min = 0.1, max = 1_000_000, unit = "m") @Nullable
        Distance distance,

        @Schema(description = "Grade, uphill positive; level when left out.")
        @Within(min = -45, max = 45, unit = "deg")
        @Nullable
        Grade grade,

        @Schema(description = "Steady speed.") @Within(min = 0.1, max = 60, unit = "m/s") @Nullable
        Speed speed,

        @Schema(description = "What the road is made of.") @Nullable
        Surface surface,

        @Schema(description = "Full stops on this stretch; none when left out.") @Min(0) @Max(10_000) @Nullable
        Integer stops,

        @Schema(description = "Time standing still on this stretch, accessories on; none when left out.")
        @Within(min = 0, max = 86_400, unit = "s")
        @Nullable
        @JsonProperty("wait") // a record component can't be called wait
        Time waiting,

        @Schema(description = "Opaque text of the sender; echoed in results and findings.") @Size(max = 200) @Nullable
        String reference) {}

package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Size;
import org.axlewright.domain.quantity.Current;
import org.axlewright.domain.quantity.Power;
import org.axlewright.domain.quantity.Temperature;
import org.axlewright.domain.quantity.Time;
import org.jspecify.annotations.Nullable;

/** How a pack stands while it is not used. */
@Schema(
        description =
                "How the pack stands while it is not used. Its state of charge at the start is `pack/stateOfCharge`.")
public record Storage(
        @Schema(description = "How long it stands; or give `from` and `until`.")
        @Within(min = 0, max = 3653, unit = "d")
        @Nullable
        Time duration,

        @Schema(description = "First day, ISO 8601 (`2026-11-25`).") @Size(max = 10) @IsoDate @Nullable
        String from,

        @Schema(description = "Last day, in place of `duration`.") @Size(max = 10) @IsoDate @Nullable
        String until,

        @Schema(description = "Mean temperature of the cells; 20 degC when left out.")
        @Within(min = -40, max = 60, unit = "degC")
        @Nullable
        Temperature temperature,

        @Schema(description = "Coldest they get; `temperature` when left out.")
        @Within(min = -60, max = 60, unit = "degC")
        @Nullable
        Temperature lowestTemperature,

        @Schema(description = "Current that stays on, at the pack; none when left out.")
        @Within(min = 0, max = 50, unit = "A")
        @Nullable
        Current quiescentCurrent,

        @Schema(description = "Power that stays on, in place of `quiescentCurrent`.")
        @Within(min = 0, max = 2000, unit = "W")
        @Nullable
        Power quiescentPower,

        @Schema(
                description =
                        "Share of the rated capacity lost to self-discharge in a month at 20 degC, 0 to 1; the chemistry's usual rate when left out.")
        @DecimalMin("0.0001")
        @DecimalMax("1")
        @Nullable
        Double selfDischarge,

        @Schema(
                description =
                        "State of charge at which it must be recharged, 0 to 1; 0.8 for lead-acid, 0.2 for lithium when left out.")
        @DecimalMin("0")
        @DecimalMax("1")
        @Nullable
        Double rechargeAt,

        @Schema(description = "Specific gravity of the acid at the start, read with a hydrometer; lead-acid only.")
        @DecimalMin("1")
        @DecimalMax("1.28")
        @Nullable
        Double specificGravity) {}

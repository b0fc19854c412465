package org.axlewright.api.storage;

import io.swagger.v3.oas.annotations.media.Schema;
import org.axlewright.domain.quantity.Charge;
import org.axlewright.domain.quantity.Temperature;
import org.axlewright.domain.quantity.Time;
import org.jspecify.annotations.Nullable;

/** How a pack stands: when to recharge, what is left, when it freezes. */
@Schema(
        description =
                "How a pack stands: when to recharge it, what is left at the end, at which temperature it freezes.")
public record StorageResult(
        @Schema(
                description =
                        "Recharge within this time: the earlier of state of charge and longest standing, h; 0 when it stands too low already.")
        Time rechargeWithin,

        @Schema(description = "The day by which to recharge, ISO 8601.") @Nullable
        String rechargeBy,

        @Schema(description = "State of charge at the end of the storage, 0 to 1; 0 when it went flat before.")
        @Nullable
        Double stateOfCharge,

        @Schema(description = "Time until nothing is left, h.")
        Time flatAfter,

        @Schema(description = "The day on which nothing is left, ISO 8601.") @Nullable
        String flatOn,

        @Schema(
                description =
                        "Share of the rated capacity lost to self-discharge in a month at the storage temperature.")
        double selfDischargePerMonth,

        @Schema(description = "Share of the rated capacity that the quiescent load takes in a month.") @Nullable
        Double quiescentPerMonth,

        @Schema(description = "Charge lost to self-discharge by the end or until flat, Ah.") @Nullable
        Charge lostToSelfDischarge,

        @Schema(description = "Charge taken by the quiescent load by the end or until flat, Ah.") @Nullable
        Charge lostToQuiescentLoad,

        @Schema(description = "Temperature at which it freezes at the start, degC or degF; lead-acid only.") @Nullable
        Temperature freezingPoint,

        @Schema(description = "Temperature at which it freezes at the end, degC or degF; lead-acid only.") @Nullable
        Temperature freezingPointAtEnd,

        @Schema(description = "State of charge to store this chemistry at, 0 to 1.")
        double storeAt) {}

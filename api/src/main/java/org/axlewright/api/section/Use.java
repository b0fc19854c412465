package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.Schema;
import org.axlewright.domain.legalclass.Carries;
import org.axlewright.domain.legalclass.ChangedBy;
import org.axlewright.domain.legalclass.HeldBy;
import org.axlewright.domain.legalclass.Place;
import org.axlewright.domain.quantity.Force;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.Mass;
import org.axlewright.domain.quantity.Speed;
import org.jspecify.annotations.Nullable;

/** What the vehicle is used for, as far as classes of vehicles ask. */
@Schema(description = "What the vehicle is used for and how fast it is, as far as classes of vehicles ask.")
public record Use(
        @Schema(
                description =
                        "Top speed on level pavement, reached within 1.6 km (1 mile), as it is now or as planned; `drive/speedLimit`, then `drive/measured/speed`, when left out.")
        @Within(min = 0.1, max = 60, unit = "m/s")
        @Nullable
        Speed topSpeed,

        @Schema(description = "The same before the change.") @Within(min = 0.1, max = 60, unit = "m/s") @Nullable
        Speed formerTopSpeed,

        @Schema(description = "What keeps it at its top speed.") @Nullable
        HeldBy heldBy,

        @Schema(description = "Where it is used; `public-road` when left out.") @Nullable
        Place place,

        @Schema(description = "What it is built to carry; `both` when left out.") @Nullable
        Carries carries,

        @Schema(
                description =
                        "Mass ready for use, with its pack, without people and goods; `bare` with `items` that are no cargo when left out.")
        @Within(min = 10, max = 20_000, unit = "kg")
        @Nullable
        Mass kerbMass,

        @Schema(description = "Goods that the maker rates it for, without people.")
        @Within(min = 0, max = 10_000, unit = "kg")
        @Nullable
        Mass cargo,

        @Schema(description = "Largest pull at the drawbar.") @Within(min = 1, max = 100_000, unit = "N") @Nullable
        Force drawbarPull,

        @Schema(description = "Height of the driver's seating reference point (hip pivot) above the ground.")
        @Within(min = 0.05, max = 3, unit = "m")
        @Nullable
        Length seatHeight,

        @Schema(description = "True when a compartment that is open on three sides at most encloses driver and riders.")
        @Nullable
        Boolean enclosed,

        @Schema(description = "Who makes the change.") @Nullable
        ChangedBy changedBy) {}

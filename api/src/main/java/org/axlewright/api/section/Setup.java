package org.axlewright.api.section;

import io.swagger.v3.oas.annotations.media.ArraySchema;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.Size;
import java.lang.reflect.RecordComponent;
import java.util.List;
import org.axlewright.domain.quantity.Money;
import org.jspecify.annotations.Nullable;

/**
 * One description of a vehicle: the registry of sections (contract R3). It is the body of every calculation and of a saved setup; a
 * section means the same everywhere. A new room extends a section or adds one here.
 */
@Schema(
        description =
                "One description of a vehicle. The body of every calculation and of a saved setup: sections that a calculation does not use are checked for form and otherwise ignored.")
public record Setup(
        @Schema(description = "Name of the setup; needed to save it.") @Size(min = 1, max = 200) @Nullable
        String name,

        @Schema(description = "Notes.") @Size(max = 10_000) @Nullable
        String notes,

        @Valid @Nullable Chassis chassis,
        @Valid @Nullable Bare bare,

        @ArraySchema(arraySchema = @Schema(description = "Parts added or taken off.")) @Size(max = 500) @Nullable
        List<@Valid Item> items,

        @ArraySchema(arraySchema = @Schema(description = "People on board.")) @Size(max = 50) @Nullable
        List<@Valid Occupant> occupants,

        @Valid @Nullable Laden laden,
        @Valid @Nullable Tyres tyres,
        @Valid @Nullable Lift lift,
        @Valid @Nullable Suspension suspension,
        @Valid @Nullable Drive drive,
        @Valid @Nullable Pack pack,
        @Valid @Nullable Charger charger,
        @Valid @Nullable Supply supply,
        @Valid @Nullable ChargeWindow charge,

        @Schema(description = "Price of a kilowatt-hour from the mains.") @Price @Nullable
        Money energyPrice,

        @ArraySchema(arraySchema = @Schema(description = "Circuits to size.")) @Size(max = 100) @Nullable
        List<@Valid Circuit> circuits,

        @Valid @Nullable Ground ground,
        @Valid @Nullable Manoeuvre manoeuvre,
        @Valid @Nullable RoadLoad roadLoad,
        @Valid @Nullable Accessories accessories,

        @ArraySchema(arraySchema = @Schema(description = "The route, repeated until the pack is spent."))
        @Size(max = 200)
        @Nullable
        List<@Valid Leg> route,

        @Valid @Nullable ConstantLoad load,
        @Valid @Nullable Precharge precharge,
        @Valid @Nullable Use use,
        @Valid @Nullable Frame frame,
        @Valid @Nullable Seat seat,
        @Valid @Nullable Storage storage,
        @Valid @Nullable Ownership ownership,
        @Valid @Nullable Readings readings,
        @Valid @Nullable Brakes brakes,
        @Valid @Nullable Hill hill,

        @ArraySchema(arraySchema = @Schema(description = "Terminals and other joints as measured."))
        @Size(max = 200)
        @Nullable
        List<@Valid Joint> joints,

        @Schema(description = "The pack that was on the vehicle before, with its mass and place.") @Valid @Nullable
        Pack formerPack,

        @Valid @Nullable Trailer trailer) {
    /**
     * The same setup with another value of one section.
     *
     * @param section its name
     * @param value of the section's type; null leaves the section out
     */
    public Setup with(String section, @Nullable Object value) {
        RecordComponent[] components = Setup.class.getRecordComponents();
        @Nullable Object[] values = new Object[components.length];
        Class<?>[] types = new Class<?>[components.length];
        boolean known = false;
        try {
            for (int i = 0; i < components.length; i++) {
                boolean other = components[i].getName().equals(section);
                known |= other;
                types[i] = components[i].getType();
                values[i] = other ? value : components[i].getAccessor().invoke(this);
            }
            if (!known) {
                throw new IllegalArgumentException("There is no section " + section);
            }
            return Setup.class.getDeclaredConstructor(types).newInstance(values);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}

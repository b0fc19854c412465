package org.axlewright.api.descent;

import io.swagger.v3.oas.annotations.media.Schema;
import org.axlewright.domain.quantity.Charge;
import org.axlewright.domain.quantity.Current;
import org.axlewright.domain.quantity.Energy;
import org.axlewright.domain.quantity.Mass;
import org.axlewright.domain.quantity.Power;
import org.axlewright.domain.quantity.Resistance;
import org.axlewright.domain.quantity.Speed;
import org.axlewright.domain.quantity.TemperatureDifference;
import org.axlewright.domain.quantity.Time;
import org.axlewright.domain.quantity.Voltage;
import org.jspecify.annotations.Nullable;

/** The way down with everybody aboard, and the same without occupants under {@code empty}. */
@Schema(
        description =
                "The way down at steady speed with everybody aboard; the same without occupants under `empty`. Temperature rises are upper bounds: nothing is given off meanwhile.")
public record DescentResult(
        @Schema(description = "Mass as driven, kg or lb.") Mass mass,

        @Schema(description = "Energy of the height lost, Wh: `split` adds up to it.")
        Energy energy,

        @Schema(description = "Time on the way down, h.") Time duration,

        @Schema(description = "Mean power of the height lost, W; left out when nothing falls.") @Nullable
        Power meanPower,

        @Schema(
                description =
                        "Greatest power that holds the speed, W: what rolling and air do not take on the stretch that pulls hardest.")
        Power holdingPower,

        @Schema(description = "Where the energy goes.") SplitResult split,

        @Schema(description = "What the pack has to do with it.") @Nullable
        PackResult pack,

        @Schema(description = "Heat of the friction brakes as the energy is split.")
        BrakesResult brakes,

        @Schema(description = "Everything into the friction brakes: a full, cold or disconnected pack.")
        BrakesResult brakesAlone,

        @Schema(description = "The stop at the bottom, on top of the hill.")
        BrakesResult stopAtBottom,

        @Schema(description = "What a braking resistor must take when the pack takes nothing.") @Nullable
        ResistorResult brakingResistor,

        @Schema(description = "What the tyres must give on the stretch that asks most.")
        AdhesionResult adhesion,

        @Schema(description = "With nothing holding it; left out where nothing pulls.") @Nullable
        RunawayResult runaway,

        @Schema(description = "The same without occupants.") @Nullable
        Empty empty) {

    /** The vehicle without occupants. */
    @Schema(name = "DescentEmpty", description = "The way down without occupants.")
    public record Empty(
            @Schema(description = "Mass, kg or lb.") Mass mass,

            @Schema(description = "Energy of the height lost, Wh.")
            Energy energy,

            @Schema(description = "Time on the way down, h.")
            Time duration,

            @Schema(description = "Mean power of the height lost, W.") @Nullable
            Power meanPower,

            @Schema(description = "Greatest power that holds the speed, W.")
            Power holdingPower,

            @Schema(description = "Where the energy goes.") SplitResult split,

            @Schema(description = "What the pack has to do with it.") @Nullable
            PackResult pack,

            @Schema(description = "Heat of the friction brakes as the energy is split.")
            BrakesResult brakes,

            @Schema(description = "Everything into the friction brakes.")
            BrakesResult brakesAlone,

            @Schema(description = "The stop at the bottom.") BrakesResult stopAtBottom,

            @Schema(description = "What a braking resistor must take when the pack takes nothing.") @Nullable
            ResistorResult brakingResistor,

            @Schema(description = "What the tyres must give.")
            AdhesionResult adhesion,

            @Schema(description = "With nothing holding it.") @Nullable
            RunawayResult runaway) {}

    /** Where the energy goes. */
    @Schema(
            name = "DescentSplit",
            description =
                    "Where the energy of the height goes, Wh: rolling, drag, friction brakes, drive loss, pack and resistor, less what the motor adds, make up `energy`.")
    public record SplitResult(
            @Schema(description = "Into rolling resistance.")
            Energy rolling,

            @Schema(description = "Into the air.") Energy drag,

            @Schema(description = "Into the friction brakes.")
            Energy frictionBrakes,

            @Schema(description = "Taken by the motor, pack and resistor and losses together.")
            Energy regeneration,

            @Schema(description = "Of that, lost between wheel and battery terminals.")
            Energy driveLoss,

            @Schema(description = "Of that, into the pack.") Energy pack,

            @Schema(description = "Of that, into the braking resistor.")
            Energy resistor,

            @Schema(description = "What the motor adds on stretches that fall too little.")
            Energy motorAdds) {}

    /** The pack on the way down. */
    @Schema(name = "DescentPack", description = "The pack on the way down; needs cells in series and chemistry.")
    public record PackResult(
            @Schema(description = "Charge that still fits in at the top, Ah.") @Nullable
            Charge headroom,

            @Schema(description = "The same as energy at the nominal voltage, Wh.") @Nullable
            Energy headroomEnergy,

            @Schema(description = "Charge that goes in on the way down, Ah.") @Nullable
            Charge charge,

            @Schema(description = "Charge that would go in if the pack never got full, Ah.") @Nullable
            Charge wantedCharge,

            @Schema(description = "Greatest charging current when the motor holds the speed alone, A.") @Nullable
            Current chargingCurrent,

            @Schema(
                    description =
                            "State of charge to leave the top with so that everything fits, 0 to 1; left out when the hill gives more than the whole pack holds.")
            @Nullable
            Double stateOfChargeAtTop,

            @Schema(description = "State of charge at the bottom, 0 to 1.") @Nullable
            Double stateOfChargeAtBottom,

            @Schema(description = "Voltage at which regeneration should begin to fade, V; lithium iron phosphate only.")
            @Nullable
            Voltage fadeFrom,

            @Schema(description = "Voltage at which it should be gone, V.") @Nullable
            Voltage fadeTo,

            @Schema(
                    description =
                            "Voltage that controller and capacitors must bear: 1.2 times the full pack, for the peaks of regeneration, V.")
            Voltage voltageToBear) {}

    /** Heat of the friction brakes. */
    @Schema(name = "DescentBrakes", description = "Heat of the friction brakes and temperature rise by axle.")
    public record BrakesResult(
            @Schema(description = "Heat, Wh.") Energy heat,

            @Schema(description = "Rise of the front drums or discs, K.") @Nullable
            TemperatureDifference frontTemperatureRise,

            @Schema(description = "Rise of the rear drums or discs, K.") @Nullable
            TemperatureDifference rearTemperatureRise) {}

    /** A resistor for a pack that takes nothing. */
    @Schema(name = "DescentResistor", description = "What a braking resistor must take when the pack takes nothing.")
    public record ResistorResult(
            @Schema(description = "Greatest power, W.") Power power,

            @Schema(description = "Energy over the whole hill, Wh.")
            Energy energy,

            @Schema(
                    description =
                            "Largest resistance that takes the power, at the lower of full pack and highest controller voltage.")
            @Nullable
            Resistance largestResistance,

            @Schema(description = "Temperature rise of the heat sink over the whole hill, K.") @Nullable
            TemperatureDifference temperatureRise) {}

    /** Friction needed. */
    @Schema(
            name = "DescentAdhesion",
            description =
                    "Friction that holding the speed takes on the stretch that asks most, against that of the ground.")
    public record AdhesionResult(
            @Schema(description = "When the motor holds it alone, by the driven axle.") @Nullable
            Double byMotor,

            @Schema(description = "When the friction brakes hold it alone, by the braked axle.") @Nullable
            Double byBrakes,

            @Schema(description = "Friction of the ground.") double friction) {}

    /** With nothing holding it. */
    @Schema(name = "DescentRunaway", description = "With nothing holding it, on the stretch that pulls hardest.")
    public record RunawayResult(
            @Schema(description = "Speed at which the air alone would hold it, km/h or mph.")
            Speed terminalSpeed,

            @Schema(description = "Time until the speed has doubled, s; left out where it never does.") @Nullable
            Time doublingTime) {}
}

package org.axlewright.api.fit;

import io.swagger.v3.oas.annotations.media.ArraySchema;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.axlewright.domain.fit.Part;
import org.axlewright.domain.fit.Verdict;
import org.axlewright.domain.fit.VoltageClass;
import org.axlewright.domain.quantity.Charge;
import org.axlewright.domain.quantity.Current;
import org.axlewright.domain.quantity.Energy;
import org.axlewright.domain.quantity.Mass;
import org.axlewright.domain.quantity.Time;
import org.axlewright.domain.quantity.Voltage;
import org.jspecify.annotations.Nullable;

/** Whether the parts fit each other. */
@Schema(description = "Whether pack, controller, motor, charger, converter, contactor and accessories fit each other.")
public record PackFitResult(
        @Schema(description = "The worst verdict of all pairs; `undecided` without any pair.")
        Verdict verdict,

        @ArraySchema(
                arraySchema =
                        @Schema(
                                description =
                                        "Every pair of parts that was sent, the deciding one first. A part that was not sent has no pair."))
        List<PairResult> pairs,

        @Schema(description = "Voltages of the pack.") Voltages voltages,

        @Schema(description = "Currents and the limits they are held against.")
        Currents currents,

        @Schema(description = "Nominal energy.") @Nullable PackEnergy energy,

        @Schema(description = "What a pack of this energy usually weighs.") @Nullable
        MassBand mass,

        @Schema(
                description =
                        "Between these pack voltages regeneration is to fade to nothing; lithium iron phosphate only.")
        @Nullable
        Fade regenerationFade,

        @Schema(description = "The tap across some blocks.") @Nullable
        TapResult tap,

        @ArraySchema(
                arraySchema =
                        @Schema(
                                description =
                                        "Voltages at which rules and parts change, and whether the pack is beyond them."))
        List<ClassResult> voltageClasses) {

    /** Two parts and their verdict. */
    @Schema(name = "FitPair", description = "Two parts, their verdict, and the check that decides it.")
    public record PairResult(
            @ArraySchema(arraySchema = @Schema(description = "The two parts."))
            List<Part> between,

            @Schema(description = "The worst verdict of its checks.")
            Verdict verdict,

            @Schema(description = "Name of the deciding check; new ones may be added.")
            String check,

            @Schema(description = "The value that decides: a quantity in output units or a plain number.") @Nullable
            Object actual,

            @Schema(description = "The limit it is held against: a quantity in output units or a plain number.")
            @Nullable
            Object limit,

            @Schema(description = "Share of the limit that is left; negative beyond it.") @Nullable
            Double margin,

            @ArraySchema(
                    arraySchema =
                            @Schema(description = "Pointers to what is missing for a verdict; empty when nothing is."))
            List<String> missing,

            @ArraySchema(arraySchema = @Schema(description = "Every check of the pair."))
            List<CheckResult> checks) {}

    /** One check. */
    @Schema(name = "FitCheck", description = "One value held against one limit.")
    public record CheckResult(
            @Schema(description = "Its name; new ones may be added.")
            String check,

            @Schema(description = "What it comes to.") Verdict verdict,

            @Schema(description = "The value: a quantity in output units or a plain number.") @Nullable
            Object actual,

            @Schema(description = "The limit: a quantity in output units or a plain number.") @Nullable
            Object limit,

            @Schema(description = "Share of the limit that is left; negative beyond it.") @Nullable
            Double margin,

            @ArraySchema(arraySchema = @Schema(description = "Pointers to what is missing; empty when nothing is."))
            List<String> missing) {}

    /** Voltages of the pack. */
    @Schema(name = "FitVoltages", description = "Voltages of the pack.")
    public record Voltages(
            @Schema(description = "Cells in series they follow from, 1 to 200.")
            int cells,

            @Schema(description = "At the end of an ordinary charge, V.")
            Voltage full,

            @Schema(description = "Nominal, V.") Voltage nominal,

            @Schema(description = "At the end of the discharge, under load, V.")
            Voltage cutOff,

            @Schema(description = "The most any part sees: full, or the charger's end voltage where that is more, V.")
            Voltage highest,

            @Schema(description = "Full and at rest, flooded only, V.") @Nullable
            Voltage rest,

            @Schema(description = "At the end of an equalising charge, flooded only, V.") @Nullable
            Voltage equalise,

            @Schema(description = "End voltage of the charger for each cell, V.") @Nullable
            Voltage chargerEndPerCell,

            @Schema(description = "Half full, under the battery-side limit of the controller, V.") @Nullable
            Voltage loaded,

            @Schema(description = "Full, under the regeneration limit of the controller, V.") @Nullable
            Voltage regenerating) {}

    /** Currents and limits. */
    @Schema(name = "FitCurrents", description = "Currents, and the limits they are held against.")
    public record Currents(
            @Schema(description = "Battery-side limit of the controller, A.") @Nullable
            Current battery,

            @Schema(description = "The same in each string, A.") @Nullable
            Current perString,

            @Schema(description = "Motor-side limit of the controller, A; never the pack's current.") @Nullable
            Current motor,

            @Schema(description = "What the rated shaft power takes from the pack, losses and sag included, A.")
            @Nullable
            Current ratedPower,

            @Schema(description = "Battery-side limit over the capacity of all strings, times per hour (C-rate).")
            @Nullable
            Double dischargeRate,

            @Schema(description = "What the pack gives for long, at its temperature, A.") @Nullable
            Current continuousLimit,

            @Schema(description = "What the pack gives for a short time, A.") @Nullable
            Current peakLimit,

            @Schema(description = "For how long, s.") @Nullable
            Time peakTime,

            @Schema(description = "What the pack may be charged with, at its temperature, A.") @Nullable
            Current chargeLimit,

            @Schema(description = "Regeneration limit of the controller, A.") @Nullable
            Current regeneration,

            @Schema(description = "What the load of the converter takes from the pack, A.") @Nullable
            Current converter) {}

    /** Nominal energy. */
    @Schema(name = "FitEnergy", description = "Nominal energy: voltage times capacity.")
    public record PackEnergy(
            @Schema(description = "Of the whole pack, Wh.") Energy nominal,
            @Schema(description = "Of one string, Wh.") Energy perString,

            @Schema(description = "Of one block, Wh.") @Nullable
            Energy perBlock) {}

    /** Usual mass. */
    @Schema(name = "PackMassBand", description = "What a pack of this energy usually weighs, with its case.")
    public record MassBand(
            @Schema(description = "As sent, kg or lb.") @Nullable
            Mass mass,

            @Schema(description = "Usual, from, kg or lb.") Mass least,
            @Schema(description = "Usual, to, kg or lb.") Mass most) {}

    /** Fading regeneration. */
    @Schema(name = "RegenerationFade", description = "Pack voltages between which regeneration is to fade to nothing.")
    public record Fade(
            @Schema(description = "Full regeneration up to here, V.")
            Voltage from,

            @Schema(description = "None from here, V.") Voltage to) {}

    /** A tap. */
    @Schema(name = "TapResult", description = "The tap across some blocks.")
    public record TapResult(
            @Schema(description = "Its voltage with full blocks, V.")
            Voltage full,

            @Schema(description = "Charge its blocks lose against the others in a day, Ah.") @Nullable
            Charge imbalancePerDay) {}

    /** A voltage class. */
    @Schema(name = "VoltageClassResult", description = "One voltage at which rules or parts change.")
    public record ClassResult(
            @Schema(description = "Its name; new ones may be added.")
            VoltageClass name,

            @Schema(description = "The voltage, V.") Voltage limit,

            @Schema(description = "Whether the pack is beyond it fully charged: this counts.")
            boolean passed,

            @Schema(description = "Whether it is beyond it at its nominal voltage, for comparison only.")
            boolean passedAtNominal,

            @Schema(description = "What changes there.") String meaning,
            @Schema(description = "Where it comes from.") String source) {}
}

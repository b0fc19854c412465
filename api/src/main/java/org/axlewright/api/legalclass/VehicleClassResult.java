package org.axlewright.api.legalclass;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.axlewright.domain.legalclass.Region;
import org.axlewright.domain.legalclass.Verdict;
import org.axlewright.domain.quantity.Mass;
import org.axlewright.domain.quantity.Speed;
import org.jspecify.annotations.Nullable;

/** Classes that the vehicle meets and does not meet, and how far away the thresholds are. */
@Schema(
        description =
                "Classes that the vehicle meets, does not meet or may meet, the figures that decide, and how far away the next thresholds are. Local law decides.")
public record VehicleClassResult(
        @Schema(description = "What fits best in the United States; absent when no class of the table does.") @Nullable
        Fit unitedStates,

        @Schema(description = "What fits best in Canada; absent when no class of the table does.") @Nullable
        Fit canada,

        @Schema(description = "What fits best in the European Union; absent when no class of the table does.") @Nullable
        Fit europeanUnion,

        @Schema(description = "Top speed that was judged, km/h or mph.")
        Speed topSpeed,

        @Schema(description = "Limits of speed next to the top speed.")
        Neighbours speed,

        @Schema(description = "Limits next to the gross rating.") @Nullable
        Neighbours grossRating,

        @Schema(description = "Limits next to the unladen mass.") @Nullable
        Neighbours unladenMass,

        @Schema(description = "Limits next to the mass in running order of class L.") @Nullable
        Neighbours runningOrder,

        @Schema(description = "Limits next to the motor's power.") @Nullable
        Neighbours power,

        @Schema(description = "Limits next to the number of seats.") @Nullable
        Neighbours seats,

        @Schema(
                description =
                        "Least gross rating that the maker may state: unladen, rated cargo and 150 lb for each seat; kg or lb.")
        @Nullable
        Mass leastGrossRating,

        @Schema(
                description =
                        "Mass in running order as class L counts it: unladen without the propulsion battery, no driver; kg or lb.")
        @Nullable
        Mass runningOrderMass,

        @Schema(description = "Rating less unladen mass, kg or lb.") @Nullable
        Mass payload,

        @Schema(description = "What the change of top speed crossed.") @Nullable
        Crossing crossing,

        @Schema(description = "Every class of the table, in its order.")
        List<Judgement> classes) {

    /** The class that fits best. */
    @Schema(
            name = "VehicleClassFit",
            description =
                    "The class that fits best: on public roads and closed ground the first class of the road that is met, else the first of the place of use, else the first that can't be ruled out.")
    public record Fit(
            @Schema(description = "Stable name of the class.")
            String code,

            @Schema(description = "For people.") String name,

            @Schema(description = "`met`, or `undecided` when something is not known.")
            Verdict verdict) {}

    /** Limits on either side. */
    @Schema(name = "VehicleClassNeighbours", description = "The nearest limits below and above a figure.")
    public record Neighbours(
            @Schema(description = "The figure: a quantity or a count.")
            Object actual,

            @Schema(description = "The nearest limit below.") @Nullable
            Threshold below,

            @Schema(description = "The nearest limit above.") @Nullable
            Threshold above) {}

    /** A limit. */
    @Schema(name = "VehicleClassThreshold", description = "A limit and the classes that it bounds.")
    public record Threshold(
            @Schema(description = "The limit as printed, `32 km/h (20 mph)`.")
            String printed,

            @Schema(description = "The printing nearer to the figure: a quantity or a count.")
            Object limit,

            @Schema(description = "How far away it is: a quantity or a count; 0 between two printings of one limit.")
            Object distance,

            @Schema(description = "Classes that it bounds.") List<String> classes) {}

    /** What a change of speed did. */
    @Schema(name = "VehicleClassCrossing", description = "What the change of top speed crossed.")
    public record Crossing(
            @Schema(description = "Top speed before, km/h or mph.")
            Speed formerTopSpeed,

            @Schema(description = "Limits between before and now; `distance` is how far past them the vehicle is now.")
            List<Threshold> passed,

            @Schema(description = "Classes that it could be before and can't be now.")
            List<String> left,

            @Schema(description = "Classes that it could not be before and can be now.")
            List<String> entered,

            @Schema(description = "What fits best now, of each region where something else did before.")
            List<String> becomes,

            @Schema(description = "What the classes entered and become bring in equipment and duties.")
            List<Duty> brings) {}

    /** A class with its conditions. */
    @Schema(name = "VehicleClassJudgement", description = "A class and how the vehicle stands to it.")
    public record Judgement(
            @Schema(description = "Stable name of the class.")
            String code,

            @Schema(description = "Whose class it is.") Region region,

            @Schema(description = "For people.") String name,

            @Schema(description = "`met`, `not-met` or `undecided`.")
            Verdict verdict,

            @Schema(description = "The conditions.") List<Condition> conditions,

            @Schema(description = "Pointers of what would decide it; empty when it is decided.")
            List<String> missing,

            @Schema(description = "What it brings in equipment and duties.")
            List<Duty> brings,

            @Schema(description = "Edition and clause.") String source) {}

    /** A condition of a class. */
    @Schema(name = "VehicleClassCondition", description = "A condition of a class.")
    public record Condition(
            @Schema(description = "What it looks at.") String aspect,

            @Schema(description = "`<`, `<=`, `>`, `>=`, `=`, `in` words, or `unless` other classes are met.")
            String relation,

            @Schema(description = "The limit as printed, or the words.")
            String limit,

            @Schema(description = "`met`, `not-met` or `undecided`.")
            Verdict verdict,

            @Schema(description = "The figure of the vehicle: a quantity, a count or a word.") @Nullable
            Object actual,

            @Schema(
                    description =
                            "Room left to the stricter printing of the limit, negative beyond it: a quantity or a count.")
            @Nullable
            Object margin,

            @Schema(description = "Edition and clause; marks such as [weak] or [from memory] tell its standing.")
            String source) {}

    /** What a class brings. */
    @Schema(name = "VehicleClassDuty", description = "Equipment or a duty that comes with a class.")
    public record Duty(
            @Schema(description = "What.") String item,

            @Schema(description = "Edition and clause.") String source) {}
}

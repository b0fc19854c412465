package org.axlewright.api.legalclass;

import java.util.List;
import java.util.Objects;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.Needs;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.legalclass.VehicleClassResult.Condition;
import org.axlewright.api.legalclass.VehicleClassResult.Crossing;
import org.axlewright.api.legalclass.VehicleClassResult.Duty;
import org.axlewright.api.legalclass.VehicleClassResult.Fit;
import org.axlewright.api.legalclass.VehicleClassResult.Judgement;
import org.axlewright.api.legalclass.VehicleClassResult.Neighbours;
import org.axlewright.api.legalclass.VehicleClassResult.Threshold;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.legalclass.Aspect;
import org.axlewright.domain.legalclass.Classification;
import org.axlewright.domain.legalclass.Region;
import org.axlewright.domain.legalclass.Vehicle;
import org.axlewright.domain.legalclass.VehicleClass;
import org.axlewright.domain.quantity.Dimension;
import org.axlewright.domain.quantity.Mass;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Legal class: from speed, masses, seats and power to the classes of vehicle, and the distance to each threshold. */
public final class VehicleClassCalculation
        implements Calculation<Vehicle, VehicleClassCalculation.Output, VehicleClassResult> {

    private static final Needs NEEDS = Needs.one(
            Needs.value("/use/topSpeed"), Needs.value("/drive/speedLimit"), Needs.value("/drive/measured/speed"));

    /** What the domain found, with the vehicle it was found of. */
    public record Output(Vehicle vehicle, Classification.Result found) {}

    @Override
    public String name() {
        return "vehicle-class";
    }

    @Override
    public String question() {
        return "Which class of vehicle is this now, by which figure, and how far away is the next threshold?";
    }

    @Override
    public Needs needs() {
        return NEEDS;
    }

    @Override
    public List<String> leads() {
        return List.of("/unitedStates/name", "/speed/above/distance", "/speed/above/printed", "/speed/below/distance");
    }

    @Override
    public Class<VehicleClassResult> resultType() {
        return VehicleClassResult.class;
    }

    @Override
    public Vehicle resolve(Setup setup, Resolution resolution) {
        return VehicleClassSections.resolve(setup, resolution);
    }

    @Override
    public Output calculate(Vehicle vehicle, Trace trace) {
        return new Output(vehicle, Classification.of(vehicle, trace));
    }

    @Override
    public VehicleClassResult show(Output output, UnitSystem units) {
        Classification.Result found = output.found();
        return new VehicleClassResult(
                fit(Region.UNITED_STATES, found),
                fit(Region.CANADA, found),
                fit(Region.EUROPEAN_UNION, found),
                units.speed(output.vehicle().topSpeedMPerS()),
                Objects.requireNonNull(neighbours(Aspect.TOP_SPEED, found, units)),
                neighbours(Aspect.GROSS_RATING, found, units),
                neighbours(Aspect.UNLADEN_MASS, found, units),
                neighbours(Aspect.RUNNING_ORDER_MASS, found, units),
                neighbours(Aspect.POWER, found, units),
                neighbours(Aspect.SEATS, found, units),
                mass(found.leastRatingKg(), units),
                mass(found.runningOrderKg(), units),
                mass(found.payloadKg(), units),
                crossing(found.crossing(), units),
                found.classes().stream().map(one -> judgement(one, units)).toList());
    }

    private static @Nullable Fit fit(Region region, Classification.Result found) {
        Classification.JudgedClass fit = found.fits().get(region);
        return fit == null ? null : new Fit(fit.type().code(), fit.type().name(), fit.verdict());
    }

    private static @Nullable Mass mass(@Nullable Double kilograms, UnitSystem units) {
        return kilograms == null ? null : units.mass(kilograms);
    }

    private static @Nullable Neighbours neighbours(Aspect aspect, Classification.Result found, UnitSystem units) {
        Classification.Neighbours known = found.neighbours().get(aspect);
        if (known == null) {
            return null;
        }
        Classification.Threshold below = known.below();
        Classification.Threshold above = known.above();
        Dimension dimension = aspect.dimension();
        return new Neighbours(
                dimension.show(known.actual(), units),
                below == null ? null : threshold(below, below.condition().highSi(), units),
                above == null ? null : threshold(above, above.condition().lowSi(), units));
    }

    private static Threshold threshold(Classification.Threshold threshold, double limitSi, UnitSystem units) {
        Dimension dimension = threshold.condition().aspect().dimension();
        return new Threshold(
                threshold.condition().printed(),
                dimension.show(limitSi, units),
                dimension.show(threshold.distance(), units),
                threshold.classes());
    }

    private static @Nullable Crossing crossing(Classification.@Nullable Crossing crossing, UnitSystem units) {
        return crossing == null
                ? null
                : new Crossing(
                        units.speed(crossing.formerTopSpeedMPerS()),
                        crossing.passed().stream()
                                .map(one -> threshold(one, one.condition().lowSi(), units))
                                .toList(),
                        codes(crossing.left()),
                        codes(crossing.entered()),
                        codes(crossing.becomes()),
                        crossing.brings().stream()
                                .map(VehicleClassCalculation::duty)
                                .toList());
    }

    private static List<String> codes(List<Classification.JudgedClass> classes) {
        return classes.stream().map(one -> one.type().code()).toList();
    }

    private static Duty duty(VehicleClass.Duty duty) {
        return new Duty(duty.text(), duty.source().toString());
    }

    private static Judgement judgement(Classification.JudgedClass one, UnitSystem units) {
        return new Judgement(
                one.type().code(),
                one.type().region(),
                one.type().name(),
                one.verdict(),
                one.conditions().stream()
                        .map(condition -> condition(condition, units))
                        .toList(),
                one.missing(),
                one.type().brings().stream().map(VehicleClassCalculation::duty).toList(),
                one.type().source().toString());
    }

    private static Condition condition(Classification.Judged judged, UnitSystem units) {
        Dimension dimension = judged.condition().aspect().dimension();
        return new Condition(
                judged.condition().aspect().toString(),
                judged.condition().relation().toString(),
                judged.condition().printed(),
                judged.verdict(),
                judged.known().exact() ? dimension.show(judged.known().from(), units) : judged.word(),
                judged.margin() == null ? null : dimension.show(judged.margin(), units),
                judged.condition().source().toString());
    }
}

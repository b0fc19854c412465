package org.axlewright.api.calculation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.axlewright.api.braking.BrakingCalculation;
import org.axlewright.api.charging.ChargeTimeCalculation;
import org.axlewright.api.conductor.ConductorSizeCalculation;
import org.axlewright.api.descent.DescentCalculation;
import org.axlewright.api.drive.DrivePerformanceCalculation;
import org.axlewright.api.drive.GearingCalculation;
import org.axlewright.api.energy.PackRangeCalculation;
import org.axlewright.api.fit.PackFitCalculation;
import org.axlewright.api.frame.FrameOverhangCalculation;
import org.axlewright.api.joint.JointCalculation;
import org.axlewright.api.legalclass.VehicleClassCalculation;
import org.axlewright.api.lift.LiftGeometryCalculation;
import org.axlewright.api.mass.CentreOfGravityCalculation;
import org.axlewright.api.ownership.OwnershipCostCalculation;
import org.axlewright.api.packcheck.PackCheckCalculation;
import org.axlewright.api.precharge.PrechargeCalculation;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.problem.Refused;
import org.axlewright.api.repack.PackWeightChangeCalculation;
import org.axlewright.api.ride.RideHeightCalculation;
import org.axlewright.api.seating.SeatReachCalculation;
import org.axlewright.api.section.Form;
import org.axlewright.api.section.Setup;
import org.axlewright.api.stability.StabilityCalculation;
import org.axlewright.api.storage.StorageCalculation;
import org.axlewright.api.towing.TowingCalculation;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Trace;

/**
 * The registry: every calculation there is, and the one path a question takes through it. Pure: no database, no clock, the same answer
 * for the same setup.
 */
public final class Calculations {

    /** A new room is one line here, and its files. */
    private static final List<Calculation<?, ?, ?>> REGISTRY = List.of(
            new CentreOfGravityCalculation(),
            new LiftGeometryCalculation(),
            new RideHeightCalculation(),
            new StabilityCalculation(),
            new BrakingCalculation(),
            new DescentCalculation(),
            new TowingCalculation(),
            new GearingCalculation(),
            new DrivePerformanceCalculation(),
            new PackRangeCalculation(),
            new PackFitCalculation(),
            new PackCheckCalculation(),
            new StorageCalculation(),
            new ChargeTimeCalculation(),
            new ConductorSizeCalculation(),
            new PrechargeCalculation(),
            new JointCalculation(),
            new FrameOverhangCalculation(),
            new SeatReachCalculation(),
            new VehicleClassCalculation(),
            new OwnershipCostCalculation(),
            new PackWeightChangeCalculation());

    private final Map<String, Calculation<?, ?, ?>> byName = new LinkedHashMap<>();
    private final Form form;
    private final Answer.Engine engine;

    public Calculations(Form form, String version) {
        this.form = form;
        this.engine = new Answer.Engine(version);
        REGISTRY.forEach(calculation -> byName.put(calculation.name(), calculation));
    }

    public List<Calculation<?, ?, ?>> all() {
        return REGISTRY;
    }

    public Optional<Calculation<?, ?, ?>> named(String name) {
        return Optional.ofNullable(byName.get(name));
    }

    /**
     * Asks one question.
     *
     * @throws Refused with everything found: form, contradictions and missing inputs together
     */
    public <R> Answer<R> ask(Calculation<?, ?, R> calculation, Setup setup, Asked asked) {
        List<Fault> faults = new ArrayList<>(form.faults(setup));
        missing(calculation, setup, faults);
        if (!faults.isEmpty()) {
            throw new Refused(faults);
        }
        return answered(calculation, setup, asked);
    }

    /** What became of one question when a setup was asked all of them. */
    public sealed interface Outcome {

        Calculation<?, ?, ?> calculation();

        /** It was answered, as its own POST answers. */
        record Answered(Calculation<?, ?, ?> calculation, Answer<?> answer) implements Outcome {}

        /**
         * It was not.
         *
         * @param missing pointers that its needs lack
         * @param faults what its own POST refuses beside that
         */
        record Left(Calculation<?, ?, ?> calculation, List<String> missing, List<Fault> faults) implements Outcome {}
    }

    /**
     * Asks every question of the registry; the form is checked once.
     *
     * @throws Refused when the form is not in order
     */
    public List<Outcome> askAll(Setup setup, Asked asked) {
        List<Fault> faults = form.faults(setup);
        if (!faults.isEmpty()) {
            throw new Refused(faults);
        }
        return REGISTRY.stream()
                .map(calculation -> outcome(calculation, setup, asked))
                .toList();
    }

    /** Whether nothing of the form is wrong. */
    public boolean inForm(Setup setup) {
        return form.faults(setup).isEmpty();
    }

    /** The checks of the form, for those who change a setup many times. */
    public Form form() {
        return form;
    }

    /** One question of a setup whose form is in order; what it lacks or refuses is told, not thrown. */
    public Outcome outcome(Calculation<?, ?, ?> calculation, Setup setup, Asked asked) {
        List<String> missing = List.copyOf(new TreeSet<>(calculation.needs().missing(setup)));
        if (!missing.isEmpty()) {
            return new Outcome.Left(calculation, missing, List.of());
        }
        try {
            return new Outcome.Answered(calculation, answered(calculation, setup, asked));
        } catch (Refused refused) {
            List<String> lacking = refused.faults().stream()
                    .filter(fault -> fault.code().equals("missing"))
                    .map(Fault::pointer)
                    .toList();
            List<Fault> others = refused.faults().stream()
                    .filter(fault -> !fault.code().equals("missing"))
                    .toList();
            return new Outcome.Left(calculation, lacking, others);
        }
    }

    /** The version that answers. */
    public Answer.Engine engine() {
        return engine;
    }

    /** A missing pointer is named once: a fault of form there says more. */
    private static void missing(Calculation<?, ?, ?> calculation, Setup setup, List<Fault> faults) {
        TreeSet<String> known = new TreeSet<>();
        faults.forEach(fault -> known.add(fault.pointer()));
        for (String pointer : calculation.needs().missing(setup)) {
            if (known.add(pointer)) {
                faults.add(Fault.missing(pointer));
            }
        }
    }

    private <R> Answer<R> answered(Calculation<?, ?, R> calculation, Setup setup, Asked asked) {
        return worded(found(calculation, setup, asked), asked);
    }

    /**
     * What a calculation found, before it is put into words.
     *
     * @param result in output units
     * @param trace findings, cautions and steps, coherent SI
     * @param resolution assumptions, and what can't be answered
     */
    public record Found<R>(R result, Trace trace, Resolution resolution) {

        /** Results left out, and what is missing for them. */
        public List<NotAnswered> notAnswered() {
            return resolution.notAnswered();
        }
    }

    /**
     * Asks one question of a setup whose form and needs are in order, and leaves the words for later: for those who ask many times and
     * look at few values.
     *
     * @throws Refused with what only resolving brings to light
     */
    public <I, O, R> Found<R> found(Calculation<I, O, R> calculation, Setup setup, Asked asked) {
        Resolution resolution = new Resolution();
        I input = calculation.resolve(setup, resolution);
        resolution.refuseIfFaulty();
        Trace trace = asked.working() ? Trace.withWorking() : Trace.withoutWorking();
        O output = calculation.calculate(input, trace);
        return new Found<>(calculation.show(output, asked.units()), trace, resolution);
    }

    /** Puts one finding into words. */
    public Answer.ShownFinding worded(Finding finding, UnitSystem units) {
        return Shown.finding(finding, units);
    }

    /** Puts it into words. */
    public <R> Answer<R> worded(Found<R> found, Asked asked) {
        return new Answer<>(
                engine,
                found.result(),
                List.copyOf(found.notAnswered()),
                Shown.findings(found.trace(), asked.units()),
                Shown.assumptions(found.resolution().assumptions(), asked.units()),
                asked.working() ? Shown.working(found.trace()) : null,
                Shown.cautions(found.trace()));
    }
}

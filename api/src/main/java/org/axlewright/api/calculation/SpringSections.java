package org.axlewright.api.calculation;

import static org.axlewright.domain.quantity.Constants.STANDARD_GRAVITY;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.MASS;

import java.util.List;
import java.util.Objects;
import org.axlewright.api.calculation.MassSections.AxleLoads;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.section.Setup;
import org.axlewright.api.section.Suspension;
import org.axlewright.domain.axles.Axle;
import org.axlewright.domain.axles.Settling;
import org.axlewright.domain.axles.SpringData;
import org.axlewright.domain.axles.WheelPlan;
import org.axlewright.domain.quantity.Quantity;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Springs and tyres of an axle from {@code suspension}: one reading for every question. */
public final class SpringSections {

    private SpringSections() {}

    /** How far springs and tyres bring the frame down from where it was found, m; negative when it rises. */
    public record Squat(double frontM, double rearM) {}

    /** What is needed to know the springs of an axle. */
    public static Needs known(Axle axle) {
        String at = "/suspension/" + axle;
        return Needs.one(
                Needs.value(at + "/springRate"),
                axle == Axle.FRONT
                        ? Needs.all(at + "/measured/mass", at + "/measured/drop")
                        : Needs.all(at + "/measured/mass", at + "/measured/drop", "/chassis/wheelbase"));
    }

    /** What was sent about the suspension of an axle. */
    public static Suspension.@Nullable AxleSuspension sent(Setup setup, Axle axle) {
        Suspension suspension = setup.suspension();
        return suspension == null ? null : axle == Axle.FRONT ? suspension.front() : suspension.rear();
    }

    /** The springs; null when they are not known. A measurement that can't be is noted as a fault. */
    public static @Nullable SpringData springs(Setup setup, Axle axle, Resolution resolution) {
        Suspension.AxleSuspension sent = sent(setup, axle);
        if (sent == null || !known(axle).missing(setup).isEmpty()) {
            return null;
        }
        String at = "/suspension/" + axle;
        int springs = sent.springs() != null
                ? sent.springs()
                : (int) resolution.assume(
                        "two-springs",
                        at + "/springs",
                        Measure.number(2),
                        "one spring on each side",
                        Source.COMMON_PRACTICE);
        double motionRatio = sent.motionRatio() != null
                ? sent.motionRatio()
                : resolution.assume(
                        "spring-moves-with-wheel",
                        at + "/motionRatio",
                        Measure.number(1),
                        "a leaf spring on the axle moves as the wheel does; a spring on an arm moves less and must be told",
                        Source.COMMON_PRACTICE);
        Double tyreRate = sent.tyreRate() == null
                ? null
                : (Double) (tyres(setup, axle) * sent.tyreRate().si());
        return sent.springRate() != null
                ? new SpringData.ByRate(sent.springRate().si(), springs, motionRatio, tyreRate)
                : measured(
                        setup,
                        axle,
                        Objects.requireNonNull(sent.measured()),
                        springs,
                        motionRatio,
                        tyreRate,
                        resolution);
    }

    private static @Nullable SpringData measured(
            Setup setup,
            Axle axle,
            Suspension.MeasuredSquat sent,
            int springs,
            double motionRatio,
            @Nullable Double tyreRate,
            Resolution resolution) {
        String at = "/suspension/" + axle;
        Double wheelbaseM = setup.chassis() == null || setup.chassis().wheelbase() == null
                ? null
                : (Double) setup.chassis().wheelbase().si();
        double share = 1;
        if (sent.x() == null) {
            resolution.assume(
                    "mass-over-axle",
                    at + "/measured/x",
                    new Measure(axle == Axle.FRONT ? 0 : Objects.requireNonNull(wheelbaseM), LENGTH),
                    "the mass is taken to have stood straight over the axle",
                    Source.COMMON_PRACTICE);
        } else if (wheelbaseM == null) {
            resolution.missing("/chassis/wheelbase");
            return null;
        } else {
            double behind = sent.x().si() / wheelbaseM;
            share = axle == Axle.FRONT ? 1 - behind : behind;
        }
        if (!(share > 0)) {
            resolution.refuse(new Fault(
                    at + "/measured/x",
                    "contradiction",
                    "A mass there takes load off the " + axle
                            + " axle and can't have pressed it down; x counts rearward from the" + " front axle",
                    sent.x(),
                    null));
            return null;
        }
        double loadN = need(sent.mass()) * STANDARD_GRAVITY * share;
        double dropM = need(sent.drop());
        if (tyreRate != null && !(loadN / dropM < tyreRate)) {
            resolution.refuse(Fault.contradiction(
                    at + "/tyreRate",
                    "The tyres alone would have come down by " + Shown.readable(loadN / tyreRate * 1000)
                            + " mm under the measured mass, as far as springs and tyres together did, or farther"));
            return null;
        }
        return new SpringData.ByDrop(loadN, dropM, springs, motionRatio, tyreRate);
    }

    private static int tyres(Setup setup, Axle axle) {
        WheelPlan plan = setup.chassis() == null ? null : setup.chassis().wheelPlan();
        boolean single = axle == Axle.FRONT ? plan == WheelPlan.ONE_IN_FRONT : plan == WheelPlan.ONE_BEHIND;
        return single ? 1 : 2;
    }

    /** Mass that the springs of an axle don't carry, kg. */
    public static double unsprungKg(Setup setup, Axle axle, @Nullable Double loadAsFoundN, Resolution resolution) {
        Suspension.AxleSuspension sent = sent(setup, axle);
        String at = "/suspension/" + axle + "/unsprungMass";
        if (sent != null && sent.unsprungMass() != null) {
            double massKg = sent.unsprungMass().si();
            if (loadAsFoundN != null && !(massKg < loadAsFoundN / STANDARD_GRAVITY)) {
                resolution.refuse(new Fault(
                        at,
                        "contradiction",
                        "Wheels and axle can't have more mass than the " + axle + " axle pressed on the scales",
                        sent.unsprungMass(),
                        null));
                return 0;
            }
            return massKg;
        }
        return resolution.assume(
                "all-sprung",
                at,
                new Measure(0, MASS),
                "all of the axle's load is taken to ride on its springs: the lowest ride frequency it can have",
                Source.derived("lower bound"));
    }

    /** Squat as driven; null when springs of both axles, or the loads as weighed and as driven, aren't all known. */
    public static @Nullable Squat squat(Setup setup, Resolution resolution) {
        if (!known(Axle.FRONT).missing(setup).isEmpty()
                || !known(Axle.REAR).missing(setup).isEmpty()) {
            return null;
        }
        AxleLoads found = MassSections.axleLoadsAsWeighed(setup);
        if (found == null || !MassSections.POSITION_IN_PLAN.missing(setup).isEmpty()) {
            return null;
        }
        SpringData front = springs(setup, Axle.FRONT, resolution);
        SpringData rear = springs(setup, Axle.REAR, resolution);
        AxleLoads driven = MassSections.axleLoadsAsDriven(setup, resolution);
        if (front == null || rear == null || driven == null) {
            return null;
        }
        Trace silent = Trace.withoutWorking();
        return new Squat(
                front.rates(silent).squatM(driven.frontN() - found.frontN(), silent),
                rear.rates(silent).squatM(driven.rearN() - found.rearN(), silent));
    }

    /** What springs and tyres take off the height of the centre of gravity; null when springs of both axles, or the loads as weighed, aren't known. */
    public static @Nullable Settling settling(Setup setup, Resolution resolution) {
        AxleLoads found = MassSections.axleLoadsAsWeighed(setup);
        if (found == null
                || !known(Axle.FRONT).missing(setup).isEmpty()
                || !known(Axle.REAR).missing(setup).isEmpty()) {
            return null;
        }
        Settling.End front = end(setup, Axle.FRONT, found.frontN(), resolution);
        Settling.End rear = front == null ? null : end(setup, Axle.REAR, found.rearN(), resolution);
        return front == null || rear == null ? null : new Settling(front, rear);
    }

    private static Settling.@Nullable End end(Setup setup, Axle axle, double foundN, Resolution resolution) {
        SpringData springs = springs(setup, axle, resolution);
        Suspension.AxleSuspension sent = sent(setup, axle);
        return springs == null || sent == null
                ? null
                : new Settling.End(
                        springs.rates(Trace.withoutWorking()),
                        foundN,
                        unsprungKg(setup, axle, foundN, resolution),
                        sent.freeTravel() == null
                                ? null
                                : (Double) sent.freeTravel().si());
    }

    /** What lacks for {@link #squat}, once springs of an axle were sent; empty when it is known or nobody asks. */
    public static List<String> squatMissing(Setup setup) {
        boolean front = known(Axle.FRONT).missing(setup).isEmpty();
        boolean rear = known(Axle.REAR).missing(setup).isEmpty();
        if (!front && !rear) {
            return List.of();
        }
        List<String> springs = Needs.all(known(Axle.FRONT), known(Axle.REAR)).missing(setup);
        return !springs.isEmpty()
                ? springs
                : Needs.all(Needs.value("/chassis/wheelbase"), MassSections.POSITION_IN_PLAN, MassSections.AS_WEIGHED)
                        .missing(setup);
    }

    private static double need(@Nullable Quantity quantity) {
        return Objects.requireNonNull(quantity).si();
    }
}

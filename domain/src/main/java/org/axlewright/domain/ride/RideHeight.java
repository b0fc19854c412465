package org.axlewright.domain.ride;

import static org.axlewright.domain.check.Check.finite;
import static org.axlewright.domain.check.Check.notNegative;
import static org.axlewright.domain.check.Check.positive;
import static org.axlewright.domain.quantity.Constants.STANDARD_GRAVITY;
import static org.axlewright.domain.quantity.Dimension.ACCELERATION;
import static org.axlewright.domain.quantity.Dimension.ANGLE;
import static org.axlewright.domain.quantity.Dimension.CLEARANCE;
import static org.axlewright.domain.quantity.Dimension.FREQUENCY;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.LOAD;
import static org.axlewright.domain.quantity.Dimension.MASS;
import static org.axlewright.domain.quantity.Dimension.NONE;
import static org.axlewright.domain.quantity.Dimension.SPRING_RATE;
import static org.axlewright.domain.quantity.Dimension.TORQUE;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.axlewright.domain.axles.Axle;
import org.axlewright.domain.axles.AxleSprings;
import org.axlewright.domain.axles.Settling;
import org.axlewright.domain.axles.SpringData;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * How far the frame stands higher or lower than as found, axle by axle: springs and tyres are straight lines of force over travel, the
 * load is what the axle carries more than when the heights were measured.
 */
public final class RideHeight {

    private static final Source RIDE_RATE = Source.published(
            "Automotive Chassis Engineering, ch. 3, vehicle ride models: the body on suspension and tyre; here with the wheel's own mass"
                    + " left out of the lower mode");
    private static final Source STATICS = Source.derived("statics of a vehicle standing on its tyres and springs");

    private static final Step SPRUNG = Step.of(
            "m_s",
            "mass on the springs of the axle",
            "m_s = W/g − m_u",
            MASS,
            STATICS,
            new Symbol("W", LOAD),
            new Symbol("g", ACCELERATION),
            new Symbol("m_u", MASS));
    private static final Step RIDE_FREQUENCY = Step.of(
            "f",
            "ride frequency",
            "f = √(K′/m_s)/(2·π)",
            FREQUENCY,
            RIDE_RATE,
            new Symbol("K′", SPRING_RATE),
            new Symbol("m_s", MASS));
    private static final Step RISE = Step.of(
            "Δz",
            "rise of the frame over the ground since it was found",
            "Δz = Δz_l − s",
            CLEARANCE,
            STATICS,
            new Symbol("Δz_l", CLEARANCE),
            new Symbol("s", CLEARANCE));
    private static final Step TRAVEL_LEFT = Step.of(
            "b",
            "wheel travel left before the bump stop",
            "b = b_0 − ΔW/K",
            CLEARANCE,
            STATICS,
            new Symbol("b_0", CLEARANCE),
            new Symbol("ΔW", LOAD),
            new Symbol("K", SPRING_RATE));
    private static final Step RESTORING_FACTOR = Step.of(
            "q",
            "rate that stands at the height as found, over the rate now",
            "q = m_s·g/(m_s,0·g − K·ΔW/K_t)",
            NONE,
            Source.derived("a spring of the same free length under the new load, at the old height of the frame"),
            new Symbol("m_s", MASS),
            new Symbol("g", ACCELERATION),
            new Symbol("m_s,0", MASS),
            new Symbol("K", SPRING_RATE),
            new Symbol("ΔW/K_t", CLEARANCE));
    private static final Step RESTORING_RATE = Step.of(
            "k_s′",
            "rate of one spring that stands at the height as found",
            "k_s′ = q·k_s",
            SPRING_RATE,
            Source.derived("definition"),
            new Symbol("q", NONE),
            new Symbol("k_s", SPRING_RATE));
    private static final Step RESTORING_SPACER = Step.of(
            "d",
            "spacer at the spring that lifts the frame back",
            "d = i·s",
            CLEARANCE,
            Source.memory("motion ratio, spring travel for wheel travel"),
            new Symbol("i", NONE),
            new Symbol("s", CLEARANCE));
    private static final Step ONE_SPRING = Step.of(
            "k_s",
            "rate of one spring",
            "k_s = K/(n·i²)",
            SPRING_RATE,
            Source.published("Automotive Chassis Engineering, p. 179: k_w = k_s (c/b)^2, small movements"),
            new Symbol("K", SPRING_RATE),
            new Symbol("n", NONE),
            new Symbol("i", NONE));
    private static final Step ROLL = Step.of(
            "K_φ",
            "roll stiffness of the axle, its springs alone",
            "K_φ = K·b²/4",
            TORQUE,
            Source.memory(
                    "independent springs K_w t²/2 by the track, a solid axle K_s s²/2 by the spacing of its springs"),
            new Symbol("K", SPRING_RATE),
            new Symbol("b", LENGTH));
    private static final Step PITCH = Step.of(
            "ψ",
            "change of pitch, nose up positive",
            "ψ = atan[(Δz_f − Δz_r)/L]",
            ANGLE,
            STATICS,
            new Symbol("Δz_f", CLEARANCE),
            new Symbol("Δz_r", CLEARANCE),
            new Symbol("L", LENGTH));

    private RideHeight() {}

    /**
     * Springs and wheels of one axle.
     *
     * @param unsprungMassKg what the springs don't carry
     * @param freeTravelM wheel travel before the bump stop as found; null when not known
     * @param rollBaseM track of independent wheels, or spacing of the springs on a solid axle; null when not known
     * @param loadAsFoundN load of the axle when the heights were measured; null when not known
     * @param liftM rise of the frame through lift and tyres
     */
    public record AxleInput(
            Axle axle,
            SpringData springs,
            double unsprungMassKg,
            @Nullable Double freeTravelM,
            @Nullable Double rollBaseM,
            @Nullable Double loadAsFoundN,
            double liftM) {
        public AxleInput {
            notNegative(unsprungMassKg, "unsprungMass");
            finite(liftM, "lift");
        }

        AxleSprings rates() {
            return springs.rates(Trace.withoutWorking());
        }
    }

    /**
     * One way the vehicle is loaded.
     *
     * @param name what is aboard
     * @param state {@code empty} or {@code occupied}, or null for one that findings don't speak of
     */
    public record Loading(String name, @Nullable String state, double frontN, double rearN) {}

    /**
     * The question.
     *
     * @param front null when nothing is known of its springs
     * @param rear null when nothing is known of its springs
     * @param occupied null when the axle loads aren't known
     * @param empty without occupants; null when not known
     * @param others further ways to load it
     */
    public record Input(
            @Nullable Double wheelbaseM,
            @Nullable AxleInput front,
            @Nullable AxleInput rear,
            @Nullable Loading occupied,
            @Nullable Loading empty,
            List<Loading> others) {
        public Input {
            if (wheelbaseM != null) {
                positive(wheelbaseM, "wheelbase");
            }
            others = List.copyOf(others);
        }
    }

    /**
     * Rates of one axle.
     *
     * @param wheelRate one side, without the tyre, N/m
     * @param springRate one spring, N/m
     * @param axleRate both sides with the tyres, N/m
     * @param rollStiffness N m/rad
     */
    public record Rates(
            double wheelRate,
            double springRate,
            double axleRate,
            @Nullable Double rollStiffness) {}

    /**
     * How to stand as found again.
     *
     * @param factor new rate over the rate now, with the same free length
     * @param springRate of one spring, N/m
     */
    public record Restoring(double factor, double springRate) {}

    /**
     * One axle in one loading; null what isn't known.
     *
     * @param squatM how far the frame came down through the load; negative when it rose
     * @param riseM over the ground since found, lift and tyres included
     * @param spacerM at the spring, that lifts the frame back; negative when it must come out
     */
    public record AxleRide(
            double loadN,
            @Nullable Double loadChangeN,
            @Nullable Double squatM,
            @Nullable Double riseM,
            @Nullable Double travelLeftM,
            @Nullable Double frequencyHz,
            @Nullable Restoring restoring,
            @Nullable Double spacerM) {}

    /**
     * The vehicle in one loading.
     *
     * @param pitchRad change since found, nose up positive
     * @param centreOfGravityDropM what springs and tyres take off its height
     */
    public record State(
            Loading loading,
            @Nullable AxleRide front,
            @Nullable AxleRide rear,
            @Nullable Double pitchRad,
            @Nullable Double centreOfGravityDropM) {}

    /** The answer; null what can't be given. */
    public record Result(
            @Nullable Rates front,
            @Nullable Rates rear,
            @Nullable State occupied,
            @Nullable State empty,
            List<State> others) {}

    /** Works out the whole room. Pure. */
    public static Result of(Input input, Trace trace) {
        Rates front = input.front() == null ? null : rates(input.front(), trace.of("front axle"));
        Rates rear = input.rear() == null ? null : rates(input.rear(), trace.of("rear axle"));
        State occupied = state(input, input.occupied(), front, rear, trace);
        State empty = state(input, input.empty(), front, rear, trace);
        List<State> others = new ArrayList<>();
        for (Loading loading : input.others()) {
            State other = state(input, loading, front, rear, Trace.withoutWorking());
            if (other != null) {
                others.add(other);
            }
        }
        Result result = new Result(front, rear, occupied, empty, others);
        RideFindings.find(input, result, trace);
        return result;
    }

    private static Rates rates(AxleInput axle, Trace trace) {
        AxleSprings rates = axle.springs().rates(trace);
        double total = rates.suspensionRate();
        int springs = axle.springs().springs();
        double ratio = axle.springs().motionRatio();
        double springRate = axle.springs() instanceof SpringData.ByRate known
                ? known.springRate()
                : trace.note(ONE_SPRING, total / (springs * ratio * ratio), total, springs, ratio);
        Double base = axle.rollBaseM();
        return new Rates(
                total / 2,
                springRate,
                rates.rate(trace),
                base == null ? null : (Double) trace.note(ROLL, total * base * base / 4, total, base));
    }

    private static @Nullable State state(
            Input input,
            @Nullable Loading loading,
            @Nullable Rates frontRates,
            @Nullable Rates rearRates,
            Trace trace) {
        if (loading == null) {
            return null;
        }
        Trace named = trace.of(loading.name());
        AxleInput frontAxle = input.front();
        AxleInput rearAxle = input.rear();
        AxleRide front = frontAxle == null || frontRates == null
                ? null
                : ride(frontAxle, frontRates, loading.frontN(), named.of("front axle"));
        AxleRide rear = rearAxle == null || rearRates == null
                ? null
                : ride(rearAxle, rearRates, loading.rearN(), named.of("rear axle"));
        Double pitch = null;
        Double drop = null;
        if (front != null && rear != null && frontAxle != null && rearAxle != null) {
            Double wheelbase = input.wheelbaseM();
            if (wheelbase != null && front.riseM() != null && rear.riseM() != null) {
                pitch = named.note(
                        PITCH,
                        Math.atan((front.riseM() - rear.riseM()) / wheelbase),
                        front.riseM(),
                        rear.riseM(),
                        wheelbase);
            }
            drop = drop(frontAxle, front, rearAxle, rear, named);
        }
        return new State(loading, front, rear, pitch, drop);
    }

    private static AxleRide ride(AxleInput axle, Rates rates, double loadN, Trace trace) {
        AxleSprings springs = axle.rates();
        double sprung = trace.note(SPRUNG, sprungKg(axle, loadN), loadN, STANDARD_GRAVITY, axle.unsprungMassKg());
        Double frequency = sprung > 0
                ? (Double) trace.note(
                        RIDE_FREQUENCY, Math.sqrt(rates.axleRate() / sprung) / (2 * Math.PI), rates.axleRate(), sprung)
                : null;
        Double asFound = axle.loadAsFoundN();
        if (asFound == null) {
            return new AxleRide(loadN, null, null, null, null, frequency, null, null);
        }
        double change = loadN - asFound;
        double squat = springs.squatM(change, trace);
        double rise = trace.note(RISE, axle.liftM() - squat, axle.liftM(), squat);
        Double free = axle.freeTravelM();
        Double left = free == null
                ? null
                : (Double) trace.note(
                        TRAVEL_LEFT, free - springs.suspensionTravelM(change), free, change, springs.suspensionRate());
        return new AxleRide(
                loadN,
                change,
                squat,
                rise,
                left,
                frequency,
                restoring(axle, rates, sprung, asFound, change, trace),
                trace.note(
                        RESTORING_SPACER,
                        axle.springs().motionRatio() * squat,
                        axle.springs().motionRatio(),
                        squat));
    }

    /** Null where no spring of the same free length can do it: the axle carries nothing, or carried nothing when found. */
    private static @Nullable Restoring restoring(
            AxleInput axle, Rates rates, double sprungKg, double asFoundN, double changeN, Trace trace) {
        double foundKg = sprungKg(axle, asFoundN);
        double tyreM = axle.rates().tyreTravelM(changeN);
        double rate = axle.rates().suspensionRate();
        double atHeightN = foundKg * STANDARD_GRAVITY - rate * tyreM;
        if (!(sprungKg > 0 && foundKg > 0 && atHeightN > 0)) {
            return null;
        }
        double factor = trace.note(
                RESTORING_FACTOR,
                sprungKg * STANDARD_GRAVITY / atHeightN,
                sprungKg,
                STANDARD_GRAVITY,
                foundKg,
                rate,
                tyreM);
        double springRate = trace.note(RESTORING_RATE, factor * rates.springRate(), factor, rates.springRate());
        return factor <= Double.MAX_VALUE && springRate <= Double.MAX_VALUE ? new Restoring(factor, springRate) : null;
    }

    private static double sprungKg(AxleInput axle, double loadN) {
        return loadN / STANDARD_GRAVITY - axle.unsprungMassKg();
    }

    private static @Nullable Double drop(
            AxleInput frontAxle, AxleRide front, AxleInput rearAxle, AxleRide rear, Trace trace) {
        double weight = front.loadN() + rear.loadN();
        if (front.loadChangeN() == null || rear.loadChangeN() == null || !(weight > 0)) {
            return null;
        }
        return new Settling(end(frontAxle), end(rearAxle)).dropM(front.loadN(), rear.loadN(), trace);
    }

    private static Settling.End end(AxleInput axle) {
        return new Settling.End(
                axle.rates(), Objects.requireNonNull(axle.loadAsFoundN()), axle.unsprungMassKg(), axle.freeTravelM());
    }
}

package org.axlewright.domain.seating;

import static org.axlewright.domain.check.Check.finite;
import static org.axlewright.domain.check.Check.notNegative;
import static org.axlewright.domain.check.Check.positive;
import static org.axlewright.domain.quantity.Dimension.ANGLE;
import static org.axlewright.domain.quantity.Dimension.CLEARANCE;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Whether small, middle and large drivers reach the pedals of a seat that was moved, and how much room they lack. */
public final class SeatReach {

    private static final Source GEOMETRY = Source.derived("straight line from hip point to heel point");
    private static final Source SIZES = Source.memory(
            "thigh as buttock-knee length less the hip offset, shank as knee height sitting with the shoe: ANSUR II, NATICK/TR-15/007");
    private static final Source LEG =
            Source.memory("leg as two links: law of cosines; comfortable knee 110 to 140 deg");

    private static final Symbol X = new Symbol("x", CLEARANCE);
    private static final Symbol Z = new Symbol("z", CLEARANCE);
    private static final Symbol THIGH = new Symbol("t", CLEARANCE);
    private static final Symbol SHANK = new Symbol("s", CLEARANCE);
    private static final Symbol KNEE = new Symbol("κ", ANGLE);

    private static final Step HIP_X = Step.of(
            "x'",
            "hip point behind the heel point after",
            "x' = x + Δx + p",
            CLEARANCE,
            GEOMETRY,
            X,
            new Symbol("Δx", CLEARANCE),
            new Symbol("p", CLEARANCE));
    private static final Step HIP_Z = Step.of(
            "z'",
            "hip point above the heel point after",
            "z' = z − d",
            CLEARANCE,
            GEOMETRY,
            Z,
            new Symbol("d", CLEARANCE));
    private static final Step BEFORE =
            Step.of("D", "hip point to heel point as found", "D = √(x² + z²)", CLEARANCE, GEOMETRY, X, Z);
    private static final Step AFTER = Step.of(
            "D'",
            "hip point to heel point after",
            "D' = √(x'² + z'²)",
            CLEARANCE,
            GEOMETRY,
            new Symbol("x'", CLEARANCE),
            new Symbol("z'", CLEARANCE));
    private static final Step AS_FOUND = Step.of(
            "Δ",
            "room still lacking for legs as straight as found, whoever sits there",
            "Δ = √(D² − z'²) − x'",
            CLEARANCE,
            GEOMETRY,
            new Symbol("D", CLEARANCE),
            new Symbol("z'", CLEARANCE),
            new Symbol("x'", CLEARANCE));
    private static final Step THIGH_STEP = Step.of(
            "t",
            "thigh, hip pivot to knee",
            "t = l_bk − o",
            CLEARANCE,
            SIZES,
            new Symbol("l_bk", CLEARANCE),
            new Symbol("o", CLEARANCE));
    private static final Step SHANK_STEP = Step.of(
            "s",
            "shank, knee to heel with the shoe",
            "s = h_k + c",
            CLEARANCE,
            SIZES,
            new Symbol("h_k", CLEARANCE),
            new Symbol("c", CLEARANCE));
    private static final Step NEAR = reach("D_110", "hip to heel with the knee bent to 110°");
    private static final Step FAR = reach("D_140", "hip to heel with the knee at 140°");
    private static final Step NEAR_X = level("x_110", "D_110");
    private static final Step FAR_X = level("x_140", "D_140");
    private static final Step KNEE_BEFORE = knee("κ", "D", "as found");
    private static final Step KNEE_AFTER = knee("κ'", "D'", "after");
    private static final Step LACKS = Step.of(
            "δ",
            "room lacking with the slider at its better end: positive, pedals or frame must go that much farther from the seat; negative, nearer",
            "δ = x_110 − (x' + T/2) when above 0, x_140 − (x' − T/2) when below 0, else 0",
            CLEARANCE,
            GEOMETRY,
            new Symbol("x_110", CLEARANCE),
            new Symbol("x_140", CLEARANCE),
            new Symbol("x'", CLEARANCE),
            new Symbol("T", CLEARANCE));
    private static final Step TRAVEL = Step.of(
            "T_n",
            "slider travel that seats all three in comfort",
            "T_n = max(0, greatest x_110 − least x_140)",
            CLEARANCE,
            GEOMETRY,
            new Symbol("x_110", CLEARANCE),
            new Symbol("x_140", CLEARANCE));
    private static final Step SURVEY_TRAVEL = Step.of(
            "T_s",
            "slider travel between the 5 and 95 % lines",
            "T_s = X_95 − X_5",
            CLEARANCE,
            SeatPositions.SOURCE,
            new Symbol("X_95", CLEARANCE),
            new Symbol("X_5", CLEARANCE));

    private static Step reach(String symbol, String meaning) {
        return Step.of(symbol, meaning, symbol + " = √(t² + s² − 2·t·s·cos κ)", CLEARANCE, LEG, THIGH, SHANK, KNEE);
    }

    private static Step level(String symbol, String distance) {
        return Step.of(
                symbol,
                "hip point behind the heel point for it at the height after",
                symbol + " = √(" + distance + "² − z'²), 0 where the leg is shorter than the seat is high",
                CLEARANCE,
                GEOMETRY,
                new Symbol(distance, CLEARANCE),
                new Symbol("z'", CLEARANCE));
    }

    private static Step knee(String symbol, String distance, String state) {
        return Step.of(
                symbol,
                "knee angle " + state + ", slider at its middle",
                symbol + " = acos((t² + s² − " + distance + "²)/(2·t·s))",
                ANGLE,
                LEG,
                THIGH,
                SHANK,
                new Symbol(distance, CLEARANCE));
    }

    private SeatReach() {}

    /**
     * The seat as found and how it is moved, m.
     *
     * @param xM hip point behind the heel point
     * @param zM hip point above the heel point
     * @param loweredM seat down
     * @param rearwardM seat back
     * @param pedalsForwardM pedals forward
     * @param sliderM travel of the slider from end to end, the hip point at its middle
     */
    public record Input(
            double xM, double zM, double loweredM, double rearwardM, double pedalsForwardM, double sliderM) {
        public Input {
            positive(xM, "xM");
            positive(zM, "zM");
            positive(zM - finite(loweredM, "loweredM"), "height after");
            positive(xM + finite(rearwardM, "rearwardM") + finite(pedalsForwardM, "pedalsForwardM"), "x after");
            notNegative(sliderM, "sliderM");
        }
    }

    /** How a driver gets on. */
    public enum Fit {
        /** Within the comfortable knee angles somewhere on the slider. */
        COMFORTABLE("comfortable"),
        /** The leg is bent more than is comfortable wherever the slider stands. */
        TOO_CLOSE("too-close"),
        /** The leg is straighter than is comfortable wherever the slider stands. */
        TOO_FAR("too-far"),
        /** The straight leg does not reach the heel point. */
        OUT_OF_REACH("out-of-reach");

        private final String token;

        Fit(String token) {
            this.token = token;
        }

        @Override
        public String toString() {
            return token;
        }
    }

    /**
     * The answer; null what can't be given. Lengths m, angles rad.
     *
     * @param asFoundRoomM room still lacking for the pedal distance as found; null when the seat is higher than that
     * @param frameStretchM most that a driver lacks
     * @param surveyTravelM travel between the 5 and 95 % lines; null outside their heights
     * @param positions null outside the heights of the lines
     */
    public record Result(
            double hipXM,
            double hipZM,
            double pedalDistanceBeforeM,
            double pedalDistanceAfterM,
            @Nullable Double asFoundRoomM,
            double frameStretchM,
            double sliderTravelM,
            @Nullable Double surveyTravelM,
            List<Sitter> drivers,
            @Nullable List<Position> positions) {}

    /**
     * One driver.
     *
     * @param nearXM hip point behind the heel point with the knee bent most in comfort, at the height after
     * @param farXM the same with the knee straightest
     * @param kneeBeforeRad null when no leg of this size bridges the distance
     * @param kneeAfterRad the same
     * @param roomM lacking: positive farther, negative nearer
     */
    public record Sitter(
            Driver driver,
            double thighM,
            double shankM,
            double nearM,
            double farM,
            double nearXM,
            double farXM,
            @Nullable Double kneeBeforeRad,
            @Nullable Double kneeAfterRad,
            double roomM,
            Fit fit) {}

    /** Where so many per cent of drivers put their seat, or farther forward. */
    public record Position(double percentile, double xM) {}

    /** Works out the whole room. Pure. */
    public static Result of(Input input, Trace trace) {
        double x = trace.note(
                HIP_X,
                input.xM() + input.rearwardM() + input.pedalsForwardM(),
                input.xM(),
                input.rearwardM(),
                input.pedalsForwardM());
        double z = trace.note(HIP_Z, input.zM() - input.loweredM(), input.zM(), input.loweredM());
        double before = trace.note(BEFORE, Math.hypot(input.xM(), input.zM()), input.xM(), input.zM());
        double after = trace.note(AFTER, Math.hypot(x, z), x, z);
        Double asFound = before >= z ? (Double) trace.note(AS_FOUND, level(before, z) - x, before, z, x) : null;
        List<Sitter> drivers = Arrays.stream(Driver.values())
                .map(driver -> sitter(driver, input, before, after, x, z, trace.of(driver + " driver")))
                .toList();
        double farthestNear = drivers.stream().mapToDouble(Sitter::nearXM).max().orElse(0);
        double nearestFar = drivers.stream().mapToDouble(Sitter::farXM).min().orElse(0);
        double travel = trace.note(TRAVEL, Math.max(0, farthestNear - nearestFar), farthestNear, nearestFar);
        double stretch =
                Math.max(0, drivers.stream().mapToDouble(Sitter::roomM).max().orElse(0));
        List<Position> positions = null;
        Double survey = null;
        if (SeatPositions.cover(z)) {
            positions = new ArrayList<>();
            for (String percentile : SeatPositions.PERCENTILES) {
                positions.add(new Position(Double.parseDouble(percentile), SeatPositions.xM(percentile, z, trace)));
            }
            double far = SeatPositions.xM("95", z, Trace.withoutWorking());
            double near = SeatPositions.xM("5", z, Trace.withoutWorking());
            survey = trace.note(SURVEY_TRAVEL, far - near, far, near);
        }
        Result result = new Result(x, z, before, after, asFound, stretch, travel, survey, drivers, positions);
        SeatFindings.find(input, result, trace);
        return result;
    }

    private static Sitter sitter(
            Driver driver, Input input, double beforeM, double afterM, double xM, double zM, Trace trace) {
        double thigh = trace.note(
                THIGH_STEP, driver.buttockKneeM() - Driver.hipOffsetM(), driver.buttockKneeM(), Driver.hipOffsetM());
        double shank =
                trace.note(SHANK_STEP, driver.kneeHeightM() + Driver.shoeM(), driver.kneeHeightM(), Driver.shoeM());
        double bent = Driver.kneeBentRad();
        double straight = Driver.kneeStraightRad();
        double near = trace.note(NEAR, legM(thigh, shank, bent), thigh, shank, bent);
        double far = trace.note(FAR, legM(thigh, shank, straight), thigh, shank, straight);
        double nearX = trace.note(NEAR_X, level(near, zM), near, zM);
        double farX = trace.note(FAR_X, level(far, zM), far, zM);
        Double kneeBefore = kneeRad(thigh, shank, beforeM);
        Double kneeAfter = kneeRad(thigh, shank, afterM);
        if (kneeBefore != null) {
            trace.note(KNEE_BEFORE, kneeBefore, thigh, shank, beforeM);
        }
        if (kneeAfter != null) {
            trace.note(KNEE_AFTER, kneeAfter, thigh, shank, afterM);
        }
        double half = input.sliderM() / 2;
        double foremost = Math.max(0, xM - half);
        double lacks = nearX - (xM + half) > 0 ? nearX - (xM + half) : Math.min(0, farX - (xM - half));
        trace.note(LACKS, lacks, nearX, farX, xM, input.sliderM());
        Fit fit = Math.hypot(foremost, zM) > thigh + shank
                ? Fit.OUT_OF_REACH
                : lacks > 0 ? Fit.TOO_CLOSE : lacks < 0 ? Fit.TOO_FAR : Fit.COMFORTABLE;
        return new Sitter(driver, thigh, shank, near, far, nearX, farX, kneeBefore, kneeAfter, lacks, fit);
    }

    /** Hip to heel, m, at a knee angle. */
    static double legM(double thighM, double shankM, double kneeRad) {
        return Math.sqrt(thighM * thighM + shankM * shankM - 2 * thighM * shankM * Math.cos(kneeRad));
    }

    /** Knee angle, rad, at a distance from hip to heel; null when the leg does not bridge it. */
    static @Nullable Double kneeRad(double thighM, double shankM, double distanceM) {
        double cosine = (thighM * thighM + shankM * shankM - distanceM * distanceM) / (2 * thighM * shankM);
        return cosine >= -1 && cosine <= 1 ? (Double) Math.acos(cosine) : null;
    }

    /** Level part of a slanting distance; 0 when it is shorter than the height. */
    private static double level(double distanceM, double heightM) {
        return Math.sqrt(Math.max(0, (distanceM - heightM) * (distanceM + heightM)));
    }
}

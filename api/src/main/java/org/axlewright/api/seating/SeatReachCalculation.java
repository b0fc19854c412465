package org.axlewright.api.seating;

import static org.axlewright.domain.quantity.Dimension.CLEARANCE;

import java.util.List;
import java.util.Objects;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.Needs;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.seating.SeatReachResult.ComfortRange;
import org.axlewright.api.seating.SeatReachResult.PedalDistance;
import org.axlewright.api.seating.SeatReachResult.SeatPosition;
import org.axlewright.api.seating.SeatReachResult.SeatedDriver;
import org.axlewright.api.section.Seat;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.seating.SeatPositions;
import org.axlewright.domain.seating.SeatReach;
import org.axlewright.domain.seating.SeatReach.Input;
import org.axlewright.domain.seating.SeatReach.Result;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Seat and pedals. */
public final class SeatReachCalculation implements Calculation<Input, Result, SeatReachResult> {

    private static final Needs NEEDS = Needs.all("/seat/hipPoint/x", "/seat/hipPoint/z");

    /** A hip point nearer to the heel point than this, m, is no seat. */
    private static final double LEAST_M = 0.01;

    @Override
    public String name() {
        return "seat-reach";
    }

    @Override
    public String question() {
        return "How far must the pedals or the frame move when the seat goes down or back, and who reaches them?";
    }

    @Override
    public Needs needs() {
        return NEEDS;
    }

    @Override
    public List<String> leads() {
        return List.of("/frameStretch", "/sliderTravel", "/drivers", "/asFoundRoom", "/pedalDistance/after");
    }

    @Override
    public Class<SeatReachResult> resultType() {
        return SeatReachResult.class;
    }

    @Override
    public Input resolve(Setup setup, Resolution resolution) {
        Seat seat = Objects.requireNonNull(setup.seat(), "seat");
        Seat.HipPoint hip = Objects.requireNonNull(seat.hipPoint(), "hipPoint");
        double x = Objects.requireNonNull(hip.x()).si();
        double z = Objects.requireNonNull(hip.z()).si();
        double lowered =
                nothing("not-lowered", "/seat/lowered", seat.lowered(), "the seat keeps its height", resolution);
        double rearward = nothing(
                "not-moved-back",
                "/seat/movedRearward",
                seat.movedRearward(),
                "the seat stays where it is",
                resolution);
        double pedals = nothing(
                "pedals-stay",
                "/seat/pedalsMovedForward",
                seat.pedalsMovedForward(),
                "the pedals stay where they are",
                resolution);
        double slider =
                nothing("fixed-seat", "/seat/sliderTravel", seat.sliderTravel(), "a seat without a slider", resolution);
        if (!(z - lowered >= LEAST_M)) {
            resolution.refuse(Fault.contradiction(
                    "/seat/lowered", "Lowered by so much the hip point lies at or below the heel; check the amounts"));
        }
        if (!(x + rearward + pedals >= LEAST_M)) {
            resolution.refuse(
                    Fault.contradiction(
                            seat.movedRearward() == null ? "/seat/pedalsMovedForward" : "/seat/movedRearward",
                            "Moved by so much the seat stands at or ahead of the pedals; rearward and forward count positive here"));
        }
        resolution.refuseIfFaulty();
        Input input = new Input(x, z, lowered, rearward, pedals, slider);
        if (!SeatPositions.cover(z - lowered)) {
            resolution.notAnswered("/positions", "/seat/hipPoint/z", "/seat/lowered");
            resolution.notAnswered("/surveyTravel", "/seat/hipPoint/z", "/seat/lowered");
        }
        if (!(Math.hypot(x, z) >= z - lowered)) {
            resolution.notAnswered("/asFoundRoom", "/seat/lowered");
        }
        return input;
    }

    private static double nothing(
            String code, String pointer, @Nullable Length sent, String reason, Resolution resolution) {
        return sent != null
                ? sent.si()
                : resolution.assume(code, pointer, new Measure(0, CLEARANCE), reason, Source.COMMON_PRACTICE);
    }

    @Override
    public Result calculate(Input input, Trace trace) {
        return SeatReach.of(input, trace);
    }

    @Override
    public SeatReachResult show(Result result, UnitSystem units) {
        return new SeatReachResult(
                units.clearance(result.frameStretchM()),
                units.clearance(result.sliderTravelM()),
                result.drivers().stream().map(one -> seated(one, units)).toList(),
                units.clearance(result.hipXM()),
                units.clearance(result.hipZM()),
                new PedalDistance(
                        units.clearance(result.pedalDistanceBeforeM()), units.clearance(result.pedalDistanceAfterM())),
                result.asFoundRoomM() == null ? null : units.clearance(result.asFoundRoomM()),
                result.surveyTravelM() == null ? null : units.clearance(result.surveyTravelM()),
                result.positions() == null
                        ? null
                        : result.positions().stream()
                                .map(one -> new SeatPosition(one.percentile(), units.clearance(one.xM())))
                                .toList());
    }

    private static SeatedDriver seated(SeatReach.Sitter sitter, UnitSystem units) {
        return new SeatedDriver(
                sitter.driver().toString(),
                sitter.fit().toString(),
                units.clearance(sitter.roomM()),
                sitter.kneeBeforeRad() == null ? null : units.angle(sitter.kneeBeforeRad()),
                sitter.kneeAfterRad() == null ? null : units.angle(sitter.kneeAfterRad()),
                new ComfortRange(units.clearance(sitter.nearM()), units.clearance(sitter.farM())),
                new ComfortRange(units.clearance(sitter.nearXM()), units.clearance(sitter.farXM())),
                units.clearance(sitter.thighM()),
                units.clearance(sitter.shankM()),
                units.clearance(sitter.driver().statureM()));
    }
}

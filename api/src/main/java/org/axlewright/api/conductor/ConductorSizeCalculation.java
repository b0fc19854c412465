package org.axlewright.api.conductor;

import java.util.List;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.Needs;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.conductor.CircuitSections.Circuits;
import org.axlewright.api.conductor.ConductorSizeResult.Fuse;
import org.axlewright.api.conductor.ConductorSizeResult.JudgedSize;
import org.axlewright.api.conductor.ConductorSizeResult.RouteHeat;
import org.axlewright.api.conductor.ConductorSizeResult.SizeCandidate;
import org.axlewright.api.conductor.ConductorSizeResult.Sized;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.conductor.Candidate;
import org.axlewright.domain.conductor.ConductorSizing;
import org.axlewright.domain.conductor.FuseCheck;
import org.axlewright.domain.conductor.FuseWindow;
import org.axlewright.domain.quantity.Current;
import org.axlewright.domain.quantity.Temperature;
import org.axlewright.domain.quantity.Time;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.quantity.Voltage;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Cables and fuses: from currents, lengths and ratings to sizes. */
public final class ConductorSizeCalculation
        implements Calculation<Circuits, List<ConductorSizing.Result>, ConductorSizeResult> {

    private static final Needs NEEDS = Needs.some(
            "/circuits",
            Needs.all(
                    Needs.value("/circuits/0/length"),
                    Needs.one(Needs.value("/circuits/0/continuousCurrent"), Needs.value("/circuits/0/profile"))));

    @Override
    public String name() {
        return "conductor-size";
    }

    @Override
    public String question() {
        return "Which cable, which fuse, how hot, and how many volts lost?";
    }

    @Override
    public Needs needs() {
        return NEEDS;
    }

    @Override
    public List<String> leads() {
        return List.of(
                "/circuits/0/size",
                "/circuits/0/limitedBy",
                "/circuits/0/fuse/rating",
                "/circuits/0/dropShare",
                "/circuits/0/ampacity",
                "/circuits/0/peakTemperature");
    }

    @Override
    public Class<ConductorSizeResult> resultType() {
        return ConductorSizeResult.class;
    }

    @Override
    public Circuits resolve(Setup setup, Resolution resolution) {
        return CircuitSections.resolve(setup, resolution);
    }

    @Override
    public List<ConductorSizing.Result> calculate(Circuits input, Trace trace) {
        return ConductorSizing.of(input.pack(), input.circuits(), trace);
    }

    @Override
    public ConductorSizeResult show(List<ConductorSizing.Result> results, UnitSystem units) {
        return new ConductorSizeResult(
                results.stream().map(result -> sized(result, units)).toList());
    }

    private static Sized sized(ConductorSizing.Result result, UnitSystem units) {
        Candidate chosen = result.chosen();
        Double dropArea = result.dropAreaM2();
        Double peakC = result.peakC();
        Double heating = result.peakHeatingS();
        return new Sized(
                result.input().name(),
                result.input().reference(),
                result.input().side(),
                voltage(result.input().supply().nominalV(), units),
                units.current(result.rmsA()),
                units.current(result.peakA()),
                chosen == null ? null : chosen.conductor().size().toString(),
                chosen == null ? null : units.area(chosen.conductor().areaM2()),
                chosen == null ? null : (Integer) chosen.parallel(),
                chosen == null ? null : units.current(chosen.ampacityA()),
                result.limitedBy(),
                chosen == null ? null : units.resistancePerLength(chosen.resistanceOhmPerM()),
                units.temperature(result.conductorC()),
                peakC == null ? null : units.temperature(peakC),
                heating == null ? null : units.eventTime(heating),
                chosen == null ? null : units.eventTime(chosen.timeConstantS()),
                chosen == null ? null : units.voltage(chosen.dropV()),
                chosen == null ? null : chosen.dropShare(),
                chosen == null ? null : units.power(chosen.lossW()),
                dropArea == null ? null : units.area(dropArea),
                result.candidates().stream()
                        .map(candidate -> candidate(candidate, result.conductorC(), units))
                        .toList(),
                fuse(result.fuse(), result.verdict(), units),
                temperature(result.warmth() == null ? null : result.warmth().hottestC(), units),
                time(result.warmth() == null ? null : result.warmth().toLimitS(), units),
                judged(result.judged(), units),
                route(result.route(), units));
    }

    private static @Nullable RouteHeat route(ConductorSizing.@Nullable RouteHeat route, UnitSystem units) {
        return route == null
                ? null
                : new RouteHeat(
                        units.current(route.rmsA()),
                        units.current(route.peakA()),
                        temperature(route.hottestC(), units));
    }

    private static SizeCandidate candidate(Candidate candidate, double conductorC, UnitSystem units) {
        return new SizeCandidate(
                candidate.conductor().size().toString(),
                candidate.parallel(),
                units.area(candidate.conductor().areaM2()),
                units.resistancePerLength(candidate.resistanceOhmPerM()),
                units.temperature(conductorC),
                units.current(candidate.ampacityA()),
                units.voltage(candidate.dropV()),
                candidate.dropShare(),
                units.power(candidate.lossW()),
                candidate.passes(),
                List.copyOf(candidate.fails()));
    }

    private static @Nullable JudgedSize judged(ConductorSizing.@Nullable Judged judged, UnitSystem units) {
        if (judged == null) {
            return null;
        }
        Candidate cable = judged.candidate();
        ConductorSizing.Warmth warmth = judged.warmth();
        return new JudgedSize(
                cable.conductor().size().toString(),
                cable.parallel(),
                units.current(cable.ampacityA()),
                units.voltage(cable.dropV()),
                cable.dropShare(),
                units.power(cable.lossW()),
                cable.passes(),
                List.copyOf(cable.fails()),
                temperature(warmth == null ? null : warmth.hottestC(), units),
                time(warmth == null ? null : warmth.toLimitS(), units));
    }

    private static @Nullable Fuse fuse(
            @Nullable FuseWindow fuse, FuseCheck.@Nullable Verdict verdict, UnitSystem units) {
        if (fuse == null || verdict == null) {
            return null;
        }
        Double clearing = fuse.clearingS();
        return new Fuse(
                current(fuse.ratingA(), units),
                units.current(fuse.lowerA()),
                current(fuse.upperA(), units),
                voltage(fuse.voltageV(), units),
                current(fuse.interruptingA(), units),
                clearing == null ? null : units.eventTime(clearing),
                verdict.temperatureFactor(),
                current(verdict.leastFaultA(), units),
                time(verdict.leastFaultMeltS(), units),
                verdict.peakShare());
    }

    private static @Nullable Temperature temperature(@Nullable Double celsius, UnitSystem units) {
        return celsius == null ? null : units.temperature(celsius);
    }

    private static @Nullable Time time(@Nullable Double seconds, UnitSystem units) {
        return seconds == null ? null : units.eventTime(seconds);
    }

    private static @Nullable Current current(@Nullable Double amperes, UnitSystem units) {
        return amperes == null ? null : units.current(amperes);
    }

    private static @Nullable Voltage voltage(@Nullable Double volts, UnitSystem units) {
        return volts == null ? null : units.voltage(volts);
    }
}

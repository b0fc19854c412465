package org.axlewright.domain.conductor;

import java.util.List;
import org.axlewright.domain.cable.SizeSeries;
import org.axlewright.domain.conductor.CircuitInput.Controller;
import org.axlewright.domain.conductor.CircuitInput.Supply;
import org.axlewright.domain.conductor.CircuitInput.Surroundings;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Circuits for tests: a 36 V battery lead of 1 m, 105 degC, open, 33 CFR, drop of no account, changed by one thing at a time. */
record Circuits(
        CircuitSide side,
        Supply supply,
        Controller controller,
        double lengthM,
        Cycle cycle,
        double allowedDropShare,
        AmpacityTable table,
        double insulationC,
        @Nullable Double terminationC,
        Surroundings surroundings,
        int bundled,
        SizeSeries sizes) {

    static Circuits steady(double currentA) {
        return of(Cycle.steady(currentA));
    }

    static Circuits of(Cycle cycle) {
        return new Circuits(
                CircuitSide.BATTERY,
                new Supply(36.0, null, null),
                new Controller(null, null),
                1,
                cycle,
                0.5,
                AmpacityTable.CFR_33_183_425,
                105,
                null,
                new Surroundings(Location.OPEN, null),
                2,
                SizeSeries.AWG);
    }

    Circuits side(CircuitSide side) {
        return new Circuits(
                side,
                supply,
                controller,
                lengthM,
                cycle,
                allowedDropShare,
                table,
                insulationC,
                terminationC,
                surroundings,
                bundled,
                sizes);
    }

    Circuits supply(@Nullable Double nominalV, @Nullable Double fullV, @Nullable Double packOhm) {
        return new Circuits(
                side,
                new Supply(nominalV, fullV, packOhm),
                controller,
                lengthM,
                cycle,
                allowedDropShare,
                table,
                insulationC,
                terminationC,
                surroundings,
                bundled,
                sizes);
    }

    Circuits controller(@Nullable Double motorA, @Nullable Double batteryA) {
        return new Circuits(
                side,
                supply,
                new Controller(motorA, batteryA),
                lengthM,
                cycle,
                allowedDropShare,
                table,
                insulationC,
                terminationC,
                surroundings,
                bundled,
                sizes);
    }

    Circuits drop(double lengthM, double allowedDropShare) {
        return new Circuits(
                side,
                supply,
                controller,
                lengthM,
                cycle,
                allowedDropShare,
                table,
                insulationC,
                terminationC,
                surroundings,
                bundled,
                sizes);
    }

    Circuits rated(AmpacityTable table, double insulationC, @Nullable Double terminationC) {
        return new Circuits(
                side,
                supply,
                controller,
                lengthM,
                cycle,
                allowedDropShare,
                table,
                insulationC,
                terminationC,
                surroundings,
                bundled,
                sizes);
    }

    Circuits engineSpace() {
        return new Circuits(
                side,
                supply,
                controller,
                lengthM,
                cycle,
                allowedDropShare,
                table,
                insulationC,
                terminationC,
                new Surroundings(Location.ENGINE_SPACE, null),
                bundled,
                sizes);
    }

    Circuits ambient(double ambientC) {
        return new Circuits(
                side,
                supply,
                controller,
                lengthM,
                cycle,
                allowedDropShare,
                table,
                insulationC,
                terminationC,
                new Surroundings(Location.OPEN, ambientC),
                bundled,
                sizes);
    }

    Circuits bundled(int conductors) {
        return new Circuits(
                side,
                supply,
                controller,
                lengthM,
                cycle,
                allowedDropShare,
                table,
                insulationC,
                terminationC,
                surroundings,
                conductors,
                sizes);
    }

    Circuits sizes(SizeSeries series) {
        return new Circuits(
                side,
                supply,
                controller,
                lengthM,
                cycle,
                allowedDropShare,
                table,
                insulationC,
                terminationC,
                surroundings,
                bundled,
                series);
    }

    /** The same circuit with what is there: a size, a fuse, the pack flat and cold, another breaker. */
    CircuitInput with(
            CircuitInput.@Nullable Stated stated,
            CircuitInput.@Nullable Flat flat,
            List<CircuitInput.Breaker> breakers,
            FuseSent fuse) {
        CircuitInput plain = input();
        return new CircuitInput(
                plain.index(),
                plain.name(),
                plain.reference(),
                plain.side(),
                plain.supply(),
                plain.controller(),
                plain.lengthM(),
                plain.cycle(),
                plain.steady(),
                plain.allowedDropShare(),
                plain.table(),
                plain.insulationC(),
                plain.terminationC(),
                plain.terminationKnown(),
                plain.surroundings(),
                plain.bundled(),
                plain.sizes(),
                stated,
                plain.insulation(),
                plain.initialC(),
                flat,
                breakers,
                fuse,
                null);
    }

    CircuitInput input() {
        return new CircuitInput(
                0,
                "pack to controller",
                null,
                side,
                supply,
                controller,
                lengthM,
                cycle,
                cycle.segments().size() == 1,
                allowedDropShare,
                table,
                insulationC,
                terminationC == null ? insulationC : terminationC,
                terminationC != null,
                surroundings,
                bundled,
                sizes,
                null,
                new CircuitInput.Insulation(0.8e-3, null),
                null,
                null,
                List.of(),
                FuseSent.UNKNOWN,
                null);
    }

    ConductorSizing.Result size() {
        return ConductorSizing.of(input(), Trace.withoutWorking());
    }

    Candidate candidate(String size) {
        return size().candidates().stream()
                .filter(one -> one.conductor().size().toString().equals(size))
                .findFirst()
                .orElseThrow();
    }

    List<String> findings() {
        Trace trace = Trace.withoutWorking();
        ConductorSizing.of(input(), trace);
        return trace.findings().stream().map(Finding::code).toList();
    }
}

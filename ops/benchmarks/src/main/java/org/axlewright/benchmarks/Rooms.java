package org.axlewright.benchmarks;

import jakarta.validation.Validation;
import java.util.concurrent.TimeUnit;
import org.axlewright.api.calculation.Answer;
import org.axlewright.api.calculation.Asked;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.Calculations;
import org.axlewright.api.demo.DemoSetups;
import org.axlewright.api.problem.StrictJson;
import org.axlewright.api.section.Form;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.quantity.UnitSystem;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import tools.jackson.databind.json.JsonMapper;

/** One question of the demo setup, form check to shown result, without HTTP and JSON. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class Rooms {

    @Param({"centre-of-gravity", "lift-geometry", "pack-range", "charge-time", "conductor-size"})
    public String room = "";

    @Param({"false", "true"})
    public boolean working;

    private final Setup setup = demo();
    private final Calculations calculations =
            new Calculations(new Form(Validation.buildDefaultValidatorFactory().getValidator()), "benchmark");

    private static Setup demo() {
        JsonMapper.Builder builder = JsonMapper.builder();
        StrictJson.strict(builder);
        return builder.build().readValue(DemoSetups.exampleText(), Setup.class);
    }

    @Benchmark
    public Answer<?> ask() {
        Calculation<?, ?, ?> calculation = calculations.named(room).orElseThrow();
        return calculations.ask(calculation, setup, new Asked(UnitSystem.METRIC, working));
    }
}

package org.axlewright.benchmarks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import org.axlewright.api.Axlewright;
import org.axlewright.api.assessment.Assessor;
import org.axlewright.api.calculation.Asked;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.Calculations;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.demo.DemoSetups;
import org.axlewright.api.section.Form;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.trace.Trace;
import org.springframework.boot.SpringApplication;
import org.springframework.context.ConfigurableApplicationContext;
import tools.jackson.databind.json.JsonMapper;

/**
 * What an assessment of the whole demo setup costs beside its calculations called one by one in the same process, from JSON to JSON and
 * from setup to answer; and the share of each stage. Rounds are interleaved; what counts is the ratio of the medians.
 */
public final class AssessmentCost {

    private static final int WARM_UP = 500;
    private static final int ROUNDS = 500;
    private static final Asked ASKED = new Asked(UnitSystem.METRIC, false);

    private final Calculations calculations;
    private final Assessor assessor;
    private final Form form;
    private final JsonMapper json;
    private final Setup setup;

    /** Keeps results alive, so that no work is left out as unused. */
    private long kept;

    private AssessmentCost(ConfigurableApplicationContext context) {
        calculations = context.getBean(Calculations.class);
        assessor = context.getBean(Assessor.class);
        form = context.getBean(Form.class);
        json = context.getBean(JsonMapper.class);
        setup = read();
    }

    public static void main(String[] arguments) {
        SpringApplication application = new SpringApplication(Axlewright.class);
        try (ConfigurableApplicationContext context = application.run(
                "--server.port=0",
                "--spring.datasource.url=jdbc:postgresql://127.0.0.1:1/nowhere",
                "--logging.level.root=error")) {
            new AssessmentCost(context).run();
        }
    }

    private void run() {
        double[] medians = medians(List.of(
                () -> json.writeValueAsBytes(assessor.assess(read(), ASKED)),
                () -> oneByOne(true),
                () -> assessor.assess(setup, ASKED),
                () -> oneByOne(false),
                this::read,
                () -> form.faults(setup),
                this::resolveAll,
                this::calculateAll,
                () -> json.writeValueAsBytes(assessor.assess(setup, ASKED))));
        System.out.printf(Locale.ROOT, "from JSON to JSON: %s%n", ratio(medians[0], medians[1]));
        System.out.printf(Locale.ROOT, "from setup to answer: %s%n", ratio(medians[2], medians[3]));
        double parsing = medians[4];
        double checking = medians[5];
        double resolving = medians[6];
        double calculating = medians[7] - medians[6];
        double showing = medians[2] - checking - medians[7];
        double writing = medians[8] - medians[2];
        double whole = medians[0];
        share("parsing", parsing, whole);
        share("checking the form", checking, whole);
        share("resolving", resolving, whole);
        share("calculating", calculating, whole);
        share("showing and gathering", showing, whole);
        share("writing", writing, whole);
        System.out.println("(kept " + kept + ")");
    }

    private static String ratio(double assessment, double singles) {
        return String.format(
                Locale.ROOT,
                "assessment %.0f µs, its calculations one by one %.0f µs, ratio %.2f",
                assessment / 1000,
                singles / 1000,
                assessment / singles);
    }

    private static void share(String stage, double nanos, double whole) {
        System.out.printf(Locale.ROOT, "%-22s %6.0f µs %5.1f %%%n", stage, nanos / 1000, 100 * nanos / whole);
    }

    private Setup read() {
        return json.readValue(DemoSetups.exampleText(), Setup.class);
    }

    private List<Object> oneByOne(boolean fromJson) {
        List<Object> answers = new ArrayList<>();
        for (Calculation<?, ?, ?> calculation : calculations.all()) {
            Object answer = calculations.ask(calculation, fromJson ? read() : setup, ASKED);
            answers.add(fromJson ? json.writeValueAsBytes(answer) : answer);
        }
        return answers;
    }

    private List<Object> resolveAll() {
        List<Object> inputs = new ArrayList<>();
        calculations.all().forEach(calculation -> inputs.add(calculation.resolve(setup, new Resolution())));
        return inputs;
    }

    private List<Object> calculateAll() {
        List<Object> outputs = new ArrayList<>();
        calculations.all().forEach(calculation -> outputs.add(calculated(calculation)));
        return outputs;
    }

    private <I, O, R> O calculated(Calculation<I, O, R> calculation) {
        return calculation.calculate(calculation.resolve(setup, new Resolution()), Trace.withoutWorking());
    }

    private double[] medians(List<Supplier<Object>> works) {
        long[][] nanos = new long[works.size()][ROUNDS];
        for (int round = -WARM_UP; round < ROUNDS; round++) {
            for (int work = 0; work < works.size(); work++) {
                long start = System.nanoTime();
                Object result = works.get(work).get();
                long taken = System.nanoTime() - start;
                kept += System.identityHashCode(result) & 1;
                if (round >= 0) {
                    nanos[work][round] = taken;
                }
            }
        }
        return Arrays.stream(nanos)
                .mapToDouble(values -> {
                    Arrays.sort(values);
                    return values[values.length / 2];
                })
                .toArray();
    }
}

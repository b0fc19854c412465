package org.axlewright.benchmarks;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.axlewright.api.Axlewright;
import org.axlewright.api.calculation.Asked;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.Calculations;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.demo.DemoSetups;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.trace.Trace;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * What sweeps and batches cost beside the same work done one by one, in one run of one program: a sweep of 10 000 points over HTTP beside
 * 10 000 rounds of resolving and calculating in process, a sweep of 10 000 beside one of 1 000, and a batch of 10 000 assessments beside
 * single ones on the same connection. Run it with {@code -Xmx256m} to see that a batch needs no more.
 */
public final class WhatIf {

    private static final int POINTS = 10_000;
    private static final int ROUNDS = 7;

    private final HttpClient http =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private final ConfigurableApplicationContext context;
    private final Calculations calculations;
    private final JsonMapper json;
    private final String root;

    private WhatIf(ConfigurableApplicationContext context) {
        this.context = context;
        this.calculations = context.getBean(Calculations.class);
        this.json = context.getBean(JsonMapper.class);
        this.root = "http://127.0.0.1:"
                + ((WebServerApplicationContext) context).getWebServer().getPort();
    }

    public static void main(String[] arguments) throws IOException, InterruptedException {
        SpringApplication application = new SpringApplication(Axlewright.class);
        try (ConfigurableApplicationContext context = application.run(
                "--server.port=0",
                "--spring.datasource.url=jdbc:postgresql://127.0.0.1:1/nowhere",
                "--logging.level.root=error")) {
            WhatIf whatIf = new WhatIf(context);
            whatIf.sweeps();
            whatIf.batches(arguments.length > 0 ? Integer.parseInt(arguments[0]) : POINTS);
        }
    }

    private void sweeps() throws IOException, InterruptedException {
        Calculation<?, ?, ?> calculation =
                calculations.named("centre-of-gravity").orElseThrow();
        List<Setup> documents = documents();
        String large = sweep(POINTS);
        String small = sweep(POINTS / 10);
        for (int i = 0; i < 3; i++) {
            rounds(calculation, documents);
            questions(calculation, documents);
            post("/v1/sweeps", large);
            post("/v1/sweeps", small);
        }
        long[] bare = new long[ROUNDS];
        long[] asked = new long[ROUNDS];
        long[] larges = new long[ROUNDS];
        long[] smalls = new long[ROUNDS];
        for (int i = 0; i < ROUNDS; i++) {
            bare[i] = rounds(calculation, documents);
            larges[i] = post("/v1/sweeps", large);
            asked[i] = questions(calculation, documents);
            smalls[i] = post("/v1/sweeps", small);
        }
        print("10000 rounds of resolve and calculate, in process", median(bare));
        print("10000 questions with form and words, in process", median(asked));
        print("sweep of 10000 points, one request", median(larges));
        print("sweep of 1000 points, one request", median(smalls));
        ratio("sweep / resolve and calculate", median(larges) / median(bare));
        ratio("sweep / questions", median(larges) / median(asked));
        ratio("sweep of 10000 / sweep of 1000", median(larges) / median(smalls));
    }

    /** The documents of the sweep, one by one. */
    private List<Setup> documents() {
        List<Setup> documents = new ArrayList<>();
        for (int i = 0; i < POINTS; i++) {
            JsonNode vehicle = json.readTree(DemoSetups.exampleText());
            ((ObjectNode) vehicle.at("/items/1/position/x")).put("value", 600 + i * 1200.0 / (POINTS - 1));
            documents.add(json.treeToValue(vehicle, Setup.class));
        }
        return documents;
    }

    private static String sweep(int points) {
        return "{\"calculation\": \"centre-of-gravity\", \"input\": " + DemoSetups.exampleText()
                + ", \"vary\": [{\"pointer\": \"/items/1/position/x/value\", \"from\": 600, \"to\": 1800, \"steps\": "
                + points + "}]}";
    }

    private static <I, O, R> long rounds(Calculation<I, O, R> calculation, List<Setup> documents) {
        long start = System.nanoTime();
        int found = 0;
        for (Setup document : documents) {
            Resolution resolution = new Resolution();
            I input = calculation.resolve(document, resolution);
            resolution.refuseIfFaulty();
            O output = calculation.calculate(input, Trace.withoutWorking());
            found += output == null ? 0 : 1;
        }
        if (found != documents.size()) {
            throw new IllegalStateException("A round without a result");
        }
        return System.nanoTime() - start;
    }

    private long questions(Calculation<?, ?, ?> calculation, List<Setup> documents) {
        long start = System.nanoTime();
        Asked asked = new Asked(UnitSystem.METRIC, false);
        documents.forEach(document -> calculations.ask(calculation, document, asked));
        return System.nanoTime() - start;
    }

    private void batches(int lines) throws IOException, InterruptedException {
        String vehicle = json.readTree(DemoSetups.exampleText()).toString();
        byte[] line = ("{\"calculation\":\"assessment\",\"input\":" + vehicle + "}\n").getBytes(
                java.nio.charset.StandardCharsets.UTF_8);
        Path file = Files.createTempFile("lines", ".ndjson");
        try (var out = Files.newOutputStream(file)) {
            for (int i = 0; i < lines; i++) {
                out.write(line);
            }
        }
        int singles = Math.max(100, lines / 10);
        for (int i = 0; i < 200; i++) {
            post("/v1/assessments", vehicle);
        }
        long before = singles(singles, vehicle);
        long batch = batch(file, lines);
        long after = singles(singles, vehicle);
        Files.delete(file);
        double one = (before + after) / (2.0 * singles);
        double inBatch = (double) batch / lines;
        System.out.printf(Locale.ROOT, "%-52s %10.0f us%n", "one assessment of " + 2 * singles + ", one by one", one / 1e3);
        System.out.printf(Locale.ROOT, "%-52s %10.0f us%n", "one assessment of a batch of " + lines, inBatch / 1e3);
        ratio("rate in a batch / rate one by one", one / inBatch);
        System.out.println("largest heap " + Runtime.getRuntime().maxMemory() / (1 << 20) + " MiB, "
                + Runtime.getRuntime().availableProcessors() + " processors, Java "
                + Runtime.version().feature() + (context.isActive() ? "" : ", ended"));
    }

    private long singles(int count, String vehicle) throws IOException, InterruptedException {
        long nanos = 0;
        for (int i = 0; i < count; i++) {
            nanos += post("/v1/assessments", vehicle);
        }
        return nanos;
    }

    private long batch(Path file, int lines) throws IOException, InterruptedException {
        long start = System.nanoTime();
        HttpResponse<java.io.InputStream> response = http.send(
                HttpRequest.newBuilder(URI.create(root + "/v1/batches"))
                        .header("Content-Type", "application/x-ndjson")
                        .POST(HttpRequest.BodyPublishers.ofFile(file))
                        .build(),
                HttpResponse.BodyHandlers.ofInputStream());
        int answered = 0;
        byte[] buffer = new byte[1 << 16];
        try (var in = response.body()) {
            for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                for (int i = 0; i < read; i++) {
                    answered += buffer[i] == '\n' ? 1 : 0;
                }
            }
        }
        if (answered != lines) {
            throw new IOException(answered + " answers for " + lines + " lines");
        }
        return System.nanoTime() - start;
    }

    private long post(String path, String body) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create(root + path))
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body))
                .build();
        long start = System.nanoTime();
        HttpResponse<byte[]> response = http.send(request, HttpResponse.BodyHandlers.ofByteArray());
        long nanos = System.nanoTime() - start;
        if (response.statusCode() != 200) {
            throw new IOException("Status " + response.statusCode() + " for " + path);
        }
        return nanos;
    }

    private static double median(long[] values) {
        long[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    private static void print(String what, double nanos) {
        System.out.printf(Locale.ROOT, "%-52s %10.1f ms%n", what, nanos / 1e6);
    }

    private static void ratio(String what, double value) {
        System.out.printf(Locale.ROOT, "%-52s %10.2f%n", what, value);
    }
}

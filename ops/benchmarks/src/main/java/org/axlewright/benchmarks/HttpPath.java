package org.axlewright.benchmarks;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.Arrays;
import java.util.Locale;
import org.axlewright.api.Axlewright;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.Calculations;
import org.axlewright.api.demo.DemoSetups;
import org.axlewright.api.section.Setup;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/**
 * What a calculation costs over HTTP beside a bare echo: an endpoint of the same service, with the same filters, converter and records,
 * that returns its request. Rounds of the two are interleaved on one connection; what counts is the ratio of their medians.
 */
public final class HttpPath {

    private static final int WARM_UP = 3_000;
    private static final int ROUNDS = 4_000;

    private final HttpClient http =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

    private HttpPath() {}

    /** Returns its request. */
    @RestController
    static class Echo {
        @PostMapping("/benchmark/echo")
        Setup echo(@RequestBody Setup setup) {
            return setup;
        }
    }

    public static void main(String[] arguments) throws IOException, InterruptedException {
        SpringApplication application = new SpringApplication(Axlewright.class, Echo.class);
        try (ConfigurableApplicationContext context = application.run(
                "--server.port=0",
                "--spring.datasource.url=jdbc:postgresql://127.0.0.1:1/nowhere",
                "--logging.level.root=error")) {
            int port = ((WebServerApplicationContext) context).getWebServer().getPort();
            HttpPath path = new HttpPath();
            System.out.println("calculation            echo µs   question µs   ratio (medians, working=false)");
            for (Calculation<?, ?, ?> calculation :
                    context.getBean(Calculations.class).all()) {
                path.compare(port, calculation.name());
            }
        }
    }

    private void compare(int port, String name) throws IOException, InterruptedException {
        String body = DemoSetups.exampleText();
        HttpRequest echo = request(port, "/benchmark/echo", body);
        HttpRequest question = request(port, "/v1/" + name + "?working=false", body);
        for (int i = 0; i < WARM_UP; i++) {
            nanos(echo);
            nanos(question);
        }
        long[] echoes = new long[ROUNDS];
        long[] questions = new long[ROUNDS];
        for (int i = 0; i < ROUNDS; i++) {
            echoes[i] = nanos(echo);
            questions[i] = nanos(question);
        }
        double echoMedian = median(echoes);
        double questionMedian = median(questions);
        System.out.printf(
                Locale.ROOT,
                "%-20s %9.0f %13.0f %7.2f%n",
                name,
                echoMedian / 1000,
                questionMedian / 1000,
                questionMedian / echoMedian);
    }

    private static HttpRequest request(int port, String path, String body) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body))
                .build();
    }

    private long nanos(HttpRequest request) throws IOException, InterruptedException {
        long start = System.nanoTime();
        HttpResponse<byte[]> response = http.send(request, HttpResponse.BodyHandlers.ofByteArray());
        long nanos = System.nanoTime() - start;
        if (response.statusCode() != 200) {
            throw new IOException("Status " + response.statusCode() + " for " + request.uri());
        }
        return nanos;
    }

    private static double median(long[] values) {
        Arrays.sort(values);
        return (values[values.length / 2 - 1] + values[values.length / 2]) / 2.0;
    }
}

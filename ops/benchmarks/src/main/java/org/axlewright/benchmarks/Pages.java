package org.axlewright.benchmarks;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.axlewright.api.Axlewright;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.util.FileSystemUtils;
import tools.jackson.databind.json.JsonMapper;

/**
 * What a page of 100 setups costs in a workspace of 10 000 beside the same page in a workspace of 100: two services with a database of
 * their own each, asked by turns on one connection each. What counts is the ratio of the medians; the bar is 2.
 */
public final class Pages implements AutoCloseable {

    private static final int FEW = 100;
    private static final int MANY = 10_000;
    private static final int WARM_UP = 300;
    private static final int ROUNDS = 1_000;

    private final HttpClient http =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private final Path data = Files.createTempDirectory("pages");
    private final ConfigurableApplicationContext context;
    private final String address;

    private Pages(int setups) throws IOException, InterruptedException {
        context = new SpringApplication(Axlewright.class)
                .run("--server.port=0", "--axlewright.data=" + data, "--logging.level.root=error");
        address = "http://127.0.0.1:"
                + ((WebServerApplicationContext) context).getWebServer().getPort();
        // Short enough to lie in the row itself: a page then reads the most.
        byte[] line = ("{\"name\": \"Orchard runabout\", \"notes\": \"" + "note ".repeat(300) + "\"}\n")
                .getBytes(StandardCharsets.UTF_8);
        HttpResponse<byte[]> imported = send(HttpRequest.newBuilder(URI.create(address + "/v1/setups/import"))
                .header("Content-Type", "application/x-ndjson")
                .POST(HttpRequest.BodyPublishers.ofByteArrays(Collections.nCopies(setups, line))));
        if (imported.statusCode() != 200) {
            throw new IOException("Import ended with status " + imported.statusCode());
        }
    }

    public static void main(String[] arguments) throws IOException, InterruptedException {
        try (Pages few = new Pages(FEW);
                Pages many = new Pages(MANY)) {
            List<String> cursors = many.cursors();
            String middle = cursors.get(cursors.size() / 2);
            String last = cursors.get(cursors.size() - 1);
            System.out.printf(
                    Locale.ROOT, "page of 100              of %d µs   of %d µs   ratio (medians)%n", FEW, MANY);
            compare("first", few, "", many, "");
            compare("middle", few, "", many, "&cursor=" + middle);
            compare("last", few, "", many, "&cursor=" + last);
            compare("by name", few, "&name=orchard", many, "&name=orchard");
        }
    }

    private static void compare(String page, Pages few, String ofFew, Pages many, String ofMany)
            throws IOException, InterruptedException {
        long[] costOfFew = new long[ROUNDS];
        long[] costOfMany = new long[ROUNDS];
        for (int i = -WARM_UP; i < ROUNDS; i++) {
            long oneOfFew = few.nanos(ofFew);
            long oneOfMany = many.nanos(ofMany);
            if (i >= 0) {
                costOfFew[i] = oneOfFew;
                costOfMany[i] = oneOfMany;
            }
        }
        double medianOfFew = median(costOfFew);
        double medianOfMany = median(costOfMany);
        System.out.printf(
                Locale.ROOT,
                "%-20s %13.0f %14.0f %7.2f%n",
                page,
                medianOfFew / 1000,
                medianOfMany / 1000,
                medianOfMany / medianOfFew);
    }

    /** Where each page after the first begins. */
    private List<String> cursors() throws IOException, InterruptedException {
        List<String> cursors = new ArrayList<>();
        for (String next = ""; ; ) {
            HttpResponse<byte[]> page = page(cursors.isEmpty() ? "" : "&cursor=" + next);
            next = JsonMapper.shared().readTree(page.body()).path("next").asString("");
            if (next.isEmpty()) {
                return cursors;
            }
            cursors.add(next);
        }
    }

    private long nanos(String query) throws IOException, InterruptedException {
        long start = System.nanoTime();
        HttpResponse<byte[]> response = page(query);
        long nanos = System.nanoTime() - start;
        if (response.statusCode() != 200) {
            throw new IOException("Status " + response.statusCode() + " for " + query);
        }
        return nanos;
    }

    private HttpResponse<byte[]> page(String query) throws IOException, InterruptedException {
        return send(HttpRequest.newBuilder(URI.create(address + "/v1/setups?limit=100" + query)));
    }

    private HttpResponse<byte[]> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return http.send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
    }

    private static double median(long[] values) {
        Arrays.sort(values);
        return (values[values.length / 2 - 1] + values[values.length / 2]) / 2.0;
    }

    @Override
    public void close() throws IOException {
        context.close();
        FileSystemUtils.deleteRecursively(data);
    }
}

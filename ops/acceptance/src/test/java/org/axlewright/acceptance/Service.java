package org.axlewright.acceptance;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The jar that ships, as a process of its own. */
final class Service implements AutoCloseable {

    static final JsonMapper JSON = JsonMapper.shared();

    /** Generous: a busy machine starts slowly, and a start that never ends must fail all the same. */
    static final Duration START = Duration.ofSeconds(150);

    private static final HttpClient HTTP =
            HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(5)).build();

    final Process process;
    final int port;
    private final Path output;

    private Service(Process process, int port, Path output) {
        this.process = process;
        this.port = port;
        this.output = output;
    }

    /** Starts the jar; answers before it is ready. */
    static Service launch(Path data, Map<String, String> environment) throws IOException {
        Path jar = Path.of(System.getProperty("axlewright.jar"));
        if (!Files.exists(jar)) {
            throw new IllegalStateException(jar + " is missing: build the api module first");
        }
        int port = freePort();
        Path output = Files.createTempFile("axlewright", ".log");
        output.toFile().deleteOnExit();
        ProcessBuilder builder = new ProcessBuilder(System.getProperty("axlewright.java"), "-jar", jar.toString())
                .redirectErrorStream(true)
                .redirectOutput(output.toFile());
        builder.environment().put("SERVER_PORT", String.valueOf(port));
        builder.environment().put("AXLEWRIGHT_DATA", data.toString());
        builder.environment().putAll(environment);
        return new Service(builder.start(), port, output);
    }

    /** Starts the jar with its own database and waits until setups can be saved. */
    static Service start(Path data) throws IOException {
        Service service = launch(data, Map.of());
        service.await(START, () -> service.get("/actuator/health/storage").statusCode() == 200);
        return service;
    }

    static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }

    HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                .timeout(Duration.ofSeconds(30))
                .header("Content-Type", "application/json");
    }

    HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return HTTP.send(request.build(), BodyHandlers.ofString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    HttpResponse<String> get(String path) {
        return send(request(path));
    }

    HttpResponse<String> post(String path, String body) {
        return send(request(path).POST(BodyPublishers.ofString(body)));
    }

    /** The first demo setup, as the service tells it. */
    String demo() {
        return JSON.readTree(get("/v1/demo-setups").body()).path("items").get(0).toString();
    }

    /** Names of the calculations: the contract marks each with what it needs. */
    List<String> calculations() {
        HttpResponse<String> contract = get("/v3/api-docs");
        if (contract.statusCode() != 200) {
            throw new AssertionError("No contract: " + contract.statusCode() + " " + contract.body());
        }
        JsonNode paths = JSON.readTree(contract.body()).path("paths");
        List<String> names = new ArrayList<>();
        for (String path : paths.propertyNames()) {
            if (paths.path(path).path("post").has("x-needs")) {
                names.add(path.substring("/v1/".length()));
            }
        }
        return names;
    }

    String output() throws IOException {
        return Files.readString(output);
    }

    /** Waits for something to come true; an exception counts as not yet. */
    void await(Duration limit, BooleanSupplier fact) throws IOException {
        long end = System.nanoTime() + limit.toNanos();
        while (true) {
            try {
                if (fact.getAsBoolean()) {
                    return;
                }
            } catch (UncheckedIOException notYet) {
                // asked again below
            }
            if (!process.isAlive() || System.nanoTime() - end > 0) {
                throw new AssertionError("Did not happen in " + limit + ". The service said:\n" + output());
            }
            try {
                Thread.sleep(100);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException(e);
            }
        }
    }

    /** Sends SIGTERM and returns the exit status. */
    int terminate() throws InterruptedException {
        process.destroy();
        if (!process.waitFor(60, TimeUnit.SECONDS)) {
            throw new AssertionError("The service did not end");
        }
        return process.exitValue();
    }

    /** Sends SIGKILL. */
    void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    @Override
    public void close() throws InterruptedException {
        if (process.isAlive()) {
            terminate();
        }
    }
}

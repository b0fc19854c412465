package org.axlewright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What the packaged service does when it, or its database, is killed, frozen or away. */
@Timeout(420)
class CrashIT {

    private static final int ACKNOWLEDGED = 100;
    private static final int WRITERS = 6;

    @TempDir
    Path data;

    private Servers servers;

    @BeforeEach
    void name() {
        servers = new Servers(data);
    }

    /** A failed test leaves no server behind. */
    @AfterEach
    void clean() throws Exception {
        servers.signal("CONT");
        servers.signal("QUIT");
    }

    @Test
    void losesNoAcknowledgedSetupWhenTheServiceIsKilled() throws Exception {
        Map<String, String> acknowledged = new ConcurrentHashMap<>();
        try (Service service = Service.start(data)) {
            writeUntilKilled(service, acknowledged, service::kill);
        }
        assertThat(servers.inCharge()).as("left behind by the kill").hasSize(1);
        ProcessHandle orphan = servers.inCharge().get(0);
        try (Service service = Service.start(data)) {
            assertThat(orphan.isAlive()).isFalse();
            assertThat(servers.inCharge()).hasSize(1);
            assertStored(service, acknowledged);
            assertThat(service.post("/v1/setups", "{\"name\":\"afterwards\"}").statusCode())
                    .isEqualTo(201);
        }
        assertThat(servers.all()).isEmpty();
    }

    @Test
    void losesNoAcknowledgedSetupWhenServiceAndDatabaseAreKilled() throws Exception {
        Map<String, String> acknowledged = new ConcurrentHashMap<>();
        try (Service service = Service.start(data)) {
            writeUntilKilled(service, acknowledged, () -> {
                servers.signal("KILL");
                service.kill();
            });
        }
        try (Service service = Service.start(data)) {
            assertStored(service, acknowledged);
        }
    }

    @Test
    void refusesADirectoryThatIsInUseAndEndsCleanly() throws Exception {
        try (Service service = Service.start(data)) {
            try (Service second = Service.launch(data, Map.of())) {
                assertThat(second.process.waitFor(Service.START.toSeconds(), TimeUnit.SECONDS))
                        .isTrue();
                assertThat(second.process.exitValue()).isEqualTo(1);
                assertThat(second.output())
                        .contains("is in use by another Axlewright service (process " + service.process.pid() + ")")
                        .contains("AXLEWRIGHT_DATA");
            }
            assertThat(service.get("/v1/setups").statusCode()).isEqualTo(200);
            assertThat(service.terminate()).as("128 + SIGTERM").isEqualTo(143);
            assertThat(servers.all()).isEmpty();
        }
    }

    @Test
    void calculatesWhileTheDatabaseIsFrozenAndRecovers() throws Exception {
        try (Service service = Service.start(data)) {
            String demo = service.demo();
            servers.signal("STOP");
            assertAway(service, Duration.ofSeconds(15));
            for (int i = 0; i < 20; i++) {
                assertThat(service.post("/v1/centre-of-gravity", demo).statusCode())
                        .isEqualTo(200);
            }
            assertThat(service.get("/actuator/health/readiness").statusCode()).isEqualTo(200);
            servers.signal("CONT");
            service.await(
                    Duration.ofSeconds(30), () -> service.get("/v1/setups").statusCode() == 200);
        }
    }

    @Test
    void calculatesWhileTheDatabaseIsKilledAndStartsItAgain() throws Exception {
        try (Service service = Service.start(data)) {
            String demo = service.demo();
            String location = service.post("/v1/setups", demo)
                    .headers()
                    .firstValue("Location")
                    .orElseThrow();
            servers.signal("KILL");
            for (int i = 0; i < 20; i++) {
                assertThat(service.post("/v1/centre-of-gravity", demo).statusCode())
                        .isEqualTo(200);
                assertThat(service.get(location).statusCode()).isIn(200, 503);
            }
            service.await(Duration.ofSeconds(90), () -> service.get(location).statusCode() == 200);
            assertThat(service.get(location).body()).isEqualTo(demo);
        }
        assertThat(servers.all()).isEmpty();
    }

    @Test
    void startsAndCalculatesWithoutTheDatabaseItIsGiven() throws Exception {
        String nowhere = "jdbc:postgresql://127.0.0.1:" + Service.freePort() + "/none";
        try (Service service = Service.launch(data, Map.of("SPRING_DATASOURCE_URL", nowhere))) {
            service.await(
                    Service.START,
                    () -> service.get("/actuator/health/readiness").statusCode() == 200);
            assertThat(service.post("/v1/centre-of-gravity", service.demo()).statusCode())
                    .isEqualTo(200);
            assertAway(service, Duration.ofSeconds(5));
            assertThat(Files.list(data)).as("no server of its own").isEmpty();
        }
    }

    private interface Kill {
        void now() throws Exception;
    }

    /** Saves from several threads, and kills in the middle of it. */
    private static void writeUntilKilled(Service service, Map<String, String> acknowledged, Kill kill)
            throws Exception {
        ExecutorService writers = Executors.newFixedThreadPool(WRITERS);
        AtomicInteger number = new AtomicInteger();
        for (int i = 0; i < WRITERS; i++) {
            writers.execute(() -> {
                try {
                    while (true) {
                        String document = "{\"name\":\"written " + number.incrementAndGet() + "\"}";
                        HttpResponse<String> answer = service.post("/v1/setups", document);
                        if (answer.statusCode() == 201) {
                            acknowledged.put(
                                    answer.headers().firstValue("Location").orElseThrow(), document);
                        }
                    }
                } catch (UncheckedIOException killed) {
                    // ends this writer: what was not acknowledged may be there or not
                }
            });
        }
        service.await(Duration.ofSeconds(120), () -> acknowledged.size() >= ACKNOWLEDGED);
        kill.now();
        writers.shutdown();
        assertThat(writers.awaitTermination(60, TimeUnit.SECONDS)).isTrue();
    }

    private static void assertStored(Service service, Map<String, String> acknowledged) {
        assertThat(acknowledged).hasSizeGreaterThanOrEqualTo(ACKNOWLEDGED);
        acknowledged.forEach((location, document) ->
                assertThat(service.get(location).body()).as(location).isEqualTo(document));
    }

    private static void assertAway(Service service, Duration limit) {
        long begin = System.nanoTime();
        HttpResponse<String> answer = service.get("/v1/setups");
        assertThat(answer.statusCode()).isEqualTo(503);
        assertThat(answer.headers().firstValue("Retry-After")).contains("5");
        assertThat(answer.headers().firstValue("Content-Type")).contains("application/problem+json");
        assertThat(Duration.ofNanos(System.nanoTime() - begin)).isLessThan(limit);
    }
}

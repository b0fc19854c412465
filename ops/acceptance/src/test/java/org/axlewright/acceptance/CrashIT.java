package org.axlewright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.UncheckedIOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
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

    private static final int ROUNDS = 20;

    /** Well formed, its check digits (CRC-32) right; whether it opens anything only the database knows. */
    private static final String UNKNOWN_TOKEN =
            "axw_00112233445566778899aabbccddeeff00112233445566778899aabbccddeeff54565feb";

    private static final int ACKNOWLEDGED = 40; // in a round, at least, before the kill
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

    /** What is killed in a round. */
    private enum Victim {
        DATABASE,
        SERVICE,
        BOTH
    }

    /**
     * Kills by turns, in the middle of writing. What was acknowledged is there, byte for byte; what was not is repeated with its key, and
     * is there once.
     */
    @Test
    @Timeout(900)
    void losesNothingAcknowledgedAndDoublesNothingInTwentyKills() throws Exception {
        Map<String, String> acknowledged = new ConcurrentHashMap<>();
        Service service = Service.start(data);
        try {
            for (int round = 0; round < ROUNDS; round++) {
                Victim victim = Victim.values()[round % Victim.values().length];
                Map<String, String> ofThisRound = new ConcurrentHashMap<>();
                List<ProcessHandle> before = servers.inCharge();
                assertThat(before).hasSize(1);
                Set<String> unanswered = writeUntilKilled(service, "round " + round, victim, ofThisRound);
                if (victim != Victim.DATABASE) {
                    service = Service.start(data);
                }
                Service alive = service;
                alive.await(Service.START, () -> alive.get("/v1/setups").statusCode() == 200);
                assertThat(before.get(0).isAlive())
                        .as("the server before the kill")
                        .isFalse();
                for (String document : unanswered) {
                    HttpResponse<String> repeated = create(alive, document);
                    assertThat(repeated.statusCode()).as(repeated.body()).isEqualTo(201);
                    ofThisRound.put(location(repeated), document);
                }
                Map.Entry<String, String> answered =
                        ofThisRound.entrySet().iterator().next();
                HttpResponse<String> again = create(alive, answered.getValue());
                assertThat(location(again)).isEqualTo(answered.getKey());
                assertThat(again.headers().firstValue("Idempotent-Replayed")).contains("true");
                assertStored(alive, ofThisRound);
                acknowledged.putAll(ofThisRound);
            }
            assertStored(service, acknowledged);
            assertThat(acknowledged).hasSizeGreaterThanOrEqualTo(ROUNDS * ACKNOWLEDGED);
            assertThat(service.get("/v1/setups/export").body().lines())
                    .containsExactlyInAnyOrderElementsOf(acknowledged.values());
            assertThat(service.terminate()).isEqualTo(143);
        } finally {
            service.close();
        }
        assertThat(servers.all()).isEmpty();
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
            assertThat(service.get("/v1/setups").statusCode())
                    .as("another's database needs a token")
                    .isEqualTo(401);
            assertAway(service, Duration.ofSeconds(5));
            assertThat(Files.list(data)).as("no server of its own").isEmpty();
        }
    }

    /**
     * Saves from several threads, and kills in the middle of it.
     *
     * @param acknowledged takes location and document of what was answered
     * @return the documents that were not
     */
    private Set<String> writeUntilKilled(Service service, String round, Victim victim, Map<String, String> acknowledged)
            throws Exception {
        Set<String> unanswered = ConcurrentHashMap.newKeySet();
        ExecutorService writers = Executors.newFixedThreadPool(WRITERS);
        AtomicInteger number = new AtomicInteger();
        for (int i = 0; i < WRITERS; i++) {
            writers.execute(() -> {
                for (boolean alive = true; alive; ) {
                    String document = "{\"name\":\"" + round + ", " + number.incrementAndGet() + "\"}";
                    unanswered.add(document);
                    try {
                        HttpResponse<String> answer = create(service, document);
                        alive = answer.statusCode() == 201;
                        if (alive) {
                            acknowledged.put(location(answer), document);
                            unanswered.remove(document);
                        }
                    } catch (UncheckedIOException killed) {
                        alive = false;
                    }
                }
            });
        }
        service.await(Duration.ofSeconds(120), () -> acknowledged.size() >= ACKNOWLEDGED);
        if (victim != Victim.SERVICE) {
            servers.signal("KILL");
        }
        if (victim != Victim.DATABASE) {
            service.kill();
        }
        writers.shutdown();
        assertThat(writers.awaitTermination(60, TimeUnit.SECONDS)).isTrue();
        return unanswered;
    }

    /** With a key made of the document: each is written once. */
    private static HttpResponse<String> create(Service service, String document) {
        return service.send(service.request("/v1/setups")
                .header("Idempotency-Key", document.replaceAll("[^a-z0-9]+", "-"))
                .POST(BodyPublishers.ofString(document)));
    }

    private static String location(HttpResponse<String> created) {
        return created.headers().firstValue("Location").orElseThrow();
    }

    private static void assertStored(Service service, Map<String, String> acknowledged) {
        acknowledged.forEach((location, document) ->
                assertThat(service.get(location).body()).as(location).isEqualTo(document));
    }

    private static void assertAway(Service service, Duration limit) {
        long begin = System.nanoTime();
        HttpResponse<String> answer =
                service.send(service.request("/v1/setups").header("Authorization", "Bearer " + UNKNOWN_TOKEN));
        assertThat(answer.statusCode()).isEqualTo(503);
        assertThat(answer.headers().firstValue("Retry-After")).contains("5");
        assertThat(answer.headers().firstValue("Content-Type")).contains("application/problem+json");
        assertThat(Duration.ofNanos(System.nanoTime() - begin)).isLessThan(limit);
    }
}

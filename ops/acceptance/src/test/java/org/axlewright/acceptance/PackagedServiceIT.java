package org.axlewright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The packaged service as its callers meet it. */
@Timeout(240)
class PackagedServiceIT {

    @TempDir
    static Path data;

    private static Service service;

    @BeforeAll
    static void start() throws Exception {
        service = Service.start(data);
    }

    @AfterAll
    static void stop() throws Exception {
        service.close();
    }

    @Test
    void answersEveryCalculationForTheDemoSetup() {
        assertThat(service.calculations()).contains("centre-of-gravity");
        for (String calculation : service.calculations()) {
            HttpResponse<String> answer = service.post("/v1/" + calculation + "?units=us", service.demo());
            assertThat(answer.statusCode())
                    .as(calculation + ": " + answer.body())
                    .isEqualTo(200);
            assertThat(Service.JSON.readTree(answer.body()).path("result").isEmpty())
                    .isFalse();
        }
    }

    @Test
    void answersASavedSetupLikeTheSameBody() {
        String demo = service.demo();
        String location = service.post("/v1/setups", demo)
                .headers()
                .firstValue("Location")
                .orElseThrow();
        assertThat(service.get(location).body()).isEqualTo(demo);
        for (String calculation : service.calculations()) {
            assertThat(Service.JSON.readTree(
                            service.get(location + "/" + calculation).body()))
                    .isEqualTo(Service.JSON.readTree(
                            service.post("/v1/" + calculation, demo).body()));
        }
    }

    @Test
    void guardsASetupByItsEntityTag() {
        HttpResponse<String> created = service.post("/v1/setups", "{\"name\":\"guarded\"}");
        String location = created.headers().firstValue("Location").orElseThrow();
        String tag = created.headers().firstValue("ETag").orElseThrow();
        assertThat(service.send(service.request(location).header("If-None-Match", tag))
                        .statusCode())
                .isEqualTo(304);
        assertThat(put(location, null)).isEqualTo(428);
        assertThat(put(location, tag)).isEqualTo(204);
        assertThat(put(location, tag)).isEqualTo(412);
        assertThat(service.send(service.request(location)
                                .header("If-Match", "*")
                                .DELETE())
                        .statusCode())
                .isEqualTo(204);
        assertThat(service.get(location).statusCode()).isEqualTo(404);
    }

    @Test
    void holdsItsLimits() {
        assertThat(service.post("/v1/setups", "{\"name\":\"" + "x".repeat(300_000) + "\"}")
                        .statusCode())
                .isEqualTo(413);
        byte[] large = new byte[300_000];
        assertThat(service.send(service.request("/v1/setups")
                                .POST(BodyPublishers.ofInputStream(() -> new java.io.ByteArrayInputStream(large))))
                        .statusCode())
                .isIn(400, 413);
        assertThat(service.post("/v1/setups", "[".repeat(100_000)).statusCode()).isEqualTo(400);
        assertThat(service.get("/v1/setups?limit=101").statusCode()).isEqualTo(400);
    }

    @Test
    void tellsHowItIs() {
        assertThat(service.get("/actuator/health/liveness").statusCode()).isEqualTo(200);
        assertThat(service.get("/actuator/health/readiness").statusCode()).isEqualTo(200);
        assertThat(service.get("/actuator/health/storage").statusCode()).isEqualTo(200);
    }

    private static int put(String location, String ifMatch) {
        var request = service.request(location).PUT(BodyPublishers.ofString("{\"name\":\"changed\"}"));
        return service.send(ifMatch == null ? request : request.header("If-Match", ifMatch))
                .statusCode();
    }
}

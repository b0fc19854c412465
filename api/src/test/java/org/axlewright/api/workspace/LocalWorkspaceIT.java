package org.axlewright.api.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.Socket;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.axlewright.api.Running;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

/** On its own machine with its own database, the service keeps setups without a token, for itself. */
@DirtiesContext // its database ends with it
class LocalWorkspaceIT extends Running {

    @TempDir(cleanup = org.junit.jupiter.api.io.CleanupMode.NEVER) // the database works in it until the context closes
    static Path data;

    @DynamicPropertySource
    static void database(DynamicPropertyRegistry properties) {
        properties.add("spring.datasource.url", () -> "");
        properties.add("axlewright.data", data::toString);
    }

    @Test
    void keepsSetupsWithoutAToken() {
        Reply created = post("/v1/setups", "{\"name\":\"mine\"}");
        assertThat(created.status()).as(created.text()).isEqualTo(201);
        assertThat(get(created.header("Location")).status()).isEqualTo(200);
    }

    @Test
    void isNoPlaceForPagesFromElsewhere() throws IOException {
        String location = post("/v1/setups", "{\"name\":\"mine\"}").header("Location");
        Reply posted = sendAsIs(HttpRequest.newBuilder(uri("/v1/setups"))
                .header("Content-Type", "application/json")
                .header("Origin", "https://elsewhere.example")
                .POST(BodyPublishers.ofString("{\"name\":\"theirs\"}")));
        assertThat(posted.status()).isEqualTo(403);
        assertThat(posted.json().path("type").asString()).isEqualTo("urn:axlewright:problem:foreign-origin");
        Reply named = sendAsIs(HttpRequest.newBuilder(uri("/v1/comparisons"))
                .header("Content-Type", "application/json")
                .header("Origin", "https://elsewhere.example")
                .POST(BodyPublishers.ofString(
                        "{\"before\":\"" + location.substring("/v1/setups/".length()) + "\",\"after\":{}}")));
        assertThat(named.status()).isEqualTo(403);
        assertThat(statusWithHost("rebound.example", location)).isEqualTo(403);
        assertThat(statusWithHost("localhost", location)).isEqualTo(200);
        assertThat(sendAsIs(HttpRequest.newBuilder(uri(location)).header("X-Forwarded-For", "192.0.2.1"))
                        .status())
                .isEqualTo(403);
        assertThat(get("/v1/setups").json().path("items").findValuesAsString("name"))
                .doesNotContain("theirs");
    }

    @Test
    void doesNotTakeABadTokenForNone() {
        assertThat(sendAsIs(HttpRequest.newBuilder(uri("/v1/setups")).header("Authorization", "Bearer axw_1"))
                        .status())
                .isEqualTo(401);
        assertThat(sendAsIs(HttpRequest.newBuilder(uri("/v1/setups"))
                                .header(
                                        "Authorization",
                                        "Bearer " + Token.fresh().text()))
                        .status())
                .isEqualTo(401);
    }

    /** The client of the other tests sets Host by itself. */
    private int statusWithHost(String host, String path) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", uri("/").getPort())) {
            socket.getOutputStream()
                    .write(("GET " + path + " HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n")
                            .getBytes(StandardCharsets.US_ASCII));
            String status = new BufferedReader(
                            new InputStreamReader(socket.getInputStream(), StandardCharsets.US_ASCII))
                    .readLine();
            return Integer.parseInt(status.split(" ")[1]);
        }
    }
}

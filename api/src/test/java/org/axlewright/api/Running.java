package org.axlewright.api;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpHeaders;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The service on a port of its own, without a database: the address points nowhere, so a calculation that needed one would fail
 * (contract R12). What follows goes through HTTP like any caller.
 */
@SpringBootTest(
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = "spring.datasource.url=jdbc:postgresql://127.0.0.1:1/nowhere?connectTimeout=1")
public abstract class Running {

    protected static final JsonMapper JSON = JsonMapper.builder().build();
    private static final HttpClient HTTP = HttpClient.newHttpClient();

    @LocalServerPort
    int port;

    /** What opens the workspace of the tests, when they have a database. */
    @Value("${test.token:}")
    protected String token = "";

    /** Status, headers and body of an answer. */
    public record Reply(int status, String contentType, String text, HttpHeaders headers) {
        public String header(String name) {
            return headers.firstValue(name).orElse("");
        }

        /** The names of all Vary lines in lower case: some servers write one line, some one a name, in any order. */
        public List<String> vary() {
            return Pattern.compile(",")
                    .splitAsStream(String.join(",", headers.allValues("Vary")))
                    .map(name -> name.strip().toLowerCase(Locale.ROOT))
                    .toList();
        }

        public JsonNode json() {
            return JSON.readTree(text);
        }
    }

    protected Reply post(String pathAndQuery, String body) {
        return send(HttpRequest.newBuilder(uri(pathAndQuery))
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    protected Reply get(String pathAndQuery) {
        return send(HttpRequest.newBuilder(uri(pathAndQuery)).GET());
    }

    protected URI uri(String pathAndQuery) {
        return URI.create("http://127.0.0.1:" + port + pathAndQuery);
    }

    /** With the token of the tests, unless the request brings its own. */
    protected Reply send(HttpRequest.Builder request) {
        boolean own =
                request.copy().build().headers().firstValue("Authorization").isPresent();
        return sendAsIs(own || token.isEmpty() ? request : request.header("Authorization", "Bearer " + token));
    }

    protected static Reply sendAsIs(HttpRequest.Builder request) {
        try {
            HttpResponse<String> response = HTTP.send(request.build(), HttpResponse.BodyHandlers.ofString());
            return new Reply(
                    response.statusCode(),
                    response.headers().firstValue("Content-Type").orElse(""),
                    response.body(),
                    response.headers());
        } catch (IOException failure) {
            throw new IllegalStateException(failure);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(interrupted);
        }
    }
}

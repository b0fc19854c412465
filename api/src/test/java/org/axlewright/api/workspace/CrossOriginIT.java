package org.axlewright.api.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import org.axlewright.api.Running;
import org.axlewright.api.calculation.Calculations;
import org.axlewright.api.demo.DemoSetups;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;

/** What pages of other origins may ask. */
class CrossOriginIT extends Running {

    private static final String ALLOW = "Access-Control-Allow-Origin";

    @Autowired
    Calculations calculations;

    private Reply preflight(String path, String method) {
        return sendAsIs(HttpRequest.newBuilder(uri(path))
                .header("Origin", "https://shop.example")
                .header("Access-Control-Request-Method", method)
                .header("Access-Control-Request-Headers", "content-type")
                .method("OPTIONS", BodyPublishers.noBody()));
    }

    @Test
    void mayAskEveryCalculationWithoutCredentials() {
        assertThat(calculations.all()).isNotEmpty();
        calculations.all().forEach(calculation -> {
            String path = "/v1/" + calculation.name();
            Reply preflight = preflight(path, "POST");
            assertThat(preflight.status()).as(path).isEqualTo(200);
            assertThat(preflight.header(ALLOW)).isEqualTo("*");
            assertThat(preflight.header("Access-Control-Allow-Methods")).isEqualTo("POST");
            assertThat(preflight.header("Access-Control-Allow-Headers")).isEqualToIgnoringCase("content-type");
            assertThat(preflight.header("Access-Control-Allow-Credentials")).isEmpty();
        });
        Reply answer = sendAsIs(HttpRequest.newBuilder(uri("/v1/centre-of-gravity?working=false"))
                .header("Origin", "https://shop.example")
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString(DemoSetups.exampleText())));
        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.header(ALLOW)).isEqualTo("*");
        assertThat(answer.header("Access-Control-Expose-Headers")).contains("RateLimit");
    }

    @Test
    void mayReadTheContract() {
        Reply contract = sendAsIs(HttpRequest.newBuilder(uri("/v3/api-docs")).header("Origin", "https://shop.example"));
        assertThat(contract.status()).isEqualTo(200);
        assertThat(contract.header(ALLOW)).isEqualTo("*");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/v1/setups",
                "/v1/setups/01900000-0000-7000-8000-000000000000",
                "/v1/setups/01900000-0000-7000-8000-000000000000/centre-of-gravity",
                "/v1/comparisons",
                "/v1/candidates"
            })
    void seeNothingSaved(String path) {
        for (String method : new String[] {"GET", "POST", "PUT", "PATCH", "DELETE"}) {
            Reply preflight = preflight(path, method);
            assertThat(preflight.header(ALLOW)).as(method).isEmpty();
            assertThat(preflight.header("Access-Control-Allow-Methods"))
                    .as(method)
                    .isEmpty();
        }
        assertThat(sendAsIs(HttpRequest.newBuilder(uri(path)).header("Origin", "https://shop.example"))
                        .header(ALLOW))
                .isEmpty();
    }

    @Test
    void maySendNoTokenAlong() {
        Reply preflight = sendAsIs(HttpRequest.newBuilder(uri("/v1/centre-of-gravity"))
                .header("Origin", "https://shop.example")
                .header("Access-Control-Request-Method", "POST")
                .header("Access-Control-Request-Headers", "authorization")
                .method("OPTIONS", BodyPublishers.noBody()));
        assertThat(preflight.status()).isEqualTo(403);
    }
}

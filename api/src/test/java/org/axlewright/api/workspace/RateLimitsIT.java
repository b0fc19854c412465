package org.axlewright.api.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import org.axlewright.api.Running;
import org.axlewright.api.database.TestDatabase;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.test.context.TestPropertySource;

/** How often one may ask, told in the fields of draft-ietf-httpapi-ratelimit-headers-11. Behind a proxy, whose word counts here. */
@TestPropertySource(
        properties = {
            "server.forward-headers-strategy=native",
            "axlewright.requests-per-minute.address=3",
            "axlewright.requests-per-minute.token=2",
            "axlewright.requests-per-minute.loopback=1000"
        })
class RateLimitsIT extends Running {

    private static final TestDatabase.Access DATABASE = TestDatabase.fresh();

    @DynamicPropertySource
    static void database(DynamicPropertyRegistry properties) {
        TestDatabase.use(properties, DATABASE);
    }

    @BeforeAll
    static void tables() {
        TestDatabase.bringUpToDate(DATABASE);
    }

    private Reply from(String address, String path) {
        return sendAsIs(HttpRequest.newBuilder(uri(path)).header("X-Forwarded-For", address));
    }

    @Test
    void tellsWhatIsLeftAndRefusesBeyond() {
        Reply first = from("192.0.2.1", "/v1/demo-setups");
        assertThat(first.status()).isEqualTo(200);
        assertThat(first.header("RateLimit-Policy")).isEqualTo("\"address\";q=3;w=60");
        assertThat(first.header("RateLimit")).isEqualTo("\"address\";r=2;t=20");
        assertThat(from("192.0.2.1", "/v1/demo-setups").header("RateLimit")).startsWith("\"address\";r=1;t=");
        assertThat(from("192.0.2.1", "/v1/setups").status()).isEqualTo(401);
        Reply refused = from("192.0.2.1", "/v1/demo-setups");
        assertThat(refused.status()).isEqualTo(429);
        assertThat(refused.contentType()).isEqualTo("application/problem+json");
        assertThat(refused.json().path("type").asString()).isEqualTo("urn:axlewright:problem:too-many-requests");
        assertThat(Integer.parseInt(refused.header("Retry-After"))).isBetween(1, 20);
        assertThat(refused.header("RateLimit")).startsWith("\"address\";r=0;t=");
        assertThat(from("192.0.2.2", "/v1/demo-setups").status()).isEqualTo(200);
        assertThat(from("192.0.2.1", "/").status()).isEqualTo(200);
    }

    @Test
    void takesANetworkOfIpv6ForOneCaller() {
        for (int i = 1; i <= 3; i++) {
            assertThat(from("2001:db8:1:1::" + i, "/v1/demo-setups").status()).isEqualTo(200);
        }
        assertThat(from("2001:db8:1:1:ffff::1", "/v1/demo-setups").status()).isEqualTo(429);
        assertThat(from("2001:db8:1:2::1", "/v1/demo-setups").status()).isEqualTo(200);
    }

    @Test
    void countsATokenWhereverItIsUsed() {
        String token = TestDatabase.token(DATABASE, "tests", "read");
        int address = 1;
        for (int i = 1; i >= 0; i--) {
            Reply taken = with(token, "198.51.100." + address++);
            assertThat(taken.status()).isEqualTo(200);
            assertThat(taken.header("RateLimit-Policy")).isEqualTo("\"address\";q=3;w=60, \"token\";q=2;w=60");
            assertThat(taken.header("RateLimit")).contains("\"address\";r=2;").contains("\"token\";r=" + i + ";");
        }
        Reply refused = with(token, "198.51.100." + address);
        assertThat(refused.status()).isEqualTo(429);
        assertThat(refused.header("Retry-After")).isNotEmpty();
        assertThat(with(TestDatabase.token(DATABASE, "tests", "read"), "198.51.100." + address)
                        .status())
                .isEqualTo(200);
    }

    /** A client can write what it likes into the header; what the proxy adds to it counts. */
    @Test
    void believesTheProxyAndNotItsClients() {
        for (int i = 1; i <= 3; i++) {
            assertThat(from("203.0.113." + i + ", 192.0.2.77", "/v1/demo-setups")
                            .status())
                    .isEqualTo(200);
        }
        assertThat(from("203.0.113.4, 192.0.2.77", "/v1/demo-setups").status()).isEqualTo(429);
    }

    private Reply with(String token, String address) {
        return sendAsIs(HttpRequest.newBuilder(uri("/v1/setups"))
                .header("X-Forwarded-For", address)
                .header("Authorization", "Bearer " + token));
    }
}

package org.axlewright.api.workspace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import org.axlewright.api.problem.Declined;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.mock.web.MockHttpServletRequest;

/** Requests to this machine from somebody else's page. */
class LocalRequestsTest {

    private static MockHttpServletRequest to(String host) {
        MockHttpServletRequest request = new MockHttpServletRequest("POST", "/v1/setups");
        request.addHeader("Host", host);
        return request;
    }

    private static boolean taken(MockHttpServletRequest request) {
        Throwable thrown = catchThrowable(() -> LocalRequests.require(request));
        if (thrown != null) {
            assertThat(thrown).isInstanceOf(Declined.class);
        }
        return thrown == null;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "localhost",
                "localhost:8080",
                "LOCALHOST:80",
                "127.0.0.1:8080",
                "127.1.2.3",
                "[::1]:8080",
                "[::1]"
            })
    void takesTheNamesOfThisMachine(String host) {
        assertThat(taken(to(host))).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "rebound.example",
                "rebound.example:8080",
                "localhost.example",
                "127.0.0.1.example",
                "127.0.0.1:8080:1",
                "192.0.2.1",
                "[::2]",
                "localhost@rebound.example",
                ""
            })
    void refusesANameThatWasBoundAnew(String host) {
        assertThat(taken(to(host))).isFalse();
        assertThat(taken(new MockHttpServletRequest("GET", "/v1/setups"))).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "http://127.0.0.1:8080, true",
        "HTTP://127.0.0.1:8080, true",
        "http://127.0.0.1:3000, false",
        "http://localhost:8080, false",
        "https://127.0.0.1:8080, false",
        "http://elsewhere.example, false",
        "null, false",
        "'', false",
    })
    void takesItsOwnPageAndNoOther(String origin, boolean own) {
        MockHttpServletRequest request = to("127.0.0.1:8080");
        request.addHeader("Origin", origin);
        assertThat(taken(request)).isEqualTo(own);
    }

    @ParameterizedTest
    @CsvSource({"same-origin, true", "none, true", "same-site, false", "cross-site, false", "new-word, false"})
    void believesTheBrowserAboutTheSite(String site, boolean own) {
        MockHttpServletRequest request = to("127.0.0.1:8080");
        request.addHeader("Sec-Fetch-Site", site);
        assertThat(taken(request)).isEqualTo(own);
    }

    @Test
    void followsALinkFromElsewhereButPostsNoForm() {
        for (String method : new String[] {"GET", "POST"}) {
            MockHttpServletRequest request = to("127.0.0.1:8080");
            request.setMethod(method);
            request.addHeader("Sec-Fetch-Site", "cross-site");
            request.addHeader("Sec-Fetch-Mode", "navigate");
            request.addHeader("Sec-Fetch-Dest", "document");
            assertThat(taken(request)).isEqualTo(method.equals("GET"));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"Forwarded", "X-Forwarded-For", "X-Forwarded-Host", "Via"})
    void refusesWhatAProxyBrings(String header) {
        MockHttpServletRequest request = to("127.0.0.1:8080");
        request.addHeader(header, "192.0.2.1");
        assertThat(taken(request)).isFalse();
    }
}

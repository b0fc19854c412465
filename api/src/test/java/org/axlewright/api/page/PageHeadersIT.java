package org.axlewright.api.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import org.axlewright.api.Running;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The page comes with its headers from the same service; answers of the contract come without them. */
class PageHeadersIT extends Running {

    private HttpResponse<String> fetch(String path, String... headers) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(uri(path));
        if (headers.length > 0) {
            request.headers(headers);
        }
        return HttpClient.newHttpClient().send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/index.html", "/page/page.js", "/page/page.css", "/page/icon.svg"})
    void thePageMayLoadNothingFromElsewhere(String path) throws Exception {
        HttpResponse<String> response = fetch(path);
        assertThat(response.statusCode()).isEqualTo(200);
        assertThat(response.headers().firstValue("Content-Security-Policy"))
                .hasValue(
                        "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self'; img-src 'self' data:; base-uri 'none'; form-action 'self'; frame-ancestors 'self'");
        assertThat(response.headers().firstValue("X-Content-Type-Options")).hasValue("nosniff");
        assertThat(response.headers().firstValue("Referrer-Policy")).hasValue("no-referrer");
    }

    @Test
    void theDocumentComesWholeEachTime() throws Exception {
        HttpResponse<String> document = fetch("/");
        assertThat(document.body()).contains("<axlewright-entries>");
        assertThat(document.headers().firstValue("Cache-Control")).hasValue("no-store");
    }

    @Test
    void aModuleIsAskedForByItsContent() throws Exception {
        HttpResponse<String> first = fetch("/page/page.js");
        assertThat(first.headers().firstValue("Cache-Control")).hasValue("no-cache");
        String tag = first.headers().firstValue("ETag").orElseThrow();
        assertThat(fetch("/page/page.js", "If-None-Match", tag).statusCode()).isEqualTo(304);
        assertThat(fetch("/page/page.js", "If-None-Match", "\"another\"").statusCode())
                .isEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/embed/", "/embed/index.html", "/embed/gallery.js", "/embed/gallery.css"})
    void theGalleryMayLoadNothingFromElsewhere(String path) throws Exception {
        HttpResponse<String> response = fetch(path);
        assertThat(response.statusCode()).isEqualTo(200);
        assertThat(response.headers().firstValue("Content-Security-Policy"))
                .isEqualTo(fetch("/").headers().firstValue("Content-Security-Policy"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"/embed/v1/axlewright.js", "/embed/v1/element.js", "/embed/v1/contract.js", "/page/entry.js"})
    void pagesOfAnyOriginMayLoadTheElements(String path) throws Exception {
        HttpResponse<String> module = fetch(path, "Origin", "https://shop.example");
        assertThat(module.statusCode()).isEqualTo(200);
        assertThat(module.headers().firstValue("Access-Control-Allow-Origin")).hasValue("*");
        assertThat(module.headers().firstValue("Cross-Origin-Resource-Policy")).hasValue("cross-origin");
        assertThat(module.headers().firstValue("X-Content-Type-Options")).hasValue("nosniff");
        assertThat(module.headers().firstValue("Content-Type").orElseThrow()).startsWith("text/javascript");
        String tag = module.headers().firstValue("ETag").orElseThrow();
        assertThat(fetch(path, "If-None-Match", tag).statusCode()).isEqualTo(304);
    }

    @Test
    void aShopsVisitorsKeepTheElementsForAWhile() throws Exception {
        assertThat(fetch("/embed/v1/axlewright.js").headers().firstValue("Cache-Control"))
                .hasValue("public, max-age=600");
        assertThat(fetch("/embed").headers().firstValue("Location").orElseThrow())
                .endsWith("/embed/");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/v3/api-docs", "/v1/demo-setups", "/v1/nothing-of-that-name"})
    void answersOfTheContractAreLeftAlone(String path) throws Exception {
        assertThat(fetch(path).headers().firstValue("Content-Security-Policy")).isEmpty();
    }
}

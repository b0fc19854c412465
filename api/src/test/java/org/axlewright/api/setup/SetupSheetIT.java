package org.axlewright.api.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import org.axlewright.api.Running;
import org.axlewright.api.database.TestDatabase;
import org.axlewright.api.demo.DemoSetups;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

/** Build sheets of saved setups: revision, date, entity tag, and who is told that there is nothing new. */
class SetupSheetIT extends Running {

    @DynamicPropertySource
    static void database(DynamicPropertyRegistry properties) {
        TestDatabase.use(properties, TestDatabase.fresh());
    }

    private Reply print(String location, String query, String... headers) {
        HttpRequest.Builder request =
                HttpRequest.newBuilder(uri(location + "/build-sheet" + query)).GET();
        for (int i = 0; i < headers.length; i += 2) {
            request.header(headers[i], headers[i + 1]);
        }
        return send(request);
    }

    private String saved() {
        return post("/v1/setups", DemoSetups.exampleText()).header("Location");
    }

    @Test
    void everyDemoSetupIsPrintedBothWays() {
        for (String vehicle : DemoSetups.texts()) {
            String location = post("/v1/setups", vehicle).header("Location");
            Reply html = print(location, "");
            assertThat(html.status()).as(html.text()).isEqualTo(200);
            assertThat(html.contentType()).isEqualTo("text/html;charset=UTF-8");
            assertThat(html.text())
                    .contains(location.substring(location.lastIndexOf('/') + 1))
                    .contains(JSON.readTree(vehicle).path("name").asString());
            Reply pdf = print(location, "?paper=letter&units=us", "Accept", "application/pdf");
            assertThat(pdf.status()).isEqualTo(200);
            assertThat(pdf.contentType()).isEqualTo("application/pdf");
            assertThat(pdf.text()).startsWith("%PDF-");
        }
    }

    @Test
    void tellsRevisionAndItsDay() {
        String location = saved();
        HttpRequest.Builder change = HttpRequest.newBuilder(uri(location))
                .header("Content-Type", "application/json")
                .header("If-Match", "\"1\"")
                .PUT(BodyPublishers.ofString(DemoSetups.texts().get(2)));
        assertThat(send(change).status()).isEqualTo(204);
        Reply sheet = print(location, "");
        String day = java.time.ZonedDateTime.parse(
                        sheet.header("Last-Modified"), java.time.format.DateTimeFormatter.RFC_1123_DATE_TIME)
                .toLocalDate()
                .toString();
        assertThat(sheet.text())
                .contains("<span class=\"field\">Revision</span><span>2</span>")
                .contains("<span class=\"field\">Date of revision</span><span>" + day + "</span>")
                .contains("Campground shuttle, as planned");
    }

    @Test
    void answersNotModifiedWhileNothingChanged() {
        String location = saved();
        for (String accept : new String[] {"text/html", "application/pdf"}) {
            String tag = print(location, "", "Accept", accept).header("ETag");
            assertThat(tag).startsWith("\"1-");
            Reply again = print(location, "", "Accept", accept, "If-None-Match", tag);
            assertThat(again.status()).isEqualTo(304);
            assertThat(again.text()).isEmpty();
            assertThat(again.header("ETag")).isEqualTo(tag);
            assertThat(print(location, "?paper=letter", "Accept", accept, "If-None-Match", tag)
                            .status())
                    .isEqualTo(200);
            assertThat(print(location, "?units=us", "Accept", accept, "If-None-Match", tag)
                            .status())
                    .isEqualTo(200);
        }
        assertThat(print(location, "", "Accept", "application/pdf").header("ETag"))
                .isNotEqualTo(print(location, "", "Accept", "text/html").header("ETag"));
    }

    @Test
    void theSameRevisionIsTheSameBytes() {
        String location = saved();
        for (String accept : new String[] {"text/html", "application/pdf"}) {
            assertThat(print(location, "", "Accept", accept).text())
                    .isEqualTo(print(location, "", "Accept", accept).text());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"/v1/setups/nothing", "/v1/setups/01a21097-25e3-7e2b-bccd-fd61cd6f39eb"})
    void whatIsNotThereIsNotFound(String location) {
        for (String accept : new String[] {"text/html", "application/pdf", "*/*"}) {
            Reply reply = print(location, "", "Accept", accept);
            assertThat(reply.status()).isEqualTo(404);
            assertThat(reply.contentType()).isEqualTo("application/problem+json");
        }
    }

    @ParameterizedTest
    @CsvSource({"application/json,'',406", "image/png,'',406", "text/html,?paper=a3,400", "text/html,?units=cubits,400"
    })
    void refusesWhatItCannotPrint(String accept, String query, int status) {
        Reply reply = print(saved(), query, "Accept", accept);
        assertThat(reply.status()).as(reply.text()).isEqualTo(status);
        assertThat(reply.contentType()).isEqualTo("application/problem+json");
    }

    @Test
    void namesAreTextAndNothingElse() {
        String location = post("/v1/setups", "{\"name\":\"<script>alert(1)</script> & ñ\"}")
                .header("Location");
        Reply reply = print(location, "");
        assertThat(reply.status()).isEqualTo(200);
        assertThat(reply.text()).doesNotContain("<script").contains("&lt;script&gt;alert(1)&lt;/script&gt; &amp; ñ");
    }
}

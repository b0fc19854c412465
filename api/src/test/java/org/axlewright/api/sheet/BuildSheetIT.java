package org.axlewright.api.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.net.http.HttpRequest;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.axlewright.api.Running;
import org.axlewright.api.assessment.Assessment;
import org.axlewright.api.assessment.Assessor;
import org.axlewright.api.calculation.Asked;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.Calculations;
import org.axlewright.api.demo.DemoSetups;
import org.axlewright.api.section.Setup;
import org.axlewright.api.sheet.BuildSheets.Order;
import org.axlewright.domain.quantity.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.w3c.dom.Document;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Build sheets as people print them: what stands on them, that nothing is lost or runs off, and that they are the same each time. */
class BuildSheetIT extends Running {

    private static final Issue ISSUE =
            new Issue("01a21097-25e3-7e2b-bccd-fd61cd6f39eb", 3, Instant.parse("2026-11-24T22:11:12Z"));
    private static final String PATH = "/v1/build-sheets";

    @Autowired
    BuildSheets sheets;

    @Autowired
    Assessor assessor;

    @Autowired
    Calculations calculations;

    @Autowired
    JsonMapper json;

    static Stream<String> vehicles() {
        return DemoSetups.texts().stream();
    }

    private Setup setup(String text) {
        return json.readValue(text, Setup.class);
    }

    private byte[] write(String setup, Medium medium, UnitSystem units, Paper paper) {
        return sheets.write(setup(setup), ISSUE, new Order(medium, units, paper));
    }

    private String html(String setup) {
        return new String(write(setup, Medium.HTML, UnitSystem.METRIC, Paper.A4), StandardCharsets.UTF_8);
    }

    private PDDocument pdf(String setup) throws IOException {
        return Loader.loadPDF(write(setup, Medium.PDF, UnitSystem.METRIC, Paper.A4));
    }

    /** Lines and pages break anywhere: compared without white space. */
    private static String bare(String text) {
        return text.replaceAll("\\s+", "");
    }

    private static String text(PDDocument document) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setSortByPosition(false);
        return bare(stripper.getText(document));
    }

    @ParameterizedTest
    @MethodSource("vehicles")
    void everythingThatWasAssessedStandsOnThePaper(String vehicle) throws IOException {
        for (UnitSystem units : UnitSystem.values()) {
            Assessment assessment = assessor.assess(setup(vehicle), new Asked(units, true));
            String html = new String(write(vehicle, Medium.HTML, units, Paper.A4), StandardCharsets.UTF_8);
            String screen = bare(html.replaceAll("<style>[^<]*</style>", "").replaceAll("<[^>]*>", ""))
                    .replace("&gt;", ">")
                    .replace("&lt;", "<")
                    .replace("&quot;", "\"")
                    .replace("&#39;", "'")
                    .replace("&amp;", "&");
            try (PDDocument document = Loader.loadPDF(write(vehicle, Medium.PDF, units, Paper.LETTER))) {
                for (String seen : List.of(screen, withoutPageBreaks(document))) {
                    holdsWhatWasAssessed(seen, assessment);
                }
            }
        }
    }

    /** The text of the body alone: what the title blocks say would stand in the middle of a finding that goes on overleaf. */
    private static String withoutPageBreaks(PDDocument document) throws IOException {
        StringBuilder text = new StringBuilder();
        for (int page = 1; page <= document.getNumberOfPages(); page++) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setStartPage(page);
            stripper.setEndPage(page);
            text.append(bare(stripper.getText(document)));
        }
        return text.toString();
    }

    private void holdsWhatWasAssessed(String sheet, Assessment assessment) {
        assertThat(assessment.findings()).isNotEmpty();
        int last = 0;
        for (Assessment.AssessedFinding found : assessment.findings()) {
            String word = found.level().toString().toUpperCase(Locale.ROOT);
            String line = bare(word + found.message());
            assertThat(sheet).contains(line);
            assertThat(sheet).contains(bare(found.source()));
            if (found.action() != null) {
                assertThat(sheet).contains(bare(found.action()));
            }
            int at = sheet.indexOf("Findings") + 1;
            assertThat(at).isPositive();
            last = Math.max(last, sheet.indexOf(line));
        }
        assertThat(sheet.indexOf("Leadingresults")).as("findings come first").isGreaterThan(last);
        assessment.assumptions().forEach(assumed -> {
            assertThat(sheet).contains(bare(assumed.reason()));
            assertThat(sheet).contains(bare(assumed.source()));
        });
        assessment.cautions().forEach(caution -> assertThat(sheet).contains(bare(caution.message())));
        for (Assessment.NotAssessed left : assessment.notAssessed()) {
            assertThat(sheet)
                    .contains(bare(
                            calculations.named(left.calculation()).orElseThrow().question()));
            left.faults().forEach(fault -> assertThat(sheet).contains(bare(fault.message())));
            left.missing()
                    .forEach(pointer ->
                            assertThat(sheet.toLowerCase(Locale.ROOT)).contains(named(pointer)));
        }
        assertThat(sheet).contains(bare("licensed"), bare("This sheet approves and certifies nothing"));
        for (Calculation<?, ?, ?> calculation : calculations.all()) {
            Object result = assessment.results().get(calculation.name());
            if (result == null) {
                continue;
            }
            assertThat(sheet).contains(bare(calculation.question()));
            JsonNode shown = json.valueToTree(result);
            for (String lead : calculation.leads()) {
                JsonNode value = shown.at(lead);
                if (value.isString()) {
                    assertThat(sheet).contains(bare(value.asString()));
                } else if (value.has("value") && value.has("unit")) {
                    assertThat(sheet)
                            .as(calculation.name() + lead)
                            .contains(digits(value.path("value").asDouble()));
                } else if (value.isNumber() && !lead.toLowerCase(Locale.ROOT).endsWith("share")) {
                    assertThat(sheet).as(calculation.name() + lead).contains(digits(value.asDouble()));
                }
            }
        }
    }

    private static String digits(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(4, RoundingMode.HALF_EVEN));
        return rounded.signum() == 0
                ? "0"
                : rounded.stripTrailingZeros().toPlainString().replace('-', '−');
    }

    /** {@code /bare/raisedAxle/0/load} as it stands on the sheet, in small letters and without white space. */
    private static String named(String pointer) {
        String[] steps = pointer.substring(1).split("/");
        StringBuilder named = new StringBuilder();
        for (String step : steps) {
            boolean place = step.matches("\\d+");
            named.append(named.isEmpty() || place ? "" : "›");
            named.append(place ? String.valueOf(Integer.parseInt(step) + 1) : step.toLowerCase(Locale.ROOT));
        }
        return named.toString();
    }

    @ParameterizedTest
    @MethodSource("vehicles")
    void everyEntryStandsOnThePaper(String vehicle) throws IOException {
        List<String> values = new ArrayList<>();
        leaves(JSON.readTree(vehicle), values);
        assertThat(values).hasSizeGreaterThan(50);
        try (PDDocument document = pdf(vehicle)) {
            String sheet = text(document);
            values.forEach(value -> assertThat(sheet).contains(value));
        }
    }

    private static void leaves(JsonNode node, List<String> values) {
        if (node.isNumber()) {
            BigDecimal value = node.decimalValue();
            values.add(
                    value.signum() == 0
                            ? "0"
                            : value.stripTrailingZeros().toPlainString().replace('-', '−'));
        } else if (node.isString() && node.asString().length() > 8) { // units are written with their signs
            values.add(bare(node.asString()));
        }
        node.forEach(part -> leaves(part, values));
    }

    @ParameterizedTest
    @CsvSource({"A4,210,297", "LETTER,215.9,279.4"})
    void pagesHaveTheSizeAskedForAndNothingRunsOff(Paper paper, double width, double height) throws IOException {
        for (String vehicle : DemoSetups.texts()) {
            try (PDDocument document = Loader.loadPDF(write(vehicle, Medium.PDF, UnitSystem.US, paper))) {
                assertThat(document.getNumberOfPages()).isBetween(3, 30);
                for (PDPage page : document.getPages()) {
                    assertThat(page.getMediaBox().getWidth() / 72 * 25.4).isCloseTo(width, within());
                    assertThat(page.getMediaBox().getHeight() / 72 * 25.4).isCloseTo(height, within());
                }
                staysInsideTheFrame(document);
            }
        }
    }

    private static org.assertj.core.data.Offset<Double> within() {
        return org.assertj.core.data.Offset.offset(0.1);
    }

    /** Frame: 20 mm of margin for filing on the left, 10 mm above and below, and 180 mm between (ISO 5457). */
    private static void staysInsideTheFrame(PDDocument document) throws IOException {
        float mm = 72 / 25.4f;
        PDFTextStripper inside = new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition glyph) {
                String seen = "page " + getCurrentPageNo() + ": " + glyph;
                assertThat(glyph.getXDirAdj()).as(seen).isGreaterThanOrEqualTo(0);
                float x = glyph.getTextMatrix().getTranslateX();
                float y = glyph.getTextMatrix().getTranslateY();
                float end = glyph.getDir() == 0 ? x + glyph.getWidthDirAdj() : x;
                assertThat(x).as(seen).isGreaterThan(20 * mm);
                assertThat(end).as(seen).isLessThan(200.2f * mm);
                assertThat(y).as(seen).isGreaterThan(8 * mm);
                assertThat(y).as(seen).isLessThan(glyph.getPageHeight() - 10 * mm);
            }
        };
        assertThat(inside.getText(document)).isNotNull();
    }

    @ParameterizedTest
    @MethodSource("vehicles")
    void everyTypefaceIsEmbedded(String vehicle) throws IOException {
        try (PDDocument document = pdf(vehicle)) {
            List<PDFont> fonts = new ArrayList<>();
            for (PDPage page : document.getPages()) {
                collect(page.getResources(), fonts);
            }
            assertThat(fonts).isNotEmpty();
            fonts.forEach(
                    font -> assertThat(font.isEmbedded()).as(font.getName()).isTrue());
        }
    }

    private static void collect(PDResources resources, List<PDFont> fonts) throws IOException {
        for (COSName name : resources.getFontNames()) {
            fonts.add(resources.getFont(name));
        }
        for (COSName name : resources.getXObjectNames()) {
            if (resources.getXObject(name) instanceof PDFormXObject form && form.getResources() != null) {
                collect(form.getResources(), fonts);
            }
        }
    }

    @Test
    void canBeReadAloud() throws IOException {
        try (PDDocument document = pdf(DemoSetups.exampleText())) {
            assertThat(document.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en");
            assertThat(document.getDocumentCatalog().getStructureTreeRoot().getKids())
                    .isNotEmpty();
            assertThat(document.getDocumentInformation().getTitle())
                    .isEqualTo("Build sheet: Orchard runabout, as planned");
            assertThat(new String(document.getDocumentCatalog().getMetadata().toByteArray(), StandardCharsets.UTF_8))
                    .contains("pdfuaid")
                    .contains("Orchard runabout");
        }
    }

    @Test
    void titleBlockNamesRevisionDateScaleAndSheet() throws IOException {
        try (PDDocument document = pdf(DemoSetups.exampleText())) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setEndPage(1);
            String first = bare(stripper.getText(document));
            assertThat(first)
                    .contains("Revision3")
                    .contains("2026-11-24")
                    .contains("1:25")
                    .contains("mm,kg(metric)")
                    .contains(ISSUE.number())
                    .contains("Sheet1of" + document.getNumberOfPages());
            stripper.setStartPage(2);
            stripper.setEndPage(2);
            assertThat(bare(stripper.getText(document))).contains("Sheet2of" + document.getNumberOfPages());
        }
    }

    /** Lengths of the drawing are those of the vehicle over the scale: wheelbase 1670 mm at 1:25. */
    @Test
    void drawsToScale() {
        String html = html(DemoSetups.exampleText());
        assertThat(html).contains(">1670</text>", ">870</text>", ">980</text>", "159.1 kg");
        List<Double> axles = new ArrayList<>();
        var circle = java.util.regex.Pattern.compile("d=\"M([\\d.]+) ([\\d.]+)C[^\"]*Z\" stroke-width=\"0.5\"")
                .matcher(html);
        while (circle.find()) {
            axles.add(Double.parseDouble(circle.group(1)));
        }
        assertThat(axles).hasSize(2);
        assertThat(axles.get(1) - axles.get(0)).isCloseTo(1670 / 25.0, org.assertj.core.data.Offset.offset(0.02));
    }

    @ParameterizedTest
    @MethodSource("vehicles")
    void theSameSetupGivesTheSameBytes(String vehicle) {
        for (Medium medium : Medium.values()) {
            byte[] once = write(vehicle, medium, UnitSystem.METRIC, Paper.A4);
            assertThat(write(vehicle, medium, UnitSystem.METRIC, Paper.A4)).isEqualTo(once);
            assertThat(write(vehicle, medium, UnitSystem.METRIC, Paper.LETTER)).isNotEqualTo(once);
            Issue next = new Issue(ISSUE.number(), ISSUE.revision() + 1, ISSUE.at());
            assertThat(sheets.write(setup(vehicle), next, new Order(medium, UnitSystem.METRIC, Paper.A4)))
                    .isNotEqualTo(once);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script> & \"quotes\" 'too' <!-- --> ]]> <img src=x>",
                "Camión de huerto ñ á é í ó ú ü ¿? ¡! 35 mm² Ω µ θ ≤ − ° ⌀",
                "果樹園 車 🛻 Ω",
                "果樹園果樹園果樹園果樹園果樹園果樹園果樹園果樹園果樹園果樹園果樹園果樹園果樹園果樹園果樹園果樹園果樹園果樹園果樹園果樹園",
                "شاحنة صغيرة עגלה",
                "turned \u202eround\u202c and\u200b zero",
                "${7*7} [[${sheet}]] th:text #{x} @{y}",
                "url(http://127.0.0.1:1/x) file:///etc/passwd",
                "WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW",
            })
    void namesAreTextAndNothingElse(String name) throws Exception {
        ObjectNode vehicle = (ObjectNode) JSON.readTree(DemoSetups.exampleText());
        vehicle.put("name", name);
        vehicle.put("notes", name + "\n\u0000\ud800" + name.repeat(20));
        ((ObjectNode) vehicle.at("/items/1")).put("name", name).put("reference", name);
        ((ObjectNode) vehicle.at("/circuits/0")).put("name", name);
        String html = html(vehicle.toString());
        Document page = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(
                        html.replace("<!DOCTYPE html>", "").getBytes(StandardCharsets.UTF_8)));
        for (String element : List.of("script", "img", "link", "iframe", "a", "base")) {
            assertThat(page.getElementsByTagName(element).getLength())
                    .as(element)
                    .isZero();
        }
        String heading = page.getElementsByTagName("h1").item(0).getTextContent();
        assertThat(heading.replaceAll("\\[U\\+[0-9A-F]+]", "")).isEqualTo(name.replaceAll("[\u202e\u202c\u200b]", ""));
        try (PDDocument document = pdf(vehicle.toString())) {
            staysInsideTheFrame(document);
            String sheet = text(document);
            StringBuilder expected = new StringBuilder();
            name.codePoints()
                    .filter(character -> !Character.isWhitespace(character))
                    .forEach(character -> {
                        boolean lacking = character > 0x2fff
                                || character >= 0x590 && character < 0x700
                                || Character.getType(character) == Character.FORMAT;
                        expected.append(
                                lacking ? "[U+%04X]".formatted(character) : new String(Character.toChars(character)));
                    });
            assertThat(sheet).contains(expected);
        }
    }

    @Test
    void aLongListGoesOnOverleafUnderItsHeadings() throws IOException {
        String vehicle = manyItems(500);
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        long start = clock.getCurrentThreadCpuTime();
        byte[] printed = write(vehicle, Medium.PDF, UnitSystem.METRIC, Paper.A4);
        double seconds = (clock.getCurrentThreadCpuTime() - start) / 1e9;
        assertThat(seconds).as("500 items, s of one processor; two when warm").isLessThan(15);
        try (PDDocument document = Loader.loadPDF(printed)) {
            staysInsideTheFrame(document);
            int pagesWithItems = 0;
            List<Boolean> seen = new ArrayList<>();
            for (int i = 0; i < 500; i++) {
                seen.add(false);
            }
            for (int number = 1; number <= document.getNumberOfPages(); number++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(number);
                stripper.setEndPage(number);
                String page = stripper.getText(document);
                boolean here = false;
                for (int i = 0; i < 500; i++) {
                    if (page.contains("part number " + i + " ")) {
                        seen.set(i, true);
                        here |= page.contains("position x");
                        assertThat(page).as("headings of page " + number).contains("position x");
                    }
                }
                pagesWithItems += here ? 1 : 0;
            }
            assertThat(seen).doesNotContain(false);
            assertThat(pagesWithItems).isGreaterThan(3);
        }
    }

    private static String manyItems(int count) {
        ObjectNode vehicle = (ObjectNode) JSON.readTree(DemoSetups.exampleText());
        ArrayNode items = vehicle.putArray("items");
        for (int i = 0; i < count; i++) {
            ObjectNode item = items.addObject();
            item.put("name", "part number " + i + " ");
            item.set("mass", length(0.1 + i % 7, "kg"));
            ObjectNode position = item.putObject("position");
            position.set("x", length(i * 3.5, "mm"));
            position.set("y", length(i % 40 - 20, "mm"));
            position.set("z", length(400 + i % 90, "mm"));
        }
        return vehicle.toString();
    }

    private static ObjectNode length(double value, String unit) {
        return JSON.createObjectNode().put("value", value).put("unit", unit);
    }

    @Test
    void aHalfMeasuredVehicleIsPrintedWithWhatItLacks() throws IOException {
        for (String setup : List.of("{}", "{\"name\":\"bare\"}", "{\"chassis\":{\"seats\":2}}")) {
            try (PDDocument document = pdf(setup)) {
                assertThat(text(document))
                        .contains("Nodrawingwithoutawheelbase")
                        .contains("Missing:")
                        .contains(bare("Chassis › wheelbase"));
            }
        }
        try (PDDocument document = pdf("{\"chassis\":{\"wheelbase\":{\"value\":10,\"unit\":\"m\"}}}")) {
            staysInsideTheFrame(document);
            assertThat(text(document)).contains("10000");
        }
    }

    private Reply ask(String query, String accept, String body) {
        HttpRequest.Builder request = HttpRequest.newBuilder(uri(PATH + query))
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body));
        if (accept != null) {
            request.header("Accept", accept);
        }
        return send(request);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "none",
            value = {
                "none|text/html;charset=UTF-8",
                "*/*|text/html;charset=UTF-8",
                "text/html|text/html;charset=UTF-8",
                "application/pdf|application/pdf",
                "text/html;q=0.5, application/pdf|application/pdf",
                "text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8|text/html;charset=UTF-8",
                "application/pdf;q=0.1, */*;q=0|application/pdf",
                "application/*|application/pdf",
            })
    void writesWhatIsAcceptedBest(String accept, String type) {
        Reply reply = ask("", accept, DemoSetups.exampleText());
        assertThat(reply.status()).as(reply.text()).isEqualTo(200);
        assertThat(reply.contentType()).isEqualTo(type);
        assertThat(reply.vary()).contains("accept");
        assertThat(reply.header("Content-Security-Policy")).contains("default-src 'none'");
        assertThat(reply.text()).startsWith(type.startsWith("text") ? "<!DOCTYPE html>" : "%PDF-");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "|image/png|406",
                "|application/json|406",
                "|text/html;q=0, application/pdf;q=0|406",
                "|not a media type|400",
                "?paper=a5|text/html|400",
                "?units=stone|text/html|400",
            })
    void refusesWhatItCannotPrint(String query, String accept, int status) {
        Reply reply = ask(query == null ? "" : query, accept, DemoSetups.exampleText());
        assertThat(reply.status()).as(reply.text()).isEqualTo(status);
        assertThat(reply.contentType()).isEqualTo("application/problem+json");
        assertThat(reply.json().path("type").asString()).startsWith("urn:axlewright:problem:");
    }

    @Test
    void refusesWhatIsNoSetup() {
        assertThat(ask("", "application/pdf", "{\"stray\":1}").status()).isEqualTo(400);
        Reply invalid = ask("", "application/pdf", "{\"chassis\":{\"wheelbase\":{\"value\":-1,\"unit\":\"m\"}}}");
        assertThat(invalid.status()).isEqualTo(422);
        assertThat(invalid.contentType()).isEqualTo("application/problem+json");
    }

    @Test
    void fetchesNothing() {
        String html = html(DemoSetups.exampleText());
        assertThat(html)
                .doesNotContain("src=", "href=", "@import", "url(")
                .doesNotContainPattern("https?://(?!www\\.w3\\.org/(1999/xhtml|2000/svg)|www\\.thymeleaf)");
    }
}

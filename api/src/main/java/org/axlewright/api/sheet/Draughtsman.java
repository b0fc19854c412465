package org.axlewright.api.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.axlewright.api.assessment.Assessment;
import org.axlewright.api.assessment.Assessment.AssessedFinding;
import org.axlewright.api.assessment.Assessment.Assumed;
import org.axlewright.api.assessment.Assessment.LeftOut;
import org.axlewright.api.assessment.Assessment.NotAssessed;
import org.axlewright.api.assessment.Assessment.Part;
import org.axlewright.api.assessment.Assessor;
import org.axlewright.api.calculation.Asked;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.Calculations;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.section.Setup;
import org.axlewright.api.sheet.BuildSheet.EntryTable;
import org.axlewright.api.sheet.BuildSheet.FoundLine;
import org.axlewright.api.sheet.BuildSheet.Group;
import org.axlewright.api.sheet.BuildSheet.Row;
import org.axlewright.api.sheet.BuildSheet.TitleBlock;
import org.axlewright.api.sheet.BuildSheet.Unanswered;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.trace.Level;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Puts a setup and its assessment into the words of a build sheet. Pure: the same setup gives the same sheet. */
@Component
final class Draughtsman {

    /** A name that the title block has room for; the sheet's heading has it whole. */
    private static final int SHORT_NAME = 60;

    /** Longest text that stands in half a line. */
    private static final int HALF_LINE = 30;

    /** Columns that fit beside each other; entries with more are written as text. */
    private static final int MOST_COLUMNS = 9;

    private final Assessor assessor;
    private final Calculations calculations;
    private final JsonMapper json;

    Draughtsman(Assessor assessor, Calculations calculations, JsonMapper json) {
        this.assessor = assessor;
        this.calculations = calculations;
        this.json = json;
    }

    /**
     * The sheet of a setup.
     *
     * @param letters writes a text in the characters there are, which can make it longer
     * @throws org.axlewright.api.problem.Refused when the form of the setup is not in order
     */
    BuildSheet sheet(Setup setup, @Nullable Issue issue, UnitSystem units, Paper paper, UnaryOperator<String> letters) {
        Assessment assessment = assessor.assess(setup, new Asked(units, true));
        Map<String, JsonNode> results = new LinkedHashMap<>();
        assessment.results().forEach((name, result) -> results.put(name, json.valueToTree(result)));
        JsonNode sent = json.valueToTree(setup);
        JsonNode none = json.createObjectNode();
        VehicleDrawing drawing = VehicleDrawing.of(
                setup,
                results.getOrDefault("centre-of-gravity", none),
                results.getOrDefault("lift-geometry", none),
                units);
        return new BuildSheet(
                title(setup, issue, units, paper, drawing, letters),
                drawing == null ? List.of() : drawing.views(),
                drawingNotes(drawing),
                setup.notes() == null ? "" : setup.notes(),
                assessment.findings().stream().map(this::finding).toList(),
                leads(results),
                entries(sent),
                lists(sent),
                assessment.notAssessed().stream().map(this::notAssessed).toList(),
                leftOut(assessment.notAnswered()),
                assessment.assumptions().stream().map(this::assumption).toList(),
                assessment.cautions().stream().map(caution -> caution.message()).toList(),
                sources(assessment));
    }

    private TitleBlock title(
            Setup setup,
            @Nullable Issue issue,
            UnitSystem units,
            Paper paper,
            @Nullable VehicleDrawing drawing,
            UnaryOperator<String> letters) {
        String name = setup.name() == null ? "Unnamed setup" : setup.name();
        return new TitleBlock(
                name,
                shortened(letters.apply(name)),
                issue == null ? "not saved" : issue.number(),
                issue == null ? "not saved" : String.valueOf(issue.revision()),
                issue == null ? "not saved" : issue.day(),
                calculations.engine().version(),
                units == UnitSystem.US ? "in, lb (us)" : "mm, kg (metric)",
                drawing == null ? "no drawing" : "1:" + drawing.scale(),
                paper.label());
    }

    private static String shortened(String name) {
        int letters = name.codePointCount(0, name.length());
        return letters <= SHORT_NAME ? name : name.substring(0, name.offsetByCodePoints(0, SHORT_NAME)) + "…";
    }

    private static List<String> drawingNotes(@Nullable VehicleDrawing drawing) {
        List<String> notes = new ArrayList<>();
        if (drawing == null) {
            notes.add("No drawing without a wheelbase.");
            return notes;
        }
        notes.add("Quartered disc: centre of gravity as driven, the small one with nobody aboard. Squares: items;"
                + " circles: people; dashed: taken off, or of a size that is not known. Numbers: see items and"
                + " occupants.");
        if (drawing.raised()) {
            notes.add("Places are drawn raised by lift and tyres; the tables give them as sent.");
        }
        if (!drawing.allNumbered()) {
            notes.add("The heaviest parts are numbered here; the tables list all.");
        }
        if (drawing.notDrawn() > 0) {
            notes.add(drawing.notDrawn() + " without a place are not drawn.");
        }
        return notes;
    }

    private FoundLine finding(AssessedFinding found) {
        return new FoundLine(
                found.level().toString().toUpperCase(java.util.Locale.ROOT),
                shape(found.level()),
                found.message(),
                place(found),
                values(found),
                found.action(),
                found.source(),
                names(found.calculations()));
    }

    /** Filled or hollow, pointed or round: told apart in black and white. */
    private static String shape(Level level) {
        return switch (level) {
            case DANGER -> "◆";
            case WARNING -> "▲";
            case CAUTION -> "△";
            case NOTICE -> "○";
        };
    }

    private static @Nullable String place(AssessedFinding found) {
        if (found.pointer() == null) {
            return found.state();
        }
        Part part = found.part();
        StringBuilder place = new StringBuilder(Wording.place(found.pointer()));
        if (part != null && part.name() != null) {
            place.append(": ").append(part.name());
        }
        if (part != null && part.reference() != null) {
            place.append(" (").append(part.reference()).append(')');
        }
        if (found.state() != null) {
            place.append(", ").append(found.state());
        }
        return place.toString();
    }

    private @Nullable String values(AssessedFinding found) {
        String actual = found.actual() == null ? null : Wording.shown(json.valueToTree(found.actual()), "");
        String limit = found.limit() == null ? null : Wording.shown(json.valueToTree(found.limit()), "");
        if (actual == null) {
            return limit == null ? null : "limit " + limit;
        }
        return limit == null ? actual : actual + ", limit " + limit;
    }

    private static String names(List<String> calculations) {
        return calculations.stream().map(Wording::words).collect(Collectors.joining(", "));
    }

    /** Every leading result that is there, in the order a person asks for them. */
    private List<Group> leads(Map<String, JsonNode> results) {
        List<Group> groups = new ArrayList<>();
        for (Calculation<?, ?, ?> calculation : calculations.all()) {
            JsonNode result = results.get(calculation.name());
            if (result != null) {
                groups.add(new Group(
                        Wording.capital(Wording.words(calculation.name())) + ". " + calculation.question(),
                        lines(rows(calculation.leads(), result), HALF_LINE)));
            }
        }
        return groups;
    }

    /** Those of the first entry of a list are shown for every entry, entry by entry. */
    private static List<Row> rows(List<String> leads, JsonNode result) {
        List<Row> rows = new ArrayList<>();
        Set<String> lists = new HashSet<>();
        for (String lead : leads) {
            int at = lead.indexOf("/0/");
            if (at < 0) {
                add(rows, Wording.result(lead), result.at(lead), lead);
                continue;
            }
            String list = lead.substring(0, at);
            if (!lists.add(list)) {
                continue;
            }
            int number = 0;
            for (JsonNode entry : result.at(list)) {
                number++;
                String name = entry.path("name").asString(Wording.result(list) + " " + number);
                for (String field : leads) {
                    if (field.startsWith(list + "/0/")) {
                        String inside = field.substring(at + 2);
                        add(rows, name + ": " + Wording.result(inside), entry.at(inside), inside);
                    }
                }
            }
        }
        return rows;
    }

    private static void add(List<Row> rows, String what, JsonNode value, String pointer) {
        if (value.isMissingNode() || value.isNull()) {
            return;
        }
        if (value.isArray() && !value.isEmpty() && value.get(0).isObject() && !Wording.isQuantity(value.get(0))) {
            int number = 0;
            for (JsonNode entry : value) {
                number++;
                rows.add(new Row(entry.path("name").asString(what + " " + number), summary(entry), ""));
            }
            return;
        }
        rows.add(new Row(what, Wording.shown(value, pointer), ""));
    }

    /** What an entry of a list says itself, without the lists inside it. */
    private static String summary(JsonNode entry) {
        return entry.properties().stream()
                .filter(part -> !part.getKey().equals("name"))
                .filter(part -> !part.getValue().isArray()
                        || (!part.getValue().isEmpty()
                                && !part.getValue().get(0).isObject()))
                .map(part -> Wording.words(part.getKey()) + " " + Wording.shown(part.getValue(), part.getKey()))
                .collect(Collectors.joining(", "));
    }

    /** Two rows beside each other where both values are short. */
    private static List<List<Row>> lines(List<Row> rows, int half) {
        List<List<Row>> lines = new ArrayList<>();
        List<Row> open = new ArrayList<>();
        for (Row row : rows) {
            boolean fits = row.value().length() <= half && row.what().length() <= half + 15;
            if (fits) {
                open.add(row);
            }
            if (!open.isEmpty() && (!fits || open.size() == 2)) {
                lines.add(List.copyOf(open));
                open.clear();
            }
            if (!fits) {
                lines.add(List.of(row));
            }
        }
        if (!open.isEmpty()) {
            lines.add(List.copyOf(open));
        }
        return lines;
    }

    /** Every value of the setup that stands in no list, section by section, with the digits and units that were sent. */
    private static List<Group> entries(JsonNode setup) {
        List<Group> groups = new ArrayList<>();
        List<Row> single = new ArrayList<>();
        setup.properties().forEach(section -> {
            String name = section.getKey();
            JsonNode value = section.getValue();
            if (name.equals("name") || name.equals("notes") || value.isNull() || value.isArray()) {
                return;
            }
            if (Wording.isComposite(value)) {
                List<Row> rows = new ArrayList<>();
                leaves(value, "").forEach((label, text) -> rows.add(new Row(label, text, "")));
                groups.add(new Group(Wording.capital(Wording.words(name)), lines(rows, HALF_LINE)));
            } else {
                single.add(new Row(Wording.words(name), Wording.sent(value, name), ""));
            }
        });
        if (!single.isEmpty()) {
            groups.add(new Group("Other entries", lines(single, HALF_LINE)));
        }
        return groups;
    }

    /** The lists of the setup. Occupants are numbered on from the items, as on the drawing. */
    private static List<EntryTable> lists(JsonNode setup) {
        List<EntryTable> tables = new ArrayList<>();
        setup.properties().forEach(section -> {
            if (section.getValue().isArray() && !section.getValue().isEmpty()) {
                int from = section.getKey().equals("occupants")
                        ? setup.path("items").size()
                        : 0;
                tables.add(list(Wording.capital(Wording.words(section.getKey())), section.getValue(), from));
            }
        });
        return tables;
    }

    private static EntryTable list(String heading, JsonNode list, int numberedFrom) {
        List<Map<String, String>> entries = new ArrayList<>();
        Set<String> columns = new LinkedHashSet<>();
        for (JsonNode entry : list) {
            Map<String, String> leaves = leaves(entry, "");
            entries.add(leaves);
            columns.addAll(leaves.keySet());
        }
        boolean table = columns.size() <= MOST_COLUMNS;
        List<String> head = new ArrayList<>(List.of("No."));
        if (table) {
            head.addAll(columns);
        } else {
            head.add("Entries");
        }
        List<List<String>> rows = new ArrayList<>();
        int number = numberedFrom;
        for (Map<String, String> entry : entries) {
            List<String> row = new ArrayList<>(List.of(String.valueOf(++number)));
            if (table) {
                columns.forEach(column -> row.add(entry.getOrDefault(column, "")));
            } else {
                row.add(entry.entrySet().stream()
                        .map(leaf -> leaf.getKey() + " " + leaf.getValue())
                        .collect(Collectors.joining("; ")));
            }
            rows.add(row);
        }
        return new EntryTable(heading, head, rows);
    }

    /** The values under a node by their names in words, in the order of the contract. */
    private static Map<String, String> leaves(JsonNode node, String label) {
        Map<String, String> leaves = new LinkedHashMap<>();
        if (node.isNull()) {
            return leaves;
        }
        if (!Wording.isComposite(node)) {
            String name = label.isEmpty() ? "value" : label;
            leaves.put(name, Wording.sent(node, ""));
        } else if (node.isArray()) {
            int number = 0;
            for (JsonNode part : node) {
                number++;
                leaves.putAll(leaves(part, (label + " " + number).strip()));
            }
        } else {
            node.properties()
                    .forEach(part -> leaves.putAll(
                            leaves(part.getValue(), (label + " " + Wording.words(part.getKey())).strip())));
        }
        return leaves;
    }

    private Unanswered notAssessed(NotAssessed left) {
        String question = calculations
                .named(left.calculation())
                .map(Calculation::question)
                .orElse("");
        return new Unanswered(
                Wording.capital(Wording.words(left.calculation())) + ". " + question,
                left.missing().stream().map(Wording::place).toList(),
                left.faults().stream().map(Fault::message).toList());
    }

    private static List<Unanswered> leftOut(List<LeftOut> left) {
        return left.stream()
                .map(one -> new Unanswered(
                        Wording.words(one.calculation()) + ": " + Wording.result(one.result()),
                        one.missing().stream().map(Wording::place).toList(),
                        List.of()))
                .toList();
    }

    private Row assumption(Assumed assumed) {
        JsonNode value = json.valueToTree(assumed.value());
        return new Row(
                Wording.place(assumed.pointer()),
                Wording.shown(value, assumed.pointer()),
                assumed.reason() + ". Source: " + assumed.source());
    }

    /** Every source that a finding, an assumption or a step of the working stands on, and for which questions. */
    private static List<List<Row>> sources(Assessment assessment) {
        Map<String, Set<String>> cited = new TreeMap<>();
        assessment.findings().forEach(found -> cite(cited, found.source(), found.calculations()));
        assessment.assumptions().forEach(assumed -> cite(cited, assumed.source(), assumed.calculations()));
        if (assessment.working() != null) {
            assessment
                    .working()
                    .forEach((calculation, steps) ->
                            steps.forEach(step -> cite(cited, step.source(), List.of(calculation))));
        }
        List<Row> rows = cited.entrySet().stream()
                .map(source -> new Row(source.getKey(), names(List.copyOf(source.getValue())), ""))
                .toList();
        return lines(rows, Integer.MAX_VALUE / 2);
    }

    private static void cite(Map<String, Set<String>> cited, String source, List<String> calculations) {
        cited.computeIfAbsent(source, first -> new LinkedHashSet<>()).addAll(calculations);
    }
}

package org.axlewright.api.setup;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.axlewright.api.calculation.Answer;
import org.axlewright.api.calculation.Asked;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.Calculations;
import org.axlewright.api.demo.DemoSetups;
import org.axlewright.api.problem.Declined;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.problem.Refused;
import org.axlewright.api.section.Setup;
import org.axlewright.api.workspace.CurrentWorkspace;
import org.axlewright.domain.quantity.UnitSystem;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Says on the console where the service is and what it answers: the demo setup is saved, unless it already is, and asked every
 * calculation of the registry.
 */
@Component
@ConditionalOnProperty("axlewright.console-demo")
class ConsoleDemo {

    private final WebServerApplicationContext context;
    private final Setups setups;
    private final SetupDocument.Reader reader;
    private final Calculations calculations;
    private final JsonMapper json;

    ConsoleDemo(
            WebServerApplicationContext context,
            Setups setups,
            SetupDocument.Reader reader,
            Calculations calculations,
            JsonMapper json) {
        this.context = context;
        this.setups = setups;
        this.reader = reader;
        this.calculations = calculations;
        this.json = json;
    }

    @EventListener(ApplicationReadyEvent.class)
    void show() {
        // The console's own stream takes the locale's character set, which often has no square and no degree sign.
        show(new PrintStream(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8));
    }

    private void show(PrintStream out) {
        var server = context.getWebServer();
        String address = "http://127.0.0.1:" + (server == null ? 0 : server.getPort());
        out.println("Axlewright answers on " + address);
        SetupDocument demo = reader.read(DemoSetups.exampleText().getBytes(StandardCharsets.UTF_8));
        String saved;
        Setup setup;
        try {
            UUID id = CurrentWorkspace.in(
                    CurrentWorkspace.LOCAL,
                    () -> setups.named(demo.name())
                            .orElseGet(() -> setups.create(demo).id()));
            setup = CurrentWorkspace.in(
                    CurrentWorkspace.LOCAL,
                    () -> reader.parse(setups.find(id).orElseThrow().document()));
            saved = "Saved as " + address + "/v1/setups/" + id;
        } catch (Declined away) {
            setup = reader.parse(demo.text());
            saved = "Not saved: the database does not answer";
        }
        out.println();
        out.println(demo.name());
        for (Calculation<?, ?, ?> calculation : calculations.all()) {
            out.println();
            out.println(calculation.name() + ": " + calculation.question());
            out.print(answer(calculation, setup));
        }
        out.println();
        out.println("Page " + address + "/");
        out.println(saved);
    }

    private String answer(Calculation<?, ?, ?> calculation, Setup setup) {
        try {
            Answer<?> answer = calculations.ask(calculation, setup, new Asked(UnitSystem.US, false));
            JsonNode result = json.valueToTree(answer.result());
            PlainTable table = new PlainTable();
            addLeads(calculation.leads(), result, table);
            answer.findings().stream()
                    .findFirst()
                    .ifPresent(worst -> table.add(
                            worst.level().toString(),
                            worst.message() + (worst.action() == null ? "" : ". " + worst.action())));
            return table.toString();
        } catch (Refused incomplete) {
            return "  needs "
                    + incomplete.faults().stream().map(Fault::pointer).collect(Collectors.joining(", "))
                    + System.lineSeparator();
        }
    }

    /** In order; those of the first entry of a list are shown for every entry, entry by entry. */
    private static void addLeads(List<String> leads, JsonNode result, PlainTable table) {
        Set<String> shown = new HashSet<>();
        for (String lead : leads) {
            int place = lead.indexOf("/0/");
            if (place < 0) {
                table.add(lead, result.at(lead));
            } else if (shown.add(lead.substring(0, place))) {
                String list = lead.substring(0, place);
                int number = 1;
                for (JsonNode entry : result.at(list)) {
                    table.add(entry.path("name").asString(PlainTable.words(list) + " " + number++), "");
                    leads.stream()
                            .filter(other -> other.startsWith(list + "/0/"))
                            .map(other -> other.substring(place + 2))
                            .forEach(field -> table.add(field, entry.at(field)));
                }
            }
        }
    }
}

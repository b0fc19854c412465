package org.axlewright.api.setup;

import java.util.ArrayList;
import java.util.List;
import org.axlewright.api.problem.Declined;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.problem.Refused;
import org.axlewright.api.section.Form;
import org.axlewright.api.section.Setup;
import org.springframework.stereotype.Component;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Reads bodies that hold setups beside other things: each setup whole, or the id of a saved one, alone or with a revision. Only an id asks the database, so whole
 * setups are answered while it is away.
 */
@Component
final class Sides {

    private final JsonMapper json;
    private final JsonMapper trees;
    private final Form form;
    private final Setups setups;
    private final SetupDocument.Reader reader;

    Sides(JsonMapper json, Form form, Setups setups, SetupDocument.Reader reader) {
        this.json = json;
        this.form = form;
        this.setups = setups;
        this.reader = reader;
        StreamReadConstraints one = json.tokenStreamFactory().streamReadConstraints();
        this.trees = JsonMapper.builder(JsonFactory.builder()
                        .streamReadConstraints(one.rebuild()
                                .maxDocumentLength(2 * one.getMaxDocumentLength())
                                .maxTokenCount(2 * one.getMaxTokenCount())
                                .build())
                        .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                        .build())
                .build();
    }

    /**
     * The body as a tree.
     *
     * @throws Declined 400 when it is no JSON object
     */
    JsonNode tree(byte[] body) {
        JsonNode tree = trees.readTree(body);
        if (tree == null || !tree.isObject()) {
            throw Declined.unreadable("The body must be a JSON object");
        }
        return tree;
    }

    /** Refuses names that the body does not have. */
    static void onlyKnown(JsonNode tree, String pointer, List<String> known) {
        for (String name : tree.propertyNames()) {
            if (!known.contains(name)) {
                throw unreadable(
                        pointer + "/" + name,
                        "unknown-field",
                        "\"" + name + "\" is not known; known here: " + String.join(", ", known));
            }
        }
    }

    static Declined unreadable(String pointer, String code, String message) {
        return Declined.unreadable(new Fault(pointer, code, message, null, null));
    }

    /**
     * The setup at a name of the body.
     *
     * @param faults takes what is not valid about it, with pointers into the body
     */
    Setup setup(JsonNode tree, String name, List<Fault> faults) {
        JsonNode sent = tree.get(name);
        if (sent == null) {
            throw new Refused(List.of(Fault.missing("/" + name)));
        }
        if (sent.isString()) {
            return reader.parse(setups.find(Identifiers.of(sent.asString()))
                    .orElseThrow(() -> Identifiers.noSuchSetup())
                    .document());
        }
        if (!sent.isObject()) {
            throw unreadable(
                    "/" + name, "wrong-type", "Must be a setup, the id of a saved one, or its id and revision");
        }
        if (sent.has("id")) { // no section has this name
            return reader.parse(revision(sent, "/" + name).document());
        }
        Setup setup;
        try {
            setup = json.treeToValue(sent, Setup.class);
        } catch (JacksonException failure) {
            throw failure.prependPath(tree, name);
        }
        List<Fault> found = new ArrayList<>(form.faults(setup));
        found.forEach(fault -> faults.add(
                new Fault("/" + name + fault.pointer(), fault.code(), fault.message(), fault.actual(), fault.limit())));
        return setup;
    }

    private Setups.Saved revision(JsonNode sent, String pointer) {
        onlyKnown(sent, pointer, List.of("id", "revision"));
        if (!sent.path("id").isString()) {
            throw unreadable(pointer + "/id", "wrong-type", "Must be a text");
        }
        if (!sent.has("revision")) {
            throw new Refused(List.of(Fault.missing(pointer + "/revision")));
        }
        if (!sent.path("revision").isIntegralNumber() || !sent.path("revision").canConvertToLong()) {
            throw unreadable(pointer + "/revision", "wrong-type", "Must be a whole number, without quotes");
        }
        return setups.revision(
                        Identifiers.of(sent.path("id").asString()),
                        sent.path("revision").asLong())
                .orElseThrow(Identifiers::noSuchRevision);
    }
}

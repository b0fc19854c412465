package org.axlewright.api.assessment;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** JSON merge patch, RFC 7396: what is sent replaces, null removes, objects are merged. */
public final class MergePatch {

    private MergePatch() {}

    /** The document with the patch; neither is changed. */
    public static JsonNode apply(JsonNode document, JsonNode patch) {
        if (!patch.isObject()) {
            return patch;
        }
        ObjectNode merged = document.isObject()
                ? document.asObject().deepCopy()
                : patch.asObject().objectNode();
        patch.properties().forEach(entry -> {
            if (entry.getValue().isNull()) {
                merged.remove(entry.getKey());
            } else {
                JsonNode old = merged.get(entry.getKey());
                merged.set(entry.getKey(), apply(old == null ? merged.nullNode() : old, entry.getValue()));
            }
        });
        return merged;
    }
}

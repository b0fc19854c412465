package org.axlewright.api.sheet;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What stands on a build sheet, in words; the template gives it its place. */
public record BuildSheet(
        TitleBlock title,
        List<Drawing> drawings,
        List<String> drawingNotes,
        String notes,
        List<FoundLine> findings,
        List<Group> leads,
        List<Group> entries,
        List<EntryTable> lists,
        List<Unanswered> notAssessed,
        List<Unanswered> leftOut,
        List<Row> assumptions,
        List<String> cautions,
        List<List<Row>> sources) {

    /** The fields of the title block, ISO 7200. */
    public record TitleBlock(
            String name,
            String shortName,
            String number,
            String revision,
            String date,
            String engine,
            String units,
            String scale,
            String paper) {}

    /** A finding; its level is told by word and shape, for paper without colour. */
    public record FoundLine(
            String level,
            String shape,
            String message,
            @Nullable String place,
            @Nullable String values,
            @Nullable String action,
            String source,
            String calculations) {}

    /** Rows under a heading, two beside each other where both are short. */
    public record Group(String heading, List<List<Row>> lines) {}

    /** What, how much, and whatever explains it. */
    public record Row(String what, String value, String note) {}

    /** The entries of a list, a row for each. */
    public record EntryTable(String heading, List<String> columns, List<List<String>> rows) {}

    /** What could not be answered, and what it lacks. */
    public record Unanswered(String what, List<String> missing, List<String> faults) {}
}

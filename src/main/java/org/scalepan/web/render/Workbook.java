package org.scalepan.web.render;

import static org.scalepan.web.render.SheetColumn.sentence;
import static org.scalepan.web.render.SheetColumn.text;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.scalepan.exchange.text.Json;
import org.scalepan.sheet.ExcelFile;
import org.scalepan.sheet.Sheet;
import org.scalepan.web.http.Answer;

/**
 * An answer as a workbook: the sheets of its question, then what every answer has: warnings, cautions, references and the question. It is
 * derived from the JSON answer, so that both agree.
 */
public final class Workbook {
    private static final Columns WARNINGS =
            Columns.of(text("Code", "code"), sentence("Warning", "text"), text("About", "about"));
    private static final Columns CAUTIONS = Columns.of(
            text("Id", "id"),
            text("Topic", "topic"),
            sentence("Caution", "text"),
            text("Sources", "sources"),
            text("How it was seen", "check"));
    private static final Columns REFERENCES = Columns.of(
            text("Source", "id"),
            text("Short", "label"),
            sentence("Reference", "text"),
            text("DOI", "doi"),
            text("Not known of it", "not_known"),
            text("How it was seen", "check"));
    private static final Columns QUESTION = Columns.of(text("Name", "name"), sentence("Value", "value"));

    private final ObjectNode answer;
    private final List<Sheet> sheets = new ArrayList<>();

    public Workbook(ObjectNode answer) {
        this.answer = answer;
    }

    /** Adds a sheet. */
    public Workbook with(Sheet sheet) {
        sheets.add(sheet);
        return this;
    }

    /** Adds a sheet if there is one. */
    public Workbook with(Optional<Sheet> sheet) {
        sheet.ifPresent(sheets::add);
        return this;
    }

    /** Adds a sheet if it has rows. */
    public Workbook withRows(String name, Columns columns, List<JsonNode> rows) {
        return rows.isEmpty() ? this : with(columns.sheet(name, rows));
    }

    /** The file, with the sheets that every answer has at its end. */
    public Answer answer(String fileName) {
        with(WARNINGS.sheet("Warnings", rows(answer.path("warnings"))));
        with(CAUTIONS.sheet("Cautions", rows(answer.path("cautions"))));
        with(REFERENCES.sheet("References", rows(answer.path("references"))));
        with(QUESTION.sheet("Question", question()));
        return new Answer(ExcelFile.MEDIA_TYPE, ExcelFile.of(sheets)).named(fileName);
    }

    private List<JsonNode> question() {
        List<JsonNode> rows = new ArrayList<>();
        answer.path("question").properties().forEach(field -> rows.add(named(field.getKey(), field.getValue())));
        answer.path("library")
                .properties()
                .forEach(field -> rows.add(named("library_" + field.getKey(), field.getValue())));
        if (answer.has("permalink")) {
            rows.add(named("permalink", answer.path("permalink")));
        }
        return rows;
    }

    /** A row of a sheet of names and values. */
    public static ObjectNode named(String name, JsonNode value) {
        ObjectNode row = Json.object().put("name", name);
        row.set("value", value);
        return row;
    }

    /** A sheet of what an answer says in sentences; what it does not say is left out. */
    public Workbook withWords(String name, List<JsonNode> rows) {
        return with(QUESTION.sheet(
                name,
                rows.stream().filter(row -> !row.path("value").isMissingNode()).toList()));
    }

    /** The entries of an array within each object of another, with fields of that object. */
    public static List<JsonNode> within(JsonNode objects, String array, String... kept) {
        List<JsonNode> rows = new ArrayList<>();
        objects.forEach(object -> object.path(array).forEach(entry -> {
            ObjectNode row = entry.deepCopy();
            for (String field : kept) {
                row.set(field, object.path(field));
            }
            rows.add(row);
        }));
        return rows;
    }

    /** The entries of an array as rows. */
    public static List<JsonNode> rows(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false).toList();
    }
}

package org.scalepan.web.programme;

import static org.scalepan.web.render.SheetColumn.asPublished;
import static org.scalepan.web.render.SheetColumn.draws;
import static org.scalepan.web.render.SheetColumn.figure;
import static org.scalepan.web.render.SheetColumn.sentence;
import static org.scalepan.web.render.SheetColumn.text;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import org.scalepan.web.http.Answer;
import org.scalepan.web.render.Columns;
import org.scalepan.web.render.Workbook;

/** A programme as a workbook: what it says in words, what is avoided or added a year, what that hangs on, and both sides. */
final class SubstitutionWorkbook {
    private static final Columns AVOIDED = Columns.of(
                    text("Indicator", "indicator"),
                    text("Up to", "boundary"),
                    text("Warming set", "gwp"),
                    text("Status", "status"),
                    text("Unit", "unit"),
                    figure("Avoided (median)", "/avoided/median"),
                    figure("Avoided (low)", "/avoided/low"),
                    figure("Avoided (high)", "/avoided/high"),
                    text("Bound", "/avoided/bound"),
                    draws("Share of draws that avoid", "/share_of_draws_avoids/value"),
                    figure("Caused by the product (median)", "/caused_by_product/median"),
                    figure("Caused by the product (low)", "/caused_by_product/low"),
                    figure("Caused by the product (high)", "/caused_by_product/high"),
                    figure("Caused by what is displaced (median)", "/caused_by_displaced/median"),
                    figure("Caused by what is displaced (low)", "/caused_by_displaced/low"),
                    figure("Caused by what is displaced (high)", "/caused_by_displaced/high"),
                    sentence("Avoided, in words", "/avoided/text"),
                    sentence("Why there is no figure", "reason"),
                    sentence("What is known instead", "known_instead"))
            .named(1);
    private static final Columns SENSITIVITY = Columns.of(
                    text("Indicator", "indicator"),
                    text("Driver", "driver"),
                    asPublished("Setting", "setting"),
                    text("As asked", "as_asked"),
                    figure("Avoided (median)", "/avoided/median"),
                    figure("Avoided (low)", "/avoided/low"),
                    figure("Avoided (high)", "/avoided/high"),
                    text("Unit", "/avoided/unit"))
            .named(2);
    private static final Columns SIDES = Columns.of(
                    text("Indicator", "indicator"),
                    text("Role", "role"),
                    text("Name", "name"),
                    figure("Median", "/footprint/median"),
                    figure("Low", "/footprint/low"),
                    figure("High", "/footprint/high"),
                    text("Unit", "/footprint/unit"),
                    text("Bound", "/footprint/bound"),
                    sentence("In words", "sentence"),
                    text("Library rows", "rows"))
            .named(3);

    private SubstitutionWorkbook() {}

    static Answer of(ObjectNode answer) {
        JsonNode indicators = answer.path("indicators");
        return new Workbook(answer)
                .withWords("Programme", words(answer))
                .with(AVOIDED.sheet("Avoided", Workbook.rows(indicators)))
                .withRows("Sensitivity", SENSITIVITY, Workbook.within(indicators, "sensitivity", "indicator"))
                .withRows("Sides", SIDES, Workbook.within(indicators, "sides", "indicator"))
                .answer("scalepan-substitution.xlsx");
    }

    private static List<JsonNode> words(ObjectNode answer) {
        List<JsonNode> rows = new ArrayList<>();
        rows.add(Workbook.named("Paragraph", answer.path("paragraph")));
        answer.path("statements").forEach(said -> rows.add(Workbook.named("To be said with it", said)));
        JsonNode programme = answer.path("programme");
        rows.add(Workbook.named("Kilograms a year", programme.path("kg_per_year")));
        rows.add(Workbook.named("Counted as", programme.path("unit")));
        rows.add(Workbook.named("Supplied", programme.at("/supplied/text")));
        rows.add(Workbook.named("Displaced", programme.at("/displaced/text")));
        programme
                .path("baseline")
                .forEach(part -> rows.add(
                        Workbook.named("Displaced: " + part.path("name").asText(), part.at("/displaced/text"))));
        answer.path("money").properties().forEach(field -> {
            JsonNode value = field.getValue();
            rows.add(Workbook.named("money_" + field.getKey(), value.isObject() ? value.path("text") : value));
        });
        return rows;
    }
}

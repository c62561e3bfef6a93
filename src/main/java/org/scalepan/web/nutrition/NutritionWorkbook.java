package org.scalepan.web.nutrition;

import static org.scalepan.web.render.SheetColumn.asPublished;
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

/** Foods side by side as a workbook: contents, amino acids, protein quality, what people absorbed, and what nobody has measured. */
final class NutritionWorkbook {
    private static final Columns CONTENTS = Columns.of(
                    text("Food", "name"),
                    text("Quantity", "id"),
                    text("Basis", "basis"),
                    figure("Value", "value"),
                    figure("Lowest", "low"),
                    figure("Highest", "high"),
                    text("Unit", "unit"),
                    text("Status", "status"),
                    asPublished("Studies", "studies"),
                    text("Lowest grade", "lowest_grade"),
                    text("Product", "product"),
                    text("Form", "form"),
                    text("Sources", "sources"),
                    sentence("Library rows", "rows"),
                    sentence("Notes", "notes"),
                    sentence("Why there is no figure", "reason"))
            .named(2);
    private static final Columns ACIDS = Columns.of(
                    text("Food", "name"),
                    text("Amino acid", "acid"),
                    figure("Content", "content", "unit"),
                    asPublished("Requirement", "requirement"),
                    figure("Content over requirement", "ratio"),
                    text("Library rows", "rows"))
            .named(2);
    private static final Columns QUALITY = Columns.of(
                    text("Food", "name"),
                    text("Measure", "id"),
                    asPublished("Value", "value"),
                    asPublished("Lowest", "low"),
                    asPublished("Highest", "high"),
                    text("Cut at 1", "truncated"),
                    text("Use", "use"),
                    text("Method", "method"),
                    text("Pattern", "pattern"),
                    text("State of the food", "state"),
                    text("Source", "source"),
                    text("How it was seen", "check"),
                    text("Library row", "row"))
            .named(2);
    private static final Columns ABSORBED = Columns.of(
                    text("Food", "food"),
                    text("Nutrient", "nutrient"),
                    text("Quantity", "quantity"),
                    asPublished("Value", "value"),
                    asPublished("Low", "low"),
                    asPublished("High", "high"),
                    text("Unit", "unit"),
                    sentence("Meal", "meal"),
                    sentence("People", "people"),
                    text("Source", "source"),
                    text("Library row", "row"))
            .named(2);
    private static final Columns UNMEASURED =
            Columns.of(text("Food", "name"), text("Quantity", "id"), sentence("Why there is no figure", "reason"));

    private NutritionWorkbook() {}

    static Answer of(ObjectNode answer) {
        JsonNode items = answer.path("items");
        List<JsonNode> contents = new ArrayList<>(Workbook.within(items, "figures", "name", "product", "form"));
        contents.forEach(row -> ((ObjectNode) row).set("basis", answer.at("/question/basis")));
        List<JsonNode> acids = new ArrayList<>();
        items.forEach(item -> {
            if (item.has("price")) {
                ObjectNode price = item.path("price").deepCopy();
                List.of("name", "product", "form").forEach(field -> price.set(field, item.path(field)));
                contents.add(price);
            }
            item.at("/amino_acid_score/acids").forEach(acid -> {
                ObjectNode row = acid.deepCopy();
                row.set("name", item.path("name"));
                acids.add(row);
            });
        });
        return new Workbook(answer)
                .with(CONTENTS.sheet("Contents", contents))
                .withRows("Amino acids", ACIDS, acids)
                .withRows("Protein quality", QUALITY, Workbook.within(items, "protein_quality", "name"))
                .withRows("Absorbed", ABSORBED, Workbook.within(items, "absorption", "name"))
                .withRows("Not measured", UNMEASURED, Workbook.within(items, "not_measured", "name"))
                .answer("scalepan-nutrition.xlsx");
    }
}

package org.scalepan.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scalepan.ask.nutrition.Content;
import org.scalepan.ask.nutrition.MeasuredQuality;
import org.scalepan.ask.nutrition.NutritionFacts;
import org.scalepan.ask.nutrition.NutritionTable;
import org.scalepan.cite.PlainText;
import org.scalepan.quantity.Print;

/** Foods side by side as Markdown, to be pasted: figures in rows, foods in columns. */
final class NutritionMarkdown {
    private static final String MISSING = "missing";

    private final NutritionTable table;
    private final Optional<String> market;
    private final StringBuilder out = new StringBuilder();

    NutritionMarkdown(NutritionTable table, Optional<String> market) {
        this.table = table;
        this.market = market;
    }

    String text(String permalink) {
        line("per " + table.question().basis().words(), names());
        line("---", table.foods().stream().map(food -> "---").toList());
        List<NutritionFacts.Figure> heads = table.foods().get(0).figures();
        for (int i = 0; i < heads.size(); i++) {
            int at = i;
            line(
                    heads.get(i).id() + ", " + heads.get(i).unit(),
                    table.foods().stream()
                            .map(food -> text(food.figures().get(at).content()))
                            .toList());
        }
        line(
                "amino-acid score, " + table.question().pattern().name(),
                table.foods().stream()
                        .map(food -> food.score().map(NutritionView::text).orElse(MISSING))
                        .toList());
        quality(MeasuredQuality.PDCAAS, "PDCAAS, as measured");
        quality(MeasuredQuality.DIAAS, "DIAAS, as measured");
        if (table.foods().stream().anyMatch(food -> food.price().isPresent())) {
            line(
                    "price, " + table.question().currency().orElse("") + " per kg protein",
                    table.foods().stream()
                            .map(food -> food.price()
                                    .map(price -> text(price.content()))
                                    .orElse(""))
                            .toList());
        }
        list("References", table.references().stream().map(PlainText::of).toList());
        list(
                "Warnings",
                table.warnings().stream()
                        .map(warning -> warning.text()
                                + (warning.about().isEmpty() ? "" : " (" + String.join(", ", warning.about()) + ")"))
                        .toList());
        List<String> cautions = new ArrayList<>();
        Envelope.cautions(table.library(), table.products(), market)
                .forEach(caution -> cautions.add(caution.path("text").asText()));
        list("Cautions", cautions);
        return out.append('\n').append(permalink).append('\n').toString();
    }

    private List<String> names() {
        return table.foods().stream().map(food -> food.food().words()).toList();
    }

    private void quality(String kind, String head) {
        line(
                head,
                table.foods().stream()
                        .map(food -> food.quality().stream()
                                .filter(measured -> measured.row().quantity().equals(kind))
                                .findFirst()
                                .map(NutritionMarkdown::text)
                                .orElse(MISSING))
                        .toList());
    }

    private static String text(MeasuredQuality measured) {
        var printed = measured.row().printed();
        if (printed.value().isPresent()) {
            return Print.content(measured.told(printed.value().getAsDouble()));
        }
        return Print.content(measured.told(printed.low().orElseThrow())) + " to "
                + Print.content(measured.told(printed.high().orElseThrow()));
    }

    private static String text(Content content) {
        return content instanceof Content.Found found ? NutritionView.text(found) : MISSING;
    }

    private void line(String head, List<String> cells) {
        out.append("| ").append(ComparisonView.markdownText(head)).append(" | ");
        out.append(String.join(
                " | ", cells.stream().map(ComparisonView::markdownText).toList()));
        out.append(" |\n");
    }

    private void list(String head, List<String> entries) {
        out.append('\n').append(head).append("\n\n");
        entries.forEach(entry ->
                out.append("- ").append(ComparisonView.markdownText(entry)).append('\n'));
    }
}

package org.scalepan.web.nutrition;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.scalepan.ask.nutrition.Content;
import org.scalepan.ask.nutrition.MeasuredQuality;
import org.scalepan.ask.nutrition.NutritionFacts;
import org.scalepan.ask.nutrition.NutritionTable;
import org.scalepan.factors.Caution;
import org.scalepan.quantity.Print;
import org.scalepan.web.render.Block;
import org.scalepan.web.render.Document;
import org.scalepan.words.Language;

/** Renders foods side by side as a document: figures in rows, foods in columns. */
final class NutritionDocument {
    private static final String MISSING = "missing";

    private final NutritionTable table;
    private final Optional<String> market;

    NutritionDocument(NutritionTable table, Optional<String> market) {
        this.table = table;
        this.market = market;
    }

    Document document(String permalink) {
        return new Document.Builder()
                .add(new Block.TextTable(
                        row(
                                "per " + table.question().basis().words(),
                                food -> food.food().words()),
                        rows()))
                .paragraph("Absorption of iron and zinc, measured in people")
                .bullets(absorption())
                .paragraph("References")
                .references(table.references())
                .paragraph("Warnings")
                .bullets(table.warnings().stream()
                        .map(warning -> warning.text()
                                + (warning.about().isEmpty() ? "" : " (" + String.join(", ", warning.about()) + ")"))
                        .toList())
                .paragraph("Cautions")
                .bullets(table.library().cautionsAbout(table.products(), market).stream()
                        .map(Caution::text)
                        .toList())
                .link(permalink)
                .untitled();
    }

    private List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        List<NutritionFacts.NutrientFigure> heads = table.foods().get(0).figures();
        for (int i = 0; i < heads.size(); i++) {
            int at = i;
            rows.add(row(
                    heads.get(i).id() + ", " + heads.get(i).unit(),
                    food -> text(food.figures().get(at).content())));
        }
        rows.add(row(
                "amino-acid score, " + table.question().pattern().name(),
                food -> food.score()
                        .map(found -> NutritionView.text(found, Language.ENGLISH))
                        .orElse(MISSING)));
        rows.add(quality(MeasuredQuality.PDCAAS, "PDCAAS, as measured"));
        rows.add(quality(MeasuredQuality.DIAAS, "DIAAS, as measured"));
        if (table.foods().stream().anyMatch(food -> food.price().isPresent())) {
            rows.add(row(
                    "price, " + table.question().currency().orElse("") + " per kg protein",
                    food -> food.price().map(price -> text(price.content())).orElse("")));
        }
        return rows;
    }

    private List<String> absorption() {
        List<String> trials = table.foods().stream()
                .flatMap(food -> food.absorption().stream())
                .map(NutritionView::text)
                .distinct()
                .toList();
        return trials.isEmpty() ? List.of("no trial with people is held for these foods") : trials;
    }

    private List<String> row(String head, Function<NutritionFacts, String> cell) {
        return Stream.concat(Stream.of(head), table.foods().stream().map(cell)).toList();
    }

    private List<String> quality(String kind, String head) {
        return row(
                head,
                food -> food.quality().stream()
                        .filter(measured -> measured.row().quantity().equals(kind))
                        .findFirst()
                        .map(NutritionDocument::text)
                        .orElse(MISSING));
    }

    private static String text(MeasuredQuality measured) {
        var printed = measured.row().printed();
        if (printed.value().isPresent()) {
            return Print.content(measured.reported(printed.value().getAsDouble()));
        }
        return Print.content(measured.reported(printed.low().orElseThrow())) + " to "
                + Print.content(measured.reported(printed.high().orElseThrow()));
    }

    private static String text(Content content) {
        return content instanceof Content.HeldContent found ? NutritionView.text(found, Language.ENGLISH) : MISSING;
    }
}

package org.scalepan.web.nutrition;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scalepan.ask.nutrition.AminoAcidScore;
import org.scalepan.ask.nutrition.Content;
import org.scalepan.ask.nutrition.MeasuredQuality;
import org.scalepan.ask.nutrition.NutritionFacts;
import org.scalepan.ask.nutrition.NutritionTable;
import org.scalepan.exchange.text.Csv;
import org.scalepan.web.http.Answer;
import org.scalepan.words.Language;

/** Foods side by side as CSV: a row for each figure, so that each keeps its source beside it. */
final class NutritionCsv {
    static final List<String> COLUMNS = List.of(
            "product",
            "form",
            "name",
            "basis",
            "figure",
            "unit",
            "value",
            "low",
            "high",
            "status",
            "studies",
            "lowest_grade",
            "notes",
            "rows",
            "sources",
            "text");

    private static final String NOT_ON_A_BASIS = "protein";

    private final NutritionTable table;
    private final Csv csv;

    private NutritionCsv(NutritionTable table, Csv.CsvStyle style) {
        this.table = table;
        this.csv = new Csv(style, COLUMNS);
    }

    static Answer of(NutritionTable table, Csv.CsvStyle style) {
        NutritionCsv lines = new NutritionCsv(table, style);
        table.foods().forEach(lines::food);
        return Answer.of(Answer.CSV, lines.csv.text());
    }

    private void food(NutritionFacts facts) {
        facts.figures().forEach(figure -> figure(facts, table.question().basis().id(), figure));
        facts.score().ifPresent(score -> score(facts, score));
        facts.quality().forEach(measured -> quality(facts, measured));
        facts.notes().forEach(note -> missing(facts, NOT_ON_A_BASIS, note.id(), "fraction", note.reason()));
        facts.price().ifPresent(price -> figure(facts, "kg-protein", price));
    }

    private Csv.CsvLine begin(NutritionFacts facts, String basis, String figure, String unit) {
        return csv.line()
                .text(facts.food().product().id())
                .text(facts.food().form())
                .text(facts.food().words())
                .text(basis)
                .text(figure)
                .text(unit);
    }

    private void figure(NutritionFacts facts, String basis, NutritionFacts.NutrientFigure figure) {
        if (figure.content() instanceof Content.MissingContent missing) {
            missing(facts, basis, figure.id(), figure.unit(), missing.reason());
        } else if (figure.content() instanceof Content.HeldContent found) {
            Csv.CsvLine line = begin(facts, basis, figure.id(), figure.unit()).number(found.value());
            number(line, found.range().low());
            number(line, found.range().high());
            line.text("ok")
                    .number(found.studies())
                    .text(found.lowest().id())
                    .text(String.join(" ", NutritionView.caveats(found)))
                    .text(String.join(" ", found.rows()))
                    .text(String.join(" ", found.sources()))
                    .text(NutritionView.text(found, Language.ENGLISH))
                    .end();
        }
    }

    private void missing(NutritionFacts facts, String basis, String figure, String unit, String reason) {
        begin(facts, basis, figure, unit)
                .empty(3)
                .text("missing")
                .empty(5)
                .text(reason)
                .end();
    }

    private void score(NutritionFacts facts, AminoAcidScore score) {
        begin(facts, NOT_ON_A_BASIS, "amino-acid-score", "fraction")
                .number(score.value())
                .empty(2)
                .text(score.isComplete() ? "ok" : "upper-bound")
                .empty(2)
                .text("limiting " + score.limiting().acid())
                .text(String.join(
                        " ",
                        score.shares().stream()
                                .flatMap(share -> share.rows().stream())
                                .distinct()
                                .toList()))
                .text("")
                .text(NutritionView.text(score, Language.ENGLISH))
                .end();
    }

    private void quality(NutritionFacts facts, MeasuredQuality measured) {
        Csv.CsvLine line = begin(facts, NOT_ON_A_BASIS, measured.row().quantity(), "fraction");
        number(line, printed(measured, measured.row().printed().value()));
        number(line, printed(measured, measured.row().printed().low()));
        number(line, printed(measured, measured.row().printed().high()));
        line.text(
                        measured.row().use().id().equals("default")
                                ? "ok"
                                : measured.row().use().id())
                .number(1)
                .text(measured.row().cited().check().id())
                .text(measured.method()
                        .map(method -> method.method() + " " + method.pattern().orElse("pattern-not-stated"))
                        .orElse("not-stated"))
                .text(measured.row().id())
                .text(measured.row().cited().source())
                .text(Optional.of(measured.isTruncated())
                        .filter(cut -> cut)
                        .map(cut -> "truncated to 1")
                        .orElse(""))
                .end();
    }

    private static OptionalDouble printed(MeasuredQuality measured, OptionalDouble printed) {
        return printed.isPresent() ? OptionalDouble.of(measured.reported(printed.getAsDouble())) : printed;
    }

    private static void number(Csv.CsvLine line, OptionalDouble number) {
        number.ifPresentOrElse(line::number, () -> line.empty(1));
    }
}

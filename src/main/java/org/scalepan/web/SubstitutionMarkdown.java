package org.scalepan.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.ask.Programme;
import org.scalepan.ask.Substitution;
import org.scalepan.ask.SubstitutionSentences;
import org.scalepan.ask.Swing;
import org.scalepan.ask.YearlyChange;
import org.scalepan.cite.PlainText;
import org.scalepan.factors.Caution;
import org.scalepan.factors.Library;
import org.scalepan.uncertainty.Summary;

/** Renders what a programme changes a year as a page to paste from: a paragraph, tables, and what must be said beside them. */
final class SubstitutionMarkdown {
    private final Library library;
    private final Substitution substitution;
    private final SubstitutionSentences sentences;

    SubstitutionMarkdown(Library library, Substitution substitution) {
        this.library = library;
        this.substitution = substitution;
        this.sentences = new SubstitutionSentences(substitution);
    }

    String text() {
        StringBuilder out = new StringBuilder(ComparisonView.markdownText(sentences.paragraph())).append("\n\n");
        results(out);
        each(out);
        sensitivity(out);
        list(out, "To be said beside it", sentences.statements());
        list(
                out,
                "Cautions",
                library.cautions().stream()
                        .filter(caution -> substitution.products().stream().anyMatch(caution::concerns))
                        .map(Caution::text)
                        .toList());
        list(
                out,
                "Warnings",
                substitution.warnings(library).stream()
                        .map(warning -> warning.text())
                        .distinct()
                        .toList());
        list(
                out,
                "References",
                substitution.references(library).stream().map(PlainText::of).toList());
        out.append("Library ")
                .append(library.version().version())
                .append(", ")
                .append(library.version().digest())
                .append('\n');
        return out.toString();
    }

    private void results(StringBuilder out) {
        row(out, List.of("a year", "no longer caused", "caused by the product", "avoided (below 0: more)", "to quote"));
        row(out, List.of("---", "---", "---", "---", "---"));
        for (YearlyChange change : substitution.changes()) {
            String head = change.ruler().indicator().name() + ", "
                    + change.unit().words() + ", " + change.ruler().boundary().id();
            row(
                    out,
                    change.figures()
                            .map(figures -> List.of(
                                    head,
                                    interval(figures.displaced()),
                                    interval(figures.own()),
                                    SubstitutionSentences.avoidedInterval(figures.avoided()),
                                    SubstitutionSentences.conservative(
                                            figures.avoided(), change.unit().words())))
                            .orElseGet(() -> List.of(head, "no evidence", "", "", "")));
        }
        out.append('\n');
    }

    private void each(StringBuilder out) {
        Programme programme = substitution.question().programme();
        List<String> heads = new ArrayList<>(List.of("avoided (below 0: more)"));
        programme.households().ifPresent(count -> heads.add("per household and year"));
        programme.beneficiaries().ifPresent(count -> heads.add("per beneficiary and year"));
        programme.meals().ifPresent(count -> heads.add("per meal"));
        programme.years().ifPresent(years -> heads.add("over " + Numbers.plain(years) + " years"));
        if (heads.size() == 1) {
            return;
        }
        row(out, heads);
        row(out, heads.stream().map(head -> "---").toList());
        for (YearlyChange change : substitution.changes()) {
            change.figures().ifPresent(figures -> {
                Summary avoided = figures.avoided();
                String unit = " " + change.ruler().indicator().unit();
                List<String> cells =
                        new ArrayList<>(List.of(change.ruler().indicator().name()));
                Stream.of(programme.households(), programme.beneficiaries(), programme.meals())
                        .forEach(count -> count.ifPresent(number -> change.avoidedForEach(number)
                                .ifPresent(each -> cells.add(SubstitutionSentences.avoidedInterval(each) + unit))));
                programme
                        .years()
                        .ifPresent(years -> cells.add(SubstitutionSentences.avoidedInterval(avoided.times(years)) + " "
                                + change.unit().words()));
                row(out, cells);
            });
        }
        out.append('\n');
    }

    /** One column for each indicator; a setting that has no figure in one of them has an empty cell there. */
    private void sensitivity(StringBuilder out) {
        List<YearlyChange> changes = substitution.changes().stream()
                .filter(change -> change.figures().isPresent())
                .toList();
        if (changes.isEmpty()) {
            return;
        }
        Map<String, List<Optional<Summary>>> table = new LinkedHashMap<>();
        for (int i = 0; i < changes.size(); i++) {
            for (Swing swing : changes.get(i).figures().orElseThrow().swings()) {
                String head = swing.driver().words() + " " + swing.setting() + (swing.asAsked() ? " (as asked)" : "");
                table.computeIfAbsent(
                                head,
                                name -> new ArrayList<>(changes.stream()
                                        .map(change -> Optional.<Summary>empty())
                                        .toList()))
                        .set(i, Optional.of(swing.avoided()));
            }
        }
        List<String> heads = new ArrayList<>(List.of("if"));
        changes.forEach(change -> heads.add(change.unit().words() + " a year avoided (below 0: more)"));
        row(out, heads);
        row(out, heads.stream().map(head -> "---").toList());
        table.forEach((head, cells) -> {
            List<String> written = new ArrayList<>(List.of(head));
            cells.forEach(cell ->
                    written.add(cell.map(SubstitutionSentences::avoidedInterval).orElse("")));
            row(out, written);
        });
        out.append('\n');
    }

    private static String interval(Summary summary) {
        return SubstitutionSentences.interval(summary);
    }

    private static void row(StringBuilder out, List<String> cells) {
        out.append(cells.stream().map(ComparisonView::markdownText).collect(Collectors.joining(" | ", "| ", " |\n")));
    }

    private static void list(StringBuilder out, String title, List<String> texts) {
        if (!texts.isEmpty()) {
            out.append(title).append("\n\n");
            texts.forEach(text ->
                    out.append("- ").append(ComparisonView.markdownText(text)).append('\n'));
            out.append('\n');
        }
    }
}

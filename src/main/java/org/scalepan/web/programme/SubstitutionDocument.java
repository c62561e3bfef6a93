package org.scalepan.web.programme;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.ask.Warning;
import org.scalepan.ask.programme.Programme;
import org.scalepan.ask.programme.Substitution;
import org.scalepan.ask.programme.SubstitutionSentences;
import org.scalepan.ask.programme.Swing;
import org.scalepan.ask.programme.YearlyChange;
import org.scalepan.cite.Reference;
import org.scalepan.factors.Caution;
import org.scalepan.factors.Library;
import org.scalepan.quantity.SevenDigits;
import org.scalepan.uncertainty.Summary;
import org.scalepan.web.render.Block;
import org.scalepan.web.render.Document;

/** Renders the yearly effect of a programme as a document: a paragraph, tables and caveats. */
final class SubstitutionDocument {
    private final Library library;
    private final Substitution substitution;
    private final SubstitutionSentences sentences;

    SubstitutionDocument(Library library, Substitution substitution) {
        this.library = library;
        this.substitution = substitution;
        this.sentences = new SubstitutionSentences(substitution);
    }

    Document document() {
        Document.Builder document =
                new Document.Builder().paragraph(sentences.paragraph()).add(results());
        each().ifPresent(document::add);
        sensitivity().ifPresent(document::add);
        document.listed("To be said beside it", sentences.statements())
                .listed(
                        "Cautions",
                        library.cautionsAbout(substitution.products(), Optional.empty()).stream()
                                .map(Caution::text)
                                .toList())
                .listed(
                        "Warnings",
                        substitution.warnings(library).stream()
                                .map(Warning::text)
                                .distinct()
                                .toList());
        List<Reference> references = substitution.references(library);
        if (!references.isEmpty()) {
            document.paragraph("References").references(references);
        }
        return document.paragraph("Library " + library.version().version() + ", "
                        + library.version().digest())
                .untitled();
    }

    private Block results() {
        List<List<String>> rows = new ArrayList<>();
        for (YearlyChange change : substitution.changes()) {
            String head = change.basis().indicator().name() + ", "
                    + change.unit().words() + ", " + change.basis().boundary().id();
            rows.add(change.figures()
                    .map(figures -> List.of(
                            head,
                            figures.displacedBound().words() + SubstitutionSentences.interval(figures.displaced()),
                            figures.ownBound().words() + SubstitutionSentences.interval(figures.own()),
                            SubstitutionSentences.avoidedInterval(figures.avoided(), figures.bound()),
                            SubstitutionSentences.conservative(
                                            figures.avoided(), change.unit().words(), figures.bound())
                                    .english()))
                    .orElseGet(() -> List.of(head, "no evidence", "", "", "")));
        }
        return new Block.TextTable(
                List.of("a year", "no longer caused", "caused by the product", "avoided (below 0: more)", "to quote"),
                rows);
    }

    /** The effect per household, beneficiary and meal, and over all years, as far as their numbers are known. */
    private Optional<Block> each() {
        Programme programme = substitution.question().programme();
        List<String> heads = new ArrayList<>(List.of("avoided (below 0: more)"));
        programme.households().ifPresent(count -> heads.add("per household and year"));
        programme.beneficiaries().ifPresent(count -> heads.add("per beneficiary and year"));
        programme.meals().ifPresent(count -> heads.add("per meal"));
        programme.years().ifPresent(years -> heads.add("over " + SevenDigits.plain(years) + " years"));
        if (heads.size() == 1) {
            return Optional.empty();
        }
        List<List<String>> rows = new ArrayList<>();
        for (YearlyChange change : substitution.changes()) {
            change.figures().ifPresent(figures -> {
                Summary avoided = figures.avoided();
                String unit = " " + change.basis().indicator().unit();
                List<String> cells =
                        new ArrayList<>(List.of(change.basis().indicator().name()));
                Stream.of(programme.households(), programme.beneficiaries(), programme.meals())
                        .forEach(count -> count.ifPresent(number -> change.avoidedForEach(number)
                                .ifPresent(each -> cells.add(
                                        SubstitutionSentences.avoidedInterval(each, figures.bound()) + unit))));
                programme
                        .years()
                        .ifPresent(years ->
                                cells.add(SubstitutionSentences.avoidedInterval(avoided.times(years), figures.bound())
                                        + " " + change.unit().words()));
                rows.add(cells);
            });
        }
        return Optional.of(new Block.TextTable(heads, rows));
    }

    /** One column for each indicator; a setting without a figure has an empty cell. */
    private Optional<Block> sensitivity() {
        List<YearlyChange> changes = substitution.changes().stream()
                .filter(change -> change.figures().isPresent())
                .toList();
        if (changes.isEmpty()) {
            return Optional.empty();
        }
        Map<String, List<Optional<Swing>>> table = new LinkedHashMap<>();
        for (int i = 0; i < changes.size(); i++) {
            for (Swing swing : changes.get(i).figures().orElseThrow().swings()) {
                String head = swing.driver().words() + " " + swing.setting() + (swing.asAsked() ? " (as asked)" : "");
                table.computeIfAbsent(
                                head,
                                name -> new ArrayList<>(changes.stream()
                                        .map(change -> Optional.<Swing>empty())
                                        .toList()))
                        .set(i, Optional.of(swing));
            }
        }
        List<String> heads = new ArrayList<>(List.of("if"));
        changes.forEach(change -> heads.add(change.unit().words() + " a year avoided (below 0: more)"));
        List<List<String>> rows = new ArrayList<>();
        table.forEach((head, cells) -> {
            List<String> written = new ArrayList<>(List.of(head));
            cells.forEach(cell ->
                    written.add(cell.map(swing -> SubstitutionSentences.avoidedInterval(swing.avoided(), swing.bound()))
                            .orElse("")));
            rows.add(written);
        });
        return Optional.of(new Block.TextTable(heads, rows));
    }
}

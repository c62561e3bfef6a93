package org.scalepan.web.compare;

import java.util.List;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.NoRatio;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.Warning;
import org.scalepan.ask.compare.Comparison;
import org.scalepan.factors.Library;
import org.scalepan.quantity.Print;
import org.scalepan.web.render.Block;
import org.scalepan.web.render.Document;
import org.scalepan.web.render.TextLine;

/** Lays a comparison out to be pasted: a table, each product in a sentence, references, warnings, and the permalink. */
public final class ComparisonDocument {
    private final Library library;
    private final Comparison comparison;
    private final Sentences sentences;

    public ComparisonDocument(Library library, Comparison comparison) {
        this.library = library;
        this.comparison = comparison;
        this.sentences = new Sentences(
                comparison.question().basis(), comparison.question().sampling().coverage());
    }

    public Document document(String permalink) {
        return new Document.Builder()
                .add(table())
                .add(new Block.Paragraph(comparison.items().stream()
                        .map(item -> TextLine.of(inWords(item)))
                        .toList()))
                .paragraph("References")
                .references(comparison.references(library))
                .paragraph("Warnings")
                .bullets(comparison.grounds(library).warnings().stream()
                        .map(Warning::text)
                        .toList())
                .link(permalink)
                .untitled();
    }

    private Block table() {
        return new Block.TextTable(
                List.of(
                        "product",
                        sentences.unit(),
                        "times less than " + comparison.reference().words() + " (below 1: more)",
                        "studies"),
                comparison.estimates().stream().map(this::row).toList());
    }

    private List<String> row(Estimate estimate) {
        return List.of(
                estimate.words(),
                estimate.summary()
                        .map(summary -> estimate.bound().words() + Sentences.interval(summary))
                        .orElse("no evidence"),
                timesLess(estimate),
                Integer.toString(estimate.studies()));
    }

    /** A product in words: against the reference, or why there is no ratio and what a single study reports. */
    private String inWords(Comparison.ComparedProduct item) {
        if (item.versus().isPresent()) {
            return sentences.versus(
                    item.estimate(),
                    comparison.reference(),
                    item.versus().get(),
                    comparison.versusUnderOtherLandUse(item));
        }
        StringBuilder words = new StringBuilder(sentences.estimate(item.estimate()));
        item.estimate()
                .missing()
                .ifPresent(why -> words.append(" (").append(why).append(')'));
        NoRatio.between(item.estimate(), comparison.reference())
                .ifPresent(why ->
                        words.append(" There is no ratio: ").append(why.words()).append('.'));
        item.paired()
                .ratios()
                .forEach(study -> words.append(" One study gives the ratio itself: ")
                        .append(Print.ratio(study.central()))
                        .append(" (")
                        .append(Sentences.study(study))
                        .append(")."));
        return words.toString();
    }

    private String timesLess(Estimate estimate) {
        return comparison.items().stream()
                .filter(item -> item.estimate().equals(estimate))
                .findFirst()
                .flatMap(Comparison.ComparedProduct::versus)
                .map(versus -> versus.bound().words() + Sentences.ratio(versus.timesLess()))
                .orElse("");
    }
}

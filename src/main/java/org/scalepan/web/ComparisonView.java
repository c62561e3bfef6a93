package org.scalepan.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.ask.Citations;
import org.scalepan.ask.Comparison;
import org.scalepan.ask.Likelihood;
import org.scalepan.ask.Quote;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.Versus;
import org.scalepan.ask.Warnings;
import org.scalepan.cite.Reference;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.literature.Evidence;
import org.scalepan.literature.PairedEvidence;
import org.scalepan.literature.PairedStudy;
import org.scalepan.quantity.Print;
import org.scalepan.uncertainty.RandomEffects;
import org.scalepan.uncertainty.Summary;

/** Renders a comparison as JSON, CSV and Markdown. */
final class ComparisonView {
    static final List<String> COLUMNS = List.of(
            "product",
            "form",
            "name",
            "status",
            "indicator",
            "unit",
            "per",
            "boundary",
            "gwp",
            "median",
            "mean",
            "low",
            "high",
            "coverage",
            "studies",
            "results",
            "lowest_grade",
            "region_used",
            "against",
            "times_less_median",
            "times_less_low",
            "times_less_high",
            "share_median",
            "share_low",
            "share_high",
            "probability_less",
            "probability_standard_error",
            "likelihood",
            "paired_studies",
            "sources",
            "text");

    private final Library library;
    private final Comparison comparison;
    private final Sentences sentences;

    ComparisonView(Library library, Comparison comparison) {
        this.library = library;
        this.comparison = comparison;
        this.sentences = new Sentences(
                comparison.question().ruler(), comparison.question().sampling().coverage());
    }

    String json(String path, Map<String, Object> question) {
        return Json.write(tree(path, question));
    }

    ObjectNode tree(String path, Map<String, Object> question) {
        ObjectNode node = Envelope.open(library, path, question);
        node.set("reference", QuoteView.json(comparison.reference(), sentences));
        ArrayNode items = node.putArray("items");
        comparison.items().forEach(item -> items.add(item(item)));
        Envelope.close(node, Warnings.of(library, quotes()), library, products(), references());
        return node;
    }

    private List<Quote> quotes() {
        List<Quote> quotes = new ArrayList<>(List.of(comparison.reference()));
        comparison.items().forEach(item -> quotes.add(item.quote()));
        return quotes.stream().distinct().toList();
    }

    private List<Product> products() {
        return quotes().stream().map(quote -> quote.item().product()).distinct().toList();
    }

    private List<Reference> references() {
        Citations citations = new Citations();
        quotes().forEach(citations::add);
        comparison.items().forEach(item -> citations.add(item.paired()));
        if (comparison.question().ruler().indicator().isWarming()) {
            citations.add(comparison.question().ruler().gwp());
        }
        return citations.references(library);
    }

    private ObjectNode item(Comparison.Item item) {
        ObjectNode node = QuoteView.json(item.quote(), sentences);
        item.versus().ifPresent(versus -> {
            node.put("against_sentence", sentences.versus(item.quote(), comparison.reference(), versus));
            node.set("times_less", ratio(versus.timesLess()));
            node.set("share", ratio(versus.share()));
            node.put("times_less_of_means", Numbers.rounded(versus.ofMeans()));
            ObjectNode less = node.putObject("probability_less");
            less.put("value", Numbers.rounded(versus.less().value()));
            less.put("standard_error", Numbers.rounded(versus.less().standardError()));
            // With n draws a probability within about 3/n of 0 or 1 cannot be told from it.
            less.put(
                    "resolution",
                    Numbers.rounded(comparison.question().sampling().resolution()));
            likelihood(item.quote(), versus)
                    .ifPresentOrElse(
                            word -> less.put("likelihood", word).put("scale", Likelihood.SCALE),
                            () -> less.put("likelihood_withheld", Likelihood.WITHHELD));
        });
        if (!item.paired().ratios().isEmpty()) {
            node.set("paired", paired(item.paired()));
        }
        return node;
    }

    private Optional<String> likelihood(Quote quote, Versus versus) {
        return Likelihood.word(versus.less().value(), quote, comparison.reference());
    }

    private static ObjectNode ratio(Summary summary) {
        ObjectNode node = SummaryView.json(summary);
        node.put("text", Sentences.ratio(summary));
        return node;
    }

    private static ObjectNode paired(PairedEvidence paired) {
        ObjectNode node = Json.object();
        ArrayNode ratios = node.putArray("studies");
        for (PairedStudy ratio : paired.ratios()) {
            ObjectNode one = ratios.addObject();
            one.put("study", ratio.study());
            one.put("times_less", Numbers.rounded(ratio.central()));
            one.put("ln_mean", Numbers.rounded(ratio.lnMean()));
            one.put("ln_variance", Numbers.rounded(ratio.lnVariance()));
            one.put("origin", ratio.origin() == PairedStudy.Origin.PRINTED ? "printed" : "computed");
            Json.put(one, "product_from", ratio.borrowed().product());
            Json.put(one, "reference_from", ratio.borrowed().reference());
            one.set("rows", Json.texts(ratio.rows()));
            one.set("notes", Json.texts(ratio.notes()));
        }
        paired.pooled().ifPresent(pooled -> node.set("pooled", pooled(pooled)));
        return node;
    }

    /** The pooled ratio, carried back from the log scale on which it was pooled. */
    private static ObjectNode pooled(RandomEffects.Pooled pooled) {
        ObjectNode node = Json.object();
        node.put(
                "method",
                "DerSimonian-Laird on ln ratio; 95 % interval by Hartung-Knapp, never narrower than DerSimonian-Laird's");
        node.put("times_less", Numbers.rounded(StrictMath.exp(pooled.mean())));
        node.put("low", Numbers.rounded(PairedEvidence.low(pooled)));
        node.put("high", Numbers.rounded(PairedEvidence.high(pooled)));
        pooled.predictionLow().ifPresent(low -> node.put("prediction_low", Numbers.rounded(StrictMath.exp(low))));
        pooled.predictionHigh().ifPresent(high -> node.put("prediction_high", Numbers.rounded(StrictMath.exp(high))));
        node.put("tau2", Numbers.rounded(pooled.tau2()));
        node.put("i2", Numbers.rounded(pooled.i2()));
        node.put("studies", pooled.studies());
        return node;
    }

    Answer csv(Csv.Style style) {
        Csv csv = new Csv(style, COLUMNS);
        row(csv, comparison.reference(), Optional.empty(), 0);
        comparison
                .items()
                .forEach(item -> row(
                        csv, item.quote(), item.versus(), item.paired().ratios().size()));
        return csv.answer();
    }

    private void row(Csv csv, Quote quote, Optional<Versus> versus, int pairedStudies) {
        Csv.Line line = csv.line();
        line.text(quote.item().product().id())
                .text(quote.item().form())
                .text(quote.item().product().name())
                .text(quote.summary().isPresent() ? "ok" : "no-evidence")
                .text(comparison.question().ruler().indicator().id())
                .text(comparison.question().ruler().indicator().unit())
                .text(comparison.question().ruler().per().id())
                .text(comparison.question().ruler().boundary().id())
                .text(
                        comparison.question().ruler().indicator().isWarming()
                                ? comparison.question().ruler().gwp().id()
                                : "");
        quote.summary()
                .ifPresentOrElse(
                        summary -> line.number(summary.median())
                                .number(summary.mean())
                                .number(summary.low())
                                .number(summary.high())
                                .number(summary.coverage()),
                        () -> line.empty(5));
        line.number(quote.studies()).number(quote.results());
        line.text(quote.lowestGrade().map(Grade::id).orElse(""));
        line.text(quote.regionUsed().orElse(""));
        line.text(comparison.question().against().written());
        versus.ifPresentOrElse(
                found -> line.number(found.timesLess().median())
                        .number(found.timesLess().low())
                        .number(found.timesLess().high())
                        .number(found.share().median())
                        .number(found.share().low())
                        .number(found.share().high())
                        .number(found.less().value())
                        .number(found.less().standardError())
                        .text(likelihood(quote, found).orElse("")),
                () -> line.empty(9));
        line.number(pairedStudies);
        line.text(String.join(" ", quote.evidence().sources()));
        line.text(sentences.quote(quote));
        line.end();
    }

    /** Text whose signs Markdown would read as a table, a tag, a link or code, with those signs made plain. */
    static String markdownText(String text) {
        return text.replaceAll("[|<\\[\\]`\\\\]", "\\\\$0");
    }

    String markdown(String path, Map<String, Object> question) {
        StringBuilder out = new StringBuilder();
        out.append("| product | ")
                .append(sentences.unit())
                .append(" | times less than ")
                .append(markdownText(comparison.reference().item().words()))
                .append(" (below 1: more) | studies |\n|---|---|---|---|\n");
        Stream.concat(
                        Stream.of(comparison.reference()),
                        comparison.items().stream().map(Comparison.Item::quote))
                .distinct()
                .forEach(quote -> out.append("| ")
                        .append(markdownText(quote.item().words()))
                        .append(" | ")
                        .append(quote.summary().map(this::interval).orElse("no evidence"))
                        .append(" | ")
                        .append(timesLess(quote))
                        .append(" | ")
                        .append(quote.studies())
                        .append(" |\n"));
        out.append('\n');
        comparison
                .items()
                .forEach(item -> out.append(markdownText(inWords(item))).append('\n'));
        out.append("\nReferences\n\n");
        references()
                .forEach(reference -> out.append("- ")
                        .append(markdownText(org.scalepan.cite.PlainText.of(reference)))
                        .append('\n'));
        out.append("\nWarnings\n\n");
        Warnings.of(library, quotes())
                .forEach(warning -> out.append("- ").append(warning.text()).append('\n'));
        out.append('\n').append(Permalink.of(library, path, question)).append('\n');
        return out.toString();
    }

    /** A product in words: against the reference, or why not and what one study says. */
    private String inWords(Comparison.Item item) {
        if (item.versus().isPresent()) {
            return sentences.versus(
                    item.quote(), comparison.reference(), item.versus().get());
        }
        StringBuilder words = new StringBuilder(sentences.quote(item.quote()));
        if (item.quote().evidence() instanceof Evidence.None none) {
            words.append(" (").append(none.reason()).append(')');
        }
        item.paired()
                .ratios()
                .forEach(study -> words.append(" One study gives the ratio itself: ")
                        .append(Print.ratio(study.central()))
                        .append(" (")
                        .append(Sentences.study(study))
                        .append(")."));
        return words.toString();
    }

    private String interval(Summary summary) {
        String text = sentences.footprint(summary);
        return text.substring(0, text.length() - sentences.unit().length() - 1);
    }

    private String timesLess(Quote quote) {
        return comparison.items().stream()
                .filter(item -> item.quote().equals(quote))
                .findFirst()
                .flatMap(Comparison.Item::versus)
                .map(versus -> Sentences.ratio(versus.timesLess()))
                .orElse("");
    }
}

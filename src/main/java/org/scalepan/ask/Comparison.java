package org.scalepan.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.cite.Reference;
import org.scalepan.factors.Library;
import org.scalepan.footprint.DrawBook;
import org.scalepan.literature.PairedEvidence;

/**
 * Products beside a reference on one ruler (M5). All footprints are drawn with common random numbers: a factor that stands on
 * both sides is drawn once.
 */
public record Comparison(Question question, Quote reference, List<Item> items) {
    public Comparison {
        items = List.copyOf(items);
    }

    /** What is asked, all defaults resolved. */
    public record Question(List<ProductForm> products, ProductForm against, Ruler ruler, Sampling sampling) {
        public Question {
            products = List.copyOf(products);
        }
    }

    /**
     * One compared product.
     *
     * @param versus the ratios, when both sides have evidence
     * @param paired ratios from studies that assessed both, which may exist where a pooled ratio does not
     */
    public record Item(Quote quote, Optional<Versus> versus, PairedEvidence paired) {}

    /** Answers a question from the library. */
    public static Comparison of(Library library, Question question) {
        DrawBook book = question.sampling().book();
        Ruler ruler = question.ruler();
        Quote reference = Quoting.quote(library, question.against(), ruler, question.sampling(), book);
        List<Item> items = new ArrayList<>();
        for (ProductForm product : question.products()) {
            Quote quote = product.equals(question.against())
                    ? reference
                    : Quoting.quote(library, product, ruler, question.sampling(), book);
            PairedEvidence paired = product.equals(question.against())
                    ? PairedEvidence.NONE
                    : PairedEvidence.between(library, quote.evidence(), reference.evidence());
            items.add(new Item(
                    quote, Versus.between(quote, reference, question.sampling().coverage()), paired));
        }
        return new Comparison(question, reference, items);
    }

    /** Every published estimate of this comparison once: the reference first. */
    public List<Quote> quotes() {
        return Stream.concat(Stream.of(reference), items.stream().map(Item::quote))
                .distinct()
                .toList();
    }

    /** What stands behind the figures of all sides. */
    public Grounds grounds(Library library) {
        return new Grounds(library, List.copyOf(quotes()));
    }

    /** Every publication behind a figure, a paired ratio or the warming set, in the order in which they were met. */
    public List<Reference> references(Library library) {
        Citations citations = new Citations();
        quotes().forEach(citations::add);
        items.forEach(item -> citations.add(item.paired()));
        if (question.ruler().indicator().isWarming()) {
            citations.add(question.ruler().gwp());
        }
        return citations.references(library);
    }
}

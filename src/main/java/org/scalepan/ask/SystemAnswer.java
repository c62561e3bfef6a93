package org.scalepan.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scalepan.factors.Library;
import org.scalepan.footprint.DrawBook;
import org.scalepan.production.Inventory;

/**
 * A farm or herd computed from its records, beside other systems and published products, for one or more indicators (M7, M8). All are
 * drawn from one book, so that a factor that serves several of them, such as the grid's intensity, is drawn once.
 */
public record SystemAnswer(Question question, List<OnRuler> rulers) {
    public SystemAnswer {
        rulers = List.copyOf(rulers);
    }

    /**
     * What is asked.
     *
     * @param system the farm or herd the question is about
     * @param others further systems to stand beside it
     * @param products published products to stand beside it
     * @param rulers one for each indicator
     * @param credit whether the credit for replaced fertiliser is taken off
     */
    public record Question(
            Inventory system,
            List<Inventory> others,
            List<ProductForm> products,
            List<Ruler> rulers,
            boolean credit,
            Sampling sampling) {
        public Question {
            others = List.copyOf(others);
            products = List.copyOf(products);
            rulers = List.copyOf(rulers);
        }
    }

    /**
     * The answer for one indicator.
     *
     * @param withCredit the same system with the credit taken off, or without it, whichever was not asked for; when there is a credit
     */
    public record OnRuler(
            Ruler ruler,
            SystemQuote system,
            Optional<SystemQuote> withCredit,
            List<OtherSystem> others,
            List<OtherProduct> products) {
        public OnRuler {
            others = List.copyOf(others);
            products = List.copyOf(products);
        }
    }

    /** Another system beside the first. */
    public record OtherSystem(SystemQuote quote, Optional<Versus> versus) {}

    /** A published product beside the system. */
    public record OtherProduct(Quote quote, Optional<Versus> versus) {}

    /** Answers a question. */
    public static SystemAnswer of(Library library, Question question) {
        List<OnRuler> rulers = new ArrayList<>();
        for (Ruler ruler : question.rulers()) {
            rulers.add(onRuler(library, question, ruler));
        }
        return new SystemAnswer(question, rulers);
    }

    private static OnRuler onRuler(Library library, Question question, Ruler ruler) {
        Sampling sampling = question.sampling();
        DrawBook book = sampling.book();
        SystemQuote own = SystemQuote.of(library, question.system(), ruler, question.credit(), sampling, book);
        List<OtherSystem> others = question.others().stream()
                .map(inventory -> SystemQuote.of(library, inventory, ruler, question.credit(), sampling, book))
                .map(quote -> new OtherSystem(quote, Versus.between(own, quote, sampling.coverage())))
                .toList();
        List<OtherProduct> products = question.products().stream()
                .map(product -> Quoting.quote(library, product, ruler, sampling, book))
                .map(quote -> new OtherProduct(quote, Versus.between(own, quote, sampling.coverage())))
                .toList();
        boolean hasCredit = question.system().flows().stream()
                .anyMatch(flow -> flow.stage() == org.scalepan.production.Stage.CREDIT
                        && flow.flux().indicator().equals(ruler.indicator().id()));
        Optional<SystemQuote> otherWay = hasCredit
                ? Optional.of(SystemQuote.of(library, question.system(), ruler, !question.credit(), sampling, book))
                : Optional.empty();
        return new OnRuler(ruler, own, otherWay, others, products);
    }
}

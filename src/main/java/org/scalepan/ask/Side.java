package org.scalepan.ask;

import java.util.Optional;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.footprint.DrawBook;
import org.scalepan.literature.Evidence;
import org.scalepan.literature.Pool;
import org.scalepan.production.Inventory;

/** One side of a question: a product as the literature knows it, or a farm or herd as its records tell it. */
public sealed interface Side {
    /** What it is called in a sentence. */
    String words();

    /** As it is written in the resolved question. */
    String written();

    /** What supplies the protein. */
    Product product();

    /** Stands this side on a ruler, drawn from a book that the other sides of the question share. */
    Standing on(Library library, Ruler ruler, Sampling sampling, DrawBook book);

    /** What the literature says on a ruler, before anything is drawn; empty for what is computed from records. */
    Optional<Evidence> evidence(Library library, Ruler ruler);

    /** True when there is a figure on a ruler; cheap, because nothing is drawn. */
    boolean speaks(Library library, Ruler ruler);

    /** A product with its published results. */
    record Published(ProductForm item) implements Side {
        @Override
        public String words() {
            return item.words();
        }

        @Override
        public String written() {
            return item.written();
        }

        @Override
        public Product product() {
            return item.product();
        }

        @Override
        public Quote on(Library library, Ruler ruler, Sampling sampling, DrawBook book) {
            return Quoting.quote(library, item, ruler, sampling, book);
        }

        @Override
        public Optional<Evidence> evidence(Library library, Ruler ruler) {
            return Optional.of(Pool.of(library, ruler.question(item)));
        }

        @Override
        public boolean speaks(Library library, Ruler ruler) {
            return Pool.of(library, ruler.question(item)) instanceof Evidence.Some;
        }
    }

    /**
     * A farm or herd with its inventory.
     *
     * @param credit whether the credit for replaced fertiliser is taken off
     */
    record Recorded(Inventory system, boolean credit) implements Side {
        @Override
        public String words() {
            return system.name();
        }

        @Override
        public String written() {
            return system.name();
        }

        @Override
        public Product product() {
            return system.output().product();
        }

        @Override
        public SystemQuote on(Library library, Ruler ruler, Sampling sampling, DrawBook book) {
            return SystemQuote.of(library, system, ruler, credit, sampling, book);
        }

        @Override
        public Optional<Evidence> evidence(Library library, Ruler ruler) {
            return Optional.empty();
        }

        @Override
        public boolean speaks(Library library, Ruler ruler) {
            return SystemQuote.undrawn(library, system, ruler, credit).system().isPresent();
        }
    }
}

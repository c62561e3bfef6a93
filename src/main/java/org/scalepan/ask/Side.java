package org.scalepan.ask;

import java.util.Optional;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.footprint.CommonRandomNumbers;
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
    Estimate on(Library library, ComparisonBasis ruler, Sampling sampling, CommonRandomNumbers book);

    /** What the literature says on a ruler, before anything is drawn; empty for what is computed from records. */
    Optional<Evidence> evidence(Library library, ComparisonBasis ruler);

    /** True when there is a figure on a ruler; cheap, because nothing is drawn. */
    boolean speaks(Library library, ComparisonBasis ruler);

    /** A product with its published results. */
    record PublishedSide(ProductForm item) implements Side {
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
        public PublishedEstimate on(
                Library library, ComparisonBasis ruler, Sampling sampling, CommonRandomNumbers book) {
            return Estimating.quote(library, item, ruler, sampling, book);
        }

        @Override
        public Optional<Evidence> evidence(Library library, ComparisonBasis ruler) {
            return Optional.of(Pool.of(library, ruler.question(item)));
        }

        @Override
        public boolean speaks(Library library, ComparisonBasis ruler) {
            return Pool.of(library, ruler.question(item)) instanceof Evidence.PooledEvidence;
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
        public SystemEstimate on(Library library, ComparisonBasis ruler, Sampling sampling, CommonRandomNumbers book) {
            return SystemEstimate.of(library, system, ruler, credit, sampling, book);
        }

        @Override
        public Optional<Evidence> evidence(Library library, ComparisonBasis ruler) {
            return Optional.empty();
        }

        @Override
        public boolean speaks(Library library, ComparisonBasis ruler) {
            return SystemEstimate.undrawn(library, system, ruler, credit)
                    .system()
                    .isPresent();
        }
    }
}

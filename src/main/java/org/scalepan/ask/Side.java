package org.scalepan.ask;

import java.util.Optional;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.literature.Evidence;
import org.scalepan.literature.Pool;
import org.scalepan.production.Inventory;
import org.scalepan.words.DisplayName;

/** One side of a question: a product with its published results, or a farm or herd with its records. */
public sealed interface Side {
    /** What it is called in a sentence. */
    DisplayName name();

    /** What it is called in an English sentence. */
    default String words() {
        return name().english();
    }

    /** Why this cannot be held against another side: a ratio of something to itself says nothing about it. */
    default Optional<String> obstacleTo(Side other) {
        return equals(other)
                ? Optional.of(
                        words() + " is compared with itself, and nothing causes more or less than itself: name another")
                : Optional.empty();
    }

    /** As it is written in the resolved question. */
    String written();

    /** The product. */
    Product product();

    /** The estimate of this side on a basis, with the random numbers that the sides of the question share. */
    Estimate on(Library library, ComparisonBasis basis, Sampling sampling, CommonRandomNumbers random);

    /** The published evidence on a basis, before anything is drawn; empty for what is computed from records. */
    Optional<Evidence> evidence(Library library, ComparisonBasis basis);

    /** True when there is a figure on a basis; cheap, because nothing is drawn. */
    boolean hasEvidence(Library library, ComparisonBasis basis);

    /** A product with its evidence, of the kind that the basis asks for: published results or a reference farm. */
    record PublishedSide(ProductForm item) implements Side {
        @Override
        public DisplayName name() {
            return item.name();
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
        public Estimate on(Library library, ComparisonBasis basis, Sampling sampling, CommonRandomNumbers random) {
            return Estimating.asked(library, item, basis, sampling, random);
        }

        @Override
        public Optional<Evidence> evidence(Library library, ComparisonBasis basis) {
            return basis.evidence() == EvidenceKind.MODELLED
                    ? Optional.empty()
                    : Optional.of(Pool.of(library, basis.question(item)));
        }

        @Override
        public boolean hasEvidence(Library library, ComparisonBasis basis) {
            return basis.evidence() == EvidenceKind.MODELLED
                    ? ModelledEstimate.undrawn(library, item, basis)
                            .system()
                            .flatMap(SystemEstimate::system)
                            .isPresent()
                    : Pool.of(library, basis.question(item)) instanceof Evidence.PooledEvidence;
        }
    }

    /**
     * A farm or herd with its inventory.
     *
     * @param credit whether the credit for replaced fertiliser is taken off
     */
    record Recorded(Inventory system, boolean credit) implements Side {
        @Override
        public DisplayName name() {
            return DisplayName.given(system.name());
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
        public SystemEstimate on(
                Library library, ComparisonBasis basis, Sampling sampling, CommonRandomNumbers random) {
            return SystemEstimate.of(library, system, basis, credit, sampling, random);
        }

        @Override
        public Optional<Evidence> evidence(Library library, ComparisonBasis basis) {
            return Optional.empty();
        }

        @Override
        public boolean hasEvidence(Library library, ComparisonBasis basis) {
            return SystemEstimate.undrawn(library, system, basis, credit)
                    .system()
                    .isPresent();
        }
    }
}

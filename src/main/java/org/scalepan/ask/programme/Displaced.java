package org.scalepan.ask.programme;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scalepan.factors.Library;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.uncertainty.Summary;
import org.scalepan.words.Message;

/**
 * What a programme displaces a year, in kilograms.
 *
 * @param supplied what the product supplies, on the equal basis
 * @param displaced what of that displaces something: none at a rate of 0
 */
public record Displaced(Summary supplied, Summary displaced, List<DisplacedPart> parts) {
    public Displaced {
        parts = List.copyOf(parts);
    }

    /** One thing displaced, in the kilograms in which it is sold, or why they are not known. */
    public static final class DisplacedPart {
        private final Baseline.BaselinePart of;
        private final Optional<double[]> draws;
        private final Optional<Summary> kilograms;
        private final Optional<Message> missing;

        private DisplacedPart(
                Baseline.BaselinePart of,
                Optional<double[]> draws,
                Optional<Summary> kilograms,
                Optional<Message> missing) {
            this.of = of;
            this.draws = draws;
            this.kilograms = kilograms;
            this.missing = missing;
        }

        public Baseline.BaselinePart of() {
            return of;
        }

        public Optional<Summary> kilograms() {
            return kilograms;
        }

        public Optional<Message> missing() {
            return missing;
        }

        /** Draw by draw; callers must not write to them. */
        Optional<double[]> draws() {
            return draws;
        }
    }

    static Displaced of(Library library, SubstitutionQuestion question, CommonRandomNumbers random) {
        double coverage = question.sampling().coverage();
        double[] supplied = question.knownSupply(library).perKilogram(random);
        for (int i = 0; i < supplied.length; i++) {
            supplied[i] *= question.programme().kilograms();
        }
        double[] displaced = times(supplied, question.rate());
        List<DisplacedPart> parts = new ArrayList<>();
        for (Baseline.BaselinePart part : question.baseline().parts()) {
            Supply supply = Supply.of(
                    library,
                    part.side(),
                    part.unit(),
                    question.equalBasis(),
                    question.bases().get(0));
            if (supply instanceof Supply.Known known) {
                double[] kilograms = times(displaced, part.share());
                double[] held = known.perKilogram(random);
                for (int i = 0; i < kilograms.length; i++) {
                    kilograms[i] /= held[i];
                }
                parts.add(new DisplacedPart(
                        part, Optional.of(kilograms), Optional.of(Summary.of(kilograms, coverage)), Optional.empty()));
            } else {
                parts.add(new DisplacedPart(
                        part, Optional.empty(), Optional.empty(), Optional.of(((Supply.MissingSupply) supply).why())));
            }
        }
        return new Displaced(Summary.of(supplied, coverage), Summary.of(displaced, coverage), parts);
    }

    private static double[] times(double[] values, double factor) {
        double[] product = values.clone();
        for (int i = 0; i < product.length; i++) {
            product[i] *= factor;
        }
        return product;
    }
}

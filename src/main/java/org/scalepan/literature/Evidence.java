package org.scalepan.literature;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.footprint.Bound;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.footprint.Footprint;
import org.scalepan.uncertainty.hierarchy.PooledDraws;
import org.scalepan.words.DisplayName;
import org.scalepan.words.Message;

/** The published evidence for a question about one product. */
public sealed interface Evidence {

    PoolQuestion question();

    /** Results of the product for the same indicator that could not be used, and why. */
    List<Unused> unused();

    /**
     * There are results.
     *
     * @param hierarchy how the studies are pooled; empty where a finding is not above zero throughout: then every study weighs the same, on the
     *     linear scale
     * @param regionUsed the region whose results were taken: the one asked for, or the nearest around it that has any
     * @param regionName what a sentence calls it
     */
    record PooledEvidence(
            PoolQuestion question,
            List<Study> studies,
            Optional<StudyHierarchy> hierarchy,
            String regionUsed,
            DisplayName regionName,
            List<Unused> unused)
            implements Evidence {
        public PooledEvidence {
            studies = List.copyOf(studies);
            unused = List.copyOf(unused);
        }

        /** Which energy is counted, where energy is; all findings are of the same kind. */
        public Optional<EnergyKind> energyKind() {
            return findings()
                    .flatMap(finding -> EnergyKind.of(finding.result()).stream())
                    .findFirst();
        }

        /** Every finding of every study. */
        public Stream<Harmonised> findings() {
            return studies.stream().flatMap(study -> study.findings().stream());
        }

        /**
         * Whether the figure is the figure or a bound of it. Where all results count land-use change although the question leaves it out,
         * what is asked is at most as high; where none counts it although the question does, at least.
         */
        public Bound bound() {
            if (findings().noneMatch(Harmonised::opposesLandUse)) {
                return Bound.EXACT;
            }
            return question.luc() == LandUseChange.EXCLUDE ? Bound.AT_MOST : Bound.AT_LEAST;
        }

        /** True when the draws of both are the same: the same findings brought to the basis by the same steps. */
        public boolean drawsAs(PooledEvidence other) {
            return bound() == other.bound() && trail().equals(other.trail());
        }

        private List<List<Object>> trail() {
            return studies.stream()
                    .map(study -> study.findings().stream()
                            .<Object>map(
                                    finding -> List.of(finding.result().id(), finding.geometricSd(), finding.steps()))
                            .toList())
                    .toList();
        }

        /** The weight of a study in the pool; those of all add up to 1. */
        public double weight(Study study) {
            return hierarchy.map(pool -> pool.share(study)).orElse(1.0 / studies.size());
        }

        /** The weight of a finding of a study in the pool; those of a study add up to its weight. */
        public double weight(Study study, Harmonised finding) {
            return weight(study)
                    * hierarchy
                            .map(pool -> pool.shareWithin(study, finding))
                            .orElse(1.0 / study.findings().size());
        }

        /**
         * The footprint. Everything that is drawn for it has a stream of its own or of the product's, so that a product compared with itself
         * gives exactly 1.
         */
        public Footprint footprint(CommonRandomNumbers random) {
            return hierarchy.map(pool -> pooled(pool, random)).orElseGet(() -> mixed(random));
        }

        private Footprint pooled(StudyHierarchy pool, CommonRandomNumbers random) {
            PooledDraws given = pool.given(random);
            CommonRandomNumbers later = random.uncached();
            return Footprint.pooled(
                    question.indicator().id(),
                    question.indicator().unit(),
                    question.per(),
                    question.boundary(),
                    question.warmingSet(),
                    given,
                    () -> pool.logarithms(given, later),
                    bound());
        }

        /** An equal-weight mixture over the studies, and within a study over its findings. */
        private Footprint mixed(CommonRandomNumbers random) {
            Mixture mixture = Mixture.of(
                    studies.stream().mapToInt(study -> study.findings().size()).toArray(),
                    random.uniforms(choice().id()));
            double[] draws = new double[random.size()];
            for (int study = 0; study < studies.size(); study++) {
                List<Harmonised> findings = studies.get(study).findings();
                for (int finding = 0; finding < findings.size(); finding++) {
                    int[] places = mixture.places(study, finding);
                    double[] drawn = findings.get(finding).draw(random.only(places));
                    for (int i = 0; i < places.length; i++) {
                        draws[places[i]] = drawn[i];
                    }
                }
            }
            return new Footprint(
                    question.indicator().id(),
                    question.indicator().unit(),
                    question.per(),
                    question.boundary(),
                    question.warmingSet(),
                    draws,
                    bound());
        }

        /** The stream by which a draw of an equal-weight mixture chooses its study, and a finding within it. */
        public CommonRandomNumbers.Substream choice() {
            return new CommonRandomNumbers.Substream(
                    "pool/" + question.product().id() + "/" + question.form() + "/"
                            + question.indicator().id(),
                    true);
        }

        /**
         * A finding and where on its choice's stream it lies.
         *
         * @param weight its part of the pool
         * @param place the middle of its part, between 0 and 1
         */
        public record WeightedFinding(Harmonised finding, double weight, double place) {}

        /** The findings from the lowest central value to the highest. */
        public List<WeightedFinding> places() {
            List<WeightedFinding> places = new ArrayList<>();
            double before = 0;
            for (Study study : studies) {
                for (Harmonised finding : study.findings()) {
                    double weight = weight(study, finding);
                    places.add(new WeightedFinding(finding, weight, before + weight / 2));
                    before += weight;
                }
            }
            places.sort(Comparator.comparingDouble(place -> place.finding().central()));
            return places;
        }

        /** The finding in the middle of the pool: as much weight lies below it as above. */
        public WeightedFinding middle() {
            double below = 0;
            List<WeightedFinding> places = places();
            for (WeightedFinding place : places) {
                below += place.weight();
                if (below >= 0.5 - 1e-12) {
                    return place;
                }
            }
            return places.get(places.size() - 1);
        }

        /** The middle of what is known of the mean, at the medians of all conversions; nothing is drawn for it. */
        public double centre() {
            return hierarchy
                    .map(pool -> StrictMath.exp(pool.between().pooledMean().quantile(0.5)))
                    .orElseGet(() -> middle().finding().central());
        }

        /** A study by its id, if it is among the eligible studies. */
        public Optional<Study> study(String id) {
            return studies.stream().filter(study -> study.id().equals(id)).findFirst();
        }
    }

    /** There is none on this basis. */
    record NoEvidence(PoolQuestion question, Message why, List<Unused> unused) implements Evidence {
        /** Why, in English. */
        public String reason() {
            return why.english();
        }

        public NoEvidence {
            unused = List.copyOf(unused);
        }
    }

    /** The ids of the sources behind the evidence, in the order of the library. */
    default List<String> sources() {
        return this instanceof PooledEvidence some
                ? some.findings()
                        .map(finding -> finding.result().cited().source())
                        .distinct()
                        .toList()
                : List.of();
    }
}

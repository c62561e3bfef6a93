package org.scalepan.literature;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.footprint.Bound;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.footprint.Footprint;

/** The published evidence for a question about one product. */
public sealed interface Evidence {

    PoolQuestion question();

    /** Results of the product for the same indicator that could not be used, and why. */
    List<Unused> unused();

    /**
     * There are results.
     *
     * @param regionUsed the region whose results were taken: the one asked for, or the nearest around it that has any
     * @param regionWords what a sentence calls it
     */
    record PooledEvidence(
            PoolQuestion question, List<Study> studies, String regionUsed, String regionWords, List<Unused> unused)
            implements Evidence {
        public PooledEvidence {
            studies = List.copyOf(studies);
            unused = List.copyOf(unused);
        }

        /** Which energy is counted, where energy is; all findings count the same. */
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

        /** The weight of each study in the pool: all weigh the same, however many results they print. */
        public double weight() {
            return 1.0 / studies.size();
        }

        /** The weight of each finding of a study: they share the weight of the study equally. */
        public double weightOfFinding(Study study) {
            return weight() / study.findings().size();
        }

        /**
         * The footprint: an equal-weight mixture over the studies, and within a study over its findings. The choice of
         * study is drawn from a stream of the product's own, so that a product compared with itself gives exactly 1.
         */
        public Footprint footprint(CommonRandomNumbers random) {
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

        /** The stream by which a draw chooses its study, and a finding within it. */
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
                double weight = weightOfFinding(study);
                for (Harmonised finding : study.findings()) {
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

        /** A study by its id, if it is among the eligible studies. */
        public Optional<Study> study(String id) {
            return studies.stream().filter(study -> study.id().equals(id)).findFirst();
        }
    }

    /** There is none on this basis. */
    record NoEvidence(PoolQuestion question, String reason, List<Unused> unused) implements Evidence {
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

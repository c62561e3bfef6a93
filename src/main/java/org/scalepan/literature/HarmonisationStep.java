package org.scalepan.literature;

import java.util.List;
import java.util.Optional;
import org.scalepan.factors.StageSplit;
import org.scalepan.footprint.ChainStep;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.footprint.Rebasing;
import org.scalepan.uncertainty.Constant;

/** One conversion on the way from the published number to the basis of the question. */
public sealed interface HarmonisationStep {

    /** What the number is multiplied by, at the central value. */
    double multiplier();

    void apply(double[] values, CommonRandomNumbers random);

    /** True when it is not the same in every draw. */
    boolean isDrawn();

    /** To another functional unit. */
    record ToUnit(ChainStep step) implements HarmonisationStep {
        @Override
        public double multiplier() {
            return step.multiplier();
        }

        @Override
        public void apply(double[] values, CommonRandomNumbers random) {
            step.apply(values, random);
        }

        @Override
        public boolean isDrawn() {
            return step instanceof ChainStep.PublishedStep published
                    && !(published.factor().reading() instanceof Constant);
        }
    }

    /**
     * To another boundary, or without land-use change, by the stage split that the source itself publishes.
     *
     * @param fixed what every value is multiplied by
     * @param landUse what is drawn for land-use change, where a split of means stands for results that are no means
     * @param kept the stages that stay in
     * @param dropped the stages that are taken out
     */
    record ByStages(double fixed, Optional<LandUseFactor> landUse, List<StageSplit> kept, List<StageSplit> dropped)
            implements HarmonisationStep {
        public ByStages {
            kept = List.copyOf(kept);
            dropped = List.copyOf(dropped);
        }

        @Override
        public double multiplier() {
            return fixed * landUse.map(LandUseFactor::central).orElse(1.0);
        }

        /** The lowest and the highest factor. */
        public double[] bounds() {
            return new double[] {fixed * landUse.map(LandUseFactor::lowest).orElse(1.0), fixed};
        }

        @Override
        public void apply(double[] values, CommonRandomNumbers random) {
            for (int i = 0; i < values.length; i++) {
                values[i] *= fixed;
            }
            landUse.ifPresent(drawn -> drawn.apply(values, random));
        }

        @Override
        public boolean isDrawn() {
            return landUse.isPresent();
        }
    }

    /**
     * The part that is left without land-use change, drawn evenly between one less its mean share and one. Land-use change is none on most
     * farms and a multiple of the mean on some, so that its mean share cannot be taken off the median or off any other percentile.
     *
     * @param id the row that gives the share: one row is drawn once, whatever result it stands for
     * @param meanShare share of land-use change in the mean of what is kept, between 0 and 1
     */
    record LandUseFactor(String id, double meanShare) {
        double lowest() {
            return 1 - meanShare;
        }

        double central() {
            return 1 - meanShare / 2;
        }

        void apply(double[] values, CommonRandomNumbers random) {
            double[] place = random.uniforms(id);
            for (int i = 0; i < values.length; i++) {
                values[i] *= 1 - meanShare * place[i];
            }
        }
    }

    /** To another warming set. */
    record ToWarmingSet(Rebasing rebasing) implements HarmonisationStep {
        @Override
        public double multiplier() {
            return rebasing.multiplier();
        }

        @Override
        public void apply(double[] values, CommonRandomNumbers random) {
            rebasing.apply(values, random);
        }

        @Override
        public boolean isDrawn() {
            return rebasing.isOpen();
        }
    }
}

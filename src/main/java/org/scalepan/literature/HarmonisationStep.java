package org.scalepan.literature;

import java.util.List;
import org.scalepan.factors.StageSplit;
import org.scalepan.footprint.ChainStep;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.footprint.Rebasing;

/** One conversion on the way from the published number to the basis of the question. */
public sealed interface HarmonisationStep {

    /** What the number is multiplied by, at the central value. */
    double multiplier();

    void apply(double[] values, CommonRandomNumbers random);

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
    }

    /**
     * To another boundary, or without land-use change, by the stage split that the source itself publishes.
     *
     * @param kept the stages that stay in
     * @param dropped the stages that are taken out
     */
    record ByStages(double multiplier, List<StageSplit> kept, List<StageSplit> dropped) implements HarmonisationStep {
        public ByStages {
            kept = List.copyOf(kept);
            dropped = List.copyOf(dropped);
        }

        @Override
        public void apply(double[] values, CommonRandomNumbers random) {
            for (int i = 0; i < values.length; i++) {
                values[i] *= multiplier;
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
    }
}

package org.scalepan.footprint;

import org.scalepan.factors.CompositionRow;
import org.scalepan.footprint.StatedContent.StatedShare;

/** One step from a functional unit to the next, with what it does to an impact. */
public sealed interface ChainStep {

    FunctionalUnit from();

    FunctionalUnit to();

    /** What an impact per {@link #from} is multiplied by to become an impact per {@link #to}, at the central value. */
    double multiplier();

    /** Multiplies each value by this step's multiplier, drawn where the factor behind it is uncertain. */
    void apply(double[] values, CommonRandomNumbers random);

    /**
     * A step that is true by definition, such as 100 g to 1 kg.
     *
     * @param why the definition in words
     */
    record Exact(FunctionalUnit from, FunctionalUnit to, double multiplier, String why) implements ChainStep {
        @Override
        public void apply(double[] values, CommonRandomNumbers random) {
            for (int i = 0; i < values.length; i++) {
                values[i] *= multiplier;
            }
        }
    }

    /**
     * A step by a published factor of the product.
     *
     * @param factor the factor as read from the library
     * @param upwards true when the step runs against the yield, from the part to the whole
     */
    record PublishedStep(FunctionalUnit from, FunctionalUnit to, ChainFactor factor, boolean upwards)
            implements ChainStep {
        @Override
        public double multiplier() {
            return upwards ? factor.central() : 1 / factor.central();
        }

        @Override
        public void apply(double[] values, CommonRandomNumbers random) {
            double[] yields = factor.draw(random);
            for (int i = 0; i < values.length; i++) {
                values[i] = upwards ? values[i] * yields[i] : values[i] / yields[i];
            }
        }

        public CompositionRow row() {
            return factor.row();
        }
    }

    /**
     * A step by what a farm states of its own animals.
     *
     * @param upwards true when the step runs from the part to the whole
     */
    record StatedStep(FunctionalUnit from, FunctionalUnit to, StatedShare share, boolean upwards) implements ChainStep {
        @Override
        public double multiplier() {
            return upwards ? share.central() : 1 / share.central();
        }

        @Override
        public void apply(double[] values, CommonRandomNumbers random) {
            double[] shares = share.draw(random);
            for (int i = 0; i < values.length; i++) {
                values[i] = upwards ? values[i] * shares[i] : values[i] / shares[i];
            }
        }
    }
}

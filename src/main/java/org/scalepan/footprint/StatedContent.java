package org.scalepan.footprint;

import java.util.Optional;
import org.scalepan.uncertainty.Constant;
import org.scalepan.uncertainty.Distribution;

/**
 * What a farm states that its own animals hold, as shares of their fresh weight. It goes before what the library has of the species.
 *
 * @param dryMatter kg per kg of fresh animals
 * @param protein kg crude protein per kg of fresh animals
 */
public record StatedContent(Optional<StatedShare> dryMatter, Optional<StatedShare> protein) {
    /** Of a farm that states nothing. */
    public static final StatedContent NONE = new StatedContent(Optional.empty(), Optional.empty());

    /**
     * A share that was stated.
     *
     * @param drawnAs the key under which it is drawn; empty for one number
     * @param reading what is drawn
     * @param scale a constant put on top of what is drawn, such as 6.25 from nitrogen to crude protein
     * @param central the central value, scale included
     * @param lnSd its standard deviation relative to the central value
     */
    public record StatedShare(
            Optional<String> drawnAs, Distribution reading, double scale, double central, double lnSd) {
        /** One number. */
        public static StatedShare known(double value) {
            return new StatedShare(Optional.empty(), new Constant(value), 1, value, 0);
        }

        double[] draw(CommonRandomNumbers random) {
            double[] out = new double[random.size()];
            if (drawnAs.isEmpty()) {
                java.util.Arrays.fill(out, central);
                return out;
            }
            double[] drawn = random.values(drawnAs.get(), reading);
            for (int i = 0; i < out.length; i++) {
                out[i] = drawn[i] * scale;
            }
            return out;
        }
    }

    /** True where nothing is stated. */
    boolean isEmpty() {
        return dryMatter.isEmpty() && protein.isEmpty();
    }
}

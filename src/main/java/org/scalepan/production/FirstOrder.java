package org.scalepan.production;

import java.util.HashMap;
import java.util.Map;
import org.scalepan.footprint.ChainStep;
import org.scalepan.uncertainty.StandardNormal;

/**
 * First-order error propagation on the logarithm: the uncertainty of a footprint from the uncertainties of its factors, without Monte
 * Carlo. For products and sums of independent factors with small spreads this is IPCC 2006, volume 1, chapter 3, equations 3.1 and 3.2; a
 * factor that enters several lines is counted with the sum of its effects, as correlated inputs must be. The interval is lognormal, so it
 * never falls below zero.
 *
 * @param value the footprint with every factor at its central value
 * @param lnSd standard deviation of its logarithm
 */
public record FirstOrder(double value, double lnSd) {

    static FirstOrder of(SystemFootprint system) {
        double sum = 0;
        Map<String, Effect> effects = new HashMap<>();
        double[] yearly = system.yearly();
        for (int i = 0; i < yearly.length; i++) {
            Flow flow = system.counted().get(i);
            double part = yearly[i];
            sum += part;
            for (ActivityTerm.FactorUse use : flow.term().uses()) {
                effects.computeIfAbsent(
                                use.factor().id(), id -> new Effect(use.factor().lnSd()))
                        .add(part, use.divides());
            }
        }
        double total = sum;
        for (ChainStep step : system.chain()) {
            if (step instanceof ChainStep.PublishedStep published) {
                effects.computeIfAbsent(
                                published.row().id(),
                                id -> new Effect(published.factor().lnSd()))
                        .add(total, !published.upwards());
            }
        }
        double variance = 0;
        for (Effect effect : effects.values()) {
            double relative = total == 0 ? 0 : effect.sum / total;
            variance += relative * relative * effect.lnSd * effect.lnSd;
        }
        return new FirstOrder(system.central(yearly), Math.sqrt(variance));
    }

    /** The lower end of the equal-tailed interval. */
    public double low(double coverage) {
        return bound(-StandardNormal.score((1 + coverage) / 2));
    }

    /** The upper end of the equal-tailed interval. */
    public double high(double coverage) {
        return bound(StandardNormal.score((1 + coverage) / 2));
    }

    private double bound(double score) {
        // The same bits on every machine.
        double stretched = StrictMath.exp(lnSd * score);
        return value < 0 ? value / stretched : value * stretched;
    }

    /** How a total changes with the logarithm of one factor. */
    private static final class Effect {
        private final double lnSd;
        private double sum;

        Effect(double lnSd) {
            this.lnSd = lnSd;
        }

        void add(double part, boolean divides) {
            sum += divides ? -part : part;
        }
    }
}

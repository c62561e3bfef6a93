package org.scalepan.production;

import java.util.HashMap;
import java.util.Map;
import java.util.function.DoubleSupplier;
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
        Effects effects = new Effects();
        double[] yearly = system.yearly();
        for (int i = 0; i < yearly.length; i++) {
            Flow flow = system.counted().get(i);
            double part = yearly[i];
            sum += part;
            effects.ofTerm(flow.term(), part, () -> system.scope().weight(flow.flux()));
        }
        double total = sum;
        ActivityTerm perUnit = system.inventory().output().perUnit();
        effects.ofTerm(perUnit, total, () -> total / perUnit.central());
        for (ChainStep step : system.chain()) {
            if (step instanceof ChainStep.PublishedStep published) {
                effects.of(published.row().id(), published.factor().lnSd()).add(total, !published.upwards());
            } else if (step instanceof ChainStep.StatedStep stated) {
                stated.share()
                        .drawnAs()
                        .ifPresent(key -> effects.of(key, stated.share().lnSd()).add(total, !stated.upwards()));
            }
        }
        return new FirstOrder(system.central(yearly), Math.sqrt(effects.relativeVariance(total)));
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

    /** How a total changes with the logarithms of factors, by id. */
    private static final class Effects {
        private final Map<String, Effect> effects = new HashMap<>();

        Effect of(String id, double lnSd) {
            return effects.computeIfAbsent(id, unused -> new Effect(lnSd));
        }

        /**
         * Adds a term.
         *
         * @param part its central value in the total
         * @param weight of the term in the total
         */
        void ofTerm(ActivityTerm term, double part, DoubleSupplier weight) {
            for (ActivityTerm.FactorUse use : term.uses()) {
                if (use.factor() instanceof Factor factor && factor.central() != 0) {
                    of(factor.id(), factor.lnSd()).add(part, use.divides());
                } else {
                    double rest = weight.getAsDouble() * term.centralWithout(use);
                    use.factor().behind().forEach(factor -> ofOneSd(use, factor, rest));
                }
            }
        }

        /** What is no product of its factors: by what it does one standard deviation about the middle, which is exact where it is linear. */
        private void ofOneSd(ActivityTerm.FactorUse use, Factor factor, double rest) {
            boolean zero = factor.central() == 0;
            double high = zero ? factor.reading().atScore(1) : factor.central() * StrictMath.exp(factor.lnSd());
            double low = zero ? factor.reading().atScore(-1) : factor.central() * StrictMath.exp(-factor.lnSd());
            double change = use.effect(use.factor().centralWith(factor, high))
                    - use.effect(use.factor().centralWith(factor, low));
            of(factor.id(), factor.lnSd()).add(rest * change / 2 / (zero ? 1 : StrictMath.sinh(factor.lnSd())), false);
        }

        double relativeVariance(double total) {
            double variance = 0;
            for (Effect effect : effects.values()) {
                double relative = total == 0 ? 0 : effect.sum / total;
                variance += relative * relative * effect.lnSd * effect.lnSd;
            }
            return variance;
        }
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

package org.scalepan.production;

import java.util.HashMap;
import java.util.Map;
import org.scalepan.footprint.ChainStep;
import org.scalepan.quantity.Amount;
import org.scalepan.uncertainty.StandardNormal;

/**
 * First-order error propagation on the logarithm: the doubt of a footprint from the doubts of its factors, without drawing. For
 * products and sums of independent factors with small spreads this is IPCC 2006, volume 1, chapter 3, equations 3.1 and 3.2; a factor
 * that stands in several lines is counted with the sum of its effects, as correlated inputs must be. The interval is
 * lognormal, so it never falls below zero.
 *
 * @param middle the footprint with every factor at its central value
 * @param spread standard deviation of its logarithm
 */
public record FirstOrder(Amount middle, Amount spread) {

    static FirstOrder of(SystemFootprint system) {
        Amount sum = Amount.ZERO;
        Map<String, Effect> effects = new HashMap<>();
        for (Flow flow : system.counted()) {
            Amount part = system.yearly(flow);
            sum = sum.plus(part);
            for (Term.Use use : flow.term().uses()) {
                effects.computeIfAbsent(use.factor().id(), id -> new Effect(use.factor()))
                        .add(part, use.divides());
            }
        }
        Amount total = sum;
        for (ChainStep step : system.chain()) {
            if (step instanceof ChainStep.Published published) {
                Factor factor =
                        new Factor(published.row().id(), published.factor().reading());
                effects.computeIfAbsent(factor.id(), id -> new Effect(factor)).add(total, !published.upwards());
            }
        }
        Amount variance = Amount.ZERO;
        for (Effect effect : effects.values()) {
            Amount relative = total.isZero() ? Amount.ZERO : effect.sum.over(total);
            variance = variance.plus(
                    relative.times(relative).times(effect.factor.lnSd()).times(effect.factor.lnSd()));
        }
        return new FirstOrder(system.middle(), variance.squareRoot());
    }

    /** The footprint with every factor at its central value, as a number. */
    public double value() {
        return middle.value();
    }

    /** Standard deviation of its logarithm, as a number. */
    public double lnSd() {
        return spread.value();
    }

    /** The lower end of the equal-tailed interval. */
    public double low(double coverage) {
        return lower(coverage).value();
    }

    /** The same as an amount. */
    public Amount lower(double coverage) {
        return bound(-StandardNormal.score((1 + coverage) / 2));
    }

    /** The upper end of the equal-tailed interval. */
    public double high(double coverage) {
        return upper(coverage).value();
    }

    /** The same as an amount. */
    public Amount upper(double coverage) {
        return bound(StandardNormal.score((1 + coverage) / 2));
    }

    private Amount bound(double score) {
        Amount stretched = spread.times(score).exponential();
        return middle.isBelow(0) ? middle.over(stretched) : middle.times(stretched);
    }

    /** How a total changes with the logarithm of one factor. */
    private static final class Effect {
        private final Factor factor;
        private Amount sum = Amount.ZERO;

        Effect(Factor factor) {
            this.factor = factor;
        }

        void add(Amount part, boolean divides) {
            sum = divides ? sum.minus(part) : sum.plus(part);
        }
    }
}

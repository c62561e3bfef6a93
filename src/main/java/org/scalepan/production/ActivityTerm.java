package org.scalepan.production;

import java.util.ArrayList;
import java.util.List;
import org.scalepan.footprint.CommonRandomNumbers;

/**
 * A product: an amount from the records times uncertain factors, each to the power 1 or −1. Everything on a farm comes down to a
 * sum of such terms, which is why first-order propagation, Monte Carlo and sensitivity all work on the same inventory.
 *
 * @param amount the certain part, with its sign (a credit is negative)
 */
public record ActivityTerm(double amount, List<FactorUse> uses) {

    /** A factor of a product, with its power. */
    public record FactorUse(Factor factor, boolean divides) {}

    public ActivityTerm {
        uses = List.copyOf(uses);
    }

    /**
     * A number alone.
     *
     * @throws IllegalArgumentException when it is not finite
     */
    public static ActivityTerm of(double amount) {
        if (!Double.isFinite(amount)) {
            throw new IllegalArgumentException("an amount must be finite, not " + amount);
        }
        return new ActivityTerm(amount, List.of());
    }

    /** This term times a factor. */
    public ActivityTerm times(Factor factor) {
        return with(new FactorUse(factor, false));
    }

    /** This term divided by a factor. */
    public ActivityTerm over(Factor factor) {
        return with(new FactorUse(factor, true));
    }

    /** This term times a certain number. */
    public ActivityTerm times(double number) {
        return new ActivityTerm(amount * number, uses);
    }

    private ActivityTerm with(FactorUse use) {
        List<FactorUse> more = new ArrayList<>(uses);
        more.add(use);
        return new ActivityTerm(amount, more);
    }

    /** The value with every factor at its central value. */
    public double central() {
        double middle = amount;
        for (FactorUse use : uses) {
            double factor = use.factor().central();
            middle = use.divides() ? middle / factor : middle * factor;
        }
        return middle;
    }

    /** Adds {@code scale} times this term, draw by draw. */
    public void addTo(double[] sum, double scale, CommonRandomNumbers random) {
        double[] product = new double[sum.length];
        java.util.Arrays.fill(product, amount * scale);
        for (FactorUse use : uses) {
            double[] drawn = random.values(use.factor().id(), use.factor().reading());
            for (int i = 0; i < product.length; i++) {
                product[i] = use.divides() ? product[i] / drawn[i] : product[i] * drawn[i];
            }
        }
        for (int i = 0; i < sum.length; i++) {
            sum[i] += product[i];
        }
    }
}

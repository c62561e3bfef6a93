package org.scalepan.production;

import java.util.ArrayList;
import java.util.List;
import org.scalepan.footprint.DrawBook;
import org.scalepan.quantity.Amount;

/**
 * A product: an amount out of the records times uncertain factors, each to the power 1 or −1. Everything on a farm comes down to a
 * sum of such terms, which is why first-order propagation, Monte Carlo and sensitivity all work on the same inventory.
 *
 * @param certain the certain part, with its sign (a credit is negative)
 */
public record Term(Amount certain, List<Use> uses) {

    /** A factor as it stands in a product. */
    public record Use(Factor factor, boolean divides) {}

    public Term {
        uses = List.copyOf(uses);
    }

    /** An amount alone. */
    public static Term of(Amount certain) {
        return new Term(certain, List.of());
    }

    /**
     * A number alone.
     *
     * @throws IllegalArgumentException when it is not finite
     */
    public static Term of(double amount) {
        if (!Double.isFinite(amount)) {
            throw new IllegalArgumentException("an amount must be finite, not " + amount);
        }
        return of(Amount.of(amount));
    }

    /** The certain part as a number. */
    public double amount() {
        return certain.value();
    }

    /** This term times a factor. */
    public Term times(Factor factor) {
        return with(new Use(factor, false));
    }

    /** This term divided by a factor. */
    public Term over(Factor factor) {
        return with(new Use(factor, true));
    }

    /** This term times a certain number. */
    public Term times(double number) {
        return times(Amount.of(number));
    }

    /** This term times an amount that is certain. */
    public Term times(Amount other) {
        return new Term(certain.times(other), uses);
    }

    private Term with(Use use) {
        List<Use> more = new ArrayList<>(uses);
        more.add(use);
        return new Term(certain, more);
    }

    /** The value with every factor at its central value. */
    public double central() {
        return middle().value();
    }

    /** The same as an amount. */
    public Amount middle() {
        Amount middle = certain;
        for (Use use : uses) {
            double factor = use.factor().central();
            middle = use.divides() ? middle.over(factor) : middle.times(factor);
        }
        return middle;
    }

    /** Adds {@code scale} times this term, draw by draw. */
    public void addTo(double[] sum, double scale, DrawBook book) {
        double[] product = new double[sum.length];
        java.util.Arrays.fill(product, amount() * scale);
        for (Use use : uses) {
            double[] drawn = book.values(use.factor().id(), use.factor().reading());
            for (int i = 0; i < product.length; i++) {
                product[i] = use.divides() ? product[i] / drawn[i] : product[i] * drawn[i];
            }
        }
        for (int i = 0; i < sum.length; i++) {
            sum[i] += product[i];
        }
    }
}

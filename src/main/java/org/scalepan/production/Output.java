package org.scalepan.production;

import org.scalepan.factors.Product;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.quantity.Amount;

/**
 * What leaves the farm in a year and carries the burden.
 *
 * @param per the unit the records count it in, such as kg live or kg product as sold
 * @param made so much of it a year, above zero
 * @param carried the part of the farm's burden that this product carries, above 0 up to 1
 * @param allocation how that part was found, in words
 */
public record Output(Product product, String form, FunctionalUnit per, Amount made, Amount carried, String allocation) {
    public Output {
        if (!made.isAbove(0) || !made.isBelow(Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("an output must be above zero, not " + made);
        }
        if (!carried.isAbove(0) || carried.isAbove(1)) {
            throw new IllegalArgumentException("a share of the burden lies above 0 and up to 1, not at " + carried);
        }
    }

    /** An output whose numbers are known. */
    public Output(Product product, String form, FunctionalUnit per, double amount, double share, String allocation) {
        this(product, form, per, Amount.of(amount), Amount.of(share), allocation);
    }

    /** So much of it a year, as a number. */
    public double amount() {
        return made.value();
    }

    /** The part of the farm's burden that it carries, as a number. */
    public double share() {
        return carried.value();
    }
}

package org.scalepan.production;

import org.scalepan.factors.Product;
import org.scalepan.footprint.FunctionalUnit;

/**
 * The product that leaves the farm in a year and carries the burden.
 *
 * @param per the unit the records count it in, such as kg live or kg product as sold
 * @param amount amount a year, above zero
 * @param share the part of the farm's burden that this product carries, above 0 up to 1
 * @param allocation how that part was found, in words
 */
public record Output(Product product, String form, FunctionalUnit per, double amount, double share, String allocation) {
    public Output {
        if (!(amount > 0 && amount < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("an output must be above zero, not " + amount);
        }
        if (!(share > 0 && share <= 1)) {
            throw new IllegalArgumentException("a share of the burden lies above 0 and up to 1, not at " + share);
        }
    }
}

package org.scalepan.production;

import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.footprint.ProteinBasis;
import org.scalepan.footprint.UnitChain;

/**
 * The product that leaves the farm in a year and carries the burden.
 *
 * @param per the unit the records count it in, such as kg live or kg product as sold
 * @param quantity amount a year, above zero
 * @param burden the part of the farm's burden that this product carries, above 0 up to 1
 * @param allocation how that part was found, in words
 * @param composition what the farm states that its animals hold
 */
public record Output(
        Product product,
        String form,
        FunctionalUnit per,
        ActivityTerm quantity,
        ActivityTerm burden,
        String allocation,
        StatedComposition composition) {
    public Output {
        double amount = quantity.central();
        if (!(amount > 0 && amount < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("an output must be above zero, not " + amount);
        }
        double share = burden.central();
        if (!(share > 0 && share <= 1)) {
            throw new IllegalArgumentException("a share of the burden lies above 0 and up to 1, not at " + share);
        }
    }

    /** An output of a farm that states nothing of what it holds. */
    public Output(
            Product product,
            String form,
            FunctionalUnit per,
            ActivityTerm quantity,
            ActivityTerm burden,
            String allocation) {
        this(product, form, per, quantity, burden, allocation, StatedComposition.NONE);
    }

    /** The way from one unit of it to another. Records have no lowest grade: every row of the product is eligible. */
    public UnitChain chain(Library library, ProteinBasis protein, boolean qualityCapped) {
        return UnitChain.of(library, product, form, "", protein, qualityCapped, Grade.MEMORY)
                .stating(composition.content());
    }

    /** An output of which both numbers are known. */
    public Output(Product product, String form, FunctionalUnit per, double amount, double share, String allocation) {
        this(product, form, per, ActivityTerm.of(amount), ActivityTerm.of(share), allocation);
    }

    /** Amount a year, centrally. */
    public double amount() {
        return quantity.central();
    }

    /** The part of the farm's burden that this product carries, centrally. */
    public double share() {
        return burden.central();
    }

    /** What the burden of a year is multiplied by to become that of one unit of this. */
    ActivityTerm perUnit() {
        return burden.over(quantity);
    }
}

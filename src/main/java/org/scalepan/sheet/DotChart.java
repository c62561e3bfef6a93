package org.scalepan.sheet;

/**
 * Numbers as dots with whiskers on a scale of powers of ten, each above its name.
 *
 * @param title above the picture
 * @param unit beside the scale
 * @param names below the dots
 * @param above how far the upper whisker reaches above the dot
 * @param below how far the lower whisker reaches below the dot
 * @param least the lowest end of a whisker, above zero
 * @param most the highest end of a whisker
 * @param atRow the row of the sheet where the picture begins, counted from 0
 * @param atColumn the column where it begins, counted from 0
 */
public record DotChart(
        String title,
        String unit,
        CellRange names,
        CellRange dots,
        CellRange above,
        CellRange below,
        double least,
        double most,
        int atRow,
        int atColumn) {
    public DotChart {
        if (!(least > 0 && most >= least)) {
            throw new IllegalArgumentException("a scale of powers of ten begins above zero");
        }
    }

    /** Where the scale begins: the power of ten at or below the lowest whisker. */
    double scaleFrom() {
        return Math.pow(10, Math.floor(Math.log10(least)));
    }

    /** Where the scale ends. */
    double scaleTo() {
        return Math.pow(10, Math.max(Math.ceil(Math.log10(most)), Math.floor(Math.log10(least)) + 1));
    }
}

package org.scalepan.quantity;

/**
 * The kinds of number that are shown to a reader, at the precision their evidence can carry.
 *
 * <p>Source: common practice, no source; two figures because published footprints seldom agree on the second.
 */
public final class Print {
    private static final int FIGURES = 2;

    private Print() {}

    /**
     * A footprint, to two significant figures: 99.48 is "99", 0.00312 is "0.0031".
     *
     * @throws IllegalArgumentException when the footprint is not finite
     */
    public static String footprint(double footprint) {
        return SignificantFigures.text(footprint, FIGURES);
    }

    /**
     * A ratio of two footprints: two figures below 10 ("1.0", "9.5"), at most two above ("14", "120").
     *
     * @throws IllegalArgumentException when the ratio is not finite
     */
    public static String ratio(double ratio) {
        return SignificantFigures.text(ratio, FIGURES);
    }

    /**
     * What a food holds of something, to two figures: 20.5 is "20", 1.93 is "1.9". Samples of one food seldom agree on the third.
     *
     * @throws IllegalArgumentException when the content is not finite
     */
    public static String content(double content) {
        return SignificantFigures.text(content, FIGURES);
    }
}

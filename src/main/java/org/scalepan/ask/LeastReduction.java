package org.scalepan.ask;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.scalepan.words.Figure;

/**
 * By how many per cent at least a product has less, where it has at least so many times less. What remains is rounded up, so that the
 * per cent never say more than the ratio: to whole per cent, and below one per cent to two figures, so that they never become 100.
 */
public final class LeastReduction {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    /** Divided far finer than it is rounded, and upwards, so that rounding twice does not say more either. */
    private static final MathContext FINE = new MathContext(20, RoundingMode.UP);

    private LeastReduction() {}

    /**
     * The per cent.
     *
     * @param timesLess the ratio, above 1 and finite
     */
    public static BigDecimal percent(double timesLess) {
        if (!(timesLess > 1) || Double.isInfinite(timesLess)) {
            throw new IllegalArgumentException("only a finite ratio above 1 is a reduction, not " + timesLess);
        }
        BigDecimal remains = HUNDRED.divide(BigDecimal.valueOf(timesLess), FINE);
        BigDecimal rounded = remains.compareTo(BigDecimal.ONE) > 0
                ? remains.setScale(0, RoundingMode.UP)
                : remains.round(new MathContext(2, RoundingMode.UP));
        return HUNDRED.subtract(rounded).stripTrailingZeros();
    }

    public static Figure figure(double timesLess) {
        return new Figure(percent(timesLess).toPlainString());
    }
}

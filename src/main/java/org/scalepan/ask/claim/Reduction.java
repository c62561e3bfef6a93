package org.scalepan.ask.claim;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** "At least r times less" as the part that is saved: at least (1 − 1/r) · 100 per cent. */
public final class Reduction {
    /** Far more than the error of a double, far less than what is printed. */
    private static final double ROUNDING = 1e-9;

    private Reduction() {}

    /**
     * The per cent that are saved at least, rounded down so that no more is said than by the ratio; with decimals where the ratio is 100 or
     * more, so that 200 times less is not 99 % less.
     *
     * @param timesLess 1 or more
     */
    public static BigDecimal percent(double timesLess) {
        int decimals = Math.max(0, (int) Math.floor(Math.log10(timesLess) + ROUNDING) - 1);
        return BigDecimal.valueOf(100 * (1 - 1 / timesLess) + ROUNDING).setScale(decimals, RoundingMode.FLOOR);
    }
}

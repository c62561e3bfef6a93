package org.scalepan.ask.programme;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.scalepan.ask.Side;
import org.scalepan.footprint.FunctionalUnit;

/**
 * What a programme displaces: the food or feed that people or animals would otherwise have had.
 *
 * @param parts at least one, their shares adding to 1
 */
public record Baseline(List<BaselinePart> parts) {
    private static final double ROUNDING = 1e-9;

    public Baseline {
        parts = List.copyOf(parts);
        double sum = parts.stream().mapToDouble(BaselinePart::share).sum();
        if (!(Math.abs(sum - 1) <= ROUNDING)) {
            throw new IllegalArgumentException("the shares of a baseline add to 1, not to " + sum);
        }
    }

    /**
     * One of the things displaced.
     *
     * @param share of the displaced quantity, counted on the equal basis
     * @param unit the kilogram in which it is counted, priced and imported
     * @param price per such kilogram, in the asker's currency
     * @param imported the share of it that is imported, 0 to 1
     */
    public record BaselinePart(
            Side side, double share, FunctionalUnit unit, OptionalDouble price, OptionalDouble imported) {
        public BaselinePart {
            if (!(share >= 0 && share <= 1)) {
                throw new IllegalArgumentException("a share lies between 0 and 1, not at " + share);
            }
        }
    }

    /** {@code chicken (70 %) and egg (30 %)}. */
    public String words() {
        return parts.size() == 1
                ? parts.get(0).side().words()
                : parts.stream()
                        .map(part -> part.side().words() + " (" + Math.round(100 * part.share()) + " %)")
                        .collect(Collectors.joining(" and "));
    }
}

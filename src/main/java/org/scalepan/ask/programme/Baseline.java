package org.scalepan.ask.programme;

import java.util.List;
import java.util.OptionalDouble;
import org.scalepan.ask.Side;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.words.Listing;
import org.scalepan.words.Message;

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
    public Message message() {
        if (parts.size() == 1) {
            return Message.of("programme.baseline", "name", parts.get(0).side().name());
        }
        return Message.of(
                "verbatim",
                "text",
                Listing.and(parts.stream()
                        .map(part -> Message.of(
                                "programme.baseline-part",
                                "name",
                                part.side().name(),
                                "percent",
                                Math.round(100 * part.share())))
                        .toList()));
    }

    /** The same in English. */
    public String words() {
        return message().english();
    }
}

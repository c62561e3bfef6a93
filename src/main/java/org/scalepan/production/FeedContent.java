package org.scalepan.production;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What the feed of a year holds of something that can neither be made nor lost.
 *
 * @param known in the ingredients of which the content is known, in the unit of what is held: kg, or MJ
 * @param atMost with all others at the most that any feed can hold
 * @param unknown the ingredients of which it is not known
 * @param rows ids of the rows of the library behind {@code known}
 */
public record FeedContent(double known, double atMost, List<String> unknown, List<String> rows) {
    public FeedContent {
        unknown = List.copyOf(unknown);
        rows = List.copyOf(rows);
    }

    /** Adds up ingredients. */
    static final class FeedSum {
        private final Set<String> unknown = new LinkedHashSet<>();
        private final Set<String> rows = new LinkedHashSet<>();
        private double known;
        private double unknownAtMost;

        void known(double amount, List<String> behind) {
            known += amount;
            rows.addAll(behind);
        }

        /** An ingredient that holds no more than {@code atMost}. */
        void unknown(String ingredient, double atMost) {
            unknown.add(ingredient);
            unknownAtMost += atMost;
        }

        FeedContent content() {
            return new FeedContent(known, known + unknownAtMost, List.copyOf(unknown), List.copyOf(rows));
        }
    }
}

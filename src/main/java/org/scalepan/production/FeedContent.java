package org.scalepan.production;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What the feed of a year holds of something that can neither be made nor lost.
 *
 * <p>Contents of the library are taken in the middle; only what the records leave open is uncertain here.
 *
 * @param known in the ingredients of which the content is known, in the unit of what is held: kg, or MJ
 * @param atMost with all others at the most that any feed can hold
 * @param unknown the ingredients of which it is not known
 * @param rows ids of the rows of the library behind {@code known}
 */
public record FeedContent(ActivityTerm known, ActivityTerm atMost, List<String> unknown, List<String> rows) {
    public FeedContent {
        unknown = List.copyOf(unknown);
        rows = List.copyOf(rows);
    }

    /** Adds up ingredients. */
    static final class FeedSum {
        private final Set<String> unknown = new LinkedHashSet<>();
        private final Set<String> rows = new LinkedHashSet<>();
        private final List<ActivityTerm> known = new ArrayList<>();
        private final List<ActivityTerm> unknownAtMost = new ArrayList<>();

        void known(ActivityTerm amount, List<String> behind) {
            known.add(amount);
            rows.addAll(behind);
        }

        /** An ingredient that holds no more than {@code atMost}. */
        void unknown(String ingredient, ActivityTerm atMost) {
            unknown.add(ingredient);
            unknownAtMost.add(atMost);
        }

        FeedContent content() {
            ActivityTerm sum = ActivityTerm.sum(known);
            ActivityTerm most = ActivityTerm.sum(List.of(sum, ActivityTerm.sum(unknownAtMost)));
            return new FeedContent(sum, most, List.copyOf(unknown), List.copyOf(rows));
        }
    }
}

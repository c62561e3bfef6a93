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

    /** Adds up records, of which few if any are uncertain. */
    static final class RecordSum {
        private double certain;
        private List<ActivityTerm> uncertain = List.of();

        void add(ActivityTerm term) {
            if (term.isCertain()) {
                certain += term.amount();
                return;
            }
            uncertain = uncertain.isEmpty() ? new ArrayList<>() : uncertain;
            uncertain.add(term);
        }

        ActivityTerm sum() {
            if (uncertain.isEmpty()) {
                return ActivityTerm.of(certain);
            }
            List<ActivityTerm> all = new ArrayList<>(uncertain);
            all.add(ActivityTerm.of(certain));
            return ActivityTerm.sum(all);
        }
    }

    /** Adds up ingredients. */
    static final class FeedSum {
        private final Set<String> unknown = new LinkedHashSet<>();
        private final Set<String> rows = new LinkedHashSet<>();
        private final RecordSum known = new RecordSum();
        private final RecordSum unknownAtMost = new RecordSum();

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
            ActivityTerm sum = known.sum();
            return new FeedContent(
                    sum,
                    unknown.isEmpty() ? sum : ActivityTerm.sum(List.of(sum, unknownAtMost.sum())),
                    List.copyOf(unknown),
                    List.copyOf(rows));
        }
    }
}

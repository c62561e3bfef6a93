package org.scalepan.literature;

import org.scalepan.words.Message;

/**
 * Something that a reader of a figure must know about one result behind it.
 *
 * @param code stable code, see {@link Codes}
 * @param message the sentence
 */
public record Note(String code, Message message) {
    /** The sentence in English. */
    public String text() {
        return message.english();
    }

    /** The codes in use; clients may rely on them. */
    public static final class Codes {
        public static final String ASSUMED_SPREAD = "assumed-spread";
        public static final String STATISTIC_MEAN = "statistic-mean";
        public static final String MEMORY_GRADED = "memory-graded";
        public static final String OTHER_WARMING_SET = "other-warming-set";
        public static final String OPEN_GAS_SHARES = "open-gas-shares";
        public static final String BY_STAGE_SPLIT = "by-stage-split";
        public static final String SPLIT_OF_MEANS = "split-of-means";
        public static final String LAND_FROM_RETAIL = "land-from-retail";
        public static final String LUC_NOT_STATED = "luc-not-stated";
        public static final String LUC_NOT_SPLIT = "luc-not-split";
        public static final String FEED_BASIS_NOT_STATED = "feed-basis-not-stated";
        public static final String BROADER_PRODUCT = "factor-of-broader-product";
        public static final String MEMORY_CONVERSION = "memory-conversion";
        public static final String ASSUMED_CONVERSION_SPREAD = "assumed-conversion-spread";
        public static final String PUBLICATION_NOT_IDENTIFIED = "publication-not-identified";
        public static final String OWN_ROWS = "own-rows";

        private Codes() {}
    }
}

package org.scalepan.ask;

import org.scalepan.literature.StudyHierarchy;
import org.scalepan.quantity.Print;
import org.scalepan.words.Figure;
import org.scalepan.words.Message;

/** Says how studies were pooled. */
public final class PoolingWords {
    private PoolingWords() {}

    /** In a sentence or two: what studies differ by, and what their weights come of. */
    public static Message of(StudyHierarchy hierarchy) {
        return Message.of(
                hierarchy.effects().size() == 1 ? "pooling.one-study" : "pooling",
                "factor",
                figure(hierarchy, 0.5),
                "high",
                figure(hierarchy, 0.95));
    }

    private static Figure figure(StudyHierarchy hierarchy, double level) {
        return new Figure(Print.ratio(StrictMath.exp(hierarchy.between().quantile(level))));
    }
}

package org.scalepan.ask;

import org.scalepan.literature.StudyHierarchy;
import org.scalepan.quantity.Print;

/** Says how studies were pooled. */
public final class PoolingWords {
    private PoolingWords() {}

    /** In a sentence or two: what studies differ by, and what their weights come of. */
    public static String of(StudyHierarchy hierarchy) {
        int studies = hierarchy.effects().size();
        String factor = Print.ratio(StrictMath.exp(hierarchy.between().quantile(0.5)));
        String high = Print.ratio(StrictMath.exp(hierarchy.between().quantile(0.95)));
        return studies == 1
                ? "One study says nothing of how studies differ: that they typically differ from their mean by a factor of "
                        + factor + ", and hardly by more than " + high + ", is what is assumed before any is seen."
                : "These studies typically differ from their mean by a factor of about " + factor
                        + " (hardly more than " + high
                        + ") beyond their own errors. A study weighs the more, the smaller its error is beside that difference.";
    }
}

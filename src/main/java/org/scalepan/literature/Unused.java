package org.scalepan.literature;

import org.scalepan.factors.PublishedResult;
import org.scalepan.words.Message;

/** A published result of the product that the answer does not use, and why. */
public record Unused(PublishedResult result, Message why) {
    /** Why, in English. */
    public String reason() {
        return why.english();
    }
}

package org.scalepan.exchange.rows;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.scalepan.exchange.text.Json;
import org.scalepan.production.RecordingPriority;
import org.scalepan.production.SystemFootprint;
import org.scalepan.quantity.SevenDigits;
import org.scalepan.words.Language;

/** What to record next to make a figure truer, what could change it most first. */
public final class RecordNextJson {
    /** A longer list is read by nobody. */
    private static final int MOST = 5;

    private RecordNextJson() {}

    /** The open fields of a figure, at most five, each with its part of the figure where that is known. */
    public static ArrayNode of(SystemFootprint system, Language language) {
        ArrayNode array = Json.array();
        RecordingPriority.of(system).stream().limit(MOST).forEach(next -> {
            ObjectNode one = array.addObject();
            one.put("field", next.gap().field());
            one.put("kind", next.gap().kind().id());
            one.put("now", next.gap().with().in(language));
            next.share().ifPresent(share -> one.put("share", SevenDigits.rounded(share)));
        });
        return array;
    }
}

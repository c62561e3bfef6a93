package org.scalepan.web.render;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.Sentences;
import org.scalepan.exchange.text.Json;
import org.scalepan.footprint.Bound;
import org.scalepan.quantity.SevenDigits;
import org.scalepan.uncertainty.Summary;
import org.scalepan.words.Language;

/**
 * An estimate as a JSON object: {@code median}, {@code mean}, the interval {@code low} to {@code high} at {@code coverage}, the Monte
 * Carlo standard errors of median and mean, then {@code unit} (none for a ratio) and {@code text}, the same figures as printed.
 */
public final class EstimateJson {
    private EstimateJson() {}

    public static ObjectNode of(Summary summary, String unit, String text) {
        return numbers(summary).put("unit", unit).put("text", text);
    }

    /** A footprint in the units of the sentences' comparison basis. */
    public static ObjectNode footprint(Summary summary, Sentences sentences) {
        return of(summary, sentences.unitField(), sentences.footprint(summary));
    }

    /** A ratio that may be a bound: then the text says so. */
    public static ObjectNode ratio(Summary summary, Bound bound, Language language) {
        return numbers(summary).put("text", Sentences.ratio(summary, bound, language));
    }

    /** A ratio that may be a bound, with the field that says whether it is. */
    public static ObjectNode bounded(Summary summary, Bound bound, Language language) {
        return ratio(summary, bound, language).put("bound", bound.id());
    }

    /** A footprint that may be a bound. */
    public static ObjectNode footprint(Summary summary, Sentences sentences, Bound bound) {
        return of(summary, sentences.unitField(), sentences.footprint(summary, bound));
    }

    /** Whether there is a figure, the figure, and whether it is a bound. */
    public static void state(ObjectNode node, Estimate estimate, Sentences sentences) {
        node.put("status", estimate.summary().isPresent() ? "ok" : "no-evidence");
        node.put("bound", estimate.bound().id());
        intervalOf(node, estimate);
        estimate.summary().ifPresent(summary -> node.set("footprint", footprint(summary, sentences, estimate.bound())));
    }

    /** What the interval speaks of, where there is one. */
    public static void intervalOf(ObjectNode node, Estimate estimate) {
        Json.put(node, "interval_of", estimate.intervalOf());
    }

    private static ObjectNode numbers(Summary summary) {
        ObjectNode node = Json.object();
        node.put("median", SevenDigits.rounded(summary.median()));
        node.put("mean", SevenDigits.rounded(summary.mean()));
        node.put("low", SevenDigits.rounded(summary.low()));
        node.put("high", SevenDigits.rounded(summary.high()));
        node.put("coverage", summary.coverage());
        node.put("median_standard_error", SevenDigits.rounded(summary.medianStandardError()));
        node.put("mean_standard_error", SevenDigits.rounded(summary.meanStandardError()));
        return node;
    }
}

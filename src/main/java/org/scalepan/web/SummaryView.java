package org.scalepan.web;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.scalepan.uncertainty.Summary;

/** Shows a summary of draws: median, mean, interval, and how far Monte Carlo error reaches. */
final class SummaryView {
    private SummaryView() {}

    static ObjectNode json(Summary summary) {
        ObjectNode node = Json.object();
        node.put("median", Numbers.rounded(summary.median()));
        node.put("mean", Numbers.rounded(summary.mean()));
        node.put("low", Numbers.rounded(summary.low()));
        node.put("high", Numbers.rounded(summary.high()));
        node.put("coverage", summary.coverage());
        node.put("median_standard_error", Numbers.rounded(summary.medianStandardError()));
        node.put("mean_standard_error", Numbers.rounded(summary.meanStandardError()));
        return node;
    }
}

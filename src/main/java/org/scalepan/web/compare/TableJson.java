package org.scalepan.web.compare;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.Optional;
import org.scalepan.ask.OtherEvidence;
import org.scalepan.ask.PublishedEstimate;
import org.scalepan.ask.Statistic;
import org.scalepan.ask.compare.EstimateTable;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Library;
import org.scalepan.quantity.SevenDigits;
import org.scalepan.web.render.Envelope;
import org.scalepan.web.render.EstimateJson;
import org.scalepan.web.render.InsteadAddress;
import org.scalepan.web.render.ModelledEstimateView;
import org.scalepan.web.render.PublishedEstimateView;

/** A table of estimates as JSON: an object for each row. */
final class TableJson {
    private TableJson() {}

    static ObjectNode tree(Library library, EstimateTable table, String path, Map<String, Object> question) {
        ObjectNode node = Envelope.open(library, path, question);
        ArrayNode rows = node.putArray("rows");
        table.rows().forEach(row -> rows.add(row(row, table, known(library, row, path, question))));
        Envelope.close(node, table.grounds(library));
        return node;
    }

    /** What is known where there is no figure: by numbers that nobody has seen, or by the other kind of evidence. */
    private static Optional<ObjectNode> known(
            Library library, EstimateTable.QuotedRow row, String path, Map<String, Object> question) {
        Optional<String> unseen = row.estimate() instanceof PublishedEstimate published
                ? PublishedEstimateView.unseen(library, published, path, question)
                : Optional.empty();
        return unseen.map(PublishedEstimateView::unseenFigure)
                .or(() -> ModelledEstimateView.known(
                        library, OtherEvidence.of(library, row.estimate(), row.basis()), path, question));
    }

    private static ObjectNode row(EstimateTable.QuotedRow row, EstimateTable table, Optional<ObjectNode> known) {
        ObjectNode node = Json.object();
        node.put("product", row.estimate().product().id());
        node.put("form", row.estimate().form());
        node.put("indicator", row.basis().indicator().id());
        node.put("unit", row.basis().indicator().unit());
        node.put("per", row.basis().per().id());
        node.put("boundary", row.basis().boundary().id());
        for (Statistic statistic : table.statistics()) {
            table.number(row, statistic).ifPresent(value -> {
                if (statistic.isCount()) {
                    node.put(statistic.id(), (int) value);
                } else {
                    node.put(statistic.id(), SevenDigits.rounded(value));
                }
            });
        }
        if (!row.lowestGrade().isEmpty()) {
            node.put("lowest_grade", row.lowestGrade());
        }
        Json.put(node, "region_used", row.estimate().regionUsed());
        node.put("status", row.status());
        row.none().ifPresent(none -> {
            node.put("reason", none.code().id());
            node.put("reason_text", none.words());
            none.instead().ifPresent(other -> node.put("ask_instead", InsteadAddress.of(other)));
        });
        known.ifPresent(question -> node.set("known_instead", question));
        node.put("bound", row.estimate().bound().id());
        EstimateJson.intervalOf(node, row.estimate());
        node.set("sources", Json.texts(row.sourceIds()));
        return node;
    }
}

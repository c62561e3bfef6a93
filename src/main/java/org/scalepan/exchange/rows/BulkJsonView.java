package org.scalepan.exchange.rows;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.scalepan.ask.DisplacedUseFigure;
import org.scalepan.ask.SystemEstimate;
import org.scalepan.exchange.text.FieldErrorJson;
import org.scalepan.exchange.text.Json;
import org.scalepan.production.Gap;
import org.scalepan.production.Scope;
import org.scalepan.quantity.SevenDigits;
import org.scalepan.words.Language;

/** One JSON object per line for each row received. */
public final class BulkJsonView implements BulkView {
    private final BulkQuestion question;

    public BulkJsonView(BulkQuestion question) {
        this.question = question;
    }

    @Override
    public String head() {
        return "";
    }

    @Override
    public String lines(List<BulkRow> rows) {
        StringBuilder lines = new StringBuilder();
        rows.forEach(row -> lines.append(node(row)).append('\n'));
        return lines.toString();
    }

    private ObjectNode node(BulkRow row) {
        ObjectNode node = Json.object();
        node.put("row", row.number());
        fill(node, row);
        return node;
    }

    /** Writes an answer into an object, behind whatever names its row. */
    public void fill(ObjectNode node, BulkRow row) {
        if (row instanceof BulkRow.Computed computed) {
            computed(node, computed);
        } else if (row instanceof BulkRow.RejectedRow wrong) {
            wrong.name().ifPresent(name -> node.put("name", name));
            node.put("status", "wrong");
            node.set("errors", FieldErrorJson.of(wrong.errors()));
        }
    }

    private void computed(ObjectNode node, BulkRow.Computed row) {
        node.put("name", row.inventory().name());
        node.put("product", row.inventory().output().product().id());
        node.put("form", row.inventory().output().form());
        node.put("status", row.status());
        ArrayNode footprints = node.putArray("footprints");
        for (int i = 0; i < row.estimates().size(); i++) {
            ObjectNode footprint = footprint(row.estimates().get(i));
            if (question.detailed()) {
                row.estimates()
                        .get(i)
                        .system()
                        .ifPresent(system -> footprint.set("record_next", RecordNextJson.of(system, Language.ENGLISH)));
            }
            row.displacedUse().get(i).ifPresent(second -> footprint.set("with_displaced_use", displaced(second)));
            footprints.add(footprint);
        }
        node.set(
                "gaps",
                Json.texts(row.inventory().gaps(false).stream()
                        .map(Gap::field)
                        .distinct()
                        .toList()));
        ArrayNode remarks = node.putArray("remarks");
        row.inventory()
                .remarks()
                .forEach(
                        remark -> remarks.addObject().put("code", remark.code()).put("text", remark.text()));
    }

    private static ObjectNode ruled(Scope scope) {
        ObjectNode node = Json.object();
        node.put("indicator", scope.indicator().id());
        node.put("per", scope.per().id());
        node.put("boundary", scope.boundary().id());
        if (scope.indicator().isWarming()) {
            node.put("gwp", scope.gwp().id());
        }
        node.put("unit", BulkRow.unit(scope));
        return node;
    }

    private ObjectNode footprint(SystemEstimate estimate) {
        ObjectNode node = ruled(estimate.scope());
        figures(node, estimate);
        if (estimate.missing().isEmpty()) {
            node.put("bound", estimate.bound().id());
        }
        Json.put(node, "interval_of", estimate.intervalOf());
        Json.put(node, "reason", estimate.missing());
        return node;
    }

    private ObjectNode displaced(DisplacedUseFigure second) {
        ObjectNode node = Json.object();
        node.set("ingredients", Json.texts(second.ingredients()));
        node.put("status", second.estimate().isPresent() ? "ok" : "missing");
        second.estimate().ifPresent(estimate -> {
            figures(node, estimate);
            node.put("bound", estimate.bound().id());
        });
        node.set("missing", Json.texts(second.missing(), Language.ENGLISH));
        return node;
    }

    private void figures(ObjectNode node, SystemEstimate estimate) {
        BulkRow.figure(estimate, coverage()).ifPresent(numbers -> {
            node.put("value", SevenDigits.rounded(numbers[0]));
            node.put("low", SevenDigits.rounded(numbers[1]));
            node.put("high", SevenDigits.rounded(numbers[2]));
        });
    }

    /** What part of the draws an interval holds. */
    public double coverage() {
        return question.sampling().coverage();
    }
}

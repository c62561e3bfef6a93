package org.scalepan.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.Writer;
import org.scalepan.ask.SystemPlan;
import org.scalepan.ask.SystemQuote;
import org.scalepan.production.FirstOrder;
import org.scalepan.production.Gap;
import org.scalepan.production.Scope;

/** One JSON object a line for each row sent. */
final class BulkJsonView implements BulkView {
    private final BulkQuestion question;
    private final Writer out;

    BulkJsonView(BulkQuestion question, Writer out) {
        this.question = question;
        this.out = out;
    }

    @Override
    public void write(BulkRow row) throws IOException {
        ObjectNode node = Json.object();
        node.put("row", row.number());
        if (row instanceof BulkRow.Computed computed) {
            computed(node, computed);
        } else if (row instanceof BulkRow.Alike alike) {
            alike(node, alike);
        } else if (row instanceof BulkRow.Wrong wrong) {
            wrong.name().ifPresent(name -> node.put("name", name));
            node.put("status", "wrong");
            node.set("errors", ProblemView.errors(wrong.flaws()));
        }
        out.write(node.toString());
        out.write('\n');
    }

    private void computed(ObjectNode node, BulkRow.Computed row) {
        node.put("name", row.inventory().name());
        node.put("product", row.inventory().output().product().id());
        node.put("form", row.inventory().output().form());
        node.put("status", row.status());
        ArrayNode footprints = node.putArray("footprints");
        row.quotes().forEach(quote -> footprints.add(footprint(quote)));
        node.set(
                "gaps",
                Json.texts(row.inventory().gaps().stream()
                        .map(Gap::field)
                        .distinct()
                        .toList()));
        ArrayNode remarks = node.putArray("remarks");
        row.inventory()
                .remarks()
                .forEach(
                        remark -> remarks.addObject().put("code", remark.code()).put("text", remark.text()));
    }

    private static void alike(ObjectNode node, BulkRow.Alike row) {
        SystemPlan plan = row.plan().system();
        node.put("name", row.name());
        node.put("product", plan.product());
        node.put("form", plan.form());
        node.put("status", BulkRow.status(plan));
        ArrayNode footprints = node.putArray("footprints");
        for (SystemPlan.Indicated indicated : plan.indicated()) {
            ObjectNode footprint = ruled(indicated.scope());
            if (indicated.missing().isEmpty()) {
                figures(
                        footprint,
                        indicated.value(plan.plan(), row.places()),
                        indicated.low(plan.plan(), row.places()),
                        indicated.high(plan.plan(), row.places()));
            }
            Json.put(footprint, "reason", indicated.missing());
            footprints.add(footprint);
        }
        node.set("gaps", Json.texts(plan.gaps()));
        ArrayNode remarks = node.putArray("remarks");
        plan.remarks()
                .forEach(remark -> remarks.addObject()
                        .put("code", remark.code())
                        .put("text", remark.text(plan.plan(), row.places())));
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

    private ObjectNode footprint(SystemQuote quote) {
        ObjectNode node = ruled(quote.scope());
        if (quote.summary().isPresent()) {
            var summary = quote.summary().get();
            figures(node, summary.median(), summary.low(), summary.high());
        } else if (quote.firstOrder().isPresent()) {
            FirstOrder first = quote.firstOrder().get();
            double coverage = question.sampling().coverage();
            figures(node, first.value(), first.low(coverage), first.high(coverage));
        }
        Json.put(node, "reason", quote.missing());
        return node;
    }

    private static void figures(ObjectNode node, double value, double low, double high) {
        node.put("value", Numbers.rounded(value));
        node.put("low", Numbers.rounded(low));
        node.put("high", Numbers.rounded(high));
    }

    @Override
    public void flush() throws IOException {
        out.flush();
    }
}

package org.scalepan.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.Writer;
import org.scalepan.ask.SystemQuote;
import org.scalepan.production.FirstOrder;
import org.scalepan.production.Gap;

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

    private ObjectNode footprint(SystemQuote quote) {
        ObjectNode node = Json.object();
        node.put("indicator", quote.scope().indicator().id());
        node.put("per", quote.scope().per().id());
        node.put("boundary", quote.scope().boundary());
        if (quote.scope().indicator().isWarming()) {
            node.put("gwp", quote.scope().gwp().id());
        }
        node.put(
                "unit",
                quote.scope().indicator().unit() + " per " + quote.scope().per().words());
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

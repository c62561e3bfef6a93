package org.scalepan.web;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.scalepan.ask.SystemPlan;
import org.scalepan.ask.SystemPlan.Indicated;
import org.scalepan.quantity.Plan;

/** A row of CSV as a plan leaves it: all cells but its number, its name and its figures are the same for every row. */
final class CsvPattern {
    private final SystemPlan system;
    /** What stands before the figures of each indicator, and last what stands behind all. */
    private final List<byte[]> parts = new ArrayList<>();

    CsvPattern(SystemPlan system, Csv.Style style) {
        this.system = system;
        StringBuilder cells = new StringBuilder();
        put(cells, style, system.product());
        put(cells, style, system.form());
        put(cells, style, system.indicated().get(0).scope().boundary().id());
        put(cells, style, BulkRow.status(system));
        for (Indicated indicated : system.indicated()) {
            if (indicated.missing().isPresent()) {
                put(cells, style, "");
                put(cells, style, "");
                put(cells, style, "");
            } else {
                parts.add(bytes(cells));
                cells.setLength(0);
            }
            put(cells, style, BulkRow.unit(indicated.scope()));
        }
        put(cells, style, String.join(" ", system.gaps()));
        put(
                cells,
                style,
                system.remarks().stream().map(SystemPlan.Told::code).distinct().collect(Collectors.joining(" ")));
        put(cells, style, "");
        put(cells, style, BulkRow.missing(system));
        parts.add(bytes(cells.append("\r\n")));
    }

    private static void put(StringBuilder cells, Csv.Style style, String text) {
        cells.append(style.delimiter()).append(style.cell(text));
    }

    private static byte[] bytes(StringBuilder cells) {
        return cells.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** Writes what follows the name. */
    void write(double[] places, Csv.Style style, ByteLines out) {
        Plan plan = system.plan();
        int part = 0;
        for (int i = 0; i < system.indicated().size(); i++) {
            Indicated indicated = system.indicated().get(i);
            if (indicated.missing().isEmpty()) {
                out.bytes(parts.get(part++));
                out.character(style.delimiter());
                out.number(indicated.value(plan, places), style.decimal());
                out.character(style.delimiter());
                out.number(indicated.low(plan, places), style.decimal());
                out.character(style.delimiter());
                out.number(indicated.high(plan, places), style.decimal());
            }
        }
        out.bytes(parts.get(part));
    }
}

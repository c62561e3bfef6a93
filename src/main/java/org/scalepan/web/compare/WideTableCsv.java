package org.scalepan.web.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.Statistic;
import org.scalepan.ask.compare.EstimateTable;
import org.scalepan.exchange.text.Csv;
import org.scalepan.web.http.Answer;

/**
 * A table of estimates as CSV with one line for each product and one column for each statistic of each indicator and unit. The unit is
 * part of the column's name, as in {@code ghg_median_kg_co2e_per_kg_protein}, because parts of such a table are pasted elsewhere, where a
 * number needs its unit. Where ends of intervals are asked for, what each speaks of comes behind the numbers, and last what
 * every number needs beside it: its boundary, status, grade and sources.
 */
final class WideTableCsv {
    private WideTableCsv() {}

    static Answer of(EstimateTable table, Csv.CsvStyle style) {
        List<String> header = new ArrayList<>(List.of("product", "form"));
        table.bases().forEach(basis -> table.statistics().forEach(statistic -> header.add(name(basis, statistic))));
        boolean intervals =
                table.statistics().contains(Statistic.LOW) || table.statistics().contains(Statistic.HIGH);
        if (intervals) {
            table.bases().forEach(basis -> header.add(spelt(basis, "interval_of")));
        }
        for (String what : List.of("boundary", "status", "lowest_grade", "sources")) {
            table.bases().forEach(basis -> header.add(spelt(basis, what)));
        }
        Csv csv = new Csv(style, header);
        for (int i = 0; i < table.products().size(); i++) {
            Csv.CsvLine line = csv.line();
            line.text(table.products().get(i).product().id())
                    .text(table.products().get(i).form());
            table.rowsOf(i)
                    .forEach(row -> table.statistics().forEach(statistic -> line.number(table.number(row, statistic))));
            if (intervals) {
                table.rowsOf(i)
                        .forEach(row -> line.text(row.estimate().intervalOf().orElse("")));
            }
            List<EstimateTable.QuotedRow> rows = table.rowsOf(i);
            rows.forEach(row -> line.text(row.basis().boundary().id()));
            rows.forEach(row -> line.text(row.status()));
            rows.forEach(row -> line.text(row.lowestGrade()));
            rows.forEach(row -> line.text(row.sources()));
            line.end();
        }
        return Answer.of(Answer.CSV, csv.text());
    }

    private static String name(ComparisonBasis basis, Statistic statistic) {
        return spelt(
                basis,
                statistic.isCount()
                        ? statistic.id()
                        : statistic.id() + "_" + basis.indicator().unit());
    }

    private static String spelt(ComparisonBasis basis, String what) {
        return (basis.indicator().id() + "_" + what + "_per_" + basis.per().id())
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "_");
    }
}

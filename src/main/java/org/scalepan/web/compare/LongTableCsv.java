package org.scalepan.web.compare;

import java.util.ArrayList;
import java.util.List;
import org.scalepan.ask.NoFigure;
import org.scalepan.ask.Statistic;
import org.scalepan.ask.compare.EstimateTable;
import org.scalepan.exchange.text.Csv;
import org.scalepan.web.http.Answer;
import org.scalepan.web.render.InsteadAddress;

/** A table of estimates as CSV with one line for each product, indicator and unit. */
final class LongTableCsv {
    private LongTableCsv() {}

    static Answer of(EstimateTable table, Csv.CsvStyle style) {
        List<String> header = new ArrayList<>(List.of("product", "form", "indicator", "unit", "per", "boundary"));
        table.statistics().forEach(statistic -> header.add(statistic.id()));
        header.addAll(List.of(
                "lowest_grade", "region_used", "status", "sources", "bound", "interval_of", "reason", "ask_instead"));
        Csv csv = new Csv(style, header);
        for (EstimateTable.QuotedRow row : table.rows()) {
            Csv.CsvLine line = csv.line();
            line.text(row.estimate().product().id())
                    .text(row.estimate().form())
                    .text(row.basis().indicator().id())
                    .text(row.basis().indicator().unit())
                    .text(row.basis().per().id())
                    .text(row.basis().boundary().id());
            for (Statistic statistic : table.statistics()) {
                line.number(table.number(row, statistic));
            }
            line.text(row.lowestGrade())
                    .text(row.regionUsed())
                    .text(row.status())
                    .text(row.sources())
                    .text(row.estimate().bound().id())
                    .text(row.estimate().intervalOf().orElse(""))
                    .text(row.none().map(none -> none.code().id()).orElse(""))
                    .text(row.none()
                            .flatMap(NoFigure::instead)
                            .map(InsteadAddress::of)
                            .orElse(""))
                    .end();
        }
        return Answer.of(Answer.CSV, csv.text());
    }
}

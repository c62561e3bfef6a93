package org.scalepan.web.compare;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.web.http.Answer;
import org.scalepan.web.render.FigureSheets;
import org.scalepan.web.render.Workbook;

/** A comparison as a workbook: the reference first, then each product, with the results behind them. */
final class ComparisonWorkbook {
    private ComparisonWorkbook() {}

    static Answer of(ObjectNode answer, ComparisonBasis basis) {
        FigureSheets figures = new FigureSheets();
        figures.add(answer.path("reference"), basis);
        answer.path("items").forEach(item -> figures.add(item, basis));
        return figures.into(new Workbook(answer)).answer("scalepan-comparison.xlsx");
    }
}

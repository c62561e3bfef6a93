package org.scalepan.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.Ruler;

/**
 * One row for each product, one column for each statistic of each indicator and unit. The unit stands in the name of the column,
 * as in {@code ghg_median_kg_co2e_per_kg_protein}, because such a table is cut up and pasted, and a number without its unit is lost.
 */
final class WideTable {
    private WideTable() {}

    /** @param rows product by product, each under every ruler in their order */
    static Answer csv(
            List<ProductForm> products,
            List<Ruler> rulers,
            List<TableRoutes.Row> rows,
            List<String> stats,
            Csv.Style style) {
        List<String> header = new ArrayList<>(List.of("product", "form"));
        rulers.forEach(ruler -> stats.forEach(stat -> header.add(name(ruler, stat))));
        Csv csv = new Csv(style, header);
        for (int i = 0; i < products.size(); i++) {
            Csv.Line line = csv.line();
            line.text(products.get(i).product().id()).text(products.get(i).form());
            rows.subList(i * rulers.size(), (i + 1) * rulers.size())
                    .forEach(row -> stats.forEach(stat -> row.write(stat, line)));
            line.end();
        }
        return csv.answer();
    }

    private static String name(Ruler ruler, String stat) {
        boolean counted = stat.equals("studies") || stat.equals("results");
        String unit = counted ? "" : "_" + ruler.indicator().unit();
        return (ruler.indicator().id() + "_" + stat + unit + "_per_"
                        + ruler.per().id())
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "_");
    }
}

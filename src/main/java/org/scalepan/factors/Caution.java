package org.scalepan.factors;

import java.util.List;
import org.scalepan.factors.table.Row;

/**
 * The usual caution where a figure could lead to harm: allergy, feed and food law, metals, health.
 *
 * @param groups product groups it concerns; empty means all
 * @param products products it concerns, within those groups; empty means all of them
 * @param markets markets whose law it is about; empty means everywhere
 */
public record Caution(
        String id,
        List<String> groups,
        List<String> products,
        List<String> markets,
        String topic,
        String text,
        List<String> sources,
        Grade check) {
    public Caution {
        groups = List.copyOf(groups);
        products = List.copyOf(products);
        markets = List.copyOf(markets);
        sources = List.copyOf(sources);
    }

    /** True when the caution concerns a product. */
    public boolean concerns(Product product) {
        return (groups.isEmpty() || groups.contains(product.group()))
                && (products.isEmpty() || products.contains(product.id()));
    }

    /** True when the caution is to be shown to somebody in a market: it is about that market, or about no market. */
    public boolean holdsIn(String market) {
        return markets.isEmpty() || markets.contains(market);
    }

    static Caution of(Row row) {
        return new Caution(
                row.text("id"),
                row.list("applies_to_groups"),
                row.list("applies_to_products"),
                row.list("markets"),
                row.text("topic"),
                row.text("text"),
                row.list("source"),
                Grade.of(row.text("check")).orElseThrow());
    }
}

package org.scalepan.web.render;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scalepan.exchange.text.Csv;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.PublishedResult;

/** Renders a published row as in the library, neither converted nor rounded. */
public final class ResultView {
    public static final List<String> COLUMNS = List.of(
            "id",
            "finding",
            "product",
            "form",
            "indicator",
            "value",
            "statistic",
            "spread",
            "low",
            "high",
            "p5",
            "p10",
            "p50",
            "p90",
            "p95",
            "unit",
            "per",
            "published_basis",
            "boundary",
            "luc",
            "gwp",
            "energy_kind",
            "feed_basis",
            "region",
            "substrate",
            "allocation",
            "scale",
            "data_year",
            "farms",
            "source",
            "study",
            "locator",
            "check",
            "published_as",
            "note");

    private ResultView() {}

    public static ObjectNode json(PublishedResult result) {
        ObjectNode node = Json.object();
        node.put("id", result.id());
        node.put("finding", result.finding());
        node.put("product", result.product());
        node.put("form", result.form());
        node.put("indicator", result.indicator());
        RowView.printed(node, result);
        node.put("per", result.per());
        node.put("published_basis", result.publishedBasis());
        node.put("boundary", result.boundary().id());
        node.put("luc", result.luc());
        Json.put(node, "gwp", result.gwp());
        Json.put(node, "energy_kind", result.energyKind());
        Json.put(node, "feed_basis", result.feedBasis());
        node.put("region", result.region());
        Json.put(node, "substrate", result.substrate());
        Json.put(node, "allocation", result.allocation());
        Json.put(node, "scale", result.scale());
        Json.put(node, "data_year", result.dataYear());
        Json.put(node, "farms", result.farms());
        node.put("source", result.cited().source());
        Json.put(node, "study", result.restates());
        node.put("locator", result.cited().locator());
        node.put("check", result.cited().check().id());
        Json.put(node, "published_as", result.publishedAs());
        Json.put(node, "note", result.note());
        return node;
    }

    /** One CSV line in the order of {@link #COLUMNS}. */
    public static void csv(Csv csv, PublishedResult result) {
        Csv.CsvLine line = csv.line();
        line.text(result.id()).text(result.finding()).text(result.product()).text(result.form());
        line.text(result.indicator());
        number(line, result.printed().value());
        text(line, result.statistic());
        line.text(result.printed().kind().id());
        number(line, result.printed().low());
        number(line, result.printed().high());
        Map<Double, Double> percentiles = result.printed().percentiles();
        for (double probability : new double[] {0.05, 0.10, 0.50, 0.90, 0.95}) {
            Double value = percentiles.get(probability);
            number(line, value == null ? OptionalDouble.empty() : OptionalDouble.of(value));
        }
        line.text(result.unit()).text(result.per()).text(result.publishedBasis());
        line.text(result.boundary().id()).text(result.luc());
        text(line, result.gwp());
        text(line, result.energyKind());
        text(line, result.feedBasis());
        line.text(result.region());
        text(line, result.substrate());
        text(line, result.allocation());
        text(line, result.scale());
        text(line, result.dataYear().stream().mapToObj(Integer::toString).findFirst());
        text(line, result.farms().stream().mapToObj(Integer::toString).findFirst());
        line.text(result.cited().source());
        text(line, result.restates());
        line.text(result.cited().locator()).text(result.cited().check().id());
        text(line, result.publishedAs());
        text(line, result.note());
        line.end();
    }

    private static void text(Csv.CsvLine line, Optional<String> text) {
        text.ifPresentOrElse(line::text, () -> line.empty(1));
    }

    private static void number(Csv.CsvLine line, OptionalDouble number) {
        number.ifPresentOrElse(line::published, () -> line.empty(1));
    }
}

package org.scalepan.ask.nutrition;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.factors.table.Row;

/**
 * What people absorbed of the iron or zinc of a food in a trial, as printed. It holds for the meal and the people of that trial, so that
 * it is shown beside the contents of the food and never multiplied with them.
 *
 * @param food the food as the trial names it; a reference meal without the food where {@code reference} is true
 * @param form the form eaten; empty for a reference meal
 * @param quantity absorption, absorption-of-added-salt, relative-absorption or absorbed-per-meal
 * @param value in {@code unit}; empty where only limits are printed
 * @param unit fraction or mg
 * @param meal what the number is a part of, and the meal
 * @param people who ate it, and what else must be known
 */
public record AbsorptionTrial(
        String row,
        String food,
        Optional<String> form,
        boolean reference,
        String nutrient,
        String quantity,
        OptionalDouble value,
        OptionalDouble low,
        OptionalDouble high,
        String unit,
        String meal,
        String people,
        String source,
        Grade check) {

    /** The results in use of trials in which people ate the product, in whatever form, with the reference meals of these trials. */
    static List<AbsorptionTrial> of(Library library, Product product, Grade lowest) {
        List<Row> used = library.table("absorption").rows().stream()
                .filter(row -> row.text("use").equals("default"))
                .filter(row -> Grade.of(row.text("check")).orElseThrow().isAtLeast(lowest))
                .toList();
        Set<String> sources = used.stream()
                .filter(row -> row.cell("product").equals(product.id()))
                .map(row -> row.text("source"))
                .collect(Collectors.toUnmodifiableSet());
        return used.stream()
                .filter(row -> row.cell("product").equals(product.id())
                        || (row.cell("product").isEmpty() && sources.contains(row.text("source"))))
                .map(AbsorptionTrial::read)
                .toList();
    }

    private static AbsorptionTrial read(Row row) {
        return new AbsorptionTrial(
                row.text("id"),
                row.text("food"),
                row.optional("form"),
                row.optional("product").isEmpty(),
                row.text("nutrient"),
                row.text("quantity"),
                row.number("value"),
                row.number("low"),
                row.number("high"),
                row.text("unit"),
                row.text("basis"),
                row.cell("note"),
                row.text("source"),
                Grade.of(row.text("check")).orElseThrow());
    }
}

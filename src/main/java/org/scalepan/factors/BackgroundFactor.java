package org.scalepan.factors;

import java.util.Optional;
import java.util.OptionalInt;
import org.scalepan.factors.table.Row;
import org.scalepan.uncertainty.PublishedSpread;

/**
 * A factor about something that goes into a farm: a feed ingredient, an energy carrier, a way of transport, a material, a way of
 * processing, or about how a species is reared.
 *
 * @param subject what it is about, such as {@code wheat-bran} or {@code diesel}
 * @param quantity the quantity given, such as {@code ghg} or {@code lower-heating-value}
 * @param per what the number is counted against, in the words of its table
 * @param boundary system boundary, for factors that have one
 * @param biogenic true for CO2 from biomass, which is shown and never counted
 * @param use {@code default} for the row that is taken unless a question says otherwise
 */
public record BackgroundFactor(
        String id,
        String subject,
        String quantity,
        PublishedSpread printed,
        String unit,
        String per,
        Optional<String> region,
        OptionalInt year,
        Optional<String> gwp,
        Optional<String> luc,
        Optional<String> allocation,
        Optional<Boundary> boundary,
        boolean biogenic,
        String use,
        Cited cited,
        Optional<String> note) {

    static BackgroundFactor of(Row row, String subject, String quantity) {
        return new BackgroundFactor(
                row.text("id"),
                row.text(subject),
                row.text(quantity),
                Printed.spread(row),
                row.text("unit"),
                row.optional("per").orElse(""),
                row.optional("region"),
                row.integer("year"),
                row.optional("gwp"),
                row.optional("luc"),
                row.optional("allocation"),
                row.optional("boundary").flatMap(Boundary::of),
                row.optional("biogenic").filter("yes"::equals).isPresent(),
                row.optional("use").orElse("default"),
                Cited.of(row),
                row.optional("note"));
    }

    /** True when burdens of trade and processing are counted too, which a farm that feeds it does not cause. */
    public boolean endsAtRetail() {
        return boundary.filter(Boundary.RETAIL::equals).isPresent();
    }

    /** True for the row that is used unless a question says otherwise. */
    public boolean isDefault() {
        return use.equals("default");
    }
}

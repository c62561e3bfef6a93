package org.scalepan.production.insects;

import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.CompositionRow;
import org.scalepan.factors.Library;
import org.scalepan.factors.PublishedResult;
import org.scalepan.factors.table.Row;
import org.scalepan.production.Factor;
import org.scalepan.uncertainty.LogUniform;
import org.scalepan.uncertainty.SpreadReading;
import org.scalepan.words.Figure;
import org.scalepan.words.Message;

/** The library's factors of gases and composition of insects, read once. */
final class InsectFactors {
    private static final Set<String> FRACTIONS = Set.of("protein", "dry-matter", "fat");

    private final Map<String, Gases> gases = new HashMap<>();
    private final Map<LarvalContent, Factor> contents = new HashMap<>();
    private final Optional<Range> range;
    private final Map<String, LeastFeed> leastFeed = new HashMap<>();
    private final Map<String, EnergyOfNutrient> energies = new HashMap<>();

    /**
     * The least dry feed that was published for a species, in kg per kg live.
     *
     * @param row the row's id
     */
    record LeastFeed(double kilograms, String row, String source) {}

    /**
     * Energy of a nutrient by the factors of food labels.
     *
     * @param megajoules per kg
     * @param row the row's id
     */
    record EnergyOfNutrient(double megajoules, String row) {}

    /**
     * The gases of a species as they were measured.
     *
     * @param factor kg CO2e per kg gained, live or dry as the result says
     */
    record Gases(PublishedResult result, Factor factor) {}

    /**
     * Between the lowest and the highest insect measured, for a species that has not been measured.
     *
     * @param factor kg CO2e per kg gained, live
     * @param message the range in words
     */
    record Range(List<PublishedResult> results, Factor factor, Message message) {
        Range {
            results = List.copyOf(results);
        }

        String[] rows() {
            return results.stream().map(PublishedResult::id).toArray(String[]::new);
        }
    }

    private record LarvalContent(String product, String quantity) {}

    private InsectFactors(Library library) {
        List<PublishedResult> measured = library.results().stream()
                .filter(result -> result.indicator().equals("ghg")
                        && result.boundary() == Boundary.ANIMAL
                        && Optional.ofNullable(library.products().get(result.product()))
                                .filter(product -> product.group().equals("insect"))
                                .isPresent())
                .toList();
        measured.stream()
                .sorted(Comparator.comparing(result -> !result.per().equals("kg-live")))
                .forEach(result -> gases.putIfAbsent(result.product(), new Gases(result, factor(library, result))));
        this.range = range(measured.stream()
                .filter(result -> result.per().equals("kg-live")
                        && result.printed().value().isPresent())
                .toList());
        library.composition().stream()
                .filter(row -> row.form().equals("fresh")
                        && row.per().equals("kg-edible")
                        && row.use() == CompositionRow.RowUse.DEFAULT
                        && FRACTIONS.contains(row.quantity()))
                .forEach(row -> contents.computeIfAbsent(
                        new LarvalContent(row.product(), row.quantity()),
                        unused -> new Factor(
                                row.id(),
                                SpreadReading.readFraction(
                                        row.printed(), library.spreadDefaults().composition()))));
        readLeastFeed(library);
        readEnergies(library);
    }

    private void readLeastFeed(Library library) {
        for (Row row : library.table("feed_conversion").rows()) {
            OptionalDouble low = row.number("low").isPresent() ? row.number("low") : row.number("value");
            if (row.text("feed_basis").equals("dry-matter")
                    && row.text("per").equals("kg-live")
                    && !row.text("check").equals("memory")
                    && low.isPresent()) {
                leastFeed.merge(
                        row.text("product"),
                        new LeastFeed(low.getAsDouble(), row.text("id"), row.text("source")),
                        (one, other) -> other.kilograms() < one.kilograms() ? other : one);
            }
        }
    }

    private void readEnergies(Library library) {
        for (Row row : library.table("food_energy_factors").rows()) {
            if (row.text("set").equals("general") && row.text("unit").equals("kJ/g")) {
                // kJ/g is MJ/kg.
                energies.put(
                        row.text("nutrient"),
                        new EnergyOfNutrient(row.number("value").orElseThrow(), row.text("id")));
            }
        }
    }

    /** The least dry feed published for a species. */
    Optional<LeastFeed> leastFeed(String product) {
        return Optional.ofNullable(leastFeed.get(product));
    }

    /** The energy of a nutrient, such as protein or fat. */
    Optional<EnergyOfNutrient> energy(String nutrient) {
        return Optional.ofNullable(energies.get(nutrient));
    }

    static InsectFactors of(Library library) {
        return library.view(InsectFactors.class, InsectFactors::new);
    }

    private static Factor factor(Library library, PublishedResult result) {
        return new Factor(
                result.finding(),
                SpreadReading.read(result.printed(), library.spreadDefaults().result()),
                Optional.of(result.id()));
    }

    private static Optional<Range> range(List<PublishedResult> results) {
        if (results.isEmpty()) {
            return Optional.empty();
        }
        DoubleSummaryStatistics values = results.stream()
                .mapToDouble(result -> result.printed().value().orElseThrow())
                .summaryStatistics();
        Message message = Message.of(
                "gap.gases-of-any-insect",
                "low",
                new Figure(String.format(Locale.ROOT, "%.4f", values.getMin())),
                "high",
                new Figure(String.format(Locale.ROOT, "%.3f", values.getMax())));
        Factor factor =
                new Factor("default.insect-gases", new LogUniform(values.getMin(), values.getMax()), Optional.empty());
        return Optional.of(new Range(results, factor, message));
    }

    /** Those of a species, per kg live where they are given so. */
    Optional<Gases> gases(String product) {
        return Optional.ofNullable(gases.get(product));
    }

    /** Those of any species. */
    Range range() {
        return range.orElseThrow();
    }

    /**
     * The part of a fresh animal that is protein, fat or dry matter.
     *
     * @param quantity protein, fat or dry-matter
     */
    Optional<Factor> content(String product, String quantity) {
        return Optional.ofNullable(contents.get(new LarvalContent(product, quantity)));
    }
}

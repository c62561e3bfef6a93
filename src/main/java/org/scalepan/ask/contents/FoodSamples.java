package org.scalepan.ask.contents;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.contents.ContentCell.SideOfCell;
import org.scalepan.ask.nutrition.Basis;
import org.scalepan.ask.nutrition.Content;
import org.scalepan.ask.nutrition.MeasuredQuality;
import org.scalepan.ask.nutrition.NutritionFacts;
import org.scalepan.ask.nutrition.NutritionQuestion;
import org.scalepan.ask.nutrition.NutritionTable;
import org.scalepan.factors.CompositionRow;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.footprint.ProteinBasis;
import org.scalepan.words.Message;

/** Looks up what published samples of foods hold, on any basis. */
final class FoodSamples {
    private final Library library;
    private final ProteinBasis protein;
    private final Grade grade;

    FoodSamples(Library library, ProteinBasis protein, Grade grade) {
        this.library = library;
        this.protein = protein;
        this.grade = grade;
    }

    Library library() {
        return library;
    }

    /** The facts of a food on a basis. */
    NutritionFacts facts(ProductForm food, Basis basis) {
        return NutritionTable.of(
                        library,
                        new NutritionQuestion(
                                List.of(food),
                                basis,
                                library.defaultAminoAcidPattern(),
                                protein,
                                grade,
                                Map.of(),
                                Optional.empty()))
                .foods()
                .get(0);
    }

    /** One figure of a food on a basis. */
    SideOfCell figure(ProductForm food, Basis basis, String quantity) {
        for (NutritionFacts.NutrientFigure figure : facts(food, basis).figures()) {
            if (figure.id().equals(quantity)) {
                if (figure.content() instanceof Content.HeldContent found) {
                    return SideOfCell.of(range(found, quantity));
                }
                if (figure.content() instanceof Content.MissingContent missing) {
                    return SideOfCell.missing(missing.why());
                }
            }
        }
        return SideOfCell.missing(Message.of("content-missing.unknown"));
    }

    private SampleRange range(Content.HeldContent found, String quantity) {
        String counted = quantity.equals(NutritionFacts.CORRECTED) ? "protein" : quantity;
        List<CompositionRow> own = library.composition().stream()
                .filter(row -> found.rows().contains(row.id()) && row.quantity().equals(counted))
                .toList();
        // Energy that is computed has no rows of its own: it is as well known as the protein it is computed of.
        int samples = own.isEmpty()
                ? found.studies()
                : own.stream().mapToInt(FoodSamples::samples).sum();
        return new SampleRange(
                found.value(),
                found.range().low().orElse(found.value()),
                found.range().high().orElse(found.value()),
                samples,
                found.rows(),
                found.sources(),
                found.lowest(),
                found.caveats().stream().sorted().map(caveat -> caveat.code()).toList());
    }

    private static int samples(CompositionRow row) {
        return row.printed().low().isPresent() && row.printed().high().isPresent() ? 2 : 1;
    }

    /** The measured scores of protein quality of one kind; none where nobody measured any. */
    Optional<SampleRange> quality(ProductForm food, String kind) {
        List<MeasuredQuality> measured = facts(food, Basis.TEN_GRAMS_PROTEIN).quality().stream()
                .filter(one -> one.row().quantity().equals(kind))
                .toList();
        if (measured.isEmpty()) {
            return Optional.empty();
        }
        double[] ends = measured.stream().flatMapToDouble(FoodSamples::ends).toArray();
        List<String> rows = new ArrayList<>();
        Set<String> sources = new LinkedHashSet<>();
        measured.forEach(one -> {
            rows.add(one.row().id());
            sources.add(one.row().cited().source());
        });
        double first = ends(measured.get(0)).average().orElseThrow();
        return Optional.of(new SampleRange(
                first,
                DoubleStream.of(ends).min().orElseThrow(),
                DoubleStream.of(ends).max().orElseThrow(),
                measured.stream().mapToInt(one -> samples(one.row())).sum(),
                rows,
                sources,
                measured.get(0).row().cited().check(),
                List.of()));
    }

    private static DoubleStream ends(MeasuredQuality measured) {
        return Stream.of(
                        measured.row().printed().value(),
                        measured.row().printed().low(),
                        measured.row().printed().high())
                .filter(java.util.OptionalDouble::isPresent)
                .mapToDouble(java.util.OptionalDouble::getAsDouble)
                .map(measured::reported);
    }

    /** The forms of a food of which something is published, the one asked first. */
    List<ProductForm> forms(ProductForm asked) {
        return Stream.concat(
                        Stream.of(asked),
                        library.composition().stream()
                                .filter(row ->
                                        row.product().equals(asked.product().id()))
                                .map(row -> new ProductForm(asked.product(), row.form())))
                .distinct()
                .toList();
    }
}

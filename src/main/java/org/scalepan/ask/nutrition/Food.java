package org.scalepan.ask.nutrition;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.ask.ProductForm;
import org.scalepan.factors.CompositionRow;
import org.scalepan.factors.FoodEnergyFactor;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.footprint.ProteinBasis;
import org.scalepan.words.DisplayName;
import org.scalepan.words.Listing;
import org.scalepan.words.Message;

/**
 * A product in one form, as food: what is published of it, on any basis.
 *
 * <p>Two contents are divided by each other where both are printed per kilogram of the same thing, so that neither water nor another
 * sample comes between them; only where there is no such pair is one of them converted by the dry matter of that very form.
 */
final class Food {
    private static final List<Frame> FRAMES = List.of(Frame.EDIBLE, Frame.DRY_MATTER);

    private final Library library;
    private final ProductForm item;
    private final Grade lowest;
    private final List<CompositionRow> rows;

    /**
     * @param lowest the lowest eligible check grade
     */
    Food(Library library, ProductForm item, Grade lowest) {
        this.library = library;
        this.item = item;
        this.lowest = lowest;
        this.rows = library.composition().stream()
                .filter(row -> row.product().equals(item.product().id()))
                .toList();
    }

    /** A nutrient in as much of the food as the basis names. */
    Content on(Nutrient nutrient, Basis basis, ProteinBasis protein) {
        return switch (basis) {
            case HUNDRED_GRAMS_EDIBLE -> in(nutrient, Frame.EDIBLE).then(found -> found.times(0.1));
            case HUNDRED_GRAMS_DRY_MATTER -> in(nutrient, Frame.DRY_MATTER).then(found -> found.times(0.1));
            case TEN_GRAMS_PROTEIN -> perProtein(nutrient, protein).then(found -> found.times(10));
            case HUNDRED_KILOCALORIES -> ratio(nutrient, Nutrient.ENERGY).then(found -> found.times(100));
        };
    }

    /** Protein by the product's own nitrogen factor, on a basis. */
    Content corrected(Basis basis, ProteinBasis protein) {
        if (basis == Basis.TEN_GRAMS_PROTEIN && protein == ProteinBasis.CORRECTED) {
            return perProtein(Nutrient.PROTEIN, ProteinBasis.CRUDE)
                    .then(crude -> nitrogenFactor().then(factor -> ten(crude, factor)));
        }
        return on(Nutrient.PROTEIN, basis, protein)
                .then(crude -> nitrogenFactor().then(factor -> correct(crude, factor)));
    }

    /** On a protein basis protein is exact, on the same rows. */
    private static Content ten(Content.HeldContent crude, Content.HeldContent factor) {
        return crude.times(factor).per(factor).times(10).withoutRange();
    }

    private static Content correct(Content.HeldContent crude, Content.HeldContent factor) {
        // On a protein basis crude protein is exact, and the range is that of the factor alone.
        return crude.range().equals(Content.ContentRange.NONE)
                ? factor.times(crude).times(1 / ProteinBasis.CRUDE_FACTOR)
                : crude.times(factor).times(1 / ProteinBasis.CRUDE_FACTOR);
    }

    /** Kilograms of protein in a kilogram of food as it is eaten. */
    Content proteinAsEaten(ProteinBasis protein) {
        return in(Nutrient.PROTEIN, Frame.EDIBLE)
                .then(crude ->
                        protein == ProteinBasis.CRUDE ? crude : nitrogenFactor().then(factor -> correct(crude, factor)))
                .then(grams -> grams.times(0.001));
    }

    private Content perProtein(Nutrient nutrient, ProteinBasis protein) {
        Content perCrude = ratio(nutrient, Nutrient.PROTEIN);
        return protein == ProteinBasis.CRUDE
                ? perCrude
                : perCrude.then(found ->
                        nitrogenFactor().then(factor -> found.per(factor).times(ProteinBasis.CRUDE_FACTOR)));
    }

    private Content ratio(Nutrient nutrient, Nutrient by) {
        for (Frame frame : FRAMES) {
            Optional<Content.HeldContent> above = printed(nutrient, frame);
            Optional<Content.HeldContent> below = printed(by, frame);
            if (above.isPresent() && below.isPresent()) {
                return divided(nutrient, by, above.get(), below.get());
            }
        }
        Content last = new Content.MissingContent(missing(nutrient));
        for (Frame frame : FRAMES) {
            last = in(nutrient, frame).then(above -> in(by, frame).then(below -> divided(nutrient, by, above, below)));
            if (last instanceof Content.HeldContent) {
                return last;
            }
        }
        return last;
    }

    private Content divided(Nutrient nutrient, Nutrient by, Content.HeldContent above, Content.HeldContent below) {
        if (below.value() == 0) {
            return new Content.MissingContent(Message.of(
                    "content-missing.zero", "quantity", DisplayName.of("content-quantity." + by.id(), by.id())));
        }
        // A ratio of a row to itself is exact, whatever its spread.
        return nutrient == by ? above.per(below).withoutRange() : above.per(below);
    }

    /** A nutrient per kilogram of a frame: as printed, or converted from the other frame by the dry matter. */
    private Content in(Nutrient nutrient, Frame frame) {
        Optional<Content.HeldContent> direct = printed(nutrient, frame);
        if (direct.isPresent()) {
            return direct.get();
        }
        Optional<Content.HeldContent> other = printed(nutrient, frame.other());
        if (other.isEmpty()) {
            return new Content.MissingContent(missing(nutrient));
        }
        Optional<Content.HeldContent> dryMatter = dryMatter();
        if (dryMatter.isEmpty()) {
            return new Content.MissingContent(ofGrade(Message.of(
                    "content-missing.no-dry-matter", "frame", frame.other().message(), "food", item.name())));
        }
        Content.HeldContent carried = frame == Frame.EDIBLE
                ? other.get().times(dryMatter.get())
                : other.get().per(dryMatter.get());
        return carried.noting(Caveat.BY_DRY_MATTER);
    }

    /** A nutrient per kilogram of a frame, as printed; energy also as computed of what is printed. */
    private Optional<Content.HeldContent> printed(Nutrient nutrient, Frame frame) {
        Optional<Content.HeldContent> found = together(nutrient, frame);
        return nutrient == Nutrient.ENERGY ? found.or(() -> computedEnergy(frame)) : found;
    }

    private Optional<Content.HeldContent> together(Nutrient nutrient, Frame frame) {
        List<CompositionRow> own = rows(nutrient.id(), frame);
        if (nutrient != Nutrient.PROTEIN) {
            return PublishedContents.together(own, nutrient::perKilogram);
        }
        Optional<Content.HeldContent> protein =
                PublishedContents.together(own, row -> nutrient.perKilogram(row) * toCrude(row));
        boolean restated =
                own.stream().anyMatch(row -> row.use() == CompositionRow.RowUse.DEFAULT && toCrude(row) != 1);
        return restated ? protein.map(found -> found.noting(Caveat.CRUDE_RESTATED)) : protein;
    }

    private static double toCrude(CompositionRow row) {
        return ProteinBasis.CRUDE_FACTOR / row.nitrogenFactor().orElse(ProteinBasis.CRUDE_FACTOR);
    }

    /** Energy by the general factors (Regulation (EU) No 1169/2011, annex XIV), without carbohydrate where none is published. */
    private Optional<Content.HeldContent> computedEnergy(Frame frame) {
        Optional<Content.HeldContent> protein =
                together(Nutrient.PROTEIN, frame).flatMap(grams -> energyOf("protein", grams));
        Optional<Content.HeldContent> fat = together(Nutrient.FAT, frame).flatMap(grams -> energyOf("fat", grams));
        Optional<Content.HeldContent> carbohydrate =
                together(Nutrient.CARBOHYDRATE, frame).flatMap(grams -> energyOf("available-carbohydrate", grams));
        if (protein.isEmpty() || fat.isEmpty()) {
            return Optional.empty();
        }
        Content.HeldContent both = protein.get().plus(fat.get()).noting(Caveat.ENERGY_COMPUTED);
        return Optional.of(carbohydrate.map(both::plus).orElseGet(() -> both.noting(Caveat.WITHOUT_CARBOHYDRATE)));
    }

    private Optional<Content.HeldContent> energyOf(String nutrient, Content.HeldContent grams) {
        return library.foodEnergyFactors().stream()
                .filter(factor -> factor.set().equals(FoodEnergyFactor.GENERAL)
                        && factor.nutrient().equals(nutrient)
                        && factor.unit().equals("kcal/g")
                        && factor.cited().check().isAtLeast(lowest))
                .findFirst()
                .map(factor -> grams.times(Content.HeldContent.of(factor.value(), factor.id(), factor.cited())));
    }

    private Optional<Content.HeldContent> dryMatter() {
        return PublishedContents.together(rows("dry-matter", Frame.EDIBLE), row -> 1);
    }

    /** The nitrogen factor of this form, or else of the product in another form: drying takes no nitrogen. */
    Content nitrogenFactor() {
        List<CompositionRow> factors = rows.stream()
                .filter(this::isEligible)
                .filter(row -> row.quantity().equals("nitrogen-factor"))
                .toList();
        List<CompositionRow> ofForm =
                factors.stream().filter(row -> row.form().equals(item.form())).toList();
        return PublishedContents.together(ofForm, row -> 1)
                .or(() -> PublishedContents.together(factors, row -> 1))
                .<Content>map(found -> found)
                .orElseGet(() -> new Content.MissingContent(
                        ofGrade(Message.of("content-missing.no-nitrogen-factor", "food", plainName()))));
    }

    private List<CompositionRow> rows(String quantity, Frame frame) {
        return ofForm(quantity).filter(this::isEligible).filter(frame::holds).toList();
    }

    private Stream<CompositionRow> ofForm(String quantity) {
        return rows.stream()
                .filter(row -> row.form().equals(item.form()) && row.quantity().equals(quantity));
    }

    private boolean isEligible(CompositionRow row) {
        return row.cited().check().isAtLeast(lowest);
    }

    /** Why a nutrient cannot be reported: never measured, measured but not in use, or measured in another form. */
    private Message missing(Nutrient nutrient) {
        List<String> unused = ofForm(nutrient.id()).map(CompositionRow::id).toList();
        return unused.isEmpty()
                ? notPublished(item, otherForms(nutrient.id()))
                : Message.of(
                        lowest == Grade.MEMORY ? "content-missing.unused" : "content-missing.unused.grade",
                        "grade",
                        lowest.id(),
                        "rows",
                        Listing.commas(unused));
    }

    /** That something is not published of a food, and of which other forms it is. */
    static Message notPublished(ProductForm food, List<String> elsewhere) {
        return elsewhere.isEmpty()
                ? Message.of("content-missing", "food", food.name())
                : Message.of("content-missing.elsewhere", "food", food.name(), "forms", Listing.and(elsewhere));
    }

    private DisplayName plainName() {
        return DisplayName.of("product." + item.product().id(), item.product().name());
    }

    /** Other forms of the product for which something is published, as they are written in a question. */
    List<String> otherForms(String quantity) {
        return rows.stream()
                .filter(row -> row.quantity().equals(quantity) && !row.form().equals(item.form()))
                .filter(row -> row.use() == CompositionRow.RowUse.DEFAULT)
                .map(row -> new ProductForm(item.product(), row.form()).written())
                .distinct()
                .toList();
    }

    private Message ofGrade(Message why) {
        return lowest == Grade.MEMORY ? why : Message.of("content-missing.of-grade", "why", why, "grade", lowest.id());
    }
}

package org.scalepan.ask.nutrition;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scalepan.ask.ProductForm;
import org.scalepan.factors.Library;
import org.scalepan.footprint.ProteinBasis;
import org.scalepan.words.Message;

/**
 * The figures of one food.
 *
 * @param figures contents on the basis asked, in one order for every food
 * @param score amino-acid score against the pattern asked, where amino acids are published
 * @param quality measured scores, PDCAAS before DIAAS, of each the one in use first
 * @param absorption what people absorbed of its iron and zinc in trials
 * @param notes why there is no score, PDCAAS or DIAAS
 * @param price price of a kilogram of protein, where a price was given
 */
public record NutritionFacts(
        ProductForm food,
        List<NutrientFigure> figures,
        Optional<AminoAcidScore> score,
        List<MeasuredQuality> quality,
        List<AbsorptionTrial> absorption,
        List<Unmeasured> notes,
        Optional<NutrientFigure> price) {
    /** The id of protein by the product's own nitrogen factor. */
    public static final String CORRECTED = "protein-corrected";

    private static final List<Nutrient> AFTER_ENERGY =
            List.of(Nutrient.IRON, Nutrient.ZINC, Nutrient.CALCIUM, Nutrient.VITAMIN_B12);

    public NutritionFacts {
        figures = List.copyOf(figures);
        quality = List.copyOf(quality);
        absorption = List.copyOf(absorption);
        notes = List.copyOf(notes);
    }

    /** One figure of a food, or why it is missing. */
    public record NutrientFigure(String id, String unit, Content content) {}

    /** A figure that is not published for this food in this form. */
    public record Unmeasured(String id, Message why) {
        /** Why, in English. */
        public String reason() {
            return why.english();
        }
    }

    static NutritionFacts of(Library library, ProductForm item, NutritionQuestion question) {
        Food food = new Food(library, item, question.grade());
        Optional<AminoAcidProfile> profile = AminoAcidProfile.of(library, item, question.grade());
        boolean mayBeHeld = question.pattern().requirements().stream()
                .allMatch(requirement -> requirement.cited().check().isAtLeast(question.grade()));
        Optional<AminoAcidScore> score =
                profile.filter(acids -> mayBeHeld).map(acids -> AminoAcidScore.of(question.pattern(), acids));
        List<MeasuredQuality> quality = new ArrayList<>();
        List<Unmeasured> notes = new ArrayList<>();
        if (score.isEmpty()) {
            notes.add(new Unmeasured(
                    "amino-acid-score",
                    profile.isEmpty()
                            ? Message.of("content-missing.no-acids", "food", item.name())
                            : Message.of(
                                    "content-missing.pattern",
                                    "grade",
                                    question.grade().id())));
        }
        for (String kind : List.of(MeasuredQuality.PDCAAS, MeasuredQuality.DIAAS)) {
            List<MeasuredQuality> found = MeasuredQuality.of(library, item, kind, question.grade());
            quality.addAll(found);
            if (found.isEmpty()) {
                notes.add(new Unmeasured(kind, Food.notPublished(item, food.otherForms(kind))));
            }
        }
        Optional<NutrientFigure> price =
                Optional.ofNullable(question.prices().get(item)).map(perKilogram -> price(food, perKilogram, question));
        return new NutritionFacts(
                item,
                figures(food, question),
                score,
                quality,
                AbsorptionTrial.of(library, item.product(), question.grade()),
                notes,
                price);
    }

    private static List<NutrientFigure> figures(Food food, NutritionQuestion question) {
        Basis basis = question.basis();
        ProteinBasis protein = question.protein();
        List<NutrientFigure> figures = new ArrayList<>();
        figures.add(figure(food, Nutrient.PROTEIN, question));
        figures.add(new NutrientFigure(CORRECTED, Nutrient.PROTEIN.unit(), food.corrected(basis, protein)));
        figures.add(figure(food, Nutrient.FAT, question));
        NutrientFigure energy = figure(food, Nutrient.ENERGY, question);
        figures.add(energy);
        figures.add(new NutrientFigure(
                "energy-kj", "kJ", energy.content().then(kilocalories -> kilocalories.times(Nutrient.KILOJOULES))));
        AFTER_ENERGY.forEach(nutrient -> figures.add(figure(food, nutrient, question)));
        return figures;
    }

    private static NutrientFigure figure(Food food, Nutrient nutrient, NutritionQuestion question) {
        return new NutrientFigure(
                nutrient.id(), nutrient.unit(), food.on(nutrient, question.basis(), question.protein()));
    }

    /** Money per kilogram of protein: the dearer the food or the less protein in it, the more. */
    private static NutrientFigure price(Food food, double perKilogram, NutritionQuestion question) {
        Content content = food.proteinAsEaten(question.protein())
                .then(protein -> inverse(protein).times(perKilogram));
        return new NutrientFigure("price-per-kg-protein", question.currency().orElse("") + "/kg protein", content);
    }

    /** The inverse; the limits of its range change places. */
    private static Content.HeldContent inverse(Content.HeldContent found) {
        Content.ContentRange range =
                found.range().low().isPresent() && found.range().low().getAsDouble() > 0
                        ? Content.ContentRange.of(
                                1 / found.range().high().orElseThrow(),
                                1 / found.range().low().getAsDouble())
                        : Content.ContentRange.NONE;
        return new Content.HeldContent(
                1 / found.value(),
                range,
                found.rows(),
                found.sources(),
                found.studies(),
                found.lowest(),
                found.caveats());
    }
}

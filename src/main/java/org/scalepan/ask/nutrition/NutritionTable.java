package org.scalepan.ask.nutrition;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.scalepan.ask.Citations;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.Warning;
import org.scalepan.ask.Warnings;
import org.scalepan.cite.Reference;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.footprint.ProteinBasis;

/** Foods compared on one basis, with warnings and sources. */
public record NutritionTable(Library library, NutritionQuestion question, List<NutritionFacts> foods) {
    private static final Set<String> MINERALS_OF_TRIALS = Set.of(Nutrient.IRON.id(), Nutrient.ZINC.id());

    public NutritionTable {
        foods = List.copyOf(foods);
    }

    public static NutritionTable of(Library library, NutritionQuestion question) {
        return new NutritionTable(
                library,
                question,
                question.foods().stream()
                        .map(food -> NutritionFacts.of(library, food, question))
                        .toList());
    }

    /** The products. */
    public List<Product> products() {
        return question.foods().stream().map(ProductForm::product).distinct().toList();
    }

    /** The publications, in the order in which they were met. */
    public List<Reference> references() {
        Citations citations = new Citations();
        for (NutritionFacts facts : foods) {
            found(facts).forEach(found -> found.sources().forEach(citations::addSource));
            facts.score()
                    .ifPresent(score -> score.shares().forEach(share -> {
                        sourcesOf(share.rows()).forEach(citations::addSource);
                        citations.addSource(share.requirement().cited().source());
                    }));
            facts.absorption().forEach(trial -> citations.addSource(trial.source()));
            facts.quality()
                    .forEach(measured ->
                            citations.addSource(measured.row().cited().source()));
        }
        return citations.references(library);
    }

    private List<String> sourcesOf(List<String> rows) {
        return Stream.concat(
                        library.aminoAcidContents().stream()
                                .filter(row -> rows.contains(row.id()))
                                .map(row -> row.cited().source()),
                        library.composition().stream()
                                .filter(row -> rows.contains(row.id()))
                                .map(row -> row.cited().source()))
                .toList();
    }

    private static Stream<Content.HeldContent> found(NutritionFacts facts) {
        return contents(facts).filter(Content.HeldContent.class::isInstance).map(Content.HeldContent.class::cast);
    }

    private static Stream<Content> contents(NutritionFacts facts) {
        return Stream.concat(facts.figures().stream(), facts.price().stream())
                .map(NutritionFacts.NutrientFigure::content);
    }

    /** The warnings. */
    public List<Warning> warnings() {
        List<Warning> warnings = new ArrayList<>();
        forms(warnings);
        protein(warnings);
        caveats(warnings);
        about(
                warnings,
                "missing-values",
                "Some figures of these foods are not published in this library, or only in a way that does not lead to the basis"
                        + " asked; they are missing, and nothing is borrowed.",
                facts -> contents(facts).anyMatch(Content.MissingContent.class::isInstance));
        about(
                warnings,
                "incomplete-profile",
                "Of these foods not every indispensable amino acid is published: the score is an upper bound, since the missing"
                        + " ones could only lower it.",
                facts -> facts.score().filter(score -> !score.isComplete()).isPresent());
        otherPatterns(warnings);
        absorption(warnings);
        memory(warnings);
        Warnings.ownLibrary(library).ifPresent(warnings::add);
        return warnings;
    }

    private void forms(List<Warning> warnings) {
        List<String> all = question.foods().stream().map(ProductForm::written).toList();
        if (question.isDecidedByWater()) {
            warnings.add(new Warning(
                    "fresh-beside-dried",
                    "Fresh foods stand beside dried or ground ones, weighed with their water: what looks richer may only be"
                            + " drier. It was asked for; basis=100g-dry-matter, 10g-protein or 100kcal is fair.",
                    all));
        } else if (question.foods().stream().map(ProductForm::form).distinct().count() > 1) {
            warnings.add(new Warning(
                    "form-mix",
                    "Products in different forms stand side by side (fresh, dried, meal): the basis leaves water out, but drying,"
                            + " heating and milling change more than water.",
                    all));
        }
    }

    private void protein(List<Warning> warnings) {
        if (question.protein() == ProteinBasis.CRUDE) {
            about(
                    warnings,
                    "crude-protein",
                    "Crude protein (N × 6.25) counts the nitrogen of chitin too and overstates the protein of most insects; see"
                            + " protein-corrected, and protein=corrected.",
                    facts -> facts.food().product().group().equals("insect"));
        }
    }

    private void caveats(List<Warning> warnings) {
        Map<Caveat, Set<String>> about = new LinkedHashMap<>();
        for (Caveat caveat : Caveat.values()) {
            for (NutritionFacts facts : foods) {
                if (found(facts).anyMatch(found -> found.caveats().contains(caveat))) {
                    about.computeIfAbsent(caveat, key -> new LinkedHashSet<>())
                            .add(facts.food().written());
                }
            }
        }
        about.forEach((caveat, of) -> warnings.add(new Warning(caveat.code(), caveat.text(), List.copyOf(of))));
    }

    private void otherPatterns(List<Warning> warnings) {
        about(
                warnings,
                "quality-patterns",
                "Some measured scores (PDCAAS, DIAAS) are against another age pattern than the one asked for, or do not say which;"
                        + " they are given as measured.",
                facts -> facts.quality().stream()
                        .anyMatch(measured -> measured.method()
                                .flatMap(method -> method.pattern())
                                .filter(question.pattern().id()::equals)
                                .isEmpty()));
    }

    private void absorption(List<Warning> warnings) {
        about(
                warnings,
                "minerals-eaten",
                "Iron and zinc are what is eaten, not what a body takes up: that differs by food, meal and person, several-fold. Where"
                        + " a trial with people is held it is shown as measured, for its meal and people; this is no advice.",
                facts -> !facts.absorption().isEmpty()
                        || facts.figures().stream()
                                .filter(figure -> MINERALS_OF_TRIALS.contains(figure.id()))
                                .anyMatch(figure -> figure.content() instanceof Content.HeldContent));
    }

    private void memory(List<Warning> warnings) {
        about(
                warnings,
                "memory-graded",
                "Some numbers were not seen in any text for this library; they are from memory and provisional (grade=secondary"
                        + " leaves them out).",
                facts -> found(facts).anyMatch(found -> found.lowest() == Grade.MEMORY)
                        || facts.quality().stream()
                                .anyMatch(measured -> measured.row().cited().check() == Grade.MEMORY)
                        || facts.score().stream()
                                .flatMap(score -> score.shares().stream())
                                .anyMatch(share -> share.requirement().cited().check() == Grade.MEMORY));
    }

    private void about(
            List<Warning> warnings, String code, String text, java.util.function.Predicate<NutritionFacts> concerned) {
        List<String> about = foods.stream()
                .filter(concerned)
                .map(facts -> facts.food().written())
                .toList();
        if (!about.isEmpty()) {
            warnings.add(new Warning(code, text, about));
        }
    }
}

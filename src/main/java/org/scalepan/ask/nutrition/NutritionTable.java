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
import org.scalepan.words.Message;

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
                "warning.missing-values.foods",
                facts -> contents(facts).anyMatch(Content.MissingContent.class::isInstance));
        about(
                warnings,
                "incomplete-profile",
                "warning.incomplete-profile.foods",
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
            warnings.add(Warning.of("fresh-beside-dried", all));
        } else if (question.foods().stream().map(ProductForm::form).distinct().count() > 1) {
            warnings.add(new Warning("form-mix", Message.of("warning.form-mix.foods"), all));
        }
    }

    private void protein(List<Warning> warnings) {
        if (question.protein() == ProteinBasis.CRUDE) {
            about(
                    warnings,
                    "crude-protein",
                    "warning.crude-protein.foods",
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
        about.forEach((caveat, of) -> warnings.add(Warning.of(caveat.code(), List.copyOf(of))));
    }

    private void otherPatterns(List<Warning> warnings) {
        about(
                warnings,
                "quality-patterns",
                "warning.quality-patterns.foods",
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
                "warning.minerals-eaten.foods",
                facts -> !facts.absorption().isEmpty()
                        || facts.figures().stream()
                                .filter(figure -> MINERALS_OF_TRIALS.contains(figure.id()))
                                .anyMatch(figure -> figure.content() instanceof Content.HeldContent));
    }

    private void memory(List<Warning> warnings) {
        about(
                warnings,
                "memory-graded",
                "warning.memory-graded.foods",
                facts -> found(facts).anyMatch(found -> found.lowest() == Grade.MEMORY)
                        || facts.quality().stream()
                                .anyMatch(measured -> measured.row().cited().check() == Grade.MEMORY)
                        || facts.score().stream()
                                .flatMap(score -> score.shares().stream())
                                .anyMatch(share -> share.requirement().cited().check() == Grade.MEMORY));
    }

    private void about(
            List<Warning> warnings, String code, String key, java.util.function.Predicate<NutritionFacts> concerned) {
        List<String> about = foods.stream()
                .filter(concerned)
                .map(facts -> facts.food().written())
                .toList();
        if (!about.isEmpty()) {
            warnings.add(new Warning(code, Message.of(key), about));
        }
    }
}

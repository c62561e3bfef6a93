package org.scalepan.ask.contents;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.claim.Overall;
import org.scalepan.ask.nutrition.AbsorptionTrial;
import org.scalepan.ask.nutrition.Basis;
import org.scalepan.ask.nutrition.Nutrient;
import org.scalepan.words.Language;

/**
 * A claim of contents checked for one food.
 *
 * @param cells the one asked first; at least one
 * @param protein what is known of its protein, one for each form of which something is; only where the claim is about protein
 * @param absorption trials with people, only where the claim is about iron or zinc
 */
public record ContentCheck(
        ContentQuestion question,
        ProductForm food,
        List<ContentCell> cells,
        List<ProteinFinding> protein,
        List<AbsorptionTrial> absorption) {
    private static final Set<String> OF_TRIALS = Set.of(Nutrient.IRON.id(), Nutrient.ZINC.id());
    private static final Set<String> OF_PROTEIN = Set.of(
            Nutrient.PROTEIN.id(),
            ContentClaimed.AMINO_ACIDS,
            ContentClaimed.COMPLETE_PROTEIN,
            ContentClaimed.PROTEIN_QUALITY);

    public ContentCheck {
        cells = List.copyOf(cells);
        protein = List.copyOf(protein);
        absorption = List.copyOf(absorption);
    }

    static ContentCheck of(FoodSamples samples, ContentQuestion question, ProductForm food) {
        String claimed = question.claimed().id();
        List<ProteinFinding> protein = OF_PROTEIN.contains(claimed)
                ? samples.forms(food).stream()
                        .map(form -> ProteinFinding.of(samples, form, question.grade()))
                        .filter(ProteinFinding::isKnown)
                        .toList()
                : List.of();
        List<AbsorptionTrial> absorption = OF_TRIALS.contains(claimed)
                ? samples.facts(food, Basis.TEN_GRAMS_PROTEIN).absorption().stream()
                        .filter(trial -> trial.nutrient().equals(claimed))
                        .toList()
                : List.of();
        return new ContentCheck(
                question, food, new CellsOfContent(samples, question, food).cells(), protein, absorption);
    }

    /** The cell on the basis and in the form asked. */
    public ContentCell asked() {
        return cells.get(0);
    }

    /** The verdict over all bases that count. */
    public Overall overall() {
        return Overall.of(
                asked().verdict(),
                cells.stream()
                        .filter(ContentCell::counts)
                        .map(ContentCell::verdict)
                        .toList());
    }

    /** Why, in English sentences. */
    public String reason() {
        return reason(Language.ENGLISH);
    }

    public String reason(Language language) {
        return new ContentWording(this, language).reason();
    }

    /** What can be said of it instead; empty where nothing is published on both sides. */
    public Optional<String> instead(Language language) {
        return new ContentWording(this, language).instead();
    }

    /** Sources of every number shown. */
    public Stream<String> sources() {
        Stream<String> ofCells = cells.stream()
                .flatMap(cell -> Stream.concat(Stream.of(cell.productSide()), cell.referenceSide().stream()))
                .flatMap(side -> side.found().stream())
                .flatMap(found -> found.sources().stream().sorted());
        return Stream.of(
                ofCells,
                protein.stream().flatMap(finding -> finding.sources().stream().sorted()),
                absorption.stream().map(AbsorptionTrial::source))
                .flatMap(some -> some)
                .collect(Collectors.toCollection(java.util.LinkedHashSet::new))
                .stream();
    }
}

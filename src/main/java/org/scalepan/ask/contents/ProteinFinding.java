package org.scalepan.ask.contents;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.nutrition.AminoAcidScore;
import org.scalepan.ask.nutrition.Basis;
import org.scalepan.ask.nutrition.MeasuredQuality;
import org.scalepan.ask.nutrition.NutritionFacts;
import org.scalepan.factors.AminoAcidContent;
import org.scalepan.factors.AminoAcidRequirement;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;

/**
 * What is known of the protein of a food in one form.
 *
 * @param present indispensable amino acids that somebody found in it
 * @param absent those that somebody measured as none
 * @param unknown those of which nothing is published
 * @param byScore true when a measured score says that none is missing, since such a score is that of the scarcest
 * @param score amino-acid score with the limiting amino acid, where a profile is held
 * @param quality scores that were measured
 */
public record ProteinFinding(
        ProductForm food,
        List<String> present,
        List<String> absent,
        List<String> unknown,
        boolean byScore,
        Optional<AminoAcidScore> score,
        List<MeasuredQuality> quality,
        List<String> rows,
        Set<String> sources) {
    public ProteinFinding {
        present = List.copyOf(present);
        absent = List.copyOf(absent);
        unknown = List.copyOf(unknown);
        quality = List.copyOf(quality);
        rows = List.copyOf(rows);
        sources = Set.copyOf(sources);
    }

    static ProteinFinding of(FoodSamples samples, ProductForm food, Grade grade) {
        Library library = samples.library();
        NutritionFacts facts = samples.facts(food, Basis.TEN_GRAMS_PROTEIN);
        List<AminoAcidContent> contents = library.aminoAcidContents().stream()
                .filter(content -> content.product().equals(food.product().id())
                        && content.form().equals(food.form())
                        && content.cited().check().isAtLeast(grade))
                .toList();
        boolean byScore = facts.quality().stream().anyMatch(measured -> lowest(measured) > 0);
        List<String> present = new ArrayList<>();
        List<String> absent = new ArrayList<>();
        List<String> unknown = new ArrayList<>();
        for (String acid : library.defaultAminoAcidPattern().requirements().stream()
                .map(AminoAcidRequirement::acid)
                .toList()) {
            Optional<Double> most = Stream.concat(
                            contents.stream()
                                    .filter(content -> content.acid().equals(acid))
                                    .map(AminoAcidContent::milligrams),
                            facts.score().stream()
                                    .flatMap(score -> score.shares().stream())
                                    .filter(share -> share.acid().equals(acid))
                                    .map(AminoAcidScore.ScoreShare::milligrams))
                    .max(Double::compare);
            if (most.isEmpty()) {
                unknown.add(acid);
            } else {
                (most.get() > 0 ? present : absent).add(acid);
            }
        }
        Set<String> sources = new LinkedHashSet<>();
        List<String> rows = new ArrayList<>();
        contents.forEach(content -> {
            rows.add(content.id());
            sources.add(content.cited().source());
        });
        facts.quality().forEach(measured -> {
            rows.add(measured.row().id());
            sources.add(measured.row().cited().source());
        });
        return new ProteinFinding(
                food, present, absent, unknown, byScore, facts.score(), facts.quality(), rows, sources);
    }

    private static double lowest(MeasuredQuality measured) {
        return measured.row()
                .printed()
                .low()
                .orElse(measured.row().printed().value().orElse(0));
    }

    /** Whether anything at all is known of it. */
    boolean isKnown() {
        return byScore || !present.isEmpty() || !absent.isEmpty();
    }

    /** Whether every indispensable amino acid was found in it. */
    boolean hasAll() {
        return absent.isEmpty() && (unknown.isEmpty() || byScore);
    }

    /** How many there are. */
    int indispensable() {
        return present.size() + absent.size() + unknown.size();
    }
}

package org.scalepan.ask.nutrition;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.scalepan.factors.AminoAcidPattern;
import org.scalepan.factors.AminoAcidRequirement;

/**
 * The amino-acid score of a protein: the least ratio of content to requirement over the indispensable amino acids of a pattern. Total amino
 * acids, not digested ones.
 *
 * <p>Source: FAO/WHO/UNU (1985), WHO Technical Report Series 724; FAO (2013), Food and Nutrition Paper 92.
 *
 * @param shares one for each amino acid that is published, in the order of the pattern; at least one
 */
public record AminoAcidScore(AminoAcidPattern pattern, List<ScoreShare> shares) {

    /**
     * The content of an amino acid, beside its requirement.
     *
     * @param milligrams milligrams per gram of protein
     * @param rows ids of the rows of the content
     */
    public record ScoreShare(AminoAcidRequirement requirement, double milligrams, List<String> rows) {
        public ScoreShare {
            rows = List.copyOf(rows);
        }

        public String acid() {
            return requirement.acid();
        }

        /** Content over requirement; 1 is enough. */
        public double ratio() {
            return milligrams / requirement.milligrams();
        }
    }

    public AminoAcidScore {
        shares = List.copyOf(shares);
        if (shares.isEmpty()) {
            throw new IllegalArgumentException("a score needs at least one amino acid");
        }
    }

    static AminoAcidScore of(AminoAcidPattern pattern, AminoAcidProfile profile) {
        List<ScoreShare> shares = new ArrayList<>();
        for (AminoAcidRequirement requirement : pattern.requirements()) {
            profile.acids().stream()
                    .filter(acid -> acid.id().equals(requirement.acid()))
                    .forEach(acid -> shares.add(new ScoreShare(requirement, acid.milligrams(), acid.rows())));
        }
        return new AminoAcidScore(pattern, shares);
    }

    /** The limiting amino acid: the one with the least share. */
    public ScoreShare limiting() {
        return shares.stream()
                .min(Comparator.comparingDouble(ScoreShare::ratio))
                .orElseThrow();
    }

    /** The score, not truncated: above 1 no amino acid is limiting. */
    public double value() {
        return limiting().ratio();
    }

    /** The score truncated at 1, as for a food eaten alone: a surplus of one amino acid does not make up for another. */
    public double truncated() {
        return truncated(value());
    }

    /**
     * A protein digestibility-corrected score as it is reported for a single food: at most 1, 100 per cent (FNB/IOM 2002: a mixture of 1.10
     * is reported as 1.00).
     */
    public static double truncated(double score) {
        return Math.min(1, score);
    }

    /** Amino acids of the pattern without published content. If there are any, the score is an upper bound. */
    public List<String> unknown() {
        List<String> known = shares.stream().map(ScoreShare::acid).toList();
        return pattern.requirements().stream()
                .map(AminoAcidRequirement::acid)
                .filter(acid -> !known.contains(acid))
                .toList();
    }

    public boolean isComplete() {
        return unknown().isEmpty();
    }
}

package org.scalepan.ask.claim;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.scalepan.ask.IndicatorWording;
import org.scalepan.ask.Side;
import org.scalepan.cite.Reference;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.literature.PairedStudy;
import org.scalepan.words.Language;
import org.scalepan.words.Message;

/**
 * The ratio that one paper printed of both sides, as a sentence of that paper: for claims of which the draws support no sentence. What is
 * computed here from two results of a paper is never said as if it were the paper's.
 */
record PaperSentence(
        Library library, ClaimQuestion question, Side side, List<PairedFinding> paired, Language language) {

    /** The sentence of the first paper that can be cited. */
    Optional<Instead> sentence() {
        return paired.stream()
                .filter(finding -> finding.study().origin() == PairedStudy.Origin.PRINTED)
                .flatMap(finding -> library
                        .reference(finding.study().study())
                        .filter(Reference::isIdentified)
                        .map(paper -> of(finding, paper))
                        .stream())
                .findFirst();
    }

    private Instead of(PairedFinding finding, Reference paper) {
        String said = language.say(
                "instead.paper",
                "label",
                paper.label(),
                "where",
                BasisWording.of(finding.basis()),
                "side",
                side.name(),
                "reference",
                question.referenceName(),
                "ratio",
                finding.band(language),
                "indicator",
                IndicatorWording.of(finding.basis(), language).quantity(),
                "seen",
                Message.of("seen." + seen(finding).id()));
        return new Instead(
                said,
                Optional.of(finding.basis()),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                List.of(paper.id()),
                Optional.of(paper.id()));
    }

    /** The lowest grade of the rows behind it: the sentence must not pass for better seen than its weakest number. */
    private Grade seen(PairedFinding finding) {
        Set<String> rows = Set.copyOf(finding.study().rows());
        return library.pairedRatios().stream()
                .filter(ratio -> rows.contains(ratio.id()))
                .map(ratio -> ratio.cited().check())
                .max(Comparator.naturalOrder())
                .orElse(Grade.MEMORY);
    }
}

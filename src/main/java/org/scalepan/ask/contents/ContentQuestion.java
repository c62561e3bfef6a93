package org.scalepan.ask.contents;

import java.util.Optional;
import java.util.OptionalInt;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.claim.Subject;
import org.scalepan.ask.nutrition.Basis;
import org.scalepan.factors.Grade;
import org.scalepan.footprint.ProteinBasis;
import org.scalepan.words.DisplayName;
import org.scalepan.words.Language;

/**
 * A claim of contents as it is asked.
 *
 * @param subject one food, or every insect
 * @param reference what it is compared with
 * @param basis the amount of food on which it is said
 * @param protein whether crude or corrected protein is meant
 * @param grade the lowest eligible check grade
 * @param aminoAcidsSaid how many amino acids the sentence counts
 */
public record ContentQuestion(
        Subject subject,
        Optional<ProductForm> reference,
        ContentClaimed claimed,
        Basis basis,
        ProteinBasis protein,
        Grade grade,
        OptionalInt aminoAcidsSaid) {
    public ContentQuestion {
        if (claimed.needsReference() && reference.isEmpty()) {
            throw new IllegalArgumentException("more than what? a comparison needs a reference");
        }
    }

    /** The claim in words. */
    String said(Language language) {
        int n = subject.sides().size();
        return language.say(
                claimed.key(),
                "product",
                n == 1 ? subject.sides().get(0).name() : subject.group(),
                "n",
                n,
                "times",
                claimed.figure(),
                "nutrient",
                claimed.nutrientName(),
                "reference",
                reference.map(ProductForm::name).orElse(DisplayName.given("")));
    }
}

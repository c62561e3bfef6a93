package org.scalepan.web.claim;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.Side;
import org.scalepan.ask.claim.Subject;
import org.scalepan.ask.contents.ContentClaimed;
import org.scalepan.ask.contents.ContentQuestion;
import org.scalepan.ask.nutrition.Basis;
import org.scalepan.exchange.read.ProductReading;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.footprint.ProteinBasis;
import org.scalepan.input.Input;

/** Reads a claim of contents out of parameters. */
final class ContentClaimReading {
    static final String CONTENT = "content";
    /** Parameters of claims of contents alone. */
    static final List<String> PARAMETERS = List.of(CONTENT, "times_more", "basis", "amino_acids");

    private static final double MOST_TIMES = 1e6;
    /** Parameters of claims of footprints alone. */
    static final List<String> OF_FOOTPRINTS = List.of(
            "indicator",
            "percent_less",
            "none",
            "per",
            "boundary",
            "luc",
            "gwp",
            "region",
            "sources",
            "exclude",
            "quality",
            "strict",
            "of",
            "evidence",
            "system",
            "coverage",
            "draws",
            "seed");

    private final Library library;
    private final Input parameters;

    ContentClaimReading(Library library, Input parameters) {
        this.library = library;
        this.parameters = parameters;
    }

    /** The question; empty after an error. */
    Optional<ContentQuestion> question(Optional<Subject> subject) {
        OF_FOOTPRINTS.stream()
                .filter(name -> parameters.raw(name).isPresent())
                .forEach(name -> parameters.fault(
                        name, name + " belongs to claims of footprints; what a food contains is asked without it"));
        String content = parameters.oneOf(CONTENT, ContentClaimed.ids(), "protein");
        boolean amount = parameters.raw("times_more").isPresent()
                || parameters.raw("times_less").isPresent();
        boolean less = parameters.raw("times_less").isPresent();
        double times = less
                ? parameters.number("times_less", 1e-6, MOST_TIMES, 1)
                : takesAmount(content) ? parameters.number("times_more", 1e-6, MOST_TIMES, 1) : 1;
        if (less && parameters.raw("times_more").isPresent()) {
            parameters.fault("times_more", "give times_more or times_less, not both");
        }
        if (amount && !takesAmount(content)) {
            parameters.fault(less ? "times_less" : "times_more", content + " has no amount; leave it out");
        }
        Optional<ContentClaimed> claimed = ContentClaimed.of(content, times, less);
        Optional<ProductForm> reference = Optional.empty();
        if (claimed.filter(ContentClaimed::needsReference).isPresent()) {
            reference = new ProductReading(library, parameters).one(ClaimReading.REFERENCE);
        } else if (parameters.raw(ClaimReading.REFERENCE).isPresent()) {
            parameters.fault(ClaimReading.REFERENCE, content + " is said of one food; leave the reference out");
        }
        Basis usual = basis(subject, reference);
        Basis basis = parameters.oneOf("basis", Basis.ids(), Basis::of, usual, usual.id());
        ProteinBasis protein = parameters.oneOf(
                "protein",
                Stream.of(ProteinBasis.values()).map(ProteinBasis::id).toList(),
                ProteinBasis::of,
                ProteinBasis.CRUDE,
                ProteinBasis.CRUDE.id());
        Grade grade = parameters.oneOf("grade", library.ids("grades"), Grade::of, Grade.USUAL, Grade.USUAL.id());
        OptionalInt said = parameters.raw("amino_acids").isPresent()
                ? OptionalInt.of((int) parameters.whole("amino_acids", 1, 100, 9))
                : OptionalInt.empty();
        if (subject.isEmpty() || claimed.isEmpty() || !parameters.faults().isEmpty()) {
            return Optional.empty();
        }
        if (reference.isPresent()
                && subject.get().sides().size() == 1
                && subject.get().sides().get(0).equals(new Side.PublishedSide(reference.get()))) {
            parameters.fault(ClaimReading.REFERENCE, "a food is not compared with itself");
            return Optional.empty();
        }
        return Optional.of(new ContentQuestion(subject.get(), reference, claimed.get(), basis, protein, grade, said));
    }

    private static boolean takesAmount(String content) {
        return ContentClaimed.of(content, 1, false)
                .filter(claimed -> claimed instanceof ContentClaimed.NutrientAmount
                        || claimed instanceof ContentClaimed.UnsaturatedFat)
                .isPresent();
    }

    /** As eaten, unless a dried food stands beside a fresh one: then water would decide. */
    private static Basis basis(Optional<Subject> subject, Optional<ProductForm> reference) {
        boolean mixed = subject.isPresent()
                && reference.isPresent()
                && subject.get().sides().size() == 1
                && subject.get().sides().get(0) instanceof Side.PublishedSide side
                && side.item().form().equals("fresh") != reference.get().form().equals("fresh");
        return mixed ? Basis.HUNDRED_GRAMS_DRY_MATTER : Basis.HUNDRED_GRAMS_EDIBLE;
    }
}

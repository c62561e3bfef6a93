package org.scalepan.ask.contents;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.scalepan.ask.Citations;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.Side;
import org.scalepan.ask.Warning;
import org.scalepan.ask.Warnings;
import org.scalepan.ask.claim.Overall;
import org.scalepan.cite.Reference;
import org.scalepan.factors.Claim;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;

/**
 * A claim of contents, checked for each food that it is about.
 *
 * @param checks those with evidence; for one food always one
 * @param silent foods of a group of which nothing is published on both sides
 */
public record ContentChecks(
        Library library, ContentQuestion question, List<ContentCheck> checks, List<ProductForm> silent) {
    /** Common knowledge of biochemistry, no source: the amino acids that the genetic code names. */
    private static final int MAKING_PROTEIN = 20;

    public ContentChecks {
        checks = List.copyOf(checks);
        silent = List.copyOf(silent);
    }

    public static ContentChecks of(Library library, ContentQuestion question) {
        FoodSamples samples = new FoodSamples(library, question.protein(), question.grade());
        List<ContentCheck> all = question.subject().sides().stream()
                .filter(Side.PublishedSide.class::isInstance)
                .map(Side.PublishedSide.class::cast)
                .map(Side.PublishedSide::item)
                .map(food -> ContentCheck.of(samples, question, food))
                .toList();
        if (all.size() == 1) {
            return new ContentChecks(library, question, all, List.of());
        }
        return new ContentChecks(
                library,
                question,
                all.stream()
                        .filter(check -> check.overall() != Overall.NOT_TRACEABLE)
                        .toList(),
                all.stream()
                        .filter(check -> check.overall() == Overall.NOT_TRACEABLE)
                        .map(ContentCheck::food)
                        .toList());
    }

    /** The claim in words. */
    public String claim() {
        List<Side> sides = question.subject().sides();
        return question.said(
                sides.size() == 1 ? sides.get(0).words() : question.subject().words());
    }

    public Overall overall() {
        return Overall.ofAll(checks.stream().map(ContentCheck::overall).toList());
    }

    /** Why, in sentences; a wrong count of amino acids is put right first. */
    public String reason() {
        String start = corrections().isEmpty() ? "" : String.join(" ", corrections()) + " ";
        if (question.subject().sides().size() == 1) {
            return start + checks.get(0).reason();
        }
        List<String> parts = new ArrayList<>();
        for (Overall overall : Overall.values()) {
            List<String> names = checks.stream()
                    .filter(check -> check.overall() == overall)
                    .map(check -> check.food().words())
                    .toList();
            if (!names.isEmpty()) {
                parts.add(overall.words() + ": " + String.join(", ", names));
            }
        }
        return start + "Insects are not one food, so each is checked for itself. "
                + (parts.isEmpty() ? "Of none is anything published on both sides" : String.join("; ", parts)) + "."
                + (silent.isEmpty()
                        ? ""
                        : " Of " + silent.size()
                                + " insects nothing comparable is held; that says nothing about them.");
    }

    /** What the sentence counts wrongly. */
    public List<String> corrections() {
        int nine = library.defaultAminoAcidPattern().requirements().size();
        if (question.aminoAcidsSaid().isEmpty() || question.aminoAcidsSaid().getAsInt() == nine) {
            return List.of();
        }
        return List.of("Of the " + MAKING_PROTEIN + " amino acids that make protein " + nine
                + " are indispensable (essential) for people, not "
                + question.aminoAcidsSaid().getAsInt()
                + "; the others a body makes itself. The " + nine + " are checked.");
    }

    /** What can be said instead. */
    public String instead() {
        return checks.stream()
                .flatMap(check -> check.instead().stream())
                .findFirst()
                .orElse(
                        "Nothing can be said from what this library holds: publish no comparison until both foods have been measured.");
    }

    /** Claims in circulation about the same content and the same food. */
    public List<Claim> circulating() {
        List<Product> about = products();
        return library.claims().stream()
                .filter(claim -> claim.indicators().contains(indicator()))
                .filter(claim -> about.stream()
                        .anyMatch(product -> claim.products().contains(product.id())
                                || claim.products().contains(product.group())))
                .toList();
    }

    private String indicator() {
        String id = question.claimed().id();
        return id.equals(ContentClaimed.AMINO_ACIDS) || id.equals(ContentClaimed.COMPLETE_PROTEIN)
                ? ContentClaimed.PROTEIN_QUALITY
                : id;
    }

    /** The foods of the answer. */
    public List<Product> products() {
        return Stream.concat(
                        Stream.concat(checks.stream().map(ContentCheck::food), silent.stream()),
                        question.reference().stream())
                .map(ProductForm::product)
                .distinct()
                .toList();
    }

    /** The publications behind every figure. */
    public List<Reference> references() {
        Citations citations = new Citations();
        checks.stream().flatMap(ContentCheck::sources).forEach(citations::addSource);
        circulating().forEach(claim -> claim.sources().forEach(citations::addSource));
        return citations.references(library);
    }

    /** What a reader must know. */
    public List<Warning> warnings() {
        List<Warning> warnings = new ArrayList<>();
        warnings.add(new Warning(
                "contents-no-advice",
                "Contents of foods are no advice for eating: malnutrition, anaemia and other deficiencies are treated by health"
                        + " professionals under local protocols, and whoever is allergic to crustaceans or house-dust mites may react to"
                        + " insects and should ask a doctor first.",
                List.of()));
        warnings.add(new Warning(
                "ranges-of-samples",
                "The verdict compares the lowest and the highest published sample, with no distribution assumed. Foods differ by what"
                        + " animals ate, by cut and by laboratory; a sample outside the range may well exist.",
                List.of()));
        if (checks.stream().flatMap(check -> check.cells().stream()).anyMatch(ContentCell::thin)) {
            warnings.add(new Warning(
                    "few-samples", "On some bases one sample stands for a side; nothing is decided there.", List.of()));
        }
        if (question.claimed().id().equals("iron") || question.claimed().id().equals("zinc")) {
            warnings.add(new Warning(
                    "minerals-eaten",
                    "Iron and zinc are what is eaten, not what a body takes up: that differs by food, meal and person, several-fold.",
                    List.of()));
        }
        if (question.claimed().id().equals("protein")) {
            warnings.add(new Warning(
                    "crude-protein",
                    "Crude protein (N × 6.25) counts the nitrogen of chitin too and overstates the protein of most insects; corrected"
                            + " protein stands beside it.",
                    List.of()));
        }
        if (question.grade() == Grade.MEMORY) {
            warnings.add(new Warning(
                    "memory-graded",
                    "Some numbers were not seen in any text for this library; they are from memory and provisional.",
                    List.of()));
        }
        Warnings.ownLibrary(library).ifPresent(warnings::add);
        return warnings;
    }

    /** Whether numbers that nobody has seen in a text for this library would say more. */
    public boolean saysMoreFromMemory() {
        return question.grade() != Grade.MEMORY
                && !of(
                                library,
                                new ContentQuestion(
                                        question.subject(),
                                        question.reference(),
                                        question.claimed(),
                                        question.basis(),
                                        question.protein(),
                                        Grade.MEMORY,
                                        question.aminoAcidsSaid()))
                        .overall()
                        .equals(overall());
    }
}

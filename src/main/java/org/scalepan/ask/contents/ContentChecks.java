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
import org.scalepan.words.DisplayName;
import org.scalepan.words.Language;
import org.scalepan.words.Listing;
import org.scalepan.words.Message;

/**
 * A claim of contents, checked for each food that it is about.
 *
 * @param checks those with evidence; for one food always one
 * @param silent foods of a group of which nothing is published on both sides
 * @param language of its sentences
 */
public record ContentChecks(
        Library library,
        ContentQuestion question,
        List<ContentCheck> checks,
        List<ProductForm> silent,
        Language language) {
    /** Common knowledge of biochemistry, no source: the amino acids that the genetic code names. */
    private static final int MAKING_PROTEIN = 20;

    public ContentChecks {
        checks = List.copyOf(checks);
        silent = List.copyOf(silent);
    }

    /** Checks a claim, in English. */
    public static ContentChecks of(Library library, ContentQuestion question) {
        return of(library, question, Language.ENGLISH);
    }

    public static ContentChecks of(Library library, ContentQuestion question, Language language) {
        FoodSamples samples = new FoodSamples(library, question.protein(), question.grade());
        List<ContentCheck> all = question.subject().sides().stream()
                .filter(Side.PublishedSide.class::isInstance)
                .map(Side.PublishedSide.class::cast)
                .map(Side.PublishedSide::item)
                .map(food -> ContentCheck.of(samples, question, food))
                .toList();
        if (all.size() == 1) {
            return new ContentChecks(library, question, all, List.of(), language);
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
                        .toList(),
                language);
    }

    /** The claim in words. */
    public String claim() {
        return question.said(language);
    }

    public Overall overall() {
        return Overall.ofAll(checks.stream().map(ContentCheck::overall).toList());
    }

    /** Why, in sentences; a wrong count of amino acids is put right first. */
    public String reason() {
        List<String> sentences = new ArrayList<>(corrections());
        if (question.subject().sides().size() == 1) {
            sentences.add(checks.get(0).reason(language));
            return String.join(" ", sentences);
        }
        List<Message> parts = new ArrayList<>();
        for (Overall overall : Overall.values()) {
            List<DisplayName> names = checks.stream()
                    .filter(check -> check.overall() == overall)
                    .map(check -> check.food().name())
                    .toList();
            if (!names.isEmpty()) {
                parts.add(Message.of("of-side", "side", overall.message(), "what", Listing.commas(names)));
            }
        }
        sentences.add(language.say(
                "contents.group",
                "parts",
                parts.isEmpty() ? Message.of("contents.group.none") : Listing.semicolons(parts)));
        if (!silent.isEmpty()) {
            sentences.add(language.say("contents.group.silent", "n", silent.size()));
        }
        return String.join(" ", sentences);
    }

    /** What the sentence counts wrongly. */
    public List<String> corrections() {
        int nine = library.defaultAminoAcidPattern().requirements().size();
        if (question.aminoAcidsSaid().isEmpty() || question.aminoAcidsSaid().getAsInt() == nine) {
            return List.of();
        }
        return List.of(language.say(
                "contents.correction",
                "all",
                MAKING_PROTEIN,
                "nine",
                nine,
                "said",
                question.aminoAcidsSaid().getAsInt()));
    }

    /** What can be said instead. */
    public String instead() {
        return checks.stream()
                .flatMap(check -> check.instead(language).stream())
                .findFirst()
                .orElseGet(() -> language.say("contents.say-nothing"));
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
        warnings.add(Warning.of("contents-no-advice", List.of()));
        warnings.add(Warning.of("ranges-of-samples", List.of()));
        if (checks.stream().flatMap(check -> check.cells().stream()).anyMatch(ContentCell::thin)) {
            warnings.add(Warning.of("few-samples", List.of()));
        }
        if (question.claimed().id().equals("iron") || question.claimed().id().equals("zinc")) {
            warnings.add(new Warning("minerals-eaten", Message.of("warning.minerals-eaten.contents"), List.of()));
        }
        if (question.claimed().id().equals("protein")) {
            warnings.add(new Warning("crude-protein", Message.of("warning.crude-protein.contents"), List.of()));
        }
        if (question.grade() == Grade.MEMORY) {
            warnings.add(new Warning("memory-graded", Message.of("warning.memory-graded.contents"), List.of()));
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

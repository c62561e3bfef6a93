package org.scalepan.ask.claim;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.scalepan.factors.Claim;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.input.Suggestion;
import org.scalepan.input.Suggestion.SuggestionKind;

/** Where a sentence leads that could not be checked as it stands: nobody who asked in good faith is left without a next question. */
final class RefusedSentence {
    private static final int MOST_CLAIMS = 3;
    private static final int MOST_TOPICS = 3;
    /** The group of what animals eat, which no person's meal displaces. */
    private static final String FEED = "feed";

    private static final Set<String> SOMEBODYS_OWN = Set.of("these", "our", "my", "their", "nos", "ces", "mes");

    private final Library library;
    private final String text;
    private final List<String> words;
    private final List<String> named;

    /**
     * @param named the products that were understood
     */
    RefusedSentence(Library library, String text, List<String> named) {
        this.library = library;
        this.text = text;
        this.words = Lexicon.words(text);
        this.named = List.copyOf(named);
    }

    /** Questions to ask instead, the nearest first; at least one. */
    List<Suggestion> suggestions() {
        List<Suggestion> found = new ArrayList<>();
        if (isOfOnesOwn(words)) {
            found.add(ClaimTopic.ownFarm(insect(), reference()));
        }
        List<Claim> near = ClaimLikeness.of(library).nearest(text, MOST_CLAIMS);
        for (Claim claim : near) {
            found.add(Suggestion.of(
                    SuggestionKind.CIRCULATING_CLAIM,
                    "In circulation: \"" + claim.claim() + "\". " + claim.verdictText(),
                    "/v1/rows/" + claim.id()));
        }
        near.stream()
                .findFirst()
                .flatMap(claim -> ClaimAddress.of(library, claim))
                .ifPresent(address -> found.add(Suggestion.of(
                        SuggestionKind.READING,
                        "The circulating claim \"" + near.get(0).claim() + "\" as it can be checked here.",
                        address)));
        found.addAll(topics());
        if (named.stream().noneMatch(id -> is(id, "insect")) && !named.contains(Subject.INSECTS)) {
            found.add(Suggestion.of(
                    SuggestionKind.LIST,
                    "The products that are held, with their other names. A species that is not among them can be checked with its own"
                            + " records, by POST /v1/claim or /v1/footprint.",
                    "/v1/products"));
        }
        found.add(Suggestion.of(
                SuggestionKind.LIST,
                "What can be asked, and by which route; all circulating claims are at /v1/claims.",
                "/guide/questions"));
        return found;
    }

    /** Whether somebody speaks of their own animals, which no other species stands for. */
    static boolean isOfOnesOwn(List<String> words) {
        return words.stream().anyMatch(SOMEBODYS_OWN::contains);
    }

    private List<Suggestion> topics() {
        Set<ClaimTopic> met = new LinkedHashSet<>();
        for (ClaimTopic topic : ClaimTopic.values()) {
            if (topic.isIn(words)) {
                met.add(topic);
            }
        }
        if (met.contains(ClaimTopic.REPLACING_FEED)) {
            met.remove(ClaimTopic.REPLACING_FOOD);
        }
        return met.stream()
                .limit(MOST_TOPICS)
                .map(topic -> topic.suggestion(
                        topic.isClaim() ? insectOr(Subject.INSECTS) : insect(),
                        reference().orElse("beef")))
                .toList();
    }

    /** The insect named, or one for many: an answer about all insects at once is only given to claims. */
    private String insect() {
        return insectOr("mealworm");
    }

    private String insectOr(String other) {
        return named.stream().filter(id -> is(id, "insect")).findFirst().orElse(other);
    }

    private Optional<String> reference() {
        return named.stream()
                .filter(id -> !id.equals(Subject.INSECTS) && !is(id, "insect") && !is(id, FEED))
                .findFirst();
    }

    private boolean is(String id, String group) {
        return Optional.ofNullable(library.products().get(id.replaceAll(":.*", "")))
                .map(Product::group)
                .filter(group::equals)
                .isPresent();
    }
}

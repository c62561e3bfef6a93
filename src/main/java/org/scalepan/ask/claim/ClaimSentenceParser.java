package org.scalepan.ask.claim;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.Side;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.input.Suggestion;

/**
 * Reads a claim out of a sentence as people say it: "crickets need 80 % less land than cattle". The grammar is small on purpose. Every
 * word must be understood, as a product, an indicator, a basis, the claim, or one of a list of words without a meaning of their own;
 * whatever else is in the sentence is reported instead of being ignored.
 */
public final class ClaimSentenceParser {
    /** Whoever pastes a page is not helped by the neighbours of every word. */
    private static final int MOST_LOOKED_UP = 8;

    private static final String GROUND_FORM = "meal";
    private static final List<String> MEALS = List.of("mealworm meal", "house cricket meal", "black soldier fly meal");

    private final Library library;
    private final String text;
    private final Lexicon lexicon;
    private final List<String> words;
    private final SentenceReader reader;
    private final Map<String, String> fields = new LinkedHashMap<>();
    private final List<ParsedClaim.NotUnderstood> faults = new ArrayList<>();
    private final List<String> sides = new ArrayList<>();
    /** True when the sentence says how much more the reference causes: "beef emits a hundred times more than insects". */
    private boolean reversed;
    /** Words that were not understood, with what may be meant by them. */
    private final List<Replacement> replacements = new ArrayList<>();
    /** What is claimed to be less, in the order of the sentence. */
    private final List<String> several = new ArrayList<>();

    /** Some words of the sentence and others that would be understood in their place. */
    private record Replacement(int from, int count, List<String> by) {}

    /** True when the sentence does not say what it compares with. */
    private boolean lessThanWhat;

    private ClaimSentenceParser(Library library, String text) {
        this.library = library;
        this.text = text;
        this.lexicon = new Lexicon(library);
        this.words = Lexicon.words(text);
        this.reader = new SentenceReader(words);
    }

    /** Reads a sentence with the names that a library knows. */
    public static ParsedClaim parse(Library library, String text) {
        Optional<String> english = FrenchSentence.english(text);
        ParsedClaim read = one(library, english.orElse(text));
        return read.faults().isEmpty()
                ? read
                : read.suggestingFirst(ClaimParts.readings(library, english.orElse(text)));
    }

    /** Reads a sentence that makes one claim. */
    static ParsedClaim one(Library library, String text) {
        return ContentSentenceParser.parse(library, text)
                .orElseGet(() -> new ClaimSentenceParser(library, text).parse());
    }

    /** What {@link #one} reads, or where the sentence claims the same of several indicators one claim for each. */
    static List<ParsedClaim> each(Library library, String text) {
        return ContentSentenceParser.each(library, text)
                .orElseGet(() -> new ClaimSentenceParser(library, text).parseEach());
    }

    private List<ParsedClaim> parseEach() {
        ParsedClaim read = parse();
        List<String> indicators = several.stream().distinct().toList();
        if (read.faults().size() != 1 || indicators.size() < 2) {
            return List.of(read);
        }
        return indicators.stream()
                .map(indicator -> {
                    Map<String, String> claim = new LinkedHashMap<>(fields);
                    claim.put("indicator", indicator);
                    return read.understoodAs(claim);
                })
                .toList();
    }

    private ParsedClaim parse() {
        bases();
        neutral();
        claim();
        products();
        List<String> indicators = indicators();
        rest();
        sides();
        if (faults.isEmpty()) {
            indicator(indicators);
        }
        List<Suggestion> suggestions = new ArrayList<>(replaced());
        if (faults.size() == 1 && several.stream().distinct().count() > 1) {
            suggestions.addAll(ClaimParts.ofEach(fields, several));
        }
        if (lessThanWhat && faults.size() == 1) {
            indicator(indicators);
            suggestions.addAll(ClaimParts.comparedWith(fields));
        }
        suggestions.addAll(new RefusedSentence(library, text, sides).suggestions());
        return new ParsedClaim(fields, reader.parts(), faults, suggestions);
    }

    private void bases() {
        for (int i = 0; i < words.size(); i++) {
            Optional<String> phrase = reader.longest(Lexicon.BASES.keySet(), i);
            if (phrase.isPresent()) {
                String meaning = Lexicon.BASES.getOrDefault(phrase.get(), "");
                reader.take(i, SentenceReader.size(phrase.get()), meaning);
                String[] pair = meaning.split("=", 2);
                fields.putIfAbsent(pair[0], pair[1]);
            }
        }
    }

    /** The sentence as it would be understood, with one word for another. */
    private List<Suggestion> replaced() {
        List<Suggestion> found = new ArrayList<>();
        if (replacements.size() != 1 || RefusedSentence.isOfOnesOwn(words)) {
            return found;
        }
        Replacement replacement = replacements.get(0);
        for (String by : replacement.by()) {
            List<String> other = new ArrayList<>(words.subList(0, replacement.from()));
            other.add(by);
            other.addAll(words.subList(replacement.from() + replacement.count(), words.size()));
            ParsedClaim read = one(library, String.join(" ", other));
            boolean met = found.stream().anyMatch(one -> one.question().equals(ClaimParts.address(read.fields())));
            if (read.faults().isEmpty() && !met) {
                found.add(Suggestion.of(
                        Suggestion.SuggestionKind.READING,
                        "Read with \"" + by + "\" in that place.",
                        ClaimParts.address(read.fields())));
            }
        }
        return found;
    }

    /** "Carbon neutral" claims no emissions at all; what is bought back elsewhere is no part of a footprint. */
    private void neutral() {
        for (int i = 0; i + 1 < words.size(); i++) {
            boolean said =
                    Lexicon.NEUTRAL.contains(words.get(i)) && words.get(i + 1).equals("neutral");
            if (said && reader.free(i) && reader.free(i + 1)) {
                reader.take(i, 2, "none=yes (no emissions at all; offsets elsewhere are no part of a footprint)");
                fields.put("none", "yes");
            }
        }
    }

    private void claim() {
        if (fields.containsKey("none")) {
            return;
        }
        for (int i = 0; i < words.size(); i++) {
            Optional<ClaimPhrase.Phrase> phrase = ClaimPhrase.at(words, reader.taken(), i);
            if (phrase.isPresent()) {
                ClaimPhrase.Phrase found = phrase.get();
                reader.take(i, found.words(), found.field() + "=" + found.value());
                fields.put(found.field(), found.value());
                reversed = found.reversed();
                // "80 % less" and then "less" again would be two claims; the first is the claim.
                return;
            }
        }
        faults.add(new ParsedClaim.NotUnderstood(
                "no claim was found in the sentence: say \"a hundred times less\", \"80 % less\", \"half of\", \"less\" or \"no\"",
                List.of()));
    }

    private void products() {
        for (int i = 0; i < words.size(); i++) {
            Optional<String> phrase = reader.longest(lexicon.products().keySet(), i);
            if (phrase.isEmpty()) {
                continue;
            }
            String id = lexicon.products().getOrDefault(phrase.get(), "");
            int length = SentenceReader.size(phrase.get());
            String form = "";
            while (reader.free(i + length)
                    && (Lexicon.BEHIND_A_PRODUCT.contains(words.get(i + length))
                            || Lexicon.GROUND.contains(words.get(i + length)))) {
                form = Lexicon.GROUND.contains(words.get(i + length)) ? GROUND_FORM : form;
                length++;
            }
            if (!form.isEmpty()) {
                ground(id, i, length);
            }
            String written = form.isEmpty() || id.equals(Subject.INSECTS) ? id : id + ":" + form;
            reader.take(i, length, written);
            if (!sides.contains(written)) {
                sides.add(written);
            }
        }
        if (sides.size() == 2 && isTurnedRound()) {
            sides.add(sides.remove(0));
        }
        if (sides.isEmpty()) {
            // "Larvae need no land": in talk about insects as food these are the insects.
            for (int i = 0; i < words.size(); i++) {
                if (reader.free(i) && words.get(i).equals("larvae")) {
                    reader.take(i, 1, Subject.INSECTS);
                    sides.add(Subject.INSECTS);
                }
            }
        }
    }

    /** Meal ends at the processing gate, and is made of one species, no two of which are alike. */
    private void ground(String id, int from, int length) {
        if (!id.equals(Subject.INSECTS)) {
            if (fields.putIfAbsent("boundary", "processing-gate") == null) {
                reader.parts()
                        .add(new ParsedClaim.Understood("", "boundary=processing-gate (meal is a processed product)"));
            }
            return;
        }
        replacements.add(new Replacement(from, length, MEALS));
        faults.add(new ParsedClaim.NotUnderstood(
                "insect meal is made of one species or another, which differ; name one", MEALS));
    }

    /** "Replacing beef with mealworms": what is replaced stands first. */
    private boolean isTurnedRound() {
        int replacing = words.indexOf("replacing");
        return replacing >= 0 && (words.lastIndexOf("with") > replacing || words.lastIndexOf("by") > replacing);
    }

    private List<String> indicators() {
        List<String> found = List.of();
        for (int i = 0; i < words.size(); i++) {
            Optional<String> phrase = reader.longest(Lexicon.INDICATORS.keySet(), i);
            if (phrase.isPresent()) {
                List<String> ids = Lexicon.INDICATORS.getOrDefault(phrase.get(), List.of());
                several.add(ids.get(0));
                found = ids;
                reader.take(i, SentenceReader.size(phrase.get()), "indicator=" + ids.get(0));
            }
        }
        List<String> claimed = several.stream().distinct().toList();
        if (claimed.size() > 1) {
            faults.add(new ParsedClaim.NotUnderstood(
                    "the sentence is about several things at once: "
                            + String.join(", ", claimed.subList(0, claimed.size() - 1)) + " and "
                            + claimed.get(claimed.size() - 1) + "; ask for one at a time",
                    List.of()));
        }
        for (int i = 0; i < words.size(); i++) {
            if (reader.free(i) && Lexicon.EMITTING.contains(words.get(i))) {
                reader.take(i, 1, "indicator=ghg");
                found = found.isEmpty() ? List.of("ghg") : found;
            }
        }
        return found;
    }

    /** Every word that is left must be one without a meaning of its own. */
    private void rest() {
        List<String> strange = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
            if (!reader.free(i)) {
                notUnderstood(strange, i);
                continue;
            }
            String word = words.get(i);
            String group = Lexicon.TOO_WIDE.get(word);
            String why = Lexicon.NOT_CARRIED.get(word);
            if (group != null) {
                faults.add(new ParsedClaim.NotUnderstood(
                        "\"" + word + "\" is too wide to be checked; name one", Lexicon.ofGroup(library, group)));
            } else if (why != null) {
                faults.add(new ParsedClaim.NotUnderstood("\"" + word + "\": " + why, List.of()));
            } else if (!Lexicon.FILLERS.contains(word)) {
                strange.add(word);
                continue;
            }
            notUnderstood(strange, i);
        }
        notUnderstood(strange, words.size());
    }

    /** Reports words in a row that were not understood, with the nearest that would be. */
    private void notUnderstood(List<String> strange, int end) {
        if (!strange.isEmpty()) {
            List<String> near = faults.size() < MOST_LOOKED_UP ? lexicon.near(strange) : List.of();
            if (!near.isEmpty()) {
                replacements.add(new Replacement(end - strange.size(), strange.size(), near));
            }
            faults.add(new ParsedClaim.NotUnderstood("not understood: \"" + String.join(" ", strange) + "\"", near));
            strange.clear();
        }
    }

    private void sides() {
        if (sides.size() > 2) {
            faults.add(new ParsedClaim.NotUnderstood(
                    "more than two products are named: " + String.join(", ", sides) + "; ask for two at a time",
                    List.of()));
            return;
        }
        boolean none = fields.containsKey("none");
        if (sides.size() == 1 && !none) {
            // "Half the emissions of chicken" names the reference only; the subject is then insects.
            boolean insect = isInsect(sides.get(0));
            if (insect) {
                faults.add(new ParsedClaim.NotUnderstood(
                        "less than what? name the product that " + sides.get(0) + " is compared with",
                        List.of("beef", "pork", "chicken")));
                lessThanWhat = true;
            } else {
                sides.add(0, Subject.INSECTS);
                reader.parts()
                        .add(new ParsedClaim.Understood("", "product=" + Subject.INSECTS + " (no product is named)"));
                reversed = false;
            }
        } else if (sides.isEmpty()) {
            faults.add(new ParsedClaim.NotUnderstood("no product was found in the sentence", List.of("insects")));
        }
        if (reversed && sides.size() == 2) {
            sides.add(sides.remove(0));
        }
        if (!sides.isEmpty()) {
            fields.put("product", sides.get(0));
        }
        if (sides.size() == 2) {
            fields.put("reference", sides.get(1));
        }
        if (sides.size() == 2 && sides.get(1).equals(Subject.INSECTS)) {
            faults.add(new ParsedClaim.NotUnderstood(
                    "insects cannot be what others are compared with, because they are not one product; name one",
                    Lexicon.ofGroup(library, "insect")));
        }
    }

    private boolean isInsect(String id) {
        Product product = library.products().get(id.replaceAll(":.*", ""));
        return id.equals(Subject.INSECTS) || (product != null && product.group().equals("insect"));
    }

    /** Where a word can mean two indicators it means the one by which the sides of this sentence have been measured. */
    private void indicator(List<String> candidates) {
        List<String> ids = candidates.isEmpty() ? List.of("ghg") : candidates;
        if (candidates.isEmpty()) {
            reader.parts().add(new ParsedClaim.Understood("", "indicator=ghg (no indicator is named)"));
        }
        String chosen = ids.stream().filter(this::isMeasured).findFirst().orElse(ids.get(0));
        if (ids.size() > 1) {
            reader.parts()
                    .add(new ParsedClaim.Understood(
                            "",
                            "indicator=" + chosen + " (" + String.join(" or ", ids)
                                    + "; the first by which the sides are measured)"));
        }
        fields.put("indicator", chosen);
    }

    private boolean isMeasured(String indicator) {
        return isMeasured(fields.getOrDefault("product", ""), indicator)
                && isMeasured(fields.getOrDefault("reference", Subject.INSECTS), indicator);
    }

    private boolean isMeasured(String id, String indicator) {
        Collection<Side> sides = id.equals(Subject.INSECTS)
                ? Subject.insects(library).sides()
                : Optional.ofNullable(library.products().get(id.replaceAll(":.*", ""))).stream()
                        .<Side>map(product -> new Side.PublishedSide(new ProductForm(product, product.defaultForm())))
                        .toList();
        return library.results().stream()
                .anyMatch(result -> result.indicator().equals(indicator)
                        && sides.stream().anyMatch(side -> side.product().id().equals(result.product())));
    }
}

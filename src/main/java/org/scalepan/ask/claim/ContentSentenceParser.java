package org.scalepan.ask.claim;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.input.Suggestion;
import org.scalepan.input.Suggestion.SuggestionKind;

/**
 * Reads a claim of contents out of a sentence: "crickets have twice the iron of beef", "insects contain all nine essential amino acids". As
 * in claims of footprints every word must be understood, or is reported.
 */
final class ContentSentenceParser {
    /** What protein is compared with when "meat" is said: the one most often meant. */
    private static final String MEAT = "beef";

    private static final int MOST_LOOKED_UP = 8;

    private final Library library;
    private final String text;
    private final Lexicon lexicon;
    private final List<String> words;
    private final SentenceReader reader;
    private final Map<String, String> fields = new LinkedHashMap<>();
    private final List<ParsedClaim.NotUnderstood> faults = new ArrayList<>();
    private final Set<String> contents = new LinkedHashSet<>();
    private final List<String> sides = new ArrayList<>();
    private final List<Suggestion> readings = new ArrayList<>();

    private ContentSentenceParser(Library library, String text) {
        this.library = library;
        this.text = text;
        this.lexicon = new Lexicon(library);
        this.words = Lexicon.words(text);
        this.reader = new SentenceReader(words);
    }

    /** Empty where the sentence claims nothing of contents. */
    static Optional<ParsedClaim> parse(Library library, String text) {
        ContentSentenceParser parser = new ContentSentenceParser(library, text);
        return parser.isOfContents() ? Optional.of(parser.parse()) : Optional.empty();
    }

    /** What {@link #parse} reads, or where the sentence claims the same of several contents one claim for each. */
    static Optional<List<ParsedClaim>> each(Library library, String text) {
        ContentSentenceParser parser = new ContentSentenceParser(library, text);
        if (!parser.isOfContents()) {
            return Optional.empty();
        }
        ParsedClaim read = parser.parse();
        if (read.faults().size() != 1 || parser.contents.size() < 2) {
            return Optional.of(List.of(read));
        }
        String reference = parser.fields.getOrDefault("reference", "beef");
        return Optional.of(parser.contents.stream()
                .map(content -> read.understoodAs(parser.claim(content, reference)))
                .toList());
    }

    /** A content that something is claimed of; "protein" alone may as well be the unit of a footprint. */
    private boolean isOfContents() {
        if (words.stream().anyMatch(Lexicon.EMITTING::contains) || ClaimTopic.PRICE.isIn(words)) {
            return false;
        }
        for (int i = 0; i < words.size(); i++) {
            boolean indicator = reader.longest(Lexicon.INDICATORS.keySet(), i)
                    .filter(phrase -> !ContentWords.CONTENTS.containsKey(phrase))
                    .isPresent();
            if (indicator && reader.longest(ContentWords.CONTENTS.keySet(), i).isEmpty() && !isFoodEnergy(i)) {
                return false;
            }
        }
        for (int i = 0; i < words.size(); i++) {
            Optional<String> phrase = reader.longest(ContentWords.CONTENTS.keySet(), i);
            if (phrase.isPresent()
                    && isClaimed(
                            i,
                            ContentWords.CONTENTS.getOrDefault(phrase.get(), ""),
                            SentenceReader.size(phrase.get()))) {
                return true;
            }
        }
        return false;
    }

    private boolean isFoodEnergy(int at) {
        return at > 0 && words.get(at).equals("energy") && words.get(at - 1).equals("food");
    }

    private boolean isClaimed(int at, String content, int size) {
        if (content.equals(ContentWords.AMINO_ACIDS) || content.equals(ContentWords.COMPLETE)) {
            return true;
        }
        if (content.equals(ContentWords.PROTEIN) && isAboutQuality()) {
            return true;
        }
        int before = at - 1;
        while (before >= 0 && ContentWords.BETWEEN.contains(words.get(before))) {
            before--;
        }
        boolean compared = before >= 0
                && (ContentWords.MORE.contains(words.get(before)) || ContentWords.LESS.contains(words.get(before)));
        boolean behind = at + size < words.size()
                && words.get(at + size).equals("content")
                && words.stream()
                        .anyMatch(word -> ContentWords.MORE.contains(word) || ContentWords.LESS.contains(word));
        return compared || behind || (!content.equals(ContentWords.PROTEIN) && isComparedAnywhere());
    }

    private boolean isComparedAnywhere() {
        return words.stream().anyMatch(word -> ContentWords.MORE.contains(word) || ContentWords.LESS.contains(word));
    }

    private boolean isAboutQuality() {
        return words.stream().anyMatch(ContentWords.AS_GOOD::contains);
    }

    private ParsedClaim parse() {
        bases();
        contents();
        products();
        amount();
        rest();
        sides();
        several();
        List<Suggestion> suggestions = new ArrayList<>(readings);
        suggestions.addAll(new RefusedSentence(library, text, sides).suggestions());
        return new ParsedClaim(fields, reader.parts(), faults, suggestions);
    }

    private void bases() {
        for (int i = 0; i < words.size(); i++) {
            Optional<String> phrase = reader.longest(ContentWords.BASES.keySet(), i);
            if (phrase.isPresent()) {
                String basis = ContentWords.BASES.getOrDefault(phrase.get(), "");
                reader.take(i, SentenceReader.size(phrase.get()), "basis=" + basis);
                fields.putIfAbsent("basis", basis);
            }
        }
    }

    private void contents() {
        for (int i = 0; i < words.size(); i++) {
            Optional<String> phrase = reader.longest(ContentWords.CONTENTS.keySet(), i);
            if (phrase.isPresent()) {
                String content = ContentWords.CONTENTS.getOrDefault(phrase.get(), "");
                if (isOnlyTheFood(i) && !isAboutQuality()) {
                    continue;
                }
                if (content.equals(ContentWords.PROTEIN) && isAboutQuality()) {
                    content = ContentWords.QUALITY;
                }
                contents.add(content);
                reader.take(i, SentenceReader.size(phrase.get()), "content=" + content);
            }
        }
        // Who says that a protein is good because it holds every amino acid claims the protein.
        if (contents.contains(ContentWords.QUALITY)) {
            contents.remove(ContentWords.AMINO_ACIDS);
        }
        if (contents.contains(ContentWords.COMPLETE)) {
            contents.remove(ContentWords.AMINO_ACIDS);
        }
    }

    /** "Cricket protein has more iron": the food, not the content. */
    private boolean isOnlyTheFood(int at) {
        return words.get(at).startsWith(ContentWords.PROTEIN)
                && at > 0
                && lexicon.products().containsKey(words.get(at - 1))
                && !words.get(at - 1).equals("of");
    }

    private void products() {
        for (int i = 0; i < words.size(); i++) {
            Optional<String> phrase = reader.longest(lexicon.products().keySet(), i);
            if (phrase.isEmpty()) {
                continue;
            }
            String id = lexicon.products().getOrDefault(phrase.get(), "");
            int from = i;
            int length = SentenceReader.size(phrase.get());
            String form = "";
            if (from > 0 && reader.free(from - 1) && ContentWords.FORMS.containsKey(words.get(from - 1))) {
                from--;
                length++;
                form = ContentWords.FORMS.getOrDefault(words.get(from), "");
            }
            while (reader.free(from + length)
                    && (Lexicon.BEHIND_A_PRODUCT.contains(words.get(from + length))
                            || ContentWords.FORMS.containsKey(words.get(from + length)))) {
                form = ContentWords.FORMS.getOrDefault(words.get(from + length), form);
                length++;
            }
            String written = id.equals(Subject.INSECTS) ? id : withForm(id, form);
            reader.take(from, length, written);
            if (!sides.contains(written)) {
                sides.add(written);
            }
        }
        for (int i = 0; i < words.size(); i++) {
            boolean meat = reader.free(i)
                    && (words.get(i).equals("meat") || words.get(i).equals("steak"));
            if (meat && !sides.contains(MEAT)) {
                reader.take(i, 1, MEAT + " (meat is many foods; name another to compare with it)");
                sides.add(MEAT);
            } else if (reader.free(i)
                    && sides.isEmpty()
                    && (words.get(i).equals("larvae") || words.get(i).equals("they"))) {
                reader.take(i, 1, Subject.INSECTS);
                sides.add(Subject.INSECTS);
            }
        }
    }

    private String withForm(String id, String form) {
        Product product = library.products().get(id);
        boolean usual =
                form.isEmpty() || product == null || product.defaultForm().equals(form);
        return usual ? id : id + ":" + form;
    }

    private void amount() {
        String field = "times_more";
        double times = 1;
        boolean said = false;
        for (int i = 0; i < words.size(); i++) {
            String word = words.get(i);
            if (!reader.free(i)) {
                continue;
            }
            Optional<EnglishNumber> number = EnglishNumber.at(words, i);
            if (ContentWords.LESS.contains(word)) {
                field = "times_less";
                times = word.equals("half") ? 2 : times;
                reader.take(i, 1, field);
                said = true;
            } else if (word.equals("twice") || word.equals("double") || word.equals("triple")) {
                times = word.equals("triple") ? 3 : 2;
                reader.take(i, 1, field + "=" + Claimed.number(times));
                said = true;
            } else if (number.isPresent()) {
                said |= numbered(i, number.get(), value -> fields.put("said", Claimed.number(value)));
            }
        }
        if (fields.containsKey("said")) {
            times = Double.parseDouble(fields.remove("said"));
        }
        boolean amount = contents.isEmpty()
                || contents.stream()
                        .anyMatch(id -> !id.equals(ContentWords.AMINO_ACIDS)
                                && !id.equals(ContentWords.COMPLETE)
                                && !id.equals(ContentWords.QUALITY));
        if (amount && (said || isComparedAnywhere())) {
            fields.put(field, Claimed.number(times));
        }
    }

    /** "Two or three times", "50 % more", "all nine". */
    private boolean numbered(int at, EnglishNumber first, java.util.function.DoubleConsumer times) {
        int next = at + first.words();
        double value = first.value();
        if (next < words.size()
                && (words.get(next).equals("or") || words.get(next).equals("to"))) {
            Optional<EnglishNumber> second = EnglishNumber.at(words, next + 1);
            if (second.isPresent()) {
                next += 1 + second.get().words();
                value = Math.min(value, second.get().value());
            }
        }
        if (next < words.size()
                && (words.get(next).equals("times") || words.get(next).equals("fold"))) {
            reader.take(at, next + 1 - at, "times=" + Claimed.number(value));
            times.accept(value);
            return true;
        }
        if (next < words.size() && words.get(next).equals("percent")) {
            boolean less = next + 1 < words.size() && ContentWords.LESS.contains(words.get(next + 1));
            boolean more = next + 1 < words.size() && words.get(next + 1).equals("more");
            double factor = less ? 1 / (1 - Math.min(value, 99) / 100) : more ? 1 + value / 100 : value / 100;
            reader.take(at, next + 1 - at, "times=" + Claimed.number(factor));
            times.accept(factor);
            return true;
        }
        if (contents.contains(ContentWords.AMINO_ACIDS) || contents.contains(ContentWords.QUALITY)) {
            reader.take(at, first.words(), "amino_acids=" + Claimed.number(first.value()));
            if (contents.contains(ContentWords.AMINO_ACIDS)) {
                fields.put("amino_acids", Claimed.number(first.value()));
            }
        }
        return false;
    }

    private void rest() {
        List<String> strange = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
            boolean known = !reader.free(i)
                    || Lexicon.FILLERS.contains(words.get(i))
                    || ContentWords.FILLERS.contains(words.get(i))
                    || ContentWords.AS_GOOD.contains(words.get(i))
                    || ContentWords.MORE.contains(words.get(i))
                    || ContentWords.BETWEEN.contains(words.get(i))
                    || ContentWords.FORMS.containsKey(words.get(i))
                    || Lexicon.BEHIND_A_PRODUCT.contains(words.get(i))
                    || words.get(i).equals("or");
            if (!known) {
                strange.add(words.get(i));
            } else {
                notUnderstood(strange);
            }
        }
        notUnderstood(strange);
    }

    private void notUnderstood(List<String> strange) {
        if (!strange.isEmpty()) {
            faults.add(new ParsedClaim.NotUnderstood(
                    "not understood: \"" + String.join(" ", strange) + "\"",
                    faults.size() < MOST_LOOKED_UP ? lexicon.near(strange) : List.of()));
            strange.clear();
        }
    }

    private void sides() {
        boolean compares = contents.stream()
                .anyMatch(id -> !id.equals(ContentWords.AMINO_ACIDS) && !id.equals(ContentWords.COMPLETE));
        if (sides.isEmpty()) {
            faults.add(new ParsedClaim.NotUnderstood("no product was found in the sentence", List.of("insects")));
            return;
        }
        if (sides.size() == 1 && compares && !isInsect(sides.get(0))) {
            sides.add(0, Subject.INSECTS);
            reader.parts().add(new ParsedClaim.Understood("", "product=" + Subject.INSECTS + " (no product is named)"));
        }
        fields.put("product", sides.get(0));
        if (sides.size() == 1 && compares) {
            faults.add(new ParsedClaim.NotUnderstood(
                    "more than what? name the food that " + sides.get(0) + " is compared with",
                    List.of("beef", "chicken", "egg")));
            for (String reference : List.of("beef", "chicken", "egg")) {
                readings.add(reading(contents.iterator().next(), reference));
            }
        } else if (compares && sides.size() == 2) {
            if (sides.get(1).equals(Subject.INSECTS)) {
                faults.add(new ParsedClaim.NotUnderstood(
                        "insects cannot be what others are compared with, because they are not one product; name one",
                        Lexicon.ofGroup(library, "insect")));
            } else {
                fields.put("reference", sides.get(1));
            }
        } else if (sides.size() > 2 && compares) {
            faults.add(new ParsedClaim.NotUnderstood(
                    "more than two products are named: " + String.join(", ", sides) + "; ask for two at a time",
                    List.of()));
            sides.stream()
                    .skip(1)
                    .filter(id -> !id.equals(Subject.INSECTS))
                    .forEach(reference ->
                            readings.add(reading(contents.iterator().next(), reference)));
        }
    }

    /** Several contents in one sentence are several claims. */
    private void several() {
        if (contents.size() > 1) {
            faults.add(new ParsedClaim.NotUnderstood(
                    "the sentence claims several things at once: " + String.join(", ", contents)
                            + "; each is a question of its own",
                    List.of()));
            String reference = fields.getOrDefault("reference", "beef");
            contents.forEach(content -> readings.add(reading(content, reference)));
        } else if (!contents.isEmpty()) {
            fields.put("content", contents.iterator().next());
        }
    }

    private Suggestion reading(String content, String reference) {
        Map<String, String> claim = claim(content, reference);
        return Suggestion.of(
                SuggestionKind.READING,
                "Read as: " + claim.get("product") + ", " + content
                        + (claim.containsKey("reference") ? ", compared with " + reference : "") + ".",
                ClaimParts.address(claim));
    }

    /** The claim of one content, as fields of a question. */
    private Map<String, String> claim(String content, String reference) {
        boolean alone = content.equals(ContentWords.AMINO_ACIDS) || content.equals(ContentWords.COMPLETE);
        Map<String, String> claim = new LinkedHashMap<>();
        claim.put("product", fields.getOrDefault("product", Subject.INSECTS));
        if (!alone) {
            claim.put("reference", reference);
        }
        claim.put("content", content);
        if (!alone && !content.equals(ContentWords.QUALITY)) {
            if (fields.containsKey("times_less")) {
                claim.put("times_less", fields.getOrDefault("times_less", ""));
            } else {
                claim.put("times_more", fields.getOrDefault("times_more", "1"));
            }
        }
        return claim;
    }

    private boolean isInsect(String written) {
        Product product = library.products().get(written.replaceAll(":.*", ""));
        return written.equals(Subject.INSECTS)
                || (product != null && product.group().equals("insect"));
    }
}

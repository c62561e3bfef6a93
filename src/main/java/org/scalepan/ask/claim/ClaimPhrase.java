package org.scalepan.ask.claim;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The ways in which a sentence says how much less. */
final class ClaimPhrase {
    private static final Set<String> LESS = Set.of("less", "fewer", "lower", "smaller");
    private static final Set<String> MORE = Set.of("more", "higher", "greater", "larger", "bigger", "as");
    private static final Set<String> NONE = Set.of("no", "zero", "without", "none", "not");
    private static final Set<String> BETTER =
            Set.of("less", "fewer", "lower", "smaller", "beat", "beats", "better", "greener", "cleaner");
    private static final Set<String> CUTTING =
            Set.of("cut", "cuts", "cutting", "reduce", "reduces", "reducing", "save", "saves", "saving");
    /** Little is less than something; no number is claimed. */
    private static final Set<String> VAGUE = Set.of("little", "low", "small");

    private static final Map<String, Integer> PARTS = Map.ofEntries(
            Map.entry("half", 2),
            Map.entry("third", 3),
            Map.entry("thirds", 3),
            Map.entry("quarter", 4),
            Map.entry("quarters", 4),
            Map.entry("fifth", 5),
            Map.entry("fifths", 5),
            Map.entry("sixth", 6),
            Map.entry("seventh", 7),
            Map.entry("eighth", 8),
            Map.entry("ninth", 9),
            Map.entry("tenth", 10),
            Map.entry("tenths", 10),
            Map.entry("twentieth", 20),
            Map.entry("hundredth", 100),
            Map.entry("thousandth", 1000));

    private ClaimPhrase() {}

    /** The claim that begins at a word, if one does and its words are not yet used. */
    static Optional<Phrase> at(List<String> words, boolean[] taken, int from) {
        Optional<Phrase> found = read(words, from);
        return found.filter(phrase -> {
            for (int i = from; i < from + phrase.words(); i++) {
                if (taken[i]) {
                    return false;
                }
            }
            return true;
        });
    }

    private static Optional<Phrase> read(List<String> words, int from) {
        Optional<Phrase> part = part(words, from);
        if (part.isPresent()) {
            return part;
        }
        if (words.get(from).equals("twice")) {
            return Optional.of(times(words, from, 1, 2));
        }
        Optional<EnglishNumber> number = EnglishNumber.at(words, from);
        if (number.isPresent()) {
            return numbered(words, from, number.get());
        }
        if (is(words, from, "factor") && is(words, from + 1, "of")) {
            return EnglishNumber.at(words, from + 2)
                    .map(found -> new Phrase(2 + found.words(), "times_less", plain(found.value()), false));
        }
        if (CUTTING.contains(words.get(from))) {
            return cut(words, from);
        }
        if (VAGUE.contains(words.get(from))) {
            return Optional.of(new Phrase(1, "times_less", "1", false));
        }
        if (words.get(from).equals("more") && is(words, from + 1, "efficient")) {
            return Optional.of(new Phrase(2, "times_less", "1", false));
        }
        if (NONE.contains(words.get(from))) {
            int any = is(words, from + 1, "any") ? 2 : 1;
            return Optional.of(new Phrase(any, "none", "yes", false));
        }
        if (BETTER.contains(words.get(from)) && !numberBehind(words, from)) {
            return Optional.of(new Phrase(1, "times_less", "1", false));
        }
        return words.get(from).equals("more") ? Optional.of(new Phrase(1, "times_less", "1", true)) : Optional.empty();
    }

    /** "Less by a factor of ten": the number is the claim. */
    private static boolean numberBehind(List<String> words, int from) {
        return words.subList(from, words.size()).contains("factor");
    }

    /** "Cuts emissions by 90 %": where a number stands behind it is the claim. */
    private static Optional<Phrase> cut(List<String> words, int from) {
        for (int at = from + 1; at < words.size(); at++) {
            if (!CUTTING.contains(words.get(at)) && read(words, at).isPresent()) {
                return Optional.empty();
            }
        }
        return Optional.of(new Phrase(1, "times_less", "1", false));
    }

    private static Optional<Phrase> numbered(List<String> words, int from, EnglishNumber first) {
        int next = from + first.words();
        double value = first.value();
        // "Ten to a hundred times": the least that is claimed is the claim.
        if (is(words, next, "to") || is(words, next, "or")) {
            Optional<EnglishNumber> second = EnglishNumber.at(words, next + 1);
            if (second.isPresent()) {
                next += 1 + second.get().words();
                value = Math.min(value, second.get().value());
            }
        }
        if (is(words, next, "times") || is(words, next, "fold")) {
            return Optional.of(times(words, from, next + 1 - from, value));
        }
        if (is(words, next, "percent")) {
            int behind = next + 1;
            if (behind < words.size() && LESS.contains(words.get(behind))) {
                return Optional.of(new Phrase(behind + 1 - from, "percent_less", plain(value), false));
            }
            if (value > 0 && value < 100 && words.subList(0, from).stream().anyMatch(CUTTING::contains)) {
                return Optional.of(new Phrase(next + 1 - from, "percent_less", plain(value), false));
            }
            return value > 0
                    ? Optional.of(new Phrase(next + 1 - from, "times_less", plain(100 / value), false))
                    : Optional.empty();
        }
        return Optional.empty();
    }

    /** "N times less" is said of the product, "N times more", "N times as much" and "N times the" of the reference. */
    private static Phrase times(List<String> words, int from, int count, double value) {
        int behind = from + count;
        boolean more = behind < words.size() && MORE.contains(words.get(behind));
        String efficient = more && behind + 1 < words.size() ? words.get(behind + 1) : "";
        if (efficient.startsWith("efficient")) {
            // Who is twice as efficient needs half.
            return new Phrase(count + 2, "times_less", plain(value), false);
        }
        if (behind < words.size() && LESS.contains(words.get(behind))) {
            return new Phrase(count + 1, "times_less", plain(value), false);
        }
        return new Phrase(more ? count + 1 : count, "times_less", plain(value), true);
    }

    /** "Half of", "a tenth of", "three tenths of"; "a third less". */
    private static Optional<Phrase> part(List<String> words, int from) {
        int at = from;
        double count = 1;
        if (is(words, at, "a") || is(words, at, "one")) {
            at++;
        } else {
            Optional<EnglishNumber> number = EnglishNumber.at(words, at);
            if (number.isPresent() && number.get().words() == 1) {
                count = number.get().value();
                at++;
            }
        }
        if (at >= words.size() || !PARTS.containsKey(words.get(at))) {
            return Optional.empty();
        }
        int parts = PARTS.getOrDefault(words.get(at), 1);
        if (!(count > 0 && count < parts)) {
            return Optional.empty();
        }
        if (at + 1 < words.size() && LESS.contains(words.get(at + 1))) {
            return Optional.of(new Phrase(at + 2 - from, "percent_less", plain(100 * count / parts), false));
        }
        return Optional.of(new Phrase(at + 1 - from, "times_less", plain(parts / count), false));
    }

    private static boolean is(List<String> words, int at, String word) {
        return at < words.size() && words.get(at).equals(word);
    }

    private static String plain(double value) {
        return new BigDecimal(value)
                .round(new MathContext(10))
                .stripTrailingZeros()
                .toPlainString();
    }

    /**
     * The claim in a sentence, as a field of the question.
     *
     * @param words how many words it takes
     * @param reversed whether it says how much more the reference causes
     */
    record Phrase(int words, String field, String value, boolean reversed) {}
}

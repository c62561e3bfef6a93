package org.scalepan.ask.claim;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Numbers as people write them: digits, or English words up to millions. */
record EnglishNumber(double value, int words) {
    private static final Map<String, Integer> SMALL = Map.ofEntries(
            Map.entry("one", 1),
            Map.entry("two", 2),
            Map.entry("three", 3),
            Map.entry("four", 4),
            Map.entry("five", 5),
            Map.entry("six", 6),
            Map.entry("seven", 7),
            Map.entry("eight", 8),
            Map.entry("nine", 9),
            Map.entry("ten", 10),
            Map.entry("eleven", 11),
            Map.entry("twelve", 12),
            Map.entry("thirteen", 13),
            Map.entry("fourteen", 14),
            Map.entry("fifteen", 15),
            Map.entry("sixteen", 16),
            Map.entry("seventeen", 17),
            Map.entry("eighteen", 18),
            Map.entry("nineteen", 19),
            Map.entry("twenty", 20),
            Map.entry("thirty", 30),
            Map.entry("forty", 40),
            Map.entry("fifty", 50),
            Map.entry("sixty", 60),
            Map.entry("seventy", 70),
            Map.entry("eighty", 80),
            Map.entry("ninety", 90));
    private static final Map<String, Integer> LARGE = Map.of("hundred", 100, "thousand", 1_000, "million", 1_000_000);

    /** The number that begins at a place in a sentence, with how many words it takes. */
    static Optional<EnglishNumber> at(List<String> words, int from) {
        if (from >= words.size()) {
            return Optional.empty();
        }
        if (words.get(from).matches("\\d{1,9}(\\.\\d{1,9})?")) {
            return Optional.of(scaled(words, from + 1, Double.parseDouble(words.get(from)), 1));
        }
        // "a hundred", but not "a" alone: that is no number.
        boolean article =
                words.get(from).equals("a") && from + 1 < words.size() && LARGE.containsKey(words.get(from + 1));
        if (article || LARGE.containsKey(words.get(from))) {
            return Optional.of(scaled(words, article ? from + 1 : from, 1, article ? 1 : 0));
        }
        return spoken(words, from);
    }

    /** {@code 2 hundred}, {@code a hundred thousand}. */
    private static EnglishNumber scaled(List<String> words, int from, double start, int taken) {
        double value = start;
        int place = from;
        while (place < words.size() && LARGE.containsKey(words.get(place))) {
            value *= LARGE.getOrDefault(words.get(place), 1);
            place++;
        }
        return new EnglishNumber(value, taken + place - from);
    }

    /** {@code two thousand five hundred and twenty}. */
    private static Optional<EnglishNumber> spoken(List<String> words, int from) {
        double total = 0;
        double part = 0;
        int place = from;
        int end = from;
        while (place < words.size()) {
            String word = words.get(place);
            boolean and = word.equals("and")
                    && place > from
                    && place + 1 < words.size()
                    && SMALL.containsKey(words.get(place + 1))
                    && LARGE.containsKey(words.get(place - 1));
            if (SMALL.containsKey(word)) {
                part += SMALL.getOrDefault(word, 0);
            } else if (LARGE.containsKey(word) && place > from) {
                int scale = LARGE.getOrDefault(word, 1);
                part = Math.max(1, part) * scale;
                if (scale > 100) {
                    total += part;
                    part = 0;
                }
            } else if (!and) {
                break;
            }
            place++;
            end = place;
        }
        return end == from ? Optional.empty() : Optional.of(new EnglishNumber(total + part, end - from));
    }
}

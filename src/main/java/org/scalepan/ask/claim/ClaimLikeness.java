package org.scalepan.ask.claim;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.scalepan.factors.Claim;
import org.scalepan.factors.Library;

/**
 * How near a sentence is to the claims in circulation, by the words that both have. A word that few of the claims have weighs more: the
 * inverse document frequency, and the cosine of the weighted sets of words (Salton and McGill 1983, Introduction to Modern Information
 * Retrieval, ch. 4).
 */
final class ClaimLikeness {
    /** Below this two sentences have little more in common than what they are about. A choice of this service. */
    private static final double LEAST = 0.25;

    private static final Map<String, String> SAME = Map.ofEntries(
            Map.entry("cattle", "beef"),
            Map.entry("cow", "beef"),
            Map.entry("pig", "pork"),
            Map.entry("larvae", "insect"),
            Map.entry("bug", "insect"),
            Map.entry("hundred", "100"),
            Map.entry("ten", "10"),
            Map.entry("twelve", "12"),
            Map.entry("six", "6"),
            Map.entry("twice", "2"),
            Map.entry("two", "2"),
            Map.entry("space", "land"),
            Map.entry("substitute", "replace"),
            Map.entry("substitutes", "replace"),
            Map.entry("swapping", "replace"),
            Map.entry("swap", "replace"),
            Map.entry("replacing", "replace"),
            Map.entry("replacement", "replace"),
            Map.entry("climate", "greenhouse"),
            Map.entry("emission", "greenhouse"),
            Map.entry("emit", "greenhouse"),
            Map.entry("gase", "gas"),
            Map.entry("efficiency", "efficient"),
            Map.entry("converting", "efficient"),
            Map.entry("conversion", "efficient"));

    private final Map<Claim, Set<String>> claims = new LinkedHashMap<>();
    private final Map<String, Integer> frequency = new HashMap<>();

    private ClaimLikeness(Library library) {
        for (Claim claim : library.claims()) {
            Set<String> words = words(claim.claim());
            claims.put(claim, words);
            words.forEach(word -> frequency.merge(word, 1, Integer::sum));
        }
    }

    static ClaimLikeness of(Library library) {
        return library.view(ClaimLikeness.class, ClaimLikeness::new);
    }

    /** The nearest claims, the nearest first; none where nothing is near. */
    List<Claim> nearest(String text, int most) {
        Set<String> said = words(text);
        return claims.entrySet().stream()
                .map(entry -> Map.entry(entry.getKey(), cosine(said, entry.getValue())))
                .filter(entry -> entry.getValue() >= LEAST)
                .sorted(Comparator.comparingDouble((Map.Entry<Claim, Double> entry) -> -entry.getValue())
                        .thenComparing(entry -> entry.getKey().id()))
                .limit(most)
                .map(Map.Entry::getKey)
                .toList();
    }

    private double cosine(Set<String> one, Set<String> other) {
        double common = one.stream()
                .filter(other::contains)
                .mapToDouble(this::squaredWeight)
                .sum();
        return common == 0 ? 0 : common / Math.sqrt(norm(one) * norm(other));
    }

    private double norm(Set<String> words) {
        return words.stream().mapToDouble(this::squaredWeight).sum();
    }

    private double squaredWeight(String word) {
        double weight = Math.log((claims.size() + 1.0) / frequency.getOrDefault(word, 1));
        return weight * weight;
    }

    /** The words that carry meaning, without their plurals. */
    private static Set<String> words(String text) {
        Set<String> found = new LinkedHashSet<>();
        for (String word : Lexicon.words(text)) {
            if (!Lexicon.FILLERS.contains(word)) {
                String single = word.length() > 3 && word.endsWith("s") && !word.endsWith("ss") && !word.equals("less")
                        ? word.substring(0, word.length() - 1)
                        : word;
                found.add(SAME.getOrDefault(word, SAME.getOrDefault(single, single)));
            }
        }
        return found;
    }
}

package org.scalepan.ask.claim;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Turns the words of a French claim into the English words that are parsed, word by word: claims are made of few. */
final class FrenchSentence {
    /** Words that no English claim has. */
    private static final Set<String> FRENCH = Set.of(
            "les",
            "des",
            "que",
            "fois",
            "moins",
            "du",
            "ont",
            "sont",
            "au",
            "aux",
            "est",
            "le",
            "la",
            "insectes",
            "grillons",
            "ne",
            "aucun",
            "plus",
            "autant",
            "dans",
            "nos",
            "ces");

    private static final Map<String, String> WORDS = words();

    private FrenchSentence() {}

    /** The English words of a French sentence; empty where it is not French. */
    static Optional<String> english(String text) {
        List<String> words = List.of(text.toLowerCase(Locale.ROOT)
                .replace("\u0153", "oe")
                .replaceAll("(\\d),(\\d{1,2})(?!\\d)", "$1.$2")
                .replaceAll("['\u2019]", " ")
                .replaceAll("(?<!\\d)\\.|\\.(?!\\d)", " ")
                .replaceAll("[^\\p{L}\\p{N}.%]+", " ")
                .strip()
                .split(" +"));
        if (words.stream().filter(FRENCH::contains).distinct().count() < 2) {
            return Optional.empty();
        }
        List<String> english = new ArrayList<>();
        int at = 0;
        while (at < words.size()) {
            int from = at;
            Optional<String> phrase = WORDS.keySet().stream()
                    .filter(known -> startsAt(words, from, known))
                    .max(Comparator.comparingInt(String::length));
            english.add(phrase.map(known -> WORDS.getOrDefault(known, "")).orElse(words.get(at)));
            at += phrase.map(known -> known.split(" ", -1).length).orElse(1);
        }
        return Optional.of(String.join(" ", english).replaceAll(" +", " ").strip());
    }

    private static boolean startsAt(List<String> words, int at, String phrase) {
        List<String> wanted = List.of(phrase.split(" ", -1));
        return at + wanted.size() <= words.size()
                && words.subList(at, at + wanted.size()).equals(wanted);
    }

    private static Map<String, String> words() {
        Map<String, String> found = new LinkedHashMap<>();
        String[][] pairs = {
            {"les", "the"},
            {"le", "the"},
            {"la", "the"},
            {"l", "the"},
            {"des", "of"},
            {"du", "of"},
            {"de", "of"},
            {"d", "of"},
            {"que", "than"},
            {"qu", "than"},
            {"un", "a"},
            {"une", "a"},
            {"et", "and"},
            {"ou", "or"},
            {"par", "per"},
            {"en", "in"},
            {"au", "the"},
            {"aux", "the"},
            {"a", "has"},
            {"ont", "have"},
            {"est", "is"},
            {"sont", "are"},
            {"fois", "times"},
            {"moins", "less"},
            {"plus", "more"},
            {"autant", "as much"},
            {"cent", "hundred"},
            {"mille", "thousand"},
            {"deux", "two"},
            {"trois", "three"},
            {"quatre", "four"},
            {"cinq", "five"},
            {"six", "six"},
            {"sept", "seven"},
            {"huit", "eight"},
            {"neuf", "nine"},
            {"dix", "ten"},
            {"douze", "twelve"},
            {"vingt", "twenty"},
            {"pour cent", "percent"},
            {"%", "percent"},
            {"moiti\u00e9", "half"},
            {"la moiti\u00e9", "half"},
            {"deux fois plus", "twice as much"},
            {"ne", ""},
            {"n", ""},
            {"pas", "no"},
            {"aucun", "no"},
            {"aucune", "no"},
            {"insectes", "insects"},
            {"insecte", "insects"},
            {"insectes comestibles", "insects"},
            {"grillons", "crickets"},
            {"grillon", "crickets"},
            {"grillons domestiques", "crickets"},
            {"vers de farine", "mealworms"},
            {"ver de farine", "mealworms"},
            {"t\u00e9n\u00e9brions", "mealworms"},
            {"criquets", "migratory locusts"},
            {"criquets migrateurs", "migratory locusts"},
            {"mouches soldats noires", "black soldier fly"},
            {"larves", "larvae"},
            {"farine", "meal"},
            {"poudre", "powder"},
            {"farine de poisson", "fishmeal"},
            {"tourteau de soja", "soybean meal"},
            {"farine d insectes", "insect meal"},
            {"charan\u00e7ons du palmier", "palm weevils"},
            {"larves de charan\u00e7on du palmier", "palm weevil larvae"},
            {"boeuf", "beef"},
            {"viande de boeuf", "beef"},
            {"boeufs", "beef"},
            {"bovins", "cattle"},
            {"vaches", "cows"},
            {"poulet", "chicken"},
            {"poulets", "chicken"},
            {"porc", "pork"},
            {"porcs", "pork"},
            {"lait", "milk"},
            {"oeufs", "eggs"},
            {"oeuf", "egg"},
            {"viande", "meat"},
            {"poisson", "fish"},
            {"agneau", "lamb"},
            {"tofu", "tofu"},
            {"\u00e9mettent", "emit"},
            {"\u00e9met", "emits"},
            {"rejettent", "emit"},
            {"produisent", "produce"},
            {"causent", "cause"},
            {"\u00e9missions", "emissions"},
            {"gaz \u00e0 effet de serre", "greenhouse gas"},
            {"gaz", "gas"},
            {"co2", "co2"},
            {"terre", "land"},
            {"terres", "land"},
            {"sol", "land"},
            {"surface", "land"},
            {"espace", "space"},
            {"place", "space"},
            {"eau", "water"},
            {"\u00e9nergie", "energy"},
            {"aliments", "feed"},
            {"aliment", "feed"},
            {"nourriture", "feed"},
            {"ont besoin", "need"},
            {"a besoin", "needs"},
            {"besoin", "need"},
            {"demandent", "need"},
            {"n\u00e9cessitent", "need"},
            {"consomment", "use"},
            {"utilisent", "use"},
            {"contiennent", "contain"},
            {"contient", "contains"},
            {"prot\u00e9ines", "protein"},
            {"prot\u00e9ine", "protein"},
            {"fer", "iron"},
            {"calcium", "calcium"},
            {"zinc", "zinc"},
            {"vitamine b12", "vitamin b12"},
            {"riches en", "rich in"},
            {"riche en", "rich in"},
            {"plus riches en", "richer in"},
            {"graisses", "fat"},
            {"graisse", "fat"},
            {"acides amin\u00e9s essentiels", "essential amino acids"},
            {"acides amin\u00e9s", "amino acids"},
            {"tous les", "all"},
            {"toutes les", "all"},
            {"prot\u00e9ine compl\u00e8te", "complete protein"},
            {"remplacent", "replace"},
            {"remplacer", "replace"},
            {"peuvent", "can"},
            {"neutres en carbone", "carbon neutral"},
            {"neutre en carbone", "carbon neutral"},
            {"m\u00e9thane", "methane"},
            {"kilogramme", "kg"},
            {"kilo", "kg"},
            {"par kg", "per kg"},
            {"nos", "our"},
            {"ces", "these"},
            {"mes", "my"},
            {"s\u00e9ch\u00e9s", "dried"},
            {"secs", "dried"},
            {"peu", "little"},
            {"prix", "price"},
            {"moins cher", "cheaper"},
            {"moins ch\u00e8res", "cheaper"}
        };
        for (String[] pair : pairs) {
            found.put(pair[0], pair[1]);
        }
        return found;
    }
}

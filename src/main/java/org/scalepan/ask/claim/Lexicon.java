package org.scalepan.ask.claim;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.scalepan.factors.Library;
import org.scalepan.factors.Nearest;
import org.scalepan.factors.Product;

/** The words of a claim sentence and what each stands for: products and their other names come from the library. */
final class Lexicon {
    /** Everyday names of an indicator; the ids are tried in order until both sides are measured. */
    static final Map<String, List<String>> INDICATORS = Map.ofEntries(
            Map.entry("greenhouse gas emissions", List.of("ghg")),
            Map.entry("greenhouse gas emission", List.of("ghg")),
            Map.entry("greenhouse gases", List.of("ghg")),
            Map.entry("greenhouse gas", List.of("ghg")),
            Map.entry("greenhouse emissions", List.of("ghg")),
            Map.entry("ghg emissions", List.of("ghg")),
            Map.entry("ghg", List.of("ghg")),
            Map.entry("carbon footprint", List.of("ghg")),
            Map.entry("carbon emissions", List.of("ghg")),
            Map.entry("climate footprint", List.of("ghg")),
            Map.entry("climate impact", List.of("ghg")),
            Map.entry("co2 emissions", List.of("ghg")),
            Map.entry("co2e", List.of("ghg")),
            Map.entry("co2", List.of("ghg")),
            Map.entry("carbon", List.of("ghg")),
            Map.entry("climate", List.of("ghg")),
            Map.entry("warming", List.of("ghg")),
            Map.entry("emissions", List.of("ghg")),
            Map.entry("emission", List.of("ghg")),
            Map.entry("gases", List.of("ghg")),
            Map.entry("gas", List.of("ghg")),
            Map.entry("footprint", List.of("ghg")),
            Map.entry("arable land", List.of("land")),
            Map.entry("agricultural land", List.of("land")),
            Map.entry("farm land", List.of("land")),
            Map.entry("farmland", List.of("land")),
            Map.entry("space", List.of("land")),
            Map.entry("land", List.of("land")),
            Map.entry("water footprint", List.of("water-footprint")),
            Map.entry("fresh water", List.of("water", "water-footprint")),
            Map.entry("freshwater", List.of("water", "water-footprint")),
            Map.entry("water", List.of("water", "water-footprint")),
            Map.entry("feed", List.of("feed", "feed-dry-matter")),
            Map.entry("fodder", List.of("feed", "feed-dry-matter")),
            Map.entry("energy", List.of("energy")));

    /** Verbs that say what is caused when no noun does. */
    static final Set<String> EMITTING = Set.of("emit", "emits", "emitted", "emitting", "pollute", "pollutes");

    /** Phrases that name the unit or the boundary, as {@code parameter=value}. */
    static final Map<String, String> BASES = bases();

    /** Words that carry no meaning of their own in such a sentence. */
    static final Set<String> FILLERS =
            Set.of(("the a an of than and is are be been being have has had cause causes caused causing"
                            + " produce produces produced producing use uses used using need needs needed require requires required take"
                            + " takes give gives off out up to release releases generate generates make makes making eat eating farm"
                            + " farmed farming rear reared rearing raise raised raising grow growing edible about around roughly"
                            + " approximately nearly almost some at least over as much many with from in for by that this their its it"
                            + " only just you we they very amount quantity do does did can could production compared one all on which"
                            + " when consume consumes consuming comes total whole"
                            + " your our whose other any so really actually true know known me my food foods edibles fact far instead replacing cut cuts cutting reduce reduces reducing save saves saving"
                            + " efficient efficiently efficiency converting convert converts into body mass weight little low small turn turning")
                    .split(" "));

    /** Words behind a product that add nothing to it. */
    static final Set<String> BEHIND_A_PRODUCT = Set.of(
            "larvae", "larva", "meat", "protein", "farming", "production", "farms", "cattle", "rearing", "adults");

    /** What ground animals are called. */
    static final Set<String> GROUND = Set.of("meal", "flour", "powder", "flours", "powders");

    /** What is neutral when somebody says that something causes no emissions. */
    static final Set<String> NEUTRAL = Set.of("carbon", "climate", "co2", "ghg");

    /** Words for many animals at once, with the ones to choose from. */
    static final Map<String, String> TOO_WIDE = Map.of(
            "meat", "livestock",
            "livestock", "livestock",
            "animals", "livestock",
            "animal", "livestock",
            "plants", "plant",
            "vegetables", "plant");

    /** What is measured, but by no indicator of this library. */
    static final Map<String, String> NOT_CARRIED = Map.of(
            "methane", "single gases are not an indicator here; ask for greenhouse gas emissions",
            "ammonia", "ammonia is not an indicator here",
            "nitrous", "single gases are not an indicator here; ask for greenhouse gas emissions",
            "heating", "heating is part of energy; ask for energy",
            "iron", "say how much more of it than what",
            "calcium", "say how much more of it than what",
            "healthier", "health is no part of a claim check");

    private static final int MOST_NEAR = 3;
    /** Shorter words are near too much. */
    private static final int LEAST_TO_COMPARE = 4;

    private final Map<String, String> products = new LinkedHashMap<>();

    Lexicon(Library library) {
        library.products()
                .values()
                .forEach(product -> names(product)
                        .flatMap(name -> Stream.of(name, plural(name)))
                        .forEach(name -> products.putIfAbsent(name, product.id())));
        for (String name : List.of("insects", "insect", "edible insects", "bugs")) {
            products.put(name, Subject.INSECTS);
        }
    }

    private static Stream<String> names(Product product) {
        return Stream.of(
                        Stream.of(product.id().replace('-', ' '), product.name()),
                        product.aliases().stream(),
                        product.taxon().stream().flatMap(taxa -> Stream.of(taxa.split("\\s*;\\s*"))))
                .flatMap(names -> names)
                .map(name -> String.join(" ", words(name)));
    }

    private static String plural(String name) {
        if (name.endsWith("y")) {
            return name.substring(0, name.length() - 1) + "ies";
        }
        return name + (name.endsWith("s") || name.endsWith("h") ? "es" : "s");
    }

    /** What a phrase of plain words stands for: a product id or {@code insects}. */
    Map<String, String> products() {
        return products;
    }

    /** The words nearest to some that were not understood, best first. */
    List<String> near(List<String> strange) {
        Map<String, String> known = new LinkedHashMap<>();
        products.keySet().forEach(phrase -> known.put(phrase.replace(' ', '-'), phrase));
        INDICATORS.keySet().forEach(phrase -> known.put(phrase.replace(' ', '-'), phrase));
        return Stream.concat(Stream.of(String.join(" ", strange)), strange.stream())
                .filter(typed -> typed.length() >= LEAST_TO_COMPARE)
                .flatMap(typed -> Nearest.to(typed, known.keySet(), MOST_NEAR).stream())
                .map(phrase -> known.getOrDefault(phrase, phrase))
                .distinct()
                .limit(MOST_NEAR)
                .toList();
    }

    /** A text as plain words: lower case, no signs but the point inside a number. */
    static List<String> words(String text) {
        String plain = text.toLowerCase(Locale.ROOT)
                .replaceAll("(\\d),(\\d{3})(?!\\d)", "$1$2")
                .replace("%", " percent ")
                .replaceAll("\\bper\\s+cent\\b", "percent")
                .replaceAll("['\u2019]", "")
                .replaceAll("(\\d)x(?![a-z])", "$1 times")
                .replaceAll("(\\d)\u00d7", "$1 times")
                .replaceAll("\\.(?!\\d)", " ")
                .replaceAll("[^\\p{L}\\p{N}.]+", " ")
                .strip();
        return plain.isEmpty() ? List.of() : List.of(plain.split(" +"));
    }

    private static Map<String, String> bases() {
        Map<String, String> found = new LinkedHashMap<>();
        List<String> kilo = List.of("kg", "kilogram", "kilo");
        for (String kg : kilo) {
            for (String of : List.of(" ", " of ")) {
                found.put("per " + kg + of + "protein", "per=kg-protein");
                found.put("per " + kg + of + "edible protein", "per=kg-protein");
                found.put("per " + kg + of + "live weight", "per=kg-live");
                found.put("per " + kg + of + "live weight gain", "per=kg-live");
                found.put("per " + kg + of + "weight gain", "per=kg-live");
                found.put("per " + kg + of + "mass gain", "per=kg-live");
                found.put("per " + kg + of + "edible product", "per=kg-edible");
                found.put("per " + kg + of + "edible weight", "per=kg-edible");
                found.put("per " + kg + of + "meat", "per=kg-edible");
                found.put("per " + kg + of + "food", "per=kg-edible");
                found.put("per " + kg + of + "product", "per=kg-product");
                found.put("per " + kg + of + "dry matter", "per=kg-dry-matter");
                found.put("per " + kg + of + "carcass", "per=kg-carcass");
            }
            found.put("per " + kg + " gained", "per=kg-live");
            found.put("per " + kg + " gain", "per=kg-live");
            found.put("per " + kg, "per=kg-edible");
            for (String one : List.of("1", "one", "a")) {
                found.put(one + " " + kg + " of", "per=kg-edible");
            }
        }
        for (String same : List.of(
                "for the same protein",
                "for the same amount of protein",
                "per gram of protein",
                "gram for gram of protein")) {
            found.put(same, "per=kg-protein");
        }
        for (String animal :
                List.of("from the animals alone", "from the animals themselves", "from the animals only", "directly")) {
            found.put(animal, "boundary=animal");
        }
        for (String gate :
                List.of("from cradle to farm gate", "up to the farm gate", "at the farm gate", "cradle to farm gate")) {
            found.put(gate, "boundary=farm-gate");
        }
        found.put("up to the processing gate", "boundary=processing-gate");
        for (String shop : List.of("up to retail", "up to the shop", "at retail", "in the shop")) {
            found.put(shop, "boundary=retail");
        }
        return found;
    }

    /** The ids of a group, for a reader to choose from. */
    static List<String> ofGroup(Library library, String group) {
        List<String> ids = new ArrayList<>();
        library.products().values().stream()
                .filter(product ->
                        product.group().equals(group) && product.broader().isEmpty())
                .limit(6)
                .forEach(product -> ids.add(product.id()));
        return ids;
    }
}

package org.scalepan.ask.claim;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.scalepan.input.Suggestion;
import org.scalepan.input.Suggestion.SuggestionKind;

/** What sentences are about that no claim check answers, by the words that give it away, and the question that does. */
enum ClaimTopic {
    /** "Can replace imported meat". */
    REPLACING_FOOD(
            "replace replaces replaced replacing replacement substitute substitutes substituting displace displaces instead swap"
                    + " swapping switching programme program remplacer remplace remplacent") {
        @Override
        Suggestion suggestion(String product, String reference) {
            return Suggestion.of(
                            SuggestionKind.QUESTION,
                            "What replacing changes depends on what is really eaten less, and by how much: POST /v1/substitution takes the"
                                    + " quantity, what it displaces and the rate, which has no default. The guide has a worked programme.",
                            "/guide/tour")
                    .posting(
                            "/v1/substitution",
                            "{\"product\":\"" + product
                                    + "\",\"kg_per_year\":1000,\"unit\":\"kg-product\",\"baseline\":[{\"product\":\""
                                    + reference + "\"}],\"displacement_rate\":0.5,\"indicators\":[\"ghg\"]}");
        }
    },
    /** "Can replace fishmeal". */
    REPLACING_FEED("fishmeal soybean soybeanmeal soymeal soya soy meal aquafeed farine") {
        @Override
        Suggestion suggestion(String product, String reference) {
            return Suggestion.of(
                            SuggestionKind.QUESTION,
                            "Insect meal in the diet of animals is a substitution as feed, on crude protein: POST /v1/substitution with"
                                    + " as=feed. What is published of both meals stands in the comparison.",
                            "/v1/comparison?products=mealworm:meal&against=soybean-meal&boundary=processing-gate")
                    .posting(
                            "/v1/substitution",
                            "{\"as\":\"feed\",\"animal\":\"poultry\",\"product\":\"mealworm:meal\",\"inclusion_percent\":10,"
                                    + "\"feed_kg_per_year\":1000,\"baseline\":[{\"product\":\"soybean-meal\"}],\"displacement_rate\":1,"
                                    + "\"indicators\":[\"ghg\"]}");
        }
    },
    PRICE(
            "cheap cheaper cheapest price prices priced cost costs costly expensive dear dearer affordable money prix cher") {
        @Override
        Suggestion suggestion(String product, String reference) {
            return Suggestion.of(
                    SuggestionKind.QUESTION,
                    "This library holds no prices. Put yours in place of 1, per kg as eaten and in the order of the products, and your"
                            + " currency in place of XXX: the answer is the price per kg of protein.",
                    "/v1/nutrition?products=" + product + "," + reference
                            + "&basis=10g-protein&prices=1,1&currency=XXX");
        }
    },
    NUTRITION(
            "healthy healthier health nutritious nutrition nutritional nutrient nutrients vitamin vitamins omega fat fats fatty fibre"
                    + " protein proteins amino acids iron zinc calcium b12 minerals mineral unsaturated digestible digestibility quality") {
        @Override
        Suggestion suggestion(String product, String reference) {
            return Suggestion.of(
                    SuggestionKind.QUESTION,
                    "What the foods contain, side by side, with the range of what is published and what people took up in trials.",
                    "/v1/nutrition?products=" + product + "," + reference + "&basis=100g-dry-matter");
        }
    },
    NITROGEN("label labels nitrogen comparable") {
        @Override
        Suggestion suggestion(String product, String reference) {
            return Suggestion.of(
                    SuggestionKind.QUESTION,
                    "Protein by each product's own nitrogen factor in place of 6.25.",
                    "/v1/nutrition?products=" + product + "," + reference + "&basis=100g-dry-matter&protein=corrected");
        }
    },
    EDIBLE_SHARE("edible fraction slaughter carcass dressing") {
        @Override
        Suggestion suggestion(String product, String reference) {
            return Suggestion.of(
                    SuggestionKind.QUESTION,
                    "How much of the animal is eaten, with the other conversions between units of this product.",
                    "/v1/products/" + product);
        }
    },
    ANIMAL_GASES("methane ch4 ammonia nitrous burp fart belch") {
        @Override
        Suggestion suggestion(String product, String reference) {
            return Suggestion.of(
                    SuggestionKind.QUESTION,
                    "Single gases are no indicator here; what comes from the animals and their manure or frass alone, methane and nitrous"
                            + " oxide together, is.",
                    "/v1/claim?product=" + product + "&indicator=ghg&none=yes&boundary=animal&per=kg-live");
        }
    },
    /** "Sustainable" says nothing that can be measured. */
    GREEN("sustainable sustainability green greener eco ecological friendly planet damage impact environment") {
        @Override
        Suggestion suggestion(String product, String reference) {
            return Suggestion.of(
                    SuggestionKind.QUESTION,
                    "Green is no quantity: say greenhouse gas, land, water or energy, and than what. Several markets forbid such words without"
                            + " proof; ask the local authority.",
                    "/v1/comparison?products=" + product + "&against=" + reference + "&indicator=ghg");
        }
    },
    NEUTRAL("neutral neutrality negative offset offsets") {
        @Override
        Suggestion suggestion(String product, String reference) {
            return Suggestion.of(
                    SuggestionKind.READING,
                    "Read as: causes no greenhouse gas emissions up to the farm gate. Emissions bought back elsewhere are no part of a"
                            + " footprint, and some markets forbid to claim them of a product: ask the local authority.",
                    "/v1/claim?product=" + product + "&indicator=ghg&none=yes");
        }
    },
    HEATING("heating heated heat cold blooded warm energy electricity") {
        @Override
        Suggestion suggestion(String product, String reference) {
            return Suggestion.of(
                    SuggestionKind.QUESTION,
                    "Heating is part of the energy of a product.",
                    "/v1/comparison?products=" + product + "&against=" + reference + "&indicator=energy");
        }
    },
    FEED(
            "fed feeding waste wastes residue residues leftovers conversion converting convert efficient efficiency efficiently") {
        @Override
        Suggestion suggestion(String product, String reference) {
            return Suggestion.of(
                    SuggestionKind.QUESTION,
                    "Kilograms of feed for a kilogram, for both.",
                    "/v1/comparison?products=" + product + "&against=" + reference + "&indicator=feed&per=kg-live");
        }
    },
    LAW("waste safe safety legal allowed supply proven allergy allergic") {
        @Override
        Suggestion suggestion(String product, String reference) {
            return Suggestion.of(
                    SuggestionKind.QUESTION,
                    "Safety and law as this library knows them; local rules and licensed professionals come first.",
                    "/v1/cautions?product=" + product);
        }
    },
    ONE_NUMBER("number allocation industrial scale tiny published results similarly") {
        @Override
        Suggestion suggestion(String product, String reference) {
            return Suggestion.of(
                    SuggestionKind.QUESTION,
                    "Every published footprint of the product, with allocation, scale and region.",
                    "/v1/results?product=" + product + "&indicator=ghg");
        }
    },
    YIELD("yield yields bin bins bucket container containers crate tray harvest") {
        @Override
        Suggestion suggestion(String product, String reference) {
            return Suggestion.of(
                    SuggestionKind.QUESTION,
                    "Reference farms built from published practice, with their yields; your own go into the records of POST"
                            + " /v1/footprint.",
                    "/v1/reference-farms");
        }
    },
    FRASS("frass fertiliser fertilizer credit manure compost") {
        @Override
        Suggestion suggestion(String product, String reference) {
            return Suggestion.of(
                            SuggestionKind.QUESTION,
                            "Frass as fertiliser, with and without its credit: POST /v1/footprint with credit=yes, for a farm's own records."
                                    + " The method stands in the guide.",
                            "/guide/methods")
                    .posting("/v1/footprint", farm("\"credit\":\"yes\",", ""));
        }
    };

    /** An invented farm, to be replaced by somebody's own records. */
    private static final String SYSTEM =
            "\"system\":{\"kind\":\"insects\",\"name\":\"an invented farm\",\"product\":\"mealworm\","
                    + "\"region\":\"portugal\",\"harvest\":{\"kg_per_year\":600},\"feed\":[{\"ingredient\":\"wheat-bran\",\"kg\":3600,"
                    + "\"burden\":\"mass\"}],\"energy\":[{\"carrier\":\"grid-electricity\",\"amount\":300}]}";

    @SuppressWarnings("ImmutableEnumChecker") // Unmodifiable.
    private final Set<String> words;

    ClaimTopic(String words) {
        this.words = Set.of(words.split(" "));
    }

    abstract Suggestion suggestion(String product, String reference);

    /** Whether the question is a claim, which may be of all insects at once. */
    boolean isClaim() {
        return this == ANIMAL_GASES || this == NEUTRAL;
    }

    /** Whether a sentence is about it. */
    boolean isIn(List<String> sentence) {
        return sentence.stream().anyMatch(words::contains);
    }

    /** The body of a question about a farm. */
    private static String farm(String before, String after) {
        return "{" + before + SYSTEM + after + "}";
    }

    /** A claim of the speaker's own farm, whose records are needed. */
    static Suggestion ownFarm(String product, Optional<String> reference) {
        return Suggestion.of(
                        SuggestionKind.QUESTION,
                        "What is said of somebody's own animals is checked with their records: POST /v1/claim takes them as system beside the"
                                + " sentence (the farm shown is invented). Without records a farm built from published practice stands in for"
                                + " them, with evidence=modelled.",
                        "/v1/comparison?products=" + product + "&against=" + reference.orElse("chicken")
                                + "&evidence=modelled")
                .posting("/v1/claim", farm("", ",\"reference\":\"" + reference.orElse("beef") + "\",\"times_less\":2"));
    }
}

package org.scalepan.cite;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;

/**
 * References that the tests share. The bibliographic data of the first four are as printed in the publications (initials of the given names
 * only, but for the first; the address of the report from memory, and four of its authors left out); the hostile ones are drawn at random.
 */
final class SampleReferences {
    /** Every character that means something to LaTeX, BibTeX, RIS or JSON, and the words that do. */
    private static final List<String> HOSTILE = List.of(
            "{",
            "}",
            "{{",
            "}}",
            "%",
            "&",
            "$",
            "#",
            "_",
            "~",
            "^",
            "\\",
            "\"",
            "'",
            "@",
            ",",
            "=",
            "*",
            "\n",
            "\r\n",
            "\t",
            "\u2028",
            "\u0000",
            "\nER  - ",
            "\r\nTY  - JOUR",
            "@article{x,",
            "\\end{document}",
            " and ",
            "é",
            "Ø",
            "漢",
            "😀",
            "CO2",
            "Tenebrio",
            "of",
            " ",
            "<b>",
            "--",
            "a");

    private SampleReferences() {}

    static Reference oonincx() {
        return new Reference(
                "oonincx-deboer-2012",
                "article-journal",
                "Environmental Impact of the Production of Mealworms as a Protein Source for Humans – A Life Cycle"
                        + " Assessment",
                List.of(person("Oonincx", "Dennis G. A. B."), person("de Boer", "Imke J. M.")),
                OptionalInt.of(2012),
                Optional.of("PLoS ONE"),
                Optional.of("7"),
                Optional.of("12"),
                Optional.of("e51145"),
                Optional.of("10.1371/journal.pone.0051145"),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "abstract",
                Optional.of("CC BY"),
                Optional.empty());
    }

    static Reference poore() {
        return onPage("987-992");
    }

    /** The article of Poore and Nemecek with its pages printed otherwise. */
    static Reference onPage(String page) {
        return new Reference(
                "poore-nemecek-2018",
                "article-journal",
                "Reducing food’s environmental impacts through producers and consumers",
                List.of(person("Poore", "J"), person("Nemecek", "T")),
                OptionalInt.of(2018),
                Optional.of("Science"),
                Optional.of("360"),
                Optional.of("6392"),
                Optional.of(page),
                Optional.of("10.1126/science.aaq0216"),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of("The copy read predates the erratum of February 2019"),
                "fulltext",
                Optional.empty(),
                Optional.empty());
    }

    static Reference smetana() {
        return new Reference(
                "smetana-2019",
                "article-journal",
                "Sustainable use of Hermetia illucens insect biomass for feed and food: Attributional and consequential"
                        + " life cycle assessment",
                List.of(person("Smetana", "S"), person("Schmitt", "E"), person("Mathys", "A")),
                OptionalInt.of(2019),
                Optional.of("Resources, Conservation and Recycling"),
                Optional.of("144"),
                Optional.empty(),
                Optional.of("285-296"),
                Optional.of("10.1016/j.resconrec.2019.01.042"),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "abstract",
                Optional.empty(),
                Optional.empty());
    }

    static Reference vanHuis() {
        return new Reference(
                "van-huis-2013",
                "report",
                "Edible insects: future prospects for food and feed security",
                List.of(person("van Huis", "A"), person("Van Itterbeeck", "J"), person("Klunder", "H")),
                OptionalInt.of(2013),
                Optional.of("FAO Forestry Paper"),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of("https://www.fao.org/4/i3253e/i3253e00.htm"),
                Optional.of("Food and Agriculture Organization of the United Nations"),
                Optional.of("171"),
                Optional.of("978-92-5-107595-1"),
                Optional.of(Reference.OTHERS_UNLISTED),
                "secondary",
                Optional.empty(),
                Optional.empty());
    }

    static Reference commonPractice() {
        return plain("common-practice", "document", "Common practice in the trade, no published source", List.of());
    }

    /** A reference with nothing known but what must be. */
    static Reference plain(String id, String type, String title, List<Name> authors) {
        return new Reference(
                id,
                type,
                title,
                authors,
                OptionalInt.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "memory",
                Optional.empty(),
                Optional.empty());
    }

    static Name person(String family, String given) {
        return new Name(Optional.of(family), Optional.of(given), Optional.empty());
    }

    static Name body(String literal) {
        return new Name(Optional.empty(), Optional.empty(), Optional.of(literal));
    }

    /** References whose every text is hostile; the same seed gives the same references. */
    static List<Reference> hostile(long seed, int count) {
        Random random = new Random(seed);
        List<String> types = List.of("article-journal", "report", "book", "dataset", "standard", "thesis", "webpage");
        List<Reference> references = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            List<Name> authors = new ArrayList<>();
            for (int n = random.nextInt(4); n > 0; n--) {
                authors.add(
                        random.nextBoolean()
                                ? person(hostileText(random), hostileText(random))
                                : body(hostileText(random)));
            }
            references.add(new Reference(
                    "source-" + i,
                    types.get(random.nextInt(types.size())),
                    hostileText(random),
                    authors,
                    random.nextBoolean() ? OptionalInt.of(1000 + random.nextInt(9000)) : OptionalInt.empty(),
                    perhaps(random),
                    perhaps(random),
                    perhaps(random),
                    perhaps(random),
                    random.nextBoolean() ? Optional.of("10.1000/a_b%(c)<1:2>#" + i) : Optional.empty(),
                    random.nextBoolean() ? Optional.of("https://example.org/a_b?c=%20&d=~#" + i) : Optional.empty(),
                    perhaps(random),
                    perhaps(random),
                    perhaps(random),
                    perhaps(random),
                    hostileText(random),
                    perhaps(random),
                    Optional.empty()));
        }
        return List.copyOf(references);
    }

    private static Optional<String> perhaps(Random random) {
        return random.nextBoolean() ? Optional.of(hostileText(random)) : Optional.empty();
    }

    private static String hostileText(Random random) {
        StringBuilder text = new StringBuilder();
        for (int n = random.nextInt(8); n > 0; n--) {
            text.append(HOSTILE.get(random.nextInt(HOSTILE.size())));
        }
        // A text must have something to print, at a random position.
        return text.insert(random.nextBoolean() ? 0 : text.length(), "x").toString();
    }
}

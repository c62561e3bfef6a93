package org.scalepan.ask.farm;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.factors.Library;
import org.scalepan.factors.Names;
import org.scalepan.factors.PublishedResult;
import org.scalepan.factors.table.Row;
import org.scalepan.factors.table.Table;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.production.RecordedNumber;
import org.scalepan.production.heating.RoomHeat;

/**
 * What an uncertain input is called.
 *
 * @param kind between-studies, next-study, choice-of-study, published-number, conversion, gas-shares, factor or record
 * @param words as a sentence says it
 * @param rows the rows of the library behind it
 * @param field of a record, its path in the records, such as {@code feed.0.kg}
 */
public record InputName(InputKind kind, String words, List<String> rows, Optional<String> field) {
    /** Lists whose entries the lines of an inventory are called by. */
    private static final List<String> NAMED_BY_LINE = List.of("feed", "energy", "transport", "materials");

    private static final List<String> SUBJECTS = List.of(
            "ingredient",
            "carrier",
            "mode",
            "material",
            "process",
            "fertiliser",
            "product",
            "category",
            "n_input",
            "crop");
    private static final List<String> QUANTITIES = List.of("quantity", "indicator");

    /** Kinds of input. */
    public enum InputKind {
        /** What studies of a product differ by, beyond their own errors. */
        BETWEEN_STUDIES,
        /** The error of the next study, or what is the next farm's own. */
        NEXT_STUDY,
        /** Which study a draw of the literature comes from, where all weigh the same. */
        CHOICE_OF_STUDY,
        /** The spread of one published result. */
        PUBLISHED_NUMBER,
        /** A factor of the functional-unit chain, such as protein per kg. */
        CONVERSION,
        /** How much of a published CO2e is which gas. */
        GAS_SHARES,
        /** A factor that records are counted with. */
        FACTOR,
        /** A number that the records give as a range. */
        RECORD;

        public String id() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }
    }

    public InputName {
        rows = List.copyOf(rows);
    }

    /** What is no record. */
    InputName(InputKind kind, String words, List<String> rows) {
        this(kind, words, rows, Optional.empty());
    }

    /**
     * Names a stream of draws.
     *
     * @param known streams of the literature that bear no row's id, with their names
     * @param lines the lines of inventories that factors stand in, by the factor's id
     */
    static InputName of(
            Library library,
            CommonRandomNumbers.Substream stream,
            Map<CommonRandomNumbers.Substream, InputName> known,
            Map<String, String> lines) {
        InputName named = known.get(stream);
        if (named != null) {
            return named;
        }
        if (RecordedNumber.isKey(stream.id())) {
            return ofRecord(stream.id(), Optional.ofNullable(lines.get(stream.id())));
        }
        if (stream.choice()) {
            return new InputName(
                    InputKind.GAS_SHARES, "gas shares of " + source(library, stream.id()), rows(library, stream.id()));
        }
        List<PublishedResult> results = library.results().stream()
                .filter(result -> result.finding().equals(stream.id()))
                .toList();
        if (!results.isEmpty()) {
            return ofResults(library, results);
        }
        return ofRow(library, stream.id(), Optional.ofNullable(lines.get(stream.id())));
    }

    /** {@code kg of wheat-bran in the records of Hill farm}, {@code share of manure 2 in the records of Hill farm}. */
    private static InputName ofRecord(String key, Optional<String> line) {
        String path = RecordedNumber.pathOf(key);
        String[] steps = path.split("\\.", 3);
        String place = "";
        if (steps.length == 2) {
            place = " of " + fieldWords(steps[0]);
        } else if (steps.length == 3) {
            place = " of "
                    + line.filter(what -> NAMED_BY_LINE.contains(steps[0]))
                            .orElseGet(() -> fieldWords(steps[0]) + " " + (Integer.parseInt(steps[1]) + 1));
        }
        return new InputName(
                InputKind.RECORD,
                fieldWords(steps[steps.length - 1]) + place + " in the records of " + RecordedNumber.systemOf(key),
                List.of(),
                Optional.of(path));
    }

    private static String fieldWords(String field) {
        return field.replace('_', ' ');
    }

    /** The error of what a study found, by the numbers that it prints. */
    static InputName ofResults(Library library, List<PublishedResult> results) {
        return new InputName(
                InputKind.PUBLISHED_NUMBER,
                words(results.get(0).indicator()) + " of "
                        + Names.of(library).of("product", results.get(0).product()) + ", "
                        + label(library, results.get(0).cited().source()),
                results.stream().map(PublishedResult::id).toList());
    }

    private static InputName ofRow(Library library, String id, Optional<String> line) {
        if (id.startsWith(RoomHeat.DRAWN_AS)) {
            return new InputName(
                    InputKind.FACTOR,
                    "heat that the room needs (" + words(id.substring(RoomHeat.DRAWN_AS.length())) + ")",
                    List.of());
        }
        int slash = id.indexOf('/');
        if (slash > 0) {
            // An uncertainty that the guidelines give for a whole kind of factor is drawn separately for each factor.
            InputName uncertainty = ofRow(library, id.substring(0, slash), line);
            return new InputName(
                    uncertainty.kind(),
                    uncertainty.words() + " for " + line.orElse(id.substring(slash + 1)),
                    uncertainty.rows());
        }
        for (Table table : library.tables()) {
            for (Row row : table.rows()) {
                if (row.optional("id").filter(id::equals).isPresent()) {
                    Optional<String> quantity = Names.of(library).subject(row, QUANTITIES);
                    Optional<String> subject = Names.of(library).subject(row, SUBJECTS);
                    String words = Stream.concat(quantity.stream(), subject.stream())
                            .reduce((one, other) -> one + " of " + other)
                            .orElse(id);
                    boolean chain = row.place().file().endsWith("composition.csv")
                            && !row.place().file().contains("ingredient");
                    String place = row.optional("region")
                            .map(region -> " in " + library.regions().words(region))
                            .orElse("");
                    return new InputName(chain ? InputKind.CONVERSION : InputKind.FACTOR, words + place, List.of(id));
                }
            }
        }
        return new InputName(InputKind.FACTOR, line.orElse(words(id.substring(id.lastIndexOf('.') + 1))), List.of());
    }

    private static List<String> rows(Library library, String id) {
        return library.gasShares().stream().anyMatch(shares -> shares.id().equals(id)) ? List.of(id) : List.of();
    }

    private static String source(Library library, String id) {
        return library.gasShares().stream()
                .filter(shares -> shares.id().equals(id))
                .map(shares -> Names.of(library).of("product", shares.product()) + ", "
                        + label(library, shares.cited().source()))
                .findFirst()
                .orElse(id);
    }

    private static String label(Library library, String source) {
        return library.reference(source).map(reference -> reference.label()).orElse(source);
    }

    private static String words(String id) {
        return id.replace('-', ' ');
    }
}

package org.scalepan.production;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What is said of one field of the records.
 *
 * @param path where it stands: a dot for each step inwards, {@code #} for the number of a line of a list
 * @param unit of a number; empty for a share as a fraction, a year and what is no number
 * @param least the least value of a number, in its unit
 * @param most the greatest
 * @param systems whose records have it; all kinds of farm when empty
 * @param words the words that it may be, where these are a choice of the records themselves
 * @param list the path of the list of its words in the service, where these are of the library
 * @param usual what stands for it when it is left out, where that is one value
 * @param description in a sentence; absent where farms and herds, or the words of the library, need one each
 */
public record FieldDefinition(
        String path,
        FieldKind kind,
        String unit,
        double least,
        double most,
        List<SystemKind> systems,
        List<String> words,
        Optional<String> list,
        Optional<String> usual,
        Optional<String> description) {
    public FieldDefinition {
        systems = List.copyOf(systems);
        words = List.copyOf(words);
    }

    /** The kinds of farm. */
    public enum SystemKind {
        INSECTS,
        HERD,
        FISH;

        public String id() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private static FieldDefinition of(String path, FieldKind kind, String unit, double least, double most) {
        return new FieldDefinition(
                path,
                kind,
                unit,
                least,
                most,
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    static FieldDefinition number(String path, String unit, double least, double most) {
        return of(path, FieldKind.NUMBER, unit, least, most);
    }

    static FieldDefinition wholeNumber(String path, double least, double most) {
        return of(path, FieldKind.WHOLE_NUMBER, "", least, most);
    }

    static FieldDefinition text(String path) {
        return of(path, FieldKind.TEXT, "", Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    static FieldDefinition word(String path) {
        return of(path, FieldKind.WORD, "", Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    FieldDefinition ofInsects() {
        return with(List.of(SystemKind.INSECTS), words, list, usual, description);
    }

    FieldDefinition ofHerds() {
        return with(List.of(SystemKind.HERD), words, list, usual, description);
    }

    FieldDefinition ofFish() {
        return with(List.of(SystemKind.FISH), words, list, usual, description);
    }

    FieldDefinition ofInsectsAndFish() {
        return with(List.of(SystemKind.INSECTS, SystemKind.FISH), words, list, usual, description);
    }

    FieldDefinition oneOf(String... choices) {
        return with(systems, List.of(choices), list, usual, description);
    }

    FieldDefinition listedAt(String route) {
        return with(systems, words, Optional.of(route), usual, description);
    }

    FieldDefinition usually(String value) {
        return with(systems, words, list, Optional.of(value), description);
    }

    FieldDefinition usually(int value) {
        return usually(Integer.toString(value));
    }

    FieldDefinition says(String sentence) {
        return with(systems, words, list, usual, Optional.of(sentence));
    }

    private FieldDefinition with(
            List<SystemKind> of,
            List<String> choices,
            Optional<String> route,
            Optional<String> value,
            Optional<String> sentence) {
        return new FieldDefinition(path, kind, unit, least, most, of, choices, route, value, sentence);
    }

    /** Its name in the object that has it: the last step of the path. */
    public String field() {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    /** The path of the object that has it, such as {@code feed.#}; empty for the records themselves. */
    public String owner() {
        return path.substring(0, Math.max(0, path.lastIndexOf('.')));
    }

    /** Whether the records of a kind of farm have it. */
    public boolean isOf(SystemKind other) {
        return systems.isEmpty() || systems.contains(other);
    }
}

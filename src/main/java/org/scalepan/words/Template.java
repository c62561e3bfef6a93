package org.scalepan.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The text of a message with places for its values: {@code {name}}; {@code {name.form}} for a value in a grammatical form; {@code
 * {name|study|studies}} for the word that goes with a number of things. Apostrophes and quotes need no escape.
 */
final class Template {
    private static final Pattern PLACE = Pattern.compile("\\{(\\w+)(?:\\.(\\w+))?(?:\\|([^|{}]*)\\|([^|{}]*))?}");

    private final List<Part> parts;

    /** A stretch of text, or a place for a value. */
    private sealed interface Part {
        record Fixed(String text) implements Part {}

        record Place(String name, String form) implements Part {}

        record Chosen(String name, String one, String many) implements Part {}
    }

    private Template(List<Part> parts) {
        this.parts = List.copyOf(parts);
    }

    static Template of(String text) {
        List<Part> parts = new ArrayList<>();
        Matcher place = PLACE.matcher(text);
        int done = 0;
        while (place.find()) {
            if (place.start() > done) {
                parts.add(new Part.Fixed(text.substring(done, place.start())));
            }
            String name = place.group(1);
            String form = Optional.ofNullable(place.group(2)).orElse("");
            String one = place.group(3);
            parts.add(
                    one == null
                            ? new Part.Place(name, form)
                            : new Part.Chosen(
                                    name,
                                    one,
                                    Optional.ofNullable(place.group(4)).orElse("")));
            done = place.end();
        }
        if (done < text.length()) {
            parts.add(new Part.Fixed(text.substring(done)));
        }
        return new Template(parts);
    }

    /** The names of the values that it has places for. */
    Set<String> names() {
        Set<String> names = new TreeSet<>();
        for (Part part : parts) {
            if (part instanceof Part.Place place) {
                names.add(place.name());
            } else if (part instanceof Part.Chosen chosen) {
                names.add(chosen.name());
            }
        }
        return names;
    }

    /**
     * The text with values.
     *
     * @param written a value in a form
     */
    String filled(Map<String, Object> values, Grammar grammar, BiFunction<Object, String, String> written) {
        StringBuilder text = new StringBuilder();
        for (Part part : parts) {
            if (part instanceof Part.Fixed plain) {
                text.append(plain.text());
            } else if (part instanceof Part.Place place) {
                text.append(written.apply(value(values, place.name()), place.form()));
            } else if (part instanceof Part.Chosen chosen) {
                long number = ((Number) value(values, chosen.name())).longValue();
                text.append(grammar.isPlural(number) ? chosen.many() : chosen.one());
            }
        }
        return text.toString();
    }

    private static Object value(Map<String, Object> values, String name) {
        Object value = values.get(name);
        if (value == null) {
            throw new IllegalArgumentException("a message lacks its value \"" + name + "\"");
        }
        return value;
    }
}

package org.scalepan.words;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A language that answers are given in: makes text of messages. */
public enum Language {
    ENGLISH("en", Grammar.ENGLISH),
    FRENCH("fr", Grammar.FRENCH);

    private final String id;
    private final Grammar grammar;

    /** The message files of every language, read when the first sentence is said. */
    private static final class Books {
        static final Map<Language, Phrasebook> BOOKS = Stream.of(Language.values())
                .collect(Collectors.toUnmodifiableMap(
                        language -> language, language -> Phrasebook.of(language.id, language.grammar)));
    }

    Language(String id, Grammar grammar) {
        this.id = id;
        this.grammar = grammar;
    }

    /** Its code (BCP 47). */
    public String id() {
        return id;
    }

    public static Optional<Language> of(String id) {
        return Stream.of(values()).filter(language -> language.id.equals(id)).findFirst();
    }

    public static List<String> ids() {
        return Stream.of(values()).map(Language::id).toList();
    }

    public String say(Message message) {
        return say(message.key(), message.values());
    }

    /**
     * The text of a message.
     *
     * @param namesAndValues name, value, name, value
     */
    public String say(String key, Object... namesAndValues) {
        return say(key, Message.named(namesAndValues));
    }

    private String say(String key, Map<String, Object> values) {
        return find(key)
                .orElseThrow(() -> new IllegalArgumentException("no message \"" + key + "\" in " + id))
                .filled(values, grammar, this::written);
    }

    /** The text of a message that the library or another table may have without a translation. */
    public String sayOr(String key, String otherwise) {
        return find(key)
                .map(template -> template.filled(Map.of(), grammar, this::written))
                .orElse(otherwise);
    }

    /** A number that is printed with a decimal point and no grouping. */
    public String figure(String printed) {
        return grammar.figure(printed);
    }

    /** With a capital letter, to begin a sentence. */
    public String capital(String text) {
        return grammar.capital(text);
    }

    /** A name outside a sentence, without article. */
    String alone(DisplayName name) {
        return written(name, "");
    }

    Set<String> keys() {
        return Objects.requireNonNull(Books.BOOKS.get(this)).keys();
    }

    Set<String> places(String key) {
        return find(key).map(Template::names).orElse(Set.of());
    }

    private Optional<Template> find(String key) {
        return Objects.requireNonNull(Books.BOOKS.get(this)).find(key);
    }

    private String written(Object value, String form) {
        if (value instanceof DisplayName name) {
            return name(name, form.isEmpty() ? "alone" : form);
        }
        String text;
        if (value instanceof Message message) {
            text = say(message);
        } else if (value instanceof Figure figure) {
            text = figure(figure.printed());
        } else if (value instanceof Integer || value instanceof Long) {
            text = figure(value.toString());
        } else if (value instanceof Listing list) {
            text = list.items().stream()
                    .map(one -> written(one, form))
                    .collect(Collectors.joining(grammar.joint(list.joint())));
            return text;
        } else if (value instanceof String plain) {
            text = plain;
        } else {
            throw new IllegalArgumentException("no message says a " + value.getClass());
        }
        return form.isEmpty() ? text : grammar.inForm(text, form);
    }

    private String name(DisplayName name, String form) {
        Optional<Template> translated = this == ENGLISH || name.key().isEmpty() ? Optional.empty() : find(name.key());
        if (translated.isEmpty()) {
            return grammar.inForm(name.english(), form);
        }
        String text = grammar.inForm(translated.get().filled(Map.of(), grammar, this::written), form);
        return name.behind().isEmpty() ? text : text + " (" + say(name.behind()) + ")";
    }
}

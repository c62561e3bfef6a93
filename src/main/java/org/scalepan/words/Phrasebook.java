package org.scalepan.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;

/** The message files of one language, read once. */
final class Phrasebook {
    /** The topics that every language has. */
    static final List<String> TOPICS = List.of(
            "programmes", "foods", "farms", "claims", "records", "evidence", "general", "sentences", "warnings");
    /** Names and cautions: in English the library has them. */
    static final List<String> TOPICS_OF_TRANSLATIONS = List.of("names", "cautions");

    private final Map<String, Template> templates;

    private Phrasebook(Map<String, Template> templates) {
        this.templates = Map.copyOf(templates);
    }

    static Phrasebook of(String language, Grammar grammar) {
        Map<String, Template> templates = new HashMap<>();
        TOPICS.forEach(topic -> read(topic, language, grammar, templates));
        if (grammar != Grammar.ENGLISH) {
            TOPICS_OF_TRANSLATIONS.forEach(topic -> read(topic, language, grammar, templates));
        }
        return new Phrasebook(templates);
    }

    private static void read(String topic, String language, Grammar grammar, Map<String, Template> templates) {
        String file = "/words/" + topic + "_" + language + ".properties";
        Properties texts = new Properties();
        try (InputStream bytes = Phrasebook.class.getResourceAsStream(file)) {
            if (bytes == null) {
                throw new IllegalStateException("no message file " + file);
            }
            Reader reader = new InputStreamReader(bytes, StandardCharsets.UTF_8);
            texts.load(reader);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        texts.stringPropertyNames().forEach(key -> {
            if (templates.put(key, Template.of(grammar.spaced(texts.getProperty(key)))) != null) {
                throw new IllegalStateException(key + " stands in two message files");
            }
        });
    }

    Optional<Template> find(String key) {
        return Optional.ofNullable(templates.get(key));
    }

    Set<String> keys() {
        return templates.keySet();
    }
}

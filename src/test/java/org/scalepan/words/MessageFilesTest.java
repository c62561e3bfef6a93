package org.scalepan.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.scalepan.Libraries;
import org.scalepan.factors.Library;

/** Every sentence stands in every language, with the same values, and no translation is left in English. */
class MessageFilesTest {
    private static final Library LIBRARY = Libraries.bundled();
    /** Words that are English and no French word. */
    private static final Pattern ENGLISH = Pattern.compile(
            "\\b(the|of|is|are|was|were|with|from|than|and|which|not|by|this|that|it|its|study|studies|feed|less|more|no|to|in)\\b",
            Pattern.CASE_INSENSITIVE);

    static Stream<String> topics() {
        return Phrasebook.TOPICS.stream();
    }

    @ParameterizedTest
    @MethodSource("topics")
    void a_topic_has_the_same_messages_in_both_languages(String topic) {
        assertEquals(texts(topic, "en").keySet(), texts(topic, "fr").keySet());
    }

    @ParameterizedTest
    @MethodSource("topics")
    void a_message_takes_the_same_values_in_both_languages(String topic) {
        List<String> different = texts(topic, "en").keySet().stream()
                .filter(key -> !Language.FRENCH.places(key).equals(Language.ENGLISH.places(key)))
                .toList();

        assertEquals(List.of(), different);
    }

    @Test
    void no_french_message_is_in_english() {
        List<String> english = new ArrayList<>();
        Stream.of(Phrasebook.TOPICS, Phrasebook.TOPICS_OF_TRANSLATIONS)
                .flatMap(List::stream)
                .flatMap(topic -> texts(topic, "fr").entrySet().stream())
                .filter(text -> ENGLISH.matcher(prose(text.getValue())).find())
                .forEach(text -> english.add(text.getKey() + "=" + text.getValue()));

        assertEquals(List.of(), english);
    }

    @Test
    void every_caution_of_the_library_has_a_translation() {
        Set<String> cautions = LIBRARY.cautions().stream()
                .map(caution -> "caution." + caution.id())
                .collect(Collectors.toCollection(TreeSet::new));

        assertEquals(cautions, texts("cautions", "fr").keySet());
    }

    @Test
    void every_product_region_and_form_of_the_library_has_a_name() {
        Set<String> names = new TreeSet<>();
        LIBRARY.products().keySet().forEach(id -> names.add("product." + id));
        LIBRARY.regions().all().forEach(region -> names.add("region." + region.id()));

        assertEquals(
                names,
                texts("names", "fr").keySet().stream()
                        .filter(key -> key.startsWith("product.") || key.startsWith("region."))
                        .collect(Collectors.toCollection(TreeSet::new)));
        LIBRARY.ids("forms").forEach(form -> assertTrue(texts("general", "fr").containsKey("form." + form), form));
    }

    @Test
    void the_pages_and_the_service_say_the_same_name() throws IOException {
        String page = Files.readString(Path.of("src/main/resources/site/page/fr.js"));

        List<String> different = texts("names", "fr").entrySet().stream()
                .filter(name ->
                        name.getKey().startsWith("product.") || name.getKey().startsWith("region."))
                .filter(name -> onThePage(page, name.getKey()))
                .filter(name -> !page.contains(id(name.getKey()) + ": \"" + name.getValue() + "\"")
                        && !page.contains("\"" + id(name.getKey()) + "\": \"" + name.getValue() + "\""))
                .map(Map.Entry::getKey)
                .toList();

        assertEquals(List.of(), different);
    }

    @Test
    void every_key_that_is_written_in_the_code_stands_in_the_files() throws IOException {
        Pattern said = Pattern.compile("(?:Message\\.of|\\bsay)\\(\\s*\"([\\w.-]+)\"\\s*[,)]");
        Set<String> missing = new TreeSet<>();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".java")).toList()) {
                said.matcher(Files.readString(file))
                        .results()
                        .map(found -> found.group(1))
                        .filter(key -> !Language.ENGLISH.keys().contains(key))
                        .forEach(missing::add);
            }
        }

        assertEquals(Set.of(), missing);
    }

    private static boolean onThePage(String page, String key) {
        return page.contains("\"" + id(key) + "\": \"") || page.contains(" " + id(key) + ": \"");
    }

    private static String id(String key) {
        return key.substring(key.indexOf('.') + 1);
    }

    /** A text without the names of its values and of the parameters that it speaks of. */
    private static String prose(String text) {
        return text.replaceAll("\\{\\w+\\||\\{\\w+[^{}|]*}", " ")
                .replaceAll("[\\w-]+=[\\w{}-]*", " ")
                .replaceAll("\\w+_\\w+", " ")
                .replaceAll("/v1/\\S+", " ")
                .replace("in vitro", " ");
    }

    private static Map<String, String> texts(String topic, String language) {
        Properties texts = new Properties();
        try (Reader file = new InputStreamReader(
                MessageFilesTest.class.getResourceAsStream("/words/" + topic + "_" + language + ".properties"),
                StandardCharsets.UTF_8)) {
            texts.load(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        Map<String, String> sorted = new TreeMap<>();
        texts.stringPropertyNames().forEach(key -> sorted.put(key, texts.getProperty(key)));
        return sorted;
    }
}

package org.scalepan.web.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.JsonAt;
import org.scalepan.web.Reply;

/** The messages of the pages: each is used, each exists in both languages, and each name is of a known id. */
class MessagesIT extends PageTest {
    private static final List<String> LANGUAGES = List.of("en.js", "fr.js");
    private static final List<String> PAGES =
            List.of("/", "/farm", "/protein", "/programme", "/examples", "/docs", "/guide");
    /** Names that English takes from the service, and French from its own file where it has them. */
    private static final Set<String> SERVICE_NAMES = Set.of("product", "region", "ingredients", "energy-carriers");

    private static final Pattern PLURAL = Pattern.compile("/(one|other)$");
    private static final Pattern LITERAL = Pattern.compile("\"([^\"\\n]*)\"");
    private static final Pattern TEMPLATE = Pattern.compile("`([a-z]+\\.[^`\\n]*)`");
    private static final Pattern MARKED = Pattern.compile("data-t(?:-label)?=\"([^\"]+)\"");
    private static final Pattern ASKED = Pattern.compile("\\bt\\(\"([^\"]+)\"");

    /** Every message by its key; steps down the tree are written with a slash, because a name may have dots of its own. */
    private static Map<String, String> messages(String file) {
        browser.open("/");
        browser.await("a page", () -> !browser.all("#product option").isEmpty());
        Object flat = browser.driver()
                .executeAsyncScript(
                        "const done = arguments[1]; import('/page/' + arguments[0]).then((file) => {"
                                + "const flat = (tree, at = '') => Object.entries(tree).flatMap(([key, value]) =>"
                                + " typeof value === 'string' ? [[at + key, value]] : flat(value, at + key + '/'));"
                                + "done(flat(file.default)); });",
                        file);
        Map<String, String> messages = new TreeMap<>();
        ((List<?>) flat).forEach(pair -> {
            List<?> entry = (List<?>) pair;
            messages.put(String.valueOf(entry.get(0)), String.valueOf(entry.get(1)));
        });
        return messages;
    }

    /** The keys as used in the scripts; plural forms are one message. */
    private static Set<String> asked(Map<String, String> messages) {
        Set<String> keys = new TreeSet<>();
        messages.keySet()
                .forEach(key -> keys.add(PLURAL.matcher(key).replaceFirst("").replace('/', '.')));
        return keys;
    }

    private static List<String> sources() {
        List<String> sources = new ArrayList<>();
        for (String name : new PageFiles().names()) {
            if (name.endsWith(".js") && !name.equals(PageFiles.LIBRARY) && !LANGUAGES.contains(name)) {
                sources.add(Reply.to("/page/" + name).body());
            }
        }
        PAGES.forEach(page -> sources.add(Reply.to(page).body()));
        return sources;
    }

    private static Set<String> found(Pattern pattern) {
        Set<String> found = new TreeSet<>();
        for (String source : sources()) {
            Matcher matcher = pattern.matcher(source);
            while (matcher.find()) {
                found.add(matcher.group(1));
            }
        }
        return found;
    }

    @Test
    void every_message_is_used() {
        Set<String> literals = found(LITERAL);
        List<Pattern> templates = found(TEMPLATE).stream()
                .map(text -> Pattern.compile(List.of(text.split("\\$\\{[^}]*}", -1)).stream()
                        .map(Pattern::quote)
                        .reduce((one, two) -> one + ".+" + two)
                        .orElseThrow()))
                .toList();
        List<String> unused = asked(messages("en.js")).stream()
                .filter(key -> key.startsWith("names.")
                        ? !literals.contains(key.split("\\.")[1])
                        : !literals.contains(key)
                                && templates.stream()
                                        .noneMatch(template ->
                                                template.matcher(key).matches()))
                .toList();

        assertEquals(List.of(), unused);
    }

    @Test
    void every_message_key_used_exists() {
        Set<String> there = asked(messages("en.js"));
        Set<String> missing = new TreeSet<>(found(ASKED));
        missing.addAll(found(MARKED));
        missing.removeAll(there);

        assertEquals(Set.of(), missing);
    }

    @Test
    void both_languages_hold_the_same_messages_with_the_same_values_in_them() {
        Map<String, String> english = messages("en.js");
        Map<String, String> french = messages("fr.js");
        french.keySet().removeIf(key -> key.startsWith("names/") && SERVICE_NAMES.contains(key.split("/")[1]));

        assertEquals(english.keySet(), french.keySet());
        english.forEach((key, text) -> assertEquals(values(text), values(french.get(key)), key));
    }

    private static Set<String> values(String text) {
        Set<String> values = new TreeSet<>();
        Matcher matcher = Pattern.compile("\\{\\w+}").matcher(text);
        while (matcher.find()) {
            values.add(matcher.group());
        }
        return values;
    }

    @ParameterizedTest
    @CsvSource({
        "product, products",
        "region, regions",
        "ingredients, ingredients",
        "energy-carriers, energy-carriers",
        "processing-steps, processing-steps",
        "indicator, indicators",
        "per, units",
        "boundary, boundaries",
        "grade, grades"
    })
    void every_translated_name_is_of_an_id_of_the_service(String kind, String list) {
        Set<String> known = known(list);
        for (String file : LANGUAGES) {
            Set<String> named = named(file, kind);
            named.removeAll(known);

            assertEquals(Set.of(), named, file);
        }
    }

    @ParameterizedTest
    @CsvSource({"product, products", "indicator, indicators", "boundary, boundaries", "grade, grades"})
    void french_has_a_name_for_every_id_in_a_sentence_of_the_page(String kind, String list) {
        Set<String> known = known(list);
        known.removeAll(named("fr.js", kind));

        assertEquals(Set.of(), known);
    }

    private static Set<String> known(String list) {
        Set<String> ids = new TreeSet<>();
        StreamSupport.stream(Reply.to("/v1/" + list).json().path("items").spliterator(), false)
                .forEach(item -> ids.add(JsonAt.text(item, "/id")));
        assertTrue(ids.size() > 2, list);
        return ids;
    }

    private static Set<String> named(String file, String kind) {
        Set<String> named = new TreeSet<>();
        messages(file).keySet().stream()
                .filter(key -> key.startsWith("names/" + kind + "/"))
                .forEach(key -> named.add(key.substring(("names/" + kind + "/").length())));
        return named;
    }
}

package org.scalepan.web.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.scalepan.web.server.Description;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** The files of the description: each valid and short enough to read, and joined the same for parsers of YAML 1.1 and 1.2. */
class DescriptionFilesTest {
    private static final int MOST_LINES = 900;
    private static final Pattern PART = Pattern.compile("(?m)^ *# part (\\S+)$");

    static List<String> files() {
        try (Stream<Path> found = Files.walk(Description.FOLDER)) {
            return found.filter(Files::isRegularFile)
                    .map(file -> Description.FOLDER.relativize(file).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void a_file_can_be_read_by_itself_and_on_a_few_screens(String file) {
        String text = Description.file(file);

        assertEquals(newer(text), older(text));
        assertTrue(
                text.lines().count() <= MOST_LINES, () -> file + " has more than " + MOST_LINES + " lines: split it");
        assertTrue(text.endsWith("\n") && !text.contains("\r"), () -> file + " does not end its lines with LF");
    }

    @Test
    void the_head_names_every_other_file_once() {
        List<String> named = new ArrayList<>(List.of(Description.HEAD));
        Matcher part = PART.matcher(Description.file(Description.HEAD));
        while (part.find()) {
            named.add(part.group(1));
        }

        assertEquals(files(), named.stream().sorted().toList());
    }

    @Test
    void yaml_1_1_and_1_2_parsers_read_the_same() {
        assertEquals(newer(Description.joined()), older(Description.joined()));
    }

    @Test
    void a_part_is_indented_like_the_comment_that_names_it() {
        String joined = DescriptionParts.joined(
                "a:\n  # part b.yaml\nc: d # part e.yaml\n",
                Map.of("b.yaml", "# costs $1\nf: |\n  one\n\n  two\n")::get);

        assertEquals("a:\n  # costs $1\n  f: |\n    one\n\n    two\nc: d # part e.yaml\n", joined);
    }

    /** Without the resolution of YAML 1.1, in which {@code on} is true and {@code 12:30} is 750. */
    private static JsonNode newer(String text) {
        try {
            return new YAMLMapper().readTree(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static JsonNode older(String text) {
        LoaderOptions options = new LoaderOptions();
        options.setAllowDuplicateKeys(false);
        Object tree = new Yaml(new SafeConstructor(options)).load(text);
        checkKeys("", tree);
        return new JsonMapper().valueToTree(tree);
    }

    private static void checkKeys(String at, Object tree) {
        if (tree instanceof Map<?, ?> map) {
            map.forEach((key, value) -> {
                assertTrue(key instanceof String, () -> at + " has the key " + key + ", which is a " + key.getClass());
                checkKeys(at + "/" + key, value);
            });
        } else if (tree instanceof Collection<?> list) {
            list.forEach(value -> checkKeys(at + "/-", value));
        }
    }
}

package org.scalepan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The example of the guide on many rows is a source that the build compiles, and it runs. */
class GuideExampleTest {
    private static final Path GUIDE = Path.of("src/site/markdown/many-rows.md");
    private static final Path SOURCE = Path.of("src/test/java/org/scalepan/AnswerRowsExample.java");

    @Test
    void the_guide_shows_the_compiled_example() throws IOException {
        List<String> source = Files.readAllLines(SOURCE);
        int begin = source.indexOf("    public static void main(String[] arguments) {") + 1;
        String compiled = source.subList(begin, source.lastIndexOf("    }")).stream()
                .map(line -> line.replaceFirst("^ {8}", ""))
                .collect(Collectors.joining("\n"));
        String guide = Files.readString(GUIDE);
        String block = guide.substring(guide.indexOf("```java\n") + 8);
        String shown = block.substring(0, block.indexOf("\n```"));

        assertEquals(compiled, shown);
        assertTrue(shown.lines().count() <= 15, "fifteen lines");
    }

    @Test
    void it_prints_the_figures_of_one_row_and_what_is_wrong_with_the_other() {
        PrintStream before = System.out;
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        try {
            System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
            AnswerRowsExample.main(new String[0]);
        } finally {
            System.setOut(before);
        }
        List<String> lines = printed.toString(StandardCharsets.UTF_8).lines().toList();
        assertTrue(lines.get(0).matches("17 ghg, at-least [0-9.]+ kg CO2e per kg protein"), lines.toString());
        assertTrue(lines.get(1).startsWith("17 land, "), lines.toString());
        assertTrue(lines.get(2).startsWith("18 is wrong: kind is missing"), lines.toString());
        assertEquals(
                "library " + AnswerLibrary.bundled().version() + ", "
                        + AnswerLibrary.bundled().digest(),
                lines.get(3));
    }
}

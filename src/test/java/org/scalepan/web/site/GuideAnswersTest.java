package org.scalepan.web.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.scalepan.web.Reply;

/**
 * README and the guides show real output. Each {@code console} block is a list of curl commands with what they print; this test sends the
 * same requests to a running service. After a change of data, run it once with {@code -Dscalepan.rewrite=true} and read the difference
 * before committing it.
 */
class GuideAnswersTest {
    private static final Pattern BLOCK = Pattern.compile("```console\n(.*?)```", Pattern.DOTALL);
    private static final Pattern COMMAND =
            Pattern.compile("\\$ curl -s '" + Documents.SERVICE + "([^']*)'((?: \\| .+)?)");
    private static final Pattern FOLD = Pattern.compile("fold -sw (\\d+)");
    private static final Pattern HEAD = Pattern.compile("head -n (\\d+)");
    private static final Pattern CUT = Pattern.compile("cut -d, -f([0-9,-]+)");
    private static final int MOST_LINES_OF_README = 5;

    static List<Path> documents() {
        return Documents.all().stream()
                .filter(document -> BLOCK.matcher(Documents.read(document)).find())
                .toList();
    }

    @ParameterizedTest
    @MethodSource("documents")
    void every_command_prints_what_is_shown(Path document) {
        String written = Documents.read(document);
        String served = BLOCK.matcher(written)
                .replaceAll(block -> Matcher.quoteReplacement("```console\n" + run(block.group(1)) + "```"));
        Documents.rewrite(document, served);

        assertEquals(served, written);
    }

    @Test
    void the_tour_and_the_readme_have_commands() {
        assertTrue(documents().containsAll(List.of(Documents.README, Documents.guide("tour"))));
    }

    @Test
    void the_readme_is_short_and_shows_short_answers() {
        String readme = Documents.read(Documents.README);

        assertTrue(readme.lines().count() <= 200, "lines of the readme");
        BLOCK.matcher(readme).results().forEach(block -> {
            long lines = block.group(1).lines().count();
            assertTrue(lines <= 1 + MOST_LINES_OF_README, () -> lines + " lines in " + block.group());
        });
    }

    private static String run(String block) {
        List<String> lines = new ArrayList<>();
        block.lines().filter(line -> line.startsWith("$ ")).forEach(line -> {
            Matcher command = COMMAND.matcher(line);
            assertTrue(command.matches(), "not a plain curl command: " + line);
            lines.add(line);
            List<String> printed =
                    Reply.to(command.group(1)).body().strip().lines().toList();
            for (String filter : command.group(2).split(" \\| ")) {
                printed = filter.isEmpty() ? printed : filtered(filter, printed);
            }
            // A fence within the answer would end the block.
            assertTrue(printed.stream().noneMatch(text -> text.startsWith("```")), line);
            printed.forEach(text -> lines.add(text.stripTrailing()));
        });
        return String.join("\n", lines) + "\n";
    }

    /** The three shell filters that the documents use. */
    private static List<String> filtered(String filter, List<String> lines) {
        Matcher fold = FOLD.matcher(filter);
        if (fold.matches()) {
            int width = Integer.parseInt(fold.group(1));
            return lines.stream().flatMap(line -> folded(line, width).stream()).toList();
        }
        Matcher head = HEAD.matcher(filter);
        if (head.matches()) {
            return lines.stream().limit(Long.parseLong(head.group(1))).toList();
        }
        Matcher cut = CUT.matcher(filter);
        if (cut.matches()) {
            return lines.stream().map(line -> cells(line, cut.group(1))).toList();
        }
        throw new AssertionError("not a filter that this test knows: " + filter);
    }

    /** Breaks a line after the last blank within the width, or within a word if there is none. */
    private static List<String> folded(String line, int width) {
        List<String> parts = new ArrayList<>();
        String rest = line;
        while (rest.length() > width) {
            int blank = rest.lastIndexOf(' ', width - 1);
            int end = blank < 0 ? width : blank + 1;
            parts.add(rest.substring(0, end));
            rest = rest.substring(end);
        }
        parts.add(rest);
        return parts;
    }

    private static String cells(String line, String chosen) {
        String[] cells = line.split(",", -1);
        return IntStream.rangeClosed(1, cells.length)
                .filter(number -> isChosen(number, chosen))
                .mapToObj(number -> cells[number - 1])
                .collect(Collectors.joining(","));
    }

    private static boolean isChosen(int number, String chosen) {
        for (String range : chosen.split(",")) {
            String[] ends = range.split("-");
            if (number >= Integer.parseInt(ends[0]) && number <= Integer.parseInt(ends[ends.length - 1])) {
                return true;
            }
        }
        return false;
    }
}

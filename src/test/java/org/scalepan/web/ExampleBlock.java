package org.scalepan.web;

import static java.util.Objects.requireNonNull;
import static java.util.stream.Collectors.toMap;

import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Writes the examples of the description anew: each value is the service's answer to the question beside it. Only the last block
 * of the file is touched, and in it only the values.
 */
final class ExampleBlock {
    private static final Pattern NAME = Pattern.compile("    (\\w+):");

    private ExampleBlock() {}

    static void rewrite() {
        Map<String, Description.Example> examples =
                Description.read().examples().stream().collect(toMap(Description.Example::name, example -> example));
        try {
            List<String> lines = Files.readAllLines(Description.FILE);
            int start = lines.lastIndexOf("  examples:");
            List<String> written = new ArrayList<>(lines.subList(0, start + 1));
            String name = "";
            boolean inValue = false;
            for (String line : lines.subList(start + 1, lines.size())) {
                Matcher opening = NAME.matcher(line);
                if (opening.matches()) {
                    name = opening.group(1);
                    inValue = false;
                } else if (line.matches("      [\\w-]+:.*")) {
                    inValue = line.startsWith("      value:");
                    if (inValue) {
                        written.addAll(value(requireNonNull(examples.get(name)).reply()));
                    }
                }
                if (!inValue) {
                    written.add(line);
                }
            }
            Files.writeString(Description.FILE, String.join("\n", written) + "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> value(Reply reply) {
        String body = reply.body();
        if (reply.isJson()) {
            // YAML takes JSON as it is, so that the example reads like the answer.
            return indented("      value:", body);
        }
        boolean manyLines = body.strip().contains("\n") && body.chars().allMatch(c -> c == '\n' || c >= ' ');
        if (manyLines && !body.startsWith(" ")) {
            String keep = !body.endsWith("\n") ? "|-" : body.endsWith("\n\n") ? "|+" : "|";
            return indented("      value: " + keep, body);
        }
        return List.of("      value: " + TextNode.valueOf(body));
    }

    private static List<String> indented(String head, String body) {
        List<String> lines = new ArrayList<>(List.of(head));
        body.lines().map(line -> line.isEmpty() ? "" : "        " + line).forEach(lines::add);
        return lines;
    }
}

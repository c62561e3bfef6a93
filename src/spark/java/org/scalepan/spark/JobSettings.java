package org.scalepan.spark;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a run is to do.
 *
 * @param input any path that the engine reads
 * @param question parameters of {@code POST /v1/footprints}, in the order of their names
 * @param idColumn the column or field that holds the id of a row
 * @param factors rows of one's own: a zip file or a folder that the driver can read
 * @param digest the library that the run must be answered from
 * @param partitions into how many tasks the rows are dealt; the engine decides where it is empty
 */
record JobSettings(
        String input,
        String output,
        RowFormat from,
        RowFormat to,
        Map<String, String> question,
        String idColumn,
        Optional<String> factors,
        Optional<String> digest,
        Optional<Integer> partitions) {
    static final String USAGE = "--input PATH --output PATH [--from csv|jsonl|parquet] [--to csv|jsonl|parquet]"
            + " [--question 'indicators=ghg,land&per=kg-protein'] [--id COLUMN] [--factors ZIP] [--library DIGEST]"
            + " [--partitions N]";
    private static final List<String> NAMES = List.of(
            "input", "output", "from", "to", "question", "id", "factors", "library", "partitions");

    static JobSettings read(String... arguments) {
        Map<String, String> given = new LinkedHashMap<>();
        for (int i = 0; i < arguments.length; i += 2) {
            String name = arguments[i].startsWith("--") ? arguments[i].substring(2) : "";
            if (!NAMES.contains(name) || i + 1 == arguments.length) {
                throw new IllegalArgumentException("cannot read \"" + arguments[i] + "\"; options: " + USAGE);
            }
            given.put(name, arguments[i + 1]);
        }
        RowFormat from = RowFormat.of(given.getOrDefault("from", "csv"));
        return new JobSettings(
                needed(given, "input"),
                needed(given, "output"),
                from,
                RowFormat.of(given.getOrDefault("to", from.id())),
                question(given.getOrDefault("question", "")),
                given.getOrDefault("id", "id"),
                Optional.ofNullable(given.get("factors")),
                Optional.ofNullable(given.get("library")),
                Optional.ofNullable(given.get("partitions")).map(Integer::valueOf));
    }

    private static String needed(Map<String, String> given, String name) {
        return Optional.ofNullable(given.get(name))
                .orElseThrow(() -> new IllegalArgumentException("--" + name + " is missing; options: " + USAGE));
    }

    private static Map<String, String> question(String written) {
        Map<String, String> question = new TreeMap<>();
        for (String part : written.split("&")) {
            if (!part.isEmpty()) {
                int sign = part.indexOf('=');
                if (sign < 0 || question.put(part.substring(0, sign), part.substring(sign + 1)) != null) {
                    throw new IllegalArgumentException("--question cannot be read at \"" + part + "\"");
                }
            }
        }
        return question;
    }
}

package org.scalepan.cite;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * References as CSL-JSON, the open exchange form of the Citation Style Language 1.0.2 (csl-data.json,
 * https://resource.citationstyles.org/schema/v1.0/input/json/csl-data.json).
 *
 * <p>How a source was seen, its licence and what is not known of the publication have no CSL field; they travel as {@code check},
 * {@code licence} and {@code publication} under {@code custom}. Fields of the schema that a {@link Reference} does not carry (abstract, language, ...) are passed over,
 * so that a list exported from a reference manager can be read; fields outside the schema are faults.
 */
public final class CslJson {
    private CslJson() {}

    /**
     * The references in the order of the list.
     *
     * @throws IllegalArgumentException with every fault, one on a line, as {@link #faults} gives them
     */
    public static List<Reference> read(JsonNode array) {
        CslReading reading = CslReading.of(array);
        if (!reading.faults().isEmpty()) {
            throw new IllegalArgumentException(String.join("\n", reading.faults()));
        }
        return reading.references();
    }

    /**
     * The references in the order of the list, or none when there is a fault.
     *
     * @param faults receives every fault, as {@link #faults} gives them
     */
    public static List<Reference> read(JsonNode array, Consumer<String> faults) {
        CslReading reading = CslReading.of(array);
        reading.faults().forEach(faults);
        return reading.faults().isEmpty() ? reading.references() : List.of();
    }

    /**
     * Every fault of the list as "sources.json: entry N (id): what, and what would be right", entries counted from 1;
     * empty if {@link #read} would succeed.
     */
    public static List<String> faults(JsonNode array) {
        return CslReading.of(array).faults();
    }

    /** The references as a CSL-JSON array; fields that are not known are left out. */
    public static JsonNode write(List<Reference> references) {
        ArrayNode array = JsonNodeFactory.instance.arrayNode();
        references.forEach(reference -> array.add(entry(reference)));
        return array;
    }

    private static ObjectNode entry(Reference reference) {
        ObjectNode entry = JsonNodeFactory.instance.objectNode();
        entry.put("id", reference.id());
        entry.put("type", reference.type());
        entry.put("title", reference.title());
        if (!reference.authors().isEmpty()) {
            ArrayNode authors = entry.putArray("author");
            reference.authorsWithOthers().forEach(name -> {
                ObjectNode author = authors.addObject();
                put(author, "family", name.family());
                put(author, "given", name.given());
                put(author, "literal", name.literal());
            });
        }
        reference
                .year()
                .ifPresent(year -> entry.putObject("issued")
                        .putArray("date-parts")
                        .addArray()
                        .add(year));
        put(entry, "container-title", reference.containerTitle());
        put(entry, "volume", reference.volume());
        put(entry, "issue", reference.issue());
        put(entry, "page", reference.page());
        put(entry, "DOI", reference.doi());
        put(entry, "URL", reference.url());
        put(entry, "publisher", reference.publisher());
        put(entry, "number", reference.number());
        put(entry, "ISBN", reference.isbn());
        put(entry, "note", reference.note());
        ObjectNode custom = entry.putObject("custom");
        custom.put("check", reference.check());
        put(custom, "licence", reference.licence());
        put(custom, "publication", reference.publication());
        if (!reference.missing().isEmpty()) {
            reference.missing().forEach(custom.putArray("not_known")::add);
        }
        return entry;
    }

    private static void put(ObjectNode object, String field, Optional<String> text) {
        text.ifPresent(value -> object.put(field, value));
    }

    /** A list read to its end: what could be read, and what was wrong. */
    private record CslReading(List<Reference> references, List<String> faults) {
        static CslReading of(JsonNode array) {
            if (!array.isArray()) {
                return new CslReading(List.of(), List.of("sources.json: not a list; write a JSON array of sources"));
            }
            List<Reference> references = new ArrayList<>();
            List<String> faults = new ArrayList<>();
            Map<String, Integer> numberOfId = new HashMap<>();
            int number = 0;
            for (JsonNode node : array) {
                number++;
                CslEntry entry = new CslEntry(node);
                String place =
                        "sources.json: entry " + number + " (" + entry.id().orElse("no id") + "): ";
                entry.faults().forEach(fault -> faults.add(place + fault));
                Integer earlier = entry.id().isPresent()
                        ? numberOfId.putIfAbsent(entry.id().get(), number)
                        : null;
                if (earlier != null) {
                    faults.add(place + "id is that of entry " + earlier + "; give each source an id of its own");
                }
                entry.reference().ifPresent(references::add);
            }
            return new CslReading(List.copyOf(references), List.copyOf(faults));
        }
    }
}

package org.scalepan.exchange.text;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.scalepan.words.Language;
import org.scalepan.words.Message;

/** Builds and writes JSON trees: fields in a fixed order, absent values left out, only finite numbers. */
public final class Json {
    private static final ObjectWriter WRITER = JsonMapper.builder()
            .build()
            .writer(new DefaultPrettyPrinter()
                    .withObjectIndenter(new DefaultIndenter("  ", "\n"))
                    .withArrayIndenter(new DefaultIndenter("  ", "\n")));

    private Json() {}

    public static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    public static ArrayNode array() {
        return JsonNodeFactory.instance.arrayNode();
    }

    public static ArrayNode texts(Collection<String> texts) {
        ArrayNode array = array();
        texts.forEach(array::add);
        return array;
    }

    public static ArrayNode texts(Collection<Message> messages, Language language) {
        return texts(messages.stream().map(message -> message.in(language)).toList());
    }

    /** Adds the text of a message where there is one. */
    public static void put(ObjectNode node, String field, Optional<Message> message, Language language) {
        put(node, field, message.map(found -> found.in(language)));
    }

    /** Adds a text where there is one. */
    public static void put(ObjectNode node, String field, Optional<String> text) {
        text.ifPresent(value -> node.put(field, value));
    }

    /** Adds a published number, unrounded, where there is one. */
    public static void put(ObjectNode node, String field, OptionalDouble number) {
        number.ifPresent(value -> node.put(field, value));
    }

    public static void put(ObjectNode node, String field, OptionalInt number) {
        number.ifPresent(value -> node.put(field, value));
    }

    /** A resolved question or a vocabulary entry: texts, numbers and lists of texts. */
    public static ObjectNode map(Map<String, ?> values) {
        ObjectNode node = object();
        values.forEach((name, value) -> {
            if (value instanceof Long whole) {
                node.put(name, whole);
            } else if (value instanceof Double number) {
                node.put(name, number);
            } else if (value instanceof List<?> list) {
                ArrayNode array = node.putArray(name);
                list.forEach(entry -> array.add(String.valueOf(entry)));
            } else {
                node.put(name, String.valueOf(value));
            }
        });
        return node;
    }

    public static String write(JsonNode node) {
        try {
            return WRITER.writeValueAsString(node) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of plain values can always be written", e);
        }
    }
}

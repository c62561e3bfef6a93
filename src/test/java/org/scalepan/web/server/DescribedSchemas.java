package org.scalepan.web.server;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.JsonMetaSchema;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.NonValidationKeyword;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaValidatorsConfig;
import com.networknt.schema.SpecVersion;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The schemas of the description, which are JSON Schema 2020-12, ready to judge what the service sends. */
public final class DescribedSchemas {
    private static final String NAME = "urn:scalepan:description";

    private final JsonSchemaFactory factory;
    private final SchemaValidatorsConfig config =
            SchemaValidatorsConfig.builder().build();
    private final Map<JsonPointer, JsonSchema> known = new HashMap<>();

    public DescribedSchemas(Description description) {
        // What a description adds to JSON Schema (x-vocabulary, discriminator and the like) says nothing about
        // validity.
        JsonMetaSchema dialect = JsonMetaSchema.builder(JsonMetaSchema.getV202012())
                .unknownKeywordFactory((keyword, node) -> new NonValidationKeyword(keyword))
                .build();
        factory = JsonSchemaFactory.builder(JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012))
                .metaSchema(dialect)
                .defaultMetaSchemaIri(dialect.getIri())
                .schemaLoaders(loaders ->
                        loaders.schemas(Map.of(NAME, description.root().toString())))
                .build();
    }

    /** What is wrong with a value by the schema that stands at a place of the description. */
    public List<String> faults(JsonPointer at, JsonNode value) {
        JsonSchema schema = known.computeIfAbsent(
                at, pointer -> factory.getSchema(SchemaLocation.of(NAME + "#" + pointer), config));
        return schema.validate(value).stream()
                .map(message -> message.getMessage() + " (schema " + message.getSchemaLocation() + ")")
                .toList();
    }
}

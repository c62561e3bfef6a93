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

/** The JSON Schemas (2020-12) of the description, for validating responses. */
public final class DescribedSchemas {
    private static final String NAME = "urn:scalepan:description";

    private final JsonSchemaFactory factory;
    private final SchemaValidatorsConfig config =
            SchemaValidatorsConfig.builder().build();
    private final Map<JsonPointer, JsonSchema> known = new HashMap<>();

    public DescribedSchemas(Description description) {
        // Extensions of JSON Schema (x-vocabulary, discriminator and the like) do not affect validity.
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

    /** Validation errors of a value by the schema at a pointer into the description. */
    public List<String> faults(JsonPointer at, JsonNode value) {
        JsonSchema schema = known.computeIfAbsent(
                at, pointer -> factory.getSchema(SchemaLocation.of(NAME + "#" + pointer), config));
        return schema.validate(value).stream()
                .map(message -> message.getMessage() + " (schema " + message.getSchemaLocation() + ")")
                .toList();
    }
}

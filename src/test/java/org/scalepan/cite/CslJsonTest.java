package org.scalepan.cite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The open exchange format of references: reading reports every fault; other programs can read what is written. */
class CslJsonTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    /**
     * What the CSL 1.0.2 input schema (csl-data.json, schema v1.0 of citationstyles.org, JSON Schema draft 7) says of the
     * fields written here. As there, nothing else is allowed.
     */
    private static final String CSL_1_0_2 = """
            {
              "type": "array",
              "items": {
                "type": "object",
                "required": ["type", "id"],
                "additionalProperties": false,
                "properties": {
                  "type": {"enum": ["article-journal", "book", "chapter", "dataset", "document", "paper-conference",
                                    "report", "standard", "thesis", "webpage"]},
                  "id": {"type": ["string", "number"]},
                  "author": {"type": "array", "items": {
                    "type": "object",
                    "additionalProperties": false,
                    "properties": {
                      "family": {"type": "string"}, "given": {"type": "string"}, "literal": {"type": "string"}}}},
                  "issued": {
                    "type": "object",
                    "additionalProperties": false,
                    "properties": {"date-parts": {
                      "type": "array", "minItems": 1, "maxItems": 2,
                      "items": {
                        "type": "array", "minItems": 1, "maxItems": 3, "items": {"type": ["string", "number"]}}}}},
                  "title": {"type": "string"},
                  "container-title": {"type": "string"},
                  "volume": {"type": ["string", "number"]},
                  "issue": {"type": ["string", "number"]},
                  "page": {"type": ["string", "number"]},
                  "DOI": {"type": "string"},
                  "URL": {"type": "string"},
                  "publisher": {"type": "string"},
                  "number": {"type": ["string", "number"]},
                  "ISBN": {"type": "string"},
                  "note": {"type": "string"},
                  "custom": {"type": "object"}
                }
              }
            }
            """;

    @Test
    void a_journal_article_is_read_with_every_part_of_its_record() {
        List<Reference> read = CslJson.read(json("""
                [{"id": "poore-nemecek-2018", "type": "article-journal",
                  "title": "Reducing food’s environmental impacts through producers and consumers",
                  "author": [{"family": "Poore", "given": "J"}, {"family": "Nemecek", "given": "T"}],
                  "issued": {"date-parts": [[2018, 6, 1]]}, "container-title": "Science", "volume": "360",
                  "issue": "6392", "page": "987-992", "DOI": "10.1126/science.aaq0216",
                  "note": "The copy read predates the erratum of February 2019", "custom": {"check": "fulltext"}}]
                """));
        assertEquals(List.of(SampleReferences.poore()), read);
    }

    @Test
    void numbers_are_read_where_the_schema_allows_them_and_the_year_may_be_text() {
        Reference read = CslJson.read(json("""
                        [{"id": 17, "type": "report", "title": "T", "volume": 7, "issue": 12, "page": 3, "number": 171,
                          "issued": {"date-parts": [["2013"]]}, "custom": {"check": "memory"}}]
                        """)).get(0);
        assertEquals("17", read.id());
        assertEquals(OptionalInt.of(2013), read.year());
        assertEquals(Optional.of("7"), read.volume());
        assertEquals(Optional.of("12"), read.issue());
        assertEquals(Optional.of("3"), read.page());
        assertEquals(Optional.of("171"), read.number());
    }

    @Test
    void particles_and_suffixes_join_the_family_name_in_reading_order() {
        Reference read = CslJson.read(json("""
                        [{"id": "a", "type": "book", "title": "T", "custom": {"check": "memory"}, "author": [
                          {"family": "Huis", "non-dropping-particle": "van", "given": "Arnold"},
                          {"family": "Humboldt", "dropping-particle": "von", "given": "A", "suffix": "Jr"}]}]
                        """)).get(0);
        assertEquals(
                List.of(SampleReferences.person("van Huis", "Arnold"), SampleReferences.person("von Humboldt Jr", "A")),
                read.authors());
    }

    @Test
    void fields_a_reference_manager_adds_are_ignored() {
        assertEquals(List.of(), CslJson.faults(json("""
                        [{"id": "a", "type": "book", "title": "T", "custom": {"check": "memory"}, "abstract": "...",
                          "language": "en", "ISSN": "1932-6203", "accessed": {"date-parts": [[2026, 11, 1]]}}]
                        """)));
    }

    @Test
    void a_source_without_author_or_year_is_read_as_such() {
        Reference read = CslJson.read(json(
                        "[{\"id\": \"a\", \"type\": \"book\", \"title\": \"T\", \"custom\": {\"check\": \"memory\"}}]"))
                .get(0);
        assertEquals(List.of(), read.authors());
        assertEquals(OptionalInt.empty(), read.year());
    }

    @Test
    void a_sound_list_has_no_faults_and_an_empty_list_is_sound() {
        assertEquals(List.of(), CslJson.faults(json("[]")));
        assertEquals(List.of(), CslJson.read(json("[]")));
    }

    @Test
    void every_fault_of_a_list_is_reported_with_its_entry() {
        JsonNode list = json("""
                [{"id": "good", "type": "book", "title": "T", "custom": {"check": "memory"}},
                 {"id": "bad", "type": "journal", "title": "", "DOI": "https://doi.org/10.1371/x", "issued": "2012",
                  "autor": [], "author": [{"given": "Imke"}, "Poore"]},
                 {"type": "book", "title": "T", "custom": {"check": "memory"}},
                 7,
                 {"id": "good", "type": "book", "title": "T", "custom": {"check": "memory"}}]
                """);
        List<String> faults = CslJson.faults(list);
        List<String> starts = List.of(
                "sources.json: entry 2 (bad): field \"autor\" is not one of CSL-JSON 1.0.2;",
                "sources.json: entry 2 (bad): author 1: an author has either a family name or",
                "sources.json: entry 2 (bad): author 2 is not an object;",
                "sources.json: entry 2 (bad): issued has no year; write {\"date-parts\": [[2012]]}",
                "sources.json: entry 2 (bad): type \"journal\" is not a CSL 1.0.2 item type;",
                "sources.json: entry 2 (bad): title is missing;",
                "sources.json: entry 2 (bad): DOI \"https://doi.org/10.1371/x\" is not a bare DOI;",
                "sources.json: entry 2 (bad): custom.check is missing;",
                "sources.json: entry 3 (no id): id \"\" cannot serve as a citation key;",
                "sources.json: entry 4 (no id): not an object;",
                "sources.json: entry 5 (good): id is that of entry 1;");
        assertEquals(starts.size(), faults.size(), faults.toString());
        for (int i = 0; i < starts.size(); i++) {
            assertTrue(faults.get(i).startsWith(starts.get(i)), faults.get(i));
        }
        assertEquals(
                String.join("\n", faults),
                assertThrows(IllegalArgumentException.class, () -> CslJson.read(list))
                        .getMessage());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"volume\": null | volume is not text",
                "\"volume\": \" \" | volume is blank",
                "\"container-title\": 7 | container-title is not text",
                "\"title\": [\"T\"] | title is not text",
                "\"author\": {} | author is not a list",
                "\"author\": [{\"literal\": \"A\", \"orcid\": \"1\"}] | author 1: part \"orcid\" is not one of a CSL-JSON",
                "\"author\": [{\"literal\": 7}] | author 1: literal is not text",
                "\"issued\": {} | issued has no year",
                "\"issued\": {\"date-parts\": [[]]} | issued has no year",
                "\"issued\": {\"date-parts\": [[2012.5]]} | issued has no year",
                "\"issued\": {\"date-parts\": [[\"c. 2012\"]]} | issued has no year",
                "\"issued\": {\"date-parts\": [[99999999999]]} | issued has no year",
                "\"issued\": {\"date-parts\": [[12]]} | year 12 does not have four digits",
                "\"URL\": \"javascript:alert(1)\" | URL \"javascript:alert(1)\" is not a web address",
                "\"custom\": \"memory\" | custom is not an object",
                "\"custom\": {\"check\": \"memory\", \"licence\": 4} | custom.licence is not text",
            })
    void a_field_of_the_wrong_form_is_a_fault_that_names_it(String field, String start) {
        JsonNode list =
                json("[{\"id\": \"a\", \"type\": \"book\", \"title\": \"T\", \"custom\": {\"check\": \"memory\"}, "
                        + field + "}]");
        List<String> faults = CslJson.faults(list);
        assertTrue(
                !faults.isEmpty() && faults.get(0).startsWith("sources.json: entry 1 (a): " + start),
                faults.toString());
        assertTrue(faults.get(0).contains("; "), "says what would be right: " + faults.get(0));
    }

    @ParameterizedTest
    @ValueSource(strings = {"{}", "null", "7", "\"sources\""})
    void what_is_not_a_list_is_a_fault(String text) {
        assertEquals(List.of("sources.json: not a list; write a JSON array of sources"), CslJson.faults(json(text)));
    }

    @Test
    void what_is_written_keeps_to_the_csl_1_0_2_schema() {
        List<Reference> references = List.of(
                SampleReferences.oonincx(),
                SampleReferences.poore(),
                SampleReferences.smetana(),
                SampleReferences.vanHuis(),
                SampleReferences.commonPractice());
        assertEquals(Set.of(), breachesOfCsl(CslJson.write(references)));
        assertEquals(Set.of(), breachesOfCsl(CslJson.write(SampleReferences.hostile(1, 200))));
    }

    @Test
    void reading_back_what_was_written_gives_the_same_references_however_hostile() throws JsonProcessingException {
        for (long seed = 0; seed < 20; seed++) {
            List<Reference> references = SampleReferences.hostile(seed, 100);
            String text = JSON.writeValueAsString(CslJson.write(references));
            assertEquals(references, CslJson.read(JSON.readTree(text)), "seed " + seed);
        }
    }

    private static Set<?> breachesOfCsl(JsonNode written) {
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V7)
                .getSchema(CSL_1_0_2)
                .validate(written);
    }

    private static JsonNode json(String text) {
        try {
            return JSON.readTree(text);
        } catch (JsonProcessingException broken) {
            throw new AssertionError(broken);
        }
    }
}

package org.scalepan.cite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * RIS by the rules of its specification (Research Information Systems, RIS Format Specifications, 2001): a tag is a
 * capital, a capital or digit, two spaces, a hyphen and a space; each on a line of its own ended by CR LF; TY first, ER last;
 * no asterisk in author and periodical fields. {@link RisImportTest} reads it with a parser of others.
 */
class RisTest {
    private static final Pattern LINE = Pattern.compile("[A-Z][A-Z0-9]  - [^\\p{Cc}\\u2028\\u2029]*");

    @Test
    void a_journal_article_is_written_tag_by_tag() {
        assertEquals(
                List.of(
                        "TY  - JOUR",
                        "LB  - oonincx-deboer-2012",
                        "TI  - Environmental Impact of the Production of Mealworms as a Protein Source for Humans – A Life"
                                + " Cycle Assessment",
                        "AU  - Oonincx, Dennis G. A. B.",
                        "AU  - de Boer, Imke J. M.",
                        "PY  - 2012",
                        "T2  - PLoS ONE",
                        "VL  - 7",
                        "IS  - 12",
                        "SP  - e51145",
                        "DO  - 10.1371/journal.pone.0051145",
                        "UR  - https://doi.org/10.1371/journal.pone.0051145",
                        "N1  - Seen: abstract. Licence: CC BY.",
                        "ER  - "),
                lines(Ris.write(List.of(SampleReferences.oonincx()))));
    }

    @Test
    void a_page_range_is_split_into_its_start_and_its_end() {
        List<String> lines = lines(Ris.write(List.of(SampleReferences.poore())));
        assertTrue(lines.contains("SP  - 987"), lines.toString());
        assertTrue(lines.contains("EP  - 992"), lines.toString());
    }

    @Test
    void a_report_keeps_its_number_publisher_and_isbn() {
        List<String> lines = lines(Ris.write(List.of(SampleReferences.vanHuis())));
        assertEquals("TY  - RPRT", lines.get(0));
        assertTrue(lines.contains("PB  - Food and Agriculture Organization of the United Nations"), lines.toString());
        assertTrue(lines.contains("M1  - 171"), lines.toString());
        assertTrue(lines.contains("SN  - 978-92-5-107595-1"), lines.toString());
        assertTrue(lines.contains("UR  - https://www.fao.org/4/i3253e/i3253e00.htm"), lines.toString());
    }

    @ParameterizedTest
    @CsvSource({
        "article-journal, JOUR",
        "report, RPRT",
        "book, BOOK",
        "dataset, DATA",
        "standard, STAND",
        "webpage, ELEC",
        "thesis, THES",
        "chapter, CHAP",
        "document, GEN"
    })
    void the_csl_type_decides_the_reference_type(String csl, String ris) {
        assertEquals(
                "TY  - " + ris,
                lines(Ris.write(List.of(SampleReferences.plain("a", csl, "T", List.of()))))
                        .get(0));
    }

    @Test
    void a_body_is_one_author_without_a_comma_added() {
        List<String> lines = lines(Ris.write(
                List.of(SampleReferences.plain("a", "report", "T", List.of(SampleReferences.body("World Bank"))))));
        assertTrue(lines.contains("AU  - World Bank"), lines.toString());
    }

    @Test
    void no_references_give_no_text() {
        assertEquals("", Ris.write(List.of()));
    }

    @Test
    void hostile_texts_cannot_begin_or_end_a_record() {
        for (long seed = 0; seed < 20; seed++) {
            List<Reference> references = SampleReferences.hostile(seed, 100);
            List<String> lines = lines(Ris.write(references));
            int record = -1;
            boolean open = false;
            for (String line : lines) {
                assertTrue(LINE.matcher(line).matches(), line);
                assertEquals(
                        line.startsWith("TY"), !open, "TY opens a record and nothing else stands outside: " + line);
                if (line.startsWith("TY")) {
                    record++;
                    open = true;
                } else if (line.startsWith("LB")) {
                    assertEquals("LB  - " + references.get(record).id(), line);
                } else if (line.startsWith("DO")) {
                    assertEquals("DO  - " + references.get(record).doi().orElseThrow(), line);
                } else if (line.startsWith("ER")) {
                    assertEquals("ER  - ", line);
                    open = false;
                } else if (line.startsWith("AU") || line.startsWith("T2")) {
                    assertFalse(line.contains("*"), line);
                }
            }
            assertFalse(open);
            assertEquals(references.size(), record + 1, "seed " + seed);
            assertEquals(
                    references.stream().mapToInt(r -> r.authors().size()).sum(),
                    lines.stream().filter(line -> line.startsWith("AU  - ")).count());
        }
    }

    /** The lines of the text, after checking that each ends in CR LF. */
    private static List<String> lines(String text) {
        assertTrue(text.endsWith("\r\n"), text);
        return List.of(text.substring(0, text.length() - 2).split("\r\n", -1));
    }
}

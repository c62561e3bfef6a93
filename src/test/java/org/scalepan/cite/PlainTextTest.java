package org.scalepan.cite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** References as pasted into a text: author, year, title, container, address. */
class PlainTextTest {
    @Test
    void a_journal_article_reads_as_an_author_date_reference() {
        assertEquals(
                "Oonincx DGAB, de Boer IJM (2012) Environmental Impact of the Production of Mealworms as a Protein Source for"
                        + " Humans – A Life Cycle Assessment. PLoS ONE 7(12): e51145."
                        + " https://doi.org/10.1371/journal.pone.0051145",
                PlainText.of(SampleReferences.oonincx()));
    }

    @Test
    void a_volume_without_an_issue_is_printed_alone() {
        String text = PlainText.of(SampleReferences.smetana());
        assertTrue(text.contains(" Resources, Conservation and Recycling 144: 285-296. https://doi.org/"), text);
    }

    @Test
    void a_report_names_publisher_number_and_isbn_and_authors_the_record_left_out() {
        assertEquals(
                "van Huis A, Van Itterbeeck J, Klunder H, et al. (2013) Edible insects: future prospects for food and feed"
                        + " security. FAO Forestry Paper. Food and Agriculture Organization of the United Nations, 171."
                        + " ISBN 978-92-5-107595-1. https://www.fao.org/4/i3253e/i3253e00.htm",
                PlainText.of(SampleReferences.vanHuis()));
    }

    @Test
    void without_an_author_the_title_leads_and_an_unknown_year_is_n_d() {
        assertEquals(
                "Common practice in the trade, no published source (n.d.).",
                PlainText.of(SampleReferences.commonPractice()));
    }

    @Test
    void a_title_that_ends_in_a_mark_takes_no_second_one() {
        Reference reference = SampleReferences.plain(
                "a", "book", "Edible insects are the future?", List.of(SampleReferences.person("van Huis", "A")));
        assertEquals("van Huis A (n.d.) Edible insects are the future?", PlainText.of(reference));
    }

    @Test
    void each_reference_takes_one_line_however_hostile_its_text() {
        for (long seed = 0; seed < 20; seed++) {
            List<Reference> references = SampleReferences.hostile(seed, 100);
            String text = PlainText.write(references);
            assertTrue(text.endsWith("\n"));
            String[] lines = text.substring(0, text.length() - 1).split("\\R", -1);
            assertEquals(references.size(), lines.length, "seed " + seed);
            for (int i = 0; i < lines.length; i++) {
                assertEquals(PlainText.of(references.get(i)), lines[i]);
                assertTrue(lines[i].contains("(" + references.get(i).citedYear() + ")"), lines[i]);
                assertFalse(lines[i].isBlank());
            }
        }
        assertEquals("", PlainText.write(List.of()));
    }
}

package org.scalepan.cite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.scalepan.JsonAt;

/** What the record of a source did not have is told in every format, so that nobody takes it for the whole. The sources are invented. */
class IncompleteReferenceTest {
    private static final String ARTICLE = """
            [{"id": "invented-2020", "type": "article-journal", "title": "Invented",
              "author": [{"family": "One", "given": "A."}], "issued": {"date-parts": [[2020]]},
              "container-title": "Journal of Examples", "note": "Further authors not in the record seen.",
              "custom": {"check": "abstract"}}]""";

    private static List<Reference> read(String json) throws Exception {
        return CslJson.read(new ObjectMapper().readTree(json));
    }

    @Test
    void given_authors_that_were_not_listed_then_csl_and_ris_end_the_list_as_the_text_does() throws Exception {
        List<Reference> article = read(ARTICLE);

        assertTrue(PlainText.write(article).startsWith("One A, et al. (2020)"), PlainText.write(article));
        assertEquals("et al.", JsonAt.text(CslJson.write(article), "/0/author/1/literal"));
        assertTrue(Ris.write(article).contains("AU  - One, A.\r\nAU  - et al.\r\n"), Ris.write(article));
    }

    @Test
    void given_a_list_that_ends_so_when_it_is_read_then_nobody_is_called_et_al() throws Exception {
        List<Reference> again = read(CslJson.write(read(ARTICLE)).toString());
        assertEquals(read(ARTICLE), again);

        List<Reference> without = read(ARTICLE.replace("\"note\": \"Further authors not in the record seen.\",", "")
                .replace(
                        "{\"family\": \"One\", \"given\": \"A.\"}",
                        "{\"family\": \"One\"}, {\"literal\": \"et al.\"}"));
        assertEquals(1, without.get(0).authors().size());
        assertTrue(without.get(0).hasUnlistedAuthors());
    }

    @Test
    void given_an_article_without_volume_pages_and_doi_then_that_is_told_as_missing() throws Exception {
        List<Reference> article = read(ARTICLE);

        assertEquals(
                List.of("further authors", "volume", "pages", "DOI"),
                article.get(0).missing());
        String told = "Not known: further authors, volume, pages, DOI.";
        assertTrue(BibTex.write(article).contains(told), BibTex.write(article));
        assertTrue(Ris.write(article).contains(told), Ris.write(article));
    }

    @Test
    void given_a_report_within_a_series_then_the_series_is_not_called_its_institution() throws Exception {
        String report = ARTICLE.replace("article-journal", "report");
        assertFalse(BibTex.write(read(report)).contains("institution"), BibTex.write(read(report)));

        String published = report.replace("\"note\"", "\"publisher\": \"Institute of Examples\", \"note\"");
        assertTrue(BibTex.write(read(published)).contains("institution = {Institute of Examples}"));
    }

    @Test
    void given_a_publication_that_is_not_identified_then_its_label_says_so() throws Exception {
        String unknown = ARTICLE.replace(
                "\"check\": \"abstract\"", "\"check\": \"abstract\", \"publication\": \"not identified\"");

        assertEquals(
                "One et al. 2020 (publication not identified)",
                read(unknown).get(0).label());
    }
}

package org.scalepan.cite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How a source is cited in a sentence (author-date style), and what a sound reference must have. */
class ReferenceTest {
    @Test
    void two_authors_are_cited_by_both_family_names_with_their_particles() {
        assertEquals("Oonincx & de Boer 2012", SampleReferences.oonincx().label());
        assertEquals("Poore & Nemecek 2018", SampleReferences.poore().label());
    }

    @Test
    void three_authors_or_more_are_cited_by_the_first_and_et_al() {
        assertEquals("Smetana et al. 2019", SampleReferences.smetana().label());
    }

    @Test
    void one_author_is_cited_alone_and_a_body_by_its_whole_name() {
        assertEquals("Finke n.d.", labelOf(List.of(SampleReferences.person("Finke", "Mark D."))));
        assertEquals("World Bank n.d.", labelOf(List.of(SampleReferences.body("World Bank"))));
    }

    @Test
    void one_author_with_others_the_record_did_not_list_is_not_cited_as_if_alone() {
        Reference sole =
                withNote(SampleReferences.plain("a", "report", "T", List.of(SampleReferences.person("Thévenot", "A"))));
        assertEquals("Thévenot et al. n.d.", sole.label());
    }

    @Test
    void without_an_author_the_start_of_the_title_is_cited_cut_at_a_word() {
        assertEquals(
                "Common practice in the trade, no… n.d.",
                SampleReferences.commonPractice().label());
        assertEquals(
                "Assess uncertainty n.d.",
                SampleReferences.plain("a", "report", "Assess uncertainty", List.of())
                        .label());
    }

    @Test
    void the_list_of_authors_cannot_be_changed_from_outside() {
        List<Name> authors = new ArrayList<>(List.of(SampleReferences.person("Finke", "M")));
        Reference reference = SampleReferences.plain("a", "report", "T", authors);
        authors.clear();
        assertEquals(1, reference.authors().size());
        assertThrows(
                UnsupportedOperationException.class, () -> reference.authors().clear());
    }

    @Test
    void a_doi_opens_at_its_resolver_and_goes_before_a_url() {
        assertEquals(
                Optional.of("https://doi.org/10.1371/journal.pone.0051145"),
                SampleReferences.oonincx().link());
        assertEquals(
                Optional.of("https://www.fao.org/4/i3253e/i3253e00.htm"),
                SampleReferences.vanHuis().link());
        assertEquals(Optional.empty(), SampleReferences.commonPractice().link());
    }

    /** Percent-encoding as RFC 3986, section 2.1; the DOI is the example of its kind with SICI syntax. */
    @Test
    void a_doi_with_characters_foreign_to_an_address_is_encoded_in_its_link_only() {
        String sici = "10.1002/(SICI)1097-0010(199601)70:1<1::AID-JSFA1>3.0.CO;2-#%";
        Reference reference = sound(Optional.of(sici), Optional.empty(), OptionalInt.empty());
        assertEquals(Optional.of(sici), reference.doi());
        assertEquals(
                Optional.of("https://doi.org/10.1002/(SICI)1097-0010(199601)70:1%3C1::AID-JSFA1%3E3.0.CO;2-%23%25"),
                reference.link());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "https://doi.org/10.1371/journal.pone.0051145",
                "doi:10.1371/journal.pone.0051145",
                "10.1371",
                "10.1371/",
                "10.1/x",
                "10.1371/a b",
                "10.1371/a}b",
                "10.1371/a\\b",
                "10.1371/a\nb",
                ""
            })
    void what_is_not_a_bare_doi_is_refused(String doi) {
        assertRefused("DOI", () -> sound(Optional.of(doi), Optional.empty(), OptionalInt.empty()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "javascript:alert(1)",
                "www.fao.org",
                "ftp://example.org/a",
                "https://",
                "https:///a",
                "https://example.org/{a}",
                "https://example.org/a b",
                "https://example.org/a\nb",
                ""
            })
    void what_is_not_a_web_address_is_refused(String url) {
        assertRefused("URL", () -> sound(Optional.empty(), Optional.of(url), OptionalInt.empty()));
    }

    @ParameterizedTest
    @ValueSource(ints = {Integer.MIN_VALUE, -1, 0, 12, 999, 10_000, 20_122})
    void a_year_without_four_digits_is_refused(int year) {
        assertRefused("year", () -> sound(Optional.empty(), Optional.empty(), OptionalInt.of(year)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "a b", "a,b", "a;b", "a/b", "a{b", "a}b", "a%b", "a\nb", "-a", "é", "a\"b", "a#b"})
    void an_id_that_cannot_be_a_citation_key_is_refused(String id) {
        assertRefused("id", () -> SampleReferences.plain(id, "report", "T", List.of()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "article journal", "journal", "JOUR", "Report"})
    void a_type_outside_the_csl_vocabulary_is_refused(String type) {
        assertRefused("type", () -> SampleReferences.plain("a", type, "T", List.of()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   ", "\n", "\u00a0\u2028"})
    void a_title_with_nothing_to_print_is_refused(String title) {
        assertRefused("title", () -> SampleReferences.plain("a", "report", title, List.of()));
    }

    @Test
    void every_rule_broken_is_named_at_once() {
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class, () -> SampleReferences.plain("a b", "journal", "", List.of()));
        assertTrue(refused.getMessage().contains("id \"a b\""), refused.getMessage());
        assertTrue(refused.getMessage().contains("type \"journal\""), refused.getMessage());
        assertTrue(refused.getMessage().contains("title is missing"), refused.getMessage());
    }

    @ParameterizedTest
    @CsvSource({
        "Dennis G. A. B., DGAB",
        "D.G.A.B., DGAB",
        "DGAB, DGAB",
        "Imke J.M., IJM",
        "Jean-Pierre, JP",
        "anna, A",
        "Élodie, É",
    })
    void given_names_shorten_to_closed_up_initials(String given, String initials) {
        assertEquals(initials, SampleReferences.person("X", given).initials());
    }

    @ParameterizedTest
    @CsvSource({
        "DGAB, D. G. A. B.",
        "G.A., G. A.",
        "J, J.",
        "Imke J.M., Imke J. M.",
        "Imke, Imke",
        "Jean-Pierre, Jean-Pierre"
    })
    void closed_up_initials_are_set_apart_for_programs_that_shorten_names(String given, String spaced) {
        assertEquals(Optional.of(spaced), SampleReferences.person("X", given).spacedGiven());
    }

    @Test
    void a_name_is_a_person_or_a_body_and_not_blank() {
        Optional<String> none = Optional.empty();
        assertThrows(IllegalArgumentException.class, () -> new Name(none, none, none));
        assertThrows(IllegalArgumentException.class, () -> new Name(none, Optional.of("Imke"), none));
        assertThrows(IllegalArgumentException.class, () -> new Name(Optional.of("A"), none, Optional.of("B")));
        assertThrows(IllegalArgumentException.class, () -> new Name(none, Optional.of("A"), Optional.of("B")));
        assertThrows(IllegalArgumentException.class, () -> new Name(Optional.of(" "), none, none));
        assertThrows(IllegalArgumentException.class, () -> new Name(Optional.of("A"), Optional.of("\n"), none));
        assertThrows(IllegalArgumentException.class, () -> new Name(none, none, Optional.of("")));
    }

    private static String labelOf(List<Name> authors) {
        return SampleReferences.plain("a", "report", "T", authors).label();
    }

    private static void assertRefused(String field, Runnable building) {
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, building::run);
        assertTrue(refused.getMessage().startsWith(field + " "), refused.getMessage());
    }

    private static Reference withNote(Reference plain) {
        return with(
                plain,
                plain.doi(),
                plain.url(),
                plain.year(),
                Optional.of("Further authors not in the record seen; licence from memory."));
    }

    private static Reference sound(Optional<String> doi, Optional<String> url, OptionalInt year) {
        return with(SampleReferences.commonPractice(), doi, url, year, Optional.empty());
    }

    private static Reference with(
            Reference plain, Optional<String> doi, Optional<String> url, OptionalInt year, Optional<String> note) {
        return new Reference(
                plain.id(),
                plain.type(),
                plain.title(),
                plain.authors(),
                year,
                plain.containerTitle(),
                plain.volume(),
                plain.issue(),
                plain.page(),
                doi,
                url,
                plain.publisher(),
                plain.number(),
                plain.isbn(),
                note,
                plain.check(),
                plain.licence(),
                plain.publication());
    }
}

package org.scalepan.cite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.jbibtex.BibTeXDatabase;
import org.jbibtex.BibTeXEntry;
import org.jbibtex.BibTeXParser;
import org.jbibtex.Key;
import org.jbibtex.LaTeXParser;
import org.jbibtex.LaTeXPrinter;
import org.jbibtex.ParseException;
import org.jbibtex.TokenMgrException;
import org.jbibtex.Value;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** BibTeX as another program reads it: every entry is parsed back with JBibTeX 1.0.20, which is not ours. */
class BibTexTest {
    @Test
    void a_journal_article_is_read_back_field_by_field() {
        BibTeXEntry entry = only(SampleReferences.oonincx());
        assertEquals("article", entry.getType().getValue());
        assertEquals("oonincx-deboer-2012", entry.getKey().getValue());
        assertEquals("Oonincx, Dennis G. A. B. and de Boer, Imke J. M.", field(entry, "author"));
        assertEquals("2012", field(entry, "year"));
        assertEquals("PLoS ONE", field(entry, "journal"));
        assertEquals("7", field(entry, "volume"));
        assertEquals("12", field(entry, "number"));
        assertEquals("e51145", field(entry, "pages"));
        assertEquals("10.1371/journal.pone.0051145", field(entry, "doi"));
        assertEquals(SampleReferences.oonincx().title(), printed(field(entry, "title")));
    }

    @Test
    void a_report_names_its_institution_number_and_series_and_marks_unlisted_authors() {
        BibTeXEntry entry = only(SampleReferences.vanHuis());
        assertEquals("techreport", entry.getType().getValue());
        assertEquals("Food and Agriculture Organization of the United Nations", field(entry, "institution"));
        assertEquals("171", field(entry, "number"));
        assertEquals("FAO Forestry Paper", field(entry, "series"));
        assertEquals("978-92-5-107595-1", field(entry, "isbn"));
        assertEquals("https://www.fao.org/4/i3253e/i3253e00.htm", field(entry, "url"));
        assertEquals("van Huis, A. and Van Itterbeeck, J. and Klunder, H. and others", field(entry, "author"));
    }

    /** Entry types as O. Patashnik, BibTeXing (1988), section 3.1; what has no type of its own there is @misc. */
    @ParameterizedTest
    @CsvSource({
        "article-journal, article",
        "report, techreport",
        "book, book",
        "chapter, incollection",
        "paper-conference, inproceedings",
        "dataset, misc",
        "standard, misc",
        "webpage, misc",
        "document, misc",
        "thesis, misc"
    })
    void the_csl_type_decides_the_entry_type(String csl, String bibtex) {
        assertEquals(
                bibtex,
                only(SampleReferences.plain("a", csl, "T", List.of())).getType().getValue());
    }

    @Test
    void an_unknown_year_and_author_are_left_out_and_not_invented() {
        BibTeXEntry entry = only(SampleReferences.commonPractice());
        assertNull(entry.getField(new Key("year")));
        assertNull(entry.getField(new Key("author")));
        assertNull(entry.getField(new Key("doi")));
    }

    @Test
    void how_a_source_was_seen_is_written_where_no_standard_style_prints_it() {
        assertEquals(
                "Seen: fulltext. The copy read predates the erratum of February 2019",
                field(only(SampleReferences.poore()), "annote"));
        assertNull(only(SampleReferences.poore()).getField(new Key("note")));
    }

    @Test
    void capitals_of_a_title_are_protected_except_the_first_of_all() {
        Reference reference = SampleReferences.plain(
                "a", "book", "Life cycle assessment of Tenebrio molitor in the EU (CO2 only)", List.of());
        assertEquals(
                "Life cycle assessment of {Tenebrio} molitor in the {EU} {(CO2} only)",
                field(only(reference), "title"));
        assertEquals(
                "{LCA} of beef", field(only(SampleReferences.plain("a", "book", "LCA of beef", List.of())), "title"));
    }

    @Test
    void a_page_range_takes_the_double_dash_of_bibtex_whatever_dash_was_printed() {
        for (String printed : List.of("987-992", "987–992", "987 -- 992")) {
            assertEquals("987--992", field(only(SampleReferences.onPage(printed)), "pages"));
        }
    }

    @Test
    void a_body_stays_in_one_piece_whatever_its_name_holds() {
        Reference reference = SampleReferences.plain(
                "a",
                "report",
                "T",
                List.of(
                        SampleReferences.body("Food and Agriculture Organization, Rome"),
                        SampleReferences.body("R&D Ltd")));
        assertEquals("{Food and Agriculture Organization, Rome} and {R\\&D Ltd}", field(only(reference), "author"));
    }

    /** The ten special characters of LaTeX: L. Lamport, LaTeX: A Document Preparation System, section 2.2.1. */
    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            value = {
                "&, \\&",
                "%, \\%",
                "$, \\$",
                "#, \\#",
                "_, \\_",
                "{, \\textbraceleft{}",
                "}, \\textbraceright{}",
                "~, \\textasciitilde{}",
                "^, \\textasciicircum{}",
                "\\, \\textbackslash{}",
            })
    void each_special_character_of_latex_is_escaped(String character, String latex) {
        assertEquals(
                "a" + latex + "b",
                field(only(SampleReferences.plain("a", "book", "a" + character + "b", List.of())), "title"));
    }

    @Test
    void two_hyphens_are_printed_as_two_and_not_as_a_dash() {
        String title = field(only(SampleReferences.plain("a", "book", "a--b and c---d", List.of())), "title");
        assertEquals("a--b and c---d", printed(title));
    }

    @Test
    void letters_beyond_ascii_stay_as_they_are() {
        Reference reference = SampleReferences.plain(
                "a", "book", "Étude du ver de farine 黄粉虫", List.of(SampleReferences.body("Thévenot")));
        assertEquals("Étude du ver de farine 黄粉虫", field(only(reference), "title"));
        assertEquals("{Thévenot}", field(only(reference), "author"));
    }

    @Test
    void no_references_give_no_text() {
        assertEquals("", BibTex.write(List.of()));
    }

    @Test
    void hostile_texts_cannot_break_an_entry_or_reach_another() {
        for (long seed = 0; seed < 20; seed++) {
            List<Reference> references = SampleReferences.hostile(seed, 100);
            String written = BibTex.write(references);
            Map<Key, BibTeXEntry> entries = parsed(written).getEntries();
            assertEquals(
                    references.stream().map(Reference::id).toList(),
                    entries.keySet().stream().map(Key::getValue).toList(),
                    "seed " + seed);
            for (Reference reference : references) {
                BibTeXEntry entry = entries.get(new Key(reference.id()));
                assertNotNull(entry, reference.id());
                assertEquals(reference.doi(), optionalField(entry, "doi"));
                assertEquals(reference.url(), optionalField(entry, "url"));
                assertEquals(
                        reference.year(),
                        optionalField(entry, "year")
                                .map(year -> OptionalInt.of(Integer.parseInt(year)))
                                .orElse(OptionalInt.empty()));
                assertEquals(
                        readableByJBibTex(OneLine.of(reference.title())).replace('\'', '’'), // as LaTeX prints it
                        printed(readableByJBibTex(field(entry, "title"))),
                        "seed " + seed);
                assertEquals(reference.authors().size(), authorsIn(optionalField(entry, "author")), "seed " + seed);
            }
        }
    }

    /** BibTeX itself counts braces without regard to backslashes, which JBibTeX does not do; so they are counted here. */
    @Test
    void braces_pair_up_even_counted_as_bibtex_counts_them() {
        for (Reference reference : SampleReferences.hostile(99, 500)) {
            String written = BibTex.write(List.of(reference));
            int depth = 0;
            for (int i = 0; i < written.length(); i++) {
                depth += written.charAt(i) == '{' ? 1 : written.charAt(i) == '}' ? -1 : 0;
                assertTrue(depth > 0 || i < written.indexOf('{') || i >= written.length() - 2, written);
            }
            assertEquals(0, depth, written);
            assertFalse(written.contains("\r"), written);
        }
    }

    /** Counts authors as BibTeX does: by the word "and" outside braces. */
    private static int authorsIn(Optional<String> field) {
        if (field.isEmpty()) {
            return 0;
        }
        int depth = 0;
        StringBuilder outside = new StringBuilder();
        for (int i = 0; i < field.get().length(); i++) {
            char c = field.get().charAt(i);
            depth += c == '{' ? 1 : c == '}' ? -1 : 0;
            outside.append(depth == 0 ? c : 'x');
        }
        return outside.toString().split("(?i)\\sand\\s", -1).length;
    }

    private static BibTeXEntry only(Reference reference) {
        Map<Key, BibTeXEntry> entries = parsed(BibTex.write(List.of(reference))).getEntries();
        assertEquals(1, entries.size());
        return entries.values().iterator().next();
    }

    private static BibTeXDatabase parsed(String text) {
        try {
            return new BibTeXParser().parse(new StringReader(text));
        } catch (ParseException | TokenMgrException unreadable) {
            throw new AssertionError(text, unreadable);
        }
    }

    private static String field(BibTeXEntry entry, String name) {
        return optionalField(entry, name)
                .orElseThrow(() -> new AssertionError("no field " + name + " in "
                        + entry.getFields().keySet().stream().map(Key::getValue).collect(Collectors.joining(", "))));
    }

    private static Optional<String> optionalField(BibTeXEntry entry, String name) {
        return Optional.ofNullable(entry.getField(new Key(name))).map(Value::toUserString);
    }

    // JBibTeX's BibTeX parser takes every character, but its LaTeX parser stops at Chinese ones and pictures.
    private static String readableByJBibTex(String text) {
        return text.replaceAll("[^\\u0000-\\u2fff]", "?");
    }

    private static String printed(String latex) {
        try {
            return new LaTeXPrinter().print(new LaTeXParser().parse(new StringReader(latex)));
        } catch (ParseException | TokenMgrException unreadable) {
            throw new AssertionError(latex, unreadable);
        }
    }
}

package org.scalepan.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a language does to names and numbers in a sentence. */
class LanguageTest {
    private static final String NARROW = "\u202f";
    private static final String NO_BREAK = "\u00a0";

    @Test
    void a_number_has_a_decimal_comma_in_french_and_a_point_in_english() {
        assertEquals("8.2", Language.ENGLISH.figure("8.2"));
        assertEquals("8,2", Language.FRENCH.figure("8.2"));
        assertEquals("-0,031", Language.FRENCH.figure("-0.031"));
    }

    @Test
    void french_groups_numbers_of_five_digits_and_more() {
        assertEquals("1800", Language.FRENCH.figure("1800"));
        assertEquals("18" + NARROW + "000", Language.FRENCH.figure("18000"));
        assertEquals("1" + NARROW + "800" + NARROW + "000", Language.FRENCH.figure("1800000"));
    }

    @ParameterizedTest
    @CsvSource({
        "le bœuf, du bœuf, au bœuf, bœuf",
        "la carpe, de la carpe, en carpe, carpe",
        "l’œuf, de l’œuf, en œuf, œuf",
        "les pays voisins, des pays voisins, dans les pays voisins, pays voisins",
        "Anna, d’Anna, à Anna, Anna",
        "Mali, de Mali, à Mali, Mali"
    })
    void french_joins_an_article_to_the_word_before_it(String name, String of, String in, String alone) {
        assertEquals(of, Grammar.FRENCH.inForm(name, "of"));
        assertEquals(in, Grammar.FRENCH.inForm(name, "in"));
        assertEquals(alone, Grammar.FRENCH.inForm(name, "alone"));
    }

    @Test
    void a_name_has_its_article_in_a_sentence_only() {
        DisplayName beef = DisplayName.of("product.beef", "beef");

        assertEquals("bœuf", beef.in(Language.FRENCH));
        assertEquals("beef", beef.in(Language.ENGLISH));
        assertEquals(
                "Aucun résultat pour le bœuf au Kenya" + NO_BREAK
                        + "; la région la plus proche qui en a est l’Afrique.",
                Message.of(
                                "warning.region-fallback",
                                "product",
                                beef,
                                "asked",
                                DisplayName.of("region.kenya", "Kenya"),
                                "used",
                                DisplayName.of("region.africa", "Africa"))
                        .in(Language.FRENCH));
    }

    @Test
    void a_form_stands_behind_a_name() {
        DisplayName meal = new DisplayName("product.mealworm", "yellow mealworm (meal)", "form.meal");

        assertEquals("ver de farine (farine)", meal.in(Language.FRENCH));
        assertEquals("yellow mealworm (meal)", meal.in(Language.ENGLISH));
    }

    @Test
    void the_name_that_somebody_gave_is_the_same_in_every_language() {
        assertEquals("bucket shed", DisplayName.given("bucket shed").in(Language.FRENCH));
    }

    @Test
    void one_and_many_are_told_apart_by_the_rules_of_the_language() {
        Message one = Message.of("warning.own-library", "rows", 1);
        Message none = Message.of("warning.own-library", "rows", 0);

        assertEquals("1 row of a user's own library lies over the bundled one.", one.english());
        assertEquals("0 rows of a user's own library lie over the bundled one.", none.english());
        assertEquals(
                "0 ligne de la bibliothèque propre d’un utilisateur recouvre celle qui est fournie.",
                none.in(Language.FRENCH));
    }

    @Test
    void things_are_joined_as_the_language_does() {
        Message both = Message.of("verbatim", "text", Listing.and(List.of("a", "b")));

        assertEquals("a and b", both.english());
        assertEquals("a et b", both.in(Language.FRENCH));
    }

    @Test
    void a_message_without_its_value_is_a_fault_of_ours() {
        assertThrows(IllegalArgumentException.class, () -> Message.of("of-side").english());
        assertThrows(
                IllegalArgumentException.class, () -> Message.of("no-such-key").english());
    }
}

package org.scalepan.ask.claim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClaimSentenceParserTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "insects emit a hundred times less than beef | insects beef ghg times_less=100",
                "Insects give off about 100 times less greenhouse gas than cattle. | insects beef ghg times_less=100",
                "crickets need 80 % less land than cattle | house-cricket beef land percent_less=80",
                "mealworms emit no greenhouse gas | mealworm - ghg none=yes",
                "larvae need no land | insects - land none=yes",
                "eating insects has one per cent of the footprint of beef | insects beef ghg times_less=100",
                "half the emissions of chicken | insects chicken ghg times_less=2",
                "Mealworm protein takes a tenth of the land of beef protein | mealworm beef land times_less=10",
                "mealworm protein takes three tenths of the land of pork protein | mealworm pork land times_less=3.333333333",
                "Crickets need twelve times less feed than cattle | house-cricket beef feed times_less=12",
                "insects need two thousand times less water than beef | insects beef water-footprint times_less=2000",
                "mealworms use less water than milk | mealworm milk water-footprint times_less=1",
                "beef emits a hundred times more than mealworms | mealworm beef ghg times_less=100",
                "A pig gives off ten to a hundred times the greenhouse gas of mealworms | mealworm pork ghg times_less=10",
                "buffalo worms emit a third less than pigs | lesser-mealworm pork ghg percent_less=33.33333333",
                "twenty-five times less emissions from crickets than beef | house-cricket beef ghg times_less=25",
                "mealworms emit 2.5x less than pork | mealworm pork ghg times_less=2.5"
            })
    void a_sentence_is_read_as_a_question(String text, String read) {
        ParsedClaim sentence = ClaimSentenceParser.parse(SampleClaims.LIBRARY, text);

        assertEquals(java.util.List.of(), sentence.faults());
        var fields = sentence.fields();
        String claim = fields.entrySet().stream()
                .filter(field ->
                        field.getKey().endsWith("less") || field.getKey().equals("none"))
                .map(Object::toString)
                .collect(Collectors.joining(" "));
        assertEquals(
                read,
                fields.get("product") + " " + fields.getOrDefault("reference", "-") + " " + fields.get("indicator")
                        + " " + claim);
    }

    @Test
    void a_sentence_may_say_its_basis() {
        ParsedClaim sentence = ClaimSentenceParser.parse(
                SampleClaims.LIBRARY, "crickets emit a hundred times less than beef directly per kg gained");

        assertEquals("kg-live", sentence.fields().get("per"));
        assertEquals("animal", sentence.fields().get("boundary"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "insects emit a hundred times less than unicorns | not understood: \"unicorns\"",
                "insects emit less than meat | \"meat\" is too wide",
                "insects do not produce methane | single gases are not an indicator",
                "crickets emit ten times less | less than what?",
                "crickets are tasty | no claim was found",
                "crickets need less land and water than beef | several things at once",
                "crickets emit less than beef and pork | more than two products",
                "beef emits less than insects | insects cannot be what others are compared with",
                "needs no land | no product was found"
            })
    void what_is_not_understood_is_reported(String text, String fault) {
        ParsedClaim sentence = ClaimSentenceParser.parse(SampleClaims.LIBRARY, text);

        assertTrue(
                sentence.faults().stream().anyMatch(found -> found.message().contains(fault)),
                () -> sentence.faults().toString());
    }

    @Test
    void no_sentence_breaks_the_parser() {
        for (String text : new String[] {
            "", ".", "%", "a", "one", "times", "factor of", "ten to", "a hundred", "0 percent of beef", "é…"
        }) {
            assertTrue(
                    !ClaimSentenceParser.parse(SampleClaims.LIBRARY, text)
                            .faults()
                            .isEmpty(),
                    text);
        }
    }
}

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
                "Is it true that crickets need 80 % less land than cattle? | house-cricket beef land percent_less=80",
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
                "mealworms emit 2.5x less than pork | mealworm pork ghg times_less=2.5",
                "mealworms need 10 times less space than beef | mealworm beef land times_less=10",
                "insects need far less land than beef | insects beef land times_less=1",
                "insects need little land compared with beef | insects beef land times_less=1",
                "insects are carbon neutral | insects - ghg none=yes",
                "eating mealworms instead of beef cuts emissions by 90 % | mealworm beef ghg percent_less=90",
                "replacing beef with mealworms cuts emissions by 90 % | mealworm beef ghg percent_less=90",
                "crickets are twice as efficient as chickens at converting feed | house-cricket chicken feed times_less=2",
                "crickets need half the feed of chicken | house-cricket chicken feed times_less=2",
                "mealworm meal emits less than fishmeal | mealworm:meal fishmeal ghg times_less=1",
                "Les insectes émettent cent fois moins que le bœuf | insects beef ghg times_less=100",
                "Les grillons ont besoin de deux fois moins d'eau que le bœuf | house-cricket beef water times_less=2",
                "les vers de farine n'émettent aucun gaz | mealworm - ghg none=yes"
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
    void a_kilogram_of_each_is_a_basis() {
        ParsedClaim sentence = ClaimSentenceParser.parse(
                SampleClaims.LIBRARY, "1 kg of mealworms emits 100 times less than 1 kg of beef");

        assertEquals("kg-edible", sentence.fields().get("per"), "unit of a claim per kilogram");
        assertEquals("100", sentence.fields().get("times_less"));
    }

    /** What a refused sentence may mean, each a question that works. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "insects need little space | /v1/claim?times_less=1&product=insects&indicator=land&reference=beef",
                "crikets emit ten times less than beef | /v1/claim?times_less=10&product=house-cricket&reference=beef&indicator=ghg",
                "crickets need less land and water than beef | /v1/claim?times_less=1&product=house-cricket&reference=beef&indicator=land",
                "Crickets emit less than beef. They need half the feed of beef."
                        + " | /v1/claim?times_less=2&product=house-cricket&reference=beef&indicator=feed",
                "insect meal emits less than fishmeal"
                        + " | /v1/claim?times_less=1&boundary=processing-gate&product=mealworm:meal&reference=fishmeal&indicator=ghg",
                "insects produce no methane | /v1/claim?product=insects&indicator=ghg&none=yes&boundary=animal&per=kg-live",
                "insects could replace imported meat | /v1/rows/c33",
                "Insects give off far less ammonia than pigs | /v1/rows/c39"
            })
    void a_refused_sentence_has_a_reading_or_a_question(String text, String question) {
        ParsedClaim sentence = ClaimSentenceParser.parse(SampleClaims.LIBRARY, text);

        assertTrue(!sentence.faults().isEmpty());
        assertTrue(
                sentence.suggestions().stream()
                        .anyMatch(found -> found.question().equals(question)),
                () -> sentence.suggestions().toString());
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

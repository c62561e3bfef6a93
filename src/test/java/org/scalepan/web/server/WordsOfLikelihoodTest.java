package org.scalepan.web.server;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.web.Reply;

/**
 * What comes out of draws is a share of draws. Words of likelihood need an assessment of evidence and agreement (Mastrandrea et al. 2010),
 * which no count of draws is, so that they stand in no text that is served.
 */
class WordsOfLikelihoodTest {
    private static final Pattern LIKELIHOOD = Pattern.compile(
            "(?i)\\b(?:\\w*probab\\w*|\\w*likely|likelihoods?|virtually certain|\\w*vraisemblabl\\w*)\\b");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/",
                "/farm",
                "/protein",
                "/programme",
                "/examples",
                "/page/en.js",
                "/page/fr.js",
                "/openapi.yaml",
                "/guide/tour",
                "/guide/questions",
                "/guide/clients",
                "/guide/operating",
                "/guide/many-rows",
                "/guide/methods",
                "/guide/interpretation",
                "/guide/testing",
                "/guide/speed",
                "/v1/record-fields",
                "/v1/claim?product=mealworm&reference=beef&times_less=100&draws=1000",
                "/v1/claim?product=mealworm&reference=beef&times_less=100&draws=1000&lang=fr",
                "/v1/claim?product=mealworm&reference=beef&times_less=100&draws=1000&format=md",
                "/v1/comparison?products=mealworm,chicken&against=beef&draws=1000",
                "/v1/comparison?products=mealworm,chicken&against=beef&draws=1000&format=csv",
                "/v1/ratio/ghg/mealworm/beef?stat=text&draws=1000",
                "/v1/brief?products=mealworm&against=beef&draws=1000&format=md"
            })
    void stand_in_no_text_that_is_served(String address) {
        Reply reply = Reply.to(address);

        assertEquals(200, reply.status(), address);
        assertEquals(List.of(), found(reply.body()), address);
    }

    @Test
    void would_be_found() {
        assertEquals(List.of("likely", "probability"), found("Very likely, with a probability of 0.9"));
    }

    private static List<String> found(String text) {
        return LIKELIHOOD.matcher(text).results().map(match -> match.group()).toList();
    }
}

package org.scalepan.ask;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Mastrandrea et al. 2010, table 1: virtually certain 99–100 %, extremely likely 95–100, very likely 90–100, likely 66–100, about
 * as likely as not 33–66, unlikely 0–33, very unlikely 0–10, extremely unlikely 0–5, exceptionally unlikely 0–1. On a limit the
 * weaker word is said.
 */
class LikelihoodTest {

    @ParameterizedTest
    @CsvSource({
        "1, virtually certain",
        "0.9901, virtually certain",
        "0.99, extremely likely",
        "0.9501, extremely likely",
        "0.95, very likely",
        "0.9001, very likely",
        "0.90, likely",
        "0.6601, likely",
        "0.66, about as likely as not",
        "0.5, about as likely as not",
        "0.33, about as likely as not",
        "0.3299, unlikely",
        "0.10, unlikely",
        "0.0999, very unlikely",
        "0.05, very unlikely",
        "0.0499, extremely unlikely",
        "0.01, extremely unlikely",
        "0.0099, exceptionally unlikely",
        "0, exceptionally unlikely"
    })
    void the_word_at_each_limit(double probability, String word) {
        assertEquals(word, Likelihood.word(probability));
    }

    /** Property: what is said of "less" and of "not less" agrees. */
    @Test
    void the_words_mirror_about_one_half() {
        Map<String, String> opposite = Map.of(
                "virtually certain", "exceptionally unlikely",
                "extremely likely", "extremely unlikely",
                "very likely", "very unlikely",
                "likely", "unlikely",
                "about as likely as not", "about as likely as not");
        for (int i = 5_000; i <= 10_000; i++) {
            boolean onALimit = i % 100 == 0;
            // 66 % and 33 % do not add up to 100 %: the scale itself is lopsided there.
            boolean lopsided = i > 6_600 && i < 6_700;
            if (!onALimit && !lopsided) {
                assertEquals(
                        opposite.get(Likelihood.word(i / 10_000.0)),
                        Likelihood.word((10_000 - i) / 10_000.0),
                        "at " + i / 10_000.0);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.001, 1.001, Double.NaN, Double.POSITIVE_INFINITY})
    void what_is_no_probability_has_no_word(double number) {
        assertThrows(IllegalArgumentException.class, () -> Likelihood.word(number));
    }
}

package org.scalepan.ask;

import java.util.Locale;
import org.scalepan.factors.Indicator;
import org.scalepan.words.Language;

/**
 * How sentences of a language name an indicator.
 *
 * @param quantity what a figure is of: {@code land occupation}, as in "beef has 3 times the land occupation of mealworm"
 * @param noun what a product causes or needs: {@code land}, as in "mealworm needs 3 times less land than beef"
 * @param verb {@code emits} or {@code needs}
 * @param verbs the same of several products
 * @param none that a product has none of it: {@code needs no}
 * @param nones the same of several products
 */
public record IndicatorWording(String quantity, String noun, String verb, String verbs, String none, String nones) {
    /** The wording of an indicator that the message files do not name, such as one of a user's own library. */
    private static final String OTHER = "indicator.other";

    public static IndicatorWording of(ComparisonBasis basis) {
        return of(basis, Language.ENGLISH);
    }

    public static IndicatorWording of(ComparisonBasis basis, Language language) {
        return of(basis.indicator(), language);
    }

    /** Of an indicator without words of its own the library's name is taken. */
    static IndicatorWording of(Indicator indicator, Language language) {
        String key = "indicator." + indicator.id();
        String name = indicator.name().toLowerCase(Locale.ROOT);
        return new IndicatorWording(
                language.sayOr(key + ".quantity", name),
                language.sayOr(key + ".noun", indicator.id()),
                verb(language, key, "verb"),
                verb(language, key, "verbs"),
                verb(language, key, "none"),
                verb(language, key, "nones"));
    }

    private static String verb(Language language, String key, String form) {
        return language.sayOr(key + "." + form, language.say(OTHER + "." + form));
    }
}

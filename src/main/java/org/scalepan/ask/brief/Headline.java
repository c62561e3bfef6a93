package org.scalepan.ask.brief;

import java.util.Comparator;
import java.util.OptionalDouble;
import org.scalepan.ask.IndicatorWording;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.claim.ClaimCheck;
import org.scalepan.ask.claim.Reduction;

/** One sentence for those who quote one: what can be defended of the product that differs most, as a part and not as a multiple. */
public final class Headline {
    private Headline() {}

    public static String of(Brief brief) {
        return brief.rows().stream()
                .flatMap(row -> row.check().stream())
                .filter(check -> timesLess(brief, check).isPresent())
                .max(Comparator.comparingDouble(check -> timesLess(brief, check).orElseThrow()))
                .map(check -> sentence(brief, check, timesLess(brief, check).orElseThrow()))
                .orElse("From what this library holds on this basis, no reduction can be defended.");
    }

    /** How many times less it is at least, on the basis asked. */
    private static OptionalDouble timesLess(Brief brief, ClaimCheck check) {
        boolean asked =
                check.instead().basis().filter(brief.question().basis()::equals).isPresent();
        OptionalDouble times = check.instead().timesLess();
        return asked ? times : OptionalDouble.empty();
    }

    private static String sentence(Brief brief, ClaimCheck check, double times) {
        IndicatorWording words = IndicatorWording.of(brief.question().basis());
        String name = check.side().words();
        return Character.toUpperCase(name.charAt(0)) + name.substring(1) + " " + words.verb() + " at least "
                + Reduction.percent(times).toPlainString()
                + " % less " + words.noun() + " than " + brief.reference().words() + " for each "
                + brief.question().basis().per().words() + ", "
                + new Sentences(
                                brief.question().basis(),
                                brief.question().sampling().coverage())
                        .boundary()
                + ", in nine of ten draws.";
    }
}

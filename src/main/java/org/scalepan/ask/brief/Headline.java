package org.scalepan.ask.brief;

import java.util.Comparator;
import java.util.OptionalDouble;
import org.scalepan.ask.IndicatorWording;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.claim.ClaimCheck;

/** One sentence for those who quote one: what can be defended of the product that differs most, as a part and not as a multiple. */
public final class Headline {
    private Headline() {}

    public static String of(Brief brief) {
        return brief.rows().stream()
                .flatMap(row -> row.check().stream())
                .filter(check -> reduction(brief, check).isPresent())
                .max(Comparator.comparingDouble(check -> reduction(brief, check).orElseThrow()))
                .map(check -> sentence(brief, check, reduction(brief, check).orElseThrow()))
                .orElse("From what this library holds on this basis, no reduction can be defended.");
    }

    /** The part that is saved at least, on the basis asked. */
    private static OptionalDouble reduction(Brief brief, ClaimCheck check) {
        boolean asked =
                check.instead().basis().filter(brief.question().basis()::equals).isPresent();
        OptionalDouble times = check.instead().timesLess();
        return asked && times.isPresent() ? OptionalDouble.of(1 - 1 / times.getAsDouble()) : OptionalDouble.empty();
    }

    private static String sentence(Brief brief, ClaimCheck check, double reduction) {
        IndicatorWording words = IndicatorWording.of(brief.question().basis());
        String name = check.side().words();
        // Rounded down: the sentence must not say more than the ratio.
        long percent = (long) Math.floor(100 * reduction + 1e-9);
        return Character.toUpperCase(name.charAt(0)) + name.substring(1) + " " + words.verb() + " at least " + percent
                + " % less " + words.noun() + " than " + brief.reference().words() + " for each "
                + brief.question().basis().per().words() + ", "
                + new Sentences(
                                brief.question().basis(),
                                brief.question().sampling().coverage())
                        .boundary()
                + ", in nine of ten draws.";
    }
}

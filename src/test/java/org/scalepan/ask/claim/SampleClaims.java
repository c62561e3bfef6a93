package org.scalepan.ask.claim;

import java.util.Optional;
import org.scalepan.Asked;
import org.scalepan.Libraries;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.Side;
import org.scalepan.factors.Library;

/** Claims in one line. */
final class SampleClaims {
    static final Library LIBRARY = Libraries.bundled();
    static final Sampling SAMPLING = new Sampling(0.9, 10_000, 1);

    private SampleClaims() {}

    static Side side(String written) {
        String[] parts = written.split(":", 2);
        var product = LIBRARY.products().get(parts[0]);
        return new Side.PublishedSide(new ProductForm(product, parts.length == 2 ? parts[1] : product.defaultForm()));
    }

    static ClaimChecks checked(Asked asked, String product, String reference, Claimed claimed) {
        Subject subject = product.equals(Subject.INSECTS) ? Subject.insects(LIBRARY) : Subject.of(side(product));
        Optional<Side> other = reference.isEmpty() ? Optional.empty() : Optional.of(side(reference));
        return new ClaimPlan(LIBRARY, new ClaimQuestion(subject, other, claimed, asked.basis(), SAMPLING)).check();
    }

    static ClaimCheck check(Asked asked, String product, String reference, double timesLess) {
        return checked(asked, product, reference, new Claimed.TimesLess(timesLess))
                .checks()
                .get(0);
    }
}

package org.scalepan.web.compare;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.Estimating;
import org.scalepan.ask.EvidenceKind;
import org.scalepan.ask.NoRatio;
import org.scalepan.ask.OtherEvidence;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.Ratio;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.Side;
import org.scalepan.exchange.read.ComparisonBasisReading;
import org.scalepan.factors.Library;
import org.scalepan.footprint.Bound;
import org.scalepan.web.render.Permalink;
import org.scalepan.web.route.Request;

/** What a cell without evidence says of the other kind of evidence: that it answers, and an address that can be pasted. */
final class CellInstead {
    private final Library library;
    private final Request request;

    CellInstead(Library library, Request request) {
        this.library = library;
        this.request = request;
    }

    /** For a figure: {@code evidence=modelled gives a modelled figure: /v1/value/…}; empty where the other kind has nothing either. */
    Optional<String> ofValue(ProductForm item, ComparisonBasis basis, Sampling sampling) {
        return OtherEvidence.of(library, List.of(new Side.PublishedSide(item)), basis)
                .map(kind -> OtherEvidence.words(kind) + ": "
                        + address(kind, bound(Estimating.asked(library, item, basis.withOtherEvidence(), sampling))));
    }

    /** For a ratio; two bounds have none by the other kind either, and the words say so. */
    Optional<String> ofRatio(ProductForm product, ProductForm reference, ComparisonBasis basis, Sampling sampling) {
        List<Side> sides = List.of(new Side.PublishedSide(product), new Side.PublishedSide(reference));
        return OtherEvidence.of(library, sides, basis).map(kind -> {
            Estimate ours = Estimating.asked(library, product, basis.withOtherEvidence(), sampling);
            Estimate theirs = Estimating.asked(library, reference, basis.withOtherEvidence(), sampling);
            String words = OtherEvidence.wordsOfBoth(kind);
            return NoRatio.between(ours, theirs)
                    .map(why -> words + " without a ratio (" + why.words() + ")")
                    .orElseGet(() -> words + ": " + address(kind, Ratio.bound(ours, theirs) != Bound.EXACT));
        });
    }

    private static boolean bound(Estimate estimate) {
        return estimate.bound() != Bound.EXACT;
    }

    /** The address asked, as it was asked, but for the kind of evidence; a bound is a number only where that is allowed. */
    private String address(EvidenceKind kind, boolean bound) {
        Map<String, Object> question = new LinkedHashMap<>();
        for (String name : ComparisonBasisReading.with("stat", CellRoutes.ON_ERROR)) {
            if (!name.equals("evidence") && !name.equals("system")) {
                request.parameters().raw(name).ifPresent(value -> question.put(name, value));
            }
        }
        question.put("evidence", kind.id());
        if (bound) {
            question.put(CellRoutes.BOUNDS, "yes");
        }
        return Permalink.unpinned(request.path(), question);
    }
}

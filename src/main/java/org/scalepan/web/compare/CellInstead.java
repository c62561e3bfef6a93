package org.scalepan.web.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.Estimating;
import org.scalepan.ask.EvidenceKind;
import org.scalepan.ask.NoFigure;
import org.scalepan.ask.NoRatio;
import org.scalepan.ask.OtherEvidence;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.Ratio;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.Side;
import org.scalepan.exchange.read.ComparisonBasisReading;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Library;
import org.scalepan.footprint.Bound;
import org.scalepan.web.render.InsteadAddress;
import org.scalepan.web.render.Permalink;
import org.scalepan.web.route.Request;

/** What a cell without evidence says of what is known instead, with addresses that can be pasted. */
final class CellInstead {
    private final Library library;
    private final Request request;

    CellInstead(Library library, Request request) {
        this.library = library;
        this.request = request;
    }

    /** For a figure: what is known elsewhere, then by the other kind of evidence, each with an address; empty where nothing is known. */
    List<String> ofValue(ProductForm item, ComparisonBasis basis, Sampling sampling) {
        List<String> known = new ArrayList<>();
        NoFigure none = NoFigure.of(library, item, basis);
        none.instead()
                .filter(other -> other.basis().evidence() == basis.evidence())
                .ifPresent(other -> known.add(none.words() + ": " + address(other)));
        OtherEvidence.of(library, List.of(new Side.PublishedSide(item)), basis)
                .ifPresent(kind -> known.add(OtherEvidence.words(kind) + ": "
                        + address(kind, bound(Estimating.asked(library, item, basis.withOtherEvidence(), sampling)))));
        return known;
    }

    /** For a figure that makes no sense: why, and the address of one that does. */
    Optional<String> senseless(ProductForm item, ComparisonBasis basis) {
        NoFigure none = NoFigure.of(library, item, basis);
        return none.code() == NoFigure.NoFigureCode.NOT_APPLICABLE
                ? Optional.of(none.words()
                        + none.instead().map(other -> "; ask " + address(other)).orElse(""))
                : Optional.empty();
    }

    /** For a ratio: another end of the chain where both sides are published, then the other kind of evidence. */
    List<String> ofRatio(ProductForm product, ProductForm reference, ComparisonBasis basis, Sampling sampling) {
        List<String> known = new ArrayList<>();
        List<Side> sides = List.of(new Side.PublishedSide(product), new Side.PublishedSide(reference));
        Stream.of(Boundary.values())
                .filter(end -> end != Boundary.ANIMAL && end != basis.boundary())
                .map(basis::withBoundary)
                .filter(other -> sides.stream().allMatch(side -> side.hasEvidence(library, other)))
                .findFirst()
                .ifPresent(
                        other -> known.add("both are known " + other.boundary().words(other.indicator()) + ": "
                                + address(
                                        "/v1/ratio/" + other.indicator().id() + "/" + product.written() + "/"
                                                + reference.written(),
                                        other,
                                        false)));
        OtherEvidence.of(library, sides, basis).ifPresent(kind -> {
            Estimate ours = Estimating.asked(library, product, basis.withOtherEvidence(), sampling);
            Estimate theirs = Estimating.asked(library, reference, basis.withOtherEvidence(), sampling);
            String words = OtherEvidence.wordsOfBoth(kind);
            known.add(NoRatio.between(ours, theirs)
                    .map(why -> words + " without a ratio (" + why.words() + ")")
                    .orElseGet(() -> words + ": " + address(kind, Ratio.bound(ours, theirs) != Bound.EXACT)));
        });
        return known;
    }

    private static boolean bound(Estimate estimate) {
        return estimate.bound() != Bound.EXACT;
    }

    /** The address of a figure that is known, with the statistic that was asked for. */
    private String address(NoFigure.Answerable known) {
        return address(
                "/v1/value/" + known.basis().indicator().id() + "/"
                        + known.item().written(),
                known.basis(),
                known.bound());
    }

    private String address(String path, ComparisonBasis basis, boolean bound) {
        Map<String, Object> question = new LinkedHashMap<>();
        List.of("stat", CellRoutes.ON_ERROR)
                .forEach(name -> request.parameters().raw(name).ifPresent(value -> question.put(name, value)));
        question.putAll(InsteadAddress.parameters(basis, bound));
        return Permalink.unpinned(path, question);
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

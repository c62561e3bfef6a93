package org.scalepan;

import java.util.Optional;
import java.util.Set;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.EvidenceKind;
import org.scalepan.ask.ProductForm;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.footprint.ProteinBasis;
import org.scalepan.literature.Evidence;
import org.scalepan.literature.IntervalOf;
import org.scalepan.literature.LandUseChange;
import org.scalepan.literature.Pool;
import org.scalepan.literature.PoolQuestion;

/**
 * A question in the making: greenhouse gases per kilogram of crude protein at the farm gate, without land-use change, under
 * AR6, all the world, every grade, unless it is told otherwise.
 */
public final class Asked {
    private final Library library;
    private String indicator = "ghg";
    private FunctionalUnit per = FunctionalUnit.KG_PROTEIN;
    private Boundary boundary = Boundary.FARM_GATE;
    private LandUseChange luc = LandUseChange.EXCLUDE;
    private String gwp = "ar6-100";
    private String region = "world";
    private Grade grade = Grade.MEMORY;
    private Set<String> pinned = Set.of();
    private Set<String> excluded = Set.of();
    private ProteinBasis protein = ProteinBasis.CRUDE;
    private boolean capped = true;
    private boolean strict = false;
    private IntervalOf of = IntervalOf.STUDY;
    private EvidenceKind evidence = EvidenceKind.PUBLISHED;

    private Asked(Library library) {
        this.library = library;
    }

    public static Asked of(Library library) {
        return new Asked(library);
    }

    public Asked indicator(String id) {
        indicator = id;
        return this;
    }

    public Asked per(FunctionalUnit unit) {
        per = unit;
        return this;
    }

    public Asked at(String boundaryId) {
        boundary = Boundary.of(boundaryId).orElseThrow();
        return this;
    }

    public Asked luc(LandUseChange change) {
        luc = change;
        return this;
    }

    public Asked gwp(String id) {
        gwp = id;
        return this;
    }

    public Asked in(String regionId) {
        region = regionId;
        return this;
    }

    public Asked grade(Grade lowest) {
        grade = lowest;
        return this;
    }

    public Asked only(String... sources) {
        pinned = Set.of(sources);
        return this;
    }

    public Asked without(String... sources) {
        excluded = Set.of(sources);
        return this;
    }

    public Asked protein(ProteinBasis basis) {
        protein = basis;
        return this;
    }

    public Asked of(IntervalOf subject) {
        of = subject;
        return this;
    }

    /** With reference farms in place of studies. */
    public Asked modelled() {
        evidence = EvidenceKind.MODELLED;
        return this;
    }

    public Asked strict() {
        strict = true;
        return this;
    }

    public ComparisonBasis basis() {
        return new ComparisonBasis(
                library.indicators().get(indicator),
                per,
                boundary,
                luc,
                library.warmingSets().get(gwp),
                region,
                grade,
                pinned,
                excluded,
                protein,
                capped,
                strict,
                of,
                evidence,
                Optional.empty());
    }

    /** A product in its usual form, or as {@code product:form}. */
    public ProductForm item(String written) {
        String[] parts = written.split(":", 2);
        Product product = library.products().get(parts[0]);
        return new ProductForm(product, parts.length == 2 ? parts[1] : product.defaultForm());
    }

    public Evidence evidence(String written) {
        ProductForm item = item(written);
        ComparisonBasis basis = basis();
        return Pool.of(
                library,
                new PoolQuestion(
                        item.product(),
                        item.form(),
                        basis.indicator(),
                        basis.per(),
                        basis.boundary(),
                        basis.luc(),
                        basis.gwp(),
                        basis.region(),
                        basis.pinned(),
                        basis.excluded(),
                        basis.lowestGrade(),
                        basis.protein(),
                        basis.qualityCapped(),
                        basis.strict(),
                        basis.of()));
    }

    /** The evidence for a product that has some; fails where there is none. */
    public Evidence.PooledEvidence some(String written) {
        return evidence(written) instanceof Evidence.PooledEvidence some ? some : none(written);
    }

    private Evidence.PooledEvidence none(String written) {
        throw new AssertionError(
                "no evidence of " + written + ": " + ((Evidence.NoEvidence) evidence(written)).reason());
    }
}

package org.scalepan.ask.nutrition;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.scalepan.ask.ProductForm;
import org.scalepan.factors.CompositionRow;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.QualityMethod;

/**
 * A protein-quality score as somebody measured it: PDCAAS, or DIAAS, with how it was measured.
 *
 * @param row the score as printed, a fraction
 * @param method how it was measured, where that is known
 */
public record MeasuredQuality(CompositionRow row, Optional<QualityMethod> method) {
    /** Protein digestibility-corrected amino acid score. */
    public static final String PDCAAS = "pdcaas";
    /** Digestible indispensable amino acid score. */
    public static final String DIAAS = "diaas";

    /** The scores of one kind for a food, the default first, without outliers. */
    static List<MeasuredQuality> of(Library library, ProductForm item, String kind, Grade lowest) {
        return library.composition().stream()
                .filter(row -> row.product().equals(item.product().id())
                        && row.form().equals(item.form())
                        && row.quantity().equals(kind)
                        && row.use() != CompositionRow.RowUse.OUTLIER
                        && row.cited().check().isAtLeast(lowest))
                .sorted(Comparator.comparing(row -> row.use() != CompositionRow.RowUse.DEFAULT))
                .map(row -> new MeasuredQuality(
                        row, Optional.ofNullable(library.qualityMethods().get(row.id()))))
                .toList();
    }

    /** True for a PDCAAS above 1, which is reported as 1. A DIAAS of a single food is reported untruncated. */
    public boolean isTruncated() {
        return row.quantity().equals(PDCAAS) && row.printed().value().orElse(0) > 1;
    }

    /** A printed number of this score as it is reported. */
    public double reported(double printed) {
        return row.quantity().equals(PDCAAS) ? AminoAcidScore.truncated(printed) : printed;
    }
}

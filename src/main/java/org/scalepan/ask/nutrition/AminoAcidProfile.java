package org.scalepan.ask.nutrition;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scalepan.ask.ProductForm;
import org.scalepan.factors.Cited;
import org.scalepan.factors.CompositionRow;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.footprint.ProteinBasis;

/** The indispensable amino acids in the protein of a food: all nine, or those that are published. */
record AminoAcidProfile(List<Acid> acids) {

    /**
     * One amino acid.
     *
     * @param id the amino acid, or the pair that a pattern takes together
     * @param milligrams milligrams per gram of crude protein
     * @param rows ids of the rows it rests on
     */
    record Acid(String id, double milligrams, List<String> rows, Cited cited) {
        Acid {
            if (!(milligrams >= 0 && milligrams <= 1_000)) {
                throw new IllegalArgumentException(
                        "an amino acid cannot be " + milligrams + " mg of a gram of protein");
            }
            rows = List.copyOf(rows);
        }
    }

    AminoAcidProfile {
        acids = List.copyOf(acids);
    }

    /** What is published of a food, nothing taken from another form; empty when there is nothing. */
    static Optional<AminoAcidProfile> of(Library library, ProductForm item, Grade lowest) {
        List<Acid> acids = new ArrayList<>();
        for (String acid : library.ids("amino_acids")) {
            perProtein(library, item, acid, lowest)
                    .or(() -> perProduct(library, item, acid, lowest))
                    .ifPresent(acids::add);
        }
        return acids.isEmpty() ? Optional.empty() : Optional.of(new AminoAcidProfile(acids));
    }

    private static Optional<Acid> perProtein(Library library, ProductForm item, String acid, Grade lowest) {
        return library.aminoAcidContents().stream()
                .filter(content -> content.product().equals(item.product().id())
                        && content.form().equals(item.form())
                        && content.acid().equals(acid)
                        && content.isDefault()
                        && content.cited().check().isAtLeast(lowest))
                .findFirst()
                .map(content -> new Acid(acid, content.milligrams(), List.of(content.id()), content.cited()));
    }

    /** What is printed per kilogram of product, over the protein that the same source prints of the same sample. */
    private static Optional<Acid> perProduct(Library library, ProductForm item, String acid, Grade lowest) {
        for (CompositionRow row : rows(library, item, acid, lowest)) {
            for (CompositionRow protein : rows(library, item, Nutrient.PROTEIN.id(), lowest)) {
                boolean sameSample = protein.cited().source().equals(row.cited().source())
                        && protein.per().equals(row.per());
                if (sameSample) {
                    double crude = protein.printed().value().orElseThrow()
                            * ProteinBasis.CRUDE_FACTOR
                            / protein.nitrogenFactor().orElse(ProteinBasis.CRUDE_FACTOR);
                    double share = row.printed().value().orElseThrow() / crude;
                    return Optional.of(new Acid(acid, 1_000 * share, List.of(row.id(), protein.id()), row.cited()));
                }
            }
        }
        return Optional.empty();
    }

    private static List<CompositionRow> rows(Library library, ProductForm item, String quantity, Grade lowest) {
        return library.composition().stream()
                .filter(row -> row.product().equals(item.product().id())
                        && row.form().equals(item.form())
                        && row.quantity().equals(quantity)
                        && row.use() == CompositionRow.RowUse.DEFAULT
                        && row.printed().value().isPresent()
                        && row.cited().check().isAtLeast(lowest))
                .toList();
    }
}

package org.scalepan.ask.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.scalepan.ask.Compared.SAMPLING;
import static org.scalepan.ask.Compared.compare;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.scalepan.Asked;
import org.scalepan.ask.InventedResults;
import org.scalepan.factors.Library;
import org.scalepan.uncertainty.Summary;

/** What both sides of a comparison share is not uncertain between them. */
class SharedFactorsCancelTest {
    @TempDir
    Path folder;

    /** Both herds are converted with the one protein content of beef; the invented results themselves have no spread. */
    @Test
    void a_conversion_factor_on_both_sides_cancels() {
        Library library = new InventedResults(folder)
                .exact("beef-beef-herd", "dreyer-2021", 30, "kg-edible")
                .exact("beef-dairy-herd", "oonincx-2010", 10, "kg-edible")
                .library();
        Asked asked = Asked.of(library).only("dreyer-2021", "oonincx-2010");
        Comparison comparison = compare(library, asked, SAMPLING, "beef-dairy-herd", "beef-beef-herd");
        Summary herd = comparison.reference().summary().orElseThrow();
        assertTrue(herd.high() > 1.1 * herd.low(), "the protein content makes each footprint uncertain: " + herd);
        Summary ratio = comparison.items().get(0).versus().orElseThrow().timesLess();
        assertEquals(3, ratio.low(), 1e-4);
        assertEquals(3, ratio.median(), 1e-4);
        assertEquals(3, ratio.high(), 1e-4);
    }

    @Test
    void factors_of_two_species_do_not_cancel() {
        Library library = new InventedResults(folder)
                .exact("beef", "dreyer-2021", 30, "kg-edible")
                .exact("pork", "oonincx-2010", 10, "kg-edible")
                .library();
        Asked asked = Asked.of(library).only("dreyer-2021", "oonincx-2010");
        Summary ratio = compare(library, asked, SAMPLING, "pork", "beef")
                .items()
                .get(0)
                .versus()
                .orElseThrow()
                .timesLess();
        // Protein 0.1732 and 0.1618, each with a geometric sd of 1.05: median 3 x 0.1618 / 0.1732 = 2.803,
        // ln-sd 0.04879·√2 = 0.0690, so 90 % within 2.803·exp(±0.1135).
        assertEquals(2.803, ratio.median(), 0.01);
        assertEquals(2.502, ratio.low(), 0.03);
        assertEquals(3.139, ratio.high(), 0.03);
    }
}

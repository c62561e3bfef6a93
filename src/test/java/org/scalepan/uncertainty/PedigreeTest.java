package org.scalepan.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class PedigreeTest {
    /** Formula and factors after Frischknecht and others 2005 (from memory): basic 1.05 with five scores gives 1.2229. */
    @Test
    void five_scores_widen_the_basic_uncertainty_as_published() {
        double squared = Pedigree.squaredGsd(1.05, 1.05, 1.05, 1.00, 1.01, 1.20);

        assertEquals(1.2229, squared, 5e-5);
        assertEquals(Math.sqrt(squared), Pedigree.gsd(Math.sqrt(1.05), 1.05, 1.05, 1.00, 1.01, 1.20), 1e-12);
    }

    @Test
    void the_best_scores_change_nothing() {
        assertEquals(1.3, Pedigree.gsd(1.3, 1, 1, 1, 1, 1), 1e-12);
        assertEquals(1.3, Pedigree.gsd(1.3), 1e-12);
    }

    @Test
    void a_worse_score_never_narrows() {
        RandomDistributions random = new RandomDistributions(51);
        for (int i = 0; i < 200; i++) {
            double base = random.between(1, 2);
            double factor = random.between(1, 2);
            assertTrue(Pedigree.gsd(base, factor) >= base * (1 - 1e-15));
            assertTrue(Pedigree.gsd(base, factor, 1.2) >= Pedigree.gsd(base, factor));
        }
    }

    @Test
    void a_factor_below_one_is_refused() {
        assertEquals(
                "pedigree factor must be 1 or more and finite, not 0.9",
                assertThrows(IllegalArgumentException.class, () -> Pedigree.gsd(1.1, 0.9))
                        .getMessage());
        assertThrows(IllegalArgumentException.class, () -> Pedigree.gsd(0.9));
        assertThrows(IllegalArgumentException.class, () -> Pedigree.squaredGsd(Double.NaN));
    }
}

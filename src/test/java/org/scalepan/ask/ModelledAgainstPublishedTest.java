package org.scalepan.ask;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.scalepan.Libraries;
import org.scalepan.ask.ModelledAgainstPublished.Agreement;
import org.scalepan.ask.ModelledAgainstPublished.ComparedFarm;
import org.scalepan.factors.Library;
import org.scalepan.footprint.Bound;

/** Reference farms beside the studies of their products: the test of whether the two measure alike. */
class ModelledAgainstPublishedTest {
    private static final Library LIBRARY = Libraries.bundled();
    private static final ModelledAgainstPublished TABLE = ModelledAgainstPublished.of(LIBRARY);

    /** A bound tests little; farms that count all that is required test the ruler. */
    @Test
    void at_least_five_products_have_a_farm_whose_greenhouse_gases_are_no_bound() {
        Set<String> products = TABLE.exact().stream()
                .filter(pair -> pair.basis().indicator().id().equals("ghg"))
                .map(pair -> pair.modelled().product().id())
                .collect(Collectors.toSet());

        assertTrue(products.size() >= 5, products.toString());
    }

    @Test
    void a_pair_says_what_its_numbers_say() {
        assertFalse(TABLE.pairs().isEmpty());
        assertAll(TABLE.pairs().stream().map(pair -> () -> {
            double studies = pair.published().summary().orElseThrow().median();
            var model = pair.modelled().summary().orElseThrow();
            assertEquals(model.median() / studies, pair.ratio(), 1e-12);
            Agreement expected = model.low() > studies
                    ? Agreement.MODEL_HIGHER
                    : pair.modelled().bound() != Bound.EXACT
                            ? Agreement.UNDECIDED
                            : model.high() < studies ? Agreement.MODEL_LOWER : Agreement.WITHIN;
            assertEquals(expected, pair.agreement(), pair.farm().farm().id());
        }));
    }

    /** The feed conversion of broilers is measured the same way by studies and by surveys: the two must meet. */
    @Test
    void the_feed_conversion_of_broilers_agrees_with_its_studies() {
        ComparedFarm broilers = TABLE.pairs().stream()
                .filter(pair -> pair.farm().farm().id().equals("broilers-temperate")
                        && pair.basis().indicator().id().equals("feed"))
                .findFirst()
                .orElseThrow();

        assertEquals(1, broilers.ratio(), 0.1, "kg feed per kg live, modelled over published");
        assertTrue(broilers.modelWithinStudies());
    }

    @Test
    void a_publication_that_nobody_can_look_up_is_no_test() {
        assertTrue(TABLE.pairs().stream().noneMatch(pair -> pair.published().isUnciteable()));
    }
}

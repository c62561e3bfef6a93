package org.scalepan.footprint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.scalepan.Libraries;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;

/** Property: converting to another unit and back is the identity, for every product, form, source and pair of units. */
class UnitChainRoundTripTest {
    private static final Library LIBRARY = Libraries.bundled();

    @Test
    void there_and_back_is_the_identity_at_the_centre_and_draw_by_draw() {
        int pairs = 0;
        for (Product product : LIBRARY.products().values()) {
            for (String form : LIBRARY.ids("forms")) {
                for (String source : new String[] {"some-study", "poore-nemecek-2018", "devries-deboer-2010"}) {
                    UnitChain chain =
                            UnitChain.of(LIBRARY, product, form, source, ProteinBasis.CRUDE, true, Grade.MEMORY);
                    for (FunctionalUnit from : FunctionalUnit.values()) {
                        for (FunctionalUnit to : FunctionalUnit.values()) {
                            pairs += roundTrip(chain, from, to, product.id() + ":" + form + " " + source);
                        }
                    }
                }
            }
        }
        assertTrue(pairs > 1_000, pairs + " pairs");
    }

    private static int roundTrip(UnitChain chain, FunctionalUnit from, FunctionalUnit to, String what) {
        boolean there = chain.path(from, to) instanceof ChainPath.FoundPath;
        assertEquals(there, chain.path(to, from) instanceof ChainPath.FoundPath, () -> what + ": one way only");
        if (!there) {
            return 0;
        }
        ChainPath.FoundPath out = (ChainPath.FoundPath) chain.path(from, to);
        ChainPath.FoundPath back = (ChainPath.FoundPath) chain.path(to, from);
        double centre = 1;
        double[] draws = new double[50];
        Arrays.fill(draws, 7);
        CommonRandomNumbers random = new CommonRandomNumbers(3, draws.length);
        for (ChainPath.FoundPath way : new ChainPath.FoundPath[] {out, back}) {
            for (ChainStep step : way.steps()) {
                centre *= step.multiplier();
                step.apply(draws, random);
            }
        }
        assertEquals(1, centre, 1e-12, () -> what + ": " + from.id() + " to " + to.id() + " and back");
        for (double draw : draws) {
            assertEquals(7, draw, 1e-11, () -> what + ": " + from.id() + " to " + to.id() + " and back, drawn");
        }
        return 1;
    }
}

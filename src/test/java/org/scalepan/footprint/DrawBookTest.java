package org.scalepan.footprint;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import org.junit.jupiter.api.Test;
import org.scalepan.uncertainty.BetaFraction;
import org.scalepan.uncertainty.Draws;

/** The draws of one question, whole or at some places only. */
class DrawBookTest {
    private static final int[] PLACES = {0, 3, 4, 999};

    @Test
    void kept_scores_are_the_scores_that_would_be_drawn_afresh() {
        assertArrayEquals(Draws.scores("a", 7, 1000), new DrawBook(7, 1000).scores("a"));
        assertArrayEquals(Draws.scores("a", 7, 1000), new DrawBook(7, 1000).scores("a"), "a second time");
        assertArrayEquals(Draws.scores("a", 8, 1000), new DrawBook(8, 1000).scores("a"), "of another seed");
        assertArrayEquals(Draws.scores("a", 7, 2000), new DrawBook(7, 2000).scores("a"), "of another number");
    }

    @Test
    void a_book_at_some_places_has_the_draws_of_those_places() {
        DrawBook whole = new DrawBook(1, 1000);
        DrawBook some = whole.only(PLACES);
        BetaFraction protein = new BetaFraction(40, 160);

        assertEquals(PLACES.length, some.size());
        for (int i = 0; i < PLACES.length; i++) {
            assertEquals(whole.scores("factor")[PLACES[i]], some.scores("factor")[i], 0.0);
            assertEquals(whole.uniforms("choice")[PLACES[i]], some.uniforms("choice")[i], 0.0);
            assertEquals(whole.values("protein", protein)[PLACES[i]], some.values("protein", protein)[i], 0.0);
        }
        assertNotEquals(some.scores("factor")[0], some.scores("other")[0]);
    }
}

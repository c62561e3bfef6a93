package org.scalepan.footprint;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.scalepan.uncertainty.Distribution;
import org.scalepan.uncertainty.Draws;
import org.scalepan.uncertainty.Lognormal;

/** Cached draws equal freshly drawn ones. */
class DrawCacheTest {
    private static final Distribution YIELD = Lognormal.ofMedianAndGsd(0.2, 1.1);
    private static final AtomicLong SEEDS = new AtomicLong(7_000);

    /** A seed that was not used in this process, so that nothing of it is cached. */
    private final long seed = SEEDS.getAndIncrement();

    @Test
    void a_stream_is_drawn_once_and_as_without_keeping() {
        double[] scores = DrawCache.of(new CommonRandomNumbers.Substream("kept-yield", false), seed, 300);
        double[] choice = DrawCache.of(new CommonRandomNumbers.Substream("kept-yield", true), seed, 300);

        assertArrayEquals(Draws.stratifiedScores("kept-yield", seed, 300), scores);
        assertArrayEquals(Draws.stratified("kept-yield", seed, 300), choice);
        assertSame(scores, DrawCache.of(new CommonRandomNumbers.Substream("kept-yield", false), seed, 300));
    }

    @Test
    void a_factor_read_in_two_ways_has_two_values_at_the_same_scores() {
        Distribution other = Lognormal.ofMedianAndGsd(0.4, 1.1);
        double[] values = DrawCache.values("kept-yield", YIELD, seed, 300);
        double[] others = DrawCache.values("kept-yield", other, seed, 300);

        double[] expected = new double[300];
        other.fill(Draws.stratifiedScores("kept-yield", seed, 300), expected);
        assertArrayEquals(expected, others);
        assertSame(values, DrawCache.values("kept-yield", YIELD, seed, 300));
    }

    @Test
    void a_factor_in_a_selection_has_its_values_at_those_indices() {
        CommonRandomNumbers random = new CommonRandomNumbers(seed, 300);
        int[] places = {3, 40, 299};
        CommonRandomNumbers part = random.only(places);
        double[] whole = random.values("kept-yield", YIELD);
        double[] expected = {whole[3], whole[40], whole[299]};

        assertArrayEquals(expected, part.values("kept-yield", YIELD));
        assertArrayEquals(expected, part.ownValues("kept-yield", YIELD));
    }
}

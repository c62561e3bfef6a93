package org.scalepan.footprint;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.scalepan.footprint.CommonRandomNumbers.ScoreSource;
import org.scalepan.footprint.CommonRandomNumbers.Substream;
import org.scalepan.uncertainty.BetaFraction;
import org.scalepan.uncertainty.Draws;
import org.scalepan.uncertainty.Lognormal;

/** The draws of one question: all, a selection, or with one stream exchanged. */
class CommonRandomNumbersTest {
    private static final int[] PLACES = {0, 3, 4, 999};
    private static final int N = 1_000;
    private static final Lognormal UNCERTAIN = Lognormal.ofMedianAndGsd(1, 1.5);

    @Test
    void draws_depend_on_id_and_seed() {
        CommonRandomNumbers random = new CommonRandomNumbers(7, N);

        assertArrayEquals(Draws.stratifiedScores("feed", 7, N), random.scores("feed"));
        assertArrayEquals(Draws.stratified("study", 7, N), random.uniforms("study"));
    }

    @Test
    void an_exchanged_stream_is_that_of_the_other_instance_and_all_others_stay() {
        CommonRandomNumbers random = new CommonRandomNumbers(7, N);
        CommonRandomNumbers secondSample = new CommonRandomNumbers(ScoreSource.secondSeeded(7), N);
        double[] grid = random.values("grid", UNCERTAIN);

        CommonRandomNumbers exchanged = random.exchanging(Set.of(new Substream("feed", false)), secondSample);

        assertArrayEquals(secondSample.scores("feed"), exchanged.scores("feed"));
        assertFalse(Arrays.equals(random.values("feed", UNCERTAIN), exchanged.values("feed", UNCERTAIN)));
        assertArrayEquals(grid, exchanged.values("grid", UNCERTAIN));
        // A choice of the same name is another stream.
        assertArrayEquals(random.uniforms("feed"), exchanged.uniforms("feed"));
    }

    @Test
    void what_is_derived_is_worked_out_once_and_from_the_own_numbers() {
        CommonRandomNumbers random = new CommonRandomNumbers(7, N);
        AtomicInteger times = new AtomicInteger();
        CommonRandomNumbers exchanged = random.exchanging(
                Set.of(new Substream("feed", false)), new CommonRandomNumbers(ScoreSource.secondSeeded(7), N));

        double[] first = doubled(random, times);

        assertSame(first, doubled(random, times));
        assertEquals(1, times.get());
        assertEquals(2 * exchanged.scores("feed")[0], doubled(exchanged, times)[0]);
    }

    private static double[] doubled(CommonRandomNumbers random, AtomicInteger times) {
        return random.derived("twice the feed", unused -> {
            times.incrementAndGet();
            return Arrays.stream(random.scores("feed")).map(score -> 2 * score).toArray();
        });
    }

    @Test
    void only_so_much_is_kept_of_what_is_derived() {
        CommonRandomNumbers random = new CommonRandomNumbers(7, 200_000);
        double[] first = random.derived(0, unused -> new double[200_000]);
        for (int i = 1; i < 20; i++) {
            random.derived(i, unused -> new double[200_000]);
        }

        assertSame(first, random.derived(0, unused -> new double[200_000]));
        assertNotSame(
                random.derived(19, unused -> new double[200_000]), random.derived(19, unused -> new double[200_000]));
    }

    @Test
    void the_streams_that_were_read_are_listed() {
        CommonRandomNumbers random = new CommonRandomNumbers(1, 2);
        random.uniforms("study");
        random.values("grid", UNCERTAIN);
        random.scores("feed");

        assertEquals(
                List.of(new Substream("feed", false), new Substream("grid", false), new Substream("study", true)),
                List.copyOf(random.streams()));
    }

    @Test
    void instances_of_different_length_are_not_mixed() {
        CommonRandomNumbers longer = new CommonRandomNumbers(1, 3);
        assertThrows(
                IllegalArgumentException.class,
                () -> new CommonRandomNumbers(1, 2).exchanging(Set.of(new Substream("feed", false)), longer));
    }

    @Test
    void cached_scores_equal_freshly_drawn_ones() {
        assertArrayEquals(Draws.stratifiedScores("a", 7, 1000), new CommonRandomNumbers(7, 1000).scores("a"));
        assertArrayEquals(
                Draws.stratifiedScores("a", 7, 1000), new CommonRandomNumbers(7, 1000).scores("a"), "a second time");
        assertArrayEquals(
                Draws.stratifiedScores("a", 8, 1000), new CommonRandomNumbers(8, 1000).scores("a"), "of another seed");
        assertArrayEquals(
                Draws.stratifiedScores("a", 7, 2000),
                new CommonRandomNumbers(7, 2000).scores("a"),
                "of another number");
    }

    @Test
    void a_selection_has_the_draws_at_its_indices() {
        CommonRandomNumbers whole = new CommonRandomNumbers(1, 1000);
        CommonRandomNumbers some = whole.only(PLACES);
        BetaFraction protein = new BetaFraction(40, 160);

        assertEquals(PLACES.length, some.size());
        for (int i = 0; i < PLACES.length; i++) {
            assertEquals(whole.scores("factor")[PLACES[i]], some.scores("factor")[i], 0.0);
            assertEquals(whole.uniforms("choice")[PLACES[i]], some.uniforms("choice")[i], 0.0);
            assertEquals(whole.values("protein", protein)[PLACES[i]], some.values("protein", protein)[i], 0.0);
        }
        assertNotEquals(some.scores("factor")[0], some.scores("other")[0]);
    }

    /** Sensitivity exchanges one factor: its values come from the scores of the other instance, with the distribution asked for. */
    @Test
    void values_of_an_exchanged_factor_use_the_scores_of_the_other_instance() {
        CommonRandomNumbers secondSample = new CommonRandomNumbers(ScoreSource.secondSeeded(7), N);
        CommonRandomNumbers exchanged =
                new CommonRandomNumbers(7, N).exchanging(Set.of(new Substream("feed", false)), secondSample);
        double[] expected = new double[N];
        UNCERTAIN.fill(secondSample.scores("feed"), expected);

        assertArrayEquals(expected, exchanged.values("feed", UNCERTAIN));
        assertArrayEquals(expected, secondSample.values("feed", UNCERTAIN));
    }

    @Test
    void a_second_sample_is_independent_of_the_first() {
        CommonRandomNumbers secondSample = new CommonRandomNumbers(ScoreSource.secondSeeded(7), N);

        assertFalse(Arrays.equals(new CommonRandomNumbers(7, N).scores("feed"), secondSample.scores("feed")));
        assertArrayEquals(Draws.stratifiedScores("anew/feed", 7, N), secondSample.scores("feed"));
        assertArrayEquals(Draws.stratified("anew/study", 7, N), secondSample.uniforms("study"));
    }

    @Test
    void uncached_values_may_be_written_to_without_changing_others() {
        CommonRandomNumbers random = new CommonRandomNumbers(7, N);
        double[] own = random.ownValues("finding", UNCERTAIN);
        assertArrayEquals(random.values("finding", UNCERTAIN), own);
        own[0] = 99;

        assertNotEquals(99, random.values("finding", UNCERTAIN)[0]);
        double[] some = random.only(PLACES).ownValues("finding", UNCERTAIN);
        some[0] = 99;
        assertNotEquals(99, random.only(PLACES).values("finding", UNCERTAIN)[0]);
    }

    @Test
    void a_selection_of_all_draws_is_the_instance_itself() {
        CommonRandomNumbers random = new CommonRandomNumbers(7, 2);

        assertSame(random, random.only(new int[] {0, 1}));
    }
}

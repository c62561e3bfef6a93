package org.scalepan.footprint;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import org.scalepan.uncertainty.Draws;

/**
 * Standard normal scores that were drawn before. They hang on nothing but the factor, the seed and their number, so one question may
 * take what another has drawn; how many bytes are kept is bounded by the memory of the process.
 */
final class KeptScores {
    /** A share of the heap that leaves room for answers under a small one, and at most what all factors of the library need. */
    private static final long MOST_BYTES =
            Math.min(64L << 20, Runtime.getRuntime().maxMemory() / 8);

    private static final Cache<Key, double[]> KEPT = Caffeine.newBuilder()
            .maximumWeight(MOST_BYTES)
            .weigher((Key key, double[] scores) -> Double.BYTES * scores.length)
            .build();

    private KeptScores() {}

    private record Key(String factor, long seed, int draws) {}

    /** The scores of a factor. Shared: callers must not write to them. */
    static double[] of(String factor, long seed, int draws) {
        return KEPT.get(new Key(factor, seed, draws), key -> Draws.scores(key.factor, key.seed, key.draws));
    }
}

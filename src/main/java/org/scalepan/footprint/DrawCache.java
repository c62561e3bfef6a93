package org.scalepan.footprint;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.Optional;
import org.scalepan.uncertainty.Distribution;
import org.scalepan.uncertainty.Draws;

/**
 * Caches the random numbers of a stream, and the values that a factor takes at them. They depend only on the stream, the seed, their number
 * and the factor's distribution, so one question may use what another has drawn; the size of the cache in bytes is bounded by the memory of
 * the process.
 */
final class DrawCache {
    /** A share of the heap that leaves room for answers under a small one, and at most what all factors of the library need. */
    private static final long MOST_BYTES =
            Math.min(64L << 20, Runtime.getRuntime().maxMemory() / 8);

    private static final Cache<DrawKey, double[]> CACHE = Caffeine.newBuilder()
            .maximumWeight(MOST_BYTES)
            .weigher((DrawKey key, double[] drawn) -> Double.BYTES * drawn.length)
            .build();

    private DrawCache() {}

    private record DrawKey(CommonRandomNumbers.Substream stream, long seed, int draws, Optional<Distribution> read) {}

    /** The numbers of a stream. Shared: callers must not write to them. */
    static double[] of(CommonRandomNumbers.Substream stream, long seed, int draws) {
        return CACHE.get(
                new DrawKey(stream, seed, draws, Optional.empty()),
                key -> stream.choice()
                        ? Draws.stratified(stream.id(), seed, draws)
                        : Draws.stratifiedScores(stream.id(), seed, draws));
    }

    /** The values of a factor. Shared: callers must not write to them. */
    static double[] values(String factor, Distribution reading, long seed, int draws) {
        DrawKey key = new DrawKey(new CommonRandomNumbers.Substream(factor, false), seed, draws, Optional.of(reading));
        double[] cached = CACHE.getIfPresent(key);
        if (cached == null) {
            // Not within the cache's own computation, which must not come back to the cache for the scores.
            cached = new double[draws];
            reading.fill(of(key.stream, seed, draws), cached);
            CACHE.put(key, cached);
        }
        return cached;
    }
}

package org.scalepan.ask;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.Optional;
import java.util.function.Supplier;
import org.scalepan.factors.Library;

/**
 * Caches published estimates. An estimate is a pure function of the library, the product, the basis and the sampling, and is shared by all
 * questions; the size of the cache in bytes is bounded by the memory of the process.
 */
final class EstimateCache {
    private static final long MOST_BYTES =
            Math.min(64L << 20, Runtime.getRuntime().maxMemory() / 8);
    /** Approximate size of an estimate in bytes, without its draws. */
    private static final int OF_ITS_TRAIL = 20_000;

    private final Cache<EstimateKey, PublishedEstimate> cache = Caffeine.newBuilder()
            .maximumWeight(MOST_BYTES)
            .weigher((EstimateKey key, PublishedEstimate estimate) ->
                    OF_ITS_TRAIL + arrays(estimate) * Double.BYTES * key.sampling.draws())
            .build();

    /** How many numbers an estimate may keep of each draw: itself, what its distribution depends on, and the conversions of each study. */
    private static int arrays(PublishedEstimate estimate) {
        return estimate.footprint().isPresent() ? 4 + estimate.studies() : 0;
    }

    /** Everything that an estimate depends on beside the library. */
    record EstimateKey(ProductForm item, ComparisonBasis basis, Sampling sampling) {}

    private EstimateCache() {}

    static EstimateCache of(Library library) {
        return library.view(EstimateCache.class, unused -> new EstimateCache());
    }

    /** The estimate, where it is at hand. */
    Optional<PublishedEstimate> known(EstimateKey key) {
        return Optional.ofNullable(cache.getIfPresent(key));
    }

    PublishedEstimate get(EstimateKey key, Supplier<PublishedEstimate> fresh) {
        return cache.get(key, unused -> fresh.get());
    }
}

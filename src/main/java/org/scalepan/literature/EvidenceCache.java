package org.scalepan.literature;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.function.Function;
import org.scalepan.factors.Library;

/**
 * Caches pooled evidence. It is a pure function of the library and the question, independent of seed and draws; the size of the cache in
 * bytes is bounded by the memory of the process.
 */
final class EvidenceCache {
    private static final long MOST_BYTES =
            Math.min(16L << 20, Runtime.getRuntime().maxMemory() / 32);
    /** Approximate size of an entry in bytes: itself, each finding with its conversions, each result that was not used. */
    private static final int OF_ITSELF = 2_000;

    private static final int OF_A_FINDING = 3_000;
    private static final int OF_AN_UNUSED = 200;

    private final Cache<PoolQuestion, Evidence> cache = Caffeine.newBuilder()
            .maximumWeight(MOST_BYTES)
            .weigher((PoolQuestion question, Evidence evidence) -> weight(evidence))
            .build();

    private EvidenceCache() {}

    static EvidenceCache of(Library library) {
        return library.view(EvidenceCache.class, unused -> new EvidenceCache());
    }

    Evidence get(PoolQuestion question, Function<PoolQuestion, Evidence> fresh) {
        return cache.get(question, fresh);
    }

    private static int weight(Evidence evidence) {
        int findings = evidence instanceof Evidence.PooledEvidence some
                ? (int) some.findings().count()
                : 0;
        return OF_ITSELF
                + OF_A_FINDING * findings
                + OF_AN_UNUSED * evidence.unused().size();
    }
}

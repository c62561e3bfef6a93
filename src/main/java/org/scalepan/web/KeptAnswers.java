package org.scalepan.web;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Rendered answers that were given before. An answer is a pure function of the question and the library, and the library of a running
 * service never changes, so a kept one is never out of date; how many bytes are kept is bounded.
 */
final class KeptAnswers {
    private static final long MOST_BYTES =
            Math.min(32L << 20, Runtime.getRuntime().maxMemory() / 16);
    /** What an entry weighs beside its texts, roughly. */
    private static final int OVERHEAD = 200;

    private final Cache<Question, Kept> kept = Caffeine.newBuilder()
            .maximumWeight(MOST_BYTES)
            .weigher((Question question, Kept answer) -> question.weight() + answer.weight())
            .build();

    /**
     * What an answer hangs on: the address, the parameters in the order of their names without the cache-buster, and what the client
     * accepts.
     */
    record Question(String path, Map<String, String> given, String accept) {
        static Question of(String path, Map<String, String> given, String accept) {
            Map<String, String> sorted = new TreeMap<>(given);
            sorted.remove(Route.NO_CACHE);
            return new Question(path, sorted, accept);
        }

        private int weight() {
            int characters = path.length() + accept.length();
            for (Map.Entry<String, String> parameter : given.entrySet()) {
                characters += parameter.getKey().length() + parameter.getValue().length() + OVERHEAD;
            }
            return 2 * characters;
        }
    }

    /**
     * An answer with the address where it can be had again.
     *
     * @param location relative, pinned to the library
     */
    record Kept(Answer answer, String location) {
        private int weight() {
            return answer.body().length + 2 * location.length() + OVERHEAD;
        }
    }

    Optional<Kept> find(Question question) {
        return Optional.ofNullable(kept.getIfPresent(question));
    }

    void keep(Question question, Kept answer) {
        kept.put(question, answer);
    }
}

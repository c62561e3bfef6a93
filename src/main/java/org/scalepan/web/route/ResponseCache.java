package org.scalepan.web.route;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.eclipse.jetty.http.HttpField;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.PreEncodedHttpField;
import org.scalepan.web.http.Answer;

/**
 * A cache of rendered responses, bounded in bytes. An answer is a pure function of the question and the library, and the library of a
 * running service never changes, so an entry never expires.
 */
public final class ResponseCache {
    private static final long MOST_BYTES =
            Math.min(32L << 20, Runtime.getRuntime().maxMemory() / 16);
    /** Approximate size of an entry besides its texts, in bytes. */
    private static final int OVERHEAD = 200;

    /** Request targets are small compared with responses; a response is stored once for all its targets. */
    private static final long MOST_BYTES_OF_QUESTIONS = MOST_BYTES / 8;

    private final Cache<RawTarget, CachedQuestion> targets = Caffeine.newBuilder()
            .maximumWeight(MOST_BYTES_OF_QUESTIONS)
            .weigher((RawTarget target, CachedQuestion question) -> target.weight() + question.weight())
            .build();

    private final Cache<CachedQuestion, CachedResponse> responses = Caffeine.newBuilder()
            .maximumWeight(MOST_BYTES)
            .weigher((CachedQuestion question, CachedResponse answer) -> question.weight() + answer.weight())
            .build();

    /** The cache key: path, parameters sorted by name without the cache-buster, and the Accept header. */
    public record CachedQuestion(String path, Map<String, String> given, String accept) {
        public static CachedQuestion of(String path, Map<String, String> given, String accept) {
            Map<String, String> sorted = new TreeMap<>(given);
            sorted.remove(Route.NO_CACHE);
            return new CachedQuestion(path, sorted, accept);
        }

        private int weight() {
            int characters = path.length() + accept.length();
            for (Map.Entry<String, String> parameter : given.entrySet()) {
                characters += parameter.getKey().length() + parameter.getValue().length() + OVERHEAD;
            }
            return 2 * characters;
        }
    }

    /** The literal request target and Accept header. */
    public record RawTarget(String target, String accept) {
        private int weight() {
            return 2 * (target.length() + accept.length()) + OVERHEAD;
        }
    }

    /**
     * A response with its headers.
     *
     * @param route the route, for metrics
     * @param head headers that a 304 response has too
     * @param ofBody headers of the body: its type and length
     */
    public record CachedResponse(Answer answer, String route, List<HttpField> head, List<HttpField> ofBody) {
        public CachedResponse {
            head = List.copyOf(head);
            ofBody = List.copyOf(ofBody);
        }

        public static CachedResponse of(Answer answer, String route, List<HttpField> head) {
            return new CachedResponse(
                    answer,
                    route,
                    head,
                    List.of(
                            new PreEncodedHttpField(HttpHeader.CONTENT_TYPE, answer.mediaType()),
                            // Set here because for HEAD the server does not know the length of a body beyond its
                            // buffer.
                            new PreEncodedHttpField(
                                    HttpHeader.CONTENT_LENGTH, Integer.toString(answer.body().length))));
        }

        private int weight() {
            int characters = 0;
            for (HttpField field : head) {
                characters += field.getName().length() + field.getValue().length();
            }
            // A header field holds its text and its bytes.
            return answer.body().length + 3 * characters + OVERHEAD * (head.size() + ofBody.size());
        }
    }

    public Optional<CachedResponse> find(CachedQuestion question) {
        return Optional.ofNullable(responses.getIfPresent(question));
    }

    /** The response to the same request target. */
    public Optional<CachedResponse> find(RawTarget target) {
        return Optional.ofNullable(targets.getIfPresent(target)).flatMap(this::find);
    }

    public void put(CachedQuestion question, CachedResponse answer) {
        responses.put(question, answer);
    }

    /** Maps a request target to its question. */
    public void link(RawTarget target, CachedQuestion question) {
        targets.put(target, question);
    }
}

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
 * Rendered answers that were given before. An answer is a pure function of the question and the library, and the library of a running
 * service never changes, so a kept one is never out of date; how many bytes are kept is bounded.
 */
public final class ResponseCache {
    private static final long MOST_BYTES =
            Math.min(32L << 20, Runtime.getRuntime().maxMemory() / 16);
    /** What an entry weighs beside its texts, roughly. */
    private static final int OVERHEAD = 200;

    /** Written questions weigh little beside the answers; the answers themselves are kept once, however they were asked for. */
    private static final long MOST_BYTES_OF_QUESTIONS = MOST_BYTES / 8;

    private final Cache<RawTarget, CachedQuestion> written = Caffeine.newBuilder()
            .maximumWeight(MOST_BYTES_OF_QUESTIONS)
            .weigher((RawTarget asWritten, CachedQuestion question) -> asWritten.weight() + question.weight())
            .build();

    private final Cache<CachedQuestion, Kept> kept = Caffeine.newBuilder()
            .maximumWeight(MOST_BYTES)
            .weigher((CachedQuestion question, Kept answer) -> question.weight() + answer.weight())
            .build();

    /**
     * What an answer hangs on: the address, the parameters in the order of their names without the cache-buster, and what the client
     * accepts.
     */
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

    /** A question letter by letter as a client wrote it: address with query, and what the client accepts. */
    public record RawTarget(String target, String accept) {
        private int weight() {
            return 2 * (target.length() + accept.length()) + OVERHEAD;
        }
    }

    /**
     * An answer with everything that goes out before it.
     *
     * @param route whose answer it is, for counting
     * @param head what is told of the answer, also to a client that has its body already
     * @param ofBody what is told of the body: its type and length
     */
    public record Kept(Answer answer, String route, List<HttpField> head, List<HttpField> ofBody) {
        public Kept {
            head = List.copyOf(head);
            ofBody = List.copyOf(ofBody);
        }

        public static Kept of(Answer answer, String route, List<HttpField> head) {
            return new Kept(
                    answer,
                    route,
                    head,
                    List.of(
                            new PreEncodedHttpField(HttpHeader.CONTENT_TYPE, answer.mediaType()),
                            // Told here because the server does not count a body that HEAD leaves out once it outgrows
                            // the buffer.
                            new PreEncodedHttpField(
                                    HttpHeader.CONTENT_LENGTH, Integer.toString(answer.body().length))));
        }

        private int weight() {
            int characters = 0;
            for (HttpField field : head) {
                characters += field.getName().length() + field.getValue().length();
            }
            // A field holds its text and the bytes of it.
            return answer.body().length + 3 * characters + OVERHEAD * (head.size() + ofBody.size());
        }
    }

    public Optional<Kept> find(CachedQuestion question) {
        return Optional.ofNullable(kept.getIfPresent(question));
    }

    /** The answer to a question that was written in the same letters before. */
    public Optional<Kept> find(RawTarget asked) {
        return Optional.ofNullable(written.getIfPresent(asked)).flatMap(this::find);
    }

    public void keep(CachedQuestion question, Kept answer) {
        kept.put(question, answer);
    }

    /** Remembers how a question was written. */
    public void remember(RawTarget asked, CachedQuestion question) {
        written.put(asked, question);
    }
}

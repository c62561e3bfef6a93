package org.scalepan.web.http;

import java.util.HashMap;
import java.util.Map;

/** Limits how many bytes of request bodies may wait to be computed, over all clients; one client may use half of them. */
public final class ByteQuota {
    private static final long KILOBYTE = 1_024;

    private final long most;
    private final String content;
    private final Map<Client, Long> reserved = new HashMap<>();
    private long total;

    /**
     * @param most bytes
     * @param content what the bytes are, in the words of a refusal
     */
    public ByteQuota(long most, String content) {
        this.most = most;
        this.content = content;
    }

    /**
     * Reserves so many bytes more.
     *
     * @throws ProblemException with 429 when this client has used its half, with 503 when the quota is used up
     */
    public synchronized void reserve(Client client, long bytes) {
        long own = reserved.getOrDefault(client, 0L) + bytes;
        if (own > clientLimit()) {
            throw new ProblemException(Problem.plain(
                    429,
                    "too-many",
                    "Too much of one client",
                    "busy: your " + content + " fill the " + inWords(clientLimit())
                            + " that one client may have waiting at once; ask again in a second"));
        }
        if (total + bytes > most) {
            throw new ProblemException(Problem.plain(
                    503,
                    "busy",
                    "Too much at once",
                    "busy: the " + content + " of others fill the " + inWords(most)
                            + " that there are for what is not yet computed; ask again in a second"));
        }
        reserved.put(client, own);
        total += bytes;
    }

    public synchronized void release(Client client, long bytes) {
        total -= bytes;
        reserved.computeIfPresent(client, (one, held) -> held == bytes ? null : held - bytes);
    }

    /** How many bytes one client may reserve. */
    long clientLimit() {
        return most / 2;
    }

    public synchronized long reserved() {
        return total;
    }

    private static String inWords(long bytes) {
        return bytes < KILOBYTE * KILOBYTE ? bytes / KILOBYTE + " kB" : bytes / (KILOBYTE * KILOBYTE) + " MB";
    }
}

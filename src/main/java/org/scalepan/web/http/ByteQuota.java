package org.scalepan.web.http;

import java.util.HashMap;
import java.util.Map;

/** How much of what was sent may lie waiting to be computed at once, over all who send; one client may fill half of it. */
public final class ByteQuota {
    private static final long KILOBYTE = 1_024;

    private final long most;
    private final String content;
    private final Map<Client, Long> taken = new HashMap<>();
    private long takenByAll;

    /**
     * @param most bytes
     * @param content what lies in it, in words
     */
    public ByteQuota(long most, String content) {
        this.most = most;
        this.content = content;
    }

    /**
     * Takes room for so many bytes more.
     *
     * @throws ProblemException when there is no room, or this client has filled its half
     */
    public synchronized void take(Client client, long bytes) {
        long own = taken.getOrDefault(client, 0L) + bytes;
        if (own > share()) {
            throw new ProblemException(Problem.plain(
                    429,
                    "too-many",
                    "Too much of one client",
                    "busy: your " + content + " fill the " + inWords(share())
                            + " that one client may have waiting at once; ask again in a second"));
        }
        if (takenByAll + bytes > most) {
            throw new ProblemException(Problem.plain(
                    503,
                    "busy",
                    "Too much at once",
                    "busy: the " + content + " of others fill the " + inWords(most)
                            + " that there are for what is not yet computed; ask again in a second"));
        }
        taken.put(client, own);
        takenByAll += bytes;
    }

    public synchronized void giveBack(Client client, long bytes) {
        takenByAll -= bytes;
        taken.computeIfPresent(client, (one, held) -> held == bytes ? null : held - bytes);
    }

    /** What one client may have waiting. */
    long share() {
        return most / 2;
    }

    public synchronized long taken() {
        return takenByAll;
    }

    private static String inWords(long bytes) {
        return bytes < KILOBYTE * KILOBYTE ? bytes / KILOBYTE + " kB" : bytes / (KILOBYTE * KILOBYTE) + " MB";
    }
}

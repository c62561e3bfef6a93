package org.scalepan.web;

import java.util.concurrent.atomic.AtomicLong;

/** How much may lie in temporary files at once, over all who send. */
final class SpoolRoom {
    private final long most;
    private final AtomicLong taken = new AtomicLong();

    SpoolRoom(long most) {
        this.most = most;
    }

    /**
     * Takes room for so many bytes more.
     *
     * @throws Refused when there is no room
     */
    void take(long bytes) {
        if (taken.addAndGet(bytes) > most) {
            taken.addAndGet(-bytes);
            throw new Refused(Problem.plain(
                    503,
                    "busy",
                    "Too much at once",
                    "busy: the rows of others fill the " + most / 1_048_576
                            + " MB that there are for rows not yet computed; ask again in a second"));
        }
    }

    void giveBack(long bytes) {
        taken.addAndGet(-bytes);
    }

    long taken() {
        return taken.get();
    }
}

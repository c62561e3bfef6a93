package org.scalepan.web;

import java.time.Duration;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;

/**
 * Lets only so many answers be computed at once. A few more wait for a moment; the rest are refused at once, so that those who
 * wait never take up all threads and the addresses that compute nothing stay alive.
 */
final class Turnstile {
    private static final int LONGEST_LINE = 32;
    private static final Duration PATIENCE = Duration.ofSeconds(5);

    private final int most;
    private final Semaphore places;
    private final int line;
    private final Duration patience;
    private final AtomicInteger waiting = new AtomicInteger();

    /**
     * @param places how many may compute at once
     * @param line how many may wait
     * @param patience how long each waits at most
     */
    Turnstile(int places, int line, Duration patience) {
        this.most = places;
        this.places = new Semaphore(places, true);
        this.line = line;
        this.patience = patience;
    }

    /** One place for each processor: more at once would only make each slower, and all together need more memory. */
    static Turnstile ofThisMachine() {
        return new Turnstile(Runtime.getRuntime().availableProcessors(), LONGEST_LINE, PATIENCE);
    }

    /**
     * Does the work once there is a place.
     *
     * @throws Refused when the line is full or nobody left within the patience
     */
    <T> T pass(Supplier<T> work) {
        enter();
        try {
            return work.get();
        } finally {
            places.release();
        }
    }

    /**
     * Takes a place for work that goes on after this call, and gives what must be run when it is done.
     *
     * @throws Refused as {@link #pass}
     */
    Runnable take() {
        enter();
        return places::release;
    }

    /** How many wait now. */
    int waiting() {
        return waiting.get();
    }

    private void enter() {
        try {
            // With no time to wait this keeps to the order of the line, which the plain tryAcquire() would not.
            if (!places.tryAcquire(0, TimeUnit.NANOSECONDS)) {
                waitInLine();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw busy();
        }
    }

    private void waitInLine() throws InterruptedException {
        try {
            if (waiting.incrementAndGet() > line || !places.tryAcquire(patience.toNanos(), TimeUnit.NANOSECONDS)) {
                throw busy();
            }
        } finally {
            waiting.decrementAndGet();
        }
    }

    private Refused busy() {
        String limit = most == 1 ? "one answer at a time" : most + " answers at a time";
        return new Refused(Problem.plain(
                503,
                "busy",
                "Too much at once",
                "busy: other answers are being computed (" + limit + ", and " + line
                        + " may wait in line); ask again in a second"));
    }
}

package org.scalepan.web.http;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Supplier;

/**
 * Lets only so many answers be computed at once. A few more wait for a moment; the rest are refused at once, so that those who
 * wait never take up all threads and the addresses that compute nothing stay alive. A place that falls free goes to the client who
 * holds the fewest, so that one who asks much waits for his own questions and not others for his; and the places and the line are
 * never one client's alone.
 */
public final class ConcurrencyLimiter {
    /** Two million draws, and as much again for what they are made from, with room for all that is not answers. */
    private static final long BYTES_OF_AN_ANSWER = 64L * 1_048_576;

    private static final Duration PATIENCE = Duration.ofSeconds(5);

    private final int places;
    private final int placesOfOne;
    private final int line;
    private final Duration patience;

    private final ReentrantLock lock = new ReentrantLock();
    private final Map<Client, Integer> inside = new HashMap<>();
    private final List<Waiting> waiting = new ArrayList<>();
    private int taken;

    /** One who stands in line. */
    private record Waiting(Client client, Condition called) {}

    /**
     * @param places how many may compute at once
     * @param placesOfOne how many of them one client may hold
     * @param line how many may wait
     * @param patience how long each waits at most
     */
    public ConcurrencyLimiter(int places, int placesOfOne, int line, Duration patience) {
        this.places = places;
        this.placesOfOne = placesOfOne;
        this.line = line;
        this.patience = patience;
    }

    /**
     * For single answers: one place for each processor, as more at once would only make each slower, and for what memory the largest
     * answer needs, so that answers side by side do not run out of it. One client
     * may hold them all, because the next one to fall free goes to another who waits, and an answer takes no longer than a moment.
     */
    public static ConcurrencyLimiter ofAnswers() {
        Runtime machine = Runtime.getRuntime();
        int affordable = (int) Math.min(Integer.MAX_VALUE, machine.maxMemory() / BYTES_OF_AN_ANSWER);
        int places = Math.max(1, Math.min(machine.availableProcessors(), affordable));
        return new ConcurrencyLimiter(places, places, Limits.ANSWERS_WAITING, PATIENCE);
    }

    /** For runs of many rows, which can take minutes: one client holds at most half of the places, so that another need not wait for that. */
    public static ConcurrencyLimiter ofRuns() {
        int places = Math.max(2, Runtime.getRuntime().availableProcessors());
        return new ConcurrencyLimiter(places, places / 2, Limits.ANSWERS_WAITING, PATIENCE);
    }

    /** How many answers one client may have computed or waiting at once: half of all, and at least one. */
    public int share() {
        return Math.max(1, (places + line + 1) / 2);
    }

    /** How many are computed at once. */
    public int places() {
        return places;
    }

    /** How many may wait. */
    public int line() {
        return line;
    }

    /** How many one client may have computed at once. */
    public int placesOfOne() {
        return placesOfOne;
    }

    /**
     * Does the work once there is a place.
     *
     * @throws ProblemException when the client has its share already, the line is full, or nobody left within the patience
     */
    public <T> T pass(Client client, Supplier<T> work) {
        enter(client);
        try {
            return work.get();
        } finally {
            leave(client);
        }
    }

    /**
     * Takes a place for work that goes on after this call, and gives what must be run when it is done.
     *
     * @throws ProblemException as {@link #pass}
     */
    public Runnable take(Client client) {
        enter(client);
        return () -> leave(client);
    }

    /** How many wait now. */
    public int waiting() {
        lock.lock();
        try {
            return waiting.size();
        } finally {
            lock.unlock();
        }
    }

    private void enter(Client client) {
        lock.lock();
        try {
            if (held(client) + inLine(client) >= share()) {
                throw tooMany(share(), "being computed or in line");
            }
            Waiting last = new Waiting(client, lock.newCondition());
            waiting.add(last);
            callNext();
            if (waiting.contains(last)) {
                waitInLine(last);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw busy();
        } finally {
            lock.unlock();
        }
    }

    private void waitInLine(Waiting self) throws InterruptedException {
        try {
            if (waiting.size() > line) {
                throw refusal(self.client());
            }
            long left = patience.toNanos();
            while (waiting.contains(self)) {
                if (left <= 0) {
                    throw refusal(self.client());
                }
                left = self.called().awaitNanos(left);
            }
        } catch (InterruptedException e) {
            if (!waiting.contains(self)) {
                // Called in the same moment: the place must not be lost.
                leave(self.client());
            }
            throw e;
        } finally {
            waiting.remove(self);
        }
    }

    private void leave(Client client) {
        lock.lock();
        try {
            taken--;
            inside.computeIfPresent(client, (one, held) -> held == 1 ? null : held - 1);
            callNext();
        } finally {
            lock.unlock();
        }
    }

    /** Gives what is free to those who hold the fewest places, and among these to who came first. */
    private void callNext() {
        Optional<Waiting> next = next();
        while (taken < places && next.isPresent()) {
            Waiting called = next.get();
            waiting.remove(called);
            inside.merge(called.client(), 1, Integer::sum);
            taken++;
            called.called().signal();
            next = next();
        }
    }

    private Optional<Waiting> next() {
        return waiting.stream()
                .filter(one -> held(one.client()) < placesOfOne)
                .min(Comparator.comparingInt(one -> held(one.client())));
    }

    private int held(Client client) {
        return inside.getOrDefault(client, 0);
    }

    private int inLine(Client client) {
        return (int) waiting.stream().filter(one -> one.client().equals(client)).count();
    }

    private ProblemException refusal(Client client) {
        boolean ofItsOwn = taken < places && held(client) >= placesOfOne;
        return ofItsOwn ? tooMany(placesOfOne, "being computed") : busy();
    }

    private static ProblemException tooMany(int most, String what) {
        String limit = most == 1 ? "one answer" : most + " answers";
        return new ProblemException(Problem.plain(
                429,
                "too-many",
                "Too much of one client",
                "busy: you have " + limit + " " + what + ", as many as one client may have at once; ask again in a"
                        + " second"));
    }

    private ProblemException busy() {
        String limit = places == 1 ? "one answer at a time" : places + " answers at a time";
        return new ProblemException(Problem.plain(
                503,
                "busy",
                "Too much at once",
                "busy: other answers are being computed (" + limit + ", and " + line
                        + " may wait in line); ask again in a second"));
    }
}

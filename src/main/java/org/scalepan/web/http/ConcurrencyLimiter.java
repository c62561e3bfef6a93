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
 * Limits how many answers are computed at once. A bounded queue holds a few more for a short time; further requests are refused at
 * once, so that waiting requests never occupy all threads and routes that compute nothing stay responsive. A freed permit goes to the
 * waiting client that holds the fewest, so that a client with many requests delays its own and not those of others. One client
 * never takes up all permits and the whole queue.
 */
public final class ConcurrencyLimiter {
    /** Two million draws and the same amount for their inputs; the rest of the heap stays free for everything else. */
    private static final long BYTES_OF_AN_ANSWER = 64L * 1_048_576;

    private static final Duration QUEUE_TIMEOUT = Duration.ofSeconds(5);

    private final int permits;
    private final int permitsPerClient;
    private final int queueLimit;
    private final Duration timeout;

    private final ReentrantLock lock = new ReentrantLock();
    private final Map<Client, Integer> held = new HashMap<>();
    private final List<Waiter> queue = new ArrayList<>();
    private int used;

    /** A queued request; the condition is signalled when it gets a permit. */
    private record Waiter(Client client, Condition admitted) {}

    /**
     * @param permits how many answers may be computed at once
     * @param permitsPerClient how many of them one client may hold
     * @param queueLimit how many requests may wait
     * @param timeout how long each waits at most
     */
    public ConcurrencyLimiter(int permits, int permitsPerClient, int queueLimit, Duration timeout) {
        this.permits = permits;
        this.permitsPerClient = permitsPerClient;
        this.queueLimit = queueLimit;
        this.timeout = timeout;
    }

    /**
     * For single answers: one permit for each processor, since more would only slow each answer down, and no more than the heap
     * allows if each answer is as large as can be. One client may hold all permits, because the next freed one goes to another
     * waiting client and an answer takes little time.
     */
    public static ConcurrencyLimiter ofAnswers() {
        Runtime machine = Runtime.getRuntime();
        int affordable = (int) Math.min(Integer.MAX_VALUE, machine.maxMemory() / BYTES_OF_AN_ANSWER);
        int permits = Math.max(1, Math.min(machine.availableProcessors(), affordable));
        return new ConcurrencyLimiter(permits, permits, Limits.ANSWERS_WAITING, QUEUE_TIMEOUT);
    }

    /** For bulk runs, which can take minutes: one client holds at most half of the permits, so that another can start at once. */
    public static ConcurrencyLimiter ofRuns() {
        int permits = Math.max(2, Runtime.getRuntime().availableProcessors());
        return new ConcurrencyLimiter(permits, permits / 2, Limits.ANSWERS_WAITING, QUEUE_TIMEOUT);
    }

    /** How many answers one client may have running or queued: half of all, and at least one. */
    public int clientLimit() {
        return Math.max(1, (permits + queueLimit + 1) / 2);
    }

    /** How many answers are computed at once. */
    public int permits() {
        return permits;
    }

    /** How many requests may wait. */
    public int queueLimit() {
        return queueLimit;
    }

    /** How many answers of one client are computed at once. */
    public int permitsPerClient() {
        return permitsPerClient;
    }

    /**
     * Runs the work with a permit, waiting for one if necessary.
     *
     * @throws ProblemException with 429 when the client is at its limit, with 503 when the queue is full or the timeout has passed
     */
    public <T> T run(Client client, Supplier<T> work) {
        enqueue(client);
        try {
            return work.get();
        } finally {
            release(client);
        }
    }

    /**
     * Acquires a permit for work that outlasts this call.
     *
     * @return releases the permit; to be run exactly once
     * @throws ProblemException as {@link #run}
     */
    public Runnable acquire(Client client) {
        enqueue(client);
        return () -> release(client);
    }

    /** How many are computing. */
    public int computing() {
        lock.lock();
        try {
            return used;
        } finally {
            lock.unlock();
        }
    }

    /** How many requests wait now. */
    public int waiting() {
        lock.lock();
        try {
            return queue.size();
        } finally {
            lock.unlock();
        }
    }

    private void enqueue(Client client) {
        lock.lock();
        try {
            if (held(client) + queued(client) >= clientLimit()) {
                throw tooMany(clientLimit(), "being computed or in line");
            }
            Waiter last = new Waiter(client, lock.newCondition());
            queue.add(last);
            admit();
            if (queue.contains(last)) {
                await(last);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw busy();
        } finally {
            lock.unlock();
        }
    }

    private void await(Waiter self) throws InterruptedException {
        try {
            if (queue.size() > queueLimit) {
                throw refusal(self.client());
            }
            long left = timeout.toNanos();
            while (queue.contains(self)) {
                if (left <= 0) {
                    throw refusal(self.client());
                }
                left = self.admitted().awaitNanos(left);
            }
        } catch (InterruptedException e) {
            if (!queue.contains(self)) {
                // Admitted at the same moment: the permit must not be lost.
                release(self.client());
            }
            throw e;
        } finally {
            queue.remove(self);
        }
    }

    private void release(Client client) {
        lock.lock();
        try {
            used--;
            held.computeIfPresent(client, (one, permitsHeld) -> permitsHeld == 1 ? null : permitsHeld - 1);
            admit();
        } finally {
            lock.unlock();
        }
    }

    /** Gives free permits to the clients that hold the fewest, and among these to the one that came first. */
    private void admit() {
        Optional<Waiter> next = next();
        while (used < permits && next.isPresent()) {
            Waiter admitted = next.get();
            queue.remove(admitted);
            held.merge(admitted.client(), 1, Integer::sum);
            used++;
            admitted.admitted().signal();
            next = next();
        }
    }

    private Optional<Waiter> next() {
        return queue.stream()
                .filter(one -> held(one.client()) < permitsPerClient)
                .min(Comparator.comparingInt(one -> held(one.client())));
    }

    private int held(Client client) {
        return held.getOrDefault(client, 0);
    }

    private int queued(Client client) {
        return (int) queue.stream().filter(one -> one.client().equals(client)).count();
    }

    private ProblemException refusal(Client client) {
        boolean ofItsOwn = used < permits && held(client) >= permitsPerClient;
        return ofItsOwn ? tooMany(permitsPerClient, "being computed") : busy();
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
        String limit = permits == 1 ? "one answer at a time" : permits + " answers at a time";
        return new ProblemException(Problem.plain(
                503,
                "busy",
                "Too much at once",
                "busy: other answers are being computed (" + limit + ", and " + queueLimit
                        + " may wait in line); ask again in a second"));
    }
}

package org.scalepan.web.bulk;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.util.ArrayDeque;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;

/**
 * Runs the same function over many tasks on several threads and passes the results on in the order of the tasks. Tasks are taken only a
 * few ahead of the results, so that memory does not grow with their number and a slow consumer slows the source down.
 */
final class OrderedParallel {
    private static final int AHEAD_OF_EACH_THREAD = 3;
    private static final long SECONDS_TO_END = 30;

    private OrderedParallel() {}

    /** Source of tasks; empty at the end. */
    interface TaskSource<T> {
        Optional<T> next() throws IOException;
    }

    /** Sink of results. */
    interface Sink<R> {
        void take(R result) throws IOException;
    }

    /**
     * Runs until the source is empty. Source and sink are called by the calling thread, the work by threads that end with this call.
     *
     * @param threads how many do the work, 1 or more
     * @param work must be a pure function of its task
     * @throws IOException what the source or the sink throws; an exception of the work is thrown when its result is due
     */
    static <T, R> void run(int threads, TaskSource<T> tasks, Function<T, R> work, Sink<R> results) throws IOException {
        ExecutorService pool = Executors.newFixedThreadPool(threads, task -> {
            Thread thread = new Thread(task, "rows");
            thread.setDaemon(true);
            return thread;
        });
        try {
            Queue<Future<R>> underWay = new ArrayDeque<>();
            Optional<T> next = tasks.next();
            while (next.isPresent() || !underWay.isEmpty()) {
                while (next.isPresent() && underWay.size() < threads * AHEAD_OF_EACH_THREAD) {
                    T task = next.get();
                    underWay.add(pool.submit(() -> work.apply(task)));
                    next = tasks.next();
                }
                results.take(underWay.remove().get());
            }
        } catch (ExecutionException e) {
            throw unchecked(e);
        } catch (InterruptedException e) {
            throw interrupted();
        } finally {
            end(pool);
        }
    }

    private static RuntimeException unchecked(ExecutionException thrown) {
        if (thrown.getCause() instanceof Error error) {
            throw error;
        }
        return thrown.getCause() instanceof RuntimeException cause ? cause : new IllegalStateException(thrown);
    }

    private static InterruptedIOException interrupted() {
        Thread.currentThread().interrupt();
        return new InterruptedIOException("interrupted while rows were computed");
    }

    private static void end(ExecutorService pool) throws InterruptedIOException {
        pool.shutdownNow();
        try {
            if (!pool.awaitTermination(SECONDS_TO_END, TimeUnit.SECONDS)) {
                throw new IllegalStateException("a task did not end");
            }
        } catch (InterruptedException e) {
            throw interrupted();
        }
    }
}

package org.scalepan.web.server;

import java.time.Duration;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicBoolean;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.eclipse.jetty.util.thread.Scheduler;
import org.jspecify.annotations.Nullable;

/**
 * Refuses a request body that comes too slowly. The bytes of each request count for that request alone, and only time counts in which
 * the service waits for them. (Jetty's own MinimumDataRateHandler counts the bytes of all requests since the start, so that after a few
 * megabytes nobody is too slow any more.)
 */
final class MinimumSendRate extends Handler.Wrapper {
    private final long bytesPerSecond;
    private final Duration start;
    private final Duration most;

    /**
     * @param bytesPerSecond minimum rate at which a body must come
     * @param start how long a client may be silent before its first byte
     * @param most how long a client may be silent at most
     */
    MinimumSendRate(long bytesPerSecond, Duration start, Duration most) {
        this.bytesPerSecond = bytesPerSecond;
        this.start = start;
        this.most = most;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        return super.handle(
                new PacedRequest(request, new WaitingTime(bytesPerSecond, start, most)), response, callback);
    }

    private static final class PacedRequest extends Request.Wrapper {
        private final WaitingTime time;
        private volatile Content.@Nullable Chunk tooSlow;

        PacedRequest(Request request, WaitingTime time) {
            super(request);
            this.time = time;
        }

        @Override
        public Content.@Nullable Chunk read() {
            Content.Chunk failure = tooSlow;
            if (failure != null) {
                return failure;
            }
            Content.Chunk chunk = super.read();
            if (chunk != null) {
                time.moved(chunk.remaining());
            }
            return chunk;
        }

        @Override
        public void demand(Runnable arrived) {
            long since = System.nanoTime();
            AtomicBoolean open = new AtomicBoolean(true);
            Scheduler.Task clock = getComponents()
                    .getScheduler()
                    .schedule(
                            () -> {
                                if (open.getAndSet(false)) {
                                    tooSlow = Content.Chunk.from(new TimeoutException("the body comes too slowly"));
                                    arrived.run();
                                }
                            },
                            Math.max(0, time.leftNanoseconds()),
                            TimeUnit.NANOSECONDS);
            super.demand(() -> {
                if (open.getAndSet(false)) {
                    clock.cancel();
                    time.waited(System.nanoTime() - since);
                    arrived.run();
                }
            });
        }
    }
}

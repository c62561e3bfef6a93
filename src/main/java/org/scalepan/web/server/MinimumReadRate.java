package org.scalepan.web.server;

import java.nio.ByteBuffer;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.eclipse.jetty.util.thread.Scheduler;
import org.jspecify.annotations.Nullable;

/**
 * Closes the connection of a client that reads a response too slowly. The server's idle timeout restarts with every byte read, so a
 * client that reads one now and then could hold a thread and a permit indefinitely. Only the time spent waiting for the client counts,
 * not the time spent computing, and the bytes of each response count for that response alone.
 */
final class MinimumReadRate extends Handler.Wrapper {
    private final long bytesPerSecond;
    private final Duration start;
    private final Duration most;

    /**
     * @param bytesPerSecond minimum rate at which a response must be read
     * @param start how long a client may read nothing at first
     * @param most how long a client may read nothing at most
     */
    MinimumReadRate(long bytesPerSecond, Duration start, Duration most) {
        this.bytesPerSecond = bytesPerSecond;
        this.start = start;
        this.most = most;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        return super.handle(
                request, new PacedResponse(request, response, new WaitingTime(bytesPerSecond, start, most)), callback);
    }

    private static final class PacedResponse extends Response.Wrapper {
        private final WaitingTime time;

        PacedResponse(Request request, Response response, WaitingTime time) {
            super(request, response);
            this.time = time;
        }

        @Override
        public void write(boolean last, @Nullable ByteBuffer piece, Callback callback) {
            Writing writing = new Writing(getRequest(), time, callback);
            super.write(last, piece, writing);
            // Nearly always the write is complete by now and needs no timer.
            writing.watch();
        }
    }

    /** A pending write of a response. */
    private static final class Writing extends Callback.Nested {
        private final Request request;
        private final WaitingTime time;
        private long since = System.nanoTime();
        private long takenBefore;
        private volatile boolean done;
        private volatile Scheduler.@Nullable Task clock;

        Writing(Request request, WaitingTime time, Callback callback) {
            super(callback);
            this.request = request;
            this.time = time;
            this.takenBefore = taken();
        }

        private long taken() {
            return ServiceEndPoint.of(request).map(ServiceEndPoint::taken).orElse(0L);
        }

        private void watch() {
            if (done) {
                return;
            }
            clock = request.getComponents()
                    .getScheduler()
                    .schedule(this::look, Math.max(0, time.leftNanoseconds()), TimeUnit.NANOSECONDS);
            if (done) {
                stopClock();
            }
        }

        private void look() {
            settle();
            if (time.leftNanoseconds() > 0) {
                watch();
            } else if (!done) {
                ServiceEndPoint.of(request).ifPresent(one -> one.hangUp(ServiceEndPoint.HangUp.SLOW_READER));
            }
        }

        /** Takes the time since the last look off, and adds what the client has read in it. */
        private synchronized void settle() {
            long now = System.nanoTime();
            long takenNow = taken();
            time.waited(now - since);
            time.moved(takenNow - takenBefore);
            since = now;
            takenBefore = takenNow;
        }

        private void stopClock() {
            done = true;
            Scheduler.Task set = clock;
            if (set != null) {
                set.cancel();
            }
        }

        @Override
        public void succeeded() {
            settle();
            stopClock();
            super.succeeded();
        }

        @Override
        public void failed(Throwable cause) {
            stopClock();
            super.failed(cause);
        }
    }
}

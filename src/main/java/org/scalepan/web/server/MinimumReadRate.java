package org.scalepan.web.server;

import java.nio.ByteBuffer;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.eclipse.jetty.util.thread.Scheduler;
import org.jspecify.annotations.Nullable;

/**
 * Closes the connection of a client that reads a response too slowly. The server's idle timeout restarts with every byte read, so a
 * client that reads one now and then could hold a thread and a permit indefinitely. Only the time spent waiting for the client counts,
 * not the time spent computing.
 */
final class MinimumReadRate extends Handler.Wrapper {
    private final long bytesPerSecond;
    private final Duration grace;

    /**
     * @param bytesPerSecond minimum rate at which a response must be read
     * @param grace additional time allowed for each write
     */
    MinimumReadRate(long bytesPerSecond, Duration grace) {
        this.bytesPerSecond = bytesPerSecond;
        this.grace = grace;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        return super.handle(request, new Paced(request, response), callback);
    }

    private final class Paced extends Response.Wrapper {
        Paced(Request request, Response response) {
            super(request, response);
        }

        @Override
        public void write(boolean last, @Nullable ByteBuffer piece, Callback callback) {
            int bytes = piece == null ? 0 : piece.remaining();
            Writing writing = new Writing(getRequest(), callback);
            super.write(last, piece, writing);
            // Nearly always the write is complete by now and needs no timer.
            writing.endWithin(grace.plusMillis(1_000L * bytes / bytesPerSecond));
        }
    }

    /** A pending write of a response. */
    private static final class Writing extends Callback.Nested {
        private final Request request;
        private volatile boolean done;
        private volatile Scheduler.@Nullable Task clock;

        Writing(Request request, Callback callback) {
            super(callback);
            this.request = request;
        }

        void endWithin(Duration time) {
            if (done) {
                return;
            }
            clock = request.getComponents()
                    .getScheduler()
                    .schedule(this::hangUp, time.toMillis(), TimeUnit.MILLISECONDS);
            if (done) {
                stopClock();
            }
        }

        private void hangUp() {
            request.getConnectionMetaData()
                    .getConnection()
                    .getEndPoint()
                    .close(new TimeoutException("the client reads too slowly"));
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

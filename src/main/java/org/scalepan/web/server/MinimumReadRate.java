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
 * Hangs up on who reads an answer too slowly. The server's own clock for idle connections starts anew with every byte that is taken, so
 * that a client who takes one now and then would hold a thread, and a place where rows are computed, for as long as he likes. Only the
 * time in which the service waits for the client counts, not the time in which it computes.
 */
final class MinimumReadRate extends Handler.Wrapper {
    private final long bytesPerSecond;
    private final Duration grace;

    /**
     * @param bytesPerSecond how fast an answer must be read
     * @param grace how much longer each piece of it may take
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
            // Nearly always it has been written by now, and no clock need be set.
            writing.endWithin(grace.plusMillis(1_000L * bytes / bytesPerSecond));
        }
    }

    /** A piece of an answer on its way to the client. */
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

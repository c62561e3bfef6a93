package org.scalepan.web.server;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SelectionKey;
import java.nio.channels.SocketChannel;
import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import org.eclipse.jetty.io.EndPoint;
import org.eclipse.jetty.io.ManagedSelector;
import org.eclipse.jetty.io.SocketChannelEndPoint;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.util.thread.Scheduler;

/**
 * The socket of a client, which knows since when it waits for a request and how many bytes the client has taken. The idle time of the
 * server starts again with every byte, so that it limits neither the head of a request nor the pace of a reader.
 */
final class ServiceEndPoint extends SocketChannelEndPoint {
    private volatile boolean handling;
    private volatile long waitsSince = System.nanoTime();
    private volatile long headSince;
    private volatile boolean headBegun;
    private volatile long taken;
    private final Consumer<String> onHangUp;

    ServiceEndPoint(
            SocketChannel channel,
            ManagedSelector selector,
            SelectionKey key,
            Scheduler scheduler,
            Consumer<String> onHangUp) {
        super(channel, selector, key, scheduler);
        this.onHangUp = onHangUp;
    }

    /** Why the service closes a connection. */
    enum HangUp {
        SLOW_HEAD,
        NO_REQUEST,
        PLACE_NEEDED,
        SLOW_READER,
        TOO_MANY_OF_CLIENT;

        String reason() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** The socket of a request; empty where a test uses another connector. */
    static Optional<ServiceEndPoint> of(Request request) {
        EndPoint endPoint = request.getConnectionMetaData().getConnection().getEndPoint();
        return endPoint instanceof ServiceEndPoint ours ? Optional.of(ours) : Optional.empty();
    }

    /** A request has been read as far as its head. */
    void requestBegins() {
        handling = true;
        headBegun = false;
    }

    void requestEnds() {
        waitsSince = System.nanoTime();
        handling = false;
    }

    /** Whether it waits for a request, or for the rest of its head. */
    boolean waits() {
        return !handling;
    }

    /** How long it has waited for a request. */
    Duration waited() {
        return handling ? Duration.ZERO : Duration.ofNanos(System.nanoTime() - waitsSince);
    }

    /** How long ago the first byte of a head came that is not complete yet. */
    Duration inHead() {
        return handling || !headBegun ? Duration.ZERO : Duration.ofNanos(System.nanoTime() - headSince);
    }

    /** Bytes that the client, or the system on its behalf, has taken so far. */
    long taken() {
        return taken;
    }

    void hangUp(HangUp why) {
        onHangUp.accept(why.reason());
        close(new TimeoutException(why.reason()));
    }

    @Override
    public int fill(ByteBuffer buffer) throws IOException {
        int read = super.fill(buffer);
        if (read > 0 && !handling && !headBegun) {
            headSince = System.nanoTime();
            headBegun = true;
        }
        return read;
    }

    @Override
    public boolean flush(ByteBuffer... buffers) throws IOException {
        long before = remaining(buffers);
        boolean all = super.flush(buffers);
        // One thread writes at a time; others only look.
        taken = taken + before - remaining(buffers);
        return all;
    }

    private static long remaining(ByteBuffer... buffers) {
        long bytes = 0;
        for (ByteBuffer buffer : buffers) {
            bytes += buffer.remaining();
        }
        return bytes;
    }
}

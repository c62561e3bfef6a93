package org.scalepan.web.server;

import java.time.Duration;

/**
 * How long the service still waits for one client in one request. Waiting uses it up and bytes add to it, so that on average they must
 * move at a minimum rate. It has a most, so that a fast beginning does not pay for hours of silence.
 */
final class WaitingTime {
    private final long bytesPerSecond;
    private final long most;
    private long left;

    /**
     * @param bytesPerSecond the rate at which bytes make up for waiting
     * @param start what there is before the first byte
     * @param most what there is at most
     */
    WaitingTime(long bytesPerSecond, Duration start, Duration most) {
        this.bytesPerSecond = bytesPerSecond;
        this.most = most.toNanos();
        this.left = start.toNanos();
    }

    synchronized void moved(long bytes) {
        // Beyond this many bytes the most is reached in any case; the product must not overflow.
        double gained = 1e9 * bytes / bytesPerSecond;
        left = Math.min(most, left + (long) Math.min(gained, most * 2.0));
    }

    synchronized void waited(long nanoseconds) {
        left -= nanoseconds;
    }

    synchronized long leftNanoseconds() {
        return left;
    }
}

package org.scalepan.web.server;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import org.junit.jupiter.api.Test;

/** How long a client may be waited for: 200 bytes a second, five seconds at first, thirty at most. */
class WaitingTimeTest {
    private final WaitingTime time = new WaitingTime(200, Duration.ofSeconds(5), Duration.ofSeconds(30));

    private double left() {
        return time.leftNanoseconds() / 1e9;
    }

    @Test
    void bytes_make_up_for_waiting_at_the_minimum_rate() {
        time.waited(Duration.ofSeconds(4).toNanos());
        time.moved(400);

        assertEquals(3, left());
    }

    @Test
    void more_bytes_than_needed_are_saved_up_to_the_most() {
        time.moved(Long.MAX_VALUE);

        assertEquals(30, left());
    }
}

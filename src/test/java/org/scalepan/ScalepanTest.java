package org.scalepan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.BindException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Why the service cannot listen is told by its cause. */
class ScalepanTest {
    private static final Exception IN_USE = new IllegalStateException(new BindException("Address already in use"));

    @Test
    void a_port_without_the_right_to_it_is_not_called_taken() {
        // As the framework puts it: its own words first, the cause of the system within.
        Exception denied = new IllegalStateException(
                "Port already in use. Make sure no other process is using port 80",
                new BindException("Permission denied"));

        assertTrue(Scalepan.why("127.0.0.1", denied).startsWith("this user has no right to that port"));
    }

    @ParameterizedTest
    @CsvSource({"1.8, true", "11, true", "16, true", "17, false", "25, false", "unknown, false"})
    void java_before_17_is_told_as_too_old(String version, boolean tooOld) {
        assertEquals(tooOld, Launcher.isTooOld(version));
    }

    @Test
    void an_address_of_ipv6_stands_in_brackets() {
        assertEquals("http://[::1]:8080", Scalepan.address("::1", 8080));
        assertEquals("http://[::1]:8080", Scalepan.address("[::1]", 8080));
        assertEquals("http://127.0.0.1:80", Scalepan.address("127.0.0.1", 80));
    }

    @Test
    void a_taken_port_an_address_elsewhere_and_an_unknown_host_are_told_apart() {
        // 192.0.2.0/24 is kept for documentation (RFC 5737) and .invalid for names that never exist (RFC 2606).
        assertEquals("something else listens there; try --port", Scalepan.why("127.0.0.1", IN_USE));
        assertEquals("192.0.2.1 is not an address of this machine", Scalepan.why("192.0.2.1", IN_USE));
        assertEquals("the host no.such.invalid is not known", Scalepan.why("no.such.invalid", IN_USE));
    }
}

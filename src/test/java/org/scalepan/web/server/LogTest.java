package org.scalepan.web.server;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.slf4j.LoggerFactory;

/** A client must not be able to write into the log. */
class LogTest {
    @Test
    void the_parser_of_requests_does_not_log_what_clients_send() {
        assertFalse(
                LoggerFactory.getLogger(org.eclipse.jetty.util.HostPort.class).isWarnEnabled());
    }

    @Test
    void our_own_warnings_and_those_of_the_server_are_still_logged() {
        assertTrue(LoggerFactory.getLogger(Pipeline.class).isWarnEnabled());
        assertTrue(LoggerFactory.getLogger("org.eclipse.jetty.server.Server").isWarnEnabled());
    }
}

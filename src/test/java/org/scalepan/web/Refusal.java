package org.scalepan.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.scalepan.web.render.ProblemView;
import org.scalepan.web.server.RawExchange;

/** Asserts what holds for every refusal: a 4xx status, a problem document, and no internals of the service. */
public final class Refusal {
    /** Traces of a failure, and names that help an attacker. */
    private static final List<String> INTERNALS =
            List.of("exception", "\tat ", "org.scalepan", "jetty", "javalin", "jackson", "java.", "<html", "caused by");

    private Refusal() {}

    /** Checks a refusal; {@code sent} names it in the failure message. */
    public static void check(String sent, RawExchange reply) {
        boolean theirs = reply.status() >= 400 && reply.status() < 500 || reply.status() == 505;
        assertTrue(theirs, () -> sent + " is answered " + reply.head() + "\n" + reply.body());
        checkSilent(sent, reply);
        boolean ofHead = reply.body().isEmpty();
        String type = reply.header("Content-Type").orElse(ofHead ? ProblemView.MEDIA_TYPE : "none");
        boolean line = type.startsWith("text/plain")
                && reply.body().startsWith("#")
                && reply.body().lines().count() == 1;
        assertTrue(type.equals(ProblemView.MEDIA_TYPE) || line, () -> sent + " is refused as " + type);
        assertEquals("nosniff", reply.header("X-Content-Type-Options").orElse("none"), sent);
    }

    /** Checks any answer: no banner, no trace, no request text reflected in HTML. */
    public static void checkSilent(String sent, RawExchange reply) {
        assertTrue(reply.header("Server").isEmpty(), () -> sent + " shows a banner: " + reply.head());
        assertTrue(reply.header("X-Powered-By").isEmpty(), () -> sent + " shows a banner: " + reply.head());
        assertTrue(reply.header("X-Injected").isEmpty(), () -> sent + " wrote a header: " + reply.head());
        assertTrue(reply.status() < 500 || reply.status() == 505, () -> sent + " is answered " + reply.head());
        if (reply.status() >= 400) {
            String text = reply.body().toLowerCase(Locale.ROOT);
            INTERNALS.forEach(trace -> assertFalse(text.contains(trace), () -> sent + " reveals " + reply.body()));
        }
    }
}

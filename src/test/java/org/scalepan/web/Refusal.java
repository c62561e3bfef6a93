package org.scalepan.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.scalepan.web.render.ProblemView;
import org.scalepan.web.server.RawExchange;

/** What every refusal must be, whatever was sent: the client's fault by its status, a problem by its form, and silent about us. */
public final class Refusal {
    /** Traces of a program that fell over, and names that tell an attacker what to look for. */
    private static final List<String> TELLTALES =
            List.of("exception", "\tat ", "org.scalepan", "jetty", "javalin", "jackson", "java.", "<html", "caused by");

    private Refusal() {}

    /** Holds a refusal against the form; {@code sent} only names it. */
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

    /** The same of any answer: no banner, no trace, nothing sent that comes back in a page. */
    public static void checkSilent(String sent, RawExchange reply) {
        assertTrue(reply.header("Server").isEmpty(), () -> sent + " shows a banner: " + reply.head());
        assertTrue(reply.header("X-Powered-By").isEmpty(), () -> sent + " shows a banner: " + reply.head());
        assertTrue(reply.header("X-Injected").isEmpty(), () -> sent + " wrote a header: " + reply.head());
        assertTrue(reply.status() < 500 || reply.status() == 505, () -> sent + " is answered " + reply.head());
        if (reply.status() >= 400) {
            String told = reply.body().toLowerCase(Locale.ROOT);
            TELLTALES.forEach(trace -> assertFalse(told.contains(trace), () -> sent + " tells " + reply.body()));
        }
    }
}

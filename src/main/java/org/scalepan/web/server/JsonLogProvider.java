package org.scalepan.web.server;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.slf4j.ILoggerFactory;
import org.slf4j.IMarkerFactory;
import org.slf4j.Logger;
import org.slf4j.event.Level;
import org.slf4j.helpers.BasicMarkerFactory;
import org.slf4j.helpers.NOPMDCAdapter;
import org.slf4j.spi.MDCAdapter;
import org.slf4j.spi.SLF4JServiceProvider;

/** Log lines as JSON on standard error, in place of the plain ones; with the same levels as {@code simplelogger.properties}. */
public final class JsonLogProvider implements SLF4JServiceProvider {
    private static final int NOTHING = Level.ERROR.toInt() + 1;
    /** By the beginning of the name of a logger; the reasons are in simplelogger.properties. */
    private static final Map<String, Integer> LEAST = Map.of(
            "org.eclipse.jetty.http", Level.ERROR.toInt(),
            "org.eclipse.jetty.util.HostPort", Level.ERROR.toInt(),
            "io.javalin.Javalin", NOTHING);

    /** Static, because the logging library makes the provider itself, by its name. */
    private static volatile PrintStream out =
            new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);

    private final Map<String, Logger> loggers = new ConcurrentHashMap<>();
    private final IMarkerFactory markers = new BasicMarkerFactory();
    private final MDCAdapter context = new NOPMDCAdapter();

    /**
     * Must come before anything is logged: the first logger decides for all.
     *
     * @param lines where the lines go
     */
    public static void use(PrintStream lines) {
        out = lines;
        // Otherwise the choice itself would be told, in a line that is no JSON.
        System.setProperty("slf4j.internal.verbosity", "WARN");
        System.setProperty("slf4j.provider", JsonLogProvider.class.getName());
    }

    private static int least(String name) {
        return LEAST.entrySet().stream()
                .filter(of -> name.startsWith(of.getKey()))
                .mapToInt(Map.Entry::getValue)
                .findFirst()
                .orElse(Level.WARN.toInt());
    }

    @Override
    public ILoggerFactory getLoggerFactory() {
        return name -> loggers.computeIfAbsent(name, of -> new JsonLogger(of, least(of), out, Clock.systemUTC()));
    }

    @Override
    public IMarkerFactory getMarkerFactory() {
        return markers;
    }

    @Override
    public MDCAdapter getMDCAdapter() {
        return context;
    }

    @Override
    public String getRequestedApiVersion() {
        return "2.0";
    }

    @Override
    public void initialize() {
        // Nothing to read: the levels are fixed.
    }
}

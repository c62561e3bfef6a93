package org.scalepan.web.server;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.jetty.server.CustomRequestLog;
import org.eclipse.jetty.server.RequestLog;
import org.eclipse.jetty.server.RequestLogWriter;

/**
 * A line for each request in the Common Log Format, which most tools read. It holds no body; the values of a query are left out unless
 * they are asked for, because a question may tell of a farm.
 *
 * @param file where the lines are appended; standard output where it is empty
 * @param queries whether the address is written with its query
 */
public record AccessLog(Optional<Path> file, boolean queries) {
    /** Host, no name of a user, time, request line, status, bytes of the body. */
    private static final String WITHOUT_QUERY = "%{client}a - - %{dd/MMM/yyyy:HH:mm:ss ZZZ|UTC|en}t \"%m %U %H\" %s %O";

    private static final String WITH_QUERY = WITHOUT_QUERY.replace("%U", "%U%q");

    RequestLog of(PrintStream standardOutput) {
        String format = queries ? WITH_QUERY : WITHOUT_QUERY;
        if (file.isEmpty()) {
            return new CustomRequestLog(standardOutput::println, format);
        }
        RequestLogWriter writer = new RequestLogWriter(file.get().toString());
        writer.setAppend(true);
        // One file under its own name; turning it over is left to the system (copytruncate of logrotate).
        writer.setRetainDays(0);
        return new CustomRequestLog(writer, format);
    }
}

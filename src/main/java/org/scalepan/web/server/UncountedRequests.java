package org.scalepan.web.server;

import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.RequestLog;
import org.eclipse.jetty.server.Response;

/** Counts the requests that reach no route: unknown addresses, wrong methods, malformed and too long heads. */
final class UncountedRequests implements RequestLog {
    /** Set on a request that its route has counted. */
    static final String COUNTED = "org.scalepan.counted";

    private final Metrics metrics;

    UncountedRequests(Metrics metrics) {
        this.metrics = metrics;
    }

    @Override
    public void log(Request request, Response response) {
        if (request.getAttribute(COUNTED) == null) {
            int status = response.getStatus();
            metrics.count(Metrics.NO_ROUTE, status, kind(status), System.nanoTime() - request.getBeginNanoTime());
        }
    }

    /** As the problem calls it that is sent with this status. */
    private static String kind(int status) {
        return switch (status) {
            case HttpStatus.NOT_FOUND_404 -> "not-found";
            case HttpStatus.METHOD_NOT_ALLOWED_405 -> "wrong-method";
            case HttpStatus.URI_TOO_LONG_414, HttpStatus.REQUEST_HEADER_FIELDS_TOO_LARGE_431 -> "beyond-limits";
            case HttpStatus.SERVICE_UNAVAILABLE_503 -> "busy";
            default -> status < HttpStatus.BAD_REQUEST_400 ? "" : status < 500 ? "malformed-request" : "internal";
        };
    }
}

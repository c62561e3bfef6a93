package org.scalepan.web.server;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.scalepan.web.http.Problem;
import org.scalepan.web.render.ProblemView;

/**
 * Refuses requests beyond so many at once, but for those of operators, so that an orchestrator whose probes go unanswered does not
 * restart a sound service. Requests under way hold a connection and a thread each, whether computed, sent slowly or read slowly.
 */
final class ReservedPlaces extends Handler.Wrapper {
    private static final Set<String> FOR_OPERATORS = Set.of("/health/live", "/health/ready", "/metrics");

    private final int most;
    private final AtomicInteger underWay = new AtomicInteger();

    /** @param most requests of clients at once */
    ReservedPlaces(int most) {
        this.most = most;
    }

    int underWay() {
        return underWay.get();
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        int now = underWay.incrementAndGet();
        ServiceEndPoint.of(request).ifPresent(ServiceEndPoint::requestBegins);
        Request.addCompletionListener(request, failure -> {
            underWay.decrementAndGet();
            ServiceEndPoint.of(request).ifPresent(ServiceEndPoint::requestEnds);
        });
        if (now <= most) {
            return super.handle(request, response, callback);
        }
        // A place beyond the limit is for one answer only.
        response.getHeaders().put(HttpHeader.CONNECTION, "close");
        if (FOR_OPERATORS.contains(Request.getPathInContext(request))) {
            return super.handle(request, response, callback);
        }
        refuse(response, callback);
        return true;
    }

    private static void refuse(Response response, Callback callback) {
        Problem problem = Problem.plain(
                HttpStatus.SERVICE_UNAVAILABLE_503,
                "busy",
                "Too much at once",
                "busy: too many requests are under way; ask again in a second");
        response.setStatus(HttpStatus.SERVICE_UNAVAILABLE_503);
        response.getHeaders().put(HttpHeader.RETRY_AFTER, "1");
        response.getHeaders().put(HttpHeader.CACHE_CONTROL, "no-store");
        response.getHeaders().put(HttpHeader.CONTENT_TYPE, ProblemView.MEDIA_TYPE);
        SecurityHeaders.set(response.getHeaders()::put, ProblemView.MEDIA_TYPE, "");
        byte[] body = ProblemView.json(problem).getBytes(StandardCharsets.UTF_8);
        response.write(true, ByteBuffer.wrap(body), callback);
    }
}

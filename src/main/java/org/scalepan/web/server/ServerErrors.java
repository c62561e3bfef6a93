package org.scalepan.web.server;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.server.Request.Handler;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.scalepan.web.http.Limits;
import org.scalepan.web.http.Problem;
import org.scalepan.web.render.ProblemView;

/** Errors that never reach a route, such as a malformed request line, as problem+json instead of the server's HTML page. */
final class ServerErrors implements Handler {
    @Override
    public boolean handle(org.eclipse.jetty.server.Request request, Response response, Callback callback) {
        int status = response.getStatus();
        Problem problem = problem(status);
        if (status == HttpStatus.SERVICE_UNAVAILABLE_503) {
            response.getHeaders().put(HttpHeader.RETRY_AFTER, "1");
        }
        SecurityHeaders.set(response.getHeaders()::put, ProblemView.MEDIA_TYPE, "");
        response.getHeaders().put(HttpHeader.CACHE_CONTROL, "no-store");
        response.getHeaders().put(HttpHeader.CONTENT_TYPE, ProblemView.MEDIA_TYPE);
        byte[] body = ProblemView.json(problem).getBytes(StandardCharsets.UTF_8);
        response.write(true, ByteBuffer.wrap(body), callback);
        return true;
    }

    private static Problem problem(int status) {
        if (status == HttpStatus.SERVICE_UNAVAILABLE_503) {
            return Problem.plain(status, "not-ready", "Not ready", "the service is stopping; ask again in a moment");
        }
        if (status == HttpStatus.URI_TOO_LONG_414 || status == HttpStatus.REQUEST_HEADER_FIELDS_TOO_LARGE_431) {
            String what = status == HttpStatus.URI_TOO_LONG_414 ? "the address with its question" : "the headers";
            return Problem.plain(
                    status,
                    "beyond-limits",
                    "More than the service takes",
                    what + " may have at most " + Limits.HEADER_BYTES + " bytes; long questions can be split");
        }
        // 505 is a server error by number, although the client chose the HTTP version.
        if (status < 500 || status == HttpStatus.HTTP_VERSION_NOT_SUPPORTED_505) {
            return Problem.plain(
                    status, "malformed-request", "The request is malformed", "the server cannot read such a request");
        }
        return Problem.plain(status, "internal", "Something broke here", "the fault is ours");
    }
}

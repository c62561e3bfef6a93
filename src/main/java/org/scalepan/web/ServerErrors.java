package org.scalepan.web;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request.Handler;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/** Refusals that never reach a route, such as a malformed request line: problem+json here too, where the server would send a page. */
final class ServerErrors implements Handler {
    @Override
    public boolean handle(org.eclipse.jetty.server.Request request, Response response, Callback callback) {
        int status = response.getStatus();
        Problem problem = Problem.plain(
                status,
                status < 500 ? "malformed-request" : "internal",
                status < 500 ? "The request is malformed" : "Something broke here",
                status < 500 ? "the server cannot read such a request" : "the fault is ours");
        SecurityHeaders.set(response.getHeaders()::put, ProblemView.MEDIA_TYPE, "");
        response.getHeaders().put(HttpHeader.CACHE_CONTROL, "no-store");
        response.getHeaders().put(HttpHeader.CONTENT_TYPE, ProblemView.MEDIA_TYPE);
        byte[] body = ProblemView.json(problem).getBytes(StandardCharsets.UTF_8);
        response.write(true, ByteBuffer.wrap(body), callback);
        return true;
    }
}

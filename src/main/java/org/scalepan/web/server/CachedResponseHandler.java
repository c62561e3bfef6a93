package org.scalepan.web.server;

import java.nio.ByteBuffer;
import java.util.Optional;
import org.eclipse.jetty.http.HttpField;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpMethod;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.scalepan.web.route.ResponseCache;

/**
 * Answers a repeated request target from the cache, before the framework, whose routing costs more than such an answer. Everything else
 * goes through {@link Pipeline}, which gives the same response.
 */
final class CachedResponseHandler extends Handler.Wrapper {
    private static final int OK = 200;

    private final ResponseCache cache;
    private final Metrics metrics;

    CachedResponseHandler(ResponseCache cache, Metrics metrics) {
        this.cache = cache;
        this.metrics = metrics;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        long start = System.nanoTime();
        Optional<ResponseCache.CachedResponse> cached =
                isPlain(request) ? cache.find(target(request)) : Optional.empty();
        if (cached.isEmpty()) {
            return super.handle(request, response, callback);
        }
        ResponseCache.CachedResponse answer = cached.get();
        HttpFields.Mutable headers = response.getHeaders();
        put(headers, answer.head());
        put(headers, answer.ofBody());
        response.setStatus(OK);
        metrics.count(answer.route(), OK, System.nanoTime() - start);
        request.setAttribute(UncountedRequests.COUNTED, true);
        response.write(true, ByteBuffer.wrap(answer.answer().body()), callback);
        return true;
    }

    private static void put(HttpFields.Mutable headers, Iterable<HttpField> fields) {
        fields.forEach(headers::put);
    }

    /** A GET without body and without a conditional header. */
    private static boolean isPlain(Request request) {
        HttpFields headers = request.getHeaders();
        return HttpMethod.GET.is(request.getMethod())
                && !headers.contains(HttpHeader.IF_NONE_MATCH)
                && !headers.contains(HttpHeader.CONTENT_LENGTH)
                && !headers.contains(HttpHeader.TRANSFER_ENCODING);
    }

    private static ResponseCache.RawTarget target(Request request) {
        String accept = request.getHeaders().get(HttpHeader.ACCEPT);
        return new ResponseCache.RawTarget(request.getHttpURI().getPathQuery(), accept == null ? "" : accept);
    }
}

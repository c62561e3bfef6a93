package org.scalepan.web.server;

import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/**
 * Hides X-HTTP-Method-Override from the framework, which would obey it: caches go by the method of the request line, so that a GET
 * answered as another method would be kept for everybody.
 */
final class MethodAsSent extends Handler.Wrapper {
    private static final String OVERRIDE = "X-HTTP-Method-Override";

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        return super.handle(
                request.getHeaders().contains(OVERRIDE) ? new WithoutOverride(request) : request, response, callback);
    }

    private static final class WithoutOverride extends Request.Wrapper {
        private final HttpFields headers;

        WithoutOverride(Request request) {
            super(request);
            this.headers =
                    HttpFields.build(request.getHeaders()).remove(OVERRIDE).asImmutable();
        }

        @Override
        public HttpFields getHeaders() {
            return headers;
        }
    }
}

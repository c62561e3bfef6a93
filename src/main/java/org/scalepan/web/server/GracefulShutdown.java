package org.scalepan.web.server;

import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/** While the service drains, responses close their connections, so that no connection is cut during a client's next request. */
final class GracefulShutdown extends Handler.Wrapper {
    private volatile boolean begun;

    void begin() {
        begun = true;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        if (begun) {
            response.getHeaders().put(HttpHeader.CONNECTION, "close");
        }
        return super.handle(request, response, callback);
    }
}

package org.scalepan.web.server;

import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/** Once the service is about to stop, answers close their connections, so that none is cut while a client sends the next question. */
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

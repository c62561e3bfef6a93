package org.scalepan.web.server;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketException;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.Server;

/** A server with our connector and one handler, for tests of what stands before the routes. */
final class HandledServer implements AutoCloseable {
    private static final String HOST = "127.0.0.1";

    private final Server server = new Server();
    private final ServiceConnector connector;

    HandledServer(Handler handler, int most, Duration head) {
        connector = new ServiceConnector(server, new HttpConfiguration(), most, head, why -> {});
        connector.setHost(HOST);
        server.addConnector(connector);
        server.setHandler(handler);
        try {
            server.start();
        } catch (Exception e) {
            throw new AssertionError("the server does not start", e);
        }
    }

    /** Opens a connection from an address of this machine, sends the text, and keeps the connection. */
    Socket open(String from, String text) throws IOException {
        Socket socket = new Socket();
        socket.setReceiveBufferSize(4_096);
        socket.bind(new InetSocketAddress(InetAddress.getByName(from), 0));
        socket.connect(new InetSocketAddress(InetAddress.getByName(HOST), connector.getLocalPort()));
        socket.setSoTimeout(10_000);
        socket.getOutputStream().write(text.getBytes(StandardCharsets.US_ASCII));
        return socket;
    }

    Socket open(String text) throws IOException {
        return open(HOST, text);
    }

    /** Whether the server has hung up, which shows at the latest after this time. */
    static boolean hasHungUp(Socket socket, Duration patience) throws IOException {
        socket.setSoTimeout((int) patience.toMillis());
        try {
            return socket.getInputStream().read() < 0;
        } catch (SocketTimeoutException stillOpen) {
            return false;
        } catch (SocketException reset) {
            return true;
        }
    }

    @Override
    public void close() throws Exception {
        server.stop();
    }
}

package org.scalepan.web.server;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.util.Blocker;
import org.eclipse.jetty.util.Callback;
import org.junit.jupiter.api.Test;

/** A client that reads too slowly is disconnected, even if it reads a byte now and then; others get the whole response. */
class MinimumReadRateIT {
    /** More than the buffers of both ends hold. */
    private static final byte[] ANSWER = new byte[40_000_000];

    private final CompletableFuture<Throwable> broken = new CompletableFuture<>();

    /** Writes and blocks, as a route does, in its own thread. */
    private Server server(long bytesPerSecond, Duration grace) throws Exception {
        Arrays.fill(ANSWER, (byte) 'x');
        Server server = new Server();
        ServiceConnector connector =
                new ServiceConnector(server, new HttpConfiguration(), 10, Duration.ofSeconds(10), why -> {});
        connector.setHost("127.0.0.1");
        server.addConnector(connector);
        MinimumReadRate pace = new MinimumReadRate(bytesPerSecond, grace, grace.multipliedBy(3));
        pace.setHandler(new Handler.Abstract() {
            @Override
            public boolean handle(Request request, Response response, Callback callback) {
                try (Blocker.Callback written = Blocker.callback()) {
                    response.write(true, ByteBuffer.wrap(ANSWER), written);
                    written.block();
                    callback.succeeded();
                } catch (IOException e) {
                    broken.complete(e);
                    callback.failed(e);
                }
                return true;
            }
        });
        server.setHandler(pace);
        server.start();
        return server;
    }

    private static Socket ask(Server server) throws IOException {
        Socket socket = new Socket();
        socket.setReceiveBufferSize(4_096);
        socket.connect(
                new InetSocketAddress("127.0.0.1", ((ServerConnector) server.getConnectors()[0]).getLocalPort()));
        String question = "GET / HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n";
        socket.getOutputStream().write(question.getBytes(StandardCharsets.US_ASCII));
        return socket;
    }

    @Test
    void a_client_that_reads_a_little_now_and_then_is_disconnected_and_the_thread_is_free() throws Exception {
        Server server = server(100_000_000, Duration.ofMillis(300));
        try (Socket dawdler = ask(server)) {
            InputStream in = dawdler.getInputStream();
            for (int i = 0; i < 200 && !broken.isDone(); i++) {
                in.readNBytes(16);
                Thread.sleep(50);
            }

            assertTrue(broken.get(5, TimeUnit.SECONDS).toString().contains("slow-reader"), broken::toString);
        } finally {
            server.stop();
        }
    }

    @Test
    void a_client_that_reads_fast_enough_gets_the_whole_answer() throws Exception {
        Server server = server(1_000, Duration.ofSeconds(10));
        try (Socket reader = ask(server)) {
            byte[] heard = reader.getInputStream().readAllBytes();

            assertArrayEquals(ANSWER, Arrays.copyOfRange(heard, heard.length - ANSWER.length, heard.length));
            assertFalse(broken.isDone());
        } finally {
            server.stop();
        }
    }
}

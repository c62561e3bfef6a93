package org.scalepan.web.server;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import org.scalepan.web.RunningScalepan;

/** A request sent byte for byte over a socket, because HTTP clients refuse to send malformed requests. */
public record RawExchange(int status, String head, String body) {
    private static final int PATIENCE_MILLISECONDS = 10_000;

    /** Sends the lines, each ended by CR LF, with an empty line after them, and reads until the service closes the connection. */
    public static RawExchange send(String... lines) {
        String request = String.join("\r\n", lines) + "\r\n\r\n";
        return bytes(request.getBytes(StandardCharsets.ISO_8859_1))
                .orElseThrow(() -> new AssertionError("no answer to " + lines[0]));
    }

    /** Sends exactly these bytes; empty when the service closes the connection without a response, as it may for what is not HTTP. */
    static Optional<RawExchange> bytes(byte[] request) {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), RunningScalepan.port())) {
            socket.setSoTimeout(PATIENCE_MILLISECONDS);
            try {
                socket.getOutputStream().write(request);
                socket.getOutputStream().flush();
                socket.shutdownOutput();
            } catch (SocketException hungUp) {
                // The service may respond and close before it has read everything; the response can still be read.
            }
            return answer(socket);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What the service sends until it closes the connection. */
    static Optional<RawExchange> answer(Socket socket) throws IOException {
        ByteArrayOutputStream heard = new ByteArrayOutputStream();
        try {
            socket.getInputStream().transferTo(heard);
        } catch (SocketException reset) {
            // Data received before the reset counts.
        }
        String text = heard.toString(StandardCharsets.UTF_8);
        return text.contains("\r\n\r\n") ? Optional.of(read(text)) : Optional.empty();
    }

    private static RawExchange read(String answer) {
        int blank = answer.indexOf("\r\n\r\n");
        String head = answer.substring(0, blank);
        return new RawExchange(Integer.parseInt(head.split(" ")[1]), head, answer.substring(blank + 4));
    }

    public Optional<String> header(String name) {
        String wanted = name.toLowerCase(Locale.ROOT) + ":";
        return head.lines()
                .filter(line -> line.toLowerCase(Locale.ROOT).startsWith(wanted))
                .map(line -> line.substring(wanted.length()).strip())
                .findFirst();
    }
}

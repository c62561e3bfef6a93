package org.scalepan.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;

/** A request sent byte for byte over a socket, because HTTP clients refuse to send what a hostile or broken client would. */
record RawExchange(int status, String head, String body) {
    private static final int PATIENCE_MILLISECONDS = 10_000;

    /** Sends the lines, each ended by CR LF, with an empty line after them, and reads until the service hangs up. */
    static RawExchange send(String... lines) {
        String request = String.join("\r\n", lines) + "\r\n\r\n";
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), RunningScalepan.port())) {
            socket.setSoTimeout(PATIENCE_MILLISECONDS);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            socket.getOutputStream().flush();
            socket.shutdownOutput();
            return read(new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static RawExchange read(String answer) {
        int blank = answer.indexOf("\r\n\r\n");
        String head = answer.substring(0, blank);
        return new RawExchange(Integer.parseInt(head.split(" ")[1]), head, answer.substring(blank + 4));
    }

    Optional<String> header(String name) {
        String wanted = name.toLowerCase(Locale.ROOT) + ":";
        return head.lines()
                .filter(line -> line.toLowerCase(Locale.ROOT).startsWith(wanted))
                .map(line -> line.substring(wanted.length()).strip())
                .findFirst();
    }
}

package org.scalepan.web.server;

import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;

/** A minimal client: one persistent connection, one target requested repeatedly, bodies read and discarded. */
final class PersistentConnection implements AutoCloseable {
    private final Socket socket;
    private final InputStream in;
    private final byte[] request;
    private final byte[] buffer = new byte[65_536];

    PersistentConnection(int port, String path) throws IOException {
        socket = new Socket("127.0.0.1", port);
        socket.setTcpNoDelay(true);
        in = new BufferedInputStream(socket.getInputStream(), buffer.length);
        request = ("GET " + path + " HTTP/1.1\r\nHost: localhost\r\nAccept: application/json\r\n\r\n")
                .getBytes(StandardCharsets.US_ASCII);
    }

    /** Sends one request and returns the length of the body in bytes. */
    int ask() throws IOException {
        socket.getOutputStream().write(request);
        String status = line();
        if (!status.startsWith("HTTP/1.1 200")) {
            throw new IOException("not answered: " + status);
        }
        int length = -1;
        for (String header = line(); !header.isEmpty(); header = line()) {
            if (header.regionMatches(true, 0, "Content-Length:", 0, 15)) {
                length = Integer.parseInt(header.substring(15).strip());
            }
        }
        for (int left = length; left > 0; ) {
            int read = in.read(buffer, 0, Math.min(left, buffer.length));
            if (read < 0) {
                throw new EOFException();
            }
            left -= read;
        }
        return length;
    }

    private String line() throws IOException {
        StringBuilder line = new StringBuilder(64);
        for (int next = in.read(); next != '\n'; next = in.read()) {
            if (next < 0) {
                throw new EOFException();
            }
            if (next != '\r') {
                line.append((char) next);
            }
        }
        return line.toString();
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}

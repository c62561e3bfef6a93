package org.scalepan.web.server;

import static java.util.Objects.requireNonNull;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.scalepan.web.http.Answer;

/** A route that takes records, with a valid example body from the description, so that new routes are tested automatically. */
public record RecordsEndpoint(String path, String mediaType, String right) {
    private static final Description DESCRIPTION = Description.read();

    static List<RecordsEndpoint> all() {
        return DESCRIPTION.operations().stream()
                .flatMap(operation -> DESCRIPTION.sent(operation).stream())
                .map(example -> new RecordsEndpoint(
                        example.question(),
                        requireNonNull(example.headers().get("Content-Type")),
                        example.sent().orElseThrow()))
                .toList();
    }

    public static List<RecordsEndpoint> ofOneBody() {
        return all().stream().filter(endpoint -> !endpoint.acceptsRows()).toList();
    }

    static List<RecordsEndpoint> ofRows() {
        return all().stream().filter(RecordsEndpoint::acceptsRows).toList();
    }

    boolean acceptsRows() {
        return !mediaType.equals(Answer.JSON);
    }

    byte[] rightBytes() {
        return right.getBytes(StandardCharsets.UTF_8);
    }

    /** Sends a body with the route's media type. */
    Optional<RawExchange> post(byte[] body) {
        return postAs(mediaType, body);
    }

    Optional<RawExchange> postAs(String type, byte[] body) {
        return postFramed("Content-Type: " + type + "\r\nContent-Length: " + body.length, body);
    }

    /** Sends a body with the route's media type, framed by these headers. */
    Optional<RawExchange> postAsFramed(String framing, byte[] body) {
        return postFramed("Content-Type: " + mediaType + "\r\n" + framing, body);
    }

    private Optional<RawExchange> postFramed(String headers, byte[] body) {
        String head = "POST " + path + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n" + headers + "\r\n\r\n";
        return RawExchange.bytes(MalformedBodies.concat(head.getBytes(StandardCharsets.ISO_8859_1), body));
    }

    @Override
    public String toString() {
        return "POST " + path + " " + mediaType;
    }
}

package org.scalepan.web.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.scalepan.web.Refusal;
import org.scalepan.web.Reply;

/** Hostile bodies, sent to every route that takes one. */
class HostileBodyTest {
    private static final String ALL = "org.scalepan.web.server.RecordsEndpoint#all";
    private static final String OF_ONE_BODY = "org.scalepan.web.server.RecordsEndpoint#ofOneBody";
    private static final String OF_ROWS = "org.scalepan.web.server.RecordsEndpoint#ofRows";

    private static void refused(RecordsEndpoint endpoint, int status, Map<String, byte[]> bodies) {
        bodies.forEach((what, body) -> {
            RawExchange reply = endpoint.post(body).orElseThrow();

            Refusal.check(endpoint + " with " + what, reply);
            assertEquals(status, reply.status(), () -> endpoint + " with " + what + ": " + reply.body());
            assertTrue(reply.body().length() < 200_000, () -> what + " is answered at length");
        });
    }

    /** A problem or a closed connection: both are right for a malformed request. */
    private static void refusedIfAnswered(String what, Optional<RawExchange> reply) {
        reply.ifPresent(response -> Refusal.check(what, response));
    }

    @ParameterizedTest
    @MethodSource(OF_ONE_BODY)
    void a_malformed_body_is_refused_with_400(RecordsEndpoint endpoint) {
        refused(endpoint, 400, MalformedBodies.noRecords(endpoint.right()));
    }

    @ParameterizedTest
    @MethodSource(OF_ONE_BODY)
    void a_body_beyond_a_limit_is_refused_with_the_limit(RecordsEndpoint endpoint) {
        refused(endpoint, 422, MalformedBodies.tooMuch(endpoint.right()));
    }

    /** Rows are reported in their place where possible; no response may be aborted. */
    @ParameterizedTest
    @MethodSource(OF_ROWS)
    void malformed_rows_are_refused_or_reported_in_their_row(RecordsEndpoint endpoint) {
        MalformedBodies.noRows(endpoint.right()).forEach((what, body) -> {
            RawExchange reply = endpoint.post(body).orElseThrow();

            Refusal.checkSilent(endpoint + " with " + what, reply);
            if (reply.status() == 200) {
                assertFalse(reply.body().contains("Infinity") && !what.contains("Infinity"), () -> what + reply.body());
            } else {
                Refusal.check(endpoint + " with " + what, reply);
            }
        });
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void another_media_type_is_refused(RecordsEndpoint endpoint) {
        for (String type : List.of(
                "text/plain",
                "text/html",
                "application/xml",
                "application/x-www-form-urlencoded",
                "multipart/form-data; boundary=x",
                "application/jsonx",
                "application/",
                "/",
                "a".repeat(5_000),
                "application/x-java-serialized-object")) {
            RawExchange reply = endpoint.postAs(type, endpoint.rightBytes()).orElseThrow();

            Refusal.check(endpoint + " as " + type, reply);
            assertEquals(415, reply.status(), type);
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void an_unsupported_content_or_transfer_encoding_is_refused(RecordsEndpoint endpoint) {
        byte[] body = endpoint.rightBytes();
        String length = "Content-Length: " + body.length;
        for (String framing : List.of(
                length + "\r\nTransfer-Encoding: chunked",
                length + "\r\nContent-Length: " + (body.length + 1),
                length + "\r\n" + length,
                length + ", " + body.length,
                "Content-Length: +" + body.length,
                "Content-Length: -1",
                "Content-Length: 0x10",
                "Content-Length: 99999999999999999999",
                "Content-Length : " + body.length,
                "Transfer-Encoding: xchunked",
                "Transfer-Encoding: chunked, identity",
                "Transfer-Encoding: gzip, chunked",
                "Transfer-Encoding: \u000bchunked",
                "Transfer-Encoding: chunked\r\nTransfer-Encoding: identity")) {
            refusedIfAnswered(endpoint + " with " + framing, endpoint.postAsFramed(framing, body));
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void a_compressed_body_is_refused_as_what_it_is(RecordsEndpoint endpoint) {
        byte[] body = endpoint.rightBytes();
        for (String encoding : List.of("gzip", "br", "identity, gzip", "nonsense")) {
            RawExchange reply = endpoint.postAsFramed(
                            "Content-Encoding: " + encoding + "\r\nContent-Length: " + body.length, body)
                    .orElseThrow();

            Refusal.check(endpoint + " as " + encoding, reply);
            assertEquals(415, reply.status(), encoding);
            assertTrue(reply.body().contains("Content-Encoding: " + encoding), reply::body);
        }
        assertEquals(
                200,
                endpoint.postAsFramed("Content-Encoding: identity\r\nContent-Length: " + body.length, body)
                        .orElseThrow()
                        .status());
    }

    @ParameterizedTest
    @MethodSource(OF_ONE_BODY)
    void what_is_wrong_with_a_body_that_is_nearly_right_is_told_as_what_it_is(RecordsEndpoint endpoint) {
        String right = endpoint.right().strip();
        String open = right.substring(0, right.lastIndexOf('}'));
        Map<String, String> told = Map.of(
                open + ",\"twice\":1,\"twice\":1}", "the field \\\"twice\\\" stands twice at line",
                "\ufeff" + right, "the body begins with a byte-order mark",
                open + ",\"extra\":\"\\ud83e\"}", "half of a character",
                open + ",\"extra\":\"\\udd97\\ud83e\"}", "half of a character");
        told.forEach((body, what) -> {
            RawExchange reply = endpoint.post(MalformedBodies.utf8(body)).orElseThrow();

            assertEquals(400, reply.status(), what);
            assertTrue(reply.body().contains(what), reply::body);
        });
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void malformed_chunks_get_a_problem_or_a_closed_connection(RecordsEndpoint endpoint) {
        for (String chunks : List.of(
                "zz\r\n{}\r\n0\r\n\r\n",
                "-1\r\n{}\r\n0\r\n\r\n",
                "ffffffffffffffff\r\n{}",
                "fffffffff\r\n{}",
                "2;" + "x".repeat(20_000) + "\r\n{}\r\n0\r\n\r\n",
                "2;a\nb\r\n{}\r\n0\r\n\r\n",
                "2\r\n{}XX0\r\n\r\n",
                "2\n{}\n0\n\n",
                "2\r\n{}\r\n0\r\nX-Trailer : 7\r\n\r\n")) {
            Optional<RawExchange> reply =
                    endpoint.postAsFramed("Transfer-Encoding: chunked", MalformedBodies.latin1(chunks));

            refusedIfAnswered(
                    endpoint + " with chunks " + chunks,
                    reply.filter(response -> !(endpoint.acceptsRows() && response.status() == 200)));
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void a_truncated_body_gets_a_problem_or_a_closed_connection(RecordsEndpoint endpoint) {
        byte[] body = endpoint.rightBytes();
        byte[] half = Arrays.copyOf(body, body.length / 2);

        refusedIfAnswered(
                endpoint + " with too short a body",
                endpoint.postAsFramed("Content-Length: " + (body.length + 100), body));
        refusedIfAnswered(
                endpoint + " with half a body", endpoint.postAsFramed("Content-Length: " + body.length, half));
        refusedIfAnswered(
                endpoint + " with half a chunk",
                endpoint.postAsFramed(
                        "Transfer-Encoding: chunked", MalformedBodies.concat(MalformedBodies.utf8("7fff\r\n"), half)));
    }

    @ParameterizedTest
    @MethodSource(OF_ONE_BODY)
    void a_body_that_is_too_long_is_refused_with_how_long_it_may_be(RecordsEndpoint endpoint) {
        byte[] tooLong = MalformedBodies.utf8(endpoint.right() + " ".repeat(2_000_000));
        byte[] chunked = MalformedBodies.concat(
                MalformedBodies.utf8(Integer.toHexString(tooLong.length) + "\r\n"),
                tooLong,
                MalformedBodies.utf8("\r\n0\r\n\r\n"));
        Optional<RawExchange> announced = endpoint.postAsFramed("Content-Length: 2000000000", new byte[0]);
        assertTrue(announced.isPresent());
        for (Optional<RawExchange> reply : List.of(
                endpoint.post(tooLong), endpoint.postAsFramed("Transfer-Encoding: chunked", chunked), announced)) {
            reply.ifPresent(refusal -> {
                Refusal.check(endpoint + " with two megabytes", refusal);
                assertEquals(413, refusal.status());
                assertTrue(refusal.body().contains("1 MB"), refusal::body);
            });
        }
    }

    @Test
    void a_body_of_a_get_request_is_ignored() {
        RawExchange reply = RawExchange.bytes(
                        MalformedBodies.utf8("GET /v1/value/ghg/mealworm HTTP/1.1\r\nHost: localhost\r\n"
                                + "Connection: close\r\nContent-Length: 5\r\n\r\n#oops"))
                .orElseThrow();

        assertEquals(200, reply.status());
        assertEquals(Reply.to("/v1/value/ghg/mealworm").body(), reply.body());
    }

    /** The smuggled request must not be answered: a proxy would pass the response to another client. */
    @Test
    void a_smuggled_request_is_never_answered() {
        String hidden = "GET /v1/grades HTTP/1.1\r\nHost: localhost\r\n\r\n";
        for (String lie : List.of(
                "Content-Length: 4\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n" + hidden,
                "Transfer-Encoding: xchunked\r\nContent-Length: 4\r\n\r\n0\r\n\r\n" + hidden,
                "Content-Length: 0\r\nContent-Length: " + hidden.length() + "\r\n\r\n" + hidden,
                "Transfer-Encoding: chunked\r\nTransfer-encoding: cow\r\n\r\n0\r\n\r\n" + hidden)) {
            RawExchange.bytes(MalformedBodies.utf8("POST /v1/footprint HTTP/1.1\r\nHost: localhost\r\n"
                            + "Content-Type: application/json\r\n" + lie))
                    .ifPresent(reply -> {
                        Refusal.check(lie, reply);
                        assertFalse(reply.body().contains("HTTP/1.1 200"), () -> lie + reply.body());
                    });
        }
    }
}

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

/** Bodies that no honest client sends, to every address that takes one. */
class HostileBodyTest {
    private static final String ALL = "org.scalepan.web.server.RecordsTaker#all";
    private static final String OF_ONE_BODY = "org.scalepan.web.server.RecordsTaker#ofOneBody";
    private static final String OF_ROWS = "org.scalepan.web.server.RecordsTaker#ofRows";

    private static void refused(RecordsTaker taker, int status, Map<String, byte[]> bodies) {
        bodies.forEach((what, body) -> {
            RawExchange reply = taker.post(body).orElseThrow();

            Refusal.check(taker + " with " + what, reply);
            assertEquals(status, reply.status(), () -> taker + " with " + what + ": " + reply.body());
            assertTrue(reply.body().length() < 200_000, () -> what + " is answered at length");
        });
    }

    /** A refusal or a closed connection: both are right for what is no proper request. */
    private static void refusedIfAnswered(String what, Optional<RawExchange> reply) {
        reply.ifPresent(told -> Refusal.check(what, told));
    }

    @ParameterizedTest
    @MethodSource(OF_ONE_BODY)
    void a_body_that_is_no_records_is_refused_as_such(RecordsTaker taker) {
        refused(taker, 400, MalformedBodies.noRecords(taker.right()));
    }

    @ParameterizedTest
    @MethodSource(OF_ONE_BODY)
    void a_body_that_is_more_than_is_taken_is_refused_with_the_limit(RecordsTaker taker) {
        refused(taker, 422, MalformedBodies.tooMuch(taker.right()));
    }

    /** Rows are told in their place when they can be; nothing of this may end in a broken answer. */
    @ParameterizedTest
    @MethodSource(OF_ROWS)
    void a_body_that_is_no_rows_is_refused_or_told_in_its_place(RecordsTaker taker) {
        MalformedBodies.noRows(taker.right()).forEach((what, body) -> {
            RawExchange reply = taker.post(body).orElseThrow();

            Refusal.checkSilent(taker + " with " + what, reply);
            if (reply.status() == 200) {
                assertFalse(reply.body().contains("Infinity") && !what.contains("Infinity"), () -> what + reply.body());
            } else {
                Refusal.check(taker + " with " + what, reply);
            }
        });
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void another_media_type_is_refused(RecordsTaker taker) {
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
            RawExchange reply = taker.postAs(type, taker.rightBytes()).orElseThrow();

            Refusal.check(taker + " as " + type, reply);
            assertEquals(415, reply.status(), type);
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void a_body_packed_or_in_parts_that_are_not_understood_is_refused(RecordsTaker taker) {
        byte[] body = taker.rightBytes();
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
            refusedIfAnswered(taker + " with " + framing, taker.postAsFramed(framing, body));
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void chunks_that_are_none_are_refused_or_hung_up_on(RecordsTaker taker) {
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
                    taker.postAsFramed("Transfer-Encoding: chunked", MalformedBodies.latin1(chunks));

            refusedIfAnswered(
                    taker + " with chunks " + chunks,
                    reply.filter(told -> !(taker.takesRows() && told.status() == 200)));
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void a_body_that_ends_before_it_should_is_refused_or_hung_up_on(RecordsTaker taker) {
        byte[] body = taker.rightBytes();
        byte[] half = Arrays.copyOf(body, body.length / 2);

        refusedIfAnswered(
                taker + " with too short a body", taker.postAsFramed("Content-Length: " + (body.length + 100), body));
        refusedIfAnswered(taker + " with half a body", taker.postAsFramed("Content-Length: " + body.length, half));
        refusedIfAnswered(
                taker + " with half a chunk",
                taker.postAsFramed(
                        "Transfer-Encoding: chunked", MalformedBodies.concat(MalformedBodies.utf8("7fff\r\n"), half)));
    }

    @ParameterizedTest
    @MethodSource(OF_ONE_BODY)
    void a_body_that_is_too_long_is_refused_with_how_long_it_may_be(RecordsTaker taker) {
        byte[] tooLong = MalformedBodies.utf8(taker.right() + " ".repeat(2_000_000));
        byte[] chunked = MalformedBodies.concat(
                MalformedBodies.utf8(Integer.toHexString(tooLong.length) + "\r\n"),
                tooLong,
                MalformedBodies.utf8("\r\n0\r\n\r\n"));
        Optional<RawExchange> announced = taker.postAsFramed("Content-Length: 2000000000", new byte[0]);
        assertTrue(announced.isPresent());
        for (Optional<RawExchange> reply :
                List.of(taker.post(tooLong), taker.postAsFramed("Transfer-Encoding: chunked", chunked), announced)) {
            reply.ifPresent(refusal -> {
                Refusal.check(taker + " with two megabytes", refusal);
                assertEquals(413, refusal.status());
                assertTrue(refusal.body().contains("1 MB"), refusal::body);
            });
        }
    }

    @Test
    void a_body_with_a_question_that_takes_none_changes_nothing() {
        RawExchange reply = RawExchange.bytes(
                        MalformedBodies.utf8("GET /v1/value/ghg/mealworm HTTP/1.1\r\nHost: localhost\r\n"
                                + "Connection: close\r\nContent-Length: 5\r\n\r\n#oops"))
                .orElseThrow();

        assertEquals(200, reply.status());
        assertEquals(Reply.to("/v1/value/ghg/mealworm").body(), reply.body());
    }

    /** The second request must not be answered as if it stood alone: a proxy in front would give it to somebody else. */
    @Test
    void a_request_hidden_in_a_body_is_never_answered() {
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

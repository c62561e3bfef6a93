package org.scalepan.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Bodies that no honest client sends, to every address that takes one. */
class HostileBodyTest {
    private static final Description DESCRIPTION = Description.read();

    /** An address that takes records, and records that it answers with 200. */
    record Taker(String path, String mediaType, String right) {
        @Override
        public String toString() {
            return "POST " + path + " " + mediaType;
        }

        boolean takesRows() {
            return !mediaType.equals(Answer.JSON);
        }
    }

    static List<Taker> takers() {
        return DESCRIPTION.operations().stream()
                .filter(operation -> operation.method().equals("post"))
                .flatMap(operation -> DESCRIPTION.answers(operation).stream())
                .filter(answer -> answer.status() == 200)
                .flatMap(answer -> DESCRIPTION.examples(answer).keySet().stream())
                .map(example -> new Taker(
                        example.question(),
                        example.headers().getOrDefault("Content-Type", Answer.JSON),
                        example.sent().orElseThrow()))
                .toList();
    }

    static List<Taker> takersOfRecords() {
        return takers().stream().filter(taker -> !taker.takesRows()).toList();
    }

    static List<Taker> takersOfRows() {
        return takers().stream().filter(Taker::takesRows).toList();
    }

    private static Optional<RawExchange> post(Taker taker, String mediaType, byte[] body) {
        return post(taker.path(), "Content-Type: " + mediaType + "\r\nContent-Length: " + body.length, body);
    }

    private static Optional<RawExchange> post(String path, String headers, byte[] body) {
        ByteArrayOutputStream request = new ByteArrayOutputStream();
        request.writeBytes(
                ("POST " + path + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n" + headers + "\r\n\r\n")
                        .getBytes(StandardCharsets.ISO_8859_1));
        request.writeBytes(body);
        return RawExchange.bytes(request.toByteArray());
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] latin1(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    /** What is wrong with any JSON text, whatever an address asks for. */
    private static Map<String, byte[]> noRecords(String right) {
        String open = right.strip().substring(0, right.strip().lastIndexOf('}'));
        Map<String, byte[]> bodies = new LinkedHashMap<>();
        bodies.put("nothing", new byte[0]);
        bodies.put("blanks", utf8(" \n\t "));
        bodies.put("null", utf8("null"));
        bodies.put("a list", utf8("[]"));
        bodies.put("a list of the records", utf8("[" + right + "]"));
        bodies.put("a text", utf8("\"records\""));
        bodies.put("a number", utf8("7"));
        bodies.put("an object of nothing", utf8("{}"));
        bodies.put("cut off", utf8(open));
        bodies.put("something behind", utf8(right + "{}"));
        bodies.put("a comma behind", utf8(open + ",}"));
        bodies.put("a comment", utf8("/* x */" + right));
        bodies.put("single quotes", utf8(right.replace('"', '\'')));
        bodies.put("a bare NaN", utf8(open + ",\"coverage\":NaN}"));
        bodies.put("NaN as text", utf8(open + ",\"coverage\":\"NaN\"}"));
        bodies.put("Infinity", utf8(open + ",\"coverage\":-Infinity}"));
        bodies.put("Infinity as text", utf8(open + ",\"coverage\":\"Infinity\"}"));
        bodies.put("1e400", utf8(open + ",\"extra\":1e400}"));
        bodies.put("1e1000000000", utf8(open + ",\"extra\":1e1000000000}"));
        bodies.put("1e-1000000000", utf8(open + ",\"extra\":1e-1000000000}"));
        bodies.put("a leading zero", utf8(open + ",\"extra\":01}"));
        bodies.put("a number of 100 000 digits", utf8(open + ",\"extra\":" + "9".repeat(100_000) + "}"));
        bodies.put("a name of 100 000 letters", utf8(open + ",\"" + "n".repeat(100_000) + "\":1}"));
        bodies.put("a text of 500 000 letters", utf8(open + ",\"extra\":\"" + "t".repeat(500_000) + "\"}"));
        bodies.put("10 000 fields", utf8(open + fields(10_000) + "}"));
        bodies.put("10 000 lists deep", utf8(open + ",\"extra\":" + "[".repeat(10_000) + "]".repeat(10_000) + "}"));
        bodies.put("100 000 objects deep", utf8("{\"a\":".repeat(100_000)));
        bodies.put("a name twice", utf8(open + ",\"extra\":1,\"extra\":1}"));
        bodies.put("a name twice, once in disguise", utf8(open + ",\"extra\":1,\"\\u0065xtra\":1}"));
        bodies.put("the first name twice", utf8(right.strip().replaceFirst("\\{", "{\"draws\":1000,\"draws\":2000,")));
        bodies.put("__proto__", utf8(open + ",\"__proto__\":{\"draws\":1000}}"));
        bodies.put("@class", utf8(open + ",\"@class\":\"javax.script.ScriptEngineManager\"}"));
        bodies.put("a script", utf8(open + ",\"<script>alert(7)</script>\":\"<script>alert(7)</script>\"}"));
        bodies.put("a NUL", utf8(open + ",\"extra\":\"\u0000\"}"));
        bodies.put("a NUL as escape", utf8(open + ",\"extra\\u0000\":\"\\u0000\"}"));
        bodies.put("half a surrogate", utf8(open + ",\"extra\":\"\\ud83e\"}"));
        bodies.put("half a surrogate as a name", utf8(open + ",\"\\udd97\":1}"));
        bodies.put("a byte that is no UTF-8", latin1(open + ",\"extra\":\"\u00e9\"}"));
        bodies.put("an overlong slash", latin1(open + ",\"extra\":\"\u00c0\u00af\"}"));
        bodies.put("a surrogate in UTF-8", latin1(open + ",\"extra\":\"\u00ed\u00a0\u0080\"}"));
        bodies.put("UTF-16", right.getBytes(StandardCharsets.UTF_16));
        bodies.put("UTF-16 little endian", right.getBytes(StandardCharsets.UTF_16LE));
        bodies.put("UTF-32", right.getBytes(Charset.forName("UTF-32")));
        bodies.put("EBCDIC", right.getBytes(Charset.forName("IBM037")));
        bodies.put("a byte order mark", utf8("\ufeff" + right));
        bodies.put("gzip", new byte[] {0x1f, (byte) 0x8b, 8, 0, 0, 0, 0, 0, 0, 0});
        bodies.put("a document type", utf8("<!DOCTYPE x [<!ENTITY e SYSTEM \"file:///etc/passwd\">]><x>&e;</x>"));
        return bodies;
    }

    private static String fields(int count) {
        StringBuilder fields = new StringBuilder();
        for (int i = 0; i < count; i++) {
            fields.append(",\"f").append(i).append("\":").append(i);
        }
        return fields.toString();
    }

    @ParameterizedTest
    @MethodSource("takersOfRecords")
    void a_body_that_is_no_records_is_refused_as_such(Taker taker) {
        noRecords(taker.right()).forEach((what, body) -> {
            RawExchange reply = post(taker, Answer.JSON, body).orElseThrow();

            Refusal.check(taker + " with " + what, reply);
            assertEquals(400, reply.status(), () -> taker + " with " + what + ": " + reply.body());
            assertTrue(reply.body().length() < 200_000, () -> what + " is answered at length");
        });
    }

    /** Rows are told in their place when they can be; nothing of this may end in a broken answer. */
    @ParameterizedTest
    @MethodSource("takersOfRows")
    void a_body_that_is_no_rows_is_refused_or_told_in_its_place(Taker taker) {
        String right = taker.right();
        Map<String, byte[]> bodies =
                noRecords(right.contains("{") ? right.lines().findFirst().orElseThrow() : "{}");
        bodies.put("an open quote", utf8(right + "\n\"" + "x".repeat(200_000)));
        bodies.put("a line of 900 000 letters", utf8(right + "\n" + "y".repeat(900_000)));
        bodies.put("20 000 columns", utf8("c,".repeat(20_000) + "\n" + "1,".repeat(20_000)));
        bodies.put("50 000 empty lines", utf8(right + "\n".repeat(50_000)));
        bodies.put("carriage returns only", utf8(right.replace("\n", "\r")));
        bodies.put("a NUL in every place", latin1("\u0000".repeat(10_000)));
        bodies.put("UTF-16 rows", right.getBytes(StandardCharsets.UTF_16));
        bodies.put("no UTF-8 in the last row", concat(utf8(right), latin1("\u00ff\u00fe\n")));
        bodies.put("an index of the sky", utf8("kind,product,feed.999999999.kg\ninsects,mealworm,1\n"));
        bodies.put("a formula", utf8(right + "\n=cmd|' /C calc'!A0,@SUM(1),+1,-1\n"));
        bodies.forEach((what, body) -> {
            RawExchange reply = post(taker, taker.mediaType(), body).orElseThrow();

            Refusal.checkSilent(taker + " with " + what, reply);
            if (reply.status() == 200) {
                assertFalse(reply.body().contains("Infinity") && !what.contains("Infinity"), () -> what + reply.body());
            } else {
                Refusal.check(taker + " with " + what, reply);
            }
        });
    }

    private static byte[] concat(byte[] one, byte[] other) {
        ByteArrayOutputStream both = new ByteArrayOutputStream();
        both.writeBytes(one);
        both.writeBytes(other);
        return both.toByteArray();
    }

    @ParameterizedTest
    @MethodSource("takers")
    void another_media_type_is_refused(Taker taker) {
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
            RawExchange reply = post(taker, type, utf8(taker.right())).orElseThrow();

            Refusal.check(taker + " as " + type, reply);
            assertEquals(415, reply.status(), type);
        }
    }

    @ParameterizedTest
    @MethodSource("takers")
    void a_body_packed_or_in_parts_that_are_not_understood_is_refused(Taker taker) {
        byte[] body = utf8(taker.right());
        String type = "Content-Type: " + taker.mediaType() + "\r\n";
        String length = "Content-Length: " + body.length;
        for (String headers : List.of(
                type + length + "\r\nTransfer-Encoding: chunked",
                type + length + "\r\nContent-Length: " + (body.length + 1),
                type + length + "\r\n" + length,
                type + length + ", " + body.length,
                type + "Content-Length: +" + body.length,
                type + "Content-Length: -1",
                type + "Content-Length: 0x10",
                type + "Content-Length: 99999999999999999999",
                type + "Content-Length : " + body.length,
                type + "Transfer-Encoding: xchunked",
                type + "Transfer-Encoding: chunked, identity",
                type + "Transfer-Encoding: gzip, chunked",
                type + "Transfer-Encoding: \u000bchunked",
                type + "Transfer-Encoding: chunked\r\nTransfer-Encoding: identity")) {
            post(taker.path(), headers, body)
                    .ifPresent(reply -> Refusal.check(taker + " with " + headers.substring(type.length()), reply));
        }
    }

    @ParameterizedTest
    @MethodSource("takers")
    void chunks_that_are_none_are_refused_or_hung_up_on(Taker taker) {
        String head = "Content-Type: " + taker.mediaType() + "\r\nTransfer-Encoding: chunked";
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
            Optional<RawExchange> reply = post(taker.path(), head, latin1(chunks));

            reply.filter(told -> !(taker.takesRows() && told.status() == 200))
                    .ifPresent(told -> Refusal.check(taker + " with chunks " + chunks, told));
        }
    }

    @ParameterizedTest
    @MethodSource("takers")
    void a_body_that_ends_before_it_should_is_refused_or_hung_up_on(Taker taker) {
        byte[] body = utf8(taker.right());
        String type = "Content-Type: " + taker.mediaType() + "\r\n";
        byte[] half = java.util.Arrays.copyOf(body, body.length / 2);

        post(taker.path(), type + "Content-Length: " + (body.length + 100), body)
                .ifPresent(reply -> Refusal.check(taker + " with too short a body", reply));
        post(taker.path(), type + "Content-Length: " + body.length, half)
                .ifPresent(reply -> Refusal.check(taker + " with half a body", reply));
        post(taker.path(), type + "Transfer-Encoding: chunked", concat(utf8("7fff\r\n"), half))
                .ifPresent(reply -> Refusal.check(taker + " with half a chunk", reply));
    }

    @ParameterizedTest
    @MethodSource("takersOfRecords")
    void a_body_that_is_too_long_is_refused_with_how_long_it_may_be(Taker taker) {
        byte[] long2 = utf8(taker.right() + " ".repeat(2_000_000));
        byte[] chunked = concat(concat(utf8(Integer.toHexString(long2.length) + "\r\n"), long2), utf8("\r\n0\r\n\r\n"));
        Optional<RawExchange> counted = post(taker, Answer.JSON, long2);
        Optional<RawExchange> told =
                post(taker.path(), "Content-Type: application/json\r\nTransfer-Encoding: chunked", chunked);

        for (Optional<RawExchange> reply : List.of(counted, told)) {
            reply.ifPresent(refusal -> {
                Refusal.check(taker + " with two megabytes", refusal);
                assertEquals(413, refusal.status());
                assertTrue(refusal.body().contains("1 MB"), refusal::body);
            });
        }
        RawExchange announced = post(
                        taker.path(), "Content-Type: application/json\r\nContent-Length: 2000000000", new byte[0])
                .orElseThrow();
        assertEquals(413, announced.status());
        assertTrue(announced.body().contains("1 MB"), announced::body);
    }

    @Test
    void a_body_with_a_question_that_takes_none_changes_nothing() {
        RawExchange reply = RawExchange.bytes(utf8("GET /v1/value/ghg/mealworm HTTP/1.1\r\nHost: localhost\r\n"
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
            RawExchange.bytes(utf8("POST /v1/footprint HTTP/1.1\r\nHost: localhost\r\n"
                            + "Content-Type: application/json\r\n" + lie))
                    .ifPresent(reply -> {
                        Refusal.check(lie, reply);
                        assertFalse(reply.body().contains("HTTP/1.1 200"), () -> lie + reply.body());
                    });
        }
    }
}

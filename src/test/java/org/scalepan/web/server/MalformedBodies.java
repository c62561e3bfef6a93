package org.scalepan.web.server;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Malformed bodies by name, derived from a valid one. */
final class MalformedBodies {
    private MalformedBodies() {}

    static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    static byte[] latin1(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    static byte[] concat(byte[]... parts) {
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        List.of(parts).forEach(whole::writeBytes);
        return whole.toByteArray();
    }

    private static String open(String right) {
        return right.strip().substring(0, right.strip().lastIndexOf('}'));
    }

    private static String fields(int count) {
        return String.join(
                "",
                IntStream.range(0, count).mapToObj(i -> ",\"f" + i + "\":" + i).toList());
    }

    /** Malformed as JSON, whatever the route. */
    static Map<String, byte[]> noRecords(String right) {
        String open = open(right);
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
        bodies.put("10 000 fields", utf8(open + fields(10_000) + "}"));
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

    /** Valid, but beyond a limit. */
    static Map<String, byte[]> tooMuch(String right) {
        String open = open(right);
        Map<String, byte[]> bodies = new LinkedHashMap<>();
        bodies.put("a number of 100 000 digits", utf8(open + ",\"extra\":" + "9".repeat(100_000) + "}"));
        bodies.put("a name of 100 000 letters", utf8(open + ",\"" + "n".repeat(100_000) + "\":1}"));
        bodies.put("a text of 500 000 letters", utf8(open + ",\"extra\":\"" + "t".repeat(500_000) + "\"}"));
        bodies.put("10 000 lists deep", utf8(open + ",\"extra\":" + "[".repeat(10_000) + "]".repeat(10_000) + "}"));
        bodies.put("100 000 objects deep", utf8("{\"a\":".repeat(100_000)));
        bodies.put("30 000 fields", utf8(open + fields(30_000) + "}"));
        return bodies;
    }

    /** Malformed rows, some of which may be valid. */
    static Map<String, byte[]> noRows(String right) {
        String line = right.contains("{") ? right.lines().findFirst().orElseThrow() : "{}";
        Map<String, byte[]> bodies = noRecords(line);
        bodies.putAll(tooMuch(line));
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
        return bodies;
    }
}

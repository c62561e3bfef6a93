package org.scalepan.exchange.rows;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.OptionalInt;

/**
 * Decodes UTF-8 and marks each byte that is not, so that one wrong byte is told in its own row and all others are read. The mark is the
 * lone surrogate U+DC00 plus the byte, which UTF-8 can never give (the same as Python's <a
 * href="https://peps.python.org/pep-0383/">surrogateescape</a>).
 */
public final class MarkedUtf8 extends Reader {
    private static final int BLOCK = 8_192;
    private static final int MARK = 0xDC00;

    private final InputStream in;
    private final CharsetDecoder decoder = StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    private final ByteBuffer bytes = ByteBuffer.allocate(BLOCK).flip();
    /** Room for the marks of one malformed sequence is kept at the end. */
    private final CharBuffer chars = CharBuffer.allocate(BLOCK).flip();

    private boolean atEnd;

    /** Reads bytes as UTF-8. */
    public MarkedUtf8(InputStream in) {
        this.in = in;
    }

    @Override
    public int read(char[] target, int from, int length) throws IOException {
        while (!chars.hasRemaining()) {
            if (atEnd && !bytes.hasRemaining()) {
                return -1;
            }
            decodeMore();
        }
        int count = Math.min(length, chars.remaining());
        chars.get(target, from, count);
        return count;
    }

    private void decodeMore() throws IOException {
        fill();
        chars.clear();
        CoderResult result = decoder.decode(bytes, chars, atEnd);
        if (result.isMalformed()) {
            // What came before the byte goes out first where there is no room for it.
            for (int i = 0; i < result.length() && chars.hasRemaining(); i++) {
                chars.put((char) (MARK + (bytes.get() & 0xFF)));
            }
            decoder.reset();
        }
        chars.flip();
    }

    private void fill() throws IOException {
        if (atEnd) {
            return;
        }
        bytes.compact();
        int read = in.read(bytes.array(), bytes.position(), bytes.remaining());
        if (read < 0) {
            atEnd = true;
        } else {
            bytes.position(bytes.position() + read);
        }
        bytes.flip();
    }

    @Override
    public void close() throws IOException {
        in.close();
    }

    /** Where the first marked byte stands in a text, counted from 0. */
    static OptionalInt firstMark(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (Character.isLowSurrogate(text.charAt(i))
                    && (i == 0 || !Character.isHighSurrogate(text.charAt(i - 1)))) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    /** Says which byte is marked there, and what to do. */
    static String fault(String text, int at) {
        return String.format(
                Locale.ROOT,
                "byte 0x%02X after %d characters is not UTF-8; save the file as UTF-8",
                text.charAt(at) - MARK,
                text.codePointCount(0, at));
    }
}

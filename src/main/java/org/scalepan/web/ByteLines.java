package org.scalepan.web;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Lines of an answer in the making, as bytes: what the writers of a whole table cost for each cell would be most of the cost of a row.
 * Flushing it does nothing, because it is filled by writers that flush; {@link #send} sends.
 */
final class ByteLines extends OutputStream {
    private static final int FULL = 65_536;

    /** 2 for what a word may begin with, 1 for what may follow. */
    private static final byte[] IN_WORDS = new byte[128];

    static {
        Arrays.fill(IN_WORDS, '0', '9' + 1, (byte) 2);
        Arrays.fill(IN_WORDS, 'A', 'Z' + 1, (byte) 2);
        Arrays.fill(IN_WORDS, 'a', 'z' + 1, (byte) 2);
        for (char sign : " -.:()".toCharArray()) {
            IN_WORDS[sign] = 1;
        }
    }

    private final OutputStream out;
    private byte[] bytes = new byte[2 * FULL];
    private int count;

    ByteLines(OutputStream out) {
        this.out = out;
    }

    @Override
    public void write(int one) {
        reserve(1);
        bytes[count++] = (byte) one;
    }

    @Override
    public void write(byte[] many, int from, int length) {
        reserve(length);
        System.arraycopy(many, from, bytes, count, length);
        count += length;
    }

    void bytes(byte[] many) {
        write(many, 0, many.length);
    }

    /** A character of ASCII. */
    void character(char one) {
        write(one);
    }

    void text(String text) {
        reserve(text.length());
        int to = count;
        for (int i = 0; i < text.length(); i++) {
            char character = text.charAt(i);
            if (character >= 128) {
                bytes(text.getBytes(StandardCharsets.UTF_8));
                return;
            }
            bytes[to++] = (byte) character;
        }
        count = to;
    }

    /**
     * A text that needs neither guard nor quotes in any style of CSV: letters, digits, blanks and a few signs, behind a letter or digit.
     *
     * @return whether it was one; if not, nothing was written
     */
    boolean word(String text) {
        int length = text.length();
        reserve(length);
        boolean plain = length > 0 && IN_WORDS[text.charAt(0) & 127] == 2;
        for (int i = 0; i < length && plain; i++) {
            char character = text.charAt(i);
            bytes[count + i] = (byte) character;
            plain = character < 128 && IN_WORDS[character] > 0;
        }
        count += plain ? length : 0;
        return plain;
    }

    void number(long number) {
        text(Long.toString(number));
    }

    /** A computed number, as {@link Numbers#plain} prints it. */
    void number(double value, char decimal) {
        reserve(PlainNumber.LONGEST);
        int to = PlainNumber.write(value, decimal, bytes, count);
        if (to < 0) {
            text(Numbers.plain(value).replace('.', decimal));
        } else {
            count = to;
        }
    }

    private void reserve(int more) {
        if (count + more > bytes.length) {
            bytes = Arrays.copyOf(bytes, Math.max(2 * bytes.length, count + more));
        }
    }

    /** Sends what is there when it is enough to be worth sending. */
    void sendIfFull() throws IOException {
        if (count >= FULL) {
            pass();
        }
    }

    /** Sends what is there on its way. */
    void send() throws IOException {
        pass();
        out.flush();
    }

    private void pass() throws IOException {
        out.write(bytes, 0, count);
        count = 0;
    }
}

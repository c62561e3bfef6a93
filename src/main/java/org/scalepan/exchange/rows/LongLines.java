package org.scalepan.exchange.rows;

import java.io.IOException;
import java.io.Reader;
import java.util.Optional;

/** Reads lines, truncating each at one character more than the limit. */
final class LongLines {
    private final Reader reader;
    private final int longest;
    private final char[] block = new char[8192];
    private int at;
    private int end;

    LongLines(Reader reader, int longest) {
        this.reader = reader;
        this.longest = longest;
    }

    /** A line without its line end; empty after the last. */
    Optional<String> next() throws IOException {
        if (!hasMore()) {
            return Optional.empty();
        }
        StringBuilder line = new StringBuilder();
        while (hasMore()) {
            int from = at;
            while (at < end && block[at] != '\n') {
                at++;
            }
            line.append(block, from, Math.min(at - from, longest + 1 - line.length()));
            if (at < end) {
                at++;
                break;
            }
        }
        return Optional.of(line.toString());
    }

    private boolean hasMore() throws IOException {
        if (at == end) {
            at = 0;
            end = Math.max(0, reader.read(block));
        }
        return at < end;
    }
}

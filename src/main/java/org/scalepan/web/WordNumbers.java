package org.scalepan.web;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** Numbers the words of a table as they come, looking them up without making a text of each. */
final class WordNumbers {
    private static final int MOST = 4096;

    private final @Nullable String[] table = new String[4 * MOST];
    private final int[] numbers = new int[table.length];
    private int count;
    private char[] letters = new char[64];

    /** The number of a word, from 1; 0 when there are too many different ones. */
    int of(char[] text, int from, int to) {
        int hash = 0;
        for (int i = from; i < to; i++) {
            hash = 31 * hash + text[i];
        }
        int at = (hash ^ (hash >>> 15)) & (table.length - 1);
        for (String known = table[at]; known != null; known = table[at]) {
            if (same(known, text, from, to)) {
                return numbers[at];
            }
            at = (at + 1) & (table.length - 1);
        }
        if (count == MOST) {
            return 0;
        }
        table[at] = new String(Arrays.copyOfRange(text, from, to));
        numbers[at] = ++count;
        return count;
    }

    /** The same for a text. */
    int of(String word) {
        if (letters.length < word.length()) {
            letters = new char[word.length()];
        }
        word.getChars(0, word.length(), letters, 0);
        return of(letters, 0, word.length());
    }

    private static boolean same(String known, char[] text, int from, int to) {
        if (known.length() != to - from) {
            return false;
        }
        for (int i = from; i < to; i++) {
            if (known.charAt(i - from) != text[i]) {
                return false;
            }
        }
        return true;
    }
}

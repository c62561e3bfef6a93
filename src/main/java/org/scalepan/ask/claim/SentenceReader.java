package org.scalepan.ask.claim;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The words of a sentence that is being read: each is understood at most once, and what it was read as is kept in order. */
final class SentenceReader {
    private final List<String> words;
    private final boolean[] taken;
    private final List<ParsedClaim.Understood> parts = new ArrayList<>();

    SentenceReader(List<String> words) {
        this.words = List.copyOf(words);
        this.taken = new boolean[words.size()];
    }

    /** Which words are understood already; shared, not to be written to. */
    boolean[] taken() {
        return taken;
    }

    /** What was understood so far; the caller may add what is assumed. */
    List<ParsedClaim.Understood> parts() {
        return parts;
    }

    /** The longest of the phrases that begins at a word. */
    Optional<String> longest(Collection<String> phrases, int at) {
        return phrases.stream().filter(phrase -> isAt(phrase, at)).max(Comparator.comparingInt(SentenceReader::size));
    }

    /** Whether a phrase begins at a word, none of its words understood yet. */
    boolean isAt(String phrase, int at) {
        String[] wanted = phrase.split(" ", -1);
        for (int i = 0; i < wanted.length; i++) {
            if (!free(at + i) || !words.get(at + i).equals(wanted[i])) {
                return false;
            }
        }
        return true;
    }

    /** Whether there is a word, and it is not understood yet. */
    boolean free(int at) {
        return at < words.size() && !taken[at];
    }

    /** Understands some words. */
    void take(int from, int count, String readAs) {
        for (int i = from; i < from + count; i++) {
            taken[i] = true;
        }
        parts.add(new ParsedClaim.Understood(String.join(" ", words.subList(from, from + count)), readAs));
    }

    /** The number of words of a phrase. */
    static int size(String phrase) {
        return phrase.split(" ", -1).length;
    }
}

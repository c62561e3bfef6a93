package org.scalepan.factors;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds the known names nearest to a mistyped one, for "did you mean". */
public final class Nearest {
    /** So short a name stands in many words by chance: "se" in "nonsense". */
    private static final int SHORTEST = 3;

    private Nearest() {}

    /**
     * The names that a person who typed {@code typed} probably meant, best first, at most {@code limit}: those that contain
     * it or, if not very short, are contained in it, and those at an edit distance of at most a third of its length.
     */
    public static List<String> to(String typed, Collection<String> names, int limit) {
        String wanted = typed.toLowerCase(Locale.ROOT).replace(' ', '-').replace('_', '-');
        int most = Math.max(1, Math.min(4, wanted.length() / 3));
        return names.stream()
                .flatMap(name -> scored(wanted, name, most))
                .sorted(Comparator.comparingInt(Scored::distance).thenComparing(Scored::name))
                .limit(limit)
                .map(Scored::name)
                .toList();
    }

    private record Scored(String name, int distance) {}

    private static Stream<Scored> scored(String wanted, String name, int most) {
        String known = name.toLowerCase(Locale.ROOT).replace(' ', '-');
        int distance = new LevenshteinDistance(most).apply(wanted, known);
        if (distance >= 0) {
            return Stream.of(new Scored(name, distance));
        }
        boolean within = wanted.length() >= 3
                && (known.contains(wanted) || (known.length() > SHORTEST && wanted.contains(known)));
        return within ? Stream.of(new Scored(name, most + 1)) : Stream.empty();
    }
}

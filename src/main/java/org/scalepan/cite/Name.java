package org.scalepan.cite;

import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * One author: a person with a family name and perhaps given names, or a body ("World Bank") written as a literal.
 *
 * <p>Refused with an {@link IllegalArgumentException} if neither or both of family and literal are there, or a part is blank.
 *
 * @param family family name with its particles ("de Boer"); absent for a body
 * @param given given names or initials as published ("Imke J. M.", "IJM"); only beside a family name
 * @param literal name of a body, printed as it stands; only without a family name
 */
public record Name(Optional<String> family, Optional<String> given, Optional<String> literal) {
    private static final Pattern BETWEEN_GIVEN_NAMES = Pattern.compile("[\\s.\\-\u2010]+");
    // Medical and life-science bibliographies print initials closed up: "DGAB" stands for four given names, not one.
    private static final Pattern CLOSED_UP_INITIALS = Pattern.compile("\\p{Lu}{1,5}");

    public Name {
        if (family.isPresent() == literal.isPresent()) {
            throw new IllegalArgumentException("an author has either a family name or, for a body, a literal name");
        }
        if (literal.isPresent() && given.isPresent()) {
            throw new IllegalArgumentException("a body named by a literal has no given name");
        }
        if (family.or(() -> literal).filter(OneLine::isEmpty).isPresent()
                || given.filter(OneLine::isEmpty).isPresent()) {
            throw new IllegalArgumentException("an author's name is blank; leave the part out");
        }
    }

    /** The name a reader cites: the family name, or the body's name. */
    String cited() {
        return OneLine.of(family.or(() -> literal).orElseThrow());
    }

    /** Initials of the given names closed up, as in "DGAB"; empty for a body or without given names. */
    String initials() {
        return given.map(OneLine::of).stream()
                .flatMap(BETWEEN_GIVEN_NAMES::splitAsStream)
                .filter(part -> !part.isEmpty())
                .map(part -> CLOSED_UP_INITIALS.matcher(part).matches() ? part : firstLetter(part))
                .collect(Collectors.joining());
    }

    /**
     * Given names with closed-up initials set apart ("DGAB" and "D.G.A.B." as "D. G. A. B."). Programs that shorten names
     * would make "D." of the closed forms.
     */
    Optional<String> spacedGiven() {
        return given.map(OneLine::of)
                .map(text ->
                        Arrays.stream(text.split(" ", -1)).map(Name::spaced).collect(Collectors.joining(" ")));
    }

    private static String spaced(String part) {
        String letters = part.replace(".", "");
        return CLOSED_UP_INITIALS.matcher(letters).matches()
                ? letters.codePoints()
                        .mapToObj(c -> Character.toString(c) + ".")
                        .collect(Collectors.joining(" "))
                : part;
    }

    private static String firstLetter(String part) {
        return Character.toString(Character.toUpperCase(part.codePointAt(0)));
    }
}

package org.scalepan.cite;

import java.util.Arrays;
import java.util.stream.Collectors;

/** Plain text as LaTeX source that prints the same text; characters beyond ASCII stay as UTF-8. */
final class LatexText {
    private static final String LIGATURES = "-'`,<>";

    private LatexText() {}

    /** The text on one line with LaTeX's ten special characters escaped. */
    static String of(String text) {
        StringBuilder latex = new StringBuilder();
        OneLine.of(text).codePoints().forEach(c -> {
            // Two of these in a row would be printed as one dash or quotation mark.
            boolean joins = LIGATURES.indexOf(c) >= 0 && latex.length() > 0 && latex.charAt(latex.length() - 1) == c;
            latex.append(joins ? "{}" : "").append(escaped(c));
        });
        return latex.toString();
    }

    /**
     * As {@link #of}, with each word that holds a capital in braces, because bibliography styles set titles in lower case.
     * The first word's first capital needs none.
     */
    static String keepingCapitals(String text) {
        String line = OneLine.of(text);
        int afterFirst = line.isEmpty() ? 0 : line.offsetByCodePoints(0, 1);
        String first = line.substring(0, afterFirst);
        String rest = line.substring(afterFirst);
        int endOfWord = rest.indexOf(' ') < 0 ? rest.length() : rest.indexOf(' ');
        String firstWord = first + rest.substring(0, endOfWord);
        String protectedFirst = hasCapital(rest.substring(0, endOfWord)) ? inBraces(firstWord) : of(firstWord);
        return Arrays.stream(rest.substring(endOfWord).split(" ", -1))
                .skip(1)
                .map(word -> hasCapital(word) ? " " + inBraces(word) : " " + of(word))
                .collect(Collectors.joining("", protectedFirst, ""));
    }

    /** The text in braces, so that BibTeX takes it as one indivisible piece. */
    static String inBraces(String text) {
        String latex = of(text);
        // A brace followed by a backslash is BibTeX's notation for an accented letter, which it does change in case.
        return latex.startsWith("\\") ? "{{" + latex + "}}" : "{" + latex + "}";
    }

    private static boolean hasCapital(String word) {
        return word.codePoints().anyMatch(Character::isUpperCase);
    }

    private static String escaped(int c) {
        return switch (c) {
            case '&', '%', '$', '#', '_' -> "\\" + Character.toString(c);
            // BibTeX counts braces even behind a backslash, so an unpaired one must not appear at all.
            case '{' -> "\\textbraceleft{}";
            case '}' -> "\\textbraceright{}";
            case '~' -> "\\textasciitilde{}";
            case '^' -> "\\textasciicircum{}";
            case '\\' -> "\\textbackslash{}";
            default -> Character.toString(c);
        };
    }
}

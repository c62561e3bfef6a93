package org.scalepan.cite;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * References as plain author-date text, ready to paste: "Oonincx DGAB, de Boer IJM (2012) Title. Journal 7(12): e51145.
 * https://doi.org/10.1371/journal.pone.0051145". No style guide is followed to the letter.
 */
public final class PlainText {
    private PlainText() {}

    /** One reference on each line, in order; empty for no references. */
    public static String write(List<Reference> references) {
        return references.stream().map(reference -> of(reference) + "\n").collect(Collectors.joining());
    }

    /** The reference on one line, without a line break. */
    public static String of(Reference reference) {
        // No full stop behind an address: it would be pasted along with it.
        return withoutLink(reference)
                + reference.link().map(address -> " " + address).orElse("");
    }

    /** The reference on one line, without the address at which it can be opened. */
    public static String withoutLink(Reference reference) {
        String year = "(" + reference.citedYear() + ")";
        String title = OneLine.of(reference.title());
        List<String> sentences = new ArrayList<>();
        // Without authors the title leads, as author-date lists are ordered by what comes before the year.
        sentences.add(sentence(
                reference.authors().isEmpty() ? title + " " + year : authors(reference) + " " + year + " " + title));
        sentences.add(sentence(container(reference)));
        sentences.add(sentence(Stream.of(reference.publisher(), reference.number())
                .flatMap(Optional::stream)
                .map(OneLine::of)
                .collect(Collectors.joining(", "))));
        sentences.add(sentence(
                reference.isbn().map(isbn -> "ISBN " + OneLine.of(isbn)).orElse("")));
        sentences.add(reference.isIdentified() ? "" : "[Publication not identified.]");
        return sentences.stream().filter(text -> !text.isEmpty()).collect(Collectors.joining(" "));
    }

    private static String authors(Reference reference) {
        return reference.authors().stream()
                .map(name -> (name.cited() + " " + name.initials()).strip())
                .collect(Collectors.joining(", ", "", reference.hasUnlistedAuthors() ? ", et al." : ""));
    }

    private static String container(Reference reference) {
        String issue =
                reference.issue().map(text -> "(" + OneLine.of(text) + ")").orElse("");
        String volume = reference.volume().map(OneLine::of).orElse("");
        String place = (reference.containerTitle().map(OneLine::of).orElse("") + " " + volume + issue).strip();
        String page = reference.page().map(OneLine::of).orElse("");
        return place.isEmpty() || page.isEmpty() ? place + page : place + ": " + page;
    }

    private static String sentence(String text) {
        return text.isEmpty() || text.matches(".*[.?!…]") ? text : text + ".";
    }
}

package org.scalepan.cite;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * References as BibTeX (entry types and fields of O. Patashnik, BibTeXing, 1988; {@code doi}, {@code url} and
 * {@code isbn} as later styles use them). UTF-8.
 *
 * <p>Remarks on the record, such as how the source was seen, go to {@code annote}, which the standard styles do not print.
 */
public final class BibTex {
    private static final Pattern DASH = Pattern.compile("\\s*[-\u2013\u2014]+\\s*");
    // A comma or the word "and" would make BibTeX see another name part or another author.
    private static final Pattern SPLITS_A_NAME = Pattern.compile("(?i).*(,|\\band\\b).*");

    private BibTex() {}

    /** One entry for each reference, in order, with a blank line between; empty for no references. */
    public static String write(List<Reference> references) {
        return references.stream().map(BibTex::entry).collect(Collectors.joining("\n"));
    }

    private static String entry(Reference reference) {
        String type = entryType(reference.type());
        return fields(type, reference).entrySet().stream()
                .map(field -> "  " + field.getKey() + " = {" + field.getValue() + "}")
                .collect(Collectors.joining(",\n", "@" + type + "{" + reference.id() + ",\n", "\n}\n"));
    }

    // A thesis stays @misc: BibTeX has only @phdthesis and @mastersthesis, and CSL does not say which one it is.
    private static String entryType(String cslType) {
        return switch (cslType) {
            case "article-journal", "article-magazine", "article-newspaper" -> "article";
            case "report" -> "techreport";
            case "book" -> "book";
            case "chapter" -> "incollection";
            case "paper-conference" -> "inproceedings";
            default -> "misc";
        };
    }

    private static Map<String, String> fields(String type, Reference reference) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("title", LatexText.keepingCapitals(reference.title()));
        if (!reference.authors().isEmpty()) {
            fields.put("author", authors(reference));
        }
        reference.year().ifPresent(year -> fields.put("year", Integer.toString(year)));
        putText(fields, containerField(type), reference.containerTitle());
        putText(fields, "volume", reference.volume());
        putText(fields, "number", reference.issue().or(reference::number));
        reference.page().map(BibTex::pages).ifPresent(pages -> fields.put("pages", pages));
        if (type.equals("techreport")) {
            // @techreport must name an institution: who published it, or an institution that is its author.
            putText(
                    fields,
                    "institution",
                    reference
                            .publisher()
                            .or(() -> reference.authors().stream()
                                    .flatMap(author -> author.literal().stream())
                                    .findFirst()));
        } else {
            putText(fields, "publisher", reference.publisher());
        }
        // Both are read verbatim by the styles that print them, and their rules leave no brace or backslash in them.
        reference.doi().ifPresent(doi -> fields.put("doi", doi));
        reference.url().ifPresent(url -> fields.put("url", url));
        putText(fields, "isbn", reference.isbn());
        putText(fields, "annote", Optional.of(reference.remarks()));
        return fields;
    }

    private static String containerField(String type) {
        return switch (type) {
            case "article" -> "journal";
            case "techreport", "book" -> "series";
            case "incollection", "inproceedings" -> "booktitle";
            default -> "howpublished";
        };
    }

    private static void putText(Map<String, String> fields, String field, Optional<String> text) {
        text.ifPresent(value -> fields.put(field, LatexText.of(value)));
    }

    private static String authors(Reference reference) {
        return reference.authors().stream()
                .map(BibTex::author)
                .collect(Collectors.joining(" and ", "", reference.hasUnlistedAuthors() ? " and others" : ""));
    }

    private static String author(Name name) {
        if (name.literal().isPresent()) {
            return LatexText.inBraces(name.cited());
        }
        return name.spacedGiven()
                .map(given -> namePart(name.cited()) + ", " + namePart(given))
                .orElseGet(
                        () -> name.cited().contains(" ") ? LatexText.inBraces(name.cited()) : namePart(name.cited()));
    }

    private static String namePart(String part) {
        return SPLITS_A_NAME.matcher(part).matches() ? LatexText.inBraces(part) : LatexText.of(part);
    }

    private static String pages(String printed) {
        String enDashed = DASH.matcher(OneLine.of(printed)).replaceAll("\u2013");
        return LatexText.of(enDashed).replace("\u2013", "--");
    }
}

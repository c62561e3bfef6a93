package org.scalepan.cite;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * References as RIS, the tagged format of Research Information Systems (RIS Format Specifications, 2001, for the line form;
 * the tags T2, DO and LB and the type STAND are of the revision of 2011). Lines end in CR LF; UTF-8.
 */
public final class Ris {
    private static final Pattern PAGE_RANGE =
            Pattern.compile("([^\\s\\-\u2013\u2014]+)\\s*[-\u2013\u2014]+\\s*([^\\s\\-\u2013\u2014]+)");

    private Ris() {}

    /** One record for each reference, from TY to ER, in order; empty for no references. */
    public static String write(List<Reference> references) {
        return references.stream().map(Ris::entry).collect(Collectors.joining());
    }

    private static String entry(Reference reference) {
        StringBuilder lines = new StringBuilder();
        line(lines, "TY", type(reference.type()));
        // The specification keeps ID to capitals and digits, which the ids are not; LB takes any text.
        line(lines, "LB", reference.id());
        line(lines, "TI", reference.title());
        reference.authorsWithOthers().forEach(name -> line(lines, "AU", withoutAsterisk(author(name))));
        reference.year().ifPresent(year -> line(lines, "PY", Integer.toString(year)));
        line(lines, "T2", reference.containerTitle().map(Ris::withoutAsterisk));
        line(lines, "VL", reference.volume());
        line(lines, "IS", reference.issue());
        reference.page().ifPresent(page -> pages(lines, page));
        line(lines, "PB", reference.publisher());
        line(lines, "M1", reference.number());
        line(lines, "SN", reference.isbn());
        line(lines, "DO", reference.doi());
        line(lines, "UR", reference.link());
        line(lines, "N1", reference.remarks());
        line(lines, "ER", "");
        return lines.toString();
    }

    private static String type(String cslType) {
        return switch (cslType) {
            case "article-journal" -> "JOUR";
            case "report" -> "RPRT";
            case "book" -> "BOOK";
            case "chapter" -> "CHAP";
            case "thesis" -> "THES";
            case "dataset" -> "DATA";
            case "standard" -> "STAND";
            case "webpage" -> "ELEC";
            default -> "GEN";
        };
    }

    private static String author(Name name) {
        return name.cited() + name.spacedGiven().map(given -> ", " + given).orElse("");
    }

    private static void pages(StringBuilder lines, String printed) {
        Matcher range = PAGE_RANGE.matcher(OneLine.of(printed));
        if (range.matches()) {
            line(lines, "SP", range.group(1));
            line(lines, "EP", range.group(2));
        } else {
            line(lines, "SP", printed);
        }
    }

    // The specification keeps the asterisk out of author and periodical fields, where programs read it as a wildcard.
    private static String withoutAsterisk(String text) {
        return text.replace('*', ' ');
    }

    private static void line(StringBuilder lines, String tag, Optional<String> text) {
        text.ifPresent(value -> line(lines, tag, value));
    }

    private static void line(StringBuilder lines, String tag, String text) {
        lines.append(tag).append("  - ").append(OneLine.of(text)).append("\r\n");
    }
}

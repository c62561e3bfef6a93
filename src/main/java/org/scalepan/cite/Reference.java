package org.scalepan.cite;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One source of the literature, in the terms of the Citation Style Language 1.0.2 (https://citationstyles.org).
 *
 * <p>One that breaks a rule is refused with an {@link IllegalArgumentException} naming every rule broken.
 *
 * @param id citation key, unique in its list: letters, digits and {@code . _ : -}
 * @param type CSL item type, such as article-journal or report
 * @param title title as published
 * @param authors authors in published order; empty if none is known
 * @param year year of issue, 1000 to 9999; empty if not known
 * @param containerTitle journal, book or site that contains it
 * @param volume volume as printed
 * @param issue issue as printed
 * @param page page, page range or article number as printed
 * @param doi bare DOI, without a resolver in front
 * @param url http or https address
 * @param publisher publisher or issuing institution
 * @param number report or standard number
 * @param isbn ISBN as printed
 * @param note remark on the source or on the copy read
 * @param check how the source itself was seen (fulltext, abstract, secondary, memory)
 * @param licence licence of the source
 * @param publication what is not known of the publication, such as {@value #NOT_IDENTIFIED}; empty where it is known
 */
public record Reference(
        String id,
        String type,
        String title,
        List<Name> authors,
        OptionalInt year,
        Optional<String> containerTitle,
        Optional<String> volume,
        Optional<String> issue,
        Optional<String> page,
        Optional<String> doi,
        Optional<String> url,
        Optional<String> publisher,
        Optional<String> number,
        Optional<String> isbn,
        Optional<String> note,
        String check,
        Optional<String> licence,
        Optional<String> publication) {

    /** What {@code custom.publication} says of a source whose numbers were seen and that nobody can look up. */
    public static final String NOT_IDENTIFIED = "not identified";

    /** Stands at the end of an incomplete list of authors in formats that have no other sign for it. */
    static final Name ET_AL = new Name(Optional.empty(), Optional.empty(), Optional.of("et al."));

    /** Words a note carries when the record the reference was taken from did not list every author. */
    static final String OTHERS_UNLISTED = "further authors not in the record seen";

    private static final int TITLE_START = 40;

    public Reference {
        authors = List.copyOf(authors);
        Map<String, Optional<String>> optionalText = new LinkedHashMap<>();
        optionalText.put("container-title", containerTitle);
        optionalText.put("volume", volume);
        optionalText.put("issue", issue);
        optionalText.put("page", page);
        optionalText.put("publisher", publisher);
        optionalText.put("number", number);
        optionalText.put("ISBN", isbn);
        optionalText.put("note", note);
        optionalText.put("custom.licence", licence);
        optionalText.put("custom.publication", publication);
        List<String> broken = ReferenceRules.broken(id, type, title, year, doi, url, check, optionalText);
        if (!broken.isEmpty()) {
            throw new UnsoundReference(broken);
        }
    }

    /**
     * The reference as cited in a sentence: "Oonincx & de Boer 2012", "Smetana et al. 2019". Without authors the start
     * of the title stands in, without a year "n.d." (no date).
     */
    public String label() {
        return citedAuthors() + " " + citedYear() + (isIdentified() ? "" : " (publication not identified)");
    }

    /** True unless the publication is not identified, so that nobody can look its numbers up. */
    public boolean isIdentified() {
        return publication.filter(NOT_IDENTIFIED::equals).isEmpty();
    }

    /** True if there are authors the record seen did not list, so that the list must end in "et al.". */
    boolean hasUnlistedAuthors() {
        return !authors.isEmpty() && note.filter(Reference::saysOthersUnlisted).isPresent();
    }

    static boolean saysOthersUnlisted(String note) {
        return note.toLowerCase(Locale.ROOT).contains(OTHERS_UNLISTED);
    }

    /**
     * What a reader needs to find an article and the record seen did not have: {@code authors}, {@code year}, {@code volume}, {@code pages},
     * {@code DOI}. Of other kinds only authors and year, because a report need not have the rest.
     */
    public List<String> missing() {
        List<String> missing = new ArrayList<>();
        if (authors.isEmpty()) {
            missing.add("authors");
        } else if (hasUnlistedAuthors()) {
            missing.add("further authors");
        }
        if (year.isEmpty()) {
            missing.add("year");
        }
        if (type.equals("article-journal")) {
            missingOfArticle().forEach(missing::add);
        }
        return List.copyOf(missing);
    }

    private Stream<String> missingOfArticle() {
        Map<String, Optional<String>> wanted = new LinkedHashMap<>();
        wanted.put("journal", containerTitle);
        wanted.put("volume", volume);
        wanted.put("pages", page);
        wanted.put("DOI", doi);
        return wanted.entrySet().stream()
                .filter(part -> part.getValue().isEmpty())
                .map(Map.Entry::getKey);
    }

    /** Four digits, or "n.d." for no date. */
    String citedYear() {
        return year.isPresent() ? Integer.toString(year.getAsInt()) : "n.d.";
    }

    /** Where the source can be opened: the DOI's resolver address, else the URL. */
    public Optional<String> link() {
        return doi.map(bare -> "https://doi.org/" + percentEncoded(bare)).or(() -> url);
    }

    /** The authors, and a last one that stands for those whom the record seen did not list. */
    List<Name> authorsWithOthers() {
        return hasUnlistedAuthors()
                ? Stream.concat(authors.stream(), Stream.of(ET_AL)).toList()
                : authors;
    }

    /** What a reader should know about the record but would not print in a list of references. */
    String remarks() {
        return "Seen: " + OneLine.of(check) + "."
                + licence.map(text -> " Licence: " + OneLine.of(text) + ".").orElse("")
                + (missing().isEmpty() ? "" : " Not known: " + String.join(", ", missing()) + ".")
                + publication
                        .map(text -> " Publication: " + OneLine.of(text) + ".")
                        .orElse("")
                + note.map(text -> " " + OneLine.of(text)).orElse("");
    }

    private String citedAuthors() {
        if (authors.isEmpty()) {
            return titleStart();
        }
        String first = authors.get(0).cited();
        if (authors.size() > 2 || hasUnlistedAuthors()) {
            return first + " et al.";
        }
        return authors.size() == 2 ? first + " & " + authors.get(1).cited() : first;
    }

    private String titleStart() {
        String whole = OneLine.of(title);
        if (whole.codePointCount(0, whole.length()) <= TITLE_START) {
            return whole;
        }
        String start = whole.substring(0, whole.offsetByCodePoints(0, TITLE_START));
        int lastSpace = start.lastIndexOf(' ');
        return (lastSpace > 0 ? start.substring(0, lastSpace) : start) + "…";
    }

    // The DOI Handbook (section 2.5.2.4, from memory) asks for these to be encoded when a DOI becomes a web address.
    private static String percentEncoded(String doi) {
        return doi.codePoints()
                .mapToObj(Character::toString)
                .map(c -> c.matches("[A-Za-z0-9./:;()_~!$&'*+,=@-]") ? c : bytesEncoded(c))
                .collect(Collectors.joining());
    }

    private static String bytesEncoded(String character) {
        StringBuilder encoded = new StringBuilder();
        for (byte octet : character.getBytes(StandardCharsets.UTF_8)) {
            encoded.append(String.format(Locale.ROOT, "%%%02X", octet));
        }
        return encoded.toString();
    }
}

package org.scalepan.cite;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/** The rules of a sound reference, shared by references built in code and those read from a file. */
final class ReferenceRules {
    // Narrower than CSL-JSON, because the same id is a BibTeX key, a path segment and a member of a semicolon list.
    private static final Pattern ID = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._:-]{0,119}");
    // The form Crossref publishes for its DOIs, less the characters that would open or close a BibTeX field.
    private static final Pattern DOI = Pattern.compile("10\\.\\d{4,9}/[^\\s\\p{Cc}{}\\\\]+");

    private ReferenceRules() {}

    /** Every rule broken, each with what would be right; empty if the reference is sound. */
    static List<String> broken(
            String id,
            String type,
            String title,
            OptionalInt year,
            Optional<String> doi,
            Optional<String> url,
            String check,
            Map<String, Optional<String>> optionalText) {
        List<String> broken = new ArrayList<>();
        if (!ID.matcher(id).matches()) {
            broken.add("id \"" + OneLine.of(id) + "\" cannot serve as a citation key; use up to 120 letters, digits and"
                    + " . _ : - and begin with a letter or digit");
        }
        if (!CslVocabulary.TYPES.contains(type)) {
            broken.add("type \"" + OneLine.of(type) + "\" is not a CSL 1.0.2 item type; use article-journal, report,"
                    + " book, dataset, standard, thesis, webpage, document or another of them");
        }
        if (OneLine.isEmpty(title)) {
            broken.add("title is missing; give the title as published");
        }
        if (year.isPresent() && (year.getAsInt() < 1000 || year.getAsInt() > 9999)) {
            broken.add("year " + year.getAsInt() + " does not have four digits; leave issued out if it is not known");
        }
        if (doi.isPresent() && !DOI.matcher(doi.get()).matches()) {
            broken.add(
                    "DOI \"" + OneLine.of(doi.get()) + "\" is not a bare DOI; write it as 10.1371/journal.pone.0051145,"
                            + " without a resolver in front");
        }
        if (url.isPresent() && !isWebAddress(url.get())) {
            broken.add(
                    "URL \"" + OneLine.of(url.get()) + "\" is not a web address; write a whole http or https address,"
                            + " with other characters percent-encoded");
        }
        if (OneLine.isEmpty(check)) {
            broken.add("custom.check is missing; say how the source was seen (fulltext, abstract, secondary, memory)");
        }
        optionalText.forEach((field, text) -> text.filter(OneLine::isEmpty)
                .ifPresent(blank -> broken.add(field + " is blank; leave it out if it is not known")));
        return List.copyOf(broken);
    }

    private static boolean isWebAddress(String url) {
        try {
            URI uri = new URI(url);
            return ("http".equalsIgnoreCase(uri.getScheme()) || "https".equalsIgnoreCase(uri.getScheme()))
                    && uri.getHost() != null;
        } catch (URISyntaxException notAnAddress) {
            return false;
        }
    }
}

package org.scalepan.cite;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** One entry of a CSL-JSON list while it is read; gathers all its faults instead of stopping at the first. */
final class CslEntry {
    private final JsonNode node;
    private final List<String> faults = new ArrayList<>();
    private final Optional<Reference> reference;

    CslEntry(JsonNode node) {
        this.node = node;
        this.reference = node.isObject() ? fromObject() : notAnObject();
    }

    /** The reference; empty if there are faults. */
    Optional<Reference> reference() {
        return reference;
    }

    /** What is wrong, and what would be right. */
    List<String> faults() {
        return List.copyOf(faults);
    }

    /** The entry's id for naming it in a message, however unsound; empty if it has none. */
    Optional<String> id() {
        JsonNode id = node.path("id");
        return id.isTextual() || id.isNumber() ? Optional.of(OneLine.of(id.asText())) : Optional.empty();
    }

    private Optional<Reference> notAnObject() {
        faults.add("not an object; write one {...} for each source");
        return Optional.empty();
    }

    private Optional<Reference> fromObject() {
        refuseWordsOutside(node, CslVocabulary.FIELDS, "field", "of CSL-JSON 1.0.2");
        String id = text(node, "id", "id", true).orElse("");
        String type = text(node, "type", "type", false).orElse("");
        String title = text(node, "title", "title", false).orElse("");
        List<Name> authors = authors();
        OptionalInt year = year();
        Optional<String> containerTitle = text(node, "container-title", "container-title", false);
        Optional<String> volume = text(node, "volume", "volume", true);
        Optional<String> issue = text(node, "issue", "issue", true);
        Optional<String> page = text(node, "page", "page", true);
        Optional<String> doi = text(node, "DOI", "DOI", false);
        Optional<String> url = text(node, "URL", "URL", false);
        Optional<String> publisher = text(node, "publisher", "publisher", false);
        Optional<String> number = text(node, "number", "number", true);
        Optional<String> isbn = text(node, "ISBN", "ISBN", false);
        Optional<String> note = note();
        String check = custom("check").orElse("");
        Optional<String> licence = custom("licence");
        Optional<String> publication = custom("publication");
        try {
            Reference read = new Reference(
                    id,
                    type,
                    title,
                    authors,
                    year,
                    containerTitle,
                    volume,
                    issue,
                    page,
                    doi,
                    url,
                    publisher,
                    number,
                    isbn,
                    note,
                    check,
                    licence,
                    publication);
            return faults.isEmpty() ? Optional.of(read) : Optional.empty();
        } catch (UnsoundReference unsound) {
            faults.addAll(unsound.broken());
            return Optional.empty();
        }
    }

    /** The note; a last author "et al." in somebody's list is what a note says here. */
    private Optional<String> note() {
        Optional<String> note = text(node, "note", "note", false);
        boolean others = false;
        for (JsonNode author : node.path("author")) {
            others |= author.path("literal").asText().equals(Reference.ET_AL.cited());
        }
        return !others || note.filter(Reference::saysOthersUnlisted).isPresent()
                ? note
                : Optional.of(note.map(text -> text + " ").orElse("") + "Further authors not in the record seen.");
    }

    private List<Name> authors() {
        JsonNode list = node.path("author");
        if (list.isMissingNode()) {
            return List.of();
        }
        if (!list.isArray()) {
            faults.add("author is not a list; write [{\"family\": ..., \"given\": ...}] or [{\"literal\": ...}]");
            return List.of();
        }
        List<Name> names = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            name(list.get(i), "author " + (i + 1))
                    .filter(name -> !name.equals(Reference.ET_AL))
                    .ifPresent(names::add);
        }
        return names;
    }

    private Optional<Name> name(JsonNode author, String place) {
        if (!author.isObject()) {
            faults.add(place + " is not an object; write {\"family\": ..., \"given\": ...} or {\"literal\": ...}");
            return Optional.empty();
        }
        refuseWordsOutside(author, CslVocabulary.NAME_PARTS, place + ": part", "of a CSL-JSON 1.0.2 name");
        Optional<String> family = text(author, "family", place + ": family", false)
                .map(core -> Stream.of(
                                text(author, "dropping-particle", place + ": dropping-particle", false),
                                text(author, "non-dropping-particle", place + ": non-dropping-particle", false),
                                Optional.of(core),
                                text(author, "suffix", place + ": suffix", false))
                        .flatMap(Optional::stream)
                        .collect(Collectors.joining(" ")));
        Optional<String> given = text(author, "given", place + ": given", false);
        Optional<String> literal = text(author, "literal", place + ": literal", false);
        try {
            return Optional.of(new Name(family, given, literal));
        } catch (IllegalArgumentException unsound) {
            faults.add(place + ": " + unsound.getMessage());
            return Optional.empty();
        }
    }

    private OptionalInt year() {
        JsonNode issued = node.path("issued");
        if (issued.isMissingNode()) {
            return OptionalInt.empty();
        }
        JsonNode year = issued.path("date-parts").path(0).path(0);
        if (year.isIntegralNumber() && year.canConvertToInt()) {
            return OptionalInt.of(year.intValue());
        }
        if (year.isTextual() && year.textValue().matches("\\d{4}")) {
            return OptionalInt.of(Integer.parseInt(year.textValue()));
        }
        faults.add("issued has no year; write {\"date-parts\": [[2012]]}, or leave issued out if it is not known");
        return OptionalInt.empty();
    }

    private Optional<String> custom(String field) {
        JsonNode custom = node.path("custom");
        if (!custom.isMissingNode() && !custom.isObject()) {
            if (field.equals("check")) {
                faults.add("custom is not an object; write {\"check\": ..., \"licence\": ...}");
            }
            return Optional.empty();
        }
        return text(custom, field, "custom." + field, false);
    }

    private Optional<String> text(JsonNode object, String field, String place, boolean mayBeNumber) {
        JsonNode value = object.path(field);
        if (value.isMissingNode()) {
            return Optional.empty();
        }
        if (value.isTextual() || (mayBeNumber && value.isNumber())) {
            return Optional.of(value.asText());
        }
        faults.add(place + " is not text; write it in double quotes, or leave it out if it is not known");
        return Optional.empty();
    }

    private void refuseWordsOutside(JsonNode object, Set<String> vocabulary, String what, String ofWhat) {
        object.fieldNames().forEachRemaining(field -> {
            if (vocabulary.contains(field)) {
                return;
            }
            faults.add(what + " \"" + OneLine.of(field) + "\" is not one " + ofWhat
                    + "; put it under custom or leave it out");
        });
    }
}

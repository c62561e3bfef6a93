package org.scalepan.ask.claim;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.scalepan.factors.Library;
import org.scalepan.input.Suggestion;
import org.scalepan.input.Suggestion.SuggestionKind;

/** The readings of a text that makes several claims, or leaves a word to be chosen: each is a question of its own. */
final class ClaimParts {
    private static final int MOST = 5;
    private static final Pattern END =
            Pattern.compile("[.;!?]\\s+|,\\s+(?:and|but)\\s+|\\s+(?:and|but)\\s+(?=they\\b|need|emit|use|have)");
    private static final Pattern THEY = Pattern.compile("^they\\b", Pattern.CASE_INSENSITIVE);
    /** A part without a subject of its own speaks of that of the part before. */
    private static final Pattern OF_THE_SAME =
            Pattern.compile("^(they|need|emit|use|have|contain)\\b", Pattern.CASE_INSENSITIVE);

    private ClaimParts() {}

    /** The parts of a text that can be checked by themselves; none where it has one part only. */
    static List<Suggestion> readings(Library library, String text) {
        List<String> parts = END.splitAsStream(text.strip())
                .map(String::strip)
                .filter(part -> !part.isEmpty())
                .limit(MOST)
                .toList();
        if (parts.size() < 2) {
            return List.of();
        }
        List<Suggestion> found = new ArrayList<>();
        String subject = "";
        for (String part : parts) {
            boolean ofTheSame = !subject.isEmpty() && OF_THE_SAME.matcher(part).find();
            ParsedClaim read = ClaimSentenceParser.one(
                    library, ofTheSame ? subject + " " + THEY.matcher(part).replaceFirst("") : part);
            subject = read.fields()
                    .getOrDefault("product", subject)
                    .replace('-', ' ')
                    .replace(':', ' ');
            if (read.faults().isEmpty()) {
                found.add(Suggestion.of(
                        SuggestionKind.READING, "The part \"" + part + "\" by itself.", address(read.fields())));
            }
        }
        return found;
    }

    /** One claim for each of several things that a sentence claims at once. */
    static List<Suggestion> ofEach(Map<String, String> fields, List<String> indicators) {
        return indicators.stream()
                .distinct()
                .map(indicator -> {
                    Map<String, String> whole = new LinkedHashMap<>(fields);
                    whole.put("indicator", indicator);
                    return Suggestion.of(
                            SuggestionKind.READING, "The claim of " + indicator + " by itself.", address(whole));
                })
                .toList();
    }

    /** What a claim without a reference may be compared with. */
    static List<Suggestion> comparedWith(Map<String, String> fields) {
        List<Suggestion> found = new ArrayList<>();
        // Plants are fed nothing.
        List<String> references = "feed".equals(fields.get("indicator"))
                ? List.of("beef", "pork", "chicken")
                : List.of("beef", "chicken", "pulses");
        for (String reference : references) {
            Map<String, String> whole = new LinkedHashMap<>(fields);
            whole.put("reference", reference);
            found.add(Suggestion.of(SuggestionKind.READING, "Read as: less than " + reference + ".", address(whole)));
        }
        return found;
    }

    /** Fields of a question as a relative address; ids and numbers need no escapes. */
    static String address(Map<String, String> fields) {
        return "/v1/claim?"
                + fields.entrySet().stream()
                        .map(field -> field.getKey() + "=" + field.getValue())
                        .collect(Collectors.joining("&"));
    }
}

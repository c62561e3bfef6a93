package org.scalepan.ask.claim;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.factors.Library;
import org.scalepan.input.Suggestion;
import org.scalepan.input.Suggestion.SuggestionKind;

/** The claims of a text that makes several, or leaves a word to be chosen: each is a question of its own. */
public final class ClaimParts {
    /** More claims than anybody makes in a breath; what comes after them is read as one. */
    private static final int MOST = 6;

    private static final String VERB =
            "need|needs|emit|emits|use|uses|have|has|take|takes|cause|causes|produce|produces|contain|contains";
    private static final Pattern END = Pattern.compile("[.;!?]\\s+|,\\s+(?:and|but)\\s+|\\s+(?:and|but)\\s+(?=(?:they|"
            + VERB + ")\\b|[0-9.]+ ?(?:%|percent|per cent|times)|(?:half|twice) )");
    private static final Pattern THEY = Pattern.compile("^they\\b", Pattern.CASE_INSENSITIVE);
    /** A part without a subject of its own speaks of that of the part before. */
    private static final Pattern OF_THE_SAME =
            Pattern.compile("^(they\\b|(" + VERB + ")\\b|[0-9.]+|half\\b|twice\\b)", Pattern.CASE_INSENSITIVE);

    private ClaimParts() {}

    /** The claims of a text, each read by itself; none where there is only one, or none that is understood. */
    public static List<ClaimPart> of(Library library, String text) {
        List<String> texts = split(FrenchSentence.english(text).orElse(text));
        Optional<String> reference = texts.stream()
                .flatMap(part -> reference(ClaimSentenceParser.one(library, part)).stream())
                .reduce((first, last) -> last);
        List<ClaimPart> found = new ArrayList<>();
        String subject = "";
        for (String part : texts) {
            String whole = OF_THE_SAME.matcher(part).find() && !subject.isEmpty()
                    ? subject + " " + THEY.matcher(part).replaceFirst("").strip()
                    : part;
            ClaimPart first = new ClaimPart(whole, ClaimSentenceParser.one(library, whole));
            List<ClaimPart> read = read(library, whole, reference);
            subject = first.read()
                    .fields()
                    .getOrDefault("product", subject)
                    .replace('-', ' ')
                    .replace(':', ' ');
            found.addAll(read);
        }
        List<ClaimPart> claims = atMost(found);
        return claims.size() > 1 && claims.stream().anyMatch(part -> part.read().isUnderstood()) ? claims : List.of();
    }

    /** Of more claims than are read the rest is one that is refused, with each of its claims to be asked by itself. */
    private static List<ClaimPart> atMost(List<ClaimPart> found) {
        if (found.size() <= MOST) {
            return found;
        }
        List<ClaimPart> claims = new ArrayList<>(found.subList(0, MOST - 1));
        List<ClaimPart> rest = found.subList(MOST - 1, found.size());
        claims.add(new ClaimPart(
                rest.stream().map(ClaimPart::words).distinct().collect(Collectors.joining(" ")),
                new ParsedClaim(
                        Map.of(),
                        List.of(),
                        List.of(new ParsedClaim.NotUnderstood(
                                "a text is read for at most " + MOST + " claims; ask the rest by itself", List.of())),
                        rest.stream().flatMap(part -> alone(part).stream()).toList())));
        return claims;
    }

    private static Optional<Suggestion> alone(ClaimPart part) {
        return Optional.of(part)
                .filter(one -> one.read().isUnderstood())
                .map(one -> Suggestion.of(
                        SuggestionKind.READING,
                        "The part \"" + one.words() + "\" by itself.",
                        address(one.read().fields())));
    }

    private static List<String> split(String text) {
        return Stream.of(END.split(text.strip(), MOST))
                .map(String::strip)
                .filter(part -> !part.isEmpty())
                .toList();
    }

    /** The claims of one part; where it does not say what it compares with, what another part says. */
    private static List<ClaimPart> read(Library library, String part, Optional<String> reference) {
        List<ClaimPart> alone = each(library, part);
        if (alone.get(0).read().isUnderstood() || reference.isEmpty()) {
            return alone;
        }
        List<ClaimPart> compared = each(library, part.replaceFirst("[.;!?]$", "") + " than " + reference.get());
        return compared.get(0).read().isUnderstood() ? compared : alone;
    }

    private static List<ClaimPart> each(Library library, String part) {
        return ClaimSentenceParser.each(library, part).stream()
                .map(read -> new ClaimPart(part, read))
                .toList();
    }

    private static Optional<String> reference(ParsedClaim read) {
        return Optional.ofNullable(read.fields().get("reference"))
                .map(id -> id.replace('-', ' ').replace(':', ' '));
    }

    /** The parts of a text that can be checked by themselves; none where it has one part only. */
    static List<Suggestion> readings(Library library, String text) {
        return of(library, text).stream().flatMap(part -> alone(part).stream()).toList();
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

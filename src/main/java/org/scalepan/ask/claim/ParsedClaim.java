package org.scalepan.ask.claim;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.scalepan.input.Suggestion;

/**
 * What was understood of a sentence that claims something, by {@link ClaimSentenceParser}.
 *
 * @param fields what was understood, as the fields of a question: {@code product}, {@code reference}, {@code indicator},
 *     {@code times_less}, {@code percent_less}, {@code none}, {@code per}, {@code boundary}
 * @param parts which words were read as what
 * @param faults what was not understood, in sentences; then the fields must not be used
 * @param suggestions what to ask instead where it is refused, the nearest first; at least one
 */
public record ParsedClaim(
        Map<String, String> fields, List<Understood> parts, List<NotUnderstood> faults, List<Suggestion> suggestions) {
    public ParsedClaim {
        fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
        parts = List.copyOf(parts);
        faults = List.copyOf(faults);
        suggestions = List.copyOf(suggestions);
    }

    /** One of the claims of the sentence, where nothing but their number was unclear. */
    ParsedClaim understoodAs(Map<String, String> claim) {
        return new ParsedClaim(claim, parts, List.of(), List.of());
    }

    /** True when every word was understood. */
    public boolean isUnderstood() {
        return faults.isEmpty();
    }

    /** The same with other suggestions before its own. */
    ParsedClaim suggestingFirst(List<Suggestion> first) {
        return new ParsedClaim(
                fields,
                parts,
                faults,
                Stream.concat(first.stream(), suggestions.stream()).distinct().toList());
    }

    /** Some words and what they were read as, such as {@code times_less=100}. */
    public record Understood(String words, String readAs) {}

    /**
     * Something that was not understood.
     *
     * @param didYouMean what could be said instead
     */
    public record NotUnderstood(String message, List<String> didYouMean) {
        public NotUnderstood {
            didYouMean = List.copyOf(didYouMean);
        }
    }
}

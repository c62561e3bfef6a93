package org.scalepan.input;

import java.util.Optional;

/**
 * A question that can be asked in place of one that was refused.
 *
 * @param kind circulating-claim, question, reading or list
 * @param text what it answers, in a sentence
 * @param question a relative address that answers a GET as it stands
 * @param posting a question by POST that answers as it stands, to be changed to one's own numbers
 */
public record Suggestion(SuggestionKind kind, String text, String question, Optional<Posting> posting) {

    /** What a suggestion is. */
    public enum SuggestionKind {
        /** A claim in circulation that says the same or nearly so, with what its literature says of it. */
        CIRCULATING_CLAIM("circulating-claim"),
        /** A question to which the sentence leads. */
        QUESTION("question"),
        /** One way to read the sentence, to be accepted or changed. */
        READING("reading"),
        /** A list of what there is to ask about. */
        LIST("list");

        private final String id;

        SuggestionKind(String id) {
            this.id = id;
        }

        public String id() {
            return id;
        }
    }

    /**
     * A body and where to send it.
     *
     * @param body JSON
     */
    public record Posting(String route, String body) {}

    public static Suggestion of(SuggestionKind kind, String text, String question) {
        return new Suggestion(kind, text, question, Optional.empty());
    }

    /** The same with a body to send. */
    public Suggestion posting(String route, String body) {
        return new Suggestion(kind, text, question, Optional.of(new Posting(route, body)));
    }
}

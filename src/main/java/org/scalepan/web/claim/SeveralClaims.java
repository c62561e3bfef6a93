package org.scalepan.web.claim;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scalepan.exchange.text.FieldErrorJson;
import org.scalepan.factors.Library;
import org.scalepan.input.FieldError;
import org.scalepan.input.Suggestion;
import org.scalepan.web.render.Block;
import org.scalepan.web.render.Document;
import org.scalepan.web.render.Envelope;
import org.scalepan.web.render.Permalink;
import org.scalepan.web.render.ProblemView;

/** The claims of a text, checked one by one. There is no verdict of all: each stands for itself. */
record SeveralClaims(Library library, List<PartOfText> parts) {
    SeveralClaims {
        parts = List.copyOf(parts);
    }

    /**
     * One claim: checked, or why it was not.
     *
     * @param words the part of the text
     * @param errors what was not understood, where it was not checked
     * @param suggestions what to ask instead
     */
    record PartOfText(
            String words, Optional<CheckedClaim> checked, List<FieldError> errors, List<Suggestion> suggestions) {
        PartOfText {
            errors = List.copyOf(errors);
            suggestions = List.copyOf(suggestions);
        }
    }

    ObjectNode tree(Map<String, Object> question, String path) {
        ObjectNode node = Envelope.open(library, path, question);
        ArrayNode claims = node.putArray("claims");
        parts.forEach(part -> {
            ObjectNode one = claims.addObject().put("words", part.words());
            part.checked().ifPresentOrElse(checked -> one.set("answer", checked.tree()), () -> {
                one.set("errors", FieldErrorJson.of(part.errors()));
                one.set("suggestions", ProblemView.suggestions(part.suggestions()));
            });
        });
        return node;
    }

    Document document(Map<String, Object> question, String path) {
        Document.Builder document = new Document.Builder()
                .paragraph("The text makes " + parts.size() + " claims. Each was checked for itself.");
        parts.forEach(part -> {
            document.heading("\"" + part.words() + "\"");
            part.checked()
                    .ifPresentOrElse(checked -> checked.document().blocks().forEach(document::add), () -> {
                        document.labelled("Verdict", "not checked");
                        document.add(messages(part));
                        document.listed(
                                "What to ask instead",
                                part.suggestions().stream()
                                        .map(one -> one.text() + " " + one.question())
                                        .toList());
                    });
        });
        return document.link(Permalink.of(library, path, question)).untitled();
    }

    private static Block messages(PartOfText part) {
        List<String> messages = new ArrayList<>();
        part.errors().forEach(error -> messages.add(error.message()));
        return new Document.Builder().bullets(messages).untitled().blocks().get(0);
    }
}

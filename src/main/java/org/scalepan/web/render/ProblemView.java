package org.scalepan.web.render;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.scalepan.input.FieldError;
import org.scalepan.input.Suggestion;
import org.scalepan.web.http.Problem;

/** Renders a problem as {@code application/problem+json} (RFC 9457). */
public final class ProblemView {
    public static final String MEDIA_TYPE = "application/problem+json";

    private ProblemView() {}

    public static String json(Problem problem) {
        ObjectNode node = Json.object();
        node.put("type", problem.type());
        node.put("title", problem.title());
        node.put("status", problem.status());
        node.put("detail", problem.detail());
        if (!problem.errors().isEmpty()) {
            node.set("errors", errors(problem.errors()));
        }
        if (!problem.suggestions().isEmpty()) {
            node.set("suggestions", suggestions(problem.suggestions()));
        }
        return Json.write(node);
    }

    /** Questions to ask instead. */
    public static ArrayNode suggestions(List<Suggestion> suggestions) {
        ArrayNode array = Json.array();
        for (Suggestion suggestion : suggestions) {
            ObjectNode one = array.addObject();
            one.put("kind", suggestion.kind().id());
            one.put("text", suggestion.text());
            one.put("question", suggestion.question());
            suggestion
                    .posting()
                    .ifPresent(posting ->
                            one.putObject("post").put("route", posting.route()).put("body", posting.body()));
        }
        return array;
    }

    public static ArrayNode errors(List<FieldError> errors) {
        ArrayNode array = Json.array();
        for (FieldError error : errors) {
            ObjectNode one = array.addObject();
            Json.put(one, "parameter", error.parameter());
            Json.put(one, "pointer", error.pointer());
            one.put("message", error.message());
            if (!error.allowed().isEmpty()) {
                one.set("allowed", Json.texts(error.allowed()));
            }
            if (!error.didYouMean().isEmpty()) {
                one.set("did_you_mean", Json.texts(error.didYouMean()));
            }
        }
        return array;
    }
}

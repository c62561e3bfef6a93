package org.scalepan.web.render;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.scalepan.exchange.text.FieldErrorJson;
import org.scalepan.exchange.text.Json;
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
            node.set("errors", FieldErrorJson.of(problem.errors()));
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
}

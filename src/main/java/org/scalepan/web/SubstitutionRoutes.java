package org.scalepan.web;

import java.util.List;
import org.scalepan.ask.Substitution;
import org.scalepan.ask.SubstitutionQuestion;
import org.scalepan.factors.Library;

/**
 * What a programme avoids a year, or adds: {@code POST /v1/substitution}. Nothing that is sent is stored or logged.
 */
final class SubstitutionRoutes {
    private static final List<Format> FORMATS = List.of(Format.JSON, Format.MARKDOWN);

    private final Library library;

    SubstitutionRoutes(Library library) {
        this.library = library;
    }

    List<Route> routes() {
        return List.of(Route.post("/v1/substitution", List.of("format"), this::substitution)
                .computing());
    }

    private Answer substitution(Request request) {
        Format format = request.format(FORMATS);
        request.parameters().refuseIfWrong();
        Input body = Input.body(request.sent().json());
        SubstitutionQuestion question = new SubstitutionReading(library, body).question();
        Substitution substitution = Substitution.of(library, question);
        return format == Format.MARKDOWN
                ? MarkdownRenderer.answer(new SubstitutionDocument(library, substitution).document())
                : Answer.of(Answer.JSON, new SubstitutionView(library, substitution).json(body.resolved()));
    }
}

package org.scalepan.web.programme;

import java.util.List;
import org.scalepan.ask.programme.Substitution;
import org.scalepan.ask.programme.SubstitutionQuestion;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Library;
import org.scalepan.input.Input;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.InputProblem;
import org.scalepan.web.render.MarkdownRenderer;
import org.scalepan.web.route.Format;
import org.scalepan.web.route.Request;
import org.scalepan.web.route.Route;
import org.scalepan.words.Language;

/**
 * Emissions or resources that a programme avoids or adds per year: {@code POST /v1/substitution}. Nothing that is sent is stored or
 * logged.
 */
public final class SubstitutionRoutes {
    private static final List<Format> FORMATS = List.of(Format.JSON, Format.MARKDOWN, Format.XLSX);

    private final Library library;

    public SubstitutionRoutes(Library library) {
        this.library = library;
    }

    public List<Route> routes() {
        return List.of(Route.post("/v1/substitution", List.of("format"), this::substitution)
                .computing()
                .speaking());
    }

    private Answer substitution(Request request) {
        Format format = request.format(FORMATS);
        Language language = request.language();
        InputProblem.refuseIfWrong(request.parameters());
        Input body = Input.body(request.sent().json());
        SubstitutionQuestion question = new SubstitutionReading(library, body).question();
        Substitution substitution = Substitution.of(library, question);
        return switch (format) {
            case MARKDOWN ->
                MarkdownRenderer.answer(new SubstitutionDocument(library, substitution).document())
                        .in(Language.ENGLISH);
            case XLSX ->
                SubstitutionWorkbook.of(new SubstitutionView(library, substitution, language).tree(body.resolved()))
                        .in(language);
            default ->
                Answer.of(
                                Answer.JSON,
                                Json.write(new SubstitutionView(library, substitution, language).tree(body.resolved())))
                        .in(language);
        };
    }
}

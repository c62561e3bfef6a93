package org.scalepan.web.library;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.scalepan.cite.BibTex;
import org.scalepan.cite.CslJson;
import org.scalepan.cite.PlainText;
import org.scalepan.cite.Reference;
import org.scalepan.cite.Ris;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Library;
import org.scalepan.factors.Nearest;
import org.scalepan.factors.loading.LibraryFolder;
import org.scalepan.input.FieldError;
import org.scalepan.input.Input;
import org.scalepan.sheet.FixedZip;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.InputProblem;
import org.scalepan.web.http.Limits;
import org.scalepan.web.http.Problem;
import org.scalepan.web.http.ProblemException;
import org.scalepan.web.render.Envelope;
import org.scalepan.web.route.Format;
import org.scalepan.web.route.Request;
import org.scalepan.web.route.Route;

/** References: all, some or one, in the formats of reference managers; and the whole library as a download. */
public final class SourceRoutes {
    private static final List<Format> FORMATS =
            List.of(Format.JSON, Format.BIBTEX, Format.RIS, Format.CSL, Format.TEXT);

    private final Library library;
    private Optional<Answer> folder = Optional.empty();

    public SourceRoutes(Library library) {
        this.library = library;
    }

    public List<Route> routes() {
        return List.of(
                Route.of("/v1/library.zip", List.of(), request -> folder()),
                Route.of("/v1/sources", List.of("ids", "format"), this::sources),
                Route.of("/v1/sources/{id}", List.of("format"), this::source));
    }

    /** The factors folder as loaded. It never changes, so it is built once, at the first request. */
    private synchronized Answer folder() {
        if (folder.isEmpty()) {
            FixedZip zip = new FixedZip();
            LibraryFolder.of(library).forEach(zip::with);
            folder = Optional.of(new Answer("application/zip", zip.bytes())
                    .named("scalepan-library-" + library.version().digest() + ".zip"));
        }
        return folder.get();
    }

    private Answer sources(Request request) {
        Input parameters = request.parameters();
        Format format = request.format(FORMATS);
        List<String> ids = parameters.someOf("ids", library.references().keySet(), List.of(), Limits.SOURCES_TO_CITE);
        InputProblem.refuseIfWrong(parameters);
        List<Reference> references = library.references().values().stream()
                .filter(reference -> ids.isEmpty() || ids.contains(reference.id()))
                .toList();
        return answer(request, format, references);
    }

    private Answer source(Request request) {
        Format format = request.format(FORMATS);
        InputProblem.refuseIfWrong(request.parameters());
        String id = request.variable("id");
        Reference reference = library.references().get(id);
        if (reference == null) {
            throw new ProblemException(Problem.notFound(
                    "no source has the id given",
                    List.of(FieldError.of(
                            "id",
                            "unknown source",
                            List.of(),
                            Nearest.to(id, library.references().keySet(), 3)))));
        }
        return answer(request, format, List.of(reference));
    }

    private Answer answer(Request request, Format format, List<Reference> references) {
        return switch (format) {
            case BIBTEX -> Answer.of(Format.BIBTEX.mediaType() + "; charset=utf-8", BibTex.write(references));
            case RIS -> Answer.of(Format.RIS.mediaType() + "; charset=utf-8", Ris.write(references));
            case CSL -> Answer.of(Format.CSL.mediaType(), Json.write(CslJson.write(references)));
            case TEXT -> Answer.of(Answer.TEXT, PlainText.write(references));
            default -> {
                ObjectNode node = Envelope.open(
                        library, request.path(), request.parameters().resolved());
                ArrayNode items = node.putArray("items");
                references.forEach(reference -> items.add(json(reference)));
                Envelope.close(node);
                yield Answer.of(Answer.JSON, Json.write(node));
            }
        };
    }

    /** A reference as this API shows it: its CSL-JSON fields, how it was seen, and ready to paste. */
    static ObjectNode json(Reference reference) {
        ObjectNode node = Json.object();
        node.put("id", reference.id());
        node.put("label", reference.label());
        node.put("text", PlainText.of(reference));
        node.put("check", reference.check());
        Json.put(node, "doi", reference.doi());
        if (!reference.missing().isEmpty()) {
            node.set("not_known", Json.texts(reference.missing()));
        }
        JsonNode csl = CslJson.write(List.of(reference)).path(0);
        node.set("csl", csl);
        return node;
    }
}

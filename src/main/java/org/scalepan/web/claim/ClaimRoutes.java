package org.scalepan.web.claim;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scalepan.ask.Side;
import org.scalepan.ask.claim.ClaimChecks;
import org.scalepan.ask.claim.ClaimPlan;
import org.scalepan.ask.claim.ParsedClaim;
import org.scalepan.ask.claim.Subject;
import org.scalepan.ask.contents.ContentChecks;
import org.scalepan.ask.contents.ContentQuestion;
import org.scalepan.ask.nutrition.Basis;
import org.scalepan.exchange.read.ComparisonBasisReading;
import org.scalepan.exchange.read.SideReading;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Library;
import org.scalepan.input.Input;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.InputProblem;
import org.scalepan.web.render.MarkdownRenderer;
import org.scalepan.web.render.Permalink;
import org.scalepan.web.route.Format;
import org.scalepan.web.route.Request;
import org.scalepan.web.route.Route;
import org.scalepan.words.Language;

/** Claims checked: {@code GET /v1/claim} for published products, {@code POST /v1/claim} where a side is a farm or herd. */
public final class ClaimRoutes {
    private static final List<Format> FORMATS = List.of(Format.JSON, Format.MARKDOWN, Format.XLSX);

    private final Library library;

    public ClaimRoutes(Library library) {
        this.library = library;
    }

    public List<Route> routes() {
        List<String> parameters = new ArrayList<>(ComparisonBasisReading.with(
                "product", "reference", "text", "indicator", "times_less", "percent_less", "none", "format"));
        parameters.addAll(ContentClaimReading.PARAMETERS);
        return List.of(
                Route.of("/v1/claim", parameters, this::published).computing().speaking(),
                Route.post("/v1/claim", List.of("format"), this::recorded)
                        .computing()
                        .speaking());
    }

    private Answer published(Request request) {
        Input parameters = request.parameters();
        Format format = request.format(FORMATS);
        Language language = spoken(request, format);
        ClaimReading reading = new ClaimReading(library, parameters);
        Optional<ParsedClaim> sentence = reading.sentence(parameters.raw("text"), reading.givenSides());
        // If the sentence could not be parsed, only that is reported: errors about fields it did not give would only
        // confuse.
        InputProblem.refuseIfWrong(
                parameters, sentence.map(ParsedClaim::suggestions).orElse(List.of()));
        if (parameters.raw(ContentClaimReading.CONTENT).isPresent()) {
            return contents(request, format, sentence, reading.subject(), language);
        }
        if (parameters.raw("basis").isPresent()) {
            parameters.oneOf("basis", Basis.ids(), Basis.HUNDRED_GRAMS_EDIBLE.id());
        }
        ContentClaimReading.PARAMETERS.stream()
                .filter(name -> parameters.raw(name).isPresent())
                .forEach(name ->
                        parameters.fault(name, name + " belongs to claims of contents; say which with content"));
        Optional<ClaimPlan> plan = reading.plan(reading.subject(), reading.reference(), reading.claimed());
        InputProblem.refuseIfWrong(
                parameters, sentence.map(ParsedClaim::suggestions).orElse(List.of()));
        ClaimChecks checks = plan.orElseThrow().check(language);
        Map<String, Object> resolved = parameters.resolved();
        return answer(format, checks, sentence, resolved, Optional.of(request.path()));
    }

    /** What foods contain is no footprint: it is checked by the range of published samples. */
    private Answer contents(
            Request request,
            Format format,
            Optional<ParsedClaim> sentence,
            Optional<Subject> subject,
            Language language) {
        Input parameters = request.parameters();
        Optional<ContentQuestion> question = new ContentClaimReading(library, parameters).question(subject);
        InputProblem.refuseIfWrong(
                parameters, sentence.map(ParsedClaim::suggestions).orElse(List.of()));
        ContentChecks checks = ContentChecks.of(library, question.orElseThrow(), language);
        Map<String, Object> resolved = parameters.resolved();
        if (format == Format.MARKDOWN) {
            return MarkdownRenderer.answer(
                            new ContentClaimDocument(checks).document(Permalink.of(library, request.path(), resolved)))
                    .in(language);
        }
        ObjectNode tree = new ContentClaimJson(library, checks, sentence).tree(resolved, request.path());
        return (format == Format.XLSX ? ClaimWorkbook.of(tree) : Answer.of(Answer.JSON, Json.write(tree))).in(language);
    }

    private Answer recorded(Request request) {
        Format format = request.format(FORMATS);
        Language language = spoken(request, format);
        InputProblem.refuseIfWrong(request.parameters());
        Input body = Input.body(request.sent().json());
        Optional<String> text = body.text("text");
        boolean ownProduct = body.has("product") || body.has("system");
        boolean ownReference = body.has("reference") || body.has("reference_system");
        SideReading sides = new SideReading(library, SideReading.credit(body));
        ComparisonBasisReading.of(library, body, body.has("system") || body.has("reference_system"))
                .inBody(ClaimReading.CLAIM);
        ClaimReading reading = new ClaimReading(library, body);
        List<String> own = new ArrayList<>();
        if (ownProduct) {
            own.add(ClaimReading.PRODUCT);
        }
        if (ownReference) {
            own.add(ClaimReading.REFERENCE);
        }
        Optional<ParsedClaim> sentence = reading.sentence(text, own);
        if (sentence.filter(read -> read.faults().isEmpty() && read.fields().containsKey(ContentClaimReading.CONTENT))
                .isPresent()) {
            body.fault(
                    ClaimReading.TEXT,
                    "records say nothing of what a food contains; ask GET /v1/claim with the same text and a product");
        }
        Optional<Subject> subject = Optional.empty();
        Optional<Side> reference = Optional.empty();
        boolean unread = sentence.filter(read -> !read.faults().isEmpty()).isPresent();
        if (ownProduct || !unread) {
            subject = ownProduct || sentence.isEmpty() ? subject(body, sides) : reading.subject();
        }
        boolean none = body.raw("none").isPresent();
        if (ownReference || (!unread && !none && sentence.isEmpty())) {
            reference = sides.one(body, "reference", "reference_system");
        } else if (!unread && sentence.isPresent()) {
            reference = reading.reference();
        }
        Optional<ClaimPlan> plan = reading.plan(subject, reference, unread ? Optional.empty() : reading.claimed());
        body.close();
        InputProblem.refuseIfWrong(body, sentence.map(ParsedClaim::suggestions).orElse(List.of()));
        ClaimChecks checks = plan.orElseThrow().check(language);
        Map<String, Object> resolved = new LinkedHashMap<>();
        resolved.put("product", checks.question().subject().words());
        checks.question().reference().ifPresent(side -> resolved.put("reference", side.written()));
        body.resolved().forEach(resolved::putIfAbsent);
        return answer(format, checks, sentence, resolved, Optional.empty());
    }

    private Answer answer(
            Format format,
            ClaimChecks checks,
            Optional<ParsedClaim> sentence,
            Map<String, Object> resolved,
            Optional<String> path) {
        if (format == Format.MARKDOWN) {
            return MarkdownRenderer.answer(
                            new ClaimDocument(checks).document(path.map(at -> Permalink.of(library, at, resolved))))
                    .in(checks.language());
        }
        ObjectNode tree = new ClaimJson(library, checks, sentence).tree(resolved, path);
        return (format == Format.XLSX ? ClaimWorkbook.of(tree) : Answer.of(Answer.JSON, Json.write(tree)))
                .in(checks.language());
    }

    /** Documents and workbooks are in English, whatever is asked. */
    private static Language spoken(Request request, Format format) {
        Language language = request.language();
        return format == Format.MARKDOWN || format == Format.XLSX ? Language.ENGLISH : language;
    }

    private Optional<Subject> subject(Input body, SideReading sides) {
        if (!body.has("system")
                && body.text("product").filter(Subject.INSECTS::equals).isPresent()) {
            return Optional.of(Subject.insects(library));
        }
        return sides.one(body, "product", "system").map(Subject::of);
    }
}

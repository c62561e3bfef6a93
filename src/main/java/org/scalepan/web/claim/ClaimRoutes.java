package org.scalepan.web.claim;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.ask.Side;
import org.scalepan.ask.claim.ClaimChecks;
import org.scalepan.ask.claim.ClaimPart;
import org.scalepan.ask.claim.ClaimParts;
import org.scalepan.ask.claim.ClaimPlan;
import org.scalepan.ask.claim.ClaimSentenceParser;
import org.scalepan.ask.claim.ParsedClaim;
import org.scalepan.ask.claim.Subject;
import org.scalepan.ask.contents.ContentChecks;
import org.scalepan.ask.nutrition.Basis;
import org.scalepan.exchange.read.ComparisonBasisReading;
import org.scalepan.exchange.read.SideReading;
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

/** Claims checked: {@code GET /v1/claim} for published products, {@code POST /v1/claim} where a side is a farm or herd. */
public final class ClaimRoutes {
    private static final List<Format> FORMATS = List.of(Format.JSON, Format.MARKDOWN, Format.XLSX);

    /** What a text that makes several claims may be asked with; it holds for each of them. */
    private static final List<String> SHARED = Stream.concat(
                    ComparisonBasisReading.with(ClaimReading.PRODUCT, ClaimReading.REFERENCE).stream(),
                    Stream.of("basis"))
            .toList();

    /** What each claim of a text says for itself. */
    private static final List<String> OF_ONE_CLAIM = Stream.concat(
                    Stream.of(ClaimReading.CLAIM),
                    ContentClaimReading.PARAMETERS.stream().filter(name -> !SHARED.contains(name)))
            .toList();

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
        Optional<ParsedClaim> sentence =
                parameters.raw(ClaimReading.TEXT).map(text -> ClaimSentenceParser.parse(library, text));
        if (sentence.isPresent() && !sentence.get().isUnderstood()) {
            List<ClaimPart> parts =
                    ClaimParts.of(library, parameters.raw(ClaimReading.TEXT).orElse(""));
            if (!parts.isEmpty()) {
                return several(request, format, language, parts);
            }
        }
        Optional<CheckedClaim> checked = checked(parameters, sentence, language, request.path());
        InputProblem.refuseIfWrong(
                parameters, sentence.map(ParsedClaim::suggestions).orElse(List.of()));
        return answer(format, checked.orElseThrow(), language);
    }

    /** The claim of a question; empty after an error. */
    private Optional<CheckedClaim> checked(
            Input parameters, Optional<ParsedClaim> sentence, Language language, String path) {
        ClaimReading reading = new ClaimReading(library, parameters);
        sentence.ifPresent(read -> reading.take(read, reading.givenSides()));
        // If the sentence could not be parsed, only that is reported: errors about fields it did not give would only
        // confuse.
        if (!parameters.faults().isEmpty()) {
            return Optional.empty();
        }
        if (parameters.raw(ContentClaimReading.CONTENT).isPresent()) {
            // What foods contain is no footprint: it is checked by the range of published samples.
            return new ContentClaimReading(library, parameters)
                    .question(reading.subject())
                    .map(question -> new CheckedClaim.OfContents(
                            library,
                            ContentChecks.of(library, question, language),
                            sentence,
                            parameters.resolved(),
                            path));
        }
        if (parameters.raw("basis").isPresent()) {
            parameters.oneOf("basis", Basis.ids(), Basis.HUNDRED_GRAMS_EDIBLE.id());
        }
        ContentClaimReading.PARAMETERS.stream()
                .filter(name -> parameters.raw(name).isPresent())
                .forEach(name ->
                        parameters.fault(name, name + " belongs to claims of contents; say which with content"));
        Optional<ClaimPlan> plan = reading.plan(reading.subject(), reading.reference(), reading.claimed());
        return parameters.faults().isEmpty()
                ? plan.map(whole -> new CheckedClaim.OfProduction(
                        library, whole.check(language), sentence, parameters.resolved(), Optional.of(path)))
                : Optional.empty();
    }

    /** Each claim of the text for itself, on the basis that is asked for all. */
    private Answer several(Request request, Format format, Language language, List<ClaimPart> parts) {
        Input parameters = request.parameters();
        Map<String, String> shared = new LinkedHashMap<>();
        SHARED.forEach(name -> parameters.raw(name).ifPresent(given -> shared.put(name, given)));
        OF_ONE_CLAIM.stream()
                .filter(name -> parameters.raw(name).isPresent())
                .forEach(name ->
                        parameters.fault(name, "text makes several claims, each with its own; leave " + name + " out"));
        InputProblem.refuseIfWrong(parameters);
        List<SeveralClaims.PartOfText> found = new ArrayList<>();
        for (ClaimPart part : parts) {
            Map<String, String> ofThis = new LinkedHashMap<>(shared);
            ofThis.keySet()
                    .removeAll(
                            part.read().fields().containsKey(ContentClaimReading.CONTENT)
                                    ? ContentClaimReading.OF_FOOTPRINTS
                                    : ContentClaimReading.PARAMETERS);
            Input own = Input.query(ofThis);
            Optional<CheckedClaim> checked = checked(own, Optional.of(part.read()), language, request.path());
            // What is wrong with the basis is wrong with the whole question.
            own.faults()
                    .forEach(error -> error.parameter().filter(SHARED::contains).ifPresent(name -> {
                        if (error.beyond()) {
                            parameters.tooMuch(name, error.message());
                        } else {
                            parameters.fault(name, error.message(), error.allowed());
                        }
                    }));
            found.add(new SeveralClaims.PartOfText(
                    part.words(), checked, own.faults(), part.read().suggestions()));
        }
        InputProblem.refuseIfWrong(parameters);
        Map<String, Object> resolved = new LinkedHashMap<>();
        resolved.put(ClaimReading.TEXT, parameters.raw(ClaimReading.TEXT).orElse(""));
        resolved.putAll(shared);
        resolved.putAll(parameters.resolved());
        SeveralClaims claims = new SeveralClaims(library, found);
        if (format == Format.MARKDOWN) {
            return MarkdownRenderer.answer(claims.document(resolved, request.path()))
                    .in(language);
        }
        ObjectNode tree = claims.tree(resolved, request.path());
        return (format == Format.XLSX ? ClaimWorkbook.ofSeveral(tree) : Answer.of(Answer.JSON, Json.write(tree)))
                .in(language);
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
        Optional<ParsedClaim> sentence = text.map(words -> ClaimSentenceParser.parse(library, words));
        sentence.ifPresent(read -> reading.take(read, own));
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
        return answer(
                format, new CheckedClaim.OfProduction(library, checks, sentence, resolved, Optional.empty()), language);
    }

    private static Answer answer(Format format, CheckedClaim checked, Language language) {
        if (format == Format.MARKDOWN) {
            return MarkdownRenderer.answer(checked.document()).in(language);
        }
        ObjectNode tree = checked.tree();
        return (format == Format.XLSX ? ClaimWorkbook.of(tree) : Answer.of(Answer.JSON, Json.write(tree))).in(language);
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

package org.scalepan.web.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.Estimating;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.PublishedEstimate;
import org.scalepan.ask.Ratio;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.compare.Comparison;
import org.scalepan.cite.PlainText;
import org.scalepan.cite.Reference;
import org.scalepan.factors.Indicator;
import org.scalepan.factors.Library;
import org.scalepan.literature.Evidence;
import org.scalepan.literature.PairedEvidence;
import org.scalepan.quantity.Print;
import org.scalepan.quantity.SevenDigits;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.Problem;
import org.scalepan.web.http.ProblemException;
import org.scalepan.web.read.ComparisonBasisReading;
import org.scalepan.web.read.Input;
import org.scalepan.web.read.ProductReading;
import org.scalepan.web.route.Request;
import org.scalepan.web.route.Route;

/**
 * One number for one spreadsheet cell: the digits alone, dot decimal, no unit, no line end, no byte-order mark, because a cell
 * that gets anything else shows an error.
 */
public final class CellRoutes {
    public static final String ON_ERROR = "on_error";
    private static final List<String> VALUE_STATS = List.of(
            "median",
            "mean",
            "low",
            "high",
            "studies",
            "results",
            "grade",
            "region",
            "unit",
            "text",
            "sources",
            "references");
    private static final List<String> RATIO_STATS =
            List.of("median", "mean", "low", "high", "probability", "studies", "text", "sources", "references");

    private final Library library;

    public CellRoutes(Library library) {
        this.library = library;
    }

    public List<Route> routes() {
        return List.of(
                Route.cell(
                                "/v1/value/{indicator}/{product}",
                                ComparisonBasisReading.with("stat", ON_ERROR),
                                this::value)
                        .computing(),
                Route.cell(
                                "/v1/ratio/{indicator}/{product}/{reference}",
                                ComparisonBasisReading.with("stat", ON_ERROR),
                                this::ratio)
                        .computing());
    }

    private Answer value(Request request) {
        Input parameters = request.parameters();
        CellRequest asked = read(request, VALUE_STATS);
        Optional<ProductForm> product = product(request, "product");
        parameters.refuseIfWrong();
        PublishedEstimate quote = Estimating.quote(library, product.orElseThrow(), asked.ruler, asked.sampling);
        if (asked.stat.equals("studies") || asked.stat.equals("results")) {
            return text(Integer.toString(asked.stat.equals("studies") ? quote.studies() : quote.results()));
        }
        Sentences sentences = new Sentences(asked.ruler, asked.sampling.coverage());
        if (asked.stat.equals("unit")) {
            return text(sentences.unit());
        }
        var summary = quote.summary().orElseThrow(() -> noEvidence(List.of(quote), PairedEvidence.NONE));
        return text(
                switch (asked.stat) {
                    case "text" -> sentences.quote(quote);
                    case "sources" -> labels(List.of(quote));
                    case "references" -> references(List.of(quote));
                    case "grade" -> quote.lowestGrade().orElseThrow().id();
                    case "region" -> quote.regionUsed().orElseThrow();
                    case "mean" -> SevenDigits.plain(summary.mean());
                    case "low" -> SevenDigits.plain(summary.low());
                    case "high" -> SevenDigits.plain(summary.high());
                    default -> SevenDigits.plain(summary.median());
                });
    }

    private Answer ratio(Request request) {
        Input parameters = request.parameters();
        CellRequest asked = read(request, RATIO_STATS);
        Optional<ProductForm> product = product(request, "product");
        Optional<ProductForm> reference = product(request, "reference");
        parameters.refuseIfWrong();
        Comparison comparison = Comparison.of(
                library,
                new Comparison.ComparisonQuestion(
                        List.of(product.orElseThrow()), reference.orElseThrow(), asked.ruler, asked.sampling));
        Comparison.ComparedProduct item = comparison.items().get(0);
        List<PublishedEstimate> quotes = List.of(item.quote(), comparison.reference());
        if (asked.stat.equals("studies")) {
            return text(Integer.toString(
                    Math.min(item.quote().studies(), comparison.reference().studies())));
        }
        Ratio versus = item.versus().orElseThrow(() -> noEvidence(quotes, item.paired()));
        return text(
                switch (asked.stat) {
                    case "text" ->
                        new Sentences(asked.ruler, asked.sampling.coverage())
                                .versus(item.quote(), comparison.reference(), versus);
                    case "sources" -> labels(quotes);
                    case "references" -> references(quotes);
                    case "mean" -> SevenDigits.plain(versus.timesLess().mean());
                    case "low" -> SevenDigits.plain(versus.timesLess().low());
                    case "high" -> SevenDigits.plain(versus.timesLess().high());
                    case "probability" ->
                        SevenDigits.plain(versus.less().orElseThrow().value());
                    default -> SevenDigits.plain(versus.timesLess().median());
                });
    }

    private record CellRequest(ComparisonBasis ruler, Sampling sampling, String stat) {}

    private CellRequest read(Request request, List<String> stats) {
        Input parameters = request.parameters();
        checkOnError(parameters);
        String id = Input.asListed(
                request.variable("indicator"), library.indicators().keySet());
        if (!library.indicators().containsKey(id)) {
            parameters.unknown("indicator", id, library.indicators().keySet());
            throw notFound(parameters);
        }
        ComparisonBasisReading reading = new ComparisonBasisReading(library, parameters);
        Indicator indicator = library.indicators()
                .getOrDefault(id, library.indicators().values().iterator().next());
        ComparisonBasis ruler = reading.ruler(indicator);
        return new CellRequest(ruler, reading.sampling(), parameters.oneOf("stat", stats, "median"));
    }

    /** Whoever mistypes it would otherwise learn so only from an empty cell on the day that something is refused. */
    static void checkOnError(Input parameters) {
        parameters
                .raw(ON_ERROR)
                .filter(value -> !value.equals("200"))
                .ifPresent(value -> parameters.unknown(ON_ERROR, value, List.of("200")));
    }

    private Optional<ProductForm> product(Request request, String name) {
        Optional<ProductForm> product =
                new ProductReading(library, request.parameters()).written(name, request.variable(name));
        if (product.isEmpty()) {
            throw notFound(request.parameters());
        }
        return product;
    }

    /** What the path names is not there. */
    private static ProblemException notFound(Input parameters) {
        Problem.FieldError last = parameters.faults().get(parameters.faults().size() - 1);
        return new ProblemException(Problem.notFound(last.message(), List.of(last)));
    }

    private static ProblemException noEvidence(List<PublishedEstimate> quotes, PairedEvidence paired) {
        List<String> reasons = new ArrayList<>();
        for (PublishedEstimate quote : quotes) {
            if (quote.evidence() instanceof Evidence.NoEvidence none) {
                reasons.add(none.reason());
            }
        }
        paired.ratios()
                .forEach(study -> reasons.add("one study gives the ratio itself: " + Print.ratio(study.central()) + " ("
                        + Sentences.study(study) + ")"));
        return new ProblemException(Problem.noEvidence("no evidence: " + String.join("; ", reasons)));
    }

    private String labels(List<PublishedEstimate> quotes) {
        return String.join("; ", cited(quotes).map(Reference::label).toList());
    }

    /** The references in full, on the one line that a cell has. */
    private String references(List<PublishedEstimate> quotes) {
        return String.join(" | ", cited(quotes).map(PlainText::of).toList());
    }

    private Stream<Reference> cited(List<PublishedEstimate> quotes) {
        return quotes.stream()
                .flatMap(quote -> quote.evidence().sources().stream())
                .distinct()
                .flatMap(source -> library.reference(source).stream());
    }

    private static Answer text(String text) {
        return Answer.of(Answer.TEXT, text);
    }
}

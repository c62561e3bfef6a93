package org.scalepan.web.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.Estimate;
import org.scalepan.ask.Estimating;
import org.scalepan.ask.NoRatio;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.Ratio;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.Sentences;
import org.scalepan.ask.Side;
import org.scalepan.ask.SpeakingRegion;
import org.scalepan.ask.compare.Comparison;
import org.scalepan.cite.PlainText;
import org.scalepan.cite.Reference;
import org.scalepan.exchange.read.ComparisonBasisReading;
import org.scalepan.exchange.read.ProductReading;
import org.scalepan.factors.Indicator;
import org.scalepan.factors.Library;
import org.scalepan.footprint.Bound;
import org.scalepan.input.FieldError;
import org.scalepan.input.Input;
import org.scalepan.literature.PairedEvidence;
import org.scalepan.quantity.Print;
import org.scalepan.quantity.SevenDigits;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.InputProblem;
import org.scalepan.web.http.Problem;
import org.scalepan.web.http.ProblemException;
import org.scalepan.web.route.Request;
import org.scalepan.web.route.Route;

/**
 * One number for one spreadsheet cell: the digits alone, dot decimal, no unit, no line end, no byte-order mark, because a cell
 * that gets anything else shows an error.
 */
public final class CellRoutes {
    public static final String ON_ERROR = "on_error";
    /** {@code bounds=yes} gives the number of a bound, which otherwise is no number of a cell. */
    public static final String BOUNDS = "bounds";

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
            List.of("median", "mean", "low", "high", "share_of_draws", "studies", "text", "sources", "references");

    private final Library library;

    public CellRoutes(Library library) {
        this.library = library;
    }

    public List<Route> routes() {
        return List.of(
                Route.cell(
                                "/v1/value/{indicator}/{product}",
                                ComparisonBasisReading.with("stat", BOUNDS, ON_ERROR),
                                this::value)
                        .computing(),
                Route.cell(
                                "/v1/ratio/{indicator}/{product}/{reference}",
                                ComparisonBasisReading.with("stat", BOUNDS, ON_ERROR),
                                this::ratio)
                        .computing());
    }

    private Answer value(Request request) {
        Input parameters = request.parameters();
        CellRequest asked = read(request, VALUE_STATS);
        Optional<ProductForm> product = product(request, "product");
        InputProblem.refuseIfWrong(parameters);
        Estimate estimate = Estimating.asked(library, product.orElseThrow(), asked.basis, asked.sampling);
        if (asked.stat.equals("studies") || asked.stat.equals("results")) {
            return text(Integer.toString(asked.stat.equals("studies") ? estimate.studies() : estimate.results()));
        }
        Sentences sentences = new Sentences(asked.basis, asked.sampling.coverage());
        if (asked.stat.equals("unit")) {
            return text(sentences.unit());
        }
        CellInstead instead = new CellInstead(library, request);
        var summary = estimate.summary()
                .orElseThrow(() -> instead.senseless(product.orElseThrow(), asked.basis)
                        .map(why -> new ProblemException(Problem.noEvidence(why)))
                        .orElseGet(() -> noEvidence(
                                List.of(estimate),
                                PairedEvidence.NONE,
                                instead.ofValue(product.orElseThrow(), asked.basis, asked.sampling))));
        if (isNumber(asked.stat)) {
            refuseBound(estimate.bound(), asked, Print.footprint(summary.median()), List.of(estimate));
        }
        return text(
                switch (asked.stat) {
                    case "text" ->
                        sentences.estimate(
                                        estimate,
                                        asked.basis
                                                .withOtherLandUse()
                                                .map(basis -> Estimating.asked(
                                                        library, product.orElseThrow(), basis, asked.sampling)))
                                + SpeakingRegion.sentence(library, List.of(estimate));
                    case "sources" -> labels(List.of(estimate));
                    case "references" -> references(List.of(estimate));
                    case "grade" -> estimate.lowestGrade(library).orElseThrow().id();
                    case "region" -> estimate.regionUsed().orElseThrow();
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
        new Side.PublishedSide(product.orElseThrow())
                .obstacleTo(new Side.PublishedSide(reference.orElseThrow()))
                .ifPresent(why -> parameters.fault("reference", why));
        InputProblem.refuseIfWrong(parameters);
        Comparison comparison = Comparison.of(
                library,
                new Comparison.ComparisonQuestion(
                        List.of(product.orElseThrow()), reference.orElseThrow(), asked.basis, asked.sampling));
        Comparison.ComparedProduct item = comparison.items().get(0);
        List<Estimate> estimates = List.of(item.estimate(), comparison.reference());
        if (asked.stat.equals("studies")) {
            return text(Integer.toString(
                    Math.min(item.estimate().studies(), comparison.reference().studies())));
        }
        Ratio versus = item.versus()
                .orElseThrow(() -> noEvidence(
                        estimates,
                        item.paired(),
                        new CellInstead(library, request)
                                .ofRatio(product.orElseThrow(), reference.orElseThrow(), asked.basis, asked.sampling)));
        if (asked.stat.equals("share_of_draws") && versus.less().isEmpty()) {
            throw noEvidence(estimates, PairedEvidence.NONE, List.of());
        }
        if (isNumber(asked.stat)) {
            refuseBound(versus.bound(), asked, Print.ratio(versus.timesLess().median()), estimates);
        }
        return text(
                switch (asked.stat) {
                    case "text" ->
                        new Sentences(asked.basis, asked.sampling.coverage())
                                        .versus(
                                                item.estimate(),
                                                comparison.reference(),
                                                versus,
                                                comparison.versusUnderOtherLandUse(item))
                                + SpeakingRegion.sentence(library, estimates);
                    case "sources" -> labels(estimates);
                    case "references" -> references(estimates);
                    case "mean" -> SevenDigits.plain(versus.timesLess().mean());
                    case "low" -> SevenDigits.plain(versus.timesLess().low());
                    case "high" -> SevenDigits.plain(versus.timesLess().high());
                    case "share_of_draws" ->
                        SevenDigits.plain(versus.less().orElseThrow().value());
                    default -> SevenDigits.plain(versus.timesLess().median());
                });
    }

    private static boolean isNumber(String stat) {
        return List.of("median", "mean", "low", "high").contains(stat);
    }

    /** A bound must not stand in a cell as if it were the number. */
    private static void refuseBound(Bound bound, CellRequest asked, String number, List<Estimate> estimates) {
        if (bound != Bound.EXACT && !asked.bounds) {
            throw new ProblemException(Problem.noEvidence(
                    bound.words() + number + ":" + clause(estimates) + "; bounds=yes gives the number"));
        }
    }

    /** What makes bounds of the sides, as a clause behind a colon. */
    private static String clause(List<Estimate> estimates) {
        String said =
                Sentences.bounds(estimates.stream()).replaceAll("\\.$", "").strip();
        return said.isEmpty() ? "" : " " + Character.toLowerCase(said.charAt(0)) + said.substring(1);
    }

    private record CellRequest(ComparisonBasis basis, Sampling sampling, String stat, boolean bounds) {}

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
        ComparisonBasis basis = reading.basis(indicator);
        return new CellRequest(
                basis, reading.sampling(), parameters.oneOf("stat", stats, "median"), readBounds(parameters));
    }

    /** Whether numbers of bounds are asked for. */
    static boolean readBounds(Input parameters) {
        return parameters.oneOf(BOUNDS, List.of("no", "yes"), "no").equals("yes");
    }

    /** A mistyped value would otherwise go unnoticed until the first refusal. */
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

    /** The resource named by the path does not exist. */
    private static ProblemException notFound(Input parameters) {
        FieldError last = parameters.faults().get(parameters.faults().size() - 1);
        return new ProblemException(Problem.notFound(last.message(), List.of(last)));
    }

    private static ProblemException noEvidence(List<Estimate> estimates, PairedEvidence paired, List<String> instead) {
        List<String> reasons = new ArrayList<>();
        if (estimates.size() == 2) {
            NoRatio.between(estimates.get(0), estimates.get(1)).ifPresent(why -> reasons.add(why.words()));
            if (estimates.stream().allMatch(one -> one.summary().isPresent())
                    && Ratio.bound(estimates.get(0), estimates.get(1)) != Bound.EXACT) {
                reasons.add("a side is a bound:" + clause(estimates));
            }
        }
        for (Estimate estimate : estimates) {
            estimate.missing().ifPresent(reasons::add);
        }
        paired.ratios()
                .forEach(study -> reasons.add("one study gives the ratio itself: " + Print.ratio(study.central()) + " ("
                        + Sentences.study(study) + ")"));
        reasons.addAll(instead);
        return new ProblemException(Problem.noEvidence("no evidence: " + String.join("; ", reasons)));
    }

    private String labels(List<Estimate> estimates) {
        return String.join("; ", cited(estimates).map(Reference::label).toList());
    }

    /** The references in full, on the one line that a cell has. */
    private String references(List<Estimate> estimates) {
        return String.join(" | ", cited(estimates).map(PlainText::of).toList());
    }

    private Stream<Reference> cited(List<Estimate> estimates) {
        return estimates.stream()
                .flatMap(estimate -> estimate.sources(library).stream())
                .distinct()
                .flatMap(source -> library.reference(source).stream());
    }

    private static Answer text(String text) {
        return Answer.of(Answer.TEXT, text);
    }
}

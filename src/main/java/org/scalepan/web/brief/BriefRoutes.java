package org.scalepan.web.brief;

import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.ProductForm;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.Side;
import org.scalepan.ask.brief.Brief;
import org.scalepan.ask.claim.ClaimPlan;
import org.scalepan.ask.claim.Claimed;
import org.scalepan.exchange.read.ComparisonBasisReading;
import org.scalepan.exchange.read.MarketReading;
import org.scalepan.exchange.read.ProductReading;
import org.scalepan.exchange.read.SideReading;
import org.scalepan.factors.Library;
import org.scalepan.input.Input;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.InputProblem;
import org.scalepan.web.http.Limits;
import org.scalepan.web.render.HtmlRenderer;
import org.scalepan.web.render.MarkdownRenderer;
import org.scalepan.web.render.Permalink;
import org.scalepan.web.route.Format;
import org.scalepan.web.route.Request;
import org.scalepan.web.route.Route;

/** A page to quote from: {@code GET /v1/brief} about published products, {@code POST /v1/brief} where a side is a farm or herd. */
public final class BriefRoutes {
    private static final List<Format> FORMATS = List.of(Format.MARKDOWN, Format.HTML, Format.SVG, Format.XLSX);
    private static final List<String> OWN = List.of("indicator", "times_less", "style", "accessed", "market");
    private static final List<String> TOGETHER = List.of("ghg", "land", "feed", "energy");
    private static final String NONE = "none";
    private static final int MOST_REFERENCES = 4;
    private static final double MOST_TIMES = 1e9;

    private final Library library;
    private final Clock clock;

    /**
     * @param clock gives the date of access where the question does not
     */
    public BriefRoutes(Library library, Clock clock) {
        this.library = library;
        this.clock = clock;
    }

    public List<Route> routes() {
        List<String> parameters = ComparisonBasisReading.with(
                Stream.concat(Stream.of("products", "against", "also", "also_against", "format"), OWN.stream())
                        .toArray(String[]::new));
        return List.of(
                Route.of("/v1/brief", parameters, this::published).computing().withCurrentDate(),
                Route.post("/v1/brief", List.of("format"), this::recorded).computing());
    }

    private Answer published(Request request) {
        Input parameters = request.parameters();
        Format format = request.format(FORMATS);
        ProductReading products = new ProductReading(library, parameters);
        List<Side> sides = new ArrayList<>();
        products.some("products", Brief.MOST_PRODUCTS).forEach(item -> sides.add(new Side.PublishedSide(item)));
        Optional<Side> against = products.one("against").map(Side.PublishedSide::new);
        Optional<BriefRequest> asked = asked(parameters, sides, against);
        InputProblem.refuseIfWrong(parameters);
        return answer(asked.orElseThrow(), format, parameters.resolved(), Optional.of(request.path()));
    }

    private Answer recorded(Request request) {
        Format format = request.format(FORMATS);
        InputProblem.refuseIfWrong(request.parameters());
        Input body = Input.body(request.sent().json());
        SideReading reading = new SideReading(library, SideReading.credit(body));
        List<Side> sides = new ArrayList<>();
        reading.one(body, "product", "system").ifPresent(sides::add);
        new ProductReading(library, body)
                .any("products", Brief.MOST_PRODUCTS - 1)
                .forEach(item -> sides.add(new Side.PublishedSide(item)));
        Optional<Side> against = reading.one(body, "against", "against_system");
        ComparisonBasisReading.of(library, body, body.has("system") || body.has("against_system"))
                .inBody(OWN.toArray(String[]::new));
        Optional<BriefRequest> asked = body.faults().isEmpty() ? asked(body, sides, against) : Optional.empty();
        body.close();
        InputProblem.refuseIfWrong(body);
        return answer(asked.orElseThrow(), format, body.resolved(), Optional.empty());
    }

    /** A question, what it costs, and the format of the page. */
    private record BriefRequest(
            Brief.BriefQuestion question,
            ClaimPlan plan,
            BriefDocument.Style style,
            LocalDate accessed,
            Optional<String> market) {}

    private Optional<BriefRequest> asked(Input parameters, List<Side> sides, Optional<Side> against) {
        double times = parameters.number("times_less", 1e-9, MOST_TIMES, 1);
        BriefDocument.Style style = parameters.oneOf(
                "style",
                Stream.of(BriefDocument.Style.values())
                        .map(BriefDocument.Style::id)
                        .toList(),
                id -> Stream.of(BriefDocument.Style.values())
                        .filter(one -> one.id().equals(id))
                        .findFirst(),
                BriefDocument.Style.TEXT,
                BriefDocument.Style.TEXT.id());
        LocalDate accessed = accessed(parameters);
        boolean recorded = Stream.concat(sides.stream(), against.stream()).anyMatch(Side.Recorded.class::isInstance);
        ComparisonBasisReading reading = ComparisonBasisReading.of(library, parameters, recorded);
        ComparisonBasis basis = reading.basis(reading.indicator("indicator", "ghg"));
        Sampling sampling = reading.sampling();
        List<ComparisonBasis> besides = besides(parameters, reading, basis, sampling, sides.size());
        List<ProductForm> further = further(parameters);
        Optional<String> market = MarketReading.market(library, parameters);
        against.ifPresent(other -> sides.forEach(side -> side.obstacleTo(other)
                .ifPresent(why -> parameters.fault(SideReading.field(other, "against", "against_system"), why))));
        if (sides.isEmpty() || against.isEmpty() || !parameters.faults().isEmpty()) {
            return Optional.empty();
        }
        Brief.BriefQuestion question = new Brief.BriefQuestion(
                sides, against.get(), new Claimed.TimesLess(times), basis, sampling, besides, further);
        ClaimPlan plan = question.plan(library);
        if (!plan.isAffordable()) {
            parameters.tooMuch(
                    "draws",
                    "draws may be at most " + ClaimPlan.MOST_DRAWS / plan.footprints() + " for the " + plan.footprints()
                            + " footprints of this brief: a brief makes at most " + ClaimPlan.MOST_DRAWS
                            + " draws in all");
            return Optional.empty();
        }
        return Optional.of(new BriefRequest(question, plan, style, accessed, market));
    }

    /** Further indicators: by default those that are most often asked for together; {@code none} of them where so many draws are too many. */
    private List<ComparisonBasis> besides(
            Input parameters, ComparisonBasisReading reading, ComparisonBasis basis, Sampling sampling, int products) {
        if (!parameters.isQuery()) {
            return List.of();
        }
        List<String> usual = TOGETHER.stream()
                .filter(id -> !id.equals(basis.indicator().id()))
                .toList();
        boolean affordable =
                (long) (products + 1) * usual.size() * sampling.draws() <= Sampling.MOST_DRAWS_OF_AN_ANSWER;
        Optional<String> given = parameters.raw("also");
        if (given.isEmpty() && (usual.isEmpty() || !affordable)) {
            parameters.resolve("also", NONE);
            return List.of();
        }
        List<String> allowed = Stream.concat(library.indicators().keySet().stream(), Stream.of(NONE))
                .toList();
        List<String> ids = parameters.someOf("also", allowed, usual, Limits.INDICATORS_OF_TABLE);
        reading.afford(sampling, (products + 1) * Math.max(1, ids.size()));
        return ids.stream()
                .flatMap(id -> Stream.ofNullable(library.indicators().get(id)))
                .filter(indicator -> !indicator.equals(basis.indicator()))
                .map(indicator -> basis.withIndicator(indicator).withBoundary(indicator.defaultBoundary()))
                .toList();
    }

    /** Further products that the products are set beside. */
    private List<ProductForm> further(Input parameters) {
        return !parameters.isQuery() || parameters.raw("also_against").isEmpty()
                ? List.of()
                : new ProductReading(library, parameters).some("also_against", MOST_REFERENCES);
    }

    /** The date of access: today by default. It becomes part of the resolved question, so that the permalink gives the same page. */
    private LocalDate accessed(Input parameters) {
        LocalDate today = LocalDate.now(clock);
        Optional<String> given = parameters.raw("accessed");
        LocalDate day = today;
        try {
            day = given.map(LocalDate::parse).orElse(today);
        } catch (DateTimeException e) {
            parameters.fault("accessed", "accessed must be a day such as " + today);
        }
        parameters.resolve("accessed", day.toString());
        return day;
    }

    private Answer answer(BriefRequest asked, Format format, Map<String, Object> question, Optional<String> path) {
        Optional<String> permalink = path.map(at -> Permalink.of(library, at, question));
        Brief brief = Brief.of(library, asked.question(), asked.plan());
        BriefDocument page = new BriefDocument(brief, asked.style(), asked.accessed(), permalink, asked.market());
        return switch (format) {
            case SVG -> Answer.of(Answer.SVG, page.svg());
            case XLSX -> new BriefWorkbook(library, brief).answer(page.document(), path, question);
            case HTML -> HtmlRenderer.answer(page.document());
            default -> MarkdownRenderer.answer(page.document());
        };
    }
}

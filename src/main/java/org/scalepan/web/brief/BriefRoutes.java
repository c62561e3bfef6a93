package org.scalepan.web.brief;

import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.ask.ComparisonBasis;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.Side;
import org.scalepan.ask.brief.Brief;
import org.scalepan.ask.claim.ClaimPlan;
import org.scalepan.ask.claim.Claimed;
import org.scalepan.exchange.read.ComparisonBasisReading;
import org.scalepan.exchange.read.ProductReading;
import org.scalepan.exchange.read.SideReading;
import org.scalepan.factors.Library;
import org.scalepan.input.Input;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.InputProblem;
import org.scalepan.web.render.HtmlRenderer;
import org.scalepan.web.render.MarkdownRenderer;
import org.scalepan.web.render.Permalink;
import org.scalepan.web.route.Format;
import org.scalepan.web.route.Request;
import org.scalepan.web.route.Route;

/** A page to quote from: {@code GET /v1/brief} about published products, {@code POST /v1/brief} where a side is a farm or herd. */
public final class BriefRoutes {
    private static final List<Format> FORMATS = List.of(Format.MARKDOWN, Format.HTML, Format.SVG);
    private static final List<String> OWN = List.of("indicator", "times_less", "style", "accessed");
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
        List<String> parameters =
                ComparisonBasisReading.with(Stream.concat(Stream.of("products", "against", "format"), OWN.stream())
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
        String link = Permalink.of(library, request.path(), parameters.resolved());
        return answer(asked.orElseThrow(), format, Optional.of(link));
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
        return answer(asked.orElseThrow(), format, Optional.empty());
    }

    /** A question, what it costs, and the format of the page. */
    private record BriefRequest(
            Brief.BriefQuestion question, ClaimPlan plan, BriefDocument.Style style, LocalDate accessed) {}

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
        against.ifPresent(other -> sides.forEach(side -> side.obstacleTo(other)
                .ifPresent(why -> parameters.fault(SideReading.field(other, "against", "against_system"), why))));
        if (sides.isEmpty() || against.isEmpty() || !parameters.faults().isEmpty()) {
            return Optional.empty();
        }
        Brief.BriefQuestion question =
                new Brief.BriefQuestion(sides, against.get(), new Claimed.TimesLess(times), basis, sampling);
        ClaimPlan plan = question.plan(library);
        if (!plan.isAffordable()) {
            parameters.tooMuch(
                    "draws",
                    "draws may be at most " + ClaimPlan.MOST_DRAWS / plan.footprints() + " for the " + plan.footprints()
                            + " footprints of this brief: a brief makes at most " + ClaimPlan.MOST_DRAWS
                            + " draws in all");
            return Optional.empty();
        }
        return Optional.of(new BriefRequest(question, plan, style, accessed));
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

    private Answer answer(BriefRequest asked, Format format, Optional<String> permalink) {
        Brief brief = Brief.of(library, asked.question(), asked.plan());
        BriefDocument page = new BriefDocument(brief, asked.style(), asked.accessed(), permalink);
        return switch (format) {
            case SVG -> Answer.of(Answer.SVG, page.svg());
            case HTML -> HtmlRenderer.answer(page.document());
            default -> MarkdownRenderer.answer(page.document());
        };
    }
}

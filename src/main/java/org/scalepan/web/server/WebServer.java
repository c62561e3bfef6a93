package org.scalepan.web.server;

import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;
import org.eclipse.jetty.http.HttpCompliance;
import org.eclipse.jetty.http.UriCompliance;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.NetworkConnectionLimit;
import org.eclipse.jetty.server.RequestLog;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.handler.GracefulHandler;
import org.scalepan.factors.Library;
import org.scalepan.web.brief.BriefRoutes;
import org.scalepan.web.bulk.BulkRoutes;
import org.scalepan.web.bulk.SpoolFolder;
import org.scalepan.web.claim.ClaimRoutes;
import org.scalepan.web.compare.CellRoutes;
import org.scalepan.web.compare.ComparisonRoutes;
import org.scalepan.web.compare.TableRoutes;
import org.scalepan.web.farm.BreakEvenRoutes;
import org.scalepan.web.farm.FootprintRoutes;
import org.scalepan.web.farm.RecordingSheetRoutes;
import org.scalepan.web.farm.SensitivityRoutes;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.ConcurrencyLimiter;
import org.scalepan.web.http.DeploymentSettings;
import org.scalepan.web.http.Limits;
import org.scalepan.web.http.Problem;
import org.scalepan.web.library.CalibrationRoutes;
import org.scalepan.web.library.CautionRoutes;
import org.scalepan.web.library.CoverageRoutes;
import org.scalepan.web.library.ProductRoutes;
import org.scalepan.web.library.RecordFieldRoutes;
import org.scalepan.web.library.RecordWordRoutes;
import org.scalepan.web.library.ReferenceFarmRoutes;
import org.scalepan.web.library.ResultRoutes;
import org.scalepan.web.library.SourceRoutes;
import org.scalepan.web.library.VocabularyRoutes;
import org.scalepan.web.nutrition.NutritionRoutes;
import org.scalepan.web.programme.SubstitutionRoutes;
import org.scalepan.web.render.ProblemView;
import org.scalepan.web.route.ResponseCache;
import org.scalepan.web.route.Route;
import org.scalepan.web.site.ExampleRoutes;
import org.scalepan.web.site.GuideRoutes;
import org.scalepan.web.site.SiteRoutes;

/** The HTTP server of the service. */
public final class WebServer implements AutoCloseable {
    private static final int STOP_MILLISECONDS = 30_000;
    /** Bodies of rows are megabytes long; eight times the default buffer halves the time. Allocated only while data arrives. */
    private static final int INPUT_BYTES = 65_536;

    /** How long a sender may be silent before the first byte of a body. */
    private static final Duration SENDERS_START = Duration.ofSeconds(5);
    /** How long a reader may read nothing at first; some compute before they read on. */
    private static final Duration READERS_START = Duration.ofSeconds(10);
    /** How long a client may be silent at most, however fast it was before. */
    private static final Duration SILENCE = Duration.ofMillis(Limits.IDLE_MILLISECONDS);
    /** Long enough for a proxy that polls readiness every second. */
    private static final Duration LEAVE = Duration.ofSeconds(1);

    static {
        // Otherwise the server would start the whole of Java's management only to find the size of a reference.
        System.getProperties().putIfAbsent("org.eclipse.jetty.util.referencesPerCacheLine", "16");
    }

    private final Metrics metrics = new Metrics();
    private final Javalin javalin;
    private final Readiness readiness = new Readiness();
    private final GracefulShutdown leaving = new GracefulShutdown();
    private final ReservedPlaces places = new ReservedPlaces(Limits.REQUESTS_UNDER_WAY);
    private final DeploymentSettings deployment;
    private final List<Route> routes;
    private final SpoolFolder spools;
    private final ConcurrencyLimiter answers;
    private final ConcurrencyLimiter runs;

    /** Creates the service; it does not listen yet. */
    public WebServer(Library library) {
        this(library, DeploymentSettings.NONE);
    }

    /** The same with deployment settings. */
    public WebServer(Library library, DeploymentSettings deployment) {
        this(library, ConcurrencyLimiter.ofAnswers(), ConcurrencyLimiter.ofRuns(), deployment, List.of());
    }

    /** The same with limiters and additional routes; rows wait in the temporary folder of the system. */
    public WebServer(
            Library library,
            ConcurrencyLimiter limiter,
            ConcurrencyLimiter rows,
            DeploymentSettings deployment,
            List<Route> more) {
        this(library, limiter, rows, deployment, more, SpoolFolder.ofSystem());
    }

    /**
     * The same with limiters, one for single answers and one for bulk runs because these can take minutes, and with additional routes for
     * tests.
     */
    public WebServer(
            Library library,
            ConcurrencyLimiter limiter,
            ConcurrencyLimiter rows,
            DeploymentSettings deployment,
            List<Route> more,
            SpoolFolder spools) {
        this.deployment = deployment;
        this.spools = spools;
        this.answers = limiter;
        this.runs = rows;
        List<Route> all = new ArrayList<>(more);
        all.addAll(new ProductRoutes(library).routes());
        all.addAll(new ResultRoutes(library).routes());
        all.addAll(new SourceRoutes(library).routes());
        all.addAll(new ComparisonRoutes(library).routes());
        all.addAll(new ClaimRoutes(library).routes());
        all.addAll(new CellRoutes(library).routes());
        all.addAll(new TableRoutes(library).routes());
        all.addAll(new NutritionRoutes(library).routes());
        all.addAll(new CautionRoutes(library).routes());
        all.addAll(new CoverageRoutes(library).routes());
        all.addAll(new VocabularyRoutes(library).routes());
        all.addAll(new CalibrationRoutes(library).routes());
        all.addAll(new RecordFieldRoutes(library).routes());
        all.addAll(new ReferenceFarmRoutes(library).routes());
        all.addAll(new RecordWordRoutes(library).routes());
        all.addAll(new FootprintRoutes(library).routes());
        all.addAll(new RecordingSheetRoutes(library).routes());
        all.addAll(new BriefRoutes(library, java.time.Clock.systemUTC()).routes());
        all.addAll(new SubstitutionRoutes(library).routes());
        all.addAll(new BreakEvenRoutes(library).routes());
        all.addAll(new SensitivityRoutes(library).routes());
        BulkRoutes bulk = new BulkRoutes(library, rows, spools);
        all.addAll(bulk.routes());
        all.addAll(new ExampleRoutes().routes());
        all.addAll(new GuideRoutes().routes());
        Answer limits = LimitsJson.answer(LimitsJson.of(limiter, rows));
        all.addAll(new OperatingRoutes(library, metrics, readiness, limits, spools).routes());
        all.addAll(new SiteRoutes().routes());
        this.routes = List.copyOf(all);
        ResponseCache cache = new ResponseCache();
        Pipeline pipeline = new Pipeline(library, metrics, limiter, deployment, cache);
        measure(library, pipeline, bulk);
        this.javalin = Javalin.create(config -> configure(config, pipeline, new CachedResponseHandler(cache, metrics)));
    }

    /** Writes a line for each request; before it starts. */
    public WebServer logging(AccessLog log, PrintStream standardOutput) {
        RequestLog lines = log.of(standardOutput);
        // A collection does not start those in it.
        jetty().addBean(lines);
        jetty().setRequestLog(new RequestLog.Collection(new UncountedRequests(metrics), lines));
        return this;
    }

    private void measure(Library library, Pipeline pipeline, BulkRoutes bulk) {
        Runtime machine = Runtime.getRuntime();
        String version = WebServer.class.getPackage().getImplementationVersion();
        metrics.build("version", version == null ? "unpackaged" : version)
                .build("java", Runtime.version().toString())
                .build("library", library.version().version())
                .build("digest", library.version().digest())
                .gauge("scalepan_requests_under_way", "Requests from their head to the last byte.", places::underWay)
                .gauge("scalepan_connections", "Open connections.", () -> connections(true))
                .gauge("scalepan_connections_waiting", "Connections without a request.", () -> connections(false))
                .gauge("scalepan_answers_computing", "Answers being computed.", answers::computing)
                .gauge("scalepan_answers_waiting", "Answers in line.", answers::waiting)
                .gauge("scalepan_answers_places", "Answers that may be computed at once.", answers::permits)
                .gauge("scalepan_runs_computing", "Runs of rows being computed.", runs::computing)
                .gauge("scalepan_runs_places", "Runs of rows that may be computed at once.", runs::permits)
                .gauge("scalepan_rows_waiting_bytes", "Rows not yet computed.", bulk::bytesWaiting)
                .gauge("scalepan_bodies_waiting_bytes", "JSON bodies not yet computed.", pipeline::bodyBytesWaiting)
                .gauge("scalepan_heap_used_bytes", "Heap in use.", () ->
                        (double) (machine.totalMemory() - machine.freeMemory()))
                .gauge("scalepan_heap_max_bytes", "The most that the heap may have.", () ->
                        (double) machine.maxMemory())
                .gauge("scalepan_start_time_seconds", "When it started, since 1970.", startedAt());
    }

    private static DoubleSupplier startedAt() {
        double now = System.currentTimeMillis() / 1e3;
        return () -> now;
    }

    private double connections(boolean all) {
        int count = 0;
        for (Connector connector : jetty().getConnectors()) {
            count += all
                    ? connector.getConnectedEndPoints().size()
                    : connector instanceof ServiceConnector ours ? ours.connectionsWaiting() : 0;
        }
        return count;
    }

    /** Starts to listen. */
    public WebServer start(String host, int port) {
        javalin.start(host, port);
        if (deployment.clientHeader().isEmpty()) {
            // Behind a proxy all connections come from the proxy.
            ConnectionsPerClient listener = new ConnectionsPerClient(Limits.CONNECTIONS_OF_CLIENT);
            for (Connector connector : jetty().getConnectors()) {
                connector.addEventListener(listener);
            }
        }
        readiness.set(true);
        return this;
    }

    /** What the operator should know before it starts, in a line each; leftovers of an earlier process are removed. */
    public List<String> findings() {
        return spools.findings();
    }

    /** The limits of this machine that an operator looks for first. */
    public String limitsInWords() {
        return "heap " + Runtime.getRuntime().maxMemory() / 1_048_576 + " MB, at once " + answers.permits()
                + " answers computed, " + runs.permits() + " runs of rows, " + Limits.REQUESTS_UNDER_WAY + " requests";
    }

    /** The port it listens on; needed after starting on port 0. */
    public int port() {
        return javalin.port();
    }

    /** The routes with their parameters, for checking the description against them. */
    public List<Route> routes() {
        return routes;
    }

    /** The underlying server, for checking its limits against each other. */
    Server jetty() {
        return javalin.jettyServer().server();
    }

    /** Reports for a moment that it is not ready, while it still answers; then completes running requests and stops. */
    public void leave() throws InterruptedException {
        readiness.set(false);
        leaving.begin();
        Thread.sleep(LEAVE.toMillis());
        close();
    }

    /** Completes running requests, then stops. */
    @Override
    public void close() {
        readiness.set(false);
        javalin.stop();
    }

    private void configure(JavalinConfig config, Pipeline pipeline, CachedResponseHandler keptFirst) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.http.prefer405over404 = true;
        config.http.generateEtags = false;
        // A strong entity tag identifies the bytes sent; compression is left to a proxy.
        config.http.compressionStrategy = CompressionStrategy.NONE;
        config.jetty.modifyServer(server -> {
            server.setStopTimeout(STOP_MILLISECONDS);
            server.insertHandler(keptFirst);
            deployment.crossOrigin().ifPresent(server::insertHandler);
            server.insertHandler(new MinimumReadRate(Limits.SLOWEST_READING, READERS_START, SILENCE));
            server.insertHandler(leaving);
            server.insertHandler(new GracefulHandler());
            server.insertHandler(new MinimumSendRate(Limits.SLOWEST_SENDING, SENDERS_START, SILENCE));
            server.insertHandler(places);
            server.insertHandler(new MethodAsSent());
            if (server.getRequestLog() == null) {
                server.setRequestLog(new UncountedRequests(metrics));
            }
            server.setErrorHandler(new ServerErrors());
            // Below the threads of the pool (250), so that slow clients never hold all of them.
            server.addBean(new NetworkConnectionLimit(Limits.CONNECTIONS, server));
        });
        config.jetty.addConnector((server, http) -> {
            ServiceConnector connector = new ServiceConnector(
                    server, http, Limits.REQUESTS_UNDER_WAY, Duration.ofSeconds(Limits.HEAD_SECONDS), metrics::closed);
            connector.setHost(config.jetty.host);
            connector.setPort(config.jetty.port);
            return connector;
        });
        config.jetty.modifyHttpConfiguration(http -> {
            http.setIdleTimeout(Limits.IDLE_MILLISECONDS);
            http.setInputBufferSize(INPUT_BYTES);
            http.setRequestHeaderSize(Limits.HEADER_BYTES);
            http.setUriCompliance(UriCompliance.DEFAULT);
            http.setHttpCompliance(HttpCompliance.STRICT);
            http.setSendServerVersion(false);
        });
        for (Route route : routes) {
            if (route.method() == Route.HttpMethod.POST) {
                config.routes.post(route.path(), context -> pipeline.run(context, route));
            } else {
                // The framework does not run a GET handler for HEAD; spreadsheets send HEAD first and rely on its
                // status.
                config.routes.get(route.path(), context -> pipeline.run(context, route));
                config.routes.head(route.path(), context -> pipeline.run(context, route));
            }
        }
        routes.stream()
                .map(Route::path)
                .distinct()
                .forEach(path -> config.routes.options(path, context -> options(context, methods(path))));
        config.routes.exception(HttpResponseException.class, this::refuse);
    }

    /** The methods of a path: most have GET, some POST, a few both. */
    private String methods(String path) {
        boolean sent = has(Route.HttpMethod.POST, path);
        boolean asked = has(Route.HttpMethod.GET, path) || !sent;
        return (asked ? "GET, HEAD, " : "") + (sent ? "POST, " : "") + "OPTIONS";
    }

    private boolean has(Route.HttpMethod method, String path) {
        return routes.stream()
                .anyMatch(route -> route.method() == method && route.path().equals(path));
    }

    private static void options(Context context, String methods) {
        context.header("Allow", methods);
        // Caches may keep a 204 unless told otherwise.
        context.header("Cache-Control", "no-store");
        context.status(204);
    }

    /** Errors of the framework itself: 404 and 405. */
    private void refuse(HttpResponseException exception, Context context) {
        String methods = methods(context.path());
        int status = exception.getStatus();
        Problem problem = switch (status) {
            case 404 ->
                Problem.notFound(
                        BlankCell.words(context.path()).orElse("no such address; /docs lists those there are"),
                        List.of());
            case 405 ->
                Problem.plain(
                        405,
                        "wrong-method",
                        "Wrong method",
                        "this address answers " + methods.replace(", OPTIONS", " and OPTIONS"));
            default -> Problem.plain(status, "refused", "The request was refused", "the server refuses such requests");
        };
        if (status == 405) {
            context.header("Allow", methods);
        }
        context.header("Cache-Control", "no-store");
        if (status == 404 && BlankCell.words(context.path()).isPresent()) {
            BlankCell.answer(context, problem);
            return;
        }
        context.status(status);
        SecurityHeaders.set(context::header, ProblemView.MEDIA_TYPE, "");
        context.contentType(ProblemView.MEDIA_TYPE);
        context.result(ProblemView.json(problem).getBytes(StandardCharsets.UTF_8));
    }
}

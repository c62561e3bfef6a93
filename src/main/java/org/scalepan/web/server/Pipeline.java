package org.scalepan.web.server;

import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.eclipse.jetty.ee10.servlet.ServletContextRequest;
import org.eclipse.jetty.http.HttpField;
import org.eclipse.jetty.http.PreEncodedHttpField;
import org.scalepan.factors.Library;
import org.scalepan.input.Excerpt;
import org.scalepan.input.FieldError;
import org.scalepan.input.Input;
import org.scalepan.web.compare.CellRoutes;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.BufferedBody;
import org.scalepan.web.http.ByteQuota;
import org.scalepan.web.http.Client;
import org.scalepan.web.http.ConcurrencyLimiter;
import org.scalepan.web.http.DeploymentSettings;
import org.scalepan.web.http.EntityTag;
import org.scalepan.web.http.InputProblem;
import org.scalepan.web.http.Limits;
import org.scalepan.web.http.Problem;
import org.scalepan.web.http.ProblemException;
import org.scalepan.web.http.QueryString;
import org.scalepan.web.http.RequestBody;
import org.scalepan.web.http.StreamedBody;
import org.scalepan.web.render.Permalink;
import org.scalepan.web.render.ProblemView;
import org.scalepan.web.route.Request;
import org.scalepan.web.route.ResponseCache;
import org.scalepan.web.route.Route;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Handles every request of a route: strict query, library pin, answer, entity tag, problems. */
final class Pipeline {
    private static final Logger LOG = LoggerFactory.getLogger(Pipeline.class);
    /** Answers change only with the library; an hour spares repeated requests of the same spreadsheet cell. */
    private static final String FRESH = "public, max-age=3600";
    /** The same, for the cache of the client alone. */
    private static final String OF_ONE_CLIENT = "private, max-age=3600";
    /** An answer that is pinned to a library never changes. */
    private static final String PINNED = "public, max-age=31536000, immutable";

    /** The kind of a refusal, kept for counting. */
    private static final String REFUSAL = "org.scalepan.refusal";

    private final Library library;
    private final Metrics metrics;
    private final ConcurrencyLimiter limiter;
    private final DeploymentSettings deployment;
    private final ByteQuota bodies = new ByteQuota(Limits.BODY_BYTES_WAITING, "bodies");
    private final ResponseCache cache;

    Pipeline(
            Library library,
            Metrics metrics,
            ConcurrencyLimiter limiter,
            DeploymentSettings deployment,
            ResponseCache cache) {
        this.library = library;
        this.metrics = metrics;
        this.limiter = limiter;
        this.deployment = deployment;
        this.cache = cache;
    }

    /** Bytes of bodies that wait to be computed. */
    long bodyBytesWaiting() {
        return bodies.reserved();
    }

    void run(Context context, Route route) {
        long start = System.nanoTime();
        try {
            Map<String, String> given = route.anyQuery() ? Map.of() : QueryString.read(context.queryString());
            Input parameters = parameters(given, route);
            checkPin(parameters);
            if (route.method() == Route.HttpMethod.POST) {
                sendComputed(context, route, answer(context, route, parameters));
            } else {
                send(context, cachedOrRendered(context, route, given, parameters));
            }
        } catch (ProblemException refused) {
            refuse(context, route, refused.problem());
        } catch (HttpResponseException e) {
            // The framework's own errors, such as a body that is too long, are answered by its error handlers.
            throw e;
        } catch (RuntimeException e) {
            LOG.error("no answer from {}", route.path(), e);
            refuse(
                    context,
                    route,
                    Problem.plain(500, "internal", "Something broke here", "the fault is ours; it has been logged"));
        } catch (OutOfMemoryError e) {
            // The memory of this answer is free again by now, so a short problem can still be sent.
            LOG.error("not enough memory for an answer from {}", route.path(), e);
            refuse(
                    context,
                    route,
                    Problem.plain(
                            503,
                            "busy",
                            "Too much at once",
                            "busy: there is not enough memory for this answer now; ask for fewer draws or ask again"));
        } finally {
            String refusal = String.valueOf(Objects.requireNonNullElse(context.attribute(REFUSAL), ""));
            metrics.count(route.path(), context.statusCode(), refusal, System.nanoTime() - start);
            context.req().setAttribute(UncountedRequests.COUNTED, true);
        }
    }

    private Answer answer(Context context, Route route, Input parameters) {
        StreamedBody sent = new StreamedBody(context);
        Client client = deployment.client(context.req());
        if (!route.computes()) {
            return answer(context, route, parameters, sent, client);
        }
        if (route.method() == Route.HttpMethod.GET) {
            return limiter.run(client, () -> answer(context, route, parameters, sent, client));
        }
        // Read before a permit is acquired: a client that sends slowly must not keep others from computing.
        try (BufferedBody whole = BufferedBody.of(sent, bodies, client)) {
            return limiter.run(client, () -> answer(context, route, parameters, whole, client));
        }
    }

    private Answer answer(Context context, Route route, Input parameters, RequestBody sent, Client client) {
        Answer answer = route.handling()
                .answer(new Request(
                        context.path(),
                        context.pathParamMap(),
                        parameters,
                        header(context, "Accept"),
                        sent,
                        deployment.scheme(context.req()),
                        header(context, "Host"),
                        client));
        // Safeguard: a handler that forgot this check would otherwise answer an invalid question.
        InputProblem.refuseIfWrong(parameters);
        return answer;
    }

    /** Cheap responses are not cached, because they would evict expensive ones. A cached response must not depend on the Host header. */
    private ResponseCache.CachedResponse cachedOrRendered(
            Context context, Route route, Map<String, String> given, Input parameters) {
        if (!route.isCacheable()) {
            return render(context, route, parameters);
        }
        String accept = header(context, "Accept");
        ResponseCache.CachedQuestion question = ResponseCache.CachedQuestion.of(context.path(), given, accept);
        Optional<ResponseCache.CachedResponse> cached = cache.find(question);
        ResponseCache.CachedResponse answer = cached.orElseGet(() -> render(context, route, parameters));
        if (cached.isEmpty()) {
            cache.put(question, answer);
        }
        cache.link(new ResponseCache.RawTarget(target(context), accept), question);
        return answer;
    }

    private ResponseCache.CachedResponse render(Context context, Route route, Input parameters) {
        Answer answer = answer(context, route, parameters);
        boolean pinned = parameters.raw(Route.LIBRARY).isPresent();
        String location = Permalink.of(library, context.path(), parameters.resolved());
        return ResponseCache.CachedResponse.of(answer, route.path(), head(route, pinned, answer, location));
    }

    /** The literal request target. */
    private static String target(Context context) {
        String query = context.queryString();
        return context.req().getRequestURI() + (query == null ? "" : "?" + query);
    }

    private static Input parameters(Map<String, String> given, Route route) {
        Input parameters = Input.query(given);
        List<String> known = new ArrayList<>(route.parameters());
        if (route.isApi()) {
            known.add(Route.NO_CACHE);
            known.add(Route.LIBRARY);
        }
        if (route.speaks()) {
            known.add(Route.LANG);
        }
        parameters.onlyKnown(known);
        return parameters;
    }

    private void checkPin(Input parameters) {
        Optional<String> pin = parameters.raw(Route.LIBRARY);
        String digest = library.version().digest();
        if (pin.isPresent() && !pin.get().equals(digest)) {
            String detail = "this service answers from library " + digest + ", the link is pinned to "
                    + Excerpt.of(pin.get())
                    + "; leave out library= for today's answer";
            throw new ProblemException(new Problem(
                    409,
                    "/problems/other-library",
                    "The library has changed",
                    detail,
                    List.of(FieldError.of(Route.LIBRARY, detail, List.of(digest), List.of()))));
        }
    }

    private static void send(Context context, ResponseCache.CachedResponse response) {
        write(context, response.head());
        if (EntityTag.matches(
                header(context, "If-None-Match"), response.answer().tag())) {
            context.status(HttpStatus.NOT_MODIFIED);
            return;
        }
        write(context, response.ofBody());
        sendWhole(context, response.answer().body());
    }

    /**
     * In a single write: if this process is killed meanwhile, the response is either sent as a whole or has not begun, and then a proxy
     * can retry another instance.
     */
    private static void sendWhole(Context context, byte[] body) {
        context.res().setBufferSize(Math.max(body.length, context.res().getBufferSize()));
        context.result(body);
    }

    private static void write(Context context, List<HttpField> fields) {
        fields.forEach(field -> context.header(field.getName(), field.getValue()));
    }

    /** The headers of a response that do not depend on the body being sent. */
    private List<HttpField> head(Route route, boolean pinned, Answer answer, String location) {
        List<HttpField> head = new ArrayList<>();
        BiConsumer<String, String> add = (name, value) -> head.add(new PreEncodedHttpField(name, value));
        add.accept("ETag", answer.tag());
        add.accept("Vary", deployment.vary());
        add.accept("Cache-Control", cacheControl(route, pinned));
        if (route.isApi()) {
            // What a cell or a CSV has no field for: the permalink and the library.
            add.accept("Content-Location", location);
            add.accept("Library-Version", library.version().version());
            add.accept("Library-Digest", library.version().digest());
        }
        describe(add, route, answer);
        return head;
    }

    private static void describe(BiConsumer<String, String> header, Route route, Answer answer) {
        SecurityHeaders.set(header, answer.mediaType(), route.path());
        answer.language().ifPresent(language -> header.accept("Content-Language", language.id()));
        answer.fileName()
                .ifPresent(name -> header.accept("Content-Disposition", "attachment; filename=\"" + name + "\""));
    }

    /** A response to posted records: private to the client, so never cached. */
    private void sendComputed(Context context, Route route, Answer answer) {
        context.header("Cache-Control", "no-store");
        context.header("Library-Version", library.version().version());
        context.header("Library-Digest", library.version().digest());
        describe(context::header, route, answer);
        context.contentType(answer.mediaType());
        if (answer.streamed().isPresent()) {
            stream(context, route, answer.streamed().get());
        } else {
            sendWhole(context, answer.body());
        }
    }

    /**
     * Streams rows as they are computed. After the first one an error can no longer be reported by status; the connection is then
     * aborted, because a response that ended normally would look complete.
     */
    private static void stream(Context context, Route route, Answer.Rows rows) {
        try {
            OutputStream out = context.outputStream();
            rows.writeTo(out);
            out.close();
        } catch (IOException e) {
            LOG.debug("the client of {} went away", route.path(), e);
            breakOff(context, e);
        } catch (RuntimeException e) {
            LOG.error("rows of {} broken off", route.path(), e);
            breakOff(context, e);
        }
    }

    /** Aborts the connection and completes the request for the server, which would otherwise wait for it at shutdown. */
    private static void breakOff(Context context, Exception why) {
        ServletContextRequest request = ServletContextRequest.getServletContextRequest(context.req());
        request.getServletChannel().abort(why);
        request.getConnectionMetaData().getConnection().getEndPoint().close();
    }

    private static String cacheControl(Route route, boolean pinned) {
        if (route.isApi()) {
            return pinned ? PINNED : FRESH;
        }
        boolean probe = route.path().startsWith("/health") || route.path().equals("/metrics");
        return probe ? "no-store" : route.isPublic() ? FRESH : OF_ONE_CLIENT;
    }

    private static void refuse(Context context, Route route, Problem problem) {
        boolean forCell = route.parameters().contains(CellRoutes.ON_ERROR)
                && "200".equals(context.queryParam(CellRoutes.ON_ERROR));
        boolean asText = (route.cell() || forCell) && !header(context, "Accept").contains(ProblemView.MEDIA_TYPE);
        String mediaType = asText ? Answer.TEXT : ProblemView.MEDIA_TYPE;
        String body = asText ? problem.line() : ProblemView.json(problem);
        context.attribute(REFUSAL, problem.kind());
        context.status(asText && forCell ? 200 : problem.status());
        context.header("Cache-Control", "no-store");
        if (problem.status() == HttpStatus.SERVICE_UNAVAILABLE.getCode()
                || problem.status() == HttpStatus.TOO_MANY_REQUESTS.getCode()) {
            context.header("Retry-After", "1");
        }
        SecurityHeaders.set(context::header, mediaType, route.path());
        context.contentType(mediaType);
        context.result(body.getBytes(StandardCharsets.UTF_8));
    }

    private static String header(Context context, String name) {
        String value = context.header(name);
        return value == null ? "" : value;
    }
}

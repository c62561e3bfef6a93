package org.scalepan.web.server;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Library;
import org.scalepan.web.bulk.SpoolFolder;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.Problem;
import org.scalepan.web.http.ProblemException;
import org.scalepan.web.render.Envelope;
import org.scalepan.web.route.Request;
import org.scalepan.web.route.Route;

/** Routes for operators: the probes of an orchestrator, metrics, limits. */
final class OperatingRoutes {
    private final Library library;
    private final Metrics metrics;
    private final Readiness readiness;
    private final Answer limits;
    private final SpoolFolder spools;

    OperatingRoutes(Library library, Metrics metrics, Readiness readiness, Answer limits, SpoolFolder spools) {
        this.library = library;
        this.metrics = metrics;
        this.readiness = readiness;
        this.limits = limits;
        this.spools = spools;
    }

    List<Route> routes() {
        return List.of(
                Route.of("/health/live", List.of(), request -> Answer.of(Answer.JSON, Json.write(status("live")))),
                Route.of("/health/ready", List.of(), this::ready),
                Route.of("/limits", List.of(), request -> limits),
                Route.of(
                        "/metrics",
                        List.of(),
                        request -> Answer.of("text/plain; version=0.0.4; charset=utf-8", metrics.text())));
    }

    private ObjectNode status(String status) {
        ObjectNode node = Json.object();
        node.put("status", status);
        node.set("library", Envelope.library(library));
        return node;
    }

    private Answer ready(Request request) {
        if (!readiness.isReady()) {
            throw new ProblemException(
                    Problem.plain(503, "not-ready", "Not ready", "the service is starting or stopping"));
        }
        if (spools.fault().isPresent()) {
            throw new ProblemException(Problem.plain(
                    503,
                    "not-ready",
                    "Not ready",
                    "rows cannot wait: the temporary folder is missing or not writable"));
        }
        ObjectNode node = status("ready");
        // A full folder passes, and concerns rows in bulk alone; other answers must not be taken away for it.
        node.put("rows", spools.isFull() ? "folder-full" : "ok");
        return Answer.of(Answer.JSON, Json.write(node));
    }
}

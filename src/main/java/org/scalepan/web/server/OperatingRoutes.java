package org.scalepan.web.server;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.scalepan.exchange.text.Json;
import org.scalepan.factors.Library;
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

    OperatingRoutes(Library library, Metrics metrics, Readiness readiness, Answer limits) {
        this.library = library;
        this.metrics = metrics;
        this.readiness = readiness;
        this.limits = limits;
    }

    List<Route> routes() {
        return List.of(
                Route.of("/health/live", List.of(), request -> status("live")),
                Route.of("/health/ready", List.of(), this::ready),
                Route.of("/limits", List.of(), request -> limits),
                Route.of(
                        "/metrics",
                        List.of(),
                        request -> Answer.of("text/plain; version=0.0.4; charset=utf-8", metrics.text())));
    }

    private Answer status(String status) {
        ObjectNode node = Json.object();
        node.put("status", status);
        node.set("library", Envelope.library(library));
        return Answer.of(Answer.JSON, Json.write(node));
    }

    private Answer ready(Request request) {
        if (!readiness.isReady()) {
            throw new ProblemException(
                    Problem.plain(503, "not-ready", "Not ready", "the service is starting or stopping"));
        }
        return status("ready");
    }
}

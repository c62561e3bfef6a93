package org.scalepan.web.http;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.handler.CrossOriginHandler;

/**
 * What the service is told of the world around it; of itself it believes nothing of it.
 *
 * @param clientHeader the header in which a trusted proxy names the client; without it the client is who opened the connection
 * @param origins of whose pages scripts may read answers, as in {@code https://example.org}; none unless told
 */
public record DeploymentSettings(Optional<String> clientHeader, List<String> origins) {
    /** Nobody before it, and no pages but its own. */
    public static final DeploymentSettings NONE = new DeploymentSettings(Optional.empty(), List.of());

    public DeploymentSettings {
        origins = List.copyOf(origins);
    }

    /** Lets scripts of those pages read answers, without cookies or other credentials, which the service does not know anyway. */
    public Optional<Handler.Singleton> crossOrigin() {
        if (origins.isEmpty()) {
            return Optional.empty();
        }
        CrossOriginHandler handler = new CrossOriginHandler();
        handler.setAllowedOriginPatterns(origins.stream()
                .map(origin -> origin.equals("*") ? origin : Pattern.quote(origin))
                .collect(Collectors.toSet()));
        handler.setAllowedMethods(Set.of("GET", "HEAD", "POST"));
        handler.setAllowedHeaders(Set.of("Accept", "Content-Type", "If-None-Match"));
        handler.setExposedHeaders(Set.of(
                "ETag", "Content-Disposition", "Content-Location", "Library-Version", "Library-Digest", "Retry-After"));
        handler.setAllowCredentials(false);
        // A page that may not read an answer is answered as anybody is; its browser keeps the answer from it.
        handler.setDeliverNonAllowedOriginRequests(true);
        return Optional.of(handler);
    }

    /** What of a request an answer hangs on, besides its address. */
    public String vary() {
        return origins.isEmpty() ? "Accept" : "Accept, Origin";
    }

    /** Who asks. A request without the header did not come by the proxy; then its connection tells. */
    public Client client(HttpServletRequest request) {
        List<String> named = clientHeader.map(name -> Collections.list(request.getHeaders(name))).stream()
                .flatMap(List::stream)
                .toList();
        return named.isEmpty() ? Client.at(request.getRemoteAddr()) : Client.lastOf(named);
    }
}

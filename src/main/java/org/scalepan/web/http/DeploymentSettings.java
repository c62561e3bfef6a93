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
 * Facts about the deployment that only the operator knows; the service does not guess them from requests.
 *
 * @param clientHeader the header in which a trusted proxy names the client; without it the client is the peer of the connection
 * @param origins whose scripts may read responses (CORS), as in {@code https://example.org}; none by default
 */
public record DeploymentSettings(Optional<String> clientHeader, List<String> origins) {
    /** No proxy, and no origins but its own. */
    public static final DeploymentSettings NONE = new DeploymentSettings(Optional.empty(), List.of());

    public DeploymentSettings {
        origins = List.copyOf(origins);
    }

    /** Allows the origins (CORS), without credentials, since the service has none. */
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
        // Other origins get the same response; without the header their browser withholds it from the script.
        handler.setDeliverNonAllowedOriginRequests(true);
        return Optional.of(handler);
    }

    /** The request headers that a response depends on. */
    public String vary() {
        return origins.isEmpty() ? "Accept" : "Accept, Origin";
    }

    /** The scheme by which a client came: a proxy that is trusted to name the client is trusted with this as well. */
    public String scheme(HttpServletRequest request) {
        boolean secure = clientHeader.isPresent() && "https".equals(request.getHeader("X-Forwarded-Proto"));
        return secure ? "https" : "http";
    }

    /** The client of a request. A request without the header did not pass the proxy; then the peer of its connection counts. */
    public Client client(HttpServletRequest request) {
        List<String> named = clientHeader.map(name -> Collections.list(request.getHeaders(name))).stream()
                .flatMap(List::stream)
                .toList();
        return named.isEmpty() ? Client.at(request.getRemoteAddr()) : Client.lastOf(named);
    }
}

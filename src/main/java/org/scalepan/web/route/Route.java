package org.scalepan.web.route;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.scalepan.web.http.Answer;

/**
 * One route of the service.
 *
 * @param method the HTTP method
 * @param path in the framework's notation, as in {@code /v1/products/{id}}
 * @param parameters its query parameters, besides those of every route
 * @param handling its handler
 * @param traits what distinguishes it from other routes
 */
public record Route(HttpMethod method, String path, List<String> parameters, Handling handling, Set<Trait> traits) {
    /** HTTP methods of routes. */
    public enum HttpMethod {
        /** Also answers HEAD. */
        GET,
        /** Sends records to be computed. */
        POST
    }

    /** Properties that not every route has. */
    enum Trait {
        /** Read by a spreadsheet cell: refusals are one short line of text. */
        CELL,
        /** Expensive enough that its concurrency is limited. */
        COMPUTES,
        /** Sentences of the response are in the language asked for. */
        SPEAKS,
        /** The response contains the current date. */
        DATED,
        /** The response names the address by which the client came. */
        OF_ADDRESS,
        /** A page whose script reads the query: other programs append parameters of their own to links of pages. */
        ANY_QUERY
    }

    /** A parameter of every API route: an ignored cache-buster. */
    public static final String NO_CACHE = "nocache";

    /** A parameter of routes that speak: the language of sentences. */
    public static final String LANG = "lang";

    /** A parameter of every API route: the digest of the library that the response must be based on. */
    public static final String LIBRARY = "library";

    public Route {
        parameters = List.copyOf(parameters);
        traits = Set.copyOf(traits);
    }

    /** The handler of a route. */
    public interface Handling {
        Answer answer(Request request);
    }

    public static Route of(String path, List<String> parameters, Handling handling) {
        return new Route(HttpMethod.GET, path, parameters, handling, Set.of());
    }

    public static Route page(String path, Handling handling) {
        return new Route(HttpMethod.GET, path, List.of(), handling, Set.of(Trait.ANY_QUERY));
    }

    public static Route cell(String path, List<String> parameters, Handling handling) {
        return new Route(HttpMethod.GET, path, parameters, handling, Set.of(Trait.CELL));
    }

    public static Route post(String path, List<String> parameters, Handling handling) {
        return new Route(HttpMethod.POST, path, parameters, handling, Set.of());
    }

    /** The same route with limited concurrency. */
    public Route computing() {
        return with(Trait.COMPUTES);
    }

    /** The same route, with a response that contains the current date. */
    public Route withCurrentDate() {
        return with(Trait.DATED);
    }

    /** The same route, with a response that names the address by which the client came. */
    public Route ofAddress() {
        return with(Trait.OF_ADDRESS);
    }

    /** The same route, with sentences in the language asked for. */
    public Route speaking() {
        return with(Trait.SPEAKS);
    }

    private Route with(Trait trait) {
        EnumSet<Trait> more = EnumSet.of(trait);
        more.addAll(traits);
        return new Route(method, path, parameters, handling, more);
    }

    public boolean cell() {
        return traits.contains(Trait.CELL);
    }

    public boolean speaks() {
        return traits.contains(Trait.SPEAKS);
    }

    public boolean computes() {
        return traits.contains(Trait.COMPUTES);
    }

    public boolean anyQuery() {
        return traits.contains(Trait.ANY_QUERY);
    }

    /** Whether a shared cache, whose key need not have the host, may keep a response. */
    public boolean isPublic() {
        return !traits.contains(Trait.OF_ADDRESS);
    }

    /** Whether a response may be cached. */
    public boolean isCacheable() {
        return method == HttpMethod.GET && computes() && !traits.contains(Trait.DATED);
    }

    public boolean isApi() {
        return path.startsWith("/v1/");
    }
}

package org.scalepan.web.route;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.scalepan.web.http.Answer;

/**
 * One address of the service.
 *
 * @param method what is done with the address
 * @param path in the framework's notation, as in {@code /v1/products/{id}}
 * @param parameters query parameters that it knows, beside those that every route knows
 * @param handling how it answers
 * @param traits in what it differs from the others
 */
public record Route(HttpMethod method, String path, List<String> parameters, Handling handling, Set<Trait> traits) {
    /** What a client does with an address. */
    public enum HttpMethod {
        /** Asks; HEAD asks for the head of the same answer. */
        GET,
        /** Sends records to be computed. */
        POST
    }

    /** What not every route is. */
    enum Trait {
        /** A spreadsheet cell reads it: its refusals are one short line of text. */
        CELL,
        /** An answer costs enough that only a few may be made at once. */
        COMPUTES,
        /** The answer tells the day on which it is given, so that it is not the same tomorrow. */
        DATED,
        /**
         * A page whose script reads the query: links of pages are passed around by programs that hang parameters of their own on them.
         */
        ANY_QUERY
    }

    /** Known by every route of the API: a cache-buster that is ignored. */
    public static final String NO_CACHE = "nocache";

    /** Known by every route of the API: the digest of the library that the answer must come from. */
    public static final String LIBRARY = "library";

    public Route {
        parameters = List.copyOf(parameters);
        traits = Set.copyOf(traits);
    }

    /** How a route answers. */
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

    /** The same route, of whose answers only a few are made at once. */
    public Route computing() {
        return with(Trait.COMPUTES);
    }

    /** The same route, whose answers tell the day. */
    public Route tellingTheDay() {
        return with(Trait.DATED);
    }

    private Route with(Trait trait) {
        EnumSet<Trait> more = EnumSet.of(trait);
        more.addAll(traits);
        return new Route(method, path, parameters, handling, more);
    }

    public boolean cell() {
        return traits.contains(Trait.CELL);
    }

    public boolean computes() {
        return traits.contains(Trait.COMPUTES);
    }

    public boolean anyQuery() {
        return traits.contains(Trait.ANY_QUERY);
    }

    /** Whether an answer may be kept and given again. */
    public boolean keeps() {
        return method == HttpMethod.GET && computes() && !traits.contains(Trait.DATED);
    }

    public boolean isApi() {
        return path.startsWith("/v1/");
    }
}

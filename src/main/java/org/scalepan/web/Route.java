package org.scalepan.web;

import java.util.List;

/**
 * One address of the service.
 *
 * @param method what is done with the address
 * @param path in the framework's notation, as in {@code /v1/products/{id}}
 * @param parameters query parameters that it knows, beside those that every route knows
 * @param cell whether a spreadsheet cell reads it: its refusals are one short line of text
 * @param handling how it answers
 * @param computes whether an answer costs enough that only a few may be made at once
 * @param anyQuery whether it is a page whose script reads the query: links of pages are passed around by programs that hang
 *     parameters of their own on them
 * @param dated whether the answer tells the day on which it is given, so that it is not the same tomorrow
 */
record Route(
        Method method,
        String path,
        List<String> parameters,
        boolean cell,
        Handling handling,
        boolean computes,
        boolean anyQuery,
        boolean dated) {
    /** What a client does with an address. */
    enum Method {
        /** Asks; HEAD asks for the head of the same answer. */
        GET,
        /** Sends records to be computed. */
        POST
    }

    /** Known by every route of the API: a cache-buster that is ignored. */
    static final String NO_CACHE = "nocache";

    /** Known by every route of the API: the digest of the library that the answer must come from. */
    static final String LIBRARY = "library";

    Route {
        parameters = List.copyOf(parameters);
    }

    /** How a route answers. */
    interface Handling {
        Answer answer(Request request);
    }

    static Route of(String path, List<String> parameters, Handling handling) {
        return new Route(Method.GET, path, parameters, false, handling, false, false, false);
    }

    static Route page(String path, Handling handling) {
        return new Route(Method.GET, path, List.of(), false, handling, false, true, false);
    }

    static Route cell(String path, List<String> parameters, Handling handling) {
        return new Route(Method.GET, path, parameters, true, handling, false, false, false);
    }

    static Route post(String path, List<String> parameters, Handling handling) {
        return new Route(Method.POST, path, parameters, false, handling, false, false, false);
    }

    /** The same route, of whose answers only a few are made at once. */
    Route computing() {
        return new Route(method, path, parameters, cell, handling, true, anyQuery, dated);
    }

    /** The same route, whose answers tell the day. */
    Route tellingTheDay() {
        return new Route(method, path, parameters, cell, handling, computes, anyQuery, true);
    }

    /** Whether an answer may be kept and given again. */
    boolean keeps() {
        return method == Method.GET && computes && !dated;
    }

    boolean isApi() {
        return path.startsWith("/v1/");
    }
}

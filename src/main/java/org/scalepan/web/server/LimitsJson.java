package org.scalepan.web.server;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.OptionalInt;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.brief.Brief;
import org.scalepan.ask.claim.ClaimPlan;
import org.scalepan.ask.farm.Sensitivity;
import org.scalepan.exchange.text.Json;
import org.scalepan.input.InputLimits;
import org.scalepan.production.records.RecordLimits;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.ConcurrencyLimiter;
import org.scalepan.web.http.Limits;

/** All limits of the service, as {@code GET /limits} returns them. */
final class LimitsJson {
    private static final String BYTES = "bytes";
    private static final String CHARACTERS = "characters";
    private static final int NO_CONTENT_BEYOND = 413;
    private static final int TOO_MUCH = 422;
    private static final int OF_ONE = 429;
    private static final int OF_ALL = 503;

    private LimitsJson() {}

    /**
     * One limit.
     *
     * @param id its name
     * @param of what it limits
     * @param status HTTP status beyond the limit; none where only a row is rejected or the connection is closed
     */
    record Limit(String id, long most, String unit, OptionalInt status, String of) {}

    /**
     * @param answers limiter of single answers
     * @param runs limiter of bulk runs
     */
    static List<Limit> of(ConcurrencyLimiter answers, ConcurrencyLimiter runs) {
        return List.of(
                refused("address", Limits.HEADER_BYTES, BYTES, 414, "the address with its question"),
                refused("headers", Limits.HEADER_BYTES, BYTES, 431, "the head of a request"),
                refused("parameters", Limits.PARAMETERS, "parameters", TOO_MUCH, "a question"),
                refused(
                        "parameter",
                        InputLimits.PARAMETER_CHARACTERS,
                        CHARACTERS,
                        TOO_MUCH,
                        "the value of a parameter"),
                refused("products", Limits.PRODUCTS, "products", TOO_MUCH, "a comparison, or beside a farm"),
                refused("products-of-brief", Brief.MOST_PRODUCTS, "products", TOO_MUCH, "a brief"),
                refused("products-of-table", Limits.PRODUCTS_OF_TABLE, "products", TOO_MUCH, "a table"),
                refused("indicators-of-table", Limits.INDICATORS_OF_TABLE, "indicators", TOO_MUCH, "a table"),
                refused("units-of-table", Limits.UNITS_OF_TABLE, "units", TOO_MUCH, "a table"),
                refused("rows-of-table", Limits.ROWS_OF_TABLE, "rows", TOO_MUCH, "a table"),
                refused("sources", Limits.SOURCES, "sources", TOO_MUCH, "those allowed, or left out"),
                refused("sources-to-cite", Limits.SOURCES_TO_CITE, "sources", TOO_MUCH, "a list of references"),
                refused("baseline", Limits.BASELINE_PARTS, "entries", TOO_MUCH, "what a programme displaces"),
                refused("alternatives", Limits.ALTERNATIVES, "products", TOO_MUCH, "what a programme is set beside"),
                refused("spreads", Limits.SPREADS, "entries", TOO_MUCH, "inputs with a spread of their own"),
                refused("draws", Sampling.MOST_DRAWS, "draws", TOO_MUCH, "one footprint"),
                refused(
                        "draws-of-answer",
                        Sampling.MOST_DRAWS_OF_AN_ANSWER,
                        "draws",
                        TOO_MUCH,
                        "all footprints of an answer"),
                refused(
                        "draws-of-claim",
                        ClaimPlan.MOST_DRAWS,
                        "draws",
                        TOO_MUCH,
                        "all footprints of a claim or a brief"),
                refused(
                        "draws-of-inputs",
                        Sensitivity.MOST_DRAWS_OF_INPUTS,
                        "draws",
                        TOO_MUCH,
                        "all inputs taken apart"),
                refused("draws-of-row", Limits.DRAWS_OF_ROW, "draws", TOO_MUCH, "a row of many"),
                refused("body", Limits.BODY_BYTES, BYTES, NO_CONTENT_BEYOND, "a JSON body"),
                refused("depth", Limits.DEPTH, "levels", TOO_MUCH, "objects and lists in each other"),
                refused("tokens", Limits.TOKENS, "tokens", TOO_MUCH, "names, values and brackets of a body"),
                refused("number", Limits.NUMBER_DIGITS, "digits", TOO_MUCH, "a number in a body"),
                refused("text", Limits.TEXT_CHARACTERS, CHARACTERS, TOO_MUCH, "a text in a body"),
                refused("name", Limits.NAME_CHARACTERS, CHARACTERS, TOO_MUCH, "the name of a field"),
                refused("field", InputLimits.FIELD_CHARACTERS, CHARACTERS, TOO_MUCH, "a name or id in records"),
                refused("systems", Limits.SYSTEMS, "systems", TOO_MUCH, "farms beside each other"),
                refused("lines", RecordLimits.ENTRIES, "entries", TOO_MUCH, "a list in records, such as feed"),
                refused("co-products", RecordLimits.CO_PRODUCTS, "entries", TOO_MUCH, "the co-products of a farm"),
                refused(
                        "manure-systems",
                        RecordLimits.MANURE_SYSTEMS,
                        "entries",
                        TOO_MUCH,
                        "the manure systems of a herd"),
                refused(
                        "processing-steps",
                        RecordLimits.PROCESSING_STEPS,
                        "entries",
                        TOO_MUCH,
                        "the steps behind a farm's gate"),
                refused("bytes-of-rows", Limits.ROWS_BYTES, BYTES, NO_CONTENT_BEYOND, "a body of rows"),
                refused("rows", Limits.ROWS, "lines", NO_CONTENT_BEYOND, "a body of rows"),
                unreported(
                        "cells",
                        Limits.CELLS_OF_ROW,
                        "cells",
                        "a row of a table; the rows after one with more are not read"),
                unreported(
                        "cell",
                        Limits.CELL_CHARACTERS,
                        CHARACTERS,
                        "a cell of a row; a longer one is an error of its row, and far longer ones end the reading"),
                unreported(
                        "line",
                        Limits.LINE_CHARACTERS,
                        CHARACTERS,
                        "a line of JSON; a longer one is an error of its row"),
                refused(
                        "answers-of-client",
                        answers.clientLimit(),
                        "answers",
                        OF_ONE,
                        "one client, computed or waiting"),
                refused("answers-computed", answers.permits(), "answers", OF_ALL, "all clients, at once"),
                refused("answers-waiting", answers.queueLimit(), "answers", OF_ALL, "all clients, in line"),
                refused("runs-of-client", runs.permitsPerClient(), "runs", OF_ONE, "rows of one client, at once"),
                refused("runs-computed", runs.permits(), "runs", OF_ALL, "rows of all clients, at once"),
                refused(
                        "rows-waiting-of-client",
                        Limits.ROWS_BYTES_WAITING_OF_CLIENT,
                        BYTES,
                        OF_ONE,
                        "rows not yet computed"),
                refused("rows-waiting", Limits.ROWS_BYTES_WAITING, BYTES, OF_ALL, "rows not yet computed, of all"),
                refused(
                        "bodies-waiting-of-client",
                        Limits.BODY_BYTES_WAITING_OF_CLIENT,
                        BYTES,
                        OF_ONE,
                        "bodies not yet computed"),
                refused("bodies-waiting", Limits.BODY_BYTES_WAITING, BYTES, OF_ALL, "bodies not yet computed, of all"),
                unreported(
                        "connections",
                        Limits.CONNECTIONS,
                        "connections",
                        "all clients; the last places are for probes, and a connection without a request makes room"),
                refused(
                        "requests",
                        Limits.REQUESTS_UNDER_WAY,
                        "requests",
                        OF_ALL,
                        "all clients, from the head to the last byte of the answer"),
                unreported(
                        "connections-of-client",
                        Limits.CONNECTIONS_OF_CLIENT,
                        "connections",
                        "one client, where no proxy names the clients; more are closed"),
                unreported(
                        "head",
                        Limits.HEAD_SECONDS,
                        "seconds",
                        "the head of a request, from its first byte; then the connection is closed"),
                unreported(
                        "idle", Limits.IDLE_MILLISECONDS / 1_000, "seconds", "silence; then the connection is closed"));
    }

    /** The limits and minimum transfer rates, as {@code GET /limits} returns them. */
    static Answer answer(List<Limit> limits) {
        ObjectNode node = Json.object();
        ArrayNode list = node.putArray("limits");
        for (Limit limit : limits) {
            ObjectNode one = list.addObject();
            one.put("id", limit.id());
            one.put("most", limit.most());
            one.put("unit", limit.unit());
            limit.status().ifPresent(status -> one.put("status", status));
            one.put("of", limit.of());
        }
        ObjectNode slowest = node.putObject("slowest");
        slowest.put("sending", Limits.SLOWEST_SENDING);
        slowest.put("reading", Limits.SLOWEST_READING);
        slowest.put("unit", "bytes a second");
        return Answer.of(Answer.JSON, Json.write(node));
    }

    private static Limit refused(String id, long most, String unit, int status, String of) {
        return new Limit(id, most, unit, OptionalInt.of(status), of);
    }

    private static Limit unreported(String id, long most, String unit, String of) {
        return new Limit(id, most, unit, OptionalInt.empty(), of);
    }
}

package org.scalepan.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.OptionalInt;
import org.scalepan.ask.Sampling;
import org.scalepan.ask.Sensitivity;
import org.scalepan.ask.brief.Brief;
import org.scalepan.ask.claim.ClaimPlan;

/** Every limit of the service in one list, for who would rather read than run into them. */
final class Limits {
    private static final String BYTES = "bytes";
    private static final String CHARACTERS = "characters";
    private static final int NO_CONTENT_BEYOND = 413;
    private static final int TOO_MUCH = 422;
    private static final int OF_ONE = 429;
    private static final int OF_ALL = 503;

    private Limits() {}

    /**
     * One limit.
     *
     * @param id its name
     * @param of what it bounds
     * @param status with which more is refused; none where a row is told in its place or the connection is closed
     */
    record Limit(String id, long most, String unit, OptionalInt status, String of) {}

    /**
     * @param answers where single answers are computed
     * @param runs where many rows are
     */
    static List<Limit> of(Turnstile answers, Turnstile runs) {
        return List.of(
                told("address", WebServer.HEADER_BYTES, BYTES, 414, "the address with its question"),
                told("headers", WebServer.HEADER_BYTES, BYTES, 431, "the head of a request"),
                told("parameters", QueryString.MOST_PAIRS, "parameters", TOO_MUCH, "a question"),
                told("parameter", Parameters.MOST_CHARACTERS, CHARACTERS, TOO_MUCH, "the value of a parameter"),
                told("products", ComparisonRoutes.MOST_PRODUCTS, "products", TOO_MUCH, "a comparison"),
                told("products-of-brief", Brief.MOST_PRODUCTS, "products", TOO_MUCH, "a brief"),
                told("rows-of-table", TableRoutes.MOST_ROWS, "rows", TOO_MUCH, "a table"),
                told("draws", Sampling.MOST_DRAWS, "draws", TOO_MUCH, "one footprint"),
                told(
                        "draws-of-answer",
                        Sampling.MOST_DRAWS_OF_AN_ANSWER,
                        "draws",
                        TOO_MUCH,
                        "all footprints of an answer"),
                told("draws-of-claim", ClaimPlan.MOST_DRAWS, "draws", TOO_MUCH, "all footprints of a claim or a brief"),
                told("draws-of-inputs", Sensitivity.MOST_DRAWS_OF_INPUTS, "draws", TOO_MUCH, "all inputs taken apart"),
                told("draws-of-row", BulkRoutes.MOST_DRAWS, "draws", TOO_MUCH, "a row of many"),
                told("body", SentBody.MOST_JSON_BYTES, BYTES, NO_CONTENT_BEYOND, "a JSON body"),
                told("depth", JsonLimits.DEEPEST, "levels", TOO_MUCH, "objects and lists in each other"),
                told("tokens", JsonLimits.MOST_TOKENS, "tokens", TOO_MUCH, "names, values and brackets of a body"),
                told("number", JsonLimits.LONGEST_NUMBER, "digits", TOO_MUCH, "a number in a body"),
                told("text", JsonLimits.LONGEST_TEXT, CHARACTERS, TOO_MUCH, "a text in a body"),
                told("name", JsonLimits.LONGEST_NAME, CHARACTERS, TOO_MUCH, "the name of a field"),
                told("field", Body.MOST_CHARACTERS, CHARACTERS, TOO_MUCH, "a name or id in records"),
                told("systems", FootprintRoutes.MOST_SYSTEMS, "systems", TOO_MUCH, "farms beside each other"),
                told("lines", RecordsReading.MOST_LINES, "entries", TOO_MUCH, "a list in records, such as feed"),
                told("bytes-of-rows", BulkRoutes.MOST_BYTES, BYTES, NO_CONTENT_BEYOND, "a body of rows"),
                told("rows", BulkRoutes.MOST_LINES, "lines", NO_CONTENT_BEYOND, "a body of rows"),
                silent("cell", BulkCsvRows.LONGEST_CELL, CHARACTERS, "a cell of a row; more is told in its place"),
                silent("line", BulkJsonRows.LONGEST_LINE, CHARACTERS, "a line of JSON; more is told in its place"),
                told("answers-of-client", answers.share(), "answers", OF_ONE, "one client, computed or waiting"),
                told("answers-computed", answers.places(), "answers", OF_ALL, "all clients, at once"),
                told("answers-waiting", answers.line(), "answers", OF_ALL, "all clients, in line"),
                told("runs-of-client", runs.placesOfOne(), "runs", OF_ONE, "rows of one client, at once"),
                told("runs-computed", runs.places(), "runs", OF_ALL, "rows of all clients, at once"),
                told(
                        "rows-waiting-of-client",
                        BulkRoutes.MOST_BYTES_OF_ALL / 2,
                        BYTES,
                        OF_ONE,
                        "rows not yet computed"),
                told("rows-waiting", BulkRoutes.MOST_BYTES_OF_ALL, BYTES, OF_ALL, "rows not yet computed, of all"),
                told(
                        "bodies-waiting-of-client",
                        Pipeline.MOST_WAITING_BYTES / 2,
                        BYTES,
                        OF_ONE,
                        "bodies not yet computed"),
                told("bodies-waiting", Pipeline.MOST_WAITING_BYTES, BYTES, OF_ALL, "bodies not yet computed, of all"),
                silent("connections", WebServer.MOST_CONNECTIONS, "connections", "all clients; others wait"),
                silent(
                        "connections-of-client",
                        WebServer.MOST_CONNECTIONS_OF_ONE,
                        "connections",
                        "one client, where no proxy names the clients; more are closed"),
                silent(
                        "idle",
                        WebServer.IDLE_MILLISECONDS / 1_000,
                        "seconds",
                        "silence; then the connection is closed"));
    }

    /** With their slowest paces, as {@code GET /limits} tells them. */
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
        slowest.put("sending", WebServer.SLOWEST_BODY);
        slowest.put("reading", WebServer.SLOWEST_READER);
        slowest.put("unit", "bytes a second");
        return Answer.of(Answer.JSON, Json.write(node));
    }

    private static Limit told(String id, long most, String unit, int status, String of) {
        return new Limit(id, most, unit, OptionalInt.of(status), of);
    }

    private static Limit silent(String id, long most, String unit, String of) {
        return new Limit(id, most, unit, OptionalInt.empty(), of);
    }
}

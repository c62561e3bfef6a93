package org.scalepan.web.http;

import org.scalepan.exchange.read.ComparisonBasisReading;
import org.scalepan.exchange.read.ComparisonReading;
import org.scalepan.exchange.rows.BulkQuestion;
import org.scalepan.exchange.text.TextLimits;

/**
 * Every limit on what a request may hold. Readers take their limits from here; {@code GET /limits} lists all of them ({@code
 * LimitsJson}). Limits of texts and questions that do not depend on HTTP are in {@code exchange}, those of the computation itself in {@code ask}.
 */
public final class Limits {
    // Requests and connections.
    public static final int HEADER_BYTES = 16_384;
    public static final int PARAMETERS = 64;
    public static final int CONNECTIONS = 200;
    /** Requests of clients under way at once; the other connections are for probes and for heads that are not complete. */
    public static final int REQUESTS_UNDER_WAY = CONNECTIONS * 9 / 10;

    public static final int CONNECTIONS_OF_CLIENT = CONNECTIONS / 2;
    /** From the first byte of a request to the end of its head. */
    public static final int HEAD_SECONDS = 10;

    public static final int IDLE_MILLISECONDS = 30_000;
    /** Minimum rate of a request body in bytes per second; a slower client would only occupy a thread. */
    public static final int SLOWEST_SENDING = 200;
    /** Minimum rate at which a response must be read, in bytes per second. */
    public static final int SLOWEST_READING = 1_000;
    /** Requests that may queue for a permit to compute. */
    static final int ANSWERS_WAITING = 32;
    /** Bytes of bodies that wait to be computed: an eighth of the heap, so that queued bodies alone cannot fill a small one. */
    public static final long BODY_BYTES_WAITING =
            Math.min(64L * 1_048_576, Runtime.getRuntime().maxMemory() / 8);

    public static final long BODY_BYTES_WAITING_OF_CLIENT = BODY_BYTES_WAITING / 2;

    // A JSON body.
    public static final int BODY_BYTES = 1_048_576;
    public static final int DEPTH = TextLimits.DEPTH;
    public static final int TOKENS = TextLimits.TOKENS;
    public static final int NUMBER_DIGITS = TextLimits.NUMBER_DIGITS;
    public static final int TEXT_CHARACTERS = TextLimits.TEXT_CHARACTERS;
    public static final int NAME_CHARACTERS = TextLimits.NAME_CHARACTERS;

    // Questions.
    public static final int PRODUCTS = ComparisonReading.MOST_PRODUCTS;
    public static final int SOURCES = ComparisonBasisReading.MOST_SOURCES;
    public static final int SOURCES_TO_CITE = 200;
    public static final int PRODUCTS_OF_TABLE = 60;
    public static final int INDICATORS_OF_TABLE = 10;
    public static final int UNITS_OF_TABLE = ComparisonBasisReading.MOST_UNITS;
    public static final int ROWS_OF_TABLE = 200;
    public static final int BASELINE_PARTS = 10;
    public static final int ALTERNATIVES = 10;
    public static final int SPREADS = 50;

    // Records of a farm.
    public static final int SYSTEMS = 10;

    // Rows of many farms.
    public static final long ROWS_BYTES = 256L * 1_048_576;
    /** Four bodies of the greatest length, in temporary files. */
    public static final long ROWS_BYTES_WAITING = 4 * ROWS_BYTES;

    public static final long ROWS_BYTES_WAITING_OF_CLIENT = ROWS_BYTES_WAITING / 2;
    public static final long ROWS = 2_000_000;
    public static final int CELLS_OF_ROW = TextLimits.CELLS_OF_ROW;
    public static final int CELL_CHARACTERS = TextLimits.CELL_CHARACTERS;
    public static final int LINE_CHARACTERS = TextLimits.LINE_CHARACTERS;
    public static final int DRAWS_OF_ROW = BulkQuestion.MOST_DRAWS;

    private Limits() {}
}

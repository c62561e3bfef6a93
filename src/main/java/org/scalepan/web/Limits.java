package org.scalepan.web;

/**
 * Every limit that the service sets to what it is sent. Who reads something takes its limit from here; {@code GET /limits} lists all of
 * them ({@code LimitsJson}). Limits of the computation itself stand where it is computed, in {@code ask}.
 */
final class Limits {
    // Requests and connections.
    static final int HEADER_BYTES = 16_384;
    static final int PARAMETERS = 64;
    static final int PARAMETER_CHARACTERS = 2_000;
    static final int CONNECTIONS = 200;
    static final int CONNECTIONS_OF_CLIENT = CONNECTIONS / 2;
    static final int IDLE_MILLISECONDS = 30_000;
    /** Bytes a second of a body that arrives; who sends more slowly than any line of today holds a thread for nothing. */
    static final int SLOWEST_SENDING = 200;
    /** Bytes a second of an answer that is read. */
    static final int SLOWEST_READING = 1_000;
    /** Questions that may wait for one of the places where answers are computed. */
    static final int ANSWERS_WAITING = 32;
    /** Bytes of bodies that wait to be computed: an eighth of the heap, so that a small one is not filled by waiting alone. */
    static final long BODY_BYTES_WAITING =
            Math.min(64L * 1_048_576, Runtime.getRuntime().maxMemory() / 8);

    static final long BODY_BYTES_WAITING_OF_CLIENT = BODY_BYTES_WAITING / 2;

    // A JSON body.
    static final int BODY_BYTES = 1_048_576;
    static final int DEPTH = 16;
    static final int TOKENS = 50_000;
    static final int NUMBER_DIGITS = 40;
    static final int TEXT_CHARACTERS = 10_000;
    static final int NAME_CHARACTERS = 100;

    // Questions.
    static final int PRODUCTS = 20;
    static final int SOURCES = 50;
    static final int SOURCES_TO_CITE = 200;
    static final int PRODUCTS_OF_TABLE = 60;
    static final int INDICATORS_OF_TABLE = 10;
    static final int UNITS_OF_TABLE = 8;
    static final int ROWS_OF_TABLE = 200;
    static final int BASELINE_PARTS = 10;
    static final int ALTERNATIVES = 10;
    static final int SPREADS = 50;

    // Records of a farm.
    static final int FIELD_CHARACTERS = 200;
    static final int SYSTEMS = 10;
    static final int ENTRIES = 100;
    static final int CO_PRODUCTS = 20;
    static final int MANURE_SYSTEMS = 20;
    static final int PROCESSING_STEPS = 10;

    // Rows of many farms.
    static final long ROWS_BYTES = 256L * 1_048_576;
    /** Four of the longest, in temporary files. */
    static final long ROWS_BYTES_WAITING = 4 * ROWS_BYTES;
    static final long ROWS_BYTES_WAITING_OF_CLIENT = ROWS_BYTES_WAITING / 2;
    static final long ROWS = 2_000_000;
    static final int CELLS_OF_ROW = 16_384;
    static final int CELL_CHARACTERS = 100_000;
    static final int LINE_CHARACTERS = 100_000;
    static final int DRAWS_OF_ROW = 10_000;

    private Limits() {}
}

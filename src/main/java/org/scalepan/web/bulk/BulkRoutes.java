package org.scalepan.web.bulk;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.scalepan.exchange.rows.BulkCsvRows;
import org.scalepan.exchange.rows.BulkCsvView;
import org.scalepan.exchange.rows.BulkJsonRows;
import org.scalepan.exchange.rows.BulkJsonView;
import org.scalepan.exchange.rows.BulkQuestion;
import org.scalepan.exchange.rows.BulkRows;
import org.scalepan.exchange.rows.BulkView;
import org.scalepan.exchange.rows.MarkedUtf8;
import org.scalepan.exchange.text.Csv;
import org.scalepan.exchange.text.RefusedText;
import org.scalepan.factors.Library;
import org.scalepan.input.Input;
import org.scalepan.web.http.Answer;
import org.scalepan.web.http.ByteQuota;
import org.scalepan.web.http.Client;
import org.scalepan.web.http.ConcurrencyLimiter;
import org.scalepan.web.http.InputProblem;
import org.scalepan.web.http.Limits;
import org.scalepan.web.http.Problem;
import org.scalepan.web.http.ProblemException;
import org.scalepan.web.route.Request;
import org.scalepan.web.route.Route;

/**
 * Many farms and herds in one request: {@code POST /v1/footprints} takes rows of CSV or JSON lines and answers with a row for each, in
 * the same order and format, while it computes. Memory does not grow with the number of rows.
 */
public final class BulkRoutes {

    private static final int ROWS_OF_A_BLOCK = 64;
    private static final Set<String> JSON_LINES =
            Set.of(Answer.NDJSON, "application/ndjson", "application/jsonl", "application/x-jsonlines");
    private static final String TEMPLATE = "/footprints-template.csv";

    private final Library library;
    private final ConcurrencyLimiter limiter;
    private final int processors;
    private final SpoolFolder folder;
    private final ByteQuota quota = new ByteQuota(Limits.ROWS_BYTES_WAITING, "rows");

    /**
     * @param limiter bounds how many runs go on at once
     * @param folder where rows wait
     */
    public BulkRoutes(Library library, ConcurrencyLimiter limiter, SpoolFolder folder) {
        this(library, limiter, folder, Runtime.getRuntime().availableProcessors());
    }

    /**
     * @param limiter bounds how many runs go on at once
     * @param folder where rows wait
     * @param processors how many threads compute the rows of a run
     */
    BulkRoutes(Library library, ConcurrencyLimiter limiter, SpoolFolder folder, int processors) {
        this.library = library;
        this.limiter = limiter;
        this.folder = folder;
        this.processors = processors;
    }

    public List<Route> routes() {
        List<String> parameters = new ArrayList<>(BulkQuestion.PARAMETERS);
        parameters.addAll(Csv.PARAMETERS.stream().sorted().toList());
        return List.of(
                Route.post("/v1/footprints", parameters, this::footprints),
                Route.of("/v1/footprints/template.csv", List.of(), request -> template()));
    }

    /** Bytes of rows that wait to be computed. */
    public long bytesWaiting() {
        return quota.reserved();
    }

    private Answer footprints(Request request) {
        Input parameters = request.parameters();
        Optional<BulkQuestion> read = BulkQuestion.read(library, parameters);
        Csv.CsvStyle style = Csv.CsvStyle.read(parameters);
        InputProblem.refuseIfWrong(parameters);
        BulkQuestion question = read.orElseThrow();
        String type = request.sent().mediaType();
        boolean table = type.equals("text/csv");
        if (!table && !JSON_LINES.contains(type)) {
            throw new ProblemException(Problem.plain(
                    415,
                    "media-type",
                    "Wrong media type",
                    "send rows as Content-Type: text/csv or application/x-ndjson (one JSON object a line)"));
        }
        Spool spool = takenIn(request);
        Runnable done = place(spool, request.client());
        try {
            BulkRows rows = rows(question, style, table, spool);
            return Answer.streamed(table ? Answer.CSV : Answer.NDJSON, out -> {
                try (rows) {
                    run(question, style, table, rows).writeTo(out);
                } finally {
                    done.run();
                }
            });
        } catch (RuntimeException e) {
            done.run();
            throw e;
        }
    }

    /** Before a permit is acquired, so that a client that sends slowly does not keep others from computing. */
    private Spool takenIn(Request request) {
        try {
            return Spool.of(folder, request.sent().stream(), Limits.ROWS_BYTES, Limits.ROWS, quota, request.client());
        } catch (IOException e) {
            throw new UncheckedIOException("the rows could not be taken in", e);
        }
    }

    private Runnable place(Spool spool, Client client) {
        try {
            return limiter.acquire(client);
        } catch (ProblemException busy) {
            try (spool) {
                throw busy;
            } catch (IOException e) {
                throw new UncheckedIOException("the rows could not be thrown away", e);
            }
        }
    }

    private static BulkRows rows(BulkQuestion question, Csv.CsvStyle style, boolean table, Spool spool) {
        try (spool) {
            return open(question, style, table, spool);
        } catch (IOException e) {
            throw new UncheckedIOException("the rows could not be read", e);
        }
    }

    private static BulkRows open(BulkQuestion question, Csv.CsvStyle style, boolean table, Spool spool)
            throws IOException {
        InputStream in = spool.read();
        try {
            return table
                    ? new BulkCsvRows(question, new MarkedUtf8(in), style)
                    : new BulkJsonRows(question, new MarkedUtf8(in));
        } catch (RefusedText refused) {
            in.close();
            throw new ProblemException(Problem.badBody(refused.errors()));
        } catch (RuntimeException e) {
            in.close();
            throw e;
        }
    }

    private BulkRun run(BulkQuestion question, Csv.CsvStyle style, boolean table, BulkRows rows) {
        BulkView view = table ? new BulkCsvView(question, style) : new BulkJsonView(question);
        // A row with draws costs as much as many without.
        return new BulkRun(rows, view, question.drawn() ? 1 : ROWS_OF_A_BLOCK, processors);
    }

    private static Answer template() {
        try (InputStream in = BulkRoutes.class.getResourceAsStream(TEMPLATE)) {
            if (in == null) {
                throw new IllegalStateException(TEMPLATE + " is missing from the class path");
            }
            return new Answer(Answer.CSV, in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

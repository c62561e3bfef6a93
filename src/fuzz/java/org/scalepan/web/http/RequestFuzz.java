package org.scalepan.web.http;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scalepan.ask.Sampling;
import org.scalepan.exchange.read.ComparisonBasisReading;
import org.scalepan.exchange.rows.BulkCsvRows;
import org.scalepan.exchange.rows.BulkJsonRows;
import org.scalepan.exchange.rows.BulkQuestion;
import org.scalepan.exchange.rows.BulkRows;
import org.scalepan.exchange.text.Csv;
import org.scalepan.factors.Library;
import org.scalepan.factors.loading.LibraryLoad;
import org.scalepan.factors.loading.LibraryLoader;
import org.scalepan.input.Input;
import org.scalepan.web.route.Format;

/** For any bytes a request parser returns a result or a problem; any other exception is a finding. */
public final class RequestFuzz {
    private static final Library LIBRARY = ((LibraryLoad.Loaded) LibraryLoader.bundled()).library();

    private RequestFuzz() {}

    /** The first byte chooses the parser. */
    public static void fuzzerTestOneInput(FuzzedDataProvider data) throws IOException {
        int parser = data.consumeInt(0, 4);
        try {
            switch (parser) {
                case 0 -> QueryString.read(data.consumeRemainingAsString());
                case 1 -> JsonBody.parse(data.consumeRemainingAsBytes());
                case 2 -> Format.choose(
                        Input.query(Map.of()), data.consumeRemainingAsString(), List.of(Format.JSON, Format.CSV));
                case 3 -> rows(true, data.consumeRemainingAsBytes());
                default -> rows(false, data.consumeRemainingAsBytes());
            }
        } catch (ProblemException refusal) {
            // Expected.
        }
    }

    private static void rows(boolean table, byte[] sent) throws IOException {
        BulkQuestion question = new BulkQuestion(
                LIBRARY,
                List.of(new ComparisonBasisReading(LIBRARY, Input.query(Map.of()))
                        .basis(LIBRARY.indicators().get("ghg"))),
                false,
                new Sampling(Sampling.DEFAULT_COVERAGE, 1_000, 1),
                false);
        Csv.CsvStyle style = Csv.CsvStyle.read(Input.query(Map.of()));
        var text = BulkRows.strict(new ByteArrayInputStream(sent));
        try (BulkRows rows =
                table ? new BulkCsvRows(question, text, style) : new BulkJsonRows(question, text)) {
            Optional<BulkRows.SentRow> row = rows.next();
            while (row.isPresent()) {
                row.get().answer().get();
                row = rows.next();
            }
        }
    }
}

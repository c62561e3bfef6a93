package org.scalepan.web.bulk;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scalepan.exchange.rows.BulkCsvRows;
import org.scalepan.exchange.rows.BulkCsvView;
import org.scalepan.exchange.rows.BulkQuestion;
import org.scalepan.exchange.rows.BulkRow;
import org.scalepan.exchange.rows.BulkRows;
import org.scalepan.exchange.rows.BulkRows.SentRow;
import org.scalepan.exchange.rows.MarkedUtf8;
import org.scalepan.exchange.text.Csv;
import org.scalepan.factors.Library;
import org.scalepan.factors.loading.LibraryLoad;
import org.scalepan.factors.loading.LibraryLoader;
import org.scalepan.input.Input;

/** Processor time per row of {@code POST /v1/footprints} without HTTP, by part, compared with reading and writing the same file. */
public final class BulkCost {
    private static final Csv.CsvStyle STYLE = new Csv.CsvStyle(',', '.', false);

    private final Path file;
    private final BulkQuestion question;

    private BulkCost(Path file, BulkQuestion question) {
        this.file = file;
        this.question = question;
    }

    /** @param args a file of rows as CSV; rounds */
    public static void main(String[] args) throws IOException {
        Library library = ((LibraryLoad.Loaded) LibraryLoader.bundled()).library();
        BulkQuestion question = BulkQuestion.read(library, Input.query(Map.of())).orElseThrow();
        BulkCost cost = new BulkCost(Path.of(args[0]), question);
        for (int round = 0; round < Integer.parseInt(args[1]); round++) {
            cost.print();
        }
    }

    private void print() throws IOException {
        List<SentRow> sent = new ArrayList<>();
        List<BulkRow> rows = new ArrayList<>();
        double plain = microseconds(this::plain);
        double read = microseconds(() -> read(sent));
        double computed =
                microseconds(() -> sent.forEach(row -> rows.add(row.answer().get())));
        double written = microseconds(() -> new BulkCsvView(question, STYLE).lines(rows));
        System.out.printf(
                "us a row: plain %.2f; read %.2f, computed %.2f, written %.2f%n",
                plain / rows.size(), read / rows.size(), computed / rows.size(), written / rows.size());
    }

    private interface Work {
        void run() throws IOException;
    }

    private static double microseconds(Work work) throws IOException {
        long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        work.run();
        return (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1e3;
    }

    private void plain() throws IOException {
        try (CsvReader<CsvRecord> in = CsvReader.builder().ofCsvRecord(file);
                CsvWriter out = CsvWriter.builder()
                        .build(new OutputStreamWriter(OutputStream.nullOutputStream(), StandardCharsets.UTF_8))) {
            in.forEach(record -> out.writeRecord(record.getFields()));
        }
    }

    private void read(List<SentRow> sent) throws IOException {
        try (BulkRows all = new BulkCsvRows(question, new MarkedUtf8(Files.newInputStream(file)), STYLE)) {
            for (Optional<SentRow> row = all.next(); row.isPresent(); row = all.next()) {
                sent.add(row.get());
            }
        }
    }
}

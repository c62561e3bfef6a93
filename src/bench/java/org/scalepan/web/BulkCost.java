package org.scalepan.web;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Reader;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.scalepan.factors.Library;
import org.scalepan.factors.LibraryLoad;
import org.scalepan.factors.LibraryLoader;

/** Processor time of one row of {@code POST /v1/footprints} without HTTP, by part, beside plain reading and writing of the same file. */
public final class BulkCost {
    private final Path file;
    private final int rows;

    private BulkCost(Path file, int rows) {
        this.file = file;
        this.rows = rows;
    }

    /** @param args a file of rows as CSV; rounds */
    public static void main(String[] args) throws IOException {
        Path file = Path.of(args[0]);
        int rows = (int) Files.lines(file).count() - 1;
        BulkCost cost = new BulkCost(file, rows);
        Library library = ((LibraryLoad.Loaded) LibraryLoader.bundled()).library();
        BulkQuestion question = new BulkRoutes(library, Turnstile.ofRuns()).question(new Parameters(Map.of()));
        for (int round = 0; round < Integer.parseInt(args[1]); round++) {
            System.out.printf(
                    "us a row: plain %.2f; cells %.2f, rows computed %.2f, written %.2f%n",
                    cost.of(cost::plain),
                    cost.of(cost::cells),
                    cost.of(() -> cost.computed(question)),
                    cost.of(() -> cost.written(question)));
        }
    }

    private interface Work {
        void run() throws IOException;
    }

    private double of(Work work) throws IOException {
        long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        work.run();
        return (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1e3 / rows;
    }

    private void plain() throws IOException {
        try (CsvReader<CsvRecord> in = CsvReader.builder().ofCsvRecord(file);
                CsvWriter out = CsvWriter.builder()
                        .build(new OutputStreamWriter(OutputStream.nullOutputStream(), StandardCharsets.UTF_8))) {
            in.forEach(record -> out.writeRecord(record.getFields()));
        }
    }

    private void cells() throws IOException {
        CellBlock block = new CellBlock();
        CellBlock.Filler filler = new CellBlock.Filler();
        filler.into(block);
        try (InputStream in = Files.newInputStream(file);
                Reader text = BulkRows.strict(in);
                CsvReader<Boolean> reader = CsvReader.builder()
                        .commentStrategy(CommentStrategy.NONE)
                        .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                        .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                        .build(filler, text)) {
            for (Boolean row : reader) {
                if (block.isFull()) {
                    block.clear();
                }
            }
        }
    }

    private void computed(BulkQuestion question) throws IOException {
        try (BulkRows all = rows(question)) {
            for (Optional<BulkRow> row = all.next(); row.isPresent(); row = all.next()) {}
        }
    }

    private void written(BulkQuestion question) throws IOException {
        try (BulkRows all = rows(question)) {
            BulkView view = new BulkCsvView(question, style(), OutputStream.nullOutputStream());
            for (Optional<BulkRow> row = all.next(); row.isPresent(); row = all.next()) {
                view.write(row.get());
            }
            view.flush();
        }
    }

    private BulkRows rows(BulkQuestion question) throws IOException {
        return new BulkCsvRows(question, BulkRows.strict(Files.newInputStream(file)), style());
    }

    private static Csv.Style style() {
        return new Csv.Style(',', '.', false);
    }
}

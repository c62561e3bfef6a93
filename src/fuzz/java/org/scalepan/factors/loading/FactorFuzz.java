package org.scalepan.factors.loading;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scalepan.factors.table.Fault;
import org.scalepan.factors.table.Row;
import org.scalepan.factors.table.TableSchema;

/**
 * A user's folder with one malformed file: whatever it contains, the library loads or every error is reported with its location; any
 * exception is a finding.
 */
public final class FactorFuzz {
    private static final FactorFiles SMALL =
            new FactorFiles.Folder(Path.of(System.getProperty("scalepan.smallLibrary")));
    private static final List<TableSchema> SCHEMAS = SmallLibrary.schemas(SMALL);
    private static final Path FOLDER = folder();

    private FactorFuzz() {}

    private static Path folder() {
        try {
            return Files.createTempDirectory("scalepan-fuzz");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The first bytes choose the table and how much of it stays valid. */
    public static void fuzzerTestOneInput(FuzzedDataProvider data) throws IOException {
        int chosen = data.consumeInt(0, SCHEMAS.size());
        if (chosen == SCHEMAS.size()) {
            load("sources.json", data.consumeRemainingAsBytes());
            return;
        }
        TableSchema schema = SCHEMAS.get(chosen);
        byte[] bytes = data.consumeBoolean() ? data.consumeRemainingAsBytes() : malformed(schema, data);
        List<Fault> faults = new ArrayList<>();
        CsvReading.read(schema, schema.path(), bytes, true, faults);
        // Loading a library takes much longer than reading a table, so a malformed table is loaded only now and then.
        if (faults.isEmpty() || bytes.length % 16 == 0) {
            load(schema.path(), bytes);
        }
    }

    /** A row of the table with some arbitrary cells, properly quoted. */
    private static byte[] malformed(TableSchema schema, FuzzedDataProvider data) {
        byte[] whole = SMALL.read(schema.path()).orElseThrow();
        List<Row> rows = CsvReading.read(schema, schema.path(), whole, false, new ArrayList<>())
                .rows();
        List<String> cells = new ArrayList<>(SmallLibrary.cells(schema, rows.get(data.consumeInt(0, rows.size() - 1))));
        int changes = data.consumeInt(1, 3);
        for (int i = 0; i < changes; i++) {
            cells.set(data.consumeInt(0, cells.size() - 1), data.consumeString(60));
        }
        String text = SmallLibrary.line(SmallLibrary.names(schema)) + SmallLibrary.line(cells);
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static void load(String name, byte[] bytes) throws IOException {
        Path file = FOLDER.resolve(name);
        Files.write(file, bytes);
        try {
            LibraryLoad load = LibraryLoader.load(SMALL, Optional.of(new FactorFiles.Folder(FOLDER)));
            if (load instanceof LibraryLoad.Broken broken && broken.faults().isEmpty()) {
                throw new AssertionError("broken without a fault");
            }
        } finally {
            Files.delete(file);
        }
    }
}

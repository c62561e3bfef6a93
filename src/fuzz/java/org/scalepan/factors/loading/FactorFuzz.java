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
 * A user's folder with one file out of order: whatever stands in it, the library is loaded or every fault is told with its place;
 * anything that is thrown is a find.
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

    /** The first bytes choose the table and how much of it stays right. */
    public static void fuzzerTestOneInput(FuzzedDataProvider data) throws IOException {
        int chosen = data.consumeInt(0, SCHEMAS.size());
        if (chosen == SCHEMAS.size()) {
            load("sources.json", data.consumeRemainingAsBytes());
            return;
        }
        TableSchema schema = SCHEMAS.get(chosen);
        byte[] bytes = data.consumeBoolean() ? data.consumeRemainingAsBytes() : spoilt(schema, data);
        List<Fault> faults = new ArrayList<>();
        CsvReading.read(schema, schema.path(), bytes, true, faults);
        // A library takes much longer to load than a table to read; what already has no form is loaded now and then only.
        if (faults.isEmpty() || bytes.length % 16 == 0) {
            load(schema.path(), bytes);
        }
    }

    /** A row of the table with some cells in which anything may stand, properly quoted. */
    private static byte[] spoilt(TableSchema schema, FuzzedDataProvider data) {
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

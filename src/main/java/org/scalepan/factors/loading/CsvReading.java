package org.scalepan.factors.loading;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.scalepan.factors.table.CsvPage;
import org.scalepan.factors.table.Fault;
import org.scalepan.factors.table.Row;
import org.scalepan.factors.table.Table;
import org.scalepan.factors.table.TableSchema;

/**
 * Reads the bytes of one CSV file (RFC 4180, UTF-8) into rows that know their place. It checks only the form: encoding,
 * header, number of cells; what a cell may hold is {@link TableCheck}'s.
 */
final class CsvReading {
    private static final int MOST_OF_A_NAME = 60;

    private final TableSchema schema;
    private final String file;
    private final List<Fault> faults;

    private CsvReading(TableSchema schema, String file, List<Fault> faults) {
        this.schema = schema;
        this.file = file;
        this.faults = faults;
    }

    static Table read(TableSchema schema, String file, byte[] bytes, boolean overlaid, List<Fault> faults) {
        CsvReading reading = new CsvReading(schema, file, faults);
        List<Row> rows = text(file, bytes, faults)
                .map(text -> reading.rows(text, overlaid))
                .orElse(List.of());
        return new Table(schema, rows);
    }

    /** Decodes a file of the library, strictly: what is not UTF-8 is a fault at the byte where it stops being so. */
    static Optional<String> text(String file, byte[] bytes, List<Fault> faults) {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        out.flip();
        if (result.isError()) {
            String before = out.toString();
            long line = before.chars().filter(c -> c == '\n').count() + 1;
            int column = before.length() - before.lastIndexOf('\n');
            faults.add(new Fault(
                    file,
                    line,
                    column,
                    String.format(Locale.ROOT, "byte 0x%02X is not UTF-8", bytes[in.position()] & 0xFF),
                    "save the file as UTF-8"));
            return Optional.empty();
        }
        if (!out.isEmpty() && out.charAt(0) == '\uFEFF') {
            faults.add(new Fault(file, 1, 1, "the file begins with a byte-order mark", "save it as UTF-8 without one"));
            return Optional.empty();
        }
        return Optional.of(out.toString());
    }

    private List<Row> rows(String text, boolean overlaid) {
        List<Row> rows = new ArrayList<>();
        long begins = 1;
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .allowUnclosedQuote(false)
                .ofCsvRecord(text)) {
            Iterator<CsvRecord> lines = reader.iterator();
            List<String> header = lines.hasNext() ? lines.next().getFields() : List.of();
            if (!headerIsRight(header)) {
                return List.of();
            }
            begins = 2;
            CsvPage page = new CsvPage(file, header, text);
            while (lines.hasNext()) {
                CsvRecord line = lines.next();
                begins = line.getStartingLineNumber() + 1 + linesWithin(line);
                row(line, page, header.size(), overlaid).ifPresent(rows::add);
            }
        } catch (CsvParseException e) {
            faults.add(new Fault(
                    file,
                    begins,
                    1,
                    "the row that begins here is not CSV: a quote in it is not closed, or it is longer than any row can be",
                    "put a cell with a comma or a quote into quotes, and write a quote within it twice"));
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return rows;
    }

    /** Line ends in the cells of a row. */
    private static long linesWithin(CsvRecord row) {
        return row.getFields().stream()
                .mapToLong(cell -> cell.chars().filter(c -> c == '\n').count())
                .sum();
    }

    private boolean headerIsRight(List<String> header) {
        List<String> expected =
                schema.fields().stream().map(TableSchema.Field::name).toList();
        if (header.equals(expected)) {
            return true;
        }
        faults.add(headerFault(header, expected));
        return false;
    }

    /** Names the first column that differs, and stands there. */
    private Fault headerFault(List<String> header, List<String> expected) {
        String all = "the columns are those of datapackage.json: " + String.join(",", expected);
        if (header.isEmpty()) {
            return new Fault(file, 1, 1, "the file is empty", all);
        }
        int same = 0;
        int character = 1;
        while (same < header.size()
                && same < expected.size()
                && header.get(same).equals(expected.get(same))) {
            character += header.get(same).length() + 1;
            same++;
        }
        String column = "column " + (same + 1) + " of the header ";
        String what =
                same == header.size() ? column + "is missing" : column + "is \"" + shortened(header.get(same)) + "\"";
        String right = same < expected.size()
                ? "it must be " + expected.get(same)
                : "there is none after " + expected.get(same - 1);
        String separator =
                header.size() == 1 && header.get(0).matches(".*[;\t].*") ? "separate the columns with commas; " : "";
        int place = same == header.size() ? character - 1 : character;
        return new Fault(file, 1, place, what, separator + right + "; " + all);
    }

    private static String shortened(String name) {
        return name.length() <= MOST_OF_A_NAME ? name : name.substring(0, MOST_OF_A_NAME) + "...";
    }

    private Optional<Row> row(CsvRecord line, CsvPage page, int columns, boolean overlaid) {
        long number = line.getStartingLineNumber();
        if (line.getFieldCount() != columns) {
            faults.add(new Fault(
                    file,
                    number,
                    1,
                    "the row has " + line.getFieldCount() + " cells",
                    "it must have " + columns + ", one for each column"));
            return Optional.empty();
        }
        return Optional.of(new Row(new Row.RowPlace(page, number), line.getFields(), overlaid));
    }
}

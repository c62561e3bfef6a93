package org.scalepan.exchange.text;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import org.scalepan.input.Input;
import org.scalepan.quantity.SevenDigits;
import org.scalepan.sheet.FormulaGuard;

/**
 * Writes CSV (RFC 4180) in a given style. A text cell that a spreadsheet would run as a formula is prefixed with an apostrophe; a number
 * never is.
 */
public final class Csv {
    public static final List<String> PARAMETERS = List.of("delim", "decimal", "bom");

    private final CsvStyle style;
    private final Writer out;
    private final CsvWriter writer;

    /** Field separator, decimal sign, and whether a byte-order mark comes first (for Excel opening a downloaded file). */
    public record CsvStyle(char delimiter, char decimal, boolean byteOrderMark) {
        public static CsvStyle read(Input parameters) {
            String delimiter = parameters.raw("delim").orElse(",");
            String decimal = parameters.raw("decimal").orElse(".");
            if (!Set.of(",", ";", "tab", "|").contains(delimiter)) {
                parameters.unknown("delim", delimiter, List.of(",", ";", "tab", "|"));
            }
            if (!Set.of(".", ",").contains(decimal)) {
                parameters.unknown("decimal", decimal, List.of(".", ","));
            } else if (decimal.equals(",") && delimiter.equals(",")) {
                parameters.fault("decimal", "decimal=, needs another delim, such as delim=;");
            }
            List.of("delim", "decimal", "bom")
                    .forEach(name -> parameters.raw(name).ifPresent(value -> parameters.resolve(name, value)));
            boolean mark = parameters
                    .raw("bom")
                    .filter(value -> {
                        if (!Set.of("0", "1").contains(value)) {
                            parameters.unknown("bom", value, List.of("0", "1"));
                        }
                        return value.equals("1");
                    })
                    .isPresent();
            return new CsvStyle(delimiter.equals("tab") ? '\t' : delimiter.charAt(0), decimal.charAt(0), mark);
        }
    }

    public Csv(CsvStyle style, List<String> header) {
        this(style, header, new StringWriter());
    }

    /** Writes rows to a writer as they come, for tables too long for memory. */
    public Csv(CsvStyle style, List<String> header, Writer out) {
        this(style, marked(style, out));
        writer.writeRecord(header);
    }

    private Csv(CsvStyle style, Writer out) {
        this.style = style;
        this.out = out;
        this.writer = CsvWriter.builder()
                .fieldSeparator(style.delimiter())
                .lineDelimiter(LineDelimiter.CRLF)
                .build(out);
    }

    /** Writes further rows, without a header. */
    public static Csv withoutHeader(CsvStyle style, Writer out) {
        return new Csv(style, out);
    }

    private static Writer marked(CsvStyle style, Writer out) {
        if (style.byteOrderMark()) {
            try {
                out.append('\uFEFF');
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return out;
    }

    /** A row that is filled cell by cell. */
    public static final class CsvLine {
        private final List<String> cells = new ArrayList<>();
        private final char decimal;
        private final Consumer<List<String>> written;

        private CsvLine(char decimal, Consumer<List<String>> written) {
            this.decimal = decimal;
            this.written = written;
        }

        /** A row that is taken as cells and written by another program. */
        public static CsvLine unwritten(char decimal) {
            return new CsvLine(decimal, cells -> {});
        }

        /** The cells so far. */
        public List<String> cells() {
            return List.copyOf(cells);
        }

        public CsvLine text(String text) {
            cells.add(FormulaGuard.guarded(text));
            return this;
        }

        /** A computed number. */
        public CsvLine number(double value) {
            cells.add(plain(value));
            return this;
        }

        /** A computed number, or an empty cell where there is none. */
        public CsvLine number(OptionalDouble value) {
            cells.add(value.isPresent() ? plain(value.getAsDouble()) : "");
            return this;
        }

        private String plain(double value) {
            return SevenDigits.plain(value).replace('.', decimal);
        }

        /** A published number with all its digits. */
        public CsvLine published(double value) {
            cells.add(Input.plain(value).replace('.', decimal));
            return this;
        }

        public CsvLine number(int value) {
            cells.add(Integer.toString(value));
            return this;
        }

        public CsvLine empty(int count) {
            for (int i = 0; i < count; i++) {
                cells.add("");
            }
            return this;
        }

        public void end() {
            written.accept(cells);
        }
    }

    public CsvLine line() {
        return new CsvLine(style.decimal(), writer::writeRecord);
    }

    /** Flushes the rows written so far. */
    public void flush() throws IOException {
        writer.flush();
    }

    /** The whole table, where it was written to memory. */
    public String text() {
        try {
            writer.close();
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory cannot fail", e);
        }
        return out.toString();
    }
}

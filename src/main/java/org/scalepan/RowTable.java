package org.scalepan;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scalepan.exchange.rows.BulkCsvRows;
import org.scalepan.exchange.rows.FlatColumns;
import org.scalepan.exchange.text.TextLimits;

/** The columns of a table, one farm or herd a row. */
public final class RowTable {
    private final FlatColumns columns;
    private final int idPlace;
    private final boolean idIsRecord;
    private final RowQuestion question;

    RowTable(FlatColumns columns, int idPlace, boolean idIsRecord, RowQuestion question) {
        this.columns = columns;
        this.idPlace = idPlace;
        this.idIsRecord = idIsRecord;
        this.question = question;
    }

    /**
     * Answers one row.
     *
     * @param cells one for each column, the id among them; an empty one is an absent field
     */
    public RowAnswer answer(List<String> cells) {
        boolean has = idPlace < cells.size();
        List<String> records = new ArrayList<>(cells);
        if (has && !idIsRecord) {
            records.remove(idPlace);
        }
        return question.answer(has ? cells.get(idPlace) : "", columns, records);
    }

    /** Answers one row that is a line of CSV; empty for an empty line. Cells hold no line ends. */
    public Optional<RowAnswer> answerLine(String line) {
        if (line.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(answer(cells(line)));
        } catch (CsvParseException e) {
            return Optional.of(question.unreadable("this row cannot be read as CSV (a cell of more than "
                    + TextLimits.CELL_CHARACTERS + " characters, or more than " + TextLimits.CELLS_OF_ROW + " cells)"));
        }
    }

    static List<String> cells(String line) {
        for (CsvRecord record :
                CsvReader.builder().maxBufferSize(TextLimits.CELL_CHARACTERS).build(BulkCsvRows.handler(), line)) {
            return record.getFields();
        }
        return List.of();
    }
}

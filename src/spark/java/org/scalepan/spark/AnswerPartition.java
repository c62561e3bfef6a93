package org.scalepan.spark;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.apache.spark.sql.Row;
import org.scalepan.RowAnswer;
import org.scalepan.RowQuestion;
import org.scalepan.RowTable;

/**
 * Answers the rows of one partition one after another, so that the memory of a task does not grow with them.
 *
 * @param header the columns of a table of cells; empty where rows are JSON
 */
record AnswerPartition(
        ExecutorLibrary.Name library, TreeMap<String, String> question, String idColumn, ArrayList<String> header, RowCounts counts)
        implements Serializable {
    AnswerPartition {
        // Both are sent to other processes.
        question = new TreeMap<>(question);
        header = new ArrayList<>(header);
    }

    static AnswerPartition of(
            ExecutorLibrary library, Map<String, String> question, String idColumn, List<String> header, RowCounts counts) {
        return new AnswerPartition(
                library.name(), new TreeMap<>(question), idColumn, new ArrayList<>(header), counts);
    }

    RowQuestion asked() {
        return library.library().read().rows(question);
    }

    /** Lines of JSON. */
    Iterator<RowAnswer> json(Iterator<String> lines) {
        RowQuestion asked = asked();
        return answers(
                lines, line -> line.isBlank() ? Optional.empty() : Optional.of(asked.answerLine(idColumn, line)));
    }

    /** Lines of CSV; the head of each file is a line among them. */
    Iterator<RowAnswer> csv(Iterator<String> lines, String head) {
        RowTable table = asked().tableOfLines(head, idColumn);
        return answers(lines, line -> line.equals(head) ? Optional.empty() : table.answerLine(line));
    }

    /** Rows whose columns are all texts. */
    Iterator<RowAnswer> cells(Iterator<Row> rows) {
        RowTable table = asked().table(header, idColumn);
        return answers(rows, row -> {
            List<String> cells = new ArrayList<>();
            for (int i = 0; i < row.size(); i++) {
                cells.add(row.isNullAt(i) ? "" : row.getString(i));
            }
            return Optional.of(table.answer(cells));
        });
    }

    private <T> Iterator<RowAnswer> answers(Iterator<T> rows, Function<T, Optional<RowAnswer>> answer) {
        return new Iterator<>() {
            private Optional<RowAnswer> next = Optional.empty();

            @Override
            public boolean hasNext() {
                while (next.isEmpty() && rows.hasNext()) {
                    next = answer.apply(rows.next());
                    next.ifPresent(counts::add);
                }
                return next.isPresent();
            }

            @Override
            public RowAnswer next() {
                if (!hasNext()) {
                    throw new NoSuchElementException();
                }
                RowAnswer found = next.orElseThrow();
                next = Optional.empty();
                return found;
            }
        };
    }
}

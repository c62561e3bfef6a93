package org.scalepan.spark;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructField;
import org.apache.spark.sql.types.StructType;
import org.scalepan.RowAnswer;
import org.scalepan.RowQuestion;

/** Answers in the formats of files. */
final class WrittenAnswers {
    private WrittenAnswers() {}

    /** Lines of CSV, with a header where there are any: each partition becomes a file. */
    static Iterator<String> csv(Iterator<RowAnswer> answers, RowQuestion question, String idColumn) {
        return new Iterator<>() {
            private boolean begun;

            @Override
            public boolean hasNext() {
                return answers.hasNext();
            }

            @Override
            public String next() {
                if (!begun) {
                    begun = true;
                    return question.csvHeader(idColumn);
                }
                return answers.next().csvLine();
            }
        };
    }

    /** The columns of a table of answers: figures as numbers, the rest as texts. */
    static StructType columns(RowQuestion question) {
        Set<String> numbers = question.numberColumns();
        List<StructField> fields = new ArrayList<>();
        fields.add(DataTypes.createStructField("id", DataTypes.StringType, false));
        question.columns()
                .forEach(name -> fields.add(DataTypes.createStructField(
                        name, numbers.contains(name) ? DataTypes.DoubleType : DataTypes.StringType, true)));
        return DataTypes.createStructType(fields);
    }

    static Row row(RowAnswer answer, StructType columns) {
        Object[] values = new Object[columns.size()];
        values[0] = answer.id();
        List<String> cells = answer.cells();
        for (int i = 0; i < cells.size(); i++) {
            String cell = cells.get(i);
            boolean number = columns.apply(i + 1).dataType().equals(DataTypes.DoubleType);
            if (!cell.isEmpty()) {
                values[i + 1] = number ? (Object) Double.valueOf(cell) : cell;
            }
        }
        return RowFactory.create(values);
    }
}

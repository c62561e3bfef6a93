package org.scalepan.production.records;

import java.util.OptionalDouble;
import org.scalepan.input.Input;
import org.scalepan.production.RecordField;

/** Reads the numbers of records within the limits of their fields. */
final class RecordNumbers {
    private RecordNumbers() {}

    /** A number of the records, if given. */
    static OptionalDouble number(Input records, RecordField field) {
        return records.number(field.field(), field.least(), field.most());
    }

    /** A number of the records that must be given; 0 stands for it after a fault. */
    static double needNumber(Input records, RecordField field) {
        return records.needNumber(field.field(), field.least(), field.most());
    }
}

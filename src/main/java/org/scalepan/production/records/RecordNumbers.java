package org.scalepan.production.records;

import java.util.Map;
import java.util.Optional;
import org.scalepan.input.Input;
import org.scalepan.production.RecordField;
import org.scalepan.production.RecordedNumber;

/** Reads the numbers of one system's records within the limits of their fields. */
final class RecordNumbers {
    private final String root;
    private final String system;
    private final Map<String, String> drawnAs;

    /**
     * @param records of the system, as a whole
     * @param system what the records call it
     * @param drawnAs for paths of fields whose ranges follow one another, the path of the one whose draws serve all
     */
    RecordNumbers(Input records, String system, Map<String, String> drawnAs) {
        this.root = records.pointer("");
        this.system = system;
        this.drawnAs = drawnAs;
    }

    /** A number of the records, if given, or a range. */
    Optional<RecordedNumber> number(Input records, RecordField field) {
        double[] given = records.numberOrRange(field.field(), field.least(), field.most());
        return switch (given.length) {
            case 0 -> Optional.empty();
            case 1 -> Optional.of(RecordedNumber.of(given[0]));
            case 2 -> Optional.of(RecordedNumber.between(key(records, field), field, given[0], given[1]));
            default -> Optional.of(RecordedNumber.around(key(records, field), given[0], given[1], given[2]));
        };
    }

    /** A number of the records that must be given, or a range; the least that it may be stands for it after a fault. */
    RecordedNumber needNumber(Input records, RecordField field) {
        if (!records.has(field.field())) {
            records.fault(field.field(), field.field() + " is missing");
        }
        return number(records, field).orElseGet(() -> RecordedNumber.of(0));
    }

    /** By the place in the records of this system alone, so that it does not matter where in a question or a table these stand. */
    private String key(Input records, RecordField field) {
        String path = records.pointer(field.field()).substring(root.length()).replace('/', '.');
        return RecordedNumber.key(system, drawnAs.getOrDefault(path, path));
    }
}

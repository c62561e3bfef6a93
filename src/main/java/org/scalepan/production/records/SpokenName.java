package org.scalepan.production.records;

import java.util.Optional;
import org.scalepan.input.Input;

/** Reads what people call something that the library does not know: any letters of any script, and nothing that is no letter of a text. */
final class SpokenName {
    private SpokenName() {}

    /** The name, if one is given; a control character in it is a fault, because names go into sentences and tables. */
    static Optional<String> read(Input body, String field) {
        Optional<String> name = body.text(field);
        if (name.filter(SpokenName::hasControls).isPresent()) {
            body.fault(field, field + " must have no control characters");
            return Optional.empty();
        }
        return name;
    }

    private static boolean hasControls(String name) {
        return name.codePoints().anyMatch(letter -> {
            int type = Character.getType(letter);
            return type == Character.CONTROL
                    || type == Character.LINE_SEPARATOR
                    || type == Character.PARAGRAPH_SEPARATOR;
        });
    }
}

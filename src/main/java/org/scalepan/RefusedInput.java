package org.scalepan;

import java.util.List;
import org.scalepan.input.FieldError;
import org.scalepan.input.Input;

/** A library, a question or the head of a table that cannot be used, with every error in words. */
public final class RefusedInput extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    /** An array, because an exception may be sent to another machine. */
    private final String[] errors;

    RefusedInput(List<String> errors) {
        super(String.join("; ", errors));
        this.errors = errors.toArray(String[]::new);
    }

    /** What is wrong, a sentence each. */
    public List<String> errors() {
        return List.of(errors);
    }

    static void refuseIfWrong(Input input) {
        if (!input.faults().isEmpty()) {
            throw of(input.faults());
        }
    }

    static RefusedInput of(List<FieldError> errors) {
        // A question read once for each indicator finds the same error each time.
        return new RefusedInput(
                errors.stream().map(FieldError::sentence).distinct().toList());
    }
}

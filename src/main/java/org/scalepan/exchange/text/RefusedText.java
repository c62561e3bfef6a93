package org.scalepan.exchange.text;

import java.util.List;
import org.scalepan.input.FieldError;

/** A text that cannot be read, with every error. */
public final class RefusedText extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<FieldError> errors;

    public RefusedText(FieldError error) {
        this(List.of(error));
    }

    public RefusedText(List<FieldError> errors) {
        super(errors.get(0).message(), null, false, false);
        this.errors = List.copyOf(errors);
    }

    public List<FieldError> errors() {
        return errors;
    }
}

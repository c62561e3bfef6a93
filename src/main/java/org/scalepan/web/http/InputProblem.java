package org.scalepan.web.http;

import java.util.List;
import org.scalepan.input.FieldError;
import org.scalepan.input.Input;

/** Turns what is wrong with a question into the problem of its answer. */
public final class InputProblem {
    private InputProblem() {}

    /**
     * Ends the request where its parameters or its body cannot be read.
     *
     * @throws ProblemException with every error
     */
    public static void refuseIfWrong(Input input) {
        if (!input.faults().isEmpty()) {
            // A comparison basis read once for each indicator finds the same error each time.
            List<FieldError> once = input.faults().stream().distinct().toList();
            throw new ProblemException(input.isQuery() ? Problem.badQuery(once) : Problem.badBody(once));
        }
    }
}

package org.scalepan.web.http;

import java.util.List;
import org.scalepan.input.FieldError;
import org.scalepan.input.Input;
import org.scalepan.input.Suggestion;

/** Turns what is wrong with a question into the problem of its answer. */
public final class InputProblem {
    private InputProblem() {}

    /**
     * Ends the request where its parameters or its body cannot be read.
     *
     * @throws ProblemException with every error
     */
    public static void refuseIfWrong(Input input) {
        refuseIfWrong(input, List.of());
    }

    /**
     * The same, saying what to ask instead.
     *
     * @throws ProblemException with every error
     */
    public static void refuseIfWrong(Input input, List<Suggestion> instead) {
        if (!input.faults().isEmpty()) {
            // A comparison basis read once for each indicator finds the same error each time.
            List<FieldError> once = input.faults().stream().distinct().toList();
            Problem problem = input.isQuery() ? Problem.badQuery(once) : Problem.badBody(once);
            throw new ProblemException(problem.suggesting(instead));
        }
    }
}

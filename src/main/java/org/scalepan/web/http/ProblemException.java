package org.scalepan.web.http;

/** Carries a problem out of a handler to the one place that answers it. */
public final class ProblemException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Problem problem;

    public ProblemException(Problem problem) {
        super(problem.detail(), null, false, false);
        this.problem = problem;
    }

    public Problem problem() {
        return problem;
    }
}

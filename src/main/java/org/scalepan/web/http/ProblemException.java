package org.scalepan.web.http;

/** Carries a problem from a handler to the exception mapper. */
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

package org.scalepan.web;

/** Carries a problem out of a handler to the one place that answers it. */
final class Refused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Problem problem;

    Refused(Problem problem) {
        super(problem.detail(), null, false, false);
        this.problem = problem;
    }

    Problem problem() {
        return problem;
    }
}

package org.scalepan.quantity;

/** One step of a reckoning. */
enum Step {
    PLUS,
    MINUS,
    TIMES,
    OVER,
    GREATER,
    ROOT,
    EXPONENTIAL,
    /** A function of several amounts. */
    FORMULA;

    /** Single steps look at their left side only. */
    double of(double left, double right) {
        return switch (this) {
            case PLUS -> left + right;
            case MINUS -> left - right;
            case TIMES -> left * right;
            case OVER -> left / right;
            case GREATER -> Math.max(left, right);
            case ROOT -> Math.sqrt(left);
            // The same bits on every machine.
            case EXPONENTIAL -> StrictMath.exp(left);
            case FORMULA -> throw new IllegalStateException("a formula is no step of two amounts");
        };
    }
}

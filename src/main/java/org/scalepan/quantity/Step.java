package org.scalepan.quantity;

/** One step of a reckoning. */
enum Step {
    PLUS(Plan.PLUS),
    MINUS(Plan.MINUS),
    TIMES(Plan.TIMES),
    OVER(Plan.OVER),
    GREATER(Plan.GREATER),
    ROOT(Plan.ROOT),
    EXPONENTIAL(Plan.EXPONENTIAL),
    /** A function of several amounts. */
    FORMULA(Plan.FORMULA);

    private final byte code;

    Step(int code) {
        this.code = (byte) code;
    }

    /** What a plan calls it. */
    byte code() {
        return code;
    }

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

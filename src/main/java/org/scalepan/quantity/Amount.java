package org.scalepan.quantity;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * A number out of somebody's records, or one reckoned from such numbers. It is worth a double, and as long as a {@link Reckoning} is
 * being written down it also knows how it came about, so that the same steps can be done with the numbers of other records without
 * asking again which factors serve.
 *
 * <p>Every step gives the same bits as the arithmetic of doubles that it stands for. Comparing two amounts is a step too: the answer
 * holds for those other records that would answer alike.
 */
public final class Amount {
    public static final Amount ZERO = of(0);
    public static final Amount ONE = of(1);

    private final double value;
    private final @Nullable Reckoning reckoning;
    private final int place;

    private Amount(double value, @Nullable Reckoning reckoning, int place) {
        this.value = value;
        this.reckoning = reckoning;
        this.place = place;
    }

    /** A number that is the same for all records, such as a factor of the library. */
    public static Amount of(double value) {
        return new Amount(value, null, -1);
    }

    /** A step that a reckoning has written down. */
    static Amount noted(double value, Reckoning reckoning, int place) {
        return new Amount(value, reckoning, place);
    }

    /**
     * The number itself, for what is not reckoned with amounts. While a reckoning is written down, it then serves only records that
     * give this very number.
     */
    public double value() {
        if (reckoning != null) {
            reckoning.require(Condition.SAME, this, of(value), true);
        }
        return value;
    }

    public Amount plus(Amount other) {
        return step(Step.PLUS, this, other);
    }

    public Amount minus(Amount other) {
        return step(Step.MINUS, this, other);
    }

    public Amount times(Amount other) {
        return step(Step.TIMES, this, other);
    }

    public Amount times(double number) {
        return times(of(number));
    }

    public Amount over(Amount other) {
        return step(Step.OVER, this, other);
    }

    public Amount over(double number) {
        return over(of(number));
    }

    /** The larger of both. */
    public Amount atLeast(Amount other) {
        return step(Step.GREATER, this, other);
    }

    public Amount squareRoot() {
        return step(Step.ROOT, this, this);
    }

    /** e to the power of this. */
    public Amount exponential() {
        return step(Step.EXPONENTIAL, this, this);
    }

    /** The sum of many, carrying along what each addition rounds off. */
    public static Amount sum(List<Amount> amounts) {
        return by(CarriedSum::of, amounts);
    }

    /**
     * What a formula gives for several amounts.
     *
     * @param formula depends on the numbers it is given and on nothing else; it must not keep the array
     */
    public static Amount by(ToDoubleFunction<double[]> formula, List<Amount> amounts) {
        double value = formula.applyAsDouble(values(amounts));
        for (Amount amount : amounts) {
            if (amount.reckoning != null) {
                return amount.reckoning.note(formula, amounts, value);
            }
        }
        return of(value);
    }

    public boolean isZero() {
        return holds(Condition.SAME, this, ZERO);
    }

    public boolean isAbove(double number) {
        return isAbove(of(number));
    }

    public boolean isAbove(Amount other) {
        return holds(Condition.BELOW, other, this);
    }

    public boolean isBelow(double number) {
        return isBelow(of(number));
    }

    public boolean isBelow(Amount other) {
        return holds(Condition.BELOW, this, other);
    }

    /** The numbers of amounts, for words that are written anew for other records. */
    static double[] values(List<Amount> amounts) {
        double[] values = new double[amounts.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = amounts.get(i).value;
        }
        return values;
    }

    private static Amount step(Step step, Amount left, Amount right) {
        double value = step.of(left.value, right.value);
        Reckoning written = left.reckoning != null ? left.reckoning : right.reckoning;
        return written == null ? of(value) : written.note(step, left, right, value);
    }

    private static boolean holds(Condition condition, Amount left, Amount right) {
        boolean holds = condition.of(left.value, right.value);
        Reckoning written = left.reckoning != null ? left.reckoning : right.reckoning;
        if (written != null) {
            written.require(condition, left, right, holds);
        }
        return holds;
    }

    double known() {
        return value;
    }

    int place() {
        return place;
    }

    boolean isOf(Reckoning other) {
        return reckoning == other;
    }

    @Override
    public String toString() {
        return Double.toString(value);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Amount amount && Double.compare(value, amount.value) == 0;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(value);
    }
}

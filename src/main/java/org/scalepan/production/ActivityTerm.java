package org.scalepan.production;

import java.util.ArrayList;
import java.util.List;
import org.scalepan.footprint.CommonRandomNumbers;

/**
 * A product: a certain amount times uncertain factors, each to the power 1 or −1. Everything on a farm comes down to a sum of such
 * terms, which is why first-order propagation, Monte Carlo and sensitivity all work on the same inventory.
 *
 * @param amount the certain part, with its sign (a credit is negative)
 */
public record ActivityTerm(double amount, List<FactorUse> uses) {

    /** A factor of a product, with its power. */
    public record FactorUse(TermFactor factor, boolean divides) {
        /** What a value of the factor does to the product. */
        double effect(double value) {
            return divides ? 1 / value : value;
        }
    }

    public ActivityTerm {
        uses = List.copyOf(uses);
    }

    /**
     * A number alone.
     *
     * @throws IllegalArgumentException when it is not finite
     */
    public static ActivityTerm of(double amount) {
        if (!Double.isFinite(amount)) {
            throw new IllegalArgumentException("an amount must be finite, not " + amount);
        }
        return new ActivityTerm(amount, List.of());
    }

    /**
     * What a formula makes of records, worked out draw by draw where one of them is uncertain, and otherwise once.
     *
     * @param inputs without factors of the library
     */
    public static ActivityTerm derived(TermFactor.RecordFormula formula, List<ActivityTerm> inputs) {
        return areCertain(inputs)
                ? of(formula.of(centrals(inputs)))
                : of(1).times(new TermFactor.DerivedFactor(inputs, formula));
    }

    /** True when nothing in any of them is uncertain. */
    public static boolean areCertain(List<ActivityTerm> terms) {
        for (ActivityTerm term : terms) {
            if (!term.isCertain()) {
                return false;
            }
        }
        return true;
    }

    /** The sum of records. */
    public static ActivityTerm sum(List<ActivityTerm> parts) {
        return derived(new Sum(), parts);
    }

    private record Sum() implements TermFactor.RecordFormula {
        @Override
        public double of(double[] inputs) {
            double sum = 0;
            for (double input : inputs) {
                sum += input;
            }
            return sum;
        }
    }

    /** What is left of 1 beside this. */
    public ActivityTerm complement() {
        return derived(new Complement(), List.of(this));
    }

    private record Complement() implements TermFactor.RecordFormula {
        @Override
        public double of(double[] inputs) {
            return 1 - inputs[0];
        }
    }

    static double[] centrals(List<ActivityTerm> terms) {
        double[] values = new double[terms.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = terms.get(i).central();
        }
        return values;
    }

    /** True when nothing in it is uncertain. */
    public boolean isCertain() {
        return uses.isEmpty();
    }

    /** This term times a factor. */
    public ActivityTerm times(TermFactor factor) {
        return with(new FactorUse(factor, false));
    }

    /** This term divided by a factor. */
    public ActivityTerm over(TermFactor factor) {
        return with(new FactorUse(factor, true));
    }

    /** This term times a certain number. */
    public ActivityTerm times(double number) {
        return new ActivityTerm(amount * number, uses);
    }

    /** This term divided by a certain number. */
    public ActivityTerm over(double number) {
        return new ActivityTerm(amount / number, uses);
    }

    /** The product of two terms. */
    public ActivityTerm times(ActivityTerm other) {
        return new ActivityTerm(amount * other.amount, joined(other.uses, false));
    }

    /** This term divided by another. */
    public ActivityTerm over(ActivityTerm other) {
        return new ActivityTerm(amount / other.amount, joined(other.uses, true));
    }

    private List<FactorUse> joined(List<FactorUse> others, boolean turned) {
        if (others.isEmpty()) {
            return uses;
        }
        List<FactorUse> all = new ArrayList<>(uses);
        others.forEach(use -> all.add(turned ? new FactorUse(use.factor(), !use.divides()) : use));
        return all;
    }

    private ActivityTerm with(FactorUse use) {
        List<FactorUse> more = new ArrayList<>(uses.size() + 1);
        more.addAll(uses);
        more.add(use);
        return new ActivityTerm(amount, more);
    }

    /** The same with every factor of the library at its central value, so that only what the records leave open is uncertain. */
    public ActivityTerm ofRecordsAlone() {
        double middle = amount;
        List<FactorUse> recorded = List.of();
        for (FactorUse use : uses) {
            if (use.factor().isRecorded()) {
                recorded = recorded.isEmpty() ? new ArrayList<>() : recorded;
                recorded.add(use);
            } else {
                middle = use.divides()
                        ? middle / use.factor().central()
                        : middle * use.factor().central();
            }
        }
        return new ActivityTerm(middle, recorded);
    }

    /** The value with every factor at its central value. */
    public double central() {
        double middle = amount;
        for (FactorUse use : uses) {
            double factor = use.factor().central();
            middle = use.divides() ? middle / factor : middle * factor;
        }
        return middle;
    }

    /** The same without one of its factors. */
    double centralWithout(FactorUse one) {
        double middle = amount;
        boolean left = false;
        for (FactorUse use : uses) {
            if (!left && use.equals(one)) {
                left = true;
            } else {
                middle *= use.effect(use.factor().central());
            }
        }
        return middle;
    }

    /** The central value but for one drawn factor, which has another. */
    double centralWith(Factor moved, double value) {
        double middle = amount;
        for (FactorUse use : uses) {
            middle *= use.effect(use.factor().centralWith(moved, value));
        }
        return middle;
    }

    /** All draws of it. */
    double[] drawn(CommonRandomNumbers random) {
        double[] product = new double[random.size()];
        addTo(product, 1, random);
        return product;
    }

    /** Adds {@code scale} times this term, draw by draw. */
    public void addTo(double[] sum, double scale, CommonRandomNumbers random) {
        double[] product = new double[sum.length];
        java.util.Arrays.fill(product, amount * scale);
        multiply(product, random);
        for (int i = 0; i < sum.length; i++) {
            sum[i] += product[i];
        }
    }

    /** Multiplies by the factors of this term, draw by draw, and not by its amount. */
    void multiply(double[] product, CommonRandomNumbers random) {
        for (FactorUse use : uses) {
            double[] drawn = use.factor().drawn(random);
            for (int i = 0; i < product.length; i++) {
                product[i] = use.divides() ? product[i] / drawn[i] : product[i] * drawn[i];
            }
        }
    }
}

package org.scalepan.quantity;

/**
 * A sum that carries along what each addition rounds off: Kahan (1965), Further remarks on reducing truncation errors, Communications
 * of the ACM 8, 40. The steps are those of {@code DoubleStream.sum()} since Java 17, written out because the steps there may change.
 */
final class CarriedSum {
    private CarriedSum() {}

    static double of(double[] values) {
        double sum = 0;
        double lost = 0;
        for (double value : values) {
            double term = value - lost;
            double next = sum + term;
            lost = (next - sum) - term;
            sum = next;
        }
        return sum - lost;
    }
}

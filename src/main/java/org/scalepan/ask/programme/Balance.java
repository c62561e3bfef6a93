package org.scalepan.ask.programme;

import java.util.Arrays;
import java.util.List;

/**
 * A programme's year, draw by draw: what is displaced is no longer produced, and all of the product is, including the part that displaces
 * nothing.
 */
final class Balance {
    private final double[] supplied;
    private final double[] own;
    private final double[] displacedPerUnit;

    /**
     * @param supplied what the product supplies a year, on the equal basis
     * @param own what a year of the product causes
     * @param displacedPerUnit what one unit of the equal basis causes when the baseline supplies it
     */
    Balance(double[] supplied, double[] own, double[] displacedPerUnit) {
        this.supplied = supplied;
        this.own = own;
        this.displacedPerUnit = displacedPerUnit;
    }

    /** The footprint of a mix out of those of its parts. */
    static double[] mix(List<double[]> footprints, List<Double> shares) {
        double[] mixed = new double[footprints.get(0).length];
        for (int part = 0; part < footprints.size(); part++) {
            double share = shares.get(part);
            double[] footprint = footprints.get(part);
            for (int i = 0; i < mixed.length; i++) {
                mixed[i] += share * footprint[i];
            }
        }
        return mixed;
    }

    /** What is no longer caused at a displacement rate. */
    double[] displaced(double rate) {
        double[] displaced = new double[supplied.length];
        for (int i = 0; i < displaced.length; i++) {
            displaced[i] = supplied[i] * rate * displacedPerUnit[i];
        }
        return displaced;
    }

    /** What is avoided at a displacement rate; below zero when the programme causes more than it displaces. */
    double[] avoided(double rate) {
        double[] avoided = displaced(rate);
        for (int i = 0; i < avoided.length; i++) {
            avoided[i] -= own[i];
        }
        return avoided;
    }

    /** The same year with another product displaced. */
    Balance displacing(double[] otherPerUnit) {
        return new Balance(supplied, own, otherPerUnit);
    }

    /** The same year with a product of known impact. */
    Balance causing(double known) {
        double[] all = new double[own.length];
        Arrays.fill(all, known);
        return new Balance(supplied, all, displacedPerUnit);
    }
}

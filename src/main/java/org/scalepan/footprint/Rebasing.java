package org.scalepan.footprint;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import org.scalepan.factors.Gas;
import org.scalepan.factors.GasShares;
import org.scalepan.factors.WarmingSet;

/**
 * Converts CO2e from one warming set to another by the shares of its gases: X' = X · Σ s_g · GWP'_g ÷ GWP_g.
 *
 * <p>Where a share is not known, the rest that the known shares leave is divided between the unknown gases in a proportion drawn uniformly:
 * the uncertainty is carried on, not hidden. After AR4 the potentials of N2O and CO2 differ little between sets, so that this uncertainty
 * is small; methane, whose potential moves most, is the share that the library knows.
 *
 * @param shares the shares used
 * @param underShares the warming set under which the shares hold
 * @param from the set of the published number
 * @param to the set asked for
 */
public record Rebasing(GasShares shares, WarmingSet underShares, WarmingSet from, WarmingSet to) {
    /** True when CO2 and N2O share a rest that is not known, so that the factor is a range; one of them alone takes it all. */
    public boolean isOpen() {
        return open().size() == 2 && rest() > 1e-12;
    }

    /** The factor when the unknown rest is divided evenly. */
    public double multiplier() {
        return multiplier(0.5);
    }

    /** The lowest and highest factor that the unknown shares allow. */
    public double[] bounds() {
        double a = multiplier(0);
        double b = multiplier(1);
        return new double[] {Math.min(a, b), Math.max(a, b)};
    }

    /** Multiplies each value by the factor, drawn where shares are unknown. */
    public void apply(double[] values, CommonRandomNumbers random) {
        if (!isOpen()) {
            double factor = multiplier();
            for (int i = 0; i < values.length; i++) {
                values[i] *= factor;
            }
            return;
        }
        double[] nitrousOxideShare = random.uniforms(shares.id());
        double atNone = multiplier(0);
        double atAll = multiplier(1);
        for (int i = 0; i < values.length; i++) {
            values[i] *= atNone + (atAll - atNone) * nitrousOxideShare[i];
        }
    }

    /**
     * @param nitrousOxideShare 0 to 1: share of N2O, the gas more sensitive to the set, in the unknown rest; the remainder is CO2
     */
    private double multiplier(double nitrousOxideShare) {
        Map<Gas, Double> share = divided(nitrousOxideShare);
        double underFrom = 0;
        double underTo = 0;
        for (Map.Entry<Gas, Double> entry : share.entrySet()) {
            double mass = entry.getValue() / underShares.potential(entry.getKey());
            underFrom += mass * from.potential(entry.getKey());
            underTo += mass * to.potential(entry.getKey());
        }
        return underTo / underFrom;
    }

    private Map<Gas, Double> divided(double nitrousOxideShare) {
        Map<Gas, Double> share = new EnumMap<>(Gas.class);
        share.putAll(shares.known());
        Set<Gas> open = open();
        double rest = rest();
        if (open.contains(Gas.N2O) && open.contains(Gas.CO2)) {
            share.put(Gas.N2O, rest * nitrousOxideShare);
            share.put(Gas.CO2, rest * (1 - nitrousOxideShare));
        } else if (open.contains(Gas.N2O)) {
            share.put(Gas.N2O, rest);
        } else {
            share.merge(Gas.CO2, rest, Double::sum);
        }
        return share;
    }

    /** CO2 and N2O where not known. Unknown fossil methane is not opened: it is counted with the biogenic share. */
    private Set<Gas> open() {
        Set<Gas> open = EnumSet.of(Gas.CO2, Gas.N2O);
        open.removeAll(shares.known().keySet());
        return open;
    }

    private double rest() {
        return Math.max(
                0,
                1
                        - shares.known().values().stream()
                                .mapToDouble(Double::doubleValue)
                                .sum());
    }
}

package org.scalepan.factors;

import java.util.Collection;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.scalepan.factors.table.Row;

/**
 * A warming set: the potentials of one assessment report, metric and time horizon. Potentials of two sets are never mixed.
 *
 * @param metric GWP or GTP
 * @param feedback whether climate–carbon feedbacks are included
 */
public record WarmingSet(
        String id,
        String name,
        String report,
        String metric,
        OptionalInt horizonYears,
        boolean feedback,
        boolean isDefault,
        Map<Gas, WarmingPotential> potentials,
        Optional<String> note) {
    public WarmingSet {
        potentials = Map.copyOf(potentials);
    }

    /** kg CO2e per kg of the gas. Every set of the library has all four gases; the loader checks this. */
    public double potential(Gas gas) {
        WarmingPotential potential = potentials.get(gas);
        if (potential == null) {
            throw new IllegalStateException("warming set " + id + " has no potential for " + gas.id());
        }
        return potential.value();
    }

    /**
     * CO2e of masses of gas: CO2 + GWP(CH4)·CH4 + GWP(N2O)·N2O, in the masses' unit.
     *
     * @param masses mass of each gas, in one unit
     */
    public double co2e(Map<Gas, Double> masses) {
        // In the order of the gases, because a sum must give the same bits in every run.
        return Stream.of(Gas.values())
                .mapToDouble(gas -> potential(gas) * masses.getOrDefault(gas, 0.0))
                .sum();
    }

    static WarmingSet of(Row row, Collection<WarmingPotential> all) {
        Map<Gas, WarmingPotential> own = new EnumMap<>(Gas.class);
        all.stream()
                .filter(potential -> potential.set().equals(row.text("id")))
                .forEach(potential -> own.put(potential.gas(), potential));
        return new WarmingSet(
                row.text("id"),
                row.text("name"),
                row.text("report"),
                row.text("metric"),
                row.integer("horizon_years"),
                row.text("climate_carbon_feedback").equals("yes"),
                row.text("default").equals("yes"),
                own,
                row.optional("note"));
    }
}

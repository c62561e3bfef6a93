package org.scalepan.production;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.scalepan.footprint.Bound;
import org.scalepan.footprint.ChainStep;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.footprint.Footprint;

/**
 * An inventory added up on a basis: the sum of its flows, over the output, carried to the functional unit asked for.
 *
 * @param scope the basis
 * @param chain the steps from the unit of the records to the unit asked for
 * @param counted the flows that count on this basis
 */
public record SystemFootprint(Inventory inventory, Scope scope, List<ChainStep> chain, List<Flow> counted) {
    public SystemFootprint {
        chain = List.copyOf(chain);
        counted = List.copyOf(counted);
    }

    public SystemFootprint(Inventory inventory, Scope scope, List<ChainStep> chain) {
        this(
                inventory,
                scope,
                chain,
                inventory.flows().stream().filter(scope::counts).toList());
    }

    /** True when nothing on this basis was recorded or filled: then there is no figure, not a figure of zero. */
    public boolean isEmpty() {
        return counted.isEmpty();
    }

    /** The value with every factor at its central value. */
    public double central() {
        return central(yearly());
    }

    /** The same from the values of all flows, where these are known already. */
    double central(double[] yearly) {
        return DoubleStream.of(yearly).sum() * perUnit();
    }

    /** From a year of the farm to one functional unit, centrally. */
    private double perUnit() {
        double factor = inventory.output().perUnit().central();
        for (ChainStep step : chain) {
            factor *= step.multiplier();
        }
        return factor;
    }

    /** The footprint by Monte Carlo, with common random numbers that other systems and products of the same question share. */
    public Footprint footprint(CommonRandomNumbers random) {
        double[] draws = new double[random.size()];
        ActivityTerm perUnit = inventory.output().perUnit();
        for (Flow flow : counted) {
            flow.term().addTo(draws, scope.weight(flow.flux()) * perUnit.amount(), random);
        }
        perUnit.multiply(draws, random);
        chain.forEach(step -> step.apply(draws, random));
        boolean warming = scope.indicator().isWarming();
        return new Footprint(
                scope.indicator().id(),
                scope.indicator().unit(),
                scope.per(),
                scope.boundary(),
                warming ? Optional.of(scope.gwp().id()) : Optional.empty(),
                draws,
                bound());
    }

    /** Whether the sum is the figure or a lower bound of it. */
    public Bound bound() {
        return inventory.bound(scope);
    }

    /** What each stage adds, centrally, per functional unit. */
    public Map<Stage, Double> byStage() {
        Map<Stage, Double> stages = new EnumMap<>(Stage.class);
        double perUnit = perUnit();
        counted.forEach(flow -> stages.merge(flow.stage(), yearly(flow) * perUnit, Double::sum));
        return stages;
    }

    /** What each gas adds, centrally, in the indicator's unit per functional unit. */
    public Map<Flux, Double> byGas() {
        Map<Flux, Double> gases = new EnumMap<>(Flux.class);
        double perUnit = perUnit();
        counted.forEach(flow -> gases.merge(flow.flux(), yearly(flow) * perUnit, Double::sum));
        return gases;
    }

    /** What each line adds, centrally, per functional unit. */
    public Map<Flow, Double> byFlow() {
        Map<Flow, Double> flows = new LinkedHashMap<>();
        double perUnit = perUnit();
        counted.forEach(flow -> flows.put(flow, yearly(flow) * perUnit));
        return flows;
    }

    /** The share that a part of the central value has of it; none where the whole is zero. */
    public OptionalDouble shareOf(double part) {
        double whole = central();
        return whole == 0 ? OptionalDouble.empty() : OptionalDouble.of(part / whole);
    }

    /** First-order propagation of the factors' uncertainties. */
    public FirstOrder firstOrder() {
        return FirstOrder.of(this);
    }

    /** The values of all counted flows on this basis for one year of the farm, centrally. */
    double[] yearly() {
        double[] values = new double[counted.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = yearly(counted.get(i));
        }
        return values;
    }

    /** Value of a flow on this basis for one year of the farm, centrally. */
    double yearly(Flow flow) {
        return flow.term().central() * scope.weight(flow.flux());
    }
}

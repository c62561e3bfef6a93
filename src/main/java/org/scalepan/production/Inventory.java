package org.scalepan.production;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scalepan.footprint.Bound;
import org.scalepan.production.FarmBalance.BalanceVerdict;

/**
 * What goes in and out of a farm in a year: the same for an insect farm and a herd.
 *
 * @param name what the records call it
 * @param output the product that the question is about
 * @param flows every line that was counted
 * @param gaps every field that a default filled or that is not counted
 * @param remarks what a reader should look at
 * @param balances what goes in against what comes out, of what is conserved
 * @param displacedUse what by-products that are sold and counted burden-free would add if their use elsewhere counted, if there are any
 */
public record Inventory(
        String name,
        Output output,
        List<Flow> flows,
        List<Gap> gaps,
        List<Remark> remarks,
        List<FarmBalance> balances,
        Optional<DisplacedUse> displacedUse) {
    public Inventory {
        flows = List.copyOf(flows);
        gaps = List.copyOf(gaps);
        remarks = List.copyOf(remarks);
        balances = List.copyOf(balances);
    }

    /** The balances by which the records contradict themselves. */
    public List<FarmBalance> impossible() {
        return balances.stream()
                .filter(balance -> balance.verdict() == BalanceVerdict.IMPOSSIBLE)
                .toList();
    }

    /** An inventory without balances, and without by-products of two uses. */
    public Inventory(String name, Output output, List<Flow> flows, List<Gap> gaps, List<Remark> remarks) {
        this(name, output, flows, gaps, remarks, List.of(), Optional.empty());
    }

    /** The same year with other gaps. */
    public Inventory withGaps(List<Gap> other) {
        return new Inventory(name, output, flows, other, remarks, balances, displacedUse);
    }

    /** The same year with {@link #displacedUse} counted. */
    public Optional<Inventory> withDisplacedUse() {
        return displacedUse.map(use -> new Inventory(
                name,
                output,
                joined(flows, use.flows()),
                joined(gaps, use.gaps()),
                remarks,
                balances,
                Optional.empty()));
    }

    private static <T> List<T> joined(List<T> first, List<T> second) {
        List<T> all = new ArrayList<>(first);
        all.addAll(second);
        return all;
    }

    /** The gaps that a question has to tell: those of land-use change only where its emissions are asked for. */
    public List<Gap> gaps(boolean landUseChange) {
        return landUseChange
                ? gaps
                : gaps.stream().filter(gap -> !gap.landUseChange()).toList();
    }

    /** What is required on a basis and not counted. */
    public List<Gap> uncounted(Scope scope) {
        return gaps.stream().filter(gap -> gap.lowers(scope)).toList();
    }

    /**
     * Whether what is added up here on a basis is the figure, or less than it because something required is not counted. Records that
     * contradict themselves bound nothing: which of them is wrong is not known.
     */
    public Bound bound(Scope scope) {
        if (!impossible().isEmpty()) {
            return Bound.NONE;
        }
        return uncounted(scope).isEmpty() ? Bound.EXACT : Bound.AT_LEAST;
    }
}

package org.scalepan.production;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scalepan.footprint.Bound;

/**
 * What goes in and out of a farm in a year: the same for an insect farm and a herd.
 *
 * @param name what the records call it
 * @param output the product that the question is about
 * @param flows every line that was counted
 * @param gaps every field that a default filled or that is not counted
 * @param remarks what a reader should look at
 * @param displacedUse what by-products that are sold and counted burden-free would add if their use elsewhere counted, if there are any
 */
public record Inventory(
        String name,
        Output output,
        List<Flow> flows,
        List<Gap> gaps,
        List<Remark> remarks,
        Optional<DisplacedUse> displacedUse) {
    public Inventory {
        flows = List.copyOf(flows);
        gaps = List.copyOf(gaps);
        remarks = List.copyOf(remarks);
    }

    public Inventory(String name, Output output, List<Flow> flows, List<Gap> gaps, List<Remark> remarks) {
        this(name, output, flows, gaps, remarks, Optional.empty());
    }

    /** The same year with {@link #displacedUse} counted. */
    public Optional<Inventory> withDisplacedUse() {
        return displacedUse.map(use -> new Inventory(
                name, output, joined(flows, use.flows()), joined(gaps, use.gaps()), remarks, Optional.empty()));
    }

    private static <T> List<T> joined(List<T> first, List<T> second) {
        List<T> all = new ArrayList<>(first);
        all.addAll(second);
        return all;
    }

    /** What is required on a basis and not counted. */
    public List<Gap> uncounted(Scope scope) {
        return gaps.stream().filter(gap -> gap.lowers(scope)).toList();
    }

    /** Whether what is added up here on a basis is the figure, or less than it because something required is not counted. */
    public Bound bound(Scope scope) {
        return uncounted(scope).isEmpty() ? Bound.EXACT : Bound.AT_LEAST;
    }
}

package org.scalepan.production;

import java.util.List;

/**
 * What goes in and out of a farm in a year: the same for an insect farm and a herd.
 *
 * @param name what the records call it
 * @param output the product that the question is about
 * @param flows every line that was counted
 * @param gaps every field that a default filled or that is not counted
 * @param remarks what a reader should look at
 */
public record Inventory(String name, Output output, List<Flow> flows, List<Gap> gaps, List<Remark> remarks) {
    public Inventory {
        flows = List.copyOf(flows);
        gaps = List.copyOf(gaps);
        remarks = List.copyOf(remarks);
    }

    /**
     * True when something recorded or usual that adds to an indicator is not counted: the true figure is higher than what is added up
     * here.
     */
    public boolean isLowerBound(String indicator) {
        return gaps.stream().anyMatch(gap -> gap.lowers(indicator));
    }
}

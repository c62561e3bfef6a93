package org.scalepan.production;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Collects the flows, gaps and remarks of one inventory. */
public final class InventoryBuilder {
    private final List<Flow> flows = new ArrayList<>();
    private final List<Gap> gaps = new ArrayList<>();
    private final List<Remark> remarks = new ArrayList<>();

    /**
     * Adds a line; a line of zero is left out.
     *
     * @param rows rows of the library that the line rests on beside those of the term's factors
     */
    public void flow(Stage stage, String what, Flux flux, ActivityTerm term, String... rows) {
        if (term.amount() != 0) {
            flows.add(new Flow(stage, what, flux, term, Optional.empty(), cited(term, rows)));
        }
    }

    /** Adds a line of CO2e that its source does not split by gas. */
    public void co2e(Stage stage, String what, ActivityTerm term, String warmingSet, String... rows) {
        if (term.amount() != 0) {
            flows.add(new Flow(stage, what, Flux.CO2E, term, Optional.of(warmingSet), cited(term, rows)));
        }
    }

    /** Every row behind a line, because a number without its sources is worth nothing to a reader. */
    private static List<String> cited(ActivityTerm term, String... rows) {
        Set<String> all = new LinkedHashSet<>(List.of(rows));
        term.uses().forEach(use -> use.factor().row().ifPresent(all::add));
        return List.copyOf(all);
    }

    /**
     * Notes that a default filled a field.
     *
     * @param indicators whose figures the field can change
     * @param rows the rows of the library behind the default
     */
    public void filled(String field, List<String> indicators, String with, String... rows) {
        gaps.add(new Gap(field, Gap.Kind.FILLED, indicators, with, List.of(rows)));
    }

    /**
     * Notes that something is not counted.
     *
     * @param indicators whose figures are the lower for it
     */
    public void notCounted(String field, List<String> indicators, String why) {
        gaps.add(new Gap(field, Gap.Kind.NOT_COUNTED, indicators, why, List.of()));
    }

    /** Adds a remark, unless the same is there already. */
    public void remark(String code, String text) {
        Remark remark = new Remark(code, text);
        if (!remarks.contains(remark)) {
            remarks.add(remark);
        }
    }

    /** The inventory of what was added. */
    public Inventory inventory(String name, Output output) {
        return new Inventory(name, output, flows, gaps, remarks);
    }

    /** The sum of a flux so far, centrally: for mass balances and plausibility. */
    public double total(Flux flux) {
        return flows.stream()
                .filter(flow -> flow.flux() == flux)
                .mapToDouble(flow -> flow.term().central())
                .sum();
    }
}

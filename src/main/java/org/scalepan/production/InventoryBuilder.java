package org.scalepan.production;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scalepan.words.Message;

/** Collects the flows, gaps and remarks of one inventory. */
public final class InventoryBuilder {
    private final List<Flow> flows = new ArrayList<>();
    private final List<Gap> gaps = new ArrayList<>();
    private final List<Remark> remarks = new ArrayList<>();
    private final List<UncountedLine> lines = new ArrayList<>();
    private final List<String> burdenFree = new ArrayList<>();
    private Optional<InventoryBuilder> displacedUse = Optional.empty();
    private final List<FarmBalance> balances = new ArrayList<>();
    private List<String> also = List.of();

    /** Recorded lines that no factor is held for may be this part of all lines of their kind before they make a bound. */
    private static final double NEGLIGIBLE = 0.01;

    /**
     * A gap that stands for a recorded line without a factor.
     *
     * @param measure what lines of this kind are measured by, in the whole inventory: {@link Flux#FEED} or {@link Flux#ENERGY}
     * @param amount of the line, in that measure
     */
    private record UncountedLine(Gap gap, Flux measure, double amount) {}

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

    /**
     * Adds lines that rest on more rows than their factors: an amount that was worked out of the library.
     *
     * @param rows rows behind the amount
     * @param lines adds the lines
     */
    void citing(List<String> rows, Runnable lines) {
        also = rows;
        lines.run();
        also = List.of();
    }

    /** Every row behind a line, because a number without its sources is worth nothing to a reader. */
    private List<String> cited(ActivityTerm term, String... rows) {
        List<String> all =
                new ArrayList<>(also.size() + rows.length + term.uses().size());
        also.forEach(row -> addOnce(all, row));
        for (String row : rows) {
            addOnce(all, row);
        }
        for (ActivityTerm.FactorUse use : term.uses()) {
            use.factor().row().ifPresent(row -> addOnce(all, row));
        }
        return List.copyOf(all);
    }

    private static void addOnce(List<String> all, String row) {
        if (!all.contains(row)) {
            all.add(row);
        }
    }

    /**
     * Notes that a default filled a field.
     *
     * @param indicators whose figures the field can change
     * @param rows the rows of the library behind the default
     */
    public void filled(String field, List<String> indicators, Message with, String... rows) {
        gaps.add(new Gap(field, Gap.Kind.FILLED, indicators, with, List.of(rows)));
    }

    /**
     * Notes that something is not counted.
     *
     * @param indicators whose figures are the lower for it
     */
    public void notCounted(String field, List<String> indicators, Message why) {
        gaps.add(new Gap(field, Gap.Kind.NOT_COUNTED, indicators, why, List.of()));
    }

    /** Notes that something of a stage is not counted; it matters within boundaries that include the stage. */
    public void notCounted(Stage stage, String field, List<String> indicators, Message why) {
        gaps.add(new Gap(field, Gap.Kind.NOT_COUNTED, indicators, why, List.of(), stage.boundary(), false));
    }

    /** Notes that the factor of a feed does not count emissions of land-use change, which matters where those are asked for. */
    void landUseChangeNotCounted(String ingredient, String row) {
        gaps.add(new Gap(
                "feed/" + ingredient + "/land-use change",
                Gap.Kind.NOT_COUNTED,
                Gap.GHG,
                Message.of("gap.no-luc", "ingredient", ingredient),
                List.of(row),
                Stage.FEED.boundary(),
                true));
    }

    /**
     * Notes that recorded lines are not counted, for want of a factor.
     *
     * @param measure what all lines of their kind are measured by: {@link Flux#FEED} or {@link Flux#ENERGY}
     * @param amount of these lines in that measure, in the year
     */
    public void lineNotCounted(
            Stage stage, Flux measure, double amount, String field, List<String> indicators, Message why) {
        notCounted(stage, field, indicators, why);
        lines.add(new UncountedLine(gaps.get(gaps.size() - 1), measure, amount));
    }

    /** Notes that something is left out that no figure is required to have. */
    public void cutOff(String field, List<String> indicators, Message why) {
        gaps.add(new Gap(field, Gap.Kind.CUT_OFF, indicators, why, List.of()));
    }

    /**
     * The same remark twice says nothing more.
     *
     * @param rows the rows of the library that the records are held against
     */
    public void remark(String code, Message message, String... rows) {
        Remark remark = new Remark(code, message, List.of(rows));
        if (!remarks.contains(remark)) {
            remarks.add(remark);
        }
    }

    /** Collects what a by-product that is sold and counted burden-free would add if its use elsewhere counted. */
    InventoryBuilder displacedUse(String ingredient) {
        burdenFree.add(ingredient);
        InventoryBuilder other = displacedUse.orElseGet(InventoryBuilder::new);
        displacedUse = Optional.of(other);
        return other;
    }

    /** Adds a balance; one that fails or is unusual is a remark too. */
    public void balance(FarmBalance balance) {
        balances.add(balance);
        switch (balance.verdict()) {
            case IMPOSSIBLE -> remark(Remark.AGAINST_PHYSICS, balance.message());
            case UNUSUAL -> remark(Remark.UNUSUAL, balance.message());
            case POSSIBLE, NOT_MADE -> {
                // Told among the balances.
            }
        }
    }

    /** The inventory of what was added. */
    public Inventory inventory(String name, Output output) {
        return new Inventory(
                name,
                output,
                flows,
                lines.isEmpty() ? gaps : gaps.stream().map(this::weighed).toList(),
                remarks,
                balances,
                displacedUse.map(other -> new DisplacedUse(burdenFree, other.flows, other.gaps)));
    }

    /** A gap that stands for lines which are negligible in all, for every indicator that it touches, makes no bound. */
    private Gap weighed(Gap gap) {
        for (UncountedLine line : lines) {
            if (line.gap().equals(gap)) {
                return gap.indicators().stream().allMatch(indicator -> negligible(line, indicator))
                        ? gap.as(Gap.Kind.CUT_OFF)
                        : gap;
            }
        }
        return gap;
    }

    private boolean negligible(UncountedLine line, String indicator) {
        double missing = 0;
        for (UncountedLine other : lines) {
            if (other.measure() == line.measure()
                    && other.gap().boundary() == line.gap().boundary()
                    && other.gap().indicators().contains(indicator)) {
                missing += other.amount();
            }
        }
        return missing < NEGLIGIBLE * total(line.measure());
    }

    /** The sum of a flux so far, centrally: for mass balances and plausibility. */
    public double total(Flux flux) {
        return flows.stream()
                .filter(flow -> flow.flux() == flux)
                .mapToDouble(flow -> flow.term().central())
                .sum();
    }
}

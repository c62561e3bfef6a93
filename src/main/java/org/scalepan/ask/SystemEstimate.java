package org.scalepan.ask;

import java.util.List;
import java.util.Optional;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.footprint.Bound;
import org.scalepan.footprint.ChainPath;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.footprint.Footprint;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.literature.LandUseChange;
import org.scalepan.production.FarmBalance;
import org.scalepan.production.FirstOrder;
import org.scalepan.production.Gap;
import org.scalepan.production.Inventory;
import org.scalepan.production.Output;
import org.scalepan.production.Scope;
import org.scalepan.production.SystemFootprint;
import org.scalepan.uncertainty.Summary;
import org.scalepan.words.DisplayName;
import org.scalepan.words.Message;

/**
 * The estimate for one farm or herd on a basis, from its records.
 *
 * @param system the inventory summed, when there is a conversion to the unit asked for and anything to count
 * @param why why there is none
 */
public record SystemEstimate(
        Inventory inventory,
        Scope scope,
        Optional<SystemFootprint> system,
        Optional<Footprint> footprint,
        Optional<Summary> summary,
        Optional<Message> why)
        implements Estimate {

    @Override
    public Optional<String> intervalOf() {
        boolean figure = summary.isPresent() || firstOrder().isPresent();
        return figure ? Optional.of("records") : Optional.empty();
    }

    @Override
    public DisplayName name() {
        return DisplayName.given(inventory.name());
    }

    @Override
    public Product product() {
        return inventory.output().product();
    }

    @Override
    public Optional<Footprint> drawn(CommonRandomNumbers random) {
        return system.map(found -> found.footprint(random));
    }

    @Override
    public boolean hasEnoughStudies() {
        return bound() == Bound.EXACT;
    }

    @Override
    public boolean isLowerBound() {
        return bound() == Bound.AT_LEAST;
    }

    @Override
    public Bound bound() {
        return inventory.bound(scope);
    }

    @Override
    public List<Message> uncounted() {
        return inventory.uncounted(scope).stream()
                .map(Gap::fieldMessage)
                .distinct()
                .toList();
    }

    @Override
    public List<Message> countedBeyond() {
        return List.of();
    }

    @Override
    public List<Message> contradictions() {
        return inventory.impossible().stream().map(FarmBalance::message).toList();
    }

    @Override
    public String form() {
        return inventory.output().form();
    }

    /** The worst check grade among the factors that the figure rests on, which are counted whatever it is. */
    @Override
    public Optional<Grade> lowestGrade(Library library) {
        return RowGrades.lowest(library, this);
    }

    public static SystemEstimate of(
            Library library,
            Inventory inventory,
            ComparisonBasis basis,
            boolean credit,
            Sampling sampling,
            CommonRandomNumbers random) {
        SystemEstimate estimate = undrawn(library, inventory, basis, credit);
        if (estimate.system.isEmpty()) {
            return estimate;
        }
        Footprint footprint = estimate.system.get().footprint(random);
        return new SystemEstimate(
                inventory,
                estimate.scope,
                estimate.system,
                Optional.of(footprint),
                Optional.of(footprint.summary(sampling.coverage())),
                Optional.empty());
    }

    /** The figure by Monte Carlo, drawn for itself alone. */
    public static SystemEstimate drawn(
            Library library, Inventory inventory, ComparisonBasis basis, boolean credit, Sampling sampling) {
        return of(library, inventory, basis, credit, sampling, sampling.random());
    }

    /** Without draws: the central value, with {@link #firstOrder} for its uncertainty. */
    public static SystemEstimate undrawn(Library library, Inventory inventory, ComparisonBasis basis, boolean credit) {
        Scope scope = new Scope(
                basis.indicator(),
                basis.per(),
                basis.boundary(),
                basis.gwp(),
                credit,
                basis.luc() == LandUseChange.INCLUDE);
        if (!Scope.BOUNDARIES.contains(scope.boundary())) {
            return none(inventory, scope, Message.of("missing.retail"));
        }
        ChainPath path = inventory
                .output()
                .chain(library, basis.protein(), basis.qualityCapped())
                .path(inventory.output().per(), basis.per());
        if (path instanceof ChainPath.MissingConversion missing) {
            return none(inventory, scope, wayOn(missing.message(), inventory.output(), basis.per()));
        }
        SystemFootprint system = new SystemFootprint(inventory, scope, ((ChainPath.FoundPath) path).steps());
        if (system.isEmpty()) {
            return none(
                    inventory,
                    scope,
                    Message.of(
                            "missing.nothing-counted",
                            "indicator",
                            basis.indicator().id()));
        }
        return new SystemEstimate(
                inventory, scope, Optional.of(system), Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static SystemEstimate none(Inventory inventory, Scope scope, Message why) {
        return new SystemEstimate(
                inventory, scope, Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(why));
    }

    /** What an insect farm can do about a unit that nothing leads to: state what its animals hold, or ask per what it sells. */
    private static Message wayOn(Message missing, Output output, FunctionalUnit asked) {
        if (!output.product().isInsect() || asked == output.per() || asked == FunctionalUnit.KG_CARCASS) {
            return missing;
        }
        boolean fresh = output.form().equals(output.product().defaultForm());
        String where = output.product().isOfRecords() ? "product." : "composition.";
        boolean protein =
                asked.countsProtein() && output.composition().proteinTerm().isEmpty();
        boolean dry = asked == FunctionalUnit.KG_DRY_MATTER
                && output.composition().dryMatter().isEmpty();
        return fresh && (protein || dry)
                ? Message.of(
                        "missing.give-or-ask",
                        "why",
                        missing,
                        "field",
                        where + (protein ? "protein" : "dry_matter"),
                        "per",
                        output.per().id())
                : Message.of("missing.ask", "why", missing, "per", output.per().id());
    }

    /** The uncertainty by first-order propagation. */
    public Optional<FirstOrder> firstOrder() {
        return system.map(SystemFootprint::firstOrder);
    }
}

package org.scalepan.ask;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.scalepan.cite.Reference;
import org.scalepan.factors.BackgroundFactor;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.factors.table.Row;
import org.scalepan.factors.table.Table;
import org.scalepan.literature.EnergyKind;
import org.scalepan.production.Flux;
import org.scalepan.production.Inventory;
import org.scalepan.production.Remark;
import org.scalepan.production.Stage;
import org.scalepan.words.Listing;
import org.scalepan.words.Message;

/**
 * The provenance of the estimates of one answer, from the literature or from records: their warnings, publications and products.
 */
public record Provenance(Library library, List<Estimate> estimates) {
    public Provenance {
        estimates = List.copyOf(estimates);
    }

    /** The warnings. */
    public List<Warning> warnings() {
        List<Warning> warnings = new ArrayList<>();
        if (inventories().flatMap(inventory -> inventory.flows().stream()).anyMatch(flow -> flow.flux() == Flux.CO2E)) {
            warnings.add(new Warning("other-warming-set", Message.of("warning.other-warming-set.factors"), List.of()));
        }
        if (systems().anyMatch(SystemEstimate::isLowerBound)) {
            warnings.add(Warning.of("lower-bound", List.of()));
        }
        energyKinds().ifPresent(warnings::add);
        List<Message> impossible = systems()
                .flatMap(estimate -> estimate.contradictions().stream()
                        .map(why -> Message.of("of-side", "side", estimate.name(), "what", why)))
                .distinct()
                .toList();
        if (!impossible.isEmpty()) {
            warnings.add(Warning.of("impossible-balance", List.of(), "why", Listing.semicolons(impossible)));
        }
        retailFeed().ifPresent(warnings::add);
        unprocessed().ifPresent(warnings::add);
        List<PublishedEstimate> published = published().toList();
        if (!published.isEmpty()) {
            warnings.addAll(Warnings.of(library, published));
        }
        modelledFarms().ifPresent(warnings::add);
        if (!published.isEmpty() && inventories().findAny().isPresent()) {
            warnings.add(Warning.of("computed-beside-published", List.of()));
        }
        return warnings;
    }

    /** What figures modelled from practice are, and are not. */
    private Optional<Warning> modelledFarms() {
        List<String> farms = modelled()
                .flatMap(estimate -> estimate.farm().stream())
                .map(farm -> farm.farm().id())
                .distinct()
                .toList();
        return farms.isEmpty() ? Optional.empty() : Optional.of(Warning.of("modelled", farms));
    }

    /** Farms that sell dried larvae or meal and record nothing done after the harvest, where the boundary includes it. */
    private Optional<Warning> unprocessed() {
        List<String> farms = systems()
                .filter(estimate -> estimate.scope().boundary().includes(Stage.PROCESSING.boundary()))
                .map(SystemEstimate::inventory)
                .filter(inventory -> inventory.remarks().stream()
                        .anyMatch(remark -> remark.code().equals(Remark.UNPROCESSED)))
                .map(Inventory::name)
                .distinct()
                .toList();
        return farms.isEmpty() ? Optional.empty() : Optional.of(Warning.of(Remark.UNPROCESSED, farms));
    }

    /** Publications that count another energy than records do, or do not say which. */
    private Optional<Warning> energyKinds() {
        if (systems().findAny().isEmpty()) {
            return Optional.empty();
        }
        List<Message> said = published()
                .flatMap(estimate -> estimate.energyKind().stream()
                        .filter(kind -> kind != EnergyKind.TOTAL)
                        .map(kind -> Message.of("energy-of", "product", estimate.name(), "kind", kind.message())))
                .distinct()
                .toList();
        return said.isEmpty()
                ? Optional.empty()
                : Optional.of(Warning.of("unlike-energy", List.of(), "which", Listing.commas(said)));
    }

    /** Which feed of the figures at hand is counted up to retail; lines of other indicators do not concern them. */
    private Optional<Warning> retailFeed() {
        Set<String> retail = library.background("ingredient_factors").stream()
                .filter(BackgroundFactor::endsAtRetail)
                .map(BackgroundFactor::id)
                .collect(Collectors.toSet());
        List<String> used = systems()
                .flatMap(estimate -> estimate.inventory().flows().stream()
                        .filter(flow -> flow.flux()
                                .indicator()
                                .equals(estimate.scope().indicator().id())))
                .flatMap(flow -> flow.rows().stream())
                .filter(retail::contains)
                .distinct()
                .toList();
        return used.isEmpty() ? Optional.empty() : Optional.of(Warning.of("retail-feed-factor", used));
    }

    /** The publications, in order of first use. */
    public List<Reference> references() {
        Citations citations = new Citations();
        published().forEach(citations::add);
        Set<String> rows = new LinkedHashSet<>();
        inventories().forEach(inventory -> {
            inventory.flows().forEach(flow -> rows.addAll(flow.rows()));
            inventory.gaps().forEach(gap -> rows.addAll(gap.rows()));
            inventory.remarks().forEach(remark -> rows.addAll(remark.rows()));
            inventory.displacedUse().ifPresent(use -> use.flows().forEach(flow -> rows.addAll(flow.rows())));
        });
        modelled().flatMap(estimate -> estimate.farm().stream()).forEach(farm -> rows.addAll(farm.rows()));
        if (!rows.isEmpty()) {
            cite(rows, citations);
        }
        return citations.references(library);
    }

    /** The products of all sides. */
    public List<Product> products() {
        return estimates.stream().map(Estimate::product).distinct().toList();
    }

    private void cite(Set<String> rows, Citations citations) {
        for (Table table : library.tables()) {
            for (Row row : table.rows()) {
                if (row.optional("id").filter(rows::contains).isPresent()) {
                    row.list("source").forEach(citations::addSource);
                }
            }
        }
    }

    private Stream<PublishedEstimate> published() {
        return estimates.stream().filter(PublishedEstimate.class::isInstance).map(PublishedEstimate.class::cast);
    }

    private Stream<SystemEstimate> systems() {
        return estimates.stream().flatMap(Provenance::system);
    }

    private static Stream<SystemEstimate> system(Estimate estimate) {
        if (estimate instanceof ModelledEstimate modelled) {
            return modelled.system().stream();
        }
        return estimate instanceof SystemEstimate system ? Stream.of(system) : Stream.empty();
    }

    private Stream<ModelledEstimate> modelled() {
        return estimates.stream().filter(ModelledEstimate.class::isInstance).map(ModelledEstimate.class::cast);
    }

    private Stream<Inventory> inventories() {
        return systems().map(SystemEstimate::inventory);
    }
}

package org.scalepan.ask;

import java.util.List;
import java.util.Optional;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.factors.Regions;
import org.scalepan.footprint.Bound;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.footprint.Footprint;
import org.scalepan.production.practice.ModelledFarm;
import org.scalepan.production.practice.ModelledFarms;
import org.scalepan.uncertainty.Summary;
import org.scalepan.words.DisplayName;
import org.scalepan.words.Message;

/**
 * The estimate for one product on a basis, modelled from published practice: a reference farm, computed as records are. It is not a
 * study, and no sentence about it leaves that out.
 *
 * @param farm the reference farm, where the library has one of the product
 * @param system what it comes to on the basis
 * @param others further reference farms of the product
 */
public record ModelledEstimate(
        ProductForm item,
        ComparisonBasis basis,
        Optional<ModelledFarm> farm,
        Optional<SystemEstimate> system,
        List<ModelledFarm> others)
        implements Estimate {
    /** What every sentence says of such a figure. */
    public static final Message MESSAGE = Message.of("modelled");
    /** The same of two sides. */
    public static final Message MESSAGE_OF_BOTH = Message.of("modelled.both");

    public ModelledEstimate {
        others = List.copyOf(others);
    }

    /** The estimate by the reference farm that the basis names, or that its region stands for. */
    public static ModelledEstimate of(
            Library library, ProductForm item, ComparisonBasis basis, Sampling sampling, CommonRandomNumbers random) {
        return of(
                library,
                item,
                basis,
                farm -> SystemEstimate.of(library, farm.inventory(), basis, false, sampling, random));
    }

    /** The same, without draws. */
    public static ModelledEstimate undrawn(Library library, ProductForm item, ComparisonBasis basis) {
        return of(library, item, basis, farm -> SystemEstimate.undrawn(library, farm.inventory(), basis, false));
    }

    private static ModelledEstimate of(
            Library library,
            ProductForm item,
            ComparisonBasis basis,
            java.util.function.Function<ModelledFarm, SystemEstimate> computed) {
        List<ModelledFarm> farms = ModelledFarms.of(library).of(item.product(), basis.region());
        Optional<ModelledFarm> farm = farms.stream()
                .filter(one -> basis.system().filter(one.farm().id()::equals).isPresent())
                .findFirst()
                .or(() -> farms.stream().findFirst());
        boolean usual = item.form().equals(item.product().defaultForm())
                || farm.filter(one -> one.inventory().output().form().equals(item.form()))
                        .isPresent();
        return new ModelledEstimate(
                item,
                basis,
                farm,
                usual ? farm.map(computed) : Optional.empty(),
                farms.stream().filter(one -> farm.filter(one::equals).isEmpty()).toList());
    }

    @Override
    public DisplayName name() {
        return item.name();
    }

    @Override
    public Product product() {
        return item.product();
    }

    @Override
    public Optional<Footprint> footprint() {
        return system.flatMap(SystemEstimate::footprint);
    }

    @Override
    public Optional<Summary> summary() {
        return system.flatMap(SystemEstimate::summary);
    }

    @Override
    public Optional<String> intervalOf() {
        return summary().map(found -> "practice");
    }

    @Override
    public Optional<Footprint> drawn(CommonRandomNumbers random) {
        return system.flatMap(found -> found.drawn(random));
    }

    @Override
    public Optional<Message> why() {
        if (farm.isEmpty()) {
            return Optional.of(Message.of("missing.reference-farm", "product", item.name()));
        }
        return system.isPresent()
                ? system.get().why()
                : Optional.of(Message.of(
                        "missing.other-form",
                        "product",
                        DisplayName.of(
                                "product." + item.product().id(), item.product().name()),
                        "form",
                        farm.get().inventory().output().form()));
    }

    /** A model has no studies that could be too few; that it is none is said by its own words, wherever studies would be counted. */
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
        return system.map(SystemEstimate::bound).orElse(Bound.EXACT);
    }

    @Override
    public List<Message> uncounted() {
        return system.map(SystemEstimate::uncounted).orElse(List.of());
    }

    @Override
    public List<Message> countedBeyond() {
        return List.of();
    }

    @Override
    public List<Message> contradictions() {
        return system.map(SystemEstimate::contradictions).orElse(List.of());
    }

    @Override
    public String form() {
        return item.form();
    }

    /** The region of the farm, or the world. */
    @Override
    public Optional<String> regionUsed() {
        return summary().map(found -> farm.flatMap(one -> one.farm().region()).orElse(Regions.WORLD));
    }

    /** The worst check grade among its inputs and the factors that they are counted with. */
    @Override
    public Optional<Grade> lowestGrade(Library library) {
        Optional<Grade> factors =
                system.filter(found -> found.system().isPresent()).flatMap(found -> found.lowestGrade(library));
        Optional<Grade> inputs = farm.flatMap(ModelledFarm::lowestGrade);
        return factors.isPresent() && inputs.isPresent()
                ? Optional.of(factors.get().isAtLeast(inputs.get()) ? inputs.get() : factors.get())
                : factors.or(() -> inputs);
    }
}

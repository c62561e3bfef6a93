package org.scalepan.production.insects;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.scalepan.factors.BackgroundFactor;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.factors.PublishedResult;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.production.ActivityTerm;
import org.scalepan.production.Background;
import org.scalepan.production.FarmInventory;
import org.scalepan.production.FarmRecords.CoProduct;
import org.scalepan.production.FarmRecords.EnergyUse;
import org.scalepan.production.Gap;
import org.scalepan.production.Inventory;
import org.scalepan.production.InventoryBuilder;
import org.scalepan.production.Output;
import org.scalepan.production.RecordedNumber;
import org.scalepan.production.Remark;
import org.scalepan.production.Stage;
import org.scalepan.production.TermFactor;
import org.scalepan.words.Listing;
import org.scalepan.words.Message;

/** Computes the inventory of an insect farm: per year, all inputs and every gas emitted. */
public final class InsectInventory {
    private static final double MJ_PER_KWH = 3.6;
    private static final String FRESH = "fresh";

    private final Library library;
    private final Background background;
    private final InsectFactors factors;
    private final AnimalContents contents;
    private final InsectFarm farm;
    private final InventoryBuilder builder = new InventoryBuilder();
    private final FarmInventory farmInventory;

    private InsectInventory(Library library, InsectFarm farm) {
        this.library = library;
        this.background = Background.of(library);
        this.factors = InsectFactors.of(library);
        this.farm = farm;
        this.contents = new AnimalContents(library, farm);
        this.farmInventory = new FarmInventory(library, farm.records(), builder);
    }

    /** The inventory of a farm. */
    public static Inventory inventory(Library library, InsectFarm farm) {
        return new InsectInventory(library, farm).make();
    }

    private Inventory make() {
        ofRecords();
        farmInventory.add(farm.records());
        new HeatingInventory(library, farm, builder).add(farmInventory);
        animals();
        FrassInventory frass = new FrassInventory(
                library,
                farm,
                builder,
                farmInventory.feedNitrogen(),
                farmInventory.feedWithoutNitrogen(),
                farmInventory.feedMassWithoutNitrogen(),
                contents.nitrogenOf(farm.harvest().mass()));
        frass.add();
        if (farm.processing().isEmpty()) {
            builder.filled("processing", Gap.OF_ENERGY, Message.of("gap.no-processing"));
        }
        unprocessed();
        farm.processing().forEach(this::process);
        new InsectBalances(library, farm, farmInventory, builder).add(frass.weighed());
        new InsectPractice(library, farm, builder, farmInventory.feedDryMatter()).remark();
        return builder.inventory(farm.records().name(), output());
    }

    /** An insect that the library does not know may be one that it knows by another name. */
    private void ofRecords() {
        Product product = farm.product();
        if (!product.isOfRecords()) {
            return;
        }
        List<String> near = KnownInsects.of(library).near(product.name());
        builder.remark(Remark.OWN_SPECIES, ownSpecies(product, near));
    }

    /** What is sold dried or milled was dried and milled somewhere. */
    private void unprocessed() {
        boolean recorded =
                !farm.processing().isEmpty() || farm.records().energy().stream().anyMatch(EnergyUse::forProcessing);
        farm.form()
                .filter(form -> !form.equals(FRESH) && !recorded)
                .ifPresent(form -> builder.remark(
                        Remark.UNPROCESSED, Message.of("remark.unprocessed", "form", Message.of("form." + form))));
    }

    private Output output() {
        if (farm.keptForBreeding().isEmpty()) {
            builder.filled("kept_for_breeding", Gap.ALL, Message.of("gap.all-sold"));
        }
        boolean live = farm.sold().isEmpty();
        if (live) {
            builder.filled("sold_kg", Gap.ALL, Message.of("gap.sold-by-harvest"));
        }
        if (farm.form().isEmpty()) {
            builder.filled("form", Gap.ALL, Message.verbatim(FRESH));
        }
        ActivityTerm amount = live
                ? farm.harvest().mass().times(termOr(farm.keptForBreeding()).complement())
                : farm.sold().get().term();
        return new Output(
                farm.product(),
                farm.form().orElse(FRESH),
                live ? FunctionalUnit.KG_LIVE : FunctionalUnit.KG_PRODUCT,
                amount,
                share(amount),
                rule().name().toLowerCase(Locale.ROOT),
                farm.composition());
    }

    private InsectFarm.CoProductRule rule() {
        return farm.coProductRule().orElse(InsectFarm.CoProductRule.NONE);
    }

    /** The share of the burden allocated to the product beside its co-products. */
    private ActivityTerm share(ActivityTerm amount) {
        List<CoProduct> others = farm.records().coProducts();
        if (others.isEmpty()) {
            builder.filled("co_products", Gap.ALL, Message.of("gap.no-co-products"));
        } else if (farm.coProductRule().isEmpty()) {
            builder.filled("co_product_allocation", Gap.ALL, Message.of("gap.no-co-products"));
        }
        if (others.isEmpty() || rule() == InsectFarm.CoProductRule.NONE) {
            if (!others.isEmpty()) {
                builder.remark(Remark.METHOD, Message.of("remark.co-products"));
            }
            return ActivityTerm.of(1);
        }
        boolean byPrice = rule() == InsectFarm.CoProductRule.ECONOMIC;
        List<ActivityTerm> worth = new ArrayList<>();
        worth.add(byPrice ? amount.times(farm.price().orElseThrow().term()) : amount);
        for (CoProduct other : others) {
            ActivityTerm mass = other.kilograms().term();
            worth.add(byPrice ? mass.times(other.price().orElseThrow().term()) : mass);
        }
        return ActivityTerm.derived(new FirstOfAll(), worth);
    }

    /** The part that the first has of all. */
    private record FirstOfAll() implements TermFactor.RecordFormula {
        @Override
        public double of(double[] inputs) {
            double all = 0;
            for (double input : inputs) {
                all += input;
            }
            return inputs[0] / all;
        }
    }

    private static ActivityTerm termOr(Optional<RecordedNumber> share) {
        return share.map(RecordedNumber::term).orElse(ActivityTerm.of(0));
    }

    private void animals() {
        if (farm.mortality().isEmpty()) {
            builder.filled("mortality", Gap.GHG, Message.of("gap.no-mortality"));
        }
        ActivityTerm gain = farm.harvest().mass().over(termOr(farm.mortality()).complement());
        factors.gases(farm.product().id()).ifPresentOrElse(own -> measured(own, gain), () -> anyInsect(gain));
    }

    private void anyInsect(ActivityTerm gain) {
        InsectFactors.Range range = factors.range();
        builder.filled(Gap.ANIMAL_GASES + farm.product().label(), Gap.GHG, range.message(), range.rows());
        builder.co2e(
                Stage.ANIMALS,
                "gases of the larvae",
                gain.times(range.factor()),
                range.results().get(0).gwp().orElse("not-stated"),
                range.rows());
    }

    private void measured(InsectFactors.Gases own, ActivityTerm gain) {
        PublishedResult result = own.result();
        ActivityTerm term = gain.times(own.factor());
        if (result.per().equals("kg-dry-matter")) {
            Optional<AnimalContents.AnimalContent> dry = contents.dryMatter();
            if (dry.isEmpty()) {
                builder.notCounted(
                        Stage.ANIMALS,
                        Gap.ANIMAL_GASES + farm.product().id(),
                        Gap.GHG,
                        Message.of("gap.gases-per-dry-matter"));
                return;
            }
            term = term.times(dry.get().share());
        }
        builder.co2e(Stage.ANIMALS, "gases of the larvae", term, result.gwp().orElse("not-stated"), result.id());
    }

    private void process(InsectFarm.Processing processing) {
        if (processing.energy().isPresent()) {
            farmInventory.heat(
                    processing.carrier(),
                    processing
                            .water()
                            .term()
                            .times(processing.energy().get().term())
                            .times(MJ_PER_KWH));
            return;
        }
        String quantity = processing.step().equals("drying") ? "energy-demand" : "heat-floor";
        Optional<BackgroundFactor> row = background.row("processing_factors", processing.step(), quantity);
        if (row.isEmpty()) {
            builder.notCounted(
                    Stage.PROCESSING, "processing/" + processing.step(), Gap.OF_ENERGY, Message.of("gap.no-demand"));
            return;
        }
        if (quantity.equals("heat-floor")) {
            builder.filled(
                    "processing/" + processing.step() + "/energy",
                    Gap.OF_ENERGY,
                    Message.of("gap.physical-minimum"),
                    row.get().id());
            builder.notCounted(
                    Stage.PROCESSING,
                    "processing/" + processing.step() + "/losses",
                    Gap.OF_ENERGY,
                    Message.of("gap.heat-lost"));
        }
        farmInventory.heat(processing.carrier(), processing.water().term().times(background.factor(row.get())));
    }

    private static Message ownSpecies(Product product, List<String> near) {
        return near.isEmpty()
                ? Message.of("remark.own-species", "product", product.name())
                : Message.of("remark.own-species.near", "product", product.name(), "near", Listing.or(near));
    }
}

package org.scalepan.production.insects;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scalepan.factors.BackgroundFactor;
import org.scalepan.factors.Library;
import org.scalepan.factors.PublishedResult;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.production.ActivityTerm;
import org.scalepan.production.Background;
import org.scalepan.production.Factor;
import org.scalepan.production.FarmInventory;
import org.scalepan.production.FarmRecords.CoProduct;
import org.scalepan.production.FarmRecords.EnergyUse;
import org.scalepan.production.Gap;
import org.scalepan.production.Inventory;
import org.scalepan.production.InventoryBuilder;
import org.scalepan.production.Output;
import org.scalepan.production.Remark;
import org.scalepan.production.Stage;

/** Computes the inventory of an insect farm: per year, all inputs and every gas emitted. */
public final class InsectInventory {
    private static final double PROTEIN_PER_NITROGEN = 6.25;
    private static final double MJ_PER_KWH = 3.6;
    private static final String FRESH = "fresh";

    private final Library library;
    private final Background background;
    private final InsectFactors factors;
    private final InsectFarm farm;
    private final InventoryBuilder builder = new InventoryBuilder();
    private final FarmInventory farmInventory;

    private InsectInventory(Library library, InsectFarm farm) {
        this.library = library;
        this.background = Background.of(library);
        this.factors = InsectFactors.of(library);
        this.farm = farm;
        this.farmInventory = new FarmInventory(library, farm.records(), builder);
    }

    /** The inventory of a farm. */
    public static Inventory inventory(Library library, InsectFarm farm) {
        return new InsectInventory(library, farm).make();
    }

    private Inventory make() {
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
                larvalNitrogen());
        frass.add();
        if (farm.processing().isEmpty()) {
            builder.filled("processing", Gap.OF_ENERGY, "none: nothing is done behind the gate");
        }
        unprocessed();
        farm.processing().forEach(this::process);
        new InsectBalances(library, farm, farmInventory, builder).add(frass.weighed());
        new InsectPractice(library, farm, builder, farmInventory.feedDryMatter()).remark();
        return builder.inventory(farm.records().name(), output());
    }

    /** What is sold dried or milled was dried and milled somewhere. */
    private void unprocessed() {
        boolean recorded =
                !farm.processing().isEmpty() || farm.records().energy().stream().anyMatch(EnergyUse::forProcessing);
        farm.form()
                .filter(form -> !form.equals(FRESH) && !recorded)
                .ifPresent(form -> builder.remark(
                        Remark.UNPROCESSED,
                        "sold as " + form.replace('-', ' ')
                                + ", and no processing is recorded: up to the processing gate nothing of drying or milling is"
                                + " counted (give processing, or energy for processing)"));
    }

    private Output output() {
        double kept = farm.keptForBreeding().orElse(0);
        if (farm.keptForBreeding().isEmpty()) {
            builder.filled("kept_for_breeding", Gap.ALL, "0: the whole harvest is counted as sold");
        }
        boolean live = farm.sold().isEmpty();
        if (live) {
            builder.filled("sold_kg", Gap.ALL, "the live harvest less what is kept for breeding");
        }
        if (farm.form().isEmpty()) {
            builder.filled("form", Gap.ALL, FRESH);
        }
        double amount =
                live ? farm.harvest().kilograms() * (1 - kept) : farm.sold().getAsDouble();
        return new Output(
                farm.product(),
                farm.form().orElse(FRESH),
                live ? FunctionalUnit.KG_LIVE : FunctionalUnit.KG_PRODUCT,
                amount,
                share(amount),
                rule().name().toLowerCase(Locale.ROOT));
    }

    private InsectFarm.CoProductRule rule() {
        return farm.coProductRule().orElse(InsectFarm.CoProductRule.NONE);
    }

    /** The share of the burden allocated to the product beside its co-products. */
    private double share(double amount) {
        List<CoProduct> others = farm.records().coProducts();
        if (others.isEmpty()) {
            builder.filled("co_products", Gap.ALL, "none: all of the burden rests on the product");
        } else if (farm.coProductRule().isEmpty()) {
            builder.filled("co_product_allocation", Gap.ALL, "none: all of the burden rests on the product");
        }
        if (others.isEmpty() || rule() == InsectFarm.CoProductRule.NONE) {
            if (!others.isEmpty()) {
                builder.remark(Remark.METHOD, "co-products carry no burden; all rests on the product");
            }
            return 1;
        }
        boolean byPrice = rule() == InsectFarm.CoProductRule.ECONOMIC;
        double own = byPrice ? amount * farm.price().orElseThrow() : amount;
        double all = own;
        for (CoProduct other : others) {
            all += byPrice ? other.kilograms() * other.price().orElseThrow() : other.kilograms();
        }
        return own / all;
    }

    private void animals() {
        if (farm.mortality().isEmpty()) {
            builder.filled("mortality", Gap.GHG, "0: the harvest is counted as all that grew");
        }
        double gain = farm.harvest().kilograms() / (1 - farm.mortality().orElse(0));
        factors.gases(farm.product().id()).ifPresentOrElse(own -> measured(own, gain), () -> anyInsect(gain));
    }

    private void anyInsect(double gain) {
        InsectFactors.Range range = factors.range();
        builder.filled(Gap.ANIMAL_GASES + farm.product().id(), Gap.GHG, range.words(), range.rows());
        builder.co2e(
                Stage.ANIMALS,
                "gases of the larvae",
                ActivityTerm.of(gain).times(range.factor()),
                range.results().get(0).gwp().orElse("not-stated"),
                range.rows());
    }

    private void measured(InsectFactors.Gases own, double gain) {
        PublishedResult result = own.result();
        ActivityTerm term = ActivityTerm.of(gain).times(own.factor());
        if (result.per().equals("kg-dry-matter")) {
            Optional<Factor> dry = content("dry-matter");
            if (dry.isEmpty()) {
                builder.notCounted(
                        Stage.ANIMALS,
                        Gap.ANIMAL_GASES + farm.product().id(),
                        Gap.GHG,
                        "not counted: measured per dry matter, which is not known");
                return;
            }
            term = term.times(dry.get());
        }
        builder.co2e(Stage.ANIMALS, "gases of the larvae", term, result.gwp().orElse("not-stated"), result.id());
    }

    private Optional<Factor> content(String quantity) {
        return factors.content(farm.product().id(), quantity);
    }

    private OptionalDouble larvalNitrogen() {
        return content("protein")
                .map(share -> OptionalDouble.of(farm.harvest().kilograms() * share.central() / PROTEIN_PER_NITROGEN))
                .orElse(OptionalDouble.empty());
    }

    private void process(InsectFarm.Processing processing) {
        if (processing.energy().isPresent()) {
            farmInventory.heat(
                    processing.carrier(),
                    ActivityTerm.of(processing.water() * processing.energy().getAsDouble() * MJ_PER_KWH));
            return;
        }
        String quantity = processing.step().equals("drying") ? "energy-demand" : "heat-floor";
        Optional<BackgroundFactor> row = background.row("processing_factors", processing.step(), quantity);
        if (row.isEmpty()) {
            builder.notCounted(
                    Stage.PROCESSING,
                    "processing/" + processing.step(),
                    Gap.OF_ENERGY,
                    "not counted: no energy demand in this library");
            return;
        }
        if (quantity.equals("heat-floor")) {
            builder.filled(
                    "processing/" + processing.step() + "/energy",
                    Gap.OF_ENERGY,
                    "the physical minimum, a lower bound; give the energy used instead (energy with processing true)",
                    row.get().id());
            builder.notCounted(
                    Stage.PROCESSING,
                    "processing/" + processing.step() + "/losses",
                    Gap.OF_ENERGY,
                    "not counted: heat lost beyond the physical minimum");
        }
        farmInventory.heat(
                processing.carrier(), ActivityTerm.of(processing.water()).times(background.factor(row.get())));
    }
}

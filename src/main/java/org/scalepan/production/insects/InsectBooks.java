package org.scalepan.production.insects;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scalepan.factors.BackgroundFactor;
import org.scalepan.factors.CompositionRow;
import org.scalepan.factors.Library;
import org.scalepan.factors.PublishedResult;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.production.Background;
import org.scalepan.production.Factor;
import org.scalepan.production.FarmBooks;
import org.scalepan.production.FarmRecords.CoProduct;
import org.scalepan.production.Inventory;
import org.scalepan.production.Ledger;
import org.scalepan.production.Output;
import org.scalepan.production.Remark;
import org.scalepan.production.Stage;
import org.scalepan.production.Term;
import org.scalepan.uncertainty.LogUniform;
import org.scalepan.uncertainty.SpreadReading;

/** Makes the inventory of an insect farm (M7): per year, everything that goes in and every gas that comes out. */
public final class InsectBooks {
    private static final String ANIMAL = "animal";
    private static final String INSECT = "insect";
    private static final double PROTEIN_PER_NITROGEN = 6.25;
    private static final double MJ_PER_KWH = 3.6;

    private final Library library;
    private final Background background;
    private final InsectFarm farm;
    private final Ledger ledger = new Ledger();
    private final FarmBooks books;

    private InsectBooks(Library library, InsectFarm farm) {
        this.library = library;
        this.background = Background.of(library);
        this.farm = farm;
        this.books = new FarmBooks(library, farm.records(), ledger);
    }

    /** The inventory of a farm. */
    public static Inventory inventory(Library library, InsectFarm farm) {
        return new InsectBooks(library, farm).make();
    }

    private Inventory make() {
        books.book(farm.records());
        animals();
        new FrassBooks(library, farm, ledger, books.feedNitrogen(), books.feedWithoutNitrogen(), larvalNitrogen())
                .book();
        farm.processing().forEach(this::process);
        new InsectPractice(library, farm, ledger, books.feedDryMatter(), dryMatterOfHarvest()).remark();
        return ledger.inventory(farm.records().name(), output());
    }

    private Output output() {
        double kept = farm.keptForBreeding().orElse(0);
        if (farm.keptForBreeding().isEmpty()) {
            ledger.gap("kept_for_breeding", "0: the whole harvest is counted as sold");
        }
        boolean live = farm.sold().isEmpty();
        double amount = live
                ? farm.harvest().kilograms() * (1 - kept)
                : farm.sold().getAsDouble();
        return new Output(
                farm.product(),
                farm.form(),
                live ? FunctionalUnit.KG_LIVE : FunctionalUnit.KG_PRODUCT,
                amount,
                share(amount),
                farm.coProductRule().name().toLowerCase(Locale.ROOT));
    }

    /** The part of the burden that the product carries beside its co-products. */
    private double share(double amount) {
        List<CoProduct> others = farm.records().coProducts();
        if (others.isEmpty() || farm.coProductRule() == InsectFarm.CoProductRule.NONE) {
            if (!others.isEmpty()) {
                ledger.remark(Remark.METHOD, "co-products carry no burden; all rests on the product");
            }
            return 1;
        }
        boolean byPrice = farm.coProductRule() == InsectFarm.CoProductRule.ECONOMIC;
        double own = byPrice ? amount * farm.price().orElseThrow() : amount;
        double all = own;
        for (CoProduct other : others) {
            all += byPrice ? other.kilograms() * other.price().orElseThrow() : other.kilograms();
        }
        return own / all;
    }

    private void animals() {
        if (farm.mortality().isEmpty()) {
            ledger.gap("mortality", "0: the harvest is counted as all that grew");
        }
        double gain = farm.harvest().kilograms() / (1 - farm.mortality().orElse(0));
        Optional<PublishedResult> own = directGases().stream()
                .filter(result -> result.product().equals(farm.product().id()))
                .min(Comparator.comparing(result -> !result.per().equals("kg-live")));
        if (own.isPresent()) {
            measured(own.get(), gain);
            return;
        }
        List<PublishedResult> all = directGases().stream()
                .filter(result -> result.per().equals("kg-live"))
                .toList();
        double lowest = all.stream().mapToDouble(InsectBooks::value).min().orElseThrow();
        double highest = all.stream().mapToDouble(InsectBooks::value).max().orElseThrow();
        ledger.gap(
                "direct gases of " + farm.product().id(),
                String.format(
                        Locale.ROOT,
                        "never measured; anything between the lowest and the highest insect measured, %.4f to %.3f kg CO2e per kg gained",
                        lowest,
                        highest),
                all.stream().map(PublishedResult::id).toArray(String[]::new));
        Factor range = new Factor("default.insect-gases", new LogUniform(lowest, highest), Optional.empty());
        ledger.co2e(
                Stage.ANIMALS,
                "gases of the larvae",
                Term.of(gain).times(range),
                all.get(0).gwp().orElse("not-stated"),
                all.stream().map(PublishedResult::id).toArray(String[]::new));
    }

    private void measured(PublishedResult result, double gain) {
        Factor gases = new Factor(
                result.finding(),
                SpreadReading.read(result.printed(), library.spreadDefaults().result()),
                Optional.of(result.id()));
        Term term = Term.of(gain).times(gases);
        if (result.per().equals("kg-dry-matter")) {
            Optional<Factor> dry = composition("dry-matter", "kg-edible");
            if (dry.isEmpty()) {
                ledger.gap(
                        "direct gases of " + farm.product().id(),
                        "not counted: measured per dry matter, which is not known");
                return;
            }
            term = term.times(dry.get());
        }
        ledger.co2e(Stage.ANIMALS, "gases of the larvae", term, result.gwp().orElse("not-stated"), result.id());
    }

    private List<PublishedResult> directGases() {
        return library.results().stream()
                .filter(result -> result.indicator().equals("ghg")
                        && result.boundary().equals(ANIMAL)
                        && library.products().containsKey(result.product())
                        && group(result).equals(INSECT))
                .toList();
    }

    private String group(PublishedResult result) {
        return java.util.Objects.requireNonNull(library.products().get(result.product()))
                .group();
    }

    private static double value(PublishedResult result) {
        return result.printed().value().orElseThrow();
    }

    private Optional<Factor> composition(String quantity, String per) {
        return library.composition().stream()
                .filter(row -> row.product().equals(farm.product().id())
                        && row.form().equals("fresh")
                        && row.quantity().equals(quantity)
                        && row.per().equals(per)
                        && row.use() == CompositionRow.Use.DEFAULT)
                .findFirst()
                .map(row -> new Factor(
                        row.id(),
                        SpreadReading.readFraction(
                                row.printed(), library.spreadDefaults().composition())));
    }

    private OptionalDouble larvalNitrogen() {
        return composition("protein", "kg-edible")
                .map(share -> OptionalDouble.of(farm.harvest().kilograms() * share.central() / PROTEIN_PER_NITROGEN))
                .orElse(OptionalDouble.empty());
    }

    private OptionalDouble dryMatterOfHarvest() {
        return composition("dry-matter", "kg-edible")
                .map(share -> OptionalDouble.of(farm.harvest().kilograms() * share.central()))
                .orElse(OptionalDouble.empty());
    }

    private void process(InsectFarm.Processing processing) {
        if (processing.energy().isPresent()) {
            books.heat(
                    processing.carrier(),
                    Term.of(processing.water() * processing.energy().getAsDouble() * MJ_PER_KWH));
            return;
        }
        String quantity = processing.step().equals("drying") ? "energy-demand" : "heat-floor";
        Optional<BackgroundFactor> row = background.row("processing_factors", processing.step(), quantity);
        if (row.isEmpty()) {
            ledger.gap("processing/" + processing.step(), "not counted: no energy demand in this library");
            return;
        }
        if (quantity.equals("heat-floor")) {
            ledger.gap(
                    "processing/" + processing.step() + "/energy",
                    "the physical minimum, a lower bound; give the energy used instead (energy with processing true)",
                    row.get().id());
        }
        books.heat(processing.carrier(), Term.of(processing.water()).times(background.factor(row.get())));
    }
}

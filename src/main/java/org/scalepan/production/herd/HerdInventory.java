package org.scalepan.production.herd;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.scalepan.factors.IpccRow;
import org.scalepan.factors.Library;
import org.scalepan.production.ActivityTerm;
import org.scalepan.production.Factor;
import org.scalepan.production.FarmInventory;
import org.scalepan.production.Flux;
import org.scalepan.production.Gap;
import org.scalepan.production.Inventory;
import org.scalepan.production.InventoryBuilder;
import org.scalepan.production.IpccTables;
import org.scalepan.production.IpccTables.Where;
import org.scalepan.production.NitrousOxide;
import org.scalepan.production.RecordedNumber;
import org.scalepan.production.Remark;
import org.scalepan.production.Stage;
import org.scalepan.production.climate.ClimateNormals;
import org.scalepan.production.climate.ClimateZone;
import org.scalepan.words.Figure;
import org.scalepan.words.Message;

/** Computes the inventory of a herd: enteric and manure methane, nitrous oxide of manure, and the farm's own records. */
public final class HerdInventory {
    private static final double DAYS = 365;

    /** Share of the milk given that is sold, outside which the two records contradict each other; common practice, no source. */
    private static final double LEAST_MILK_SOLD = 0.5;

    private static final double MOST_MILK_SOLD = 1.05;

    private static final String EDITION = "2019";

    private static final String MIDDLE_CLIMATE = "warm-temperate-moist";

    /** Animals that Tier 2 is for. */
    private static final List<String> CATTLE = List.of("dairy-cattle", "other-cattle", "buffalo");

    /** The indicators that the energy need of cattle can change: their gases, and their feed where none is recorded. */
    private static final List<String> OF_ENERGY_NEED = List.of("feed-dry-matter", "ghg");

    static final List<String> POULTRY = List.of("layers", "broilers", "ducks", "chickens", "turkeys");

    private final Library library;
    private final Herd herd;
    private final InventoryBuilder builder = new InventoryBuilder();
    private final IpccTables tables;
    private final Where where;
    /** Rows of the coefficients behind Tier 2. */
    private final List<String> coefficients = new ArrayList<>();

    private HerdInventory(Library library, Herd herd) {
        this.library = library;
        this.herd = herd;
        this.tables = IpccTables.of(library, herd.edition().orElse(EDITION));
        String region = region();
        this.where = Where.of(herd.category()).in(region, productivity()).developed(development(region));
    }

    /** The inventory of a herd. */
    public static Inventory inventory(Library library, Herd herd) {
        return new HerdInventory(library, herd).make();
    }

    private Inventory make() {
        ofTheTables();
        FarmInventory farm = new FarmInventory(library, herd.records(), builder);
        farm.add(herd.records());
        Optional<HeadEnergy> need = herd.cattle().map(this::need);
        breedingStock();
        milkAgainstYield();
        enteric(need);
        manure(need);
        new HerdBalances(library, herd, farm, builder).add();
        return builder.inventory(herd.records().name(), new HerdOutput(library, herd, builder).output());
    }

    /** What the parents of the herd eat and give off belongs to what the herd gives; what is bought in is cut off, as other goods are. */
    private void breedingStock() {
        if (herd.breedingStock().isEmpty()) {
            builder.notCounted(Stage.ANIMALS, "breeding_stock", Gap.ALL, Message.of("gap.breeding-not-said"));
        } else if (herd.breedingStock().get() == Herd.BreedingStock.BOUGHT_IN) {
            builder.cutOff("breeding_stock", Gap.ALL, Message.of("gap.breeding-bought"));
        }
    }

    /** Milk given (for which energy need is computed) and milk sold should agree, apart from milk fed to calves and losses. */
    private void milkAgainstYield() {
        if (herd.cattle().isEmpty()) {
            return;
        }
        double fed = herd.cattle().get().animal().milk() * herd.heads().central() * DAYS;
        double sold = herd.yields().stream()
                .filter(yield -> yield.kind() == Herd.AnimalKind.MILK)
                .mapToDouble(yield -> yield.kilograms().central())
                .sum();
        if (sold > 0 && (fed == 0 || contradict(sold / fed))) {
            builder.remark(
                    sold > fed ? Remark.AGAINST_PHYSICS : Remark.UNUSUAL,
                    Message.of("remark.milk", "fed", whole(fed), "sold", whole(sold)));
        }
    }

    private static Figure whole(double value) {
        return new Figure(String.format(Locale.ROOT, "%.0f", value));
    }

    private String productivity() {
        return herd.productivity().orElse("mean");
    }

    /** Defaults for the keys by which the guidelines' tables are read. */
    private void ofTheTables() {
        if (herd.edition().isEmpty()) {
            builder.filled("ipcc_edition", Gap.GHG, Message.verbatim(EDITION));
        }
        if (herd.productivity().isEmpty()) {
            builder.filled("productivity", Gap.GHG, Message.verbatim(productivity()));
        }
        if (herd.cattle().isEmpty() && CATTLE.contains(herd.category())) {
            builder.filled("cattle", OF_ENERGY_NEED, Message.of("gap.tier-1"));
        }
    }

    private static boolean contradict(double shareSold) {
        return shareSold < LEAST_MILK_SOLD || shareSold > MOST_MILK_SOLD;
    }

    private String region() {
        if (herd.ipccRegion().isPresent()) {
            return herd.ipccRegion().get();
        }
        Optional<String> found = herd.records().region().flatMap(tables::regionOf);
        if (found.isEmpty()) {
            builder.filled("ipcc_region", Gap.GHG, Message.of("gap.no-region"));
        }
        found.ifPresent(known -> builder.filled(
                "ipcc_region", Gap.GHG, Message.of("gap.region-of-farm", "region", known.substring("ipcc.".length()))));
        return found.orElse("ipcc.africa");
    }

    /** A country may be developed in a region that is not, such as Japan in Asia. */
    private Optional<String> development(String region) {
        Optional<String> place = herd.ipccRegion().isPresent()
                ? Optional.empty()
                : herd.records().region().flatMap(tables::developmentOf);
        return place.or(() -> IpccTables.developmentOfRegion(region));
    }

    private HeadEnergy need(Herd.Cattle cattle) {
        cattle.head().defaults().forEach((field, with) -> builder.filled("cattle/" + field, OF_ENERGY_NEED, with));
        String kind = cattle.head().animalKind();
        String kept = kind.equals("castrates") ? "not-lactating" : kind;
        double maintenance = coefficient("cfi", "cond." + kept);
        double activity = coefficient("ca", "cond." + cattle.head().moving());
        double pregnancy = coefficient("c-pregnancy", "");
        return HeadEnergy.of(
                cattle.head(), new EnergyNeed.Coefficients(maintenance, activity, growth(cattle), pregnancy));
    }

    private double growth(Herd.Cattle cattle) {
        return switch (cattle.head().animalKind()) {
            case "intact-males" -> coefficient("growth-c", "cond.intact-males");
            case "castrates" -> coefficient("growth-c", "cond.castrates");
            default -> coefficient("growth-c", "cond.females");
        };
    }

    private double coefficient(String quantity, String condition) {
        Where asked = condition.isEmpty()
                ? Where.of("cattle-and-buffalo")
                : Where.of("cattle-and-buffalo").given(condition);
        IpccRow row = tables.find(quantity, asked)
                .orElseThrow(() -> new IllegalArgumentException(
                        "the tables have no " + quantity + (condition.isEmpty() ? "" : " for " + condition)));
        coefficients.add(row.id());
        return row.printed().value().orElseThrow();
    }

    private void enteric(Optional<HeadEnergy> need) {
        if (POULTRY.contains(herd.category())) {
            builder.remark(Remark.METHOD, Message.of("remark.poultry"));
            return;
        }
        if (need.isPresent()) {
            entericTier2(need.get());
            return;
        }
        Optional<IpccRow> row = tables.find("enteric-ef", where);
        if (row.isEmpty()) {
            builder.notCounted(
                    Stage.ANIMALS,
                    "enteric methane",
                    Gap.GHG,
                    Message.of("gap.no-enteric", "category", herd.category()));
            return;
        }
        ActivityTerm methane = heads().times(tables.factor(row.get()));
        builder.flow(
                Stage.ANIMALS,
                "enteric methane, Tier 1",
                Flux.CH4_BIOGENIC,
                uncertain(methane, "uncertainty-enteric-tier1", row.get().id()),
                row.get().id());
    }

    private void entericTier2(HeadEnergy need) {
        ActivityTerm conversion = herd.cattle()
                .orElseThrow()
                .conversion()
                .map(RecordedNumber::term)
                .orElseGet(() -> ActivityTerm.of(conversion()));
        builder.flow(
                Stage.ANIMALS,
                "enteric methane, Tier 2",
                Flux.CH4_BIOGENIC,
                uncertain(
                        heads().times(need.enteric(conversion)),
                        "uncertainty-enteric-tier2",
                        herd.category() + "." + tables.edition()),
                coefficients.toArray(String[]::new));
        builder.flow(
                Stage.FEED,
                "feed by energy need",
                Flux.FEED_DRY_MATTER,
                herd.records().feed().isEmpty()
                        ? heads().times(need.feedDryMatter()).times(DAYS)
                        : ActivityTerm.of(0));
    }

    private ActivityTerm heads() {
        return herd.heads().term();
    }

    /**
     * Ym of milked cows and buffalo by the milk of a year, a dry cow being in the lowest class; of all others by forage, milk or none.
     * The 2019 table has buffalo in both halves.
     */
    private double conversion() {
        EnergyNeed.Animal animal = herd.cattle().orElseThrow().animal();
        boolean buffalo = herd.category().equals("buffalo");
        boolean dairy = herd.category().equals("dairy-cattle") || (buffalo && animal.milk() > 0);
        String half = dairy ? "dairy-cows-and-buffalo" : "other-cattle-and-buffalo";
        Where there = buffalo ? Where.of(half).in(where.region(), productivity()) : where;
        String condition = dairy ? milkClass(animal.milk() * DAYS) : forageClass(animal.digestibility());
        IpccRow row = tables.find("ym", there.given(condition))
                .or(() -> tables.find("ym", there))
                .orElseThrow(() -> new IllegalArgumentException("the tables have no methane conversion factor"));
        coefficients.add(row.id());
        builder.filled("methane_conversion_percent", Gap.GHG, Message.of("gap.by-milk"), row.id());
        return row.printed().value().orElseThrow() * 100;
    }

    private static String milkClass(double perYear) {
        if (perYear < 5000) {
            return "cond.milk-under-5000";
        }
        return perYear > 8500 ? "cond.milk-over-8500-ndf-from-35" : "cond.milk-5000-to-8500";
    }

    private static String forageClass(double digestibility) {
        return digestibility > 62 ? "cond.forage-15-to-75" : "cond.forage-over-75";
    }

    private void manure(Optional<HeadEnergy> need) {
        List<Herd.ManureShare> systems = herd.manure();
        if (systems.isEmpty()) {
            String usual = POULTRY.contains(herd.category())
                    ? "mms.poultry-manure-with-litter"
                    : herd.category().startsWith("swine") ? "mms.solid-storage" : "mms.pasture";
            systems = List.of(new Herd.ManureShare(usual, 1));
            builder.filled("manure", Gap.GHG, Message.of("gap.all-manure", "system", usual));
        }
        Optional<ClimateZone> zone = herd.climate().isPresent() ? Optional.empty() : zone();
        String climate = herd.climate().or(() -> zone.map(ClimateZone::id)).orElse(MIDDLE_CLIMATE);
        String soilClimate = herd.climate()
                .or(() -> zone.filter(ClimateZone::moistureKnown).map(ClimateZone::id))
                .orElse("any-climate");
        Optional<ActivityTerm> solids = volatileSolids(need);
        Optional<ActivityTerm> nitrogen = nitrogen(need);
        List<ActivityTerm> parts = Herd.partsOfManure(systems);
        for (int i = 0; i < parts.size(); i++) {
            ActivityTerm part = parts.get(i);
            Where there = where.manure(systems.get(i).system(), climate);
            solids.ifPresent(term -> manureMethane(term.times(part), there));
            nitrogen.ifPresent(term -> manureNitrogen(term.times(part), there, soilClimate));
        }
    }

    /** The climate of the country, told as a default; empty, and told too, where no country is known. */
    private Optional<ClimateZone> zone() {
        Optional<ClimateZone> found = herd.records()
                .region()
                .flatMap(place -> ClimateNormals.of(library, place))
                .map(normals -> ClimateZone.of(library, normals, tables.edition()));
        found.ifPresentOrElse(
                zone -> builder.filled(
                        "climate",
                        Gap.GHG,
                        Message.of("gap.zone", "zone", zone.id(), "why", zone.message()),
                        zone.rows().toArray(String[]::new)),
                () -> builder.filled("climate", Gap.GHG, Message.of("gap.middle-climate", "zone", MIDDLE_CLIMATE)));
        return found;
    }

    /** kg volatile solids of the herd in a year. */
    private Optional<ActivityTerm> volatileSolids(Optional<HeadEnergy> need) {
        if (need.isPresent()) {
            double urinary = constant("urinary-energy", Where.of("all-animals").given("cond.ruminants"), 0.04);
            double ash = constant("manure-ash", Where.of("cattle-and-buffalo"), 0.08);
            return Optional.of(
                    heads().times(need.get().volatileSolids(urinary, ash)).times(DAYS));
        }
        Optional<IpccRow> perHead = tables.find("vs-per-head", where);
        if (perHead.isPresent()) {
            return Optional.of(heads().times(DAYS).times(tables.factor(perHead.get())));
        }
        Optional<IpccRow> rate = tables.find("vs-rate", where);
        Optional<IpccRow> mass = tables.find("typical-mass", where);
        if (rate.isEmpty() || mass.isEmpty()) {
            builder.notCounted(
                    Stage.MANURE, "manure methane", Gap.GHG, Message.of("gap.no-solids", "category", herd.category()));
            return Optional.empty();
        }
        return Optional.of(
                heads().times(DAYS).over(1000).times(tables.factor(rate.get())).times(tables.factor(mass.get())));
    }

    /** A constant of the guidelines, from the tables; the printed value stands in where the table words it otherwise. */
    private double constant(String quantity, Where asked, double printed) {
        return tables.find(quantity, asked)
                .map(row -> row.printed().value().orElseThrow())
                .orElse(printed);
    }

    private void manureMethane(ActivityTerm solids, Where there) {
        Optional<IpccRow> bo = there.system().equals("mms.pasture")
                ? tables.find("bo", Where.of("all-animals").manure("mms.pasture", "any-climate"))
                        .or(() -> bo(there))
                : bo(there);
        Optional<IpccRow> mcf = tables.find("mcf", there);
        if (bo.isEmpty() || mcf.isEmpty()) {
            builder.notCounted(
                    Stage.MANURE,
                    "manure/" + there.system(),
                    Gap.GHG,
                    bo.isEmpty() ? Message.of("gap.no-bo") : Message.of("gap.no-mcf", "climate", there.climate()));
            return;
        }
        ActivityTerm methane = solids.times(tables.factor(bo.get()))
                .times(tables.factor(mcf.get()))
                .times(Methane.ofManure(1, 100));
        builder.flow(
                Stage.MANURE,
                "methane of manure, " + there.system().substring("mms.".length()),
                Flux.CH4_BIOGENIC,
                uncertain(methane, "uncertainty-bo", bo.get().id()),
                bo.get().id(),
                mcf.get().id());
    }

    private Optional<IpccRow> bo(Where there) {
        return tables.find("bo", there.manure("mms.any-system", "any-climate"));
    }

    /** kg N excreted by the herd in a year. */
    private Optional<ActivityTerm> nitrogen(Optional<HeadEnergy> need) {
        if (need.isPresent() && herd.cattle().orElseThrow().crudeProtein().isPresent()) {
            ActivityTerm protein =
                    herd.cattle().orElseThrow().crudeProtein().get().term();
            return Optional.of(heads().times(need.get().nitrogen(protein)).times(DAYS));
        }
        if (need.isPresent()) {
            builder.filled("cattle/crude_protein_percent", Gap.GHG, Message.of("gap.nitrogen-rates"));
        }
        Optional<IpccRow> rate = tables.find("n-excretion-rate", where);
        Optional<IpccRow> mass = tables.find("typical-mass", where);
        if (rate.isEmpty() || mass.isEmpty()) {
            builder.notCounted(
                    Stage.MANURE,
                    "nitrous oxide",
                    Gap.GHG,
                    Message.of("gap.no-excretion", "category", herd.category()));
            return Optional.empty();
        }
        ActivityTerm excreted =
                heads().times(DAYS).over(1000).times(tables.factor(rate.get())).times(tables.factor(mass.get()));
        return Optional.of(
                uncertain(excreted, "uncertainty-n-excretion", rate.get().id()));
    }

    private void manureNitrogen(ActivityTerm nitrogen, Where there, String soilClimate) {
        NitrousOxide n2o =
                new NitrousOxide(tables, builder, "manure, " + there.system().substring("mms.".length()), soilClimate);
        if (there.system().equals("mms.pasture")) {
            boolean other = List.of("sheep", "goats").contains(herd.category());
            n2o.dropped(nitrogen, other ? "grazing-sheep-and-other" : "grazing-cattle-poultry-pigs");
        } else {
            n2o.stored(nitrogen, there);
        }
    }

    private ActivityTerm uncertain(ActivityTerm term, String quantity, String drawnAs) {
        Optional<Factor> factor = tables.uncertainty(quantity, drawnAs);
        return factor.map(term::times).orElse(term);
    }
}

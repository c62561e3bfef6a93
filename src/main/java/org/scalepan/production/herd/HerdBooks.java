package org.scalepan.production.herd;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.scalepan.factors.Grade;
import org.scalepan.factors.IpccRow;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.footprint.ChainPath;
import org.scalepan.footprint.ChainStep;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.footprint.ProteinBasis;
import org.scalepan.footprint.UnitChain;
import org.scalepan.production.Factor;
import org.scalepan.production.FarmBooks;
import org.scalepan.production.Flux;
import org.scalepan.production.Inventory;
import org.scalepan.production.IpccTables;
import org.scalepan.production.IpccTables.Where;
import org.scalepan.production.Ledger;
import org.scalepan.production.NitrousOxide;
import org.scalepan.production.Output;
import org.scalepan.production.Remark;
import org.scalepan.production.Stage;
import org.scalepan.production.Term;

/** Makes the inventory of a herd (M8): enteric and manure methane, nitrous oxide of manure, and the farm's own records. */
public final class HerdBooks {
    private static final double DAYS = 365;

    /** What a category gives when it is slaughtered, and what it is milked or laid for. */
    private static final Map<String, String> MEAT = Map.of(
            "dairy-cattle", "beef",
            "other-cattle", "beef",
            "buffalo", "buffalo-meat",
            "sheep", "lamb",
            "goats", "goat-meat",
            "swine", "pork",
            "layers", "chicken",
            "broilers", "chicken",
            "ducks", "duck");

    /** Milk of sheep is not among the products, and that of another species does not stand in. */
    private static final Map<String, String> MILK =
            Map.of("dairy-cattle", "milk", "other-cattle", "milk", "buffalo", "buffalo-milk", "goats", "goat-milk");

    private static final List<String> POULTRY = List.of("layers", "broilers", "ducks", "chickens", "turkeys");

    private final Library library;
    private final Herd herd;
    private final Ledger ledger = new Ledger();
    private final IpccTables tables;
    private final Where where;
    /** Rows of the coefficients behind Tier 2. */
    private final List<String> coefficients = new ArrayList<>();

    private HerdBooks(Library library, Herd herd) {
        this.library = library;
        this.herd = herd;
        this.tables = new IpccTables(library, herd.edition());
        String region = region();
        this.where = Where.of(herd.category()).in(region, herd.productivity()).developed(development(region));
    }

    /** The product that a kind of animal gives, when it gives any that the library knows. */
    public static Optional<String> product(String category, Herd.Kind kind) {
        return switch (kind) {
            case MILK -> Optional.ofNullable(MILK.get(category));
            case EGGS -> POULTRY.contains(category) ? Optional.of("egg") : Optional.empty();
            case LIVE -> Optional.ofNullable(MEAT.get(category));
        };
    }

    /** The inventory of a herd. */
    public static Inventory inventory(Library library, Herd herd) {
        return new HerdBooks(library, herd).make();
    }

    private Inventory make() {
        new FarmBooks(library, herd.records(), ledger).book(herd.records());
        Optional<EnergyNeed> need = herd.cattle().map(this::need);
        enteric(need);
        manure(need);
        return ledger.inventory(herd.records().name(), output());
    }

    private String region() {
        if (herd.ipccRegion().isPresent()) {
            return herd.ipccRegion().get();
        }
        Optional<String> found = herd.records().region().flatMap(tables::regionOf);
        if (found.isEmpty()) {
            ledger.gap(
                    "ipcc_region",
                    "no region given or known: the tables' rows for Africa, else for other or all regions");
        }
        return found.orElse("ipcc.africa");
    }

    /** A country may be developed in a region that is not, such as Japan in Asia. */
    private Optional<String> development(String region) {
        Optional<String> place = herd.ipccRegion().isPresent()
                ? Optional.empty()
                : herd.records().region().flatMap(tables::developmentOf);
        return place.or(() -> IpccTables.developmentOfRegion(region));
    }

    private EnergyNeed need(Herd.Cattle cattle) {
        String kept = cattle.kind().equals("castrates") ? "not-lactating" : cattle.kind();
        double maintenance = coefficient("cfi", "cond." + kept);
        double activity = coefficient("ca", "cond." + cattle.activity());
        double pregnancy = coefficient("c-pregnancy", "");
        return EnergyNeed.of(
                cattle.animal(), new EnergyNeed.Coefficients(maintenance, activity, growth(cattle), pregnancy));
    }

    private double growth(Herd.Cattle cattle) {
        return switch (cattle.kind()) {
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

    private void enteric(Optional<EnergyNeed> need) {
        if (POULTRY.contains(herd.category())) {
            ledger.remark(Remark.METHOD, "the guidelines give no enteric methane for poultry: none is counted");
            return;
        }
        if (need.isPresent()) {
            entericTier2(need.get());
            return;
        }
        Optional<IpccRow> row = tables.find("enteric-ef", where);
        if (row.isEmpty()) {
            ledger.gap("enteric methane", "not counted: no factor for " + herd.category() + " in the tables");
            return;
        }
        Term methane = Term.of(herd.heads()).times(tables.factor(row.get()));
        ledger.flow(
                Stage.ANIMALS,
                "enteric methane, Tier 1",
                Flux.CH4_BIOGENIC,
                uncertain(methane, "uncertainty-enteric-tier1", row.get().id()),
                row.get().id());
    }

    private void entericTier2(EnergyNeed need) {
        double conversion = herd.cattle().orElseThrow().conversion().orElseGet(this::conversion);
        double perHead = Methane.enteric(need.gross(), conversion);
        ledger.flow(
                Stage.ANIMALS,
                "enteric methane, Tier 2",
                Flux.CH4_BIOGENIC,
                uncertain(
                        Term.of(herd.heads() * perHead),
                        "uncertainty-enteric-tier2",
                        herd.category() + "." + herd.edition()),
                coefficients.toArray(String[]::new));
        ledger.flow(
                Stage.FEED,
                "feed by energy need",
                Flux.FEED_DRY_MATTER,
                Term.of(herd.records().feed().isEmpty() ? herd.heads() * need.feedDryMatter() * DAYS : 0));
    }

    /** Ym by the milk of a year or, for animals that are not milked and suckler cows, for forage. */
    private double conversion() {
        double milk = herd.cattle().orElseThrow().animal().milk() * DAYS;
        boolean milked = milk > 0 && !herd.category().equals("other-cattle");
        String condition;
        if (!milked) {
            condition = herd.cattle().orElseThrow().animal().digestibility() <= 62
                    ? "cond.forage-over-75"
                    : "cond.forage-15-to-75";
        } else {
            condition = milk < 5000
                    ? "cond.milk-under-5000"
                    : milk <= 8500 ? "cond.milk-5000-to-8500" : "cond.milk-over-8500-ndf-from-35";
        }
        // Table 10.12 parts cattle and buffalo by milking and not by species.
        IpccRow row = tables.find(
                        "ym",
                        Where.of(milked ? "dairy-cows-and-buffalo" : "other-cattle-and-buffalo")
                                .given(condition))
                .or(() -> tables.find("ym", where))
                .orElseThrow(() -> new IllegalArgumentException("the tables have no methane conversion factor"));
        coefficients.add(row.id());
        ledger.gap("methane_conversion_percent", "by milk yield and digestibility of the feed", row.id());
        return row.printed().value().orElseThrow() * 100;
    }

    private void manure(Optional<EnergyNeed> need) {
        List<Herd.ManureShare> systems = herd.manure();
        if (systems.isEmpty()) {
            String usual = POULTRY.contains(herd.category())
                    ? "mms.poultry-manure-with-litter"
                    : herd.category().startsWith("swine") ? "mms.solid-storage" : "mms.pasture";
            systems = List.of(new Herd.ManureShare(usual, 1));
            ledger.gap("manure", "all in " + usual + " (common practice, no source)");
        }
        String climate = herd.climate().orElseGet(() -> {
            ledger.gap("climate", "warm-temperate-moist: the middle of the tables' climates");
            return "warm-temperate-moist";
        });
        Optional<Term> solids = volatileSolids(need);
        Optional<Term> nitrogen = nitrogen(need);
        for (Herd.ManureShare system : systems) {
            Where there = where.manure(system.system(), climate);
            solids.ifPresent(term -> manureMethane(term.times(system.share()), there));
            nitrogen.ifPresent(term -> manureNitrogen(term.times(system.share()), there));
        }
    }

    /** kg volatile solids of the herd in a year. */
    private Optional<Term> volatileSolids(Optional<EnergyNeed> need) {
        if (need.isPresent()) {
            double urinary = constant("urinary-energy", Where.of("all-animals").given("cond.ruminants"), 0.04);
            double ash = constant("manure-ash", Where.of("cattle-and-buffalo"), 0.08);
            double perDay = Methane.volatileSolids(
                    need.get().gross(), herd.cattle().orElseThrow().animal().digestibility(), urinary, ash);
            return Optional.of(Term.of(herd.heads() * perDay * DAYS));
        }
        Optional<IpccRow> perHead = tables.find("vs-per-head", where);
        if (perHead.isPresent()) {
            return Optional.of(Term.of(herd.heads() * DAYS).times(tables.factor(perHead.get())));
        }
        Optional<IpccRow> rate = tables.find("vs-rate", where);
        Optional<IpccRow> mass = tables.find("typical-mass", where);
        if (rate.isEmpty() || mass.isEmpty()) {
            ledger.gap("manure methane", "not counted: no volatile solids of " + herd.category() + " in the tables");
            return Optional.empty();
        }
        return Optional.of(Term.of(herd.heads() * DAYS / 1000)
                .times(tables.factor(rate.get()))
                .times(tables.factor(mass.get())));
    }

    /** A constant of the guidelines, from the tables; the printed value stands in where the table words it otherwise. */
    private double constant(String quantity, Where asked, double printed) {
        return tables.find(quantity, asked)
                .map(row -> row.printed().value().orElseThrow())
                .orElse(printed);
    }

    private void manureMethane(Term solids, Where there) {
        Optional<IpccRow> bo = there.system().equals("mms.pasture")
                ? tables.find("bo", Where.of("all-animals").manure("mms.pasture", "any-climate"))
                        .or(() -> bo(there))
                : bo(there);
        Optional<IpccRow> mcf = tables.find("mcf", there);
        if (bo.isEmpty() || mcf.isEmpty()) {
            ledger.gap(
                    "manure/" + there.system(),
                    "CH4 not counted: no " + (bo.isEmpty() ? "Bo" : "MCF for climate " + there.climate())
                            + " in the tables");
            return;
        }
        Term methane = solids.times(tables.factor(bo.get()))
                .times(tables.factor(mcf.get()))
                .times(Methane.ofManure(1, 100));
        ledger.flow(
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
    private Optional<Term> nitrogen(Optional<EnergyNeed> need) {
        if (need.isPresent() && herd.cattle().orElseThrow().crudeProtein().isPresent()) {
            EnergyNeed.Animal animal = herd.cattle().orElseThrow().animal();
            double intake = Nitrogen.intake(
                    need.get().gross(),
                    herd.cattle().orElseThrow().crudeProtein().getAsDouble());
            double kept = Nitrogen.retained(
                    animal.milk(),
                    1.9 + 0.4 * animal.fat(),
                    animal.gain(),
                    need.get().growth());
            return Optional.of(Term.of(herd.heads() * Math.max(0, intake - kept) * DAYS));
        }
        Optional<IpccRow> rate = tables.find("n-excretion-rate", where);
        Optional<IpccRow> mass = tables.find("typical-mass", where);
        if (rate.isEmpty() || mass.isEmpty()) {
            ledger.gap("nitrous oxide", "not counted: no nitrogen excretion of " + herd.category() + " in the tables");
            return Optional.empty();
        }
        Term excreted = Term.of(herd.heads() * DAYS / 1000)
                .times(tables.factor(rate.get()))
                .times(tables.factor(mass.get()));
        return Optional.of(
                uncertain(excreted, "uncertainty-n-excretion", rate.get().id()));
    }

    private void manureNitrogen(Term nitrogen, Where there) {
        NitrousOxide n2o =
                new NitrousOxide(tables, ledger, "manure, " + there.system().substring("mms.".length()));
        if (there.system().equals("mms.pasture")) {
            boolean other = List.of("sheep", "goats").contains(herd.category());
            n2o.dropped(
                    nitrogen,
                    other ? "grazing-sheep-and-other" : "grazing-cattle-poultry-pigs",
                    !there.climate().endsWith("-dry"));
        } else {
            n2o.stored(nitrogen, there);
        }
    }

    private Term uncertain(Term term, String quantity, String drawnAs) {
        Optional<Factor> factor = tables.uncertainty(quantity, drawnAs);
        return factor.map(term::times).orElse(term);
    }

    /** The product asked about, and its part of the burden by protein when the herd gives more than one. */
    private Output output() {
        List<Part> parts = herd.yields().stream().map(this::part).toList();
        Part main = herd.product()
                .flatMap(id -> parts.stream()
                        .filter(part -> part.product().id().equals(id))
                        .findFirst())
                .orElseGet(() -> parts.stream()
                        .max(Comparator.comparingDouble(Part::protein))
                        .orElseThrow());
        boolean byProtein = parts.stream().allMatch(part -> part.protein() > 0);
        double all = parts.stream().mapToDouble(part -> part.weight(byProtein)).sum();
        double share = parts.size() == 1 ? 1 : main.weight(byProtein) / all;
        if (parts.size() > 1) {
            ledger.gap(
                    "allocation",
                    "by %s: %.0f %% of the burden rests on %s"
                            .formatted(
                                    byProtein ? "protein" : "mass",
                                    100 * share,
                                    main.product().id()));
        }
        return new Output(
                main.product(),
                main.product().defaultForm(),
                main.unit(),
                main.kilograms(),
                share,
                parts.size() == 1 ? "none" : byProtein ? "protein" : "mass");
    }

    private record Part(Product product, FunctionalUnit unit, double kilograms, double protein) {
        double weight(boolean byProtein) {
            return byProtein ? protein : kilograms;
        }
    }

    private Part part(Herd.Yield yield) {
        String id = product(herd.category(), yield.kind())
                .orElseThrow(() -> new IllegalArgumentException(
                        herd.category() + " give no " + yield.kind().name().toLowerCase(java.util.Locale.ROOT)
                                + " that is a product of this library"));
        if (yield.kind() == Herd.Kind.EGGS && herd.category().equals("ducks")) {
            ledger.gap("yield/eggs_kg", "eggs of ducks counted with the composition of hen eggs");
        }
        Product product = java.util.Objects.requireNonNull(library.products().get(id));
        FunctionalUnit unit = yield.kind() == Herd.Kind.LIVE ? FunctionalUnit.KG_LIVE : FunctionalUnit.KG_PRODUCT;
        return new Part(product, unit, yield.kilograms(), yield.kilograms() * proteinShare(product, unit));
    }

    private double proteinShare(Product product, FunctionalUnit unit) {
        UnitChain chain =
                new UnitChain(library, product, product.defaultForm(), "", ProteinBasis.CRUDE, true, Grade.MEMORY);
        ChainPath path = chain.path(unit, FunctionalUnit.KG_PROTEIN);
        if (path instanceof ChainPath.Found found) {
            double share = 1;
            for (ChainStep step : found.steps()) {
                share /= step.multiplier();
            }
            return share;
        }
        return 0;
    }
}

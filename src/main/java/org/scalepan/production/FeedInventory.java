package org.scalepan.production;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.scalepan.factors.BackgroundFactor;
import org.scalepan.factors.Library;
import org.scalepan.factors.table.Row;
import org.scalepan.production.FarmRecords.Burden;
import org.scalepan.production.FarmRecords.FeedUse;
import org.scalepan.words.DisplayName;
import org.scalepan.words.Message;

/** Adds a farm's feed to the inventory: mass, dry matter, nitrogen, and the burden of growing and milling it. */
final class FeedInventory {
    private static final String FACTORS = "ingredient_factors";
    private static final String COMPOSITION = "ingredient_composition";
    /**
     * The indicators that dry matter can change: itself, those with factors per kg dry matter, and by its protein the nitrogen of frass.
     */
    private static final List<String> DRY_MATTER = List.of("energy", "feed-dry-matter", "ghg", "land", "water");
    /** kg protein per kg nitrogen in feed (IPCC, chapter 10, equation 10.32). */
    private static final double PROTEIN_PER_NITROGEN = 6.25;
    /** MJ per kg: more than any fat gives off when it burns (about 39.5; common practice, no source). */
    private static final double ENERGY_OF_FAT = 40;
    /** Kinds of feed whose gross energy per kg dry matter the guidelines take as one figure. */
    private static final Set<String> OF_PLANTS = Set.of("crop", "forage", "by-product", "residue");

    private final Library library;
    private final Background background;
    private final InventoryBuilder builder;
    private final Optional<String> region;
    private final SoldByProducts soldByProducts;
    private final FeedContent.RecordSum nitrogen = new FeedContent.RecordSum();
    private final Set<String> withoutNitrogen = new LinkedHashSet<>();
    /** How the crop's burden was allocated in the factors used for the feed at hand, by indicator. */
    private final Map<String, String> taken = new LinkedHashMap<>();

    /** Feed of which no factor of energy or water is published. */
    private final Map<String, Set<String>> without = new LinkedHashMap<>();

    /** kg of it, by indicator. */
    private final Map<String, Double> massWithout = new LinkedHashMap<>();

    private double massWithoutNitrogen;

    /** The same feed with its use elsewhere counted, for by-products that are sold and counted burden-free. */
    private Optional<FeedInventory> elsewhere = Optional.empty();

    private boolean nitrogenKnown;
    private boolean dryMatterKnown = true;

    private final FeedContent.FeedSum nitrogenContent = new FeedContent.FeedSum();
    private final FeedContent.FeedSum dryMatterContent = new FeedContent.FeedSum();
    private final FeedContent.FeedSum energyContent = new FeedContent.FeedSum();

    FeedInventory(Library library, InventoryBuilder builder, Optional<String> region) {
        this.library = library;
        this.background = Background.of(library);
        this.builder = builder;
        this.region = region;
        this.soldByProducts = SoldByProducts.of(library);
    }

    void add(FeedUse feed) {
        ActivityTerm mass = feed.kilograms().term();
        builder.flow(Stage.FEED, feed.ingredient(), Flux.FEED, mass);
        Optional<ActivityTerm> dry = dryMatter(feed, mass);
        dry.ifPresentOrElse(
                term -> builder.flow(Stage.FEED, feed.ingredient(), Flux.FEED_DRY_MATTER, term),
                () -> dryMatterKnown = false);
        nitrogen(feed, mass, dry);
        contents(feed, mass, dry);
        legality(feed.ingredient());
        taken.clear();
        burden(feed, mass, dry, Flux.CO2E, "ghg", feed.own().ghg());
        burden(feed, mass, dry, Flux.LAND, "land", feed.own().land());
        burden(feed, mass, dry, Flux.ENERGY, "energy", feed.own().energy());
        burden(feed, mass, dry, Flux.WATER, "water", feed.own().water());
        if (feed.burden().isEmpty() && !taken.isEmpty()) {
            builder.filled(
                    "feed/" + feed.ingredient() + "/burden",
                    taken.keySet().stream().sorted().toList(),
                    Message.of(
                            "gap.as-published",
                            "taken",
                            taken.entrySet().stream()
                                    .map(one -> one.getKey() + " " + one.getValue())
                                    .collect(Collectors.joining(", "))));
        }
        if (feed.displaces().isPresent() && feed.displacedPerKilogram().isEmpty()) {
            builder.filled(
                    "feed/" + feed.ingredient() + "/displaced_kg_per_kg",
                    Gap.OF_FEED_BURDEN,
                    Message.of("gap.displaced-one", "other", feed.displaces().get()));
        }
        if (feed.burden().filter(Burden.BURDEN_FREE::equals).isPresent()
                && soldByProducts.includes(feed.ingredient())) {
            InventoryBuilder beside = builder.displacedUse(feed.ingredient());
            FeedInventory other = elsewhere.orElseGet(() -> new FeedInventory(library, beside, region));
            elsewhere = Optional.of(other);
            other.usedElsewhere(feed, mass, dry);
        }
    }

    /** What a burden-free feed would add if its use elsewhere counted; own factors are in the figure already. */
    private void usedElsewhere(FeedUse feed, ActivityTerm mass, Optional<ActivityTerm> dry) {
        Map<Flux, Optional<RecordedNumber>> own = new EnumMap<>(Map.of(
                Flux.CO2E, feed.own().ghg(),
                Flux.LAND, feed.own().land(),
                Flux.ENERGY, feed.own().energy(),
                Flux.WATER, feed.own().water()));
        own.forEach((flux, factor) -> {
            if (factor.isPresent()) {
                return;
            }
            if (feed.displaces().isPresent()) {
                displaced(feed, mass, flux, flux.indicator());
            } else if (background.defaultsByAllocation(FACTORS, feed.ingredient(), flux.indicator()).stream()
                    .anyMatch(row -> isAllocated(row, Burden.ECONOMIC))) {
                published(feed.ingredient(), mass, dry, flux, flux.indicator(), Optional.of(Burden.ECONOMIC));
            } else {
                builder.notCounted(
                        Stage.FEED,
                        "feed/" + feed.ingredient() + "/displaces",
                        List.of(flux.indicator()),
                        Message.of(
                                "gap.no-share-of-price",
                                "indicator",
                                flux.indicator(),
                                "ingredient",
                                feed.ingredient()));
            }
        });
    }

    /** Hardly any feed has a figure of energy or water: the missing factors are reported once, not feed by feed. */
    void reportMissing() {
        elsewhere.ifPresent(FeedInventory::reportMissing);
        without.forEach((indicator, ingredients) -> builder.lineNotCounted(
                Stage.FEED,
                Flux.FEED,
                massWithout.getOrDefault(indicator, 0.0),
                "feed/" + indicator,
                List.of(indicator),
                Message.of(
                        "gap.no-published-feed",
                        "indicator",
                        indicator,
                        "ingredients",
                        String.join(", ", ingredients))));
    }

    /**
     * kg N in those ingredients of a year whose protein is known, which is taken in the middle; empty when there is feed and none of it is.
     */
    Optional<ActivityTerm> nitrogen() {
        return nitrogenKnown || withoutNitrogen.isEmpty() ? Optional.of(nitrogen.sum()) : Optional.empty();
    }

    /** The ingredients whose nitrogen is not known. */
    Set<String> withoutNitrogen() {
        return withoutNitrogen;
    }

    /** kg a year of the ingredients whose nitrogen is not known. */
    double massWithoutNitrogen() {
        return massWithoutNitrogen;
    }

    /** True when the dry matter of every ingredient is known. */
    boolean dryMatterKnown() {
        return dryMatterKnown;
    }

    /** What the feed holds of something conserved. */
    FeedContent content(FarmBalance.BalanceKind kind) {
        return switch (kind) {
            case NITROGEN -> nitrogenContent.content();
            case DRY_MATTER -> dryMatterContent.content();
            case GROSS_ENERGY -> energyContent.content();
        };
    }

    private void contents(FeedUse feed, ActivityTerm mass, Optional<ActivityTerm> dry) {
        String ingredient = feed.ingredient();
        // Nothing holds more dry matter than itself, more nitrogen than pure protein, or more energy than pure fat.
        ActivityTerm dryAtMost = dry.orElse(mass).ofRecordsAlone();
        dry.ifPresentOrElse(
                term -> dryMatterContent.known(term.ofRecordsAlone(), rows(term)),
                () -> dryMatterContent.unknown(ingredient, dryAtMost));
        proteinOf(feed, mass, dry)
                .ifPresentOrElse(
                        term -> nitrogenContent.known(inProtein(term), rows(term)),
                        () -> nitrogenContent.unknown(ingredient, dryAtMost.over(PROTEIN_PER_NITROGEN)));
        grossEnergy(ingredient, mass, dry)
                .ifPresentOrElse(
                        term -> energyContent.known(term.ofRecordsAlone(), rows(term)),
                        () -> energyContent.unknown(ingredient, dryAtMost.times(ENERGY_OF_FAT)));
    }

    /** MJ by the ingredient's own row; of plants by the guidelines' mean of forage and grain. */
    private Optional<ActivityTerm> grossEnergy(String ingredient, ActivityTerm mass, Optional<ActivityTerm> dry) {
        Optional<BackgroundFactor> own = background.row(COMPOSITION, ingredient, "gross-energy");
        if (own.isPresent()) {
            return base(own.get(), mass, dry).map(base -> base.times(background.factor(own.get())));
        }
        IpccTables tables = IpccTables.of(library, "2019");
        return library.row("ingredients", ingredient)
                .filter(row -> OF_PLANTS.contains(row.text("kind")))
                .flatMap(row -> tables.find("feed-gross-energy", IpccTables.Where.of("all-animals")))
                .flatMap(row -> dry.map(term -> term.times(tables.factor(row))));
    }

    private static List<String> rows(ActivityTerm term) {
        return term.uses().stream().flatMap(use -> use.factor().row().stream()).toList();
    }

    private Optional<ActivityTerm> dryMatter(FeedUse feed, ActivityTerm mass) {
        if (feed.moisture().isPresent()) {
            return Optional.of(mass.times(feed.moisture().get().term().complement()));
        }
        Optional<BackgroundFactor> row = background.row(COMPOSITION, feed.ingredient(), "dry-matter");
        if (row.isEmpty()) {
            builder.lineNotCounted(
                    Stage.FEED,
                    Flux.FEED,
                    feed.kilograms().central(),
                    "feed/" + feed.ingredient() + "/moisture",
                    List.of("feed-dry-matter"),
                    Message.of("gap.no-dry-matter", "ingredient", feed.ingredient()));
            return Optional.empty();
        }
        builder.filled(
                "feed/" + feed.ingredient() + "/moisture",
                DRY_MATTER,
                background.moistureMessage(row.get()),
                row.get().id());
        return Optional.of(mass.times(background.fraction(row.get())));
    }

    private void nitrogen(FeedUse feed, ActivityTerm mass, Optional<ActivityTerm> dry) {
        Optional<ActivityTerm> known = proteinOf(feed, mass, dry);
        if (known.isEmpty()) {
            withoutNitrogen.add(feed.ingredient());
            massWithoutNitrogen += feed.kilograms().central();
            return;
        }
        nitrogenKnown = true;
        ActivityTerm protein = known.get();
        builder.flow(Stage.FEED, feed.ingredient(), Flux.FEED_PROTEIN, protein);
        nitrogen.add(inProtein(protein));
    }

    /** kg N, with the protein of the library in the middle. */
    private static ActivityTerm inProtein(ActivityTerm protein) {
        return protein.ofRecordsAlone().over(PROTEIN_PER_NITROGEN);
    }

    /** kg crude protein, by the nitrogen of the records before the library's protein. */
    private Optional<ActivityTerm> proteinOf(FeedUse feed, ActivityTerm mass, Optional<ActivityTerm> dry) {
        if (feed.nitrogen().isPresent()) {
            return dry.map(term -> term.times(feed.nitrogen().get().term()).times(PROTEIN_PER_NITROGEN));
        }
        return background
                .row(COMPOSITION, feed.ingredient(), "protein")
                .flatMap(row -> base(row, mass, dry).map(base -> base.times(background.fraction(row))));
    }

    private void legality(String ingredient) {
        if (!library.ids("ingredients").contains(ingredient)) {
            builder.remark(Remark.LEGALITY, Message.of("remark.unknown-ingredient", "ingredient", ingredient));
            return;
        }
        library.row("ingredients", ingredient)
                .filter(row -> row.optional("legality").isPresent())
                .ifPresent(row -> builder.remark(Remark.LEGALITY, unlawful(ingredient, row)));
    }

    private void burden(
            FeedUse feed,
            ActivityTerm mass,
            Optional<ActivityTerm> dry,
            Flux flux,
            String indicator,
            Optional<RecordedNumber> own) {
        if (own.isPresent()) {
            ActivityTerm term = mass.times(own.get().term());
            if (flux == Flux.CO2E) {
                builder.co2e(Stage.FEED, feed.ingredient(), term, "not-stated");
            } else {
                builder.flow(Stage.FEED, feed.ingredient(), flux, term);
            }
            return;
        }
        Burden burden = feed.burden().orElse(null);
        if (burden == Burden.BURDEN_FREE) {
            builder.remark(Remark.METHOD, Message.of("remark.burden-free-chosen", "ingredient", feed.ingredient()));
            return;
        }
        if (burden == Burden.DISPLACED) {
            displaced(feed, mass, flux, indicator);
            return;
        }
        published(feed.ingredient(), mass, dry, flux, indicator, Optional.ofNullable(burden));
    }

    /** What was fed elsewhere must now be replaced there: the burden of the replacement counts. */
    private void displaced(FeedUse feed, ActivityTerm mass, Flux flux, String indicator) {
        String instead = feed.displaces().orElseThrow();
        ActivityTerm replaced = mass.times(RecordedNumber.termOr(feed.displacedPerKilogram(), 1));
        Optional<ActivityTerm> dry =
                background.row(COMPOSITION, instead, "dry-matter").map(row -> replaced.times(background.fraction(row)));
        published(instead, replaced, dry, flux, indicator, Optional.empty());
    }

    private void published(
            String ingredient,
            ActivityTerm mass,
            Optional<ActivityTerm> dry,
            Flux flux,
            String indicator,
            Optional<Burden> burden) {
        Optional<BackgroundFactor> row = choose(ingredient, indicator, burden);
        Optional<ActivityTerm> base = row.flatMap(found -> base(found, mass, dry));
        if (row.isPresent() && base.isPresent()) {
            taken.put(indicator, row.get().allocation().orElse("not-stated"));
            if (isAllocated(row.get(), Burden.BURDEN_FREE)) {
                builder.remark(Remark.METHOD, Message.of("remark.burden-free-residue", "ingredient", ingredient));
                return;
            }
            if (row.get().endsAtRetail()) {
                builder.remark(
                        Remark.RETAIL_FEED,
                        Message.of(
                                "remark.feed-at-retail",
                                "indicator",
                                indicator,
                                "ingredient",
                                ingredient,
                                "row",
                                row.get().id()));
            }
            ActivityTerm term = base.get().times(background.factor(row.get()));
            if (flux == Flux.CO2E) {
                if (row.get().luc().filter("included"::equals).isEmpty()) {
                    builder.landUseChangeNotCounted(ingredient, row.get().id());
                }
                builder.co2e(
                        Stage.FEED,
                        ingredient,
                        term,
                        row.get().gwp().orElse("not-stated"),
                        row.get().id());
            } else {
                builder.flow(Stage.FEED, ingredient, flux, term, row.get().id());
            }
            return;
        }
        if (indicator.equals("land") && landOfCrop(ingredient, mass)) {
            taken.put(indicator, "not-stated");
            return;
        }
        if (indicator.equals("ghg") || indicator.equals("land")) {
            builder.lineNotCounted(
                    Stage.FEED,
                    Flux.FEED,
                    mass.central(),
                    "feed/" + ingredient + "/" + indicator,
                    List.of(indicator),
                    Message.of("gap.no-fitting-feed", "indicator", indicator, "ingredient", ingredient));
        } else {
            massWithout.merge(indicator, mass.central(), Double::sum);
            without.computeIfAbsent(indicator, unused -> new LinkedHashSet<>()).add(ingredient);
        }
    }

    /**
     * Economic before mass before unnamed allocation; a burden-free zero last, because it is a choice, and never unasked for what is
     * bought and sold.
     */
    private Optional<BackgroundFactor> choose(String ingredient, String indicator, Optional<Burden> burden) {
        List<BackgroundFactor> rows = background.defaultsByAllocation(FACTORS, ingredient, indicator);
        if (soldByProducts.includes(ingredient)) {
            rows = rows.stream()
                    .filter(row -> !isAllocated(row, Burden.BURDEN_FREE))
                    .toList();
        }
        if (burden.isPresent()) {
            for (BackgroundFactor row : rows) {
                if (isAllocated(row, burden.get())) {
                    return Optional.of(row);
                }
            }
        }
        Optional<BackgroundFactor> usual = rows.stream().findFirst();
        if (burden.isPresent() && usual.isPresent()) {
            builder.filled(
                    "feed/" + ingredient + "/burden",
                    List.of(indicator),
                    Message.of(
                            "gap.other-allocation",
                            "indicator",
                            indicator,
                            "asked",
                            burden.get().id(),
                            "taken",
                            usual.get().allocation().orElse("not-stated")),
                    usual.get().id());
        }
        return usual;
    }

    private static boolean isAllocated(BackgroundFactor row, Burden burden) {
        return row.allocation().filter(burden.id()::equals).isPresent();
    }

    /** m2·yr per kg = 10 ÷ yield in t/ha. */
    private boolean landOfCrop(String ingredient, ActivityTerm mass) {
        Optional<Row> row = background.cropYield(ingredient, region);
        row.ifPresent(found -> {
            double yield = found.number("value").orElseThrow();
            builder.flow(Stage.FEED, ingredient, Flux.LAND, mass.times(10 / yield), found.text("id"));
            if (region.isEmpty()) {
                builder.filled(
                        "region",
                        List.of("land"),
                        Message.of(
                                "gap.yield-of",
                                "ingredient",
                                ingredient,
                                "place",
                                DisplayName.of(
                                        "region." + found.text("region"),
                                        library.regions().words(found.text("region")))),
                        found.text("id"));
            }
        });
        return row.isPresent();
    }

    private static Optional<ActivityTerm> base(BackgroundFactor row, ActivityTerm mass, Optional<ActivityTerm> dry) {
        return row.per().equals("kg-dry-matter") ? dry : Optional.of(mass);
    }

    private static Message unlawful(String ingredient, Row row) {
        String legality = row.text("legality");
        Message word = Message.of("legality." + legality);
        return row.optional("lawful_note")
                .map(note -> Message.of(
                        "remark.unlawful.note",
                        "ingredient",
                        ingredient,
                        "legality",
                        word,
                        "note",
                        DisplayName.of("lawful-note." + legality, note)))
                .orElseGet(() -> Message.of("remark.unlawful", "ingredient", ingredient, "legality", word));
    }
}

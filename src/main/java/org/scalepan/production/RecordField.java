package org.scalepan.production;

import static org.scalepan.production.FieldDefinition.number;
import static org.scalepan.production.FieldDefinition.text;
import static org.scalepan.production.FieldDefinition.wholeNumber;
import static org.scalepan.production.FieldDefinition.word;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The fields of a year's records of an insect farm, a herd or a fish farm: where each stands, its unit and the limits of its value. Requests, tables of many
 * farms, the inputs that a question may change, the description of the service and the form of the page for farms are read from here.
 *
 * <p>The path is the name of a column: a dot for each step inwards, {@code #} for the number of a line of a list.
 */
public enum RecordField {
    KIND(word("kind").oneOf("insects", "herd", "fish")),
    NAME(text("name")),
    REGION(word("region")
            .listedAt("/v1/regions")
            .says("Where it is, an id of `/v1/regions`; for the electricity grid, the yields of feed crops "
                    + "and the guidelines' region. Without it the world's.")),
    YEAR(wholeNumber("year", 1990, 2100).says("Year of the records, for the electricity grid. Without it the latest.")),
    /** No fuel burnt in any plant comes near the most. */
    GRID_GHG(number("grid_ghg_per_kwh", "kg CO2e per kWh", 0, 10)
            .says("kg CO2e per kWh of grid electricity, when the supplier states it. Without it the "
                    + "library's intensity of `region` and `year` is taken.")),
    WATER(number("water_m3", "m3 a year", 0, RangeLimit.MOST)
            .says("m3 of water used a year. Without it none is counted, and the gap is reported.")),
    BUILDING(number("building_m2", "m2", 0, RangeLimit.MOST)
            .says("m2 under roof. Without it and `yard_m2` none is counted, and the gap is reported.")),
    YARD(number("yard_m2", "m2", 0, RangeLimit.MOST).says("m2 of yard or run.")),

    FEED_INGREDIENT(word("feed.#.ingredient").listedAt("/v1/ingredients").says("An id of `/v1/ingredients`.")),
    FEED_NAME(text("feed.#.name")
            .says("What is fed, where it is none of `/v1/ingredients`: a residue by its own name, in place of "
                    + "`ingredient`. Nothing is published of it, so that `moisture`, `nitrogen`, `burden` or own "
                    + "factors say what is known.")),
    FEED_KG(number("feed.#.kg", "kg as fed a year", 0, RangeLimit.MOST).says("kg as fed a year.")),
    FEED_MOISTURE(number("feed.#.moisture", "", 0, RangeLimit.BELOW_ONE)
            .says("Share of water, as a fraction. Without it the published dry matter of the ingredient is "
                    + "taken.")),
    FEED_NITROGEN(number("feed.#.nitrogen", "kg N per kg dry matter", 0, 0.2)
            .says("kg N per kg dry matter (crude protein over 6.25), as a feed analysis has it. It needs "
                    + "`moisture` where no dry matter of the ingredient is published. Without it the published "
                    + "protein is taken.")),
    FEED_BURDEN(word("feed.#.burden")
            .oneOf("economic", "mass", "burden-free", "displaced")
            .says("How much of the crop's burden comes with a by-product or residue: its share by price or "
                    + "by mass, nothing (`burden-free`, a choice of method), or the burden of what must replace "
                    + "it elsewhere (`displaced`). A by-product that is bought and sold (bran, meals, molasses, "
                    + "brewers' grains, straw) needs it, unless the line brings its own factors for all four "
                    + "indicators. Without it the published row of other feed is taken: economic before mass "
                    + "before unnamed allocation.")),
    FEED_DISPLACES(word("feed.#.displaces")
            .listedAt("/v1/ingredients")
            .says("What must be fed instead where this was fed before, an id of `/v1/ingredients`. With the "
                    + "burden `displaced` it is needed and counted; with `burden-free` it makes the second "
                    + "figure; with others it is refused.")),
    FEED_DISPLACED(
            number("feed.#.displaced_kg_per_kg", "kg per kg", 0, 100).usually(1).says("kg of that per kg of this.")),
    /** A supplier's own factor may be negative, where it credits an avoided burden. */
    FEED_GHG(number("feed.#.ghg_per_kg", "kg CO2e per kg", -1000, 1000)
            .says("Own factor in kg CO2e per kg as fed, which wins over the library's.")),
    FEED_LAND(number("feed.#.land_per_kg", "m2*yr per kg", 0, 10_000).says("Own factor in m2*yr per kg as fed.")),
    FEED_ENERGY(number("feed.#.energy_per_kg", "MJ per kg", 0, 10_000).says("Own factor in MJ per kg as fed.")),
    FEED_WATER(number("feed.#.water_per_kg", "m3 per kg", 0, 10_000).says("Own factor in m3 per kg as fed.")),

    ENERGY_CARRIER(word("energy.#.carrier").listedAt("/v1/energy-carriers").says("An id of `/v1/energy-carriers`.")),
    /** In the unit of its carrier: kWh, kg or litre. */
    ENERGY_AMOUNT(number("energy.#.amount", "a year", 0, RangeLimit.MOST)
            .says("So much a year in the carrier's own unit (`unit` in `/v1/energy-carriers`), which is "
                    + "kWh, kg or litre.")),
    ENERGY_SITE(word("energy.#.for")
            .oneOf("farm", "processing")
            .usually("farm")
            .says("Whether it is used on the farm or for processing behind the farm gate.")),

    TRANSPORT_MODE(word("transport.#.mode").listedAt("/v1/transport-modes").says("An id of `/v1/transport-modes`.")),
    TRANSPORT_WORK(number("transport.#.tonne_km", "tonne-km a year", 0, RangeLimit.MOST)
            .says("Tonnes times kilometres a year.")),

    MATERIAL(word("materials.#.material").listedAt("/v1/materials").says("An id of `/v1/materials`.")),
    MATERIAL_KG(number("materials.#.kg", "kg in use", 0, RangeLimit.MOST).says("kg in use.")),
    MATERIAL_YEARS(number("materials.#.years", "years", 0.01, 1000).usually(1).says("How many years it lasts.")),

    CO_PRODUCT_NAME(text("co_products.#.name").ofInsects().usually("co-product").says("What it is.")),
    CO_PRODUCT_KG(number("co_products.#.kg", "kg a year", 0, RangeLimit.MOST)
            .ofInsects()
            .says("kg a year.")),
    CO_PRODUCT_PRICE(number("co_products.#.price_per_kg", RangeLimit.PRICE, 0, RangeLimit.MOST)
            .ofInsects()
            .says("Price per kg, in the currency of the product's price.")),

    PRODUCT(word("product").listedAt("/v1/products")),
    PRODUCT_NAME(text("product.name")
            .ofInsects()
            .says("What an insect is called that is none of `/v1/products`. No control characters.")),
    PRODUCT_GROUP(
            word("product.group").oneOf("insect").ofInsects().usually("insect").says("What it is.")),
    PRODUCT_DRY_MATTER(share("product.dry_matter", RangeLimit.LEAST_CONTENT, 1).says(Contents.DRY_MATTER)),
    PRODUCT_PROTEIN(share("product.protein", RangeLimit.LEAST_CONTENT, 1).says(Contents.PROTEIN)),
    PRODUCT_NITROGEN(share("product.nitrogen", RangeLimit.LEAST_CONTENT, 0.2).says(Contents.NITROGEN)),
    PRODUCT_FAT(share("product.fat", 0, 1).says(Contents.FAT)),
    COMPOSITION_DRY_MATTER(
            share("composition.dry_matter", RangeLimit.LEAST_CONTENT, 1).says(Contents.DRY_MATTER)),
    COMPOSITION_PROTEIN(
            share("composition.protein", RangeLimit.LEAST_CONTENT, 1).says(Contents.PROTEIN)),
    COMPOSITION_NITROGEN(
            share("composition.nitrogen", RangeLimit.LEAST_CONTENT, 0.2).says(Contents.NITROGEN)),
    COMPOSITION_FAT(share("composition.fat", 0, 1).says(Contents.FAT)),
    FORM(word("form").listedAt("/v1/forms").ofInsects()),
    HARVEST_KG(number("harvest.kg_per_year", "kg live a year", RangeLimit.ABOVE_ZERO, RangeLimit.MOST)
            .ofInsectsAndFish()
            .says("kg live weight a year.")),
    HARVEST_CONTAINERS(number("harvest.containers", "containers", RangeLimit.ABOVE_ZERO, RangeLimit.MOST)
            .ofInsects()
            .says("Containers in use.")),
    HARVEST_KG_PER_CONTAINER(number("harvest.kg_per_container", "kg live", RangeLimit.ABOVE_ZERO, RangeLimit.MOST)
            .ofInsects()
            .says("kg live weight per container and cycle.")),
    HARVEST_CYCLES(number("harvest.cycles_per_year", "a year", RangeLimit.ABOVE_ZERO, RangeLimit.MOST)
            .ofInsects()
            .says("Harvests of a container in a year.")),
    HARVEST_LARVAE(number("harvest.larvae", "a year", RangeLimit.ABOVE_ZERO, RangeLimit.MOST)
            .ofInsects()
            .says("Larvae harvested in a year.")),
    HARVEST_LARVAE_PER_KG(number("harvest.larvae_per_kg", "per kg", RangeLimit.ABOVE_ZERO, RangeLimit.MOST)
            .ofInsects()
            .says("Larvae to the kg live weight.")),
    HARVEST_GRAMS_PER_LARVA(number("harvest.grams_per_larva", "g", RangeLimit.ABOVE_ZERO, 1000)
            .ofInsects()
            .says("g live weight of one larva, on average; in place of `larvae_per_kg`.")),
    HARVEST_PAIRS(number("harvest.pairs", "pairs a cycle", RangeLimit.ABOVE_ZERO, RangeLimit.MOST)
            .ofInsects()
            .says("Adult pairs stocked for a cycle, in all.")),
    HARVEST_EGGS_PER_PAIR(number("harvest.eggs_per_pair", "eggs", RangeLimit.ABOVE_ZERO, 1e6)
            .ofInsects()
            .says("Eggs that a pair lays in the time it stays.")),
    HARVEST_HATCH(
            share("harvest.hatch", RangeLimit.ABOVE_ZERO, 1).says("Share of the eggs that hatch, as a fraction.")),
    HARVEST_SURVIVAL(share("harvest.survival", RangeLimit.ABOVE_ZERO, 1)
            .says("Share of the hatched that live to the harvest, as a fraction; the rest die or are eaten by "
                    + "their own kind.")),
    HARVEST_BATCHES_LOST(share("harvest.batches_lost", 0, RangeLimit.BELOW_ONE)
            .usually(0)
            .says("Share of the batches that are lost as a whole, as a fraction.")),
    HARVEST_FISH(number("harvest.fish", "a year", RangeLimit.ABOVE_ZERO, RangeLimit.MOST)
            .ofFish()
            .says("Fish harvested in a year.")),
    HARVEST_GRAMS_PER_FISH(number("harvest.grams_per_fish", "g", RangeLimit.ABOVE_ZERO, 1e6)
            .ofFish()
            .says("g live weight of one fish at harvest, on average.")),
    SOLD(number("sold_kg", "kg a year", RangeLimit.ABOVE_ZERO, RangeLimit.MOST)
            .ofInsects()
            .says("kg sold a year, in the form sold. Without it the live harvest less what is kept for "
                    + "breeding is taken.")),
    PRICE(number("price_per_kg", RangeLimit.PRICE, 0, RangeLimit.MOST)
            .ofInsects()
            .says("Price of a kg sold, in the currency of the co-products' prices.")),
    CO_PRODUCT_ALLOCATION(word("co_product_allocation")
            .oneOf("none", "mass", "economic")
            .ofInsects()
            .usually("none")
            .says("How co-products take their part of the burden. `economic` needs `price_per_kg` of the "
                    + "product, above zero, and of every co-product.")),
    CYCLE_DAYS(number("cycle_days", "days", 1, 2000)
            .ofInsects()
            .says("Days from hatching or stocking to harvest. Held against usual practice; with `heating` it "
                    + "says how many animals warm the room, and else it adds nothing to the figure.")),
    PAIRS(number("pairs_stocked", "pairs per container", 0, 1e6)
            .ofInsects()
            .says("Breeding pairs stocked per container. Held against usual practice; it adds nothing to "
                    + "the figure.")),
    KEPT_FOR_BREEDING(number("kept_for_breeding", "", 0, RangeLimit.BELOW_ONE)
            .ofInsects()
            .says("Share of the harvest kept back for breeding, as a fraction. Without it the whole harvest "
                    + "counts as sold.")),
    MORTALITY(number("mortality", "", 0, RangeLimit.BELOW_ONE)
            .ofInsects()
            .says("Share of the animals that die before harvest, as a fraction; they too have grown and "
                    + "given off gases. Without it the harvest counts as all that grew.")),

    FRASS_KG(number("frass.kg", "kg a year", 0, RangeLimit.MOST).ofInsects().says("kg a year, as it is.")),
    FRASS_NITROGEN(number("frass.nitrogen", "kg N per kg", 0, 0.2)
            .ofInsects()
            .says("kg N per kg of it; read together with `kg`. Without it the published nitrogen of the "
                    + "species' frass is taken.")),
    FRASS_FATE(word("frass.fate")
            .oneOf("stored", "spread")
            .ofInsects()
            .usually("stored")
            .says("Whether it is kept on the farm or brought to a field.")),
    FRASS_CREDITED(word("frass.credited").oneOf("no", "yes").ofInsects()),

    PROCESSING_STEP(word("processing.#.step").listedAt("/v1/processing-steps").ofInsects()),
    PROCESSING_WATER(number("processing.#.water_kg", "kg a year", 0, RangeLimit.MOST)
            .ofInsects()
            .says("kg of water removed, heated or frozen a year.")),
    PROCESSING_CARRIER(word("processing.#.carrier")
            .listedAt("/v1/energy-carriers")
            .ofInsects()
            .says("What gives the heat, an id of `/v1/energy-carriers`.")),
    /** The worst dryer published takes 7. */
    PROCESSING_ENERGY(number("processing.#.kwh_per_kg", "kWh of delivered energy per kg of water removed", 0, 100)
            .ofInsects()
            .says("kWh of delivered energy per kg of that water, when it was measured. Without it the "
                    + "published demand of the process is taken.")),

    HEATING_ROOM(number("heating.room_m2", "m2", RangeLimit.ABOVE_ZERO, 1e6)
            .ofInsects()
            .says("m2 of floor of the room, taken as one storey that stands alone.")),
    /** No farmed insect is kept warmer. */
    HEATING_TEMPERATURE(number("heating.temperature_c", "°C", 0, 45)
            .ofInsects()
            .says("°C that the room is kept at all year. Without it the species' published rearing "
                    + "temperature is taken; of species without one it is needed.")),
    HEATING_INSULATION(word("heating.insulation")
            .oneOf("uninsulated", "lightly-insulated", "well-insulated")
            .ofInsects()
            .says("How walls and roof are built; `building_heat.csv` of `/v1/library.zip` has the rows behind "
                    + "each. Without it the range reaches from the worst to the best.")),
    HEATING_CARRIER(word("heating.carrier")
            .listedAt("/v1/energy-carriers")
            .ofInsects()
            .says("What gives the heat, an id of `/v1/energy-carriers`.")),

    ANIMALS(word("animals").listedAt("/v1/livestock").ofHerds()),
    IPCC_EDITION(word("ipcc_edition")
            .oneOf("2019", "2006")
            .ofHerds()
            .usually("2019")
            .says("The 2006 Guidelines or their 2019 Refinement; editions are never mixed in one chain.")),
    IPCC_REGION(word("ipcc_region").listedAt("/v1/ipcc-regions").ofHerds()),
    PRODUCTIVITY(word("productivity")
            .oneOf("mean", "high", "low")
            .ofHerds()
            .usually("mean")
            .says("Productivity system of the 2019 tables; `mean` where they are not split.")),
    CLIMATE(word("climate").listedAt("/v1/climates").ofHerds()),
    HEADS(number("heads", "heads", RangeLimit.ABOVE_ZERO, 1e9)
            .ofHerds()
            .says("Animals present, averaged over the year.")),
    BREEDING_STOCK(word("breeding_stock").oneOf("included", "bought-in", "none").ofHerds()),
    MILK(number("yield.milk_kg", "kg a year", RangeLimit.ABOVE_ZERO, RangeLimit.MOST)
            .ofHerds()
            .says("kg milk a year.")),
    EGGS(number("yield.eggs_kg", "kg a year", RangeLimit.ABOVE_ZERO, RangeLimit.MOST)
            .ofHerds()
            .says("kg eggs in shell a year.")),
    LIVE(number("yield.live_kg", "kg a year", RangeLimit.ABOVE_ZERO, RangeLimit.MOST)
            .ofHerds()
            .says("kg live weight slaughtered or sold a year.")),
    MANURE_SYSTEM(word("manure.#.system").listedAt("/v1/manure-systems").ofHerds()),
    MANURE_SHARE(number("manure.#.share", "", 0, 1).ofHerds().says("Share of the manure as a fraction.")),

    CATTLE_WEIGHT(number("cattle.weight_kg", "kg", 10, 2000).ofHerds().says("kg live weight.")),
    CATTLE_MATURE_WEIGHT(number("cattle.mature_weight_kg", "kg", 10, 2000)
            .ofHerds()
            .says("kg live weight of an adult in moderate condition; `weight_kg` where it is not given.")),
    CATTLE_GAIN(number("cattle.gain_kg_per_day", "kg a day", 0, 5)
            .ofHerds()
            .usually(0)
            .says("kg gained a day.")),
    CATTLE_MILK(number("cattle.milk_kg_per_day", "kg a day", 0, 100)
            .ofHerds()
            .usually(0)
            .says("kg milk a day over the year.")),
    CATTLE_MILK_FAT(number("cattle.milk_fat_percent", "percent", 0, 15)
            .ofHerds()
            .usually(4)
            .says("Fat in milk in percent of its mass.")),
    CATTLE_PREGNANT(number("cattle.pregnant_share", "", 0, 1)
            .ofHerds()
            .usually(0)
            .says("Share of the animals that calve in a year, as a fraction.")),
    CATTLE_WORK(number("cattle.work_hours_per_day", "hours a day", 0, 24)
            .ofHerds()
            .usually(0)
            .says("Hours of draught work a day.")),
    CATTLE_DIGESTIBILITY(number("cattle.digestibility_percent", "percent", 40, 90)
            .ofHerds()
            .says("Digestible part of the gross energy of the feed, in percent.")),
    CATTLE_ACTIVITY(word("cattle.activity")
            .oneOf("stall", "pasture-fed", "large-areas")
            .ofHerds()
            .usually("stall")
            .says("How far the animals walk for their feed.")),
    CATTLE_KIND(word("cattle.kind")
            .oneOf("lactating", "not-lactating", "intact-males", "castrates")
            .ofHerds()
            .says("Sex and state, for maintenance and growth. Without it `lactating` where milk is given, "
                    + "else `not-lactating`.")),
    CATTLE_METHANE_CONVERSION(number("cattle.methane_conversion_percent", "percent", 0, 15)
            .ofHerds()
            .says("Methane in percent of gross energy (Ym). Without it the guidelines' value for milk yield "
                    + "or forage.")),
    CATTLE_CRUDE_PROTEIN(number("cattle.crude_protein_percent", "percent", 0, 40)
            .ofHerds()
            .says("Crude protein of the feed in percent of dry matter, for the nitrogen excreted. Without "
                    + "it the guidelines' excretion rate.")),

    STOCKED_KG(number("stocked.kg", "kg live a year", 0, RangeLimit.MOST)
            .ofFish()
            .says("kg live weight of fry or fingerlings put in a year; 0 where all young are the farm's own.")),
    STOCKED_FISH(number("stocked.fish", "a year", RangeLimit.ABOVE_ZERO, RangeLimit.MOST)
            .ofFish()
            .says("Fry or fingerlings put in a year.")),
    STOCKED_GRAMS_PER_FISH(number("stocked.grams_per_fish", "g", RangeLimit.ABOVE_ZERO, 1e6)
            .ofFish()
            .says("g live weight of one when it is put in, on average.")),
    POND_KIND(word("pond.kind")
            .oneOf("pond", "brackish-pond", "lined-pond", "tank", "cage")
            .ofFish()
            .usually("pond")
            .says("What the fish live in: a freshwater pond with earthen ground, one of brackish water, one lined "
                    + "with foil or concrete, a tank, or a cage in open water. Methane was measured of the first "
                    + "alone; of the others it is not counted, and the figure is a lower bound.")),
    POND_AREA(number("pond.area_m2", "m2", RangeLimit.ABOVE_ZERO, RangeLimit.MOST)
            .ofFish()
            .says("m2 of water, on average over the year, with that which lies fallow. Methane of a pond and land "
                    + "follow from it; without it neither is counted, and both are lower bounds.")),
    POND_NITROGEN(number("pond.fertiliser_n_kg", "kg N a year", 0, RangeLimit.MOST)
            .ofFish()
            .says("kg N of mineral fertiliser put into the water a year.")),
    POND_PHOSPHATE(number("pond.fertiliser_p2o5_kg", "kg P2O5 a year", 0, RangeLimit.MOST)
            .ofFish()
            .says("kg P2O5 of mineral fertiliser put into the water a year.")),
    POND_MANURE(number("pond.manure_kg", "kg a year", 0, RangeLimit.MOST)
            .ofFish()
            .says("kg of manure as it is, put into the water a year. It carries none of the burden of its animals.")),
    POND_LIME(number("pond.lime_kg", "kg a year", 0, RangeLimit.MOST)
            .ofFish()
            .says("kg of lime put into the water or on its ground a year. No factor of it is held: above zero, "
                    + "the figure is a lower bound."));

    private static final Map<String, RecordField> BY_PATH = new HashMap<>();

    static {
        for (RecordField field : values()) {
            BY_PATH.put(field.path(), field);
        }
    }

    @SuppressWarnings("ImmutableEnumChecker") // A record of texts and unmodifiable lists.
    private final FieldDefinition definition;

    RecordField(FieldDefinition definition) {
        this.definition = definition;
    }

    /** The field that stands at a path such as {@code feed.#.kg}. */
    public static Optional<RecordField> at(String path) {
        return Optional.ofNullable(BY_PATH.get(path));
    }

    /** What is said of it: unit, limits, words, and whose records have it. */
    public FieldDefinition definition() {
        return definition;
    }

    /** Where it stands, such as {@code water_m3}, {@code frass.kg} or {@code feed.#.kg}. */
    public String path() {
        return definition.path();
    }

    /** Its name in the object that has it: the last step of the path. */
    public String field() {
        return definition.field();
    }

    /** What it holds. */
    public FieldKind kind() {
        return definition.kind();
    }

    /** The unit of a number; empty for a share as a fraction, a year and what is no number. */
    public String unit() {
        return definition.unit();
    }

    /** True for a share as a fraction. */
    public boolean isShare() {
        return kind() == FieldKind.NUMBER && unit().isEmpty();
    }

    /** The least value of a number, in its unit; without bound for what is no number. */
    public double least() {
        return definition.least();
    }

    /** The greatest value of a number, in its unit; without bound for what is no number. */
    public double most() {
        return definition.most();
    }

    /** A share of something, as a fraction, in the records of an insect farm. */
    private static FieldDefinition share(String path, double least, double most) {
        return number(path, "", least, most).ofInsects();
    }

    /** What is said of the contents of the harvested animals, wherever they are stated. */
    private static final class Contents {
        static final String DRY_MATTER =
                "Dry matter of the harvested animals, as a fraction of their fresh weight. It goes before the "
                        + "library's.";
        static final String PROTEIN =
                "Crude protein of the harvested animals, as a fraction of their fresh weight. It goes before the library's.";
        static final String NITROGEN =
                "Nitrogen of the harvested animals, as a fraction of their fresh weight. Without `protein`, 6.25 "
                        + "times as much is taken as crude protein.";
        static final String FAT =
                "Fat of the harvested animals, as a fraction of their fresh weight; for the balance of gross energy.";

        private Contents() {}
    }

    /** Limits and a unit that many fields have. */
    private static final class RangeLimit {
        /** An amount that no farm reaches; it keeps sums and products finite. */
        static final double MOST = 1e12;
        /** The least of what is divided by, and must not be zero. */
        static final double ABOVE_ZERO = 1e-9;
        /** What is divided by, where a smaller number can only be a percentage of something else. */
        static final double LEAST_CONTENT = 0.001;
        /** A share that leaves something over to divide by. */
        static final double BELOW_ONE = 0.99;

        static final String PRICE = "per kg, in the currency of the records";

        private RangeLimit() {}
    }
}

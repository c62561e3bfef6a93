package org.scalepan.production;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The fields of a year's records of a farm or herd: where each stands, its unit and the limits of its value. Requests, tables of many
 * farms and the inputs that a question may change take them from here; the description of the service, the template of a table and
 * the page for farms are held to them by a test.
 *
 * <p>The path is the name of a column: a dot for each step inwards, {@code #} for the number of a line of a list.
 */
public enum RecordField {
    KIND("kind", FieldKind.WORD),
    NAME("name", FieldKind.TEXT),
    REGION("region", FieldKind.WORD),
    YEAR("year", FieldKind.WHOLE_NUMBER, "", 1990, 2100),
    /** No fuel burnt in any plant comes near the most. */
    GRID_GHG("grid_ghg_per_kwh", "kg CO2e per kWh", 0, 10),
    WATER("water_m3", "m3 a year", 0, RangeLimit.MOST),
    BUILDING("building_m2", "m2", 0, RangeLimit.MOST),
    YARD("yard_m2", "m2", 0, RangeLimit.MOST),

    FEED_INGREDIENT("feed.#.ingredient", FieldKind.WORD),
    FEED_KG("feed.#.kg", "kg as fed a year", 0, RangeLimit.MOST),
    FEED_MOISTURE("feed.#.moisture", "", 0, RangeLimit.BELOW_ONE),
    FEED_BURDEN("feed.#.burden", FieldKind.WORD),
    FEED_DISPLACES("feed.#.displaces", FieldKind.WORD),
    FEED_DISPLACED("feed.#.displaced_kg_per_kg", "kg per kg", 0, 100),
    /** A supplier's own factor may be negative, where it credits an avoided burden. */
    FEED_GHG("feed.#.ghg_per_kg", "kg CO2e per kg", -1000, 1000),
    FEED_LAND("feed.#.land_per_kg", "m2*yr per kg", 0, 10_000),
    FEED_ENERGY("feed.#.energy_per_kg", "MJ per kg", 0, 10_000),
    FEED_WATER("feed.#.water_per_kg", "m3 per kg", 0, 10_000),

    ENERGY_CARRIER("energy.#.carrier", FieldKind.WORD),
    /** In the unit of its carrier: kWh, kg or litre. */
    ENERGY_AMOUNT("energy.#.amount", "a year", 0, RangeLimit.MOST),
    ENERGY_SITE("energy.#.for", FieldKind.WORD),

    TRANSPORT_MODE("transport.#.mode", FieldKind.WORD),
    TRANSPORT_WORK("transport.#.tonne_km", "tonne-km a year", 0, RangeLimit.MOST),

    MATERIAL("materials.#.material", FieldKind.WORD),
    MATERIAL_KG("materials.#.kg", "kg in use", 0, RangeLimit.MOST),
    MATERIAL_YEARS("materials.#.years", "years", 0.01, 1000),

    CO_PRODUCT_NAME("co_products.#.name", FieldKind.TEXT),
    CO_PRODUCT_KG("co_products.#.kg", "kg a year", 0, RangeLimit.MOST),
    CO_PRODUCT_PRICE("co_products.#.price_per_kg", RangeLimit.PRICE, 0, RangeLimit.MOST),

    PRODUCT("product", FieldKind.WORD),
    FORM("form", FieldKind.WORD),
    HARVEST_KG("harvest.kg_per_year", "kg live a year", RangeLimit.ABOVE_ZERO, RangeLimit.MOST),
    HARVEST_CONTAINERS("harvest.containers", "containers", RangeLimit.ABOVE_ZERO, RangeLimit.MOST),
    HARVEST_KG_PER_CONTAINER("harvest.kg_per_container", "kg live", RangeLimit.ABOVE_ZERO, RangeLimit.MOST),
    HARVEST_CYCLES("harvest.cycles_per_year", "a year", RangeLimit.ABOVE_ZERO, RangeLimit.MOST),
    HARVEST_LARVAE("harvest.larvae", "a year", RangeLimit.ABOVE_ZERO, RangeLimit.MOST),
    HARVEST_LARVAE_PER_KG("harvest.larvae_per_kg", "per kg", RangeLimit.ABOVE_ZERO, RangeLimit.MOST),
    SOLD("sold_kg", "kg a year", RangeLimit.ABOVE_ZERO, RangeLimit.MOST),
    PRICE("price_per_kg", RangeLimit.PRICE, 0, RangeLimit.MOST),
    CO_PRODUCT_ALLOCATION("co_product_allocation", FieldKind.WORD),
    CYCLE_DAYS("cycle_days", "days", 1, 2000),
    PAIRS("pairs_stocked", "pairs per container", 0, 1e6),
    KEPT_FOR_BREEDING("kept_for_breeding", "", 0, RangeLimit.BELOW_ONE),
    MORTALITY("mortality", "", 0, RangeLimit.BELOW_ONE),

    FRASS_KG("frass.kg", "kg a year", 0, RangeLimit.MOST),
    FRASS_NITROGEN("frass.nitrogen", "kg N per kg", 0, 0.2),
    FRASS_FATE("frass.fate", FieldKind.WORD),
    FRASS_CREDITED("frass.credited", FieldKind.WORD),

    PROCESSING_STEP("processing.#.step", FieldKind.WORD),
    PROCESSING_WATER("processing.#.water_kg", "kg a year", 0, RangeLimit.MOST),
    PROCESSING_CARRIER("processing.#.carrier", FieldKind.WORD),
    /** The worst dryer published takes 7. */
    PROCESSING_ENERGY("processing.#.kwh_per_kg", "kWh of delivered energy per kg of water removed", 0, 100),

    HEATING_ROOM("heating.room_m2", "m2", RangeLimit.ABOVE_ZERO, 1e6),
    /** No farmed insect is kept warmer. */
    HEATING_TEMPERATURE("heating.temperature_c", "°C", 0, 45),
    HEATING_INSULATION("heating.insulation", FieldKind.WORD),
    HEATING_CARRIER("heating.carrier", FieldKind.WORD),

    ANIMALS("animals", FieldKind.WORD),
    IPCC_EDITION("ipcc_edition", FieldKind.WORD),
    IPCC_REGION("ipcc_region", FieldKind.WORD),
    PRODUCTIVITY("productivity", FieldKind.WORD),
    CLIMATE("climate", FieldKind.WORD),
    HEADS("heads", "heads", RangeLimit.ABOVE_ZERO, 1e9),
    BREEDING_STOCK("breeding_stock", FieldKind.WORD),
    MILK("yield.milk_kg", "kg a year", RangeLimit.ABOVE_ZERO, RangeLimit.MOST),
    EGGS("yield.eggs_kg", "kg a year", RangeLimit.ABOVE_ZERO, RangeLimit.MOST),
    LIVE("yield.live_kg", "kg a year", RangeLimit.ABOVE_ZERO, RangeLimit.MOST),
    MANURE_SYSTEM("manure.#.system", FieldKind.WORD),
    MANURE_SHARE("manure.#.share", "", 0, 1),

    CATTLE_WEIGHT("cattle.weight_kg", "kg", 10, 2000),
    CATTLE_MATURE_WEIGHT("cattle.mature_weight_kg", "kg", 10, 2000),
    CATTLE_GAIN("cattle.gain_kg_per_day", "kg a day", 0, 5),
    CATTLE_MILK("cattle.milk_kg_per_day", "kg a day", 0, 100),
    CATTLE_MILK_FAT("cattle.milk_fat_percent", "percent", 0, 15),
    CATTLE_PREGNANT("cattle.pregnant_share", "", 0, 1),
    CATTLE_WORK("cattle.work_hours_per_day", "hours a day", 0, 24),
    CATTLE_DIGESTIBILITY("cattle.digestibility_percent", "percent", 40, 90),
    CATTLE_ACTIVITY("cattle.activity", FieldKind.WORD),
    CATTLE_KIND("cattle.kind", FieldKind.WORD),
    CATTLE_METHANE_CONVERSION("cattle.methane_conversion_percent", "percent", 0, 15),
    CATTLE_CRUDE_PROTEIN("cattle.crude_protein_percent", "percent", 0, 40);

    private static final Map<String, RecordField> BY_PATH = new HashMap<>();

    static {
        for (RecordField field : values()) {
            BY_PATH.put(field.path, field);
        }
    }

    private final String path;
    private final String field;
    private final FieldKind kind;
    private final String unit;
    private final double least;
    private final double most;

    RecordField(String path, FieldKind kind, String unit, double least, double most) {
        this.path = path;
        this.field = path.substring(path.lastIndexOf('.') + 1);
        this.kind = kind;
        this.unit = unit;
        this.least = least;
        this.most = most;
    }

    RecordField(String path, String unit, double least, double most) {
        this(path, FieldKind.NUMBER, unit, least, most);
    }

    RecordField(String path, FieldKind kind) {
        this(path, kind, "", Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    /** The field that stands at a path such as {@code feed.#.kg}. */
    public static Optional<RecordField> at(String path) {
        return Optional.ofNullable(BY_PATH.get(path));
    }

    /** Where it stands, such as {@code water_m3}, {@code frass.kg} or {@code feed.#.kg}. */
    public String path() {
        return path;
    }

    /** Its name in the object that has it: the last step of the path. */
    public String field() {
        return field;
    }

    /** What it holds. */
    public FieldKind kind() {
        return kind;
    }

    /** The unit of a number; empty for a share as a fraction, a year and what is no number. */
    public String unit() {
        return unit;
    }

    /** The least value of a number, in its unit; without bound for what is no number. */
    public double least() {
        return least;
    }

    /** The greatest value of a number, in its unit; without bound for what is no number. */
    public double most() {
        return most;
    }

    /** Limits and a unit that many fields have. */
    private static final class RangeLimit {
        /** An amount that no farm reaches; it keeps sums and products finite. */
        static final double MOST = 1e12;
        /** The least of what is divided by, and must not be zero. */
        static final double ABOVE_ZERO = 1e-9;
        /** A share that leaves something over to divide by. */
        static final double BELOW_ONE = 0.99;

        static final String PRICE = "per kg, in the currency of the records";

        private RangeLimit() {}
    }
}

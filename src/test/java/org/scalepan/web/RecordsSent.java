package org.scalepan.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/** Invented records of farms and herds that together use every field. */
public final class RecordsSent {
    private static final String FULL_FARM = """
            {"system": {"kind": "insects", "product": "mealworm", "form": "dried", "name": "invented bins",
              "harvest": {"containers": 40, "kg_per_container": 2.5, "cycles_per_year": 12}, "sold_kg": 400,
              "co_product_allocation": "economic", "price_per_kg": 5, "cycle_days": 26, "pairs_stocked": 4,
              "kept_for_breeding": 0.05, "mortality": 0.2, "region": "peru", "year": 2024,
              "feed": [{"ingredient": "wheat-bran", "kg": 3600, "moisture": 0.1, "burden": "mass"},
                {"ingredient": "cassava-peel", "kg": 2400, "moisture": 0.7, "burden": "displaced",
                  "displaces": "maize", "displaced_kg_per_kg": 0.2},
                {"ingredient": "wheat-bran", "kg": 100, "ghg_per_kg": 0.3, "land_per_kg": 0.5, "energy_per_kg": 2,
                  "water_per_kg": 0.01, "burden": "mass"}],
              "energy": [{"carrier": "grid-electricity", "amount": 150, "for": "processing"}], "water_m3": 15,
              "transport": [{"mode": "truck-average", "tonne_km": 90}],
              "materials": [{"material": "plastic-average", "kg": 40, "years": 4}],
              "building_m2": 40, "yard_m2": 30,
              "co_products": [{"name": "oil", "kg": 20, "price_per_kg": 2}],
              "frass": {"kg": 900, "nitrogen": 0.03, "fate": "spread", "credited": "yes"},
              "processing": [{"step": "drying", "water_kg": 600, "carrier": "grid-electricity", "kwh_per_kg": 1.5}],
              "heating": {"room_m2": 40, "temperature_c": 27, "insulation": "lightly-insulated", "carrier": "natural-gas"},
              "grid_ghg_per_kwh": 0.4},
             "compare": {"reference_farms": ["broilers-temperate"], "products": ["beef", "mealworm"], "systems": [{"kind": "herd", "name": "invented hens",
                "animals": "layers", "heads": 10, "breeding_stock": "included", "yield": {"eggs_kg": 40}}]},
             "indicators": ["ghg", "water"], "credit": "yes", "per": "kg-protein", "boundary": "processing-gate",
             "luc": "include", "gwp": "ar5-100", "region": "western-europe", "grade": "secondary", "protein": "corrected", "quality": "uncapped",
             "strict": "yes", "of": "mean", "coverage": 0.8, "draws": 1000, "seed": 7}
            """;
    private static final String COUNTED_FARM = """
            {"system": {"kind": "insects", "product": "mealworm", "harvest": {"larvae": 5000000, "larvae_per_kg": 8000},
              "feed": [{"ingredient": "wheat-bran", "kg": 1700, "burden": "mass"}], "frass": {"kg": 700}}, "draws": 1000}
            """;
    private static final String WEIGHED_FARM = """
            {"system": {"kind": "insects", "product": "house-cricket", "harvest": {"kg_per_year": 100}},
             "indicators": ["ghg", "land", "feed", "feed-dry-matter", "energy", "water"], "draws": 1000}
            """;
    private static final String OWN_SPECIES_FARM = """
            {"system": {"kind": "insects", "name": "invented tubs", "region": "portugal",
              "product": {"name": "rhinoceros beetle", "group": "insect", "dry_matter": 0.35, "protein": 0.18,
                "nitrogen": 0.03, "fat": 0.1},
              "harvest": {"pairs": 20, "eggs_per_pair": 60, "hatch": 0.7, "survival": 0.6, "batches_lost": 0.1,
                "grams_per_larva": 20, "cycles_per_year": 2},
              "feed": [{"name": "leaf compost", "kg": 1500, "moisture": 0.6, "nitrogen": 0.015, "burden": "burden-free"}],
              "energy": [{"carrier": "grid-electricity", "amount": 20}]}, "draws": 1000}
            """;
    private static final String PLANNED_FARM = """
            {"system": {"kind": "insects", "product": "superworm",
              "composition": {"dry_matter": 0.3, "protein": 0.18, "nitrogen": 0.029, "fat": 0.05},
              "harvest": {"pairs": 20, "eggs_per_pair": 60, "hatch": 0.7, "survival": 0.6, "larvae_per_kg": 300,
                "cycles_per_year": 3},
              "feed": [{"ingredient": "carrot", "kg": 300}]}, "indicators": ["ghg"], "draws": 1000}
            """;
    private static final String FARM_BY_MASS = """
            {"system": {"kind": "insects", "product": "mealworm", "harvest": {"larvae": 900000, "grams_per_larva": 0.12},
              "feed": [{"ingredient": "wheat-bran", "kg": 300, "burden": "mass"}]}, "indicators": ["ghg"], "draws": 1000}
            """;
    private static final String FULL_HERD = """
            {"system": {"kind": "herd", "name": "invented cows", "animals": "dairy-cattle", "ipcc_edition": "2019",
              "ipcc_region": "africa", "productivity": "low", "climate": "tropical-wet", "heads": 12, "breeding_stock": "included",
              "yield": {"milk_kg": 9000, "live_kg": 700}, "manure": [{"system": "pasture", "share": 1}],
              "cattle": {"weight_kg": 300, "mature_weight_kg": 320, "gain_kg_per_day": 0.1, "milk_kg_per_day": 3,
                "milk_fat_percent": 4.5, "pregnant_share": 0.6, "work_hours_per_day": 1, "digestibility_percent": 58,
                "activity": "large-areas", "kind": "lactating", "methane_conversion_percent": 6.5,
                "crude_protein_percent": 11},
              "product": "milk", "region": "kenya", "year": 2023,
              "feed": [{"ingredient": "maize", "kg": 500}], "energy": [{"carrier": "diesel", "amount": 20}],
              "water_m3": 200, "transport": [{"mode": "truck-average", "tonne_km": 30}],
              "materials": [{"material": "plastic-average", "kg": 10}], "building_m2": 60, "yard_m2": 300,
              "grid_ghg_per_kwh": 0.2},
             "indicators": ["ghg"], "draws": 1000}
            """;
    private static final String FLOCK = """
            {"system": {"kind": "herd", "animals": "layers", "heads": 10, "breeding_stock": "included", "yield": {"eggs_kg": 40, "live_kg": 6},
              "region": "peru", "feed": [{"ingredient": "maize", "kg": 150}]}, "draws": 1000}
            """;

    private static final String FULL_FISH = """
            {"system": {"kind": "fish", "name": "invented ponds", "product": "tilapia", "region": "kenya", "year": 2023,
              "harvest": {"fish": 2000, "grams_per_fish": 450}, "stocked": {"fish": 2300, "grams_per_fish": 20},
              "pond": {"kind": "pond", "area_m2": 800, "fertiliser_n_kg": 4, "fertiliser_p2o5_kg": 2, "manure_kg": 300,
                "lime_kg": 50},
              "feed": [{"ingredient": "maize", "kg": 1300}], "energy": [{"carrier": "diesel", "amount": 20}],
              "water_m3": 3000, "transport": [{"mode": "truck-average", "tonne_km": 30}],
              "materials": [{"material": "plastic-average", "kg": 10}], "building_m2": 20, "yard_m2": 100,
              "grid_ghg_per_kwh": 0.2},
             "indicators": ["ghg"], "draws": 1000}
            """;
    private static final String WEIGHED_FISH = """
            {"system": {"kind": "fish", "product": "carp", "harvest": {"kg_per_year": 900}, "stocked": {"kg": 60},
              "feed": [{"ingredient": "maize", "kg": 1300}]}, "indicators": ["ghg"], "draws": 1000}
            """;

    private RecordsSent() {}

    /** A harvest that is only wished for. */
    public static final String PLAN = """
            {"plan": {"system": "house-cricket-ambient-tropical", "harvest_kg": 250}, "indicators": ["ghg"]}
            """;

    public static List<ObjectNode> all() {
        List<ObjectNode> read = new ArrayList<>();
        for (String text : List.of(
                FULL_FARM,
                COUNTED_FARM,
                WEIGHED_FARM,
                OWN_SPECIES_FARM,
                PLANNED_FARM,
                FARM_BY_MASS,
                FULL_HERD,
                FLOCK,
                FULL_FISH,
                WEIGHED_FISH,
                PLAN)) {
            read.add(read(text));
        }
        return read;
    }

    public static ObjectNode read(String text) {
        try {
            return (ObjectNode) new JsonMapper().readTree(text);
        } catch (JsonProcessingException e) {
            throw new AssertionError(e);
        }
    }
}

package org.scalepan.production.insects;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.scalepan.Libraries;
import org.scalepan.factors.Library;
import org.scalepan.input.Obstacle;
import org.scalepan.production.Flow;
import org.scalepan.production.Flux;
import org.scalepan.production.Gap;
import org.scalepan.production.InsectRecordsFixture;
import org.scalepan.production.Inventory;
import org.scalepan.production.RecordField;
import org.scalepan.production.RecordedNumber;
import org.scalepan.production.Remark;
import org.scalepan.production.RowSpan;
import org.scalepan.production.Stage;
import org.scalepan.production.Tally;
import org.scalepan.production.heating.Heating;
import org.scalepan.production.heating.RoomHeat;

/** A rearing room that is heated and has no meter: its heat follows from the climate, the walls and the temperature kept. */
class HeatedFarmTest {
    private static final RowSpan NO_ANIMALS = new RowSpan(0, 0, List.of());
    private static final RecordedNumber FLOOR = RecordedNumber.of(50);
    private final Library library = Libraries.bundled();

    private static Heating room(String insulation, double celsius, String carrier) {
        return new Heating(FLOOR, RecordedNumber.known(celsius), Optional.of(insulation), carrier);
    }

    private RoomHeat heat(String country, Heating room) {
        return RoomHeat.of(library, Optional.of(country), "house-cricket", room, NO_ANIMALS)
                .orElseThrow();
    }

    private InsectRecordsFixture farm(String product, Heating room, String country) {
        return InsectRecordsFixture.of(library, product, 1000).in(country).heated(room);
    }

    private static Gap gap(Inventory inventory, String field) {
        return inventory.gaps().stream()
                .filter(gap -> gap.field().equals(field))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no gap " + field + " among " + inventory.gaps()));
    }

    /**
     * By hand, for 50 m2, 2 m high, U 0.28, 0.143 and 0.22, half an air change: 4·√50·2·0.28 + 50·(0.143 + 0.22) + 100·0.5·1.2/3.6
     * = 50.66 W/K; the Netherlands lack 6 337 K·d to 28 °C; times 86 400 s.
     */
    @Test
    void the_least_heat_of_a_room_is_what_one_works_out_by_hand() {
        assertEquals(
                27_740,
                heat("netherlands", room("well-insulated", 28, "grid-electricity"))
                        .low(),
                60,
                "MJ a year");
    }

    @Test
    void a_warmer_country_and_better_walls_take_less_heat() {
        RoomHeat norway = heat("norway", room("uninsulated", 28, "grid-electricity"));
        RoomHeat italy = heat("italy", room("uninsulated", 28, "grid-electricity"));
        RoomHeat insulated = heat("norway", room("well-insulated", 28, "grid-electricity"));

        assertTrue(italy.low() < norway.low() && italy.high() < norway.high());
        assertTrue(insulated.low() < norway.low() && insulated.high() < norway.high());
    }

    @Test
    void nothing_is_heated_where_every_month_is_as_warm_as_the_room() {
        Inventory inventory = farm("house-cricket", room("uninsulated", 24, "grid-electricity"), "mali")
                .inventory();

        assertEquals(0, Tally.yearly(inventory, Flux.ENERGY_ON_FARM), "MJ a year");
        assertTrue(gap(inventory, "heating").filledWith().startsWith("0: every month of Mali"));
    }

    @Test
    void a_room_without_insulation_recorded_lies_anywhere_between_the_classes() {
        Heating open = new Heating(FLOOR, RecordedNumber.known(28), Optional.empty(), "grid-electricity");

        assertEquals(
                heat("norway", room("well-insulated", 28, "grid-electricity")).low(),
                heat("norway", open).low(),
                1e-6);
        assertEquals(
                heat("norway", room("uninsulated", 28, "grid-electricity")).high(),
                heat("norway", open).high(),
                1e-6);
    }

    @Test
    void a_room_remembered_as_a_range_is_heated_from_its_least_to_its_most() {
        RecordedNumber floor =
                RecordedNumber.between("records/invented/heating.room_m2", RecordField.HEATING_ROOM, 40, 60);
        RecordedNumber kept = RecordedNumber.between(
                "records/invented/heating.temperature_c", RecordField.HEATING_TEMPERATURE, 26, 30);
        RoomHeat range =
                heat("norway", new Heating(floor, Optional.of(kept), Optional.of("uninsulated"), "grid-electricity"));

        assertEquals(
                heat(
                                "norway",
                                new Heating(
                                        RecordedNumber.of(40),
                                        RecordedNumber.known(26),
                                        Optional.of("uninsulated"),
                                        "grid-electricity"))
                        .low(),
                range.low(),
                1e-6,
                "MJ a year");
        assertEquals(
                heat(
                                "norway",
                                new Heating(
                                        RecordedNumber.of(60),
                                        RecordedNumber.known(30),
                                        Optional.of("uninsulated"),
                                        "grid-electricity"))
                        .high(),
                range.high(),
                1e-6,
                "MJ a year");
    }

    @Test
    void part_of_the_heat_of_a_fuel_leaves_by_the_chimney() {
        double electric =
                heat("norway", room("uninsulated", 28, "grid-electricity")).high();

        assertEquals(
                electric / 0.9,
                heat("norway", room("uninsulated", 28, "natural-gas")).high(),
                1e-6,
                "MJ of gas");
    }

    @Test
    void the_heat_is_energy_of_the_farm_at_the_stage_energy_with_its_rows() {
        Inventory inventory = farm("house-cricket", room("well-insulated", 28, "grid-electricity"), "netherlands")
                .inventory();

        Flow heat = inventory.flows().stream()
                .filter(flow -> flow.flux() == Flux.CO2E && flow.stage() == Stage.ENERGY)
                .findFirst()
                .orElseThrow();
        assertTrue(heat.rows().contains("gortan-2024.netherlands.population"), heat.rows()::toString);
        assertTrue(heat.rows().contains("common-practice.room.height"), heat.rows()::toString);
        assertTrue(
                gap(inventory, "heating")
                        .filledWith()
                        .matches("heat demand by degree days of the Netherlands: \\d+ to \\d+ MJ a year.*"),
                gap(inventory, "heating").filledWith());
        assertEquals(Gap.Kind.FILLED, gap(inventory, "heating").kind());
    }

    @Test
    void the_temperature_is_that_published_of_the_species_where_none_is_recorded() {
        Heating open = new Heating(FLOOR, Optional.empty(), Optional.of("uninsulated"), "grid-electricity");
        Inventory inventory = farm("house-cricket", open, "norway").inventory();

        assertEquals(
                "27 to 32 °C, as published of house-cricket",
                gap(inventory, "heating/temperature_c").filledWith());
    }

    /** 1000 kg a year of 100 days hold 274 kg at harvest; 5.75 W/kg and more than that of half of it warm a well insulated room. */
    @Test
    void what_the_animals_give_off_is_taken_off_where_it_was_measured() {
        Heating room = room("well-insulated", 27, "grid-electricity");
        double flies = Tally.yearly(
                farm("black-soldier-fly", room, "norway").cycleDays(100).inventory(), Flux.ENERGY_ON_FARM);
        double crickets = Tally.yearly(
                farm("house-cricket", room, "norway").cycleDays(100).inventory(), Flux.ENERGY_ON_FARM);

        assertTrue(flies < crickets, flies + " MJ of flies, " + crickets + " MJ of crickets");
    }

    @Test
    void a_farm_that_records_energy_too_is_warned_not_to_count_it_twice() {
        Inventory inventory = farm("house-cricket", room("well-insulated", 28, "grid-electricity"), "netherlands")
                .energy("grid-electricity", 100)
                .inventory();

        assertTrue(inventory.remarks().stream()
                .anyMatch(remark -> remark.code().equals(Remark.METHOD)
                        && remark.text().contains("leave heating out where a meter has it already")));
    }

    @Test
    void heat_needs_a_country_and_a_temperature() {
        Heating open = new Heating(FLOOR, Optional.empty(), Optional.empty(), "grid-electricity");

        assertEquals(
                Optional.of(
                        "heating needs region: how much heat a room takes depends on the climate of the country it stands in"),
                RoomHeat.obstacle(library, Optional.empty(), library.products().get("house-cricket"), open)
                        .map(Obstacle::text));
        assertEquals(
                Optional.of("heating needs a country as region: no monthly temperatures of Africa are in this library"),
                RoomHeat.obstacle(
                                library,
                                Optional.of("africa"),
                                library.products().get("house-cricket"),
                                open)
                        .map(Obstacle::text));
        assertEquals(
                Optional.of("heating needs temperature_c: no rearing temperature of superworm is in this library"),
                RoomHeat.obstacle(
                                library,
                                Optional.of("norway"),
                                library.products().get("superworm"),
                                open)
                        .map(Obstacle::text));
        assertTrue(RoomHeat.obstacle(
                        library, Optional.of("norway"), library.products().get("house-cricket"), open)
                .isEmpty());
    }
}

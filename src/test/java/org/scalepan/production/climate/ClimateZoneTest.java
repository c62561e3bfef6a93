package org.scalepan.production.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.Libraries;
import org.scalepan.factors.Library;

/** IPCC 2019 Refinement, volume 4, chapter 3, figure 3A.5.1: climate zones by mean temperature and rain. */
class ClimateZoneTest {
    private final Library library = Libraries.bundled();

    private ClimateZone zone(double celsius, double rain, String edition) {
        return ClimateZone.of(
                library,
                new ClimateNormals("invented", "kenya", "area", Collections.nCopies(12, celsius), rain),
                edition);
    }

    @ParameterizedTest
    @CsvSource({
        "18.1, 2001, tropical-wet",
        "18.1, 2000, tropical-moist",
        "18.1, 1000, tropical-dry",
        "18.0, 2001, warm-temperate-moist",
        "10.1,  500, warm-temperate-moist",
        "10.0,  500, cool-temperate-moist",
        " 0.1,  500, cool-temperate-moist",
        " 0.0,  500, boreal-moist"
    })
    void a_zone_begins_beyond_its_limit(double celsius, double rain, String id) {
        assertEquals(id, zone(celsius, rain, "2019").id());
    }

    @Test
    void outside_the_tropics_moist_is_an_assumption_and_said_to_be_one() {
        assertFalse(zone(12, 300, "2019").moistureKnown());
        assertTrue(zone(12, 300, "2019").message().english().contains("moist is taken"));
        assertTrue(zone(25, 300, "2019").moistureKnown());
    }

    @ParameterizedTest
    @CsvSource({"3, temp-10-or-less", "10.4, temp-10-or-less", "10.6, temp-11", "27.4, temp-27", "29, temp-28-or-more"})
    void the_tables_of_2006_have_a_column_for_each_degree(double celsius, String column) {
        assertEquals(column, zone(celsius, 800, "2006").id());
    }

    @ParameterizedTest
    @CsvSource({
        "netherlands, warm-temperate-moist",
        "norway, cool-temperate-moist",
        "mali, tropical-dry",
        "singapore, tropical-wet",
        "thailand, tropical-moist"
    })
    void countries_fall_where_their_weather_puts_them(String country, String id) {
        assertEquals(
                id,
                ClimateZone.of(library, ClimateNormals.of(library, country).orElseThrow(), "2019")
                        .id());
    }

    @Test
    void the_rows_behind_a_zone_are_the_normals_and_every_limit_passed() {
        assertEquals(
                List.of(
                        "gortan-2024.mali.population",
                        "ipcc-2019-v4ch3.tropical.temperature-above",
                        "ipcc-2019-v4ch3.tropical-wet.rain-above",
                        "ipcc-2019-v4ch3.tropical-moist.rain-above"),
                ClimateZone.of(library, ClimateNormals.of(library, "mali").orElseThrow(), "2019")
                        .rows());
    }

    @Test
    void every_zone_is_a_climate_of_the_tables() {
        for (String edition : List.of("2006", "2019")) {
            library.regions().all().stream()
                    .flatMap(region -> ClimateNormals.of(library, region.id()).stream())
                    .map(normals -> ClimateZone.of(library, normals, edition).id())
                    .forEach(id -> assertTrue(library.row("ipcc_terms", id).isPresent(), id));
        }
    }
}

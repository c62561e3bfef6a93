package org.scalepan.production.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.scalepan.Libraries;
import org.scalepan.factors.Library;

/** Monthly temperatures and the degree days that follow from them. */
class ClimateNormalsTest {
    private final Library library = Libraries.bundled();

    private static ClimateNormals always(double celsius) {
        return new ClimateNormals("invented", "invented", "area", Collections.nCopies(12, celsius), 800);
    }

    /**
     * Mean heating degree days of 1979 to 2021 by Eurostat's rule (18 °C less the day's mean, on days at or below 15 °C), as printed in its
     * news of 31 May 2022; the normals are of other years and months, so the two agree within 6 %.
     */
    @ParameterizedTest
    @CsvSource({"finland, 5665", "sweden, 5325", "latvia, 4160", "portugal, 1239"})
    void degree_days_of_a_country_are_near_those_that_its_statistics_print(String country, double printed) {
        ClimateNormals byArea = ClimateNormals.all(library, "kept")
                .filter(normals -> normals.region().equals(country))
                .findFirst()
                .orElseThrow();

        assertEquals(printed, byArea.degreeDays(18, 15), 0.06 * printed, "K·d a year");
    }

    @Test
    void a_year_at_ten_degrees_has_365_times_ten_degree_days_below_twenty() {
        assertEquals(3650, always(10).degreeDays(20), 1e-9, "K·d a year");
        assertEquals(10, always(10).mean(), 1e-9, "°C");
    }

    @Test
    void a_year_warmer_than_the_room_has_no_degree_days() {
        assertEquals(0, always(30).degreeDays(30), "K·d a year");
    }

    @Test
    void where_people_live_is_what_is_taken() {
        assertEquals(
                "population", ClimateNormals.of(library, "canada").orElseThrow().weights());
        assertEquals(6.7, ClimateNormals.of(library, "canada").orElseThrow().mean(), 0.05, "°C");
    }

    @Test
    void every_country_has_normals_and_no_larger_region_has() {
        library.regions()
                .all()
                .forEach(region -> assertEquals(
                        region.level().equals("country"),
                        ClimateNormals.of(library, region.id()).isPresent(),
                        region.id()));
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 40);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void a_place_that_is_warmer_in_every_month_needs_no_more_degree_days(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Double> months = random.doubles(12, -30, 35).boxed().toList();
        double warmer = 10 * random.nextDouble();
        double base = 10 + 25 * random.nextDouble();
        ClimateNormals place = new ClimateNormals("invented", "invented", "area", months, 800);
        ClimateNormals other = new ClimateNormals(
                "invented",
                "invented",
                "area",
                months.stream().map(t -> t + warmer).toList(),
                800);

        assertTrue(other.degreeDays(base) <= place.degreeDays(base));
        assertTrue(place.degreeDays(base) >= 0);
        assertTrue(place.coldest() < base || place.degreeDays(base) == 0);
    }
}

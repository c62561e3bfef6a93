package org.scalepan.production.heating;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.scalepan.production.climate.ClimateNormals;
import org.scalepan.production.heating.HeatDemand.AirExchange;
import org.scalepan.production.heating.HeatDemand.Surface;

/** The degree-day method: what a room loses, times how cold it is outside and for how long. */
class HeatDemandTest {
    private static final AirExchange STILL = new AirExchange(0, 0, 1.2);

    private static ClimateNormals always(double celsius) {
        return new ClimateNormals("invented", "invented", "area", Collections.nCopies(12, celsius), 800);
    }

    /** The Open University, Energy in buildings (T313), section 2.4.1, table 7: an end-of-terrace house. */
    @Test
    void the_fabric_of_the_house_in_the_textbook_loses_as_much_as_it_prints() {
        List<Surface> house =
                List.of(new Surface(48, 0.25), new Surface(48, 0.16), new Surface(80, 0.35), new Surface(20, 2.00));

        assertEquals(87.7, HeatDemand.lossCoefficient(house, STILL), 0.05, "W/K");
    }

    /** MacKay (2009), page 289: the heat capacity of air is 1.2 kJ/m3/K, so that a change of all air in an hour takes a third of a watt. */
    @Test
    void air_changed_once_an_hour_takes_a_third_of_a_watt_per_cubic_metre_and_kelvin() {
        assertEquals(100.0 / 3, HeatDemand.lossCoefficient(List.of(), new AirExchange(100, 1, 1.2)), 1e-9, "W/K");
    }

    /** 100 W/K · 10 K · 365 d · 86 400 s = 31 536 MJ. */
    @Test
    void a_room_ten_degrees_warmer_than_outside_all_year_has_a_closed_form() {
        assertEquals(31_536, HeatDemand.megajoules(always(15), 100, 25, 0), 1e-6, "MJ a year");
    }

    /** 400 W inside hold 4 K at 100 W/K, so 6 K of the 10 are left to heat. */
    @Test
    void what_animals_give_off_lowers_the_temperature_that_has_to_be_heated_to() {
        assertEquals(0.6 * 31_536, HeatDemand.megajoules(always(15), 100, 25, 400), 1e-6, "MJ a year");
        assertEquals(0, HeatDemand.megajoules(always(15), 100, 25, 1000), "MJ a year");
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 40);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void it_takes_no_less_heat_for_a_warmer_room_a_leakier_wall_or_fewer_animals(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double outside = -20 + 50 * random.nextDouble();
        double inside = 10 + 25 * random.nextDouble();
        double loss = 1 + 1000 * random.nextDouble();
        double gains = 500 * random.nextDouble();
        ClimateNormals place = always(outside);
        double heat = HeatDemand.megajoules(place, loss, inside, gains);

        assertTrue(heat >= 0);
        assertTrue(HeatDemand.megajoules(place, loss, inside + 1, gains) >= heat);
        assertTrue(HeatDemand.megajoules(place, loss * 1.1, inside, gains) >= heat);
        assertTrue(HeatDemand.megajoules(place, loss, inside, gains / 2) >= heat);
        assertTrue(outside < inside || heat == 0, "no heat in a place as warm as the room");
    }
}

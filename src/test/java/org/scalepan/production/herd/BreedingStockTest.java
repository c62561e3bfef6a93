package org.scalepan.production.herd;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.Libraries;
import org.scalepan.factors.Library;
import org.scalepan.production.Gap;
import org.scalepan.production.HerdRecordsFixture;
import org.scalepan.production.Inventory;
import org.scalepan.production.herd.Herd.AnimalKind;
import org.scalepan.production.herd.Herd.BreedingStock;

/** The hens that laid the eggs of a flock, the cows that bore the calves of a fattening herd: counted, somewhere else, or none. */
class BreedingStockTest {
    private static final Library LIBRARY = Libraries.bundled();

    private static Inventory flock(Optional<BreedingStock> place) {
        return HerdRecordsFixture.of(LIBRARY, "layers", 10)
                .gives(AnimalKind.EGGS, 140)
                .feed("maize", 380)
                .energy("grid-electricity", 20)
                .breedingStock(place)
                .inventory();
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"included, ", "none, ", "bought-in, cut-off", ", not-counted"})
    void what_is_not_said_makes_a_bound_and_what_is_bought_in_is_cut_off(String place, String kind) {
        Inventory inventory = flock(Optional.ofNullable(place).flatMap(BreedingStock::of));

        Optional<Gap> gap = inventory.gaps().stream()
                .filter(one -> one.field().equals("breeding_stock"))
                .findFirst();
        assertEquals(Optional.ofNullable(kind), gap.map(found -> found.kind().id()));
        gap.ifPresent(found -> assertTrue(found.indicators().containsAll(Gap.ALL), found::toString));
    }

    @Test
    void each_place_has_the_name_by_which_it_is_asked_for() {
        Arrays.stream(BreedingStock.values())
                .forEach(place -> assertEquals(Optional.of(place), BreedingStock.of(place.id())));
        assertEquals(Optional.empty(), BreedingStock.of("elsewhere"));
    }
}

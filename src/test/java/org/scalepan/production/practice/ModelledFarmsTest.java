package org.scalepan.production.practice;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.Libraries;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.production.Factor;
import org.scalepan.production.Flow;
import org.scalepan.production.Flux;
import org.scalepan.production.Gap;

/** Reference farms are records of nobody: read, computed and chosen as anybody's records are. */
class ModelledFarmsTest {
    private static final Library LIBRARY = Libraries.bundled();
    private static final ModelledFarms FARMS = ModelledFarms.of(LIBRARY);

    private static Product product(String id) {
        return LIBRARY.products().get(id);
    }

    private static ModelledFarm farm(String id) {
        return FARMS.find(id).orElseThrow();
    }

    @Test
    void every_reference_farm_of_the_library_can_be_computed() {
        assertEquals(List.of(), FARMS.faults());
        assertEquals(LIBRARY.referenceFarms().size(), FARMS.all().size());
    }

    @Test
    void every_insect_of_the_library_has_a_reference_farm() {
        assertAll(LIBRARY.products().values().stream()
                .filter(product -> product.group().equals("insect"))
                .map(product -> () ->
                        assertFalse(FARMS.of(product, "world").isEmpty(), () -> "nobody models " + product.id())));
    }

    /** Kenya's year is above 18 degrees on average, Germany's below; the world asks for the farm that flatters less. */
    @ParameterizedTest
    @CsvSource({
        "house-cricket, kenya, tropical",
        "house-cricket, germany, temperate",
        "house-cricket, world, temperate",
        "mealworm, western-africa, tropical",
        "mealworm, europe, temperate",
        // Only one of them is practised.
        "palm-weevil, germany, tropical"
    })
    void the_region_asked_for_picks_the_climate(String product, String region, String climate) {
        assertEquals(climate, FARMS.of(product(product), region).get(0).farm().climate());
    }

    @Test
    void what_practice_leaves_out_is_a_gap_of_the_inventory_and_makes_a_bound() {
        ModelledFarm crickets = farm("house-cricket-heated-temperate");

        Gap energy = crickets.inventory().gaps().stream()
                .filter(gap -> gap.field().equals("energy"))
                .findFirst()
                .orElseThrow();
        assertEquals(Gap.Kind.NOT_COUNTED, energy.kind());
        assertTrue(energy.indicators().contains("ghg"), energy.toString());
    }

    /** A feed mix follows one feed conversion: all of it is high or low together. */
    @Test
    void the_lines_of_a_feed_mix_are_one_uncertainty() {
        ModelledFarm broilers = farm("broilers-temperate");
        List<String> drawn = broilers.inventory().flows().stream()
                .filter(flow -> flow.flux() == Flux.FEED)
                .map(Flow::term)
                .flatMap(term -> term.uses().stream())
                .flatMap(use -> use.factor().behind())
                .map(Factor::id)
                .distinct()
                .toList();

        assertEquals(1, drawn.size(), drawn.toString());
    }

    @Test
    void the_grade_of_a_farm_is_the_lowest_of_its_inputs() {
        assertAll(FARMS.all().stream()
                .map(farm -> () -> assertTrue(
                        farm.farm().inputs().stream()
                                .flatMap(input -> input.grade().stream())
                                .allMatch(grade ->
                                        grade.isAtLeast(farm.lowestGrade().orElseThrow())),
                        farm.farm().id())));
    }
}

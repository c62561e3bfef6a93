package org.scalepan.web.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.Asked;
import org.scalepan.JsonAt;
import org.scalepan.Libraries;
import org.scalepan.factors.AminoAcidContent;
import org.scalepan.factors.Boundary;
import org.scalepan.factors.Grade;
import org.scalepan.factors.Library;
import org.scalepan.literature.Coverage;
import org.scalepan.production.MemoryFactors;
import org.scalepan.web.Reply;

/** How full the library is at default questions, and what inventories still take from memory. */
class CoverageRoutesTest {
    private static final Library LIBRARY = Libraries.bundled();

    private static List<Coverage.CoverageCell> filled(String indicator, String boundary) {
        return Coverage.of(LIBRARY).cells().stream()
                .filter(cell -> cell.indicator().id().equals(indicator)
                        && cell.boundary() == Boundary.of(boundary).orElseThrow())
                .filter(Coverage.CoverageCell::isFilled)
                .toList();
    }

    @ParameterizedTest
    @CsvSource({
        "ghg,             farm-gate, kg-protein, 20",
        "land,            farm-gate, kg-protein, 14",
        "energy,          farm-gate, kg-protein,  8",
        "water-footprint, farm-gate, kg-protein,  9",
        "feed,            animal,    kg-live,    14"
    })
    void a_default_question_has_an_answer_for_so_many_products(
            String indicator, String boundary, String per, int products) {
        assertEquals(per, LIBRARY.indicators().get(indicator).defaultPer());
        List<String> found = filled(indicator, boundary).stream()
                .map(cell -> cell.product().id())
                .toList();
        assertTrue(found.size() >= products, () -> found.size() + " products: " + found);
    }

    /** Of chicken only one is held: a second could not be found whose unit and cut are stated. */
    @ParameterizedTest
    @CsvSource({"beef, 2", "pork, 2", "egg, 2", "milk, 2", "chicken, 1"})
    void land_of_the_common_livestock_rests_on_studies_that_were_seen(String product, int studies) {
        int found = filled("land", "farm-gate").stream()
                .filter(cell -> cell.product().id().equals(product))
                .mapToInt(Coverage.CoverageCell::studies)
                .sum();
        assertTrue(found >= studies, () -> found + " studies of land of " + product);
    }

    @Test
    void nothing_that_a_default_question_uses_is_from_memory() {
        assertFalse(Coverage.of(LIBRARY).cells().stream()
                .anyMatch(cell -> cell.worstGrade().filter(Grade.MEMORY::equals).isPresent()));
    }

    @ParameterizedTest
    @CsvSource({"mealworm:meal, fishmeal", "mealworm:meal, soybean-meal"})
    void meals_of_fish_and_soybean_can_be_set_beside_insect_meals(String insect, String meal) {
        Asked asked = Asked.of(LIBRARY).grade(Grade.USUAL).at("processing-gate");
        assertTrue(asked.some(insect).studies().size() >= 1);
        assertTrue(asked.some(meal).studies().size() >= 1);
    }

    @Test
    void every_food_whose_profile_is_held_has_an_amino_acid_score() {
        Set<String> complete = LIBRARY.aminoAcidContents().stream()
                .filter(AminoAcidContent::isDefault)
                .collect(Collectors.groupingBy(
                        content -> content.product() + ":" + content.form(),
                        Collectors.mapping(AminoAcidContent::acid, Collectors.toSet())))
                .entrySet()
                .stream()
                .filter(held ->
                        held.getValue().size() == LIBRARY.ids("amino_acids").size())
                .map(java.util.Map.Entry::getKey)
                .collect(Collectors.toCollection(TreeSet::new));
        assertTrue(complete.size() >= 20, () -> complete.size() + " profiles: " + complete);
        for (String food : complete) {
            JsonNode answer =
                    Reply.to("/v1/nutrition?basis=100g-edible&products=" + food).json();
            assertTrue(answer.findValue("amino_acid_score") != null, () -> food + ": " + answer);
        }
    }

    @Test
    void the_route_has_every_cell_and_says_why_one_is_empty() {
        JsonNode crickets =
                Reply.to("/v1/library/coverage?product=house-cricket").json();
        assertEquals(
                5 * 4 + 2,
                JsonAt.integer(crickets, "/count"),
                "five indicators at four boundaries, feed at the animal");
        for (JsonNode cell : crickets.path("items")) {
            assertEquals(JsonAt.integer(cell, "/studies") == 0, cell.has("reason"), cell::toString);
            assertEquals(JsonAt.integer(cell, "/studies") > 0, cell.has("worst_grade"), cell::toString);
        }
    }

    @Test
    void the_cells_are_a_table_for_spreadsheets_too() {
        List<String> lines = Reply.to("/v1/library/coverage?format=csv&product=beef&indicator=land&boundary=farm-gate")
                .body()
                .lines()
                .toList();
        assertEquals("product,form,indicator,per,boundary,studies,worst_grade,reason", lines.get(0));
        assertEquals("beef,fresh,land,kg-protein,farm-gate,2,abstract,", lines.get(1));
    }

    @Test
    void factors_from_memory_are_listed_with_their_table_and_what_reads_it() {
        JsonNode answer = Reply.to("/v1/library/memory-factors").json();
        List<MemoryFactors.MemoryFactor> factors = MemoryFactors.of(LIBRARY);
        assertEquals(factors.size(), JsonAt.integer(answer, "/count"));
        assertEquals(
                factors.size(),
                StreamSupport.stream(answer.path("by_table").spliterator(), false)
                        .mapToInt(table -> JsonAt.integer(table, "/count"))
                        .sum(),
                "the tables add up");
        for (MemoryFactors.MemoryFactor factor : factors) {
            assertEquals(
                    "memory",
                    LIBRARY.row(factor.table(), factor.id()).orElseThrow().text("check"));
            assertFalse(factor.usedBy().isEmpty(), factor::id);
        }
        assertTrue(
                factors.stream().noneMatch(factor -> factor.table().equals("waste_factors")), "no inventory reads it");
    }
}

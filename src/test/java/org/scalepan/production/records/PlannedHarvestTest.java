package org.scalepan.production.records;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.Libraries;
import org.scalepan.factors.Library;
import org.scalepan.input.Input;
import org.scalepan.production.insects.InsectFarm;

/** The harvest as people keep it: by number and mean mass, or planned from the adults that are stocked. All farms are invented. */
class PlannedHarvestTest {
    private static final Library LIBRARY = Libraries.bundled();

    private static Input body(String harvest) throws JsonProcessingException {
        return Input.body(new ObjectMapper()
                .readTree("{\"kind\": \"insects\", \"product\": \"mealworm\", \"harvest\": " + harvest + "}"));
    }

    private static InsectFarm farm(String harvest) throws JsonProcessingException {
        Input body = body(harvest);
        Optional<EditableRecords> read = new SystemReading(LIBRARY).notebook(body);
        assertEquals(List.of(), body.faults());
        return ((EditableRecords.Insects) read.orElseThrow()).farm();
    }

    /** 30 000 larvae of 5 g are 150 kg, as are 30 000 of which 200 weigh a kilogram. */
    @ParameterizedTest
    @CsvSource({"grams_per_larva, 5", "larvae_per_kg, 200"})
    void larvae_are_weighed_one_by_one_or_counted_to_the_kilogram(String field, double value)
            throws JsonProcessingException {
        InsectFarm farm = farm("{\"larvae\": 30000, \"" + field + "\": " + value + "}");

        assertEquals(150, farm.harvest().kilograms(), 1e-9, "kg live a year");
    }

    /** 40 pairs × 50 eggs × 0.8 × 0.5 = 800 larvae a cycle; of 6 cycles a quarter is lost: 3600 larvae of 10 g are 36 kg. */
    @Test
    void adults_stocked_give_what_their_eggs_become() throws JsonProcessingException {
        String planned = "{\"pairs\": 40, \"eggs_per_pair\": 50, \"hatch\": 0.8, \"survival\": 0.5,"
                + " \"cycles_per_year\": 6, \"grams_per_larva\": 10";

        assertEquals(48, farm(planned + "}").harvest().kilograms(), 1e-9, "kg live a year, no batch lost");
        assertEquals(36, farm(planned + ", \"batches_lost\": 0.25}").harvest().kilograms(), 1e-9, "kg live a year");
    }

    @Test
    void a_plan_with_ranges_is_uncertain() throws JsonProcessingException {
        InsectFarm farm = farm("{\"pairs\": 40, \"eggs_per_pair\": [30, 70], \"hatch\": [0.6, 0.9], \"survival\": 0.5,"
                + " \"cycles_per_year\": 6, \"batches_lost\": [0, 0.3], \"larvae_per_kg\": 100}");

        assertEquals(3, farm.harvest().mass().uses().size(), "eggs, hatch and batches lost");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"larvae\": 1000} | larvae_per_kg is missing, or grams_per_larva in its place",
                "{\"larvae\": 1000, \"larvae_per_kg\": 100, \"grams_per_larva\": 10} | not both",
                "{\"pairs\": 4, \"larvae\": 1000, \"larvae_per_kg\": 100} | in one way",
                "{\"pairs\": 4, \"eggs_per_pair\": 50, \"survival\": 0.5, \"cycles_per_year\": 6, \"grams_per_larva\": 10} | hatch is missing",
                "{\"pairs\": 4, \"eggs_per_pair\": 50, \"hatch\": 0, \"survival\": 0.5, \"cycles_per_year\": 6, \"grams_per_larva\": 10} | hatch must be a number",
            })
    void what_is_missing_or_said_twice_is_refused(String harvest, String words) throws JsonProcessingException {
        Input body = body(harvest);
        new SystemReading(LIBRARY).notebook(body);

        assertTrue(
                body.faults().stream().anyMatch(fault -> fault.message().contains(words)),
                () -> body.faults().toString());
    }
}

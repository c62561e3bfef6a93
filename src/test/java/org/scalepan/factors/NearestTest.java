package org.scalepan.factors;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What somebody meant who mistyped a name. */
class NearestTest {
    private static final List<String> NAMES = List.of("house-cricket", "mealworm", "ghg", "se", "g");

    @Test
    void a_mistyped_name_and_a_part_of_one_are_found() {
        assertEquals(List.of("mealworm"), Nearest.to("mealwurm", NAMES, 3));
        assertEquals(List.of("house-cricket"), Nearest.to("cricket", NAMES, 3));
        assertEquals(List.of("house-cricket"), Nearest.to("house cricket powder", NAMES, 3));
    }

    @Test
    void a_name_of_two_letters_is_not_what_a_word_means_that_has_them() {
        assertEquals(List.of(), Nearest.to("nonsense", NAMES, 3));
        assertEquals(List.of(), Nearest.to("some-long-id.of-a-row", NAMES, 3));
    }
}

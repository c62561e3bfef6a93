package org.scalepan.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class RangeDistributionsTest {
    @Test
    void a_triangle_has_its_ends_its_mode_and_its_third_of_the_sum() {
        Triangular triangular = new Triangular(1, 2, 5);

        assertEquals(1, triangular.quantile(0), 0.0);
        assertEquals(2, triangular.quantile(0.25), 1e-12, "a quarter of the area lies left of the mode");
        assertEquals(5, triangular.quantile(1), 0.0);
        assertEquals(8.0 / 3, triangular.mean(), 1e-12);
        assertEquals(5 - Math.sqrt(6), triangular.median(), 1e-12, "closed form: max − √((max − min)(max − mode)/2)");
    }

    @Test
    void a_triangle_may_lean_all_the_way_to_either_end() {
        assertEquals(Math.sqrt(0.5), new Triangular(0, 1, 1).median(), 1e-12);
        assertEquals(1 - Math.sqrt(0.5), new Triangular(0, 0, 1).median(), 1e-12);
    }

    @Test
    void a_log_uniform_range_has_its_geometric_mean_in_the_middle() {
        LogUniform logUniform = new LogUniform(2, 50);

        assertEquals(10, logUniform.median(), 1e-12);
        assertEquals(2, logUniform.quantile(0), 1e-12);
        assertEquals(50, logUniform.quantile(1), 1e-12);
        assertEquals(48 / Math.log(25), logUniform.mean(), 1e-12);
    }

    @Test
    void a_uniform_range_is_straight() {
        Uniform uniform = new Uniform(-1, 3);

        assertEquals(0, uniform.quantile(0.25), 1e-15);
        assertEquals(1, uniform.mean(), 1e-15);
    }

    @Test
    void scaling_changes_the_unit_and_nothing_else() {
        Scaled grams = new Scaled(new Triangular(1, 2, 5), 1000);

        assertEquals(1000 * new Triangular(1, 2, 5).quantile(0.3), grams.quantile(0.3), 1e-9);
        assertEquals(8000.0 / 3, grams.mean(), 1e-9);
    }
}

package org.scalepan.production;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.uncertainty.Quantiles;

/** "Between 400 and 900 kg" is how people remember: a number of the records as a range. */
class RecordedNumberTest {
    private static final String KEY = RecordedNumber.key("hill farm", "feed.0.kg");

    private static RecordedNumber kilograms(double low, double high) {
        return RecordedNumber.between(KEY, RecordField.FEED_KG, low, high);
    }

    private static double[] drawn(ActivityTerm term) {
        return term.drawn(new CommonRandomNumbers(1, 10_000));
    }

    @Test
    void a_single_number_is_certain_and_no_factor() {
        RecordedNumber number = RecordedNumber.of(500);

        assertTrue(number.isKnown());
        assertEquals(ActivityTerm.of(500), number.term());
        assertEquals(500, number.least());
        assertEquals(500, number.most());
    }

    /** Log-uniform from 400 to 900: the value not exceeded with probability p is 400 · (900/400)^p; its ln has sd ln(2.25)/√12. */
    @ParameterizedTest
    @CsvSource({"0, 400", "0.05, 416.55", "0.5, 600", "0.95, 864.24", "1, 900"})
    void each_doubling_of_an_amount_is_as_likely_as_another(double probability, double kilograms) {
        Factor factor = kilograms(400, 900).factor().orElseThrow();

        assertEquals(kilograms, factor.reading().quantile(probability), 0.01, "kg");
        assertEquals(600, factor.central(), 1e-9, "kg: the geometric mean");
        assertEquals(Math.log(900.0 / 400) / Math.sqrt(12), factor.lnSd(), 1e-12);
    }

    /** A share, and a range that reaches zero, of which no doubling leads away: uniform in the number itself. */
    @ParameterizedTest
    @CsvSource({
        "MORTALITY, 0.2, 0.4, 0.3",
        "MANURE_SHARE, 0.5, 1, 0.75",
        "FEED_KG, 0, 80, 40",
        "FEED_GHG, -0.5, 1.5, 0.5"
    })
    void a_share_and_what_may_be_nothing_is_as_likely_at_any_value(
            RecordField field, double low, double high, double middle) {
        RecordedNumber number = RecordedNumber.between(KEY, field, low, high);

        assertEquals(middle, number.central(), 1e-12);
        assertEquals(low, number.least(), 1e-12);
        assertEquals(high, number.most(), 1e-12);
        assertEquals(
                (high - low) / Math.sqrt(12) / middle,
                number.factor().orElseThrow().lnSd(),
                1e-12,
                "relative standard deviation of a uniform distribution");
    }

    /** Triangular from 0 to 1 with its mode at 0: P(X ≤ x) = 1 − (1 − x)², so that the median is 1 − 1/√2; sd 1/√18. */
    @Test
    void with_a_most_likely_value_it_is_triangular() {
        RecordedNumber number = RecordedNumber.around(KEY, 0, 0, 1);

        assertEquals(1 - 1 / Math.sqrt(2), number.central(), 1e-12);
        assertEquals(
                1 / Math.sqrt(18),
                number.central() * number.factor().orElseThrow().lnSd(),
                1e-12);
    }

    /** Triangular from 0 to b with the mode at an end: the standard deviation is b/√18, however large the numbers are beside it. */
    @Test
    void a_narrow_range_of_large_numbers_has_a_spread_too() {
        RecordedNumber number = RecordedNumber.around(KEY, 900_000, 900_000, 900_000.01);

        assertEquals(
                0.01 / Math.sqrt(18) / 900_000, number.factor().orElseThrow().lnSd(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"hill farm, feed.0.kg", "north/south farm, water_m3", "records/of others, harvest.kg_per_year"})
    void a_key_names_the_system_and_the_path(String system, String path) {
        String key = RecordedNumber.key(system, path);

        assertTrue(RecordedNumber.isKey(key));
        assertEquals(system, RecordedNumber.systemOf(key));
        assertEquals(path, RecordedNumber.pathOf(key));
    }

    @Test
    void a_key_is_not_the_id_of_a_row() {
        assertFalse(RecordedNumber.isKey("energy.grid-electricity.kenya"));
    }

    /** What is left of a kilogram beside its water: drawn with the water, so that the two always make a whole. */
    @Test
    void the_complement_of_a_share_is_drawn_with_it() {
        RecordedNumber moisture = RecordedNumber.between(KEY, RecordField.FEED_MOISTURE, 0.1, 0.3);
        double[] water = drawn(moisture.term());
        double[] dry = drawn(moisture.term().complement());

        assertEquals(0.8, moisture.term().complement().central(), 1e-12);
        for (int i = 0; i < water.length; i++) {
            assertEquals(1, water[i] + dry[i], 1e-12);
        }
    }

    @Test
    void what_is_made_of_known_numbers_is_a_known_number() {
        ActivityTerm sum = ActivityTerm.sum(List.of(ActivityTerm.of(3), ActivityTerm.of(4)));

        assertEquals(ActivityTerm.of(7), sum);
        assertEquals(ActivityTerm.of(0.75), ActivityTerm.of(0.25).complement());
    }

    /** Two ranges of one key are one draw: 600 of 400 to 900 and 60 of 40 to 90 lie at the same place in every draw. */
    @Test
    void one_key_is_drawn_once() {
        double[] one = drawn(kilograms(400, 900).term());
        double[] tenth = drawn(kilograms(40, 90).term());
        double[] other = drawn(
                RecordedNumber.between(RecordedNumber.key("hill farm", "feed.1.kg"), RecordField.FEED_KG, 400, 900)
                        .term());

        for (int i = 0; i < one.length; i++) {
            assertEquals(one[i], 10 * tenth[i], 1e-9 * one[i]);
        }
        assertFalse(Arrays.equals(one, other));
    }

    /** The sum of two independent uniform numbers is triangular: of 0 to 1 twice, P(S ≤ s) = s²/2 up to 1. */
    @Test
    void a_sum_of_two_records_is_drawn_from_both() {
        double[] sum = drawn(ActivityTerm.sum(List.of(
                RecordedNumber.between("records/a/building_m2", RecordField.BUILDING, 0, 1)
                        .term(),
                RecordedNumber.between("records/a/yard_m2", RecordField.YARD, 0, 1)
                        .term())));

        assertEquals(Math.sqrt(0.2), Quantiles.of(sum, 0.1), 0.02);
        assertEquals(1, Quantiles.of(sum, 0.5), 0.02);
    }

    @Test
    void two_inventories_of_the_same_ranges_are_equal() {
        assertEquals(kilograms(1, 2).term().complement(), kilograms(1, 2).term().complement());
        assertNotEquals(
                kilograms(1, 2).term().complement(), kilograms(1, 3).term().complement());
    }

    /** Factors of the library stand in the middle where only the records are asked after. */
    @Test
    void of_a_product_the_records_alone_stay_uncertain() {
        Factor library = new Factor("row", org.scalepan.uncertainty.Lognormal.ofMedianAndGsd(2, 1.5));
        ActivityTerm product = kilograms(400, 900).term().times(library);

        assertEquals(1200, product.central(), 1e-9);
        assertEquals(
                kilograms(400, 900).term().times(2).central(),
                product.ofRecordsAlone().central(),
                1e-9);
        assertEquals(1, product.ofRecordsAlone().uses().size());
        assertEquals(
                List.of(KEY),
                product.ofRecordsAlone().uses().stream()
                        .flatMap(use -> use.factor().behind())
                        .map(Factor::id)
                        .toList());
    }
}

package org.scalepan.factors.loading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.scalepan.factors.LibraryCopy;

/** Each fault of a library is reported once, with file, line and column, and with what would be right. */
class BrokenLibraryTest {
    private static final String RESULTS = "results.csv";
    private static final String COMPOSITION = "composition.csv";
    private static final String MEALWORM_GHG = "oonincx-deboer-2012.mealworm.ghg.kg-live";
    private static final String BEEF_GHG = "poore-nemecek-2018.beef-beef-herd.ghg.100g-protein.ar5-100-feedback";
    private static final String MEALWORM_PROTEIN = "finke-2002.mealworm.fresh.protein";

    @TempDir
    Path folder;

    LibraryCopy copy;

    @BeforeEach
    void copyTheBundledFolder() {
        copy = new LibraryCopy(folder);
    }

    @Test
    void an_unchanged_copy_is_sound() {
        assertInstanceOf(
                LibraryLoad.Loaded.class, copy.load(), () -> copy.faults().toString());
    }

    @Test
    void a_place_is_counted_from_1_in_lines_and_characters() {
        // farm-gate is on the third line of its file, its name after "farm-gate,2,", which is 12 characters.
        copy.replace("boundaries.csv", "farm-gate", "farm-gate,2,,\"From cradle to the farm, gate.\"");
        assertEquals(
                folder.resolve("boundaries.csv") + ":3:13",
                copy.faults().get(0).replaceAll(": name is missing;.*", ""));
    }

    @Test
    void an_unknown_source_is_named_with_the_nearest_known() {
        String place = copy.set(RESULTS, MEALWORM_GHG, "source", "oonincx-deboer-2021");
        copy.assertFaults(
                place + ": unknown source \"oonincx-deboer-2021\"; did you mean \"oonincx-deboer-2012\"? it must"
                        + " be an id of sources.json");
    }

    @Test
    void two_sources_in_a_cell_for_one_are_an_unknown_source() {
        String place = copy.set(RESULTS, MEALWORM_GHG, "source", "oonincx-deboer-2012;oonincx-2010");
        assertEquals(1, copy.faults().size());
        assertTrue(
                copy.faults().get(0).startsWith(place + ": unknown source \"oonincx-deboer-2012;oonincx-2010\"; "),
                () -> copy.faults().toString());
    }

    @Test
    void an_unknown_unit_is_named_with_the_nearest_known() {
        String place = copy.set(RESULTS, MEALWORM_GHG, "unit", "kg CO2");
        copy.assertFaults(place + ": unknown unit \"kg CO2\"; did you mean \"kg CO2e\"? it must be an id of units.csv");
    }

    @Test
    void a_unit_that_is_not_the_indicators_own_is_to_be_converted() {
        String place = copy.set(RESULTS, MEALWORM_GHG, "unit", "g CO2e");
        copy.assertFaults(place + ": unit \"g CO2e\" of indicator ghg; it must be kg CO2e; convert the value");
    }

    @Test
    void an_unknown_product_is_named_with_the_nearest_known() {
        String place = copy.set(RESULTS, MEALWORM_GHG, "product", "meal-worm");
        copy.assertFaults(
                place + ": unknown product \"meal-worm\"; did you mean \"mealworm\"? it must be an id of products.csv");
    }

    @Test
    void a_value_outside_low_to_high_is_refused() {
        // Thevenot et al. 2018 print 3.8 with limits 3.04 and 4.56 kg CO2e per kg meal.
        String place = copy.set(RESULTS, "thevenot-2018.mealworm.ghg.kg-product", "value", "38");
        copy.assertFaults(place + ": value 38 lies outside low 3.04 to high 4.56; it must lie between them");
    }

    @Test
    void a_basis_of_a_claim_must_be_in_words_of_the_library() {
        String place = copy.set("claims.csv", "c01", "holds_on", "barn:kg-live");
        copy.assertFaults(place
                + ": unknown basis \"barn:kg-live\"; it must be boundary:per, or boundary:per:product, in words of"
                + " boundaries.csv, functional_units.csv and products.csv");
    }

    @Test
    void a_claimed_ratio_needs_its_number() {
        String place = copy.set("claims.csv", "c13", "claimed", "none");
        copy.assertFaults(place
                + ": the claimed ratio is incomplete; times-less needs times_less_low and times_less_high, and nothing else"
                + " has them");
    }

    @Test
    void energy_needs_its_kind_and_nothing_else_has_one() {
        String without = copy.set(RESULTS, "cao-2011.shrimp.energy.kg-live", "energy_kind", "");
        String needless = copy.set(RESULTS, "thevenot-2018.mealworm.ghg.kg-product", "energy_kind", "total");
        List<String> faults = copy.faults();
        assertTrue(
                faults.contains(without
                        + ": an energy result without its kind; total, non-renewable, cumulative-fossil or not-stated"),
                faults::toString);
        assertTrue(faults.contains(needless + ": a kind of energy for ghg; only energy has a kind"), faults::toString);
    }

    @Test
    void what_a_farms_own_meters_count_is_no_published_result() {
        String place =
                copy.set(RESULTS, "poore-nemecek-2018.beef-beef-herd.water.100g-protein", "indicator", "water-on-farm");
        copy.assertFaults(place + ": a published result of water-on-farm; only records of a farm are asked for it");
    }

    @Test
    void low_above_high_is_refused() {
        String place = copy.set(RESULTS, "devries-deboer-2010.beef.ghg.kg-protein", "low", "171");
        copy.assertFaults(place + ": low is above high; swap them");
    }

    @Test
    void a_spread_without_its_limits_is_incomplete() {
        copy.set(RESULTS, "devries-deboer-2010.beef.ghg.kg-protein", "high", "");
        String line = folder.resolve(RESULTS) + ":" + copy.line(RESULTS, "devries-deboer-2010.beef.ghg.kg-protein");
        assertEquals(
                line + ": the spread is incomplete; spread range needs low and high",
                String.join("\n", copy.faults()).replaceFirst(":\\d+: the", ": the"));
    }

    @Test
    void a_duplicate_id_points_to_the_first() {
        int first = copy.line(COMPOSITION, MEALWORM_PROTEIN);
        String fat = "finke-2002.mealworm.fresh.fat";
        String place = copy.set(COMPOSITION, fat, "id", MEALWORM_PROTEIN);
        copy.assertFaults(place + ": duplicate id \"" + MEALWORM_PROTEIN + "\"; it stands on line " + first
                + " already; every row needs its own");
    }

    @Test
    void a_missing_locator_is_reported_in_the_words_of_the_schema() {
        String place = copy.set(RESULTS, MEALWORM_GHG, "locator", "");
        copy.assertFaults(place
                + ": locator is missing; give where in the source: table, page, sheet, abstract; \"no source\" for"
                + " common practice.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=", "+", "-", "@"})
    void text_that_a_spreadsheet_would_run_is_refused(String start) {
        String place = copy.set(RESULTS, MEALWORM_GHG, "note", start + "HYPERLINK(1)");
        copy.assertFaults(place + ": note begins with \"" + start
                + "\", which a spreadsheet runs as a formula; reword it, or make it a number");
    }

    @Test
    void a_byte_that_is_not_utf_8_is_reported_with_its_place_and_nothing_else_is() {
        byte[] bytes = copy.text("products.csv").getBytes(StandardCharsets.UTF_8);
        int firstOfLine2 = copy.text("products.csv").indexOf('\n') + 1;
        bytes[firstOfLine2 + 2] = (byte) 0xE9;
        copy.write("products.csv", bytes);
        copy.assertFaults(folder.resolve("products.csv") + ":2:3: byte 0xE9 is not UTF-8; save the file as UTF-8");
    }

    @Test
    void a_byte_order_mark_is_refused() {
        copy.write("products.csv", "\uFEFF" + copy.text("products.csv"));
        copy.assertFaults(folder.resolve("products.csv")
                + ":1:1: the file begins with a byte-order mark; save it as UTF-8 without one");
    }

    @Test
    void a_wrong_header_is_reported_with_the_right_one_and_does_not_fault_every_row_that_points_there() {
        String text = copy.text("boundaries.csv");
        copy.write("boundaries.csv", text.replaceFirst("^id,rank,", "rank,id,"));
        copy.assertFaults(folder.resolve("boundaries.csv")
                + ":1:1: column 1 of the header is \"rank\"; it must be id; the columns"
                + " are those of datapackage.json: id,rank,name,description");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '~',
            value = {
                "id,name ~ 1:8 ~ column 3 of the header is missing; it must be description",
                "id,names,description ~ 1:4 ~ column 2 of the header is \"names\"; it must be name",
                "id,name,description,more ~ 1:21 ~ column 4 of the header is \"more\"; there is none after description",
                "id;name;description ~ 1:1 ~ column 1 of the header is \"id;name;description\"; separate the columns with commas; it must be id",
            })
    void of_a_wrong_header_the_first_column_that_differs_is_named_at_its_place(
            String header, String place, String what) {
        String text = copy.text("forms.csv");
        copy.write("forms.csv", header + text.substring(text.indexOf('\n')));

        assertEquals(1, copy.faults().size(), () -> copy.faults().toString());
        assertTrue(
                copy.faults().get(0).startsWith(folder.resolve("forms.csv") + ":" + place + ": " + what),
                () -> copy.faults().get(0));
    }

    @Test
    void an_empty_file_is_no_empty_table() {
        copy.write("forms.csv", "");
        copy.assertFaults(folder.resolve("forms.csv")
                + ":1:1: the file is empty; the columns are those of datapackage.json: id,name,description");
    }

    @Test
    void a_short_row_is_reported_with_how_many_cells_it_should_have() {
        copy.replace("forms.csv", "dried", "dried,Dried");
        copy.assertFaults(folder.resolve("forms.csv") + ":" + copy.line("forms.csv", "dried")
                + ":1: the row has 2 cells; it must have 3, one for each column");
    }

    @Test
    void a_long_row_and_a_short_one_are_both_reported() {
        copy.replace("forms.csv", "fresh", "fresh,Fresh,Live,or chilled");
        copy.replace("forms.csv", "meal", "meal");
        String file = folder.resolve("forms.csv") + ":";
        copy.assertFaults(
                file + copy.line("forms.csv", "fresh") + ":1: the row has 4 cells; it must have 3, one for each column",
                file + copy.line("forms.csv", "meal") + ":1: the row has 1 cells; it must have 3, one for each column");
    }

    @Test
    void a_quote_that_is_never_closed_is_reported() {
        copy.replace("forms.csv", "defatted-meal", "defatted-meal,Defatted meal,\"Ground and dried");
        int start = copy.line("forms.csv", "defatted-meal");
        copy.assertFaults(folder.resolve("forms.csv") + ":" + start
                + ":1: the row that begins here is not CSV: a quote in it is not closed, or it is longer than any row can"
                + " be; put a cell with a comma or a quote into quotes, and write a quote within it twice");
    }

    @ParameterizedTest
    @ValueSource(strings = {"two", "2.65.1", "\"2,65\"", "0x10", "NaN", "Infinity", "-Infinity", "1e999", "1f", "+1"})
    void a_number_is_finite_digits_with_a_point(String cell) {
        String place = copy.set(RESULTS, MEALWORM_GHG, "value", cell);
        copy.assertFaults(place + ": value \"" + cell.replace("\"", "")
                + "\" is not a number; write digits with a decimal point, such as 2.65");
    }

    @ParameterizedTest
    @CsvSource({"0, at least 1", "6, at most 5"})
    void a_pedigree_score_outside_1_to_5_is_refused(String score, String right) {
        String place = copy.set(RESULTS, MEALWORM_GHG, "reliability", score);
        copy.assertFaults(place + ": reliability is " + score + "; it must be " + right);
    }

    /** Found by the fuzzer: the rule that every criterion has its factors failed on a row that names none. */
    @ParameterizedTest
    @CsvSource({
        "pedigree.csv, frischknecht-2005.reliability.2, criterion",
        "pedigree.csv, frischknecht-2005.reliability.2, set",
        "default_spreads.csv, composition.default, applies_to"
    })
    void a_rule_about_a_table_is_skipped_where_a_cell_that_it_reads_is_empty(String file, String row, String column) {
        String place = copy.set(file, row, column, "");

        assertEquals(1, copy.faults().size(), () -> copy.faults().toString());
        assertTrue(copy.faults().get(0).startsWith(place), () -> copy.faults().toString());
    }

    @Test
    void an_unknown_check_grade_is_refused_with_the_known_ones() {
        String place = copy.set(RESULTS, MEALWORM_GHG, "check", "seen");
        assertEquals(
                place + ": unknown check \"seen\"; it must be one of fulltext, abstract, secondary, memory",
                copy.faults().get(0));
    }

    @Test
    void two_defaults_of_one_composition_are_refused() {
        // The nymphs of Finke 2002 are listed beside the adults, which are the default.
        String place = copy.set(COMPOSITION, "finke-2002.house-cricket.fresh.protein.nymphs", "use", "default");
        copy.assertFaults(place + ": a second default for house-cricket/fresh/protein/kg-edible; row"
                + " finke-2002.house-cricket.fresh.protein is the default already; use kept or study");
    }

    @ParameterizedTest
    @CsvSource({"187, 187", "0, 0", "1.1, 1.1"})
    void an_invalid_fraction_is_refused_before_anything_is_divided_by_it(String cell, String reported) {
        String place = copy.set(COMPOSITION, MEALWORM_PROTEIN, "value", cell);
        copy.assertFaults(place + ": protein with value " + reported + "; it must be above 0 and at most 1");
    }

    @Test
    void a_yield_in_another_unit_is_to_be_converted() {
        String place = copy.set(COMPOSITION, MEALWORM_PROTEIN, "unit", "mg/100 g");
        copy.assertFaults(place + ": unit \"mg/100 g\" of protein; it must be fraction; convert the value");
    }

    @Test
    void greenhouse_gases_without_a_warming_set_are_refused() {
        String place = copy.set(RESULTS, MEALWORM_GHG, "gwp", "");
        copy.assertFaults(place + ": a ghg result without a warming set; name it, or write not-stated");
    }

    @Test
    void land_with_a_warming_set_is_refused() {
        String place = copy.set(RESULTS, "oonincx-deboer-2012.mealworm.land.kg-live", "gwp", "ar4-100");
        copy.assertFaults(place + ": a warming set on land; leave the cell empty");
    }

    @Test
    void falling_percentiles_are_refused() {
        // Published: p10 20.25, p50 30.27, p90 105.2 kg CO2e per 100 g protein.
        String place = copy.set(RESULTS, BEEF_GHG, "p50", "19.9");
        copy.assertFaults(place + ": p50 is 19.9; percentiles must be above zero and must not fall");
    }

    @Test
    void a_reason_for_a_result_that_is_not_held_is_refused() {
        String place =
                copy.set("outliers.csv", "bartl-2011.milk.highland.land.kg-product", "id", "bartl-2011.milk.land");
        copy.assertFaults(
                place
                        + ": unknown result \"bartl-2011.milk.land\"; a reason is about a row of results.csv or feed_conversion.csv");
    }

    /** The pair of the review of 2017 and the suckler herd of nguyen-2010, with one of its two rows named otherwise. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "review   | dreyer-2021.mealworm.ghg.kg-protein | is no review",
                "included | nguyen-2010.beef-beef-herd.land.kg-carcass | its indicator is land, and that of the review ghg",
                "included | dreyer-2021.mealworm.ghg.kg-protein | it is about mealworm, and the review about beef",
                "included | clune-2017.beef.ghg.kg-edible.single-values | both rows state the finding clune-2017.beef.ghg",
                "included | nguyen-2010.beef | unknown included",
            })
    void a_review_includes_only_results_of_its_own_product_and_indicator(String column, String row, String fault) {
        String place =
                copy.set("included_results.csv", "clune-2017.nguyen-2010.beef-beef-herd.ghg.kg-carcass", column, row);
        assertTrue(
                copy.faults().stream().anyMatch(found -> found.startsWith(place + ": ") && found.contains(fault)),
                () -> copy.faults().toString());
    }

    @Test
    void two_reviews_that_include_each_other_are_refused_because_both_would_leave() {
        copy.set(
                "included_results.csv",
                "clune-2017.nguyen-2010.beef-beef-herd.ghg.kg-carcass",
                "included",
                "petersson-2021.beef.ghg.kg-edible");
        String place = copy.set(
                "included_results.csv",
                "petersson-2021.nguyen-2010.beef-beef-herd.ghg.kg-carcass",
                "included",
                "clune-2017.beef.ghg.kg-edible.single-values");
        copy.assertFaults(place
                + ": \"clune-2017.beef.ghg.kg-edible.single-values\" includes \"petersson-2021.beef.ghg.kg-edible\" already;"
                + " of two reviews only one can include the other");
    }

    @Test
    void gas_shares_above_1_are_refused() {
        // The methane share of the row is 0.543.
        String place =
                copy.set("gas_shares.csv", "poore-nemecek-2018.beef-beef-herd.retail.ar5-100-feedback", "co2", "0.75");
        copy.assertFaults(place + ": the shares of the gases add up to 1.293; they must not exceed 1");
    }

    @Test
    void gas_shares_that_leave_methane_open_are_refused_because_they_cannot_be_re_based() {
        String place = copy.set(
                "gas_shares.csv", "poore-nemecek-2018.beef-beef-herd.retail.ar5-100-feedback", "ch4_biogenic", "");
        copy.assertFaults(
                place + ": the share of methane is open; give it, or 0; only the parting of CO2 and N2O may stay open");
    }

    @Test
    void a_warming_set_without_one_of_the_gases_is_refused() {
        String place = copy.set("warming_potentials.csv", "ar6-100.n2o", "set", "ar6-500");
        assertTrue(place.contains("warming_potentials.csv"));
        copy.assertFaults(folder.resolve("warming_sets.csv") + ":" + copy.line("warming_sets.csv", "ar6-100")
                + ":1: warming set ar6-100 has no potential for n2o; add the row to warming_potentials.csv");
    }

    @Test
    void a_boundary_that_no_inventory_knows_is_refused() {
        copy.write("boundaries.csv", copy.text("boundaries.csv") + "plate,5,Plate,From cradle to the eaten meal.\n");
        copy.assertFaults(folder.resolve("boundaries.csv")
                + ":6:1: unknown boundary \"plate\"; it must be one of animal, farm-gate, processing-gate, retail");
    }

    @Test
    void boundaries_are_ordered_from_the_narrowest_to_the_widest() {
        String place = copy.set("boundaries.csv", "retail", "rank", "3");
        copy.assertFaults(place + ": rank 3 of retail; it must be 4: the narrowest boundary has rank 1");
    }

    @Test
    void a_library_without_one_of_the_boundaries_is_refused() {
        copy.write(
                "boundaries.csv",
                copy.text("boundaries.csv")
                        .lines()
                        .filter(line -> !line.startsWith("processing-gate"))
                        .collect(java.util.stream.Collectors.joining("\n", "", "\n")));
        String fault = "boundaries.csv:1:1: no row for boundary processing-gate; add the row";
        assertTrue(copy.faults().contains(fault), () -> copy.faults().toString());
    }

    @Test
    void a_region_that_does_not_lead_up_to_the_world_is_refused() {
        String place = copy.set("regions.csv", "eastern-africa", "parent", "kenya");
        String file = folder.resolve("regions.csv").toString();
        assertTrue(copy.faults()
                .contains(place + ": region eastern-africa does not lead up to the world; correct its parents"));
        assertTrue(copy.faults().stream()
                .allMatch(fault -> fault.startsWith(file) && fault.contains("does not lead up to the world")));
    }

    @Test
    void broken_json_is_reported_where_it_breaks_and_does_not_fault_every_row_that_cites() {
        copy.write("sources.json", "[\n  {\"id\": \"a\",, \"type\": \"book\"}\n]\n");
        assertEquals(1, copy.faults().size(), () -> copy.faults().toString());
        String fault = copy.faults().get(0);
        assertTrue(fault.startsWith(folder.resolve("sources.json") + ":2:"), fault);
        assertTrue(fault.contains(": not JSON from here on; see to the quotes, commas and brackets"), fault);
    }

    @Test
    void a_source_without_a_title_is_reported() {
        copy.write(
                "sources.json",
                copy.text("sources.json").replaceFirst("\"title\": \"Nutritional [^\"]*\"", "\"abstract\": \"\""));
        assertTrue(
                copy.faults().stream().anyMatch(fault -> fault.contains("entry 4 (adamkova-2017)")),
                () -> copy.faults().toString());
        // The object opens on the line before its id.
        int line = copy.text("sources.json")
                .substring(0, copy.text("sources.json").indexOf("\"adamkova-2017\""))
                .split("\n", -1)
                .length;
        assertTrue(
                copy.faults().stream().allMatch(fault -> fault.contains("sources.json:" + (line - 1) + ":")),
                () -> line + " " + copy.faults());
    }

    @ParameterizedTest
    @ValueSource(strings = {"claims.csv", "products.csv", "sources.json", "datapackage.json"})
    void a_missing_file_is_reported_once(String name) {
        copy.delete(name);
        copy.assertFaults(
                folder.resolve(name) + ":1:1: the file is missing; every file named in datapackage.json must be there");
    }

    @Test
    void all_faults_are_reported_at_once_even_when_they_are_of_different_kinds() {
        String cell = copy.set(COMPOSITION, MEALWORM_PROTEIN, "value", "about 0.2");
        String link = copy.set(RESULTS, MEALWORM_GHG, "product", "quorum");
        String trade = copy.set(RESULTS, "thevenot-2018.mealworm.ghg.kg-product", "value", "38");
        copy.write("sources.json", "[");
        assertEquals(4, copy.faults().size(), () -> String.join("\n", copy.faults()));
        assertTrue(copy.faults().get(0).startsWith(cell + ": value \"about 0.2\" is not a number"));
        assertTrue(copy.faults().get(1).startsWith(link + ": unknown product \"quorum\""));
        assertTrue(copy.faults().get(2).startsWith(trade + ": value 38 lies outside"));
        assertTrue(copy.faults().get(3).startsWith(folder.resolve("sources.json") + ":"));
    }

    @Test
    void two_faults_in_one_row_are_both_reported() {
        String id = "thevenot-2018.mealworm.ghg.kg-product";
        String value = copy.set(RESULTS, id, "value", "38");
        String locator = copy.set(RESULTS, id, "locator", "");
        assertEquals(2, copy.faults().size(), () -> String.join("\n", copy.faults()));
        assertTrue(copy.faults().get(0).startsWith(value + ": value 38 lies outside low 3.04"));
        assertTrue(copy.faults().get(1).startsWith(locator + ": locator is missing"));
    }

    @Test
    void a_content_in_a_unit_without_a_conversion_is_to_be_converted() {
        String place = copy.set(COMPOSITION, "finke-2002.mealworm.fresh.fat", "unit", "mg/100 g");
        copy.assertFaults(place + ": unit \"mg/100 g\" of fat; it must be fraction; convert the value");
    }

    @Test
    void a_pattern_without_one_of_the_nine_amino_acids_would_flatter_every_protein() {
        copy.set("amino_acid_requirements.csv", "fao-2013-over-3-years.lysine", "acid", "valine");
        assertEquals(2, copy.faults().size());
        assertTrue(copy.faults().stream()
                .anyMatch(fault -> fault.endsWith(": a second valine of this pattern; leave one")));
        assertTrue(copy.faults().stream()
                .anyMatch(
                        fault -> fault.endsWith(": pattern fao-2013-over-3-years asks nothing of lysine; add the row to"
                                + " amino_acid_requirements.csv")));
    }

    @Test
    void there_is_one_pattern_for_a_question_that_names_none() {
        copy.set("amino_acid_patterns.csv", "fao-2013-over-3-years", "default", "no");
        assertTrue(
                copy.faults().toString().contains("0 default patterns; name exactly one"),
                () -> copy.faults().toString());
    }

    @Test
    void an_amino_acid_has_one_default_in_a_food() {
        copy.set("amino_acid_contents.csv", "usda-sr26-2013.beef.fresh.lysine", "acid", "valine");
        assertEquals(1, copy.faults().size());
        assertTrue(
                copy.faults().get(0).contains(": a second default for beef/fresh/valine; row usda-sr26-2013.beef."),
                () -> copy.faults().toString());
    }

    @Test
    void an_insect_without_a_caution_about_allergy_stops_the_start() {
        copy.set("cautions.csv", "allergy", "markets", "eu");
        assertTrue(
                copy.faults().stream()
                        .anyMatch(fault ->
                                fault.contains("no caution about allergy concerns palm-weevil; cautions.csv must")),
                () -> copy.faults().toString());
    }

    @Test
    void a_caution_about_an_unknown_market_is_reported() {
        String place = copy.set("cautions.csv", "novel-food-ch", "markets", "cc");
        assertTrue(
                copy.faults().get(0).startsWith(place + ": unknown market"),
                () -> copy.faults().toString());
    }
}

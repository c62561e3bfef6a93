package org.scalepan.literature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.scalepan.Asked;
import org.scalepan.OwnFolder;
import org.scalepan.footprint.Bound;
import org.scalepan.footprint.CommonRandomNumbers;
import org.scalepan.footprint.FunctionalUnit;

/** Results with and without emissions from land-use change are never pooled; left alone, one is a bound. All results are invented. */
class LandUseChangeTest {
    @TempDir
    Path path;

    private OwnFolder folder;

    @BeforeEach
    void empty() {
        folder = new OwnFolder(path);
    }

    private LandUseChangeTest given(String source, String luc, double value) {
        return given(source, luc, value, "invented." + source + "." + luc, "world");
    }

    private LandUseChangeTest given(String source, String luc, double value, String finding, String region) {
        Map<String, String> cells = new HashMap<>(Map.of(
                "id",
                "invented." + source + "." + luc,
                "finding",
                finding,
                "source",
                source,
                "luc",
                luc,
                "region",
                region));
        cells.putAll(Map.of("boundary", "farm-gate", "gwp", "ar6-100", "value", "", "statistic", "none"));
        cells.putAll(Map.of("spread", "range", "low", Double.toString(value), "high", Double.toString(value)));
        cells.putAll(Map.of("reliability", "", "completeness", "", "technology", ""));
        folder.rowLike("results", "oonincx-2010.cockroach.ghg.kg-live", cells);
        return this;
    }

    private Evidence.PooledEvidence asked(LandUseChange luc) {
        return asked(luc, "world");
    }

    private Evidence.PooledEvidence asked(LandUseChange luc, String region) {
        return Asked.of(folder.library())
                .per(FunctionalUnit.KG_LIVE)
                .luc(luc)
                .in(region)
                .some("cockroach");
    }

    private static List<String> whyNot(Evidence.PooledEvidence evidence) {
        return evidence.unused().stream()
                .filter(item -> item.result().id().startsWith("invented."))
                .map(item -> item.result().id() + ": " + item.reason())
                .toList();
    }

    @Test
    void a_result_with_land_use_change_leaves_where_one_without_is_left() {
        given("dreyer-2021", "included", 20).given("oonincx-2010", "excluded", 10);
        Evidence.PooledEvidence without = asked(LandUseChange.EXCLUDE);
        assertEquals(List.of("oonincx-2010"), without.sources());
        assertEquals(Bound.EXACT, without.bound());
        assertEquals(
                List.of(
                        "invented.dreyer-2021.included: land-use change is counted in it, and results are left that leave it out or do"
                                + " not say"),
                whyNot(without));
    }

    @Test
    void and_the_other_way_round() {
        given("dreyer-2021", "included", 20).given("oonincx-2010", "excluded", 10);
        Evidence.PooledEvidence with = asked(LandUseChange.INCLUDE);
        assertEquals(List.of("dreyer-2021"), with.sources());
        assertEquals(
                List.of(
                        "invented.oonincx-2010.excluded: land-use change is left out of it, and results are left that count it or do"
                                + " not say"),
                whyNot(with));
    }

    @Test
    void a_result_that_does_not_say_speaks_under_both_and_counts_as_another() {
        given("dreyer-2021", "included", 20).given("oonincx-2010", "not-stated", 10);
        Evidence.PooledEvidence without = asked(LandUseChange.EXCLUDE);
        Evidence.PooledEvidence with = asked(LandUseChange.INCLUDE);
        assertEquals(List.of("oonincx-2010"), without.sources());
        assertEquals(List.of("dreyer-2021", "oonincx-2010"), with.sources());
        assertTrue(without.findings().allMatch(finding -> finding.says(Note.Codes.LUC_NOT_STATED)));
        assertEquals(Bound.EXACT, without.bound());
    }

    @Test
    void left_alone_a_result_with_land_use_change_is_at_most_what_is_asked() {
        given("dreyer-2021", "included", 20);
        Evidence.PooledEvidence without = asked(LandUseChange.EXCLUDE);
        assertEquals(Bound.AT_MOST, without.bound());
        assertEquals(
                Bound.AT_MOST,
                without.footprint(new CommonRandomNumbers(1, 1_000)).bound());
        assertEquals(Bound.EXACT, asked(LandUseChange.INCLUDE).bound());
    }

    @Test
    void left_alone_a_result_without_it_is_at_least_what_is_asked() {
        given("dreyer-2021", "excluded", 20);
        assertEquals(Bound.AT_LEAST, asked(LandUseChange.INCLUDE).bound());
        assertEquals(Bound.EXACT, asked(LandUseChange.EXCLUDE).bound());
    }

    /** The nearest region comes first: what is left elsewhere does not speak for it. */
    @Test
    void what_is_left_is_looked_for_in_the_region_used() {
        given("dreyer-2021", "included", 20, "invented.a", "kenya")
                .given("oonincx-2010", "excluded", 10, "invented.b", "world");
        Evidence.PooledEvidence kenya = asked(LandUseChange.EXCLUDE, "kenya");
        assertEquals(List.of("dreyer-2021"), kenya.sources());
        assertEquals(Bound.AT_MOST, kenya.bound());
    }

    /** A finding that is stated with and without: the one that fits is taken, though it comes second. */
    @Test
    void of_two_statements_of_one_finding_the_one_that_fits_speaks() {
        given("dreyer-2021", "included", 20, "invented.same", "world")
                .given("oonincx-2010", "excluded", 10, "invented.same", "world");
        assertEquals(List.of("oonincx-2010"), asked(LandUseChange.EXCLUDE).sources());
        assertEquals(List.of("dreyer-2021"), asked(LandUseChange.INCLUDE).sources());
        assertEquals(1, whyNot(asked(LandUseChange.EXCLUDE)).size());
    }
}

package org.scalepan.literature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.scalepan.Asked;
import org.scalepan.Libraries;
import org.scalepan.OwnFolder;
import org.scalepan.factors.Library;

/** A review and a primary study that it includes are never counted both. */
class ReviewOverlapTest {
    private static final String PRIMARY = "dreyer-2021.mealworm.ghg.kg-protein";
    private static final String REVIEW = "own-review.mealworm.ghg";

    @TempDir
    Path folder;

    private OwnFolder own;

    /** An invented review of mealworm, put in the words of a bundled row, that is known to include the study of 2021. */
    @BeforeEach
    void anInventedReview() {
        own = new OwnFolder(folder);
        own.rowLike(
                "included_results",
                "clune-2017.nguyen-2010.beef-beef-herd.ghg.kg-carcass",
                Map.of("id", "own-pair", "review", REVIEW, "included", PRIMARY));
    }

    private Library withReview(String grade) {
        return own.rowLike(
                        "results",
                        PRIMARY,
                        Map.of(
                                "id",
                                REVIEW,
                                "finding",
                                REVIEW,
                                "scale",
                                "review",
                                "source",
                                "poore-nemecek-2018",
                                "check",
                                grade))
                .library();
    }

    private static String reason(Evidence evidence, String result) {
        return evidence.unused().stream()
                .filter(item -> item.result().id().equals(result))
                .map(Unused::reason)
                .findFirst()
                .orElse("");
    }

    private static List<String> pooled(Evidence.PooledEvidence some) {
        return some.findings().map(finding -> finding.result().id()).toList();
    }

    @Test
    void a_study_leaves_the_pool_while_a_review_that_includes_it_is_seen_as_well() {
        Evidence.PooledEvidence some = Asked.of(withReview("abstract")).some("mealworm");
        assertTrue(pooled(some).contains(REVIEW));
        assertFalse(pooled(some).contains(PRIMARY));
        assertEquals(
                "it is one of the results behind the review poore-nemecek-2018, which is pooled;"
                        + " exclude=poore-nemecek-2018 asks without the review",
                reason(some, PRIMARY));
    }

    @Test
    void it_comes_back_when_the_review_is_dropped() {
        Evidence.PooledEvidence some =
                Asked.of(withReview("abstract")).without("poore-nemecek-2018").some("mealworm");
        assertTrue(pooled(some).contains(PRIMARY));
    }

    @Test
    void a_study_seen_better_than_the_review_stays_beside_it() {
        Evidence.PooledEvidence some = Asked.of(withReview("secondary")).some("mealworm");
        assertTrue(pooled(some).containsAll(List.of(REVIEW, PRIMARY)));
    }

    @Test
    void a_review_that_is_not_pooled_itself_leaves_room() {
        Evidence.PooledEvidence some =
                Asked.of(withReview("abstract")).only("dreyer-2021").some("mealworm");
        assertEquals(List.of(PRIMARY), pooled(some));
    }

    @Test
    void every_pair_of_the_library_is_of_rows_that_could_be_pooled() {
        Library library = Libraries.bundled();
        assertTrue(
                library.results().stream()
                        .anyMatch(result -> !library.includedIn(result).isEmpty()),
                "no review of the library includes anything");
        // World chicken at retail with land-use change: the dataset's median is of these values among others.
        Evidence.PooledEvidence some =
                Asked.of(library).at("retail").luc(LandUseChange.INCLUDE).some("chicken");
        assertEquals(
                "it is one of the results behind the review petersson-2021, which is pooled;"
                        + " exclude=petersson-2021 asks without the review",
                reason(some, "gerber-fao-2013.chicken.western-europe.ghg.kg-carcass"));
    }
}

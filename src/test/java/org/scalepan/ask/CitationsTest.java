package org.scalepan.ask;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.scalepan.ask.Compared.SAMPLING;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.scalepan.Asked;
import org.scalepan.Libraries;
import org.scalepan.ask.compare.Comparison;
import org.scalepan.cite.Reference;
import org.scalepan.factors.Library;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.footprint.ProteinBasis;
import org.scalepan.literature.LandUseChange;

/** Whoever is behind a figure is cited: results, conversions, gas shares, warming sets. */
class CitationsTest {
    private static final Library LIBRARY = Libraries.bundled();

    private static List<String> ids(Citations citations) {
        return citations.references(LIBRARY).stream().map(Reference::id).toList();
    }

    private static List<String> cited(Asked asked, String product) {
        return ids(new Citations().add(Estimating.estimate(LIBRARY, asked.item(product), asked.basis(), SAMPLING)));
    }

    @Test
    void a_result_on_the_basis_as_published_cites_its_study_alone() {
        assertEquals(
                List.of("poore-nemecek-2018"),
                cited(
                        Asked.of(LIBRARY)
                                .only("poore-nemecek-2018")
                                .at("retail")
                                .luc(LandUseChange.INCLUDE)
                                .gwp("ar5-100-feedback")
                                .per(FunctionalUnit.HUNDRED_G_PROTEIN),
                        "beef-beef-herd"));
    }

    @Test
    void every_conversion_on_the_way_cites_its_source() {
        // Desjardins et al. 2012 per kg live, by dressing and bone-free fraction and protein content.
        assertEquals(
                List.of("desjardins-2012", "cornell-yields-2012", "usda-sr27-2014"),
                cited(Asked.of(LIBRARY).only("desjardins-2012"), "beef"));
    }

    @Test
    void corrected_protein_cites_its_nitrogen_factor() {
        assertEquals(
                List.of("dreyer-2021", "boulos-2020"),
                cited(Asked.of(LIBRARY).only("dreyer-2021").protein(ProteinBasis.CORRECTED), "mealworm"));
    }

    @Test
    void re_basing_cites_the_set_it_starts_from_and_goes_by() {
        List<String> cited = cited(Asked.of(LIBRARY).only("poore-nemecek-2018"), "pork");
        Set<String> sets = new HashSet<>();
        LIBRARY.warmingSets()
                .get("ar5-100-feedback")
                .potentials()
                .values()
                .forEach(potential -> sets.add(potential.cited().source()));
        assertTrue(!sets.isEmpty() && cited.containsAll(sets), () -> cited + " lacks one of " + sets);
    }

    @Test
    void paired_ratios_and_the_set_asked_for_are_cited_too() {
        Asked asked = Asked.of(LIBRARY);
        Comparison comparison = Compared.compare(LIBRARY, asked, SAMPLING, "black-soldier-fly", "beef");
        assertEquals(
                List.of(), ids(new Citations().add(comparison.items().get(0).paired())));
        Comparison paired = Compared.compare(LIBRARY, asked, SAMPLING, "mealworm", "beef");
        assertEquals(
                List.of("oonincx-deboer-2012", "devries-deboer-2010"),
                ids(new Citations().add(paired.items().get(0).paired())));
        assertEquals(
                List.of("ipcc-ar6-wg1-ch7"),
                ids(new Citations().add(LIBRARY.warmingSets().get("ar6-100"))));
    }

    @Test
    void a_source_is_cited_once_and_in_the_order_in_which_it_was_met() {
        Asked asked = Asked.of(LIBRARY);
        Comparison comparison = Compared.compare(LIBRARY, asked, SAMPLING, "mealworm", "beef");
        Citations citations = new Citations()
                .add((PublishedEstimate) comparison.items().get(0).estimate())
                .add((PublishedEstimate) comparison.reference())
                .add(comparison.items().get(0).paired());
        List<String> ids = ids(citations);
        assertEquals(ids.size(), new HashSet<>(ids).size());
        assertEquals(List.of("dreyer-2021", "oonincx-deboer-2012"), ids.subList(0, 2));
        assertTrue(ids.containsAll(
                ((PublishedEstimate) comparison.reference()).evidence().sources()));
    }

    @Test
    void no_evidence_cites_nobody() {
        assertEquals(List.of(), cited(Asked.of(LIBRARY), "palm-weevil"));
    }
}

package org.scalepan.ask;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.scalepan.Asked;
import org.scalepan.Libraries;
import org.scalepan.ask.farm.SystemAnswer;
import org.scalepan.factors.Library;
import org.scalepan.footprint.FunctionalUnit;
import org.scalepan.production.HerdRecordsFixture;
import org.scalepan.production.InsectRecordsFixture;
import org.scalepan.production.Inventory;
import org.scalepan.production.Stage;
import org.scalepan.production.herd.Herd.AnimalKind;
import org.scalepan.production.insects.InsectFarm.Fate;
import org.scalepan.uncertainty.Summary;

/** Farms and herds side by side: a factor that serves both is drawn once, so that what they share is not uncertain between them. */
class CommonBasisTest {
    private static final Library LIBRARY = Libraries.bundled();

    private static SystemAnswer answer(Inventory own, List<Inventory> others, List<String> products, boolean credit) {
        Asked asked = Asked.of(LIBRARY);
        return SystemAnswer.of(
                LIBRARY,
                new SystemAnswer.SystemQuestion(
                        own,
                        others,
                        List.of(),
                        products.stream().map(asked::item).toList(),
                        List.of(asked.per(FunctionalUnit.KG_PROTEIN).basis()),
                        credit,
                        Compared.SAMPLING));
    }

    private static Summary timesLess(Inventory own, Inventory other) {
        return answer(own, List.of(other), List.of(), false)
                .bases()
                .get(0)
                .others()
                .get(0)
                .versus()
                .orElseThrow()
                .timesLess();
    }

    /** Only the lines of energy, so that nothing but the grid is in the two farms. */
    private static Inventory onlyEnergy(String country, double kilowattHours) {
        Inventory whole = InsectRecordsFixture.of(LIBRARY, "mealworm", 100)
                .in(country)
                .energy("grid-electricity", kilowattHours)
                .inventory();
        return new Inventory(
                country,
                whole.output(),
                whole.flows().stream()
                        .filter(flow -> flow.stage() == Stage.ENERGY)
                        .toList(),
                List.of(),
                List.of());
    }

    @Test
    void two_farms_on_one_grid_differ_by_their_kilowatt_hours_without_uncertainty() {
        Summary ratio = timesLess(onlyEnergy("ghana", 100), onlyEnergy("ghana", 250));

        assertEquals(2.5, ratio.low(), 1e-12);
        assertEquals(2.5, ratio.high(), 1e-12);
    }

    @Test
    void two_farms_on_two_grids_differ_with_the_uncertainty_of_both() {
        Summary ratio = timesLess(onlyEnergy("ghana", 100), onlyEnergy("thailand", 250));

        assertEquals(
                2.5 * (0.54574 / (1 - 0.0716136)) / (0.46889 / (1 - 0.1154228)),
                ratio.median(),
                0.1,
                "kg CO2e per kWh that arrives");
        assertTrue(ratio.high() / ratio.low() > 2, ratio::toString);
    }

    @Test
    void hens_and_larvae_that_eat_the_same_maize_share_its_uncertainty() {
        Inventory larvae = InsectRecordsFixture.of(LIBRARY, "mealworm", 100)
                .in("ghana")
                .feed("maize", 400)
                .feed("soybean-meal", 100)
                .none("energy")
                .inventory();
        Inventory hens = HerdRecordsFixture.of(LIBRARY, "layers", 50)
                .in("ghana")
                .gives(AnimalKind.EGGS, 200)
                .feed("maize", 1500)
                .none("energy")
                .inventory();
        SystemAnswer.IndicatorAnswer on =
                answer(larvae, List.of(hens), List.of(), false).bases().get(0);
        Summary own = on.system().summary().orElseThrow();
        Summary other = on.others().get(0).estimate().summary().orElseThrow();
        Summary ratio = on.others().get(0).versus().orElseThrow().timesLess();

        double independent = Math.hypot(Math.log(own.high() / own.low()), Math.log(other.high() / other.low()));
        assertTrue(Math.log(ratio.high() / ratio.low()) < 0.95 * independent, ratio + " of " + own + " and " + other);
    }

    @Test
    void a_farm_stands_beside_published_products_too() {
        Inventory larvae = InsectRecordsFixture.of(LIBRARY, "mealworm", 100)
                .feed("wheat-bran", 250)
                .inventory();
        SystemAnswer.IndicatorAnswer on =
                answer(larvae, List.of(), List.of("beef"), false).bases().get(0);

        Summary ratio = on.products().get(0).versus().orElseThrow().timesLess();
        assertTrue(ratio.median() > 1, ratio::toString);
    }

    @Test
    void a_credit_is_shown_both_ways_and_the_way_asked_for_comes_first() {
        Inventory farm = InsectRecordsFixture.of(LIBRARY, "mealworm", 100)
                .feed("wheat-bran", 300)
                .frass(50, 0.03, Fate.SPREAD, true)
                .inventory();
        SystemAnswer.IndicatorAnswer without =
                answer(farm, List.of(), List.of(), false).bases().get(0);
        SystemAnswer.IndicatorAnswer with =
                answer(farm, List.of(), List.of(), true).bases().get(0);

        assertEquals(without.system().summary(), with.withCredit().orElseThrow().summary(), "the other way of the one");
        assertEquals(with.system().summary(), without.withCredit().orElseThrow().summary(), "is the way of the other");
        assertTrue(with.system().summary().orElseThrow().median()
                < without.system().summary().orElseThrow().median());
    }

    @Test
    void without_a_way_to_the_unit_there_is_a_reason_and_no_figure() {
        // The library holds no composition of buffalo milk, and borrows none.
        Inventory buffalo = HerdRecordsFixture.of(LIBRARY, "buffalo", 2)
                .in("india")
                .gives(AnimalKind.MILK, 3000)
                .inventory();
        SystemEstimate estimate =
                answer(buffalo, List.of(), List.of(), false).bases().get(0).system();

        assertTrue(estimate.footprint().isEmpty());
        assertTrue(estimate.missing().orElseThrow().contains("buffalo-milk"), estimate.missing()::toString);
    }

    @Test
    void the_same_records_give_the_same_answer() {
        Inventory farm = InsectRecordsFixture.of(LIBRARY, "mealworm", 100)
                .feed("wheat-bran", 300)
                .inventory();

        assertEquals(
                answer(farm, List.of(), List.of("beef"), false)
                        .bases()
                        .get(0)
                        .system()
                        .summary(),
                answer(farm, List.of(), List.of("egg"), false)
                        .bases()
                        .get(0)
                        .system()
                        .summary());
    }
}

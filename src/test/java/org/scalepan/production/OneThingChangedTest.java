package org.scalepan.production;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.scalepan.Libraries;
import org.scalepan.factors.Library;
import org.scalepan.production.FarmRecords.CoProduct;
import org.scalepan.production.FarmRecords.EnergyUse;
import org.scalepan.production.FarmRecords.MaterialUse;
import org.scalepan.production.FarmRecords.TransportUse;
import org.scalepan.production.herd.EnergyNeed;
import org.scalepan.production.herd.HeadRecords;
import org.scalepan.production.herd.Herd;
import org.scalepan.production.insects.Harvest;
import org.scalepan.production.insects.InsectFarm;

/** "What if only this were otherwise?": break-even and sensitivity change one thing of a farm, and all else must stay as recorded. */
class OneThingChangedTest {
    private static final Library LIBRARY = Libraries.bundled();

    /** An invented farm with every field filled, so that a field that gets lost is seen. */
    private static FarmRecords records() {
        return new FarmRecords(
                "invented",
                Optional.of("ghana"),
                OptionalInt.of(2023),
                List.of(Fed.of("maize", 100).use()),
                List.of(new EnergyUse("diesel", 10, false)),
                OptionalDouble.of(15),
                List.of(new TransportUse("van-diesel", 3)),
                List.of(new MaterialUse("plastic-pp", 1, OptionalDouble.of(2))),
                OptionalDouble.of(40),
                OptionalDouble.of(30),
                List.of(new CoProduct("oil", 20, OptionalDouble.of(4))),
                OptionalDouble.of(0.4));
    }

    private static InsectFarm farm() {
        return new InsectFarm(
                records(),
                LIBRARY.products().get("mealworm"),
                Optional.of("dried"),
                new Harvest.Weighed(1000),
                OptionalDouble.of(400),
                OptionalDouble.of(8),
                OptionalDouble.of(90),
                OptionalDouble.of(3),
                OptionalDouble.of(0.05),
                OptionalDouble.of(0.2),
                Optional.of(new InsectFarm.Frass(
                        OptionalDouble.of(500), OptionalDouble.of(0.03), Optional.of(InsectFarm.Fate.STORED), false)),
                List.of(drying(600)),
                Optional.of(InsectFarm.CoProductRule.ECONOMIC));
    }

    private static InsectFarm.Processing drying(double water) {
        return new InsectFarm.Processing("drying", water, "natural-gas", OptionalDouble.of(1.2));
    }

    private static Herd herd() {
        return new Herd(
                records(),
                "dairy-cattle",
                Optional.of("2019"),
                Optional.of("ipcc.africa"),
                Optional.of("low"),
                Optional.of("tropical-wet"),
                12,
                List.of(new Herd.Yield(Herd.AnimalKind.MILK, 9000)),
                List.of(new Herd.ManureShare("mms.pasture", 1)),
                Optional.of(cattle(2)),
                Optional.of("milk"),
                Optional.of(Herd.BreedingStock.BOUGHT_IN));
    }

    private static Herd.Cattle cattle(double milk) {
        return new Herd.Cattle(
                HeadRecords.of(new EnergyNeed.Animal(260, 260, 0, milk, 4, 0.6, 0, 55), "large-areas", "lactating"),
                OptionalDouble.of(6.5),
                OptionalDouble.of(11));
    }

    /** The fields in which two records of one kind differ. */
    private static Set<String> changed(Record before, Record after) {
        Set<String> names = new TreeSet<>();
        for (RecordComponent field : before.getClass().getRecordComponents()) {
            try {
                field.getAccessor().setAccessible(true);
                if (!field.getAccessor()
                        .invoke(before)
                        .equals(field.getAccessor().invoke(after))) {
                    names.add(field.getName());
                }
            } catch (ReflectiveOperationException e) {
                throw new AssertionError(e);
            }
        }
        return names;
    }

    @Test
    void records_with_one_thing_changed_are_otherwise_the_same_records() {
        assertEquals(
                Set.of("feed"),
                changed(
                        records(),
                        records().withFeed(List.of(Fed.of("maize", 50).use()))));
        assertEquals(
                Set.of("energy"), changed(records(), records().withEnergy(List.of(new EnergyUse("diesel", 5, false)))));
        assertEquals(Set.of("water"), changed(records(), records().withWater(7)));
        assertEquals(
                Set.of("transport"),
                changed(records(), records().withTransport(List.of(new TransportUse("van-diesel", 1)))));
        assertEquals(
                Set.of("buildingArea", "yardArea"),
                changed(records(), records().withAreas(OptionalDouble.of(80), OptionalDouble.empty())));
        assertEquals(Set.of("coProducts"), changed(records(), records().withCoProducts(List.of())));
        assertEquals(Set.of("gridIntensity"), changed(records(), records().withGridIntensity(0.1)));
    }

    @Test
    void what_was_changed_is_what_was_asked_for() {
        assertEquals(
                50,
                records()
                        .withFeed(List.of(Fed.of("maize", 50).use()))
                        .feed()
                        .get(0)
                        .kilograms());
        assertEquals(OptionalDouble.of(7), records().withWater(7).water());
        FarmRecords spread = records().withAreas(OptionalDouble.of(80), OptionalDouble.of(90));
        assertEquals(OptionalDouble.of(80), spread.buildingArea());
        assertEquals(OptionalDouble.of(90), spread.yardArea());
        assertEquals(OptionalDouble.of(0.1), records().withGridIntensity(0.1).gridIntensity());
        assertEquals(OptionalDouble.of(0.3), farm().withMortality(0.3).mortality());
        assertEquals(OptionalDouble.of(9), farm().withPrice(9).price());
        assertEquals(24, herd().withHeads(24).heads());
        assertEquals(Optional.of("beef"), herd().withProduct("beef").product());
    }

    @Test
    void an_insect_farm_with_one_thing_changed_is_otherwise_the_same_farm() {
        assertEquals(Set.of("records"), changed(farm(), farm().with(records().withWater(7))));
        assertEquals(
                Set.of("harvest", "sold", "processing"),
                changed(
                        farm(),
                        farm().withHarvest(new Harvest.Weighed(500), OptionalDouble.of(200), List.of(drying(300)))));
        assertEquals(Set.of("processing"), changed(farm(), farm().withProcessing(List.of())));
        assertEquals(Set.of("mortality"), changed(farm(), farm().withMortality(0.3)));
        assertEquals(Set.of("price"), changed(farm(), farm().withPrice(9)));
    }

    @Test
    void a_herd_with_one_thing_changed_is_otherwise_the_same_herd() {
        assertEquals(Set.of("records"), changed(herd(), herd().with(records().withWater(7))));
        assertEquals(Set.of("heads"), changed(herd(), herd().withHeads(24)));
        assertEquals(
                Set.of("yields", "cattle"),
                changed(
                        herd(),
                        herd().withYields(
                                        List.of(new Herd.Yield(Herd.AnimalKind.MILK, 18_000)),
                                        Optional.of(cattle(4)))));
        assertEquals(Set.of("product"), changed(herd(), herd().withProduct("beef")));
    }

    /** Changing the list that a record was made from does not change the record. */
    @Test
    void a_record_does_not_change_with_the_list_it_was_made_from() {
        List<Herd.Yield> yields = new java.util.ArrayList<>(herd().yields());
        Herd herd = herd().withYields(yields, Optional.empty());
        yields.clear();

        assertEquals(1, herd.yields().size());
    }
}

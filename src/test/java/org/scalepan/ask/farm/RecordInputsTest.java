package org.scalepan.ask.farm;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.scalepan.Libraries;
import org.scalepan.factors.Library;
import org.scalepan.production.FarmRecords;
import org.scalepan.production.FarmRecords.CoProduct;
import org.scalepan.production.FarmRecords.EnergyUse;
import org.scalepan.production.FarmRecords.MaterialUse;
import org.scalepan.production.FarmRecords.TransportUse;
import org.scalepan.production.Fed;
import org.scalepan.production.RecordedNumber;
import org.scalepan.production.herd.EnergyNeed;
import org.scalepan.production.herd.HeadRecords;
import org.scalepan.production.herd.Herd;
import org.scalepan.production.insects.Harvest;
import org.scalepan.production.insects.InsectFarm;
import org.scalepan.production.records.EditableRecords;

/** "What if only this were otherwise?": break-even and sensitivity change one thing of a farm, and all else must stay as recorded. */
class RecordInputsTest {
    private static final Library LIBRARY = Libraries.bundled();

    /** An invented farm with every field filled, so that a field that gets lost is seen. */
    private static FarmRecords records() {
        return new FarmRecords(
                "invented",
                Optional.of("kenya"),
                OptionalInt.of(2023),
                List.of(Fed.of("maize", 100).use()),
                List.of(new EnergyUse("diesel", 10, false), new EnergyUse("grid-electricity", 120, false)),
                RecordedNumber.known(15),
                List.of(new TransportUse("van-diesel", RecordedNumber.of(3))),
                List.of(new MaterialUse("plastic-pp", RecordedNumber.of(1), RecordedNumber.known(2))),
                RecordedNumber.known(40),
                RecordedNumber.known(30),
                List.of(new CoProduct("oil", RecordedNumber.of(20), RecordedNumber.known(4))),
                RecordedNumber.known(0.4),
                Set.of("feed"));
    }

    private static InsectFarm farm() {
        return new InsectFarm(
                records(),
                LIBRARY.products().get("mealworm"),
                Optional.of("dried"),
                new Harvest.Weighed(1000),
                RecordedNumber.known(400),
                RecordedNumber.known(8),
                RecordedNumber.known(90),
                RecordedNumber.known(3),
                RecordedNumber.known(0.05),
                RecordedNumber.known(0.2),
                Optional.of(new InsectFarm.Frass(
                        RecordedNumber.known(500),
                        RecordedNumber.known(0.03),
                        Optional.of(InsectFarm.Fate.STORED),
                        false)),
                List.of(drying(600)),
                Optional.of(InsectFarm.CoProductRule.ECONOMIC));
    }

    private static InsectFarm.Processing drying(double water) {
        return new InsectFarm.Processing("drying", RecordedNumber.of(water), "natural-gas", RecordedNumber.known(1.2));
    }

    private static Herd herd() {
        return new Herd(
                records(),
                "dairy-cattle",
                Optional.of("2019"),
                Optional.of("ipcc.africa"),
                Optional.of("low"),
                Optional.of("tropical-wet"),
                RecordedNumber.of(12),
                List.of(new Herd.Yield(Herd.AnimalKind.MILK, 9000)),
                List.of(new Herd.ManureShare("mms.pasture", 1)),
                Optional.of(cattle(2)),
                Optional.of("milk"),
                Optional.of(Herd.BreedingStock.BOUGHT_IN));
    }

    private static Herd.Cattle cattle(double milk) {
        return new Herd.Cattle(
                HeadRecords.of(new EnergyNeed.Animal(260, 260, 0, milk, 4, 0.6, 0, 55), "large-areas", "lactating"),
                RecordedNumber.known(6.5),
                RecordedNumber.known(11));
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

    /** The fields of a farm in which two records differ, those that it shares with herds among them. */
    private static Set<String> changed(EditableRecords before, EditableRecords after) {
        Set<String> names = new TreeSet<>(changed(before.records(), after.records()));
        names.addAll(
                before instanceof EditableRecords.Insects insects
                        ? changed(insects.farm(), ((EditableRecords.Insects) after).farm())
                        : changed(((EditableRecords.Animals) before).herd(), ((EditableRecords.Animals) after).herd()));
        names.remove("records");
        return names;
    }

    private static void assertChanges(EditableRecords before, String input, String fields) {
        RecordInput entry = RecordInputs.of(LIBRARY, before).get(input);
        double value = 0.8 * entry.present();
        EditableRecords after = entry.at().apply(value);

        assertEquals(Set.of(fields.split(" ")), changed(before, after), input);
        assertEquals(value, RecordInputs.of(LIBRARY, after).get(input).present(), 1e-9 * value, "the value asked for");
    }

    @ParameterizedTest
    @CsvSource({
        "feed, feed",
        "feed:maize, feed",
        "energy:diesel, energy",
        "grid_intensity, gridIntensity",
        "drying_energy, processing",
        "yield, harvest sold processing",
        "mortality, mortality",
        "water, water",
        "transport, transport",
        "transport:van-diesel, transport",
        "land, buildingArea yardArea",
        "price, price",
        "price:oil, coProducts"
    })
    void given_an_insect_farm_when_one_input_changes_then_all_else_stays_as_recorded(String input, String fields) {
        assertChanges(new EditableRecords.Insects(farm()), input, fields);
    }

    @ParameterizedTest
    @CsvSource({
        "feed, feed",
        "grid_intensity, gridIntensity",
        "yield, yields cattle",
        "heads, heads",
        "water, water",
        "transport, transport",
        "land, buildingArea yardArea"
    })
    void given_a_herd_when_one_input_changes_then_all_else_stays_as_recorded(String input, String fields) {
        assertChanges(new EditableRecords.Animals(herd()), input, fields);
    }

    /** Changing the list that a record was made from does not change the record. */
    @Test
    void a_record_does_not_change_with_the_list_it_was_made_from() {
        List<Herd.Yield> yields = new java.util.ArrayList<>(herd().yields());
        Herd herd = herd().withYields(yields);
        yields.clear();

        assertEquals(1, herd.yields().size());
    }
}

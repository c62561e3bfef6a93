package org.scalepan.production;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scalepan.factors.Library;
import org.scalepan.production.herd.EnergyNeed;
import org.scalepan.production.herd.HeadRecords;
import org.scalepan.production.herd.Herd;
import org.scalepan.production.herd.Herd.AnimalKind;
import org.scalepan.production.herd.HerdInventory;

/** Records of a herd: category, number of heads and yields; edition 2019 unless stated otherwise. */
public final class HerdRecordsFixture extends RecordsFixture<HerdRecordsFixture> {
    private final String animals;
    private final double heads;
    private String edition = "2019";
    private Optional<String> ipccRegion = Optional.empty();
    private Optional<String> climate = Optional.empty();
    private final List<Herd.Yield> yields = new ArrayList<>();
    private final List<Herd.ManureShare> manure = new ArrayList<>();
    private Optional<Herd.Cattle> cattle = Optional.empty();
    private Optional<String> product = Optional.empty();
    private Optional<Herd.BreedingStock> breedingStock = Optional.of(Herd.BreedingStock.INCLUDED);

    private HerdRecordsFixture(Library library, String animals, double heads) {
        super(library);
        this.animals = animals;
        this.heads = heads;
    }

    public static HerdRecordsFixture of(Library library, String animals, double heads) {
        return new HerdRecordsFixture(library, animals, heads);
    }

    @Override
    protected HerdRecordsFixture self() {
        return this;
    }

    public HerdRecordsFixture edition(String year) {
        edition = year;
        return this;
    }

    public HerdRecordsFixture ipcc(String region) {
        ipccRegion = Optional.of(region);
        return this;
    }

    public HerdRecordsFixture climate(String zone) {
        climate = Optional.of(zone);
        return this;
    }

    public HerdRecordsFixture gives(AnimalKind kind, double kilograms) {
        yields.add(new Herd.Yield(kind, kilograms));
        return this;
    }

    public HerdRecordsFixture manure(String system, double share) {
        manure.add(new Herd.ManureShare(system, share));
        return this;
    }

    public HerdRecordsFixture asked(String productId) {
        product = Optional.of(productId);
        return this;
    }

    /** Where the breeding animals are; among the heads unless stated otherwise. */
    public HerdRecordsFixture breedingStock(Optional<Herd.BreedingStock> place) {
        breedingStock = place;
        return this;
    }

    /** Tier 2 for a cow in the stall, methane conversion from the tables. */
    public HerdRecordsFixture tier2(EnergyNeed.Animal animal, String activity) {
        return tier2(animal, activity, animal.milk() > 0 ? "lactating" : "not-lactating", Optional.empty());
    }

    public HerdRecordsFixture tier2(
            EnergyNeed.Animal animal, String activity, String kind, Optional<RecordedNumber> crudeProtein) {
        cattle = Optional.of(new Herd.Cattle(HeadRecords.of(animal, activity, kind), Optional.empty(), crudeProtein));
        return this;
    }

    @Override
    public Inventory inventory() {
        return HerdInventory.inventory(library, herd());
    }

    /** The records themselves. */
    public Herd herd() {
        return new Herd(
                records(),
                animals,
                Optional.of(edition),
                ipccRegion,
                Optional.of("mean"),
                climate,
                RecordedNumber.of(heads),
                yields,
                manure,
                cattle,
                product,
                breedingStock);
    }
}

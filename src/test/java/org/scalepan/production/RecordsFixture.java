package org.scalepan.production;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.scalepan.factors.Library;
import org.scalepan.production.FarmRecords.CoProduct;
import org.scalepan.production.FarmRecords.EnergyUse;
import org.scalepan.production.FarmRecords.FeedUse;
import org.scalepan.production.FarmRecords.MaterialUse;
import org.scalepan.production.FarmRecords.TransportUse;

/**
 * Builder of a year's records. The farms of the tests are invented; what is checked against the outside are the factors.
 *
 * @param <N> the kind of notebook
 */
public abstract class RecordsFixture<N extends RecordsFixture<N>> {
    protected final Library library;
    private Optional<String> region = Optional.empty();
    private OptionalInt year = OptionalInt.empty();
    private final List<FeedUse> feed = new ArrayList<>();
    private final List<EnergyUse> energy = new ArrayList<>();
    private Optional<RecordedNumber> water = Optional.empty();
    private final List<TransportUse> transport = new ArrayList<>();
    private final List<MaterialUse> materials = new ArrayList<>();
    private Optional<RecordedNumber> building = Optional.empty();
    private Optional<RecordedNumber> yard = Optional.empty();
    private final List<CoProduct> coProducts = new ArrayList<>();
    private final Set<String> none = new HashSet<>();

    protected RecordsFixture(Library library) {
        this.library = library;
    }

    protected abstract N self();

    /** The inventory of the year. */
    public abstract Inventory inventory();

    public N in(String place) {
        region = Optional.of(place);
        return self();
    }

    public N year(int of) {
        year = OptionalInt.of(of);
        return self();
    }

    public N feed(String ingredient, double kilograms) {
        return feed(Fed.of(ingredient, kilograms));
    }

    public N feed(Fed fed) {
        feed.add(fed.use());
        return self();
    }

    public N energy(String carrier, double amount) {
        energy.add(new EnergyUse(carrier, amount, false));
        return self();
    }

    public N energyForProcessing(String carrier, double amount) {
        energy.add(new EnergyUse(carrier, amount, true));
        return self();
    }

    public N water(double cubicMetres) {
        water = RecordedNumber.known(cubicMetres);
        return self();
    }

    public N transport(String mode, double tonneKilometres) {
        transport.add(new TransportUse(mode, RecordedNumber.of(tonneKilometres)));
        return self();
    }

    public N material(String material, double kilograms, double years) {
        materials.add(new MaterialUse(material, RecordedNumber.of(kilograms), RecordedNumber.known(years)));
        return self();
    }

    public N area(double buildingArea, double yardArea) {
        building = RecordedNumber.known(buildingArea);
        yard = RecordedNumber.known(yardArea);
        return self();
    }

    public N coProduct(String name, double kilograms, double price) {
        coProducts.add(new CoProduct(name, RecordedNumber.of(kilograms), RecordedNumber.known(price)));
        return self();
    }

    /** A list that was given empty. */
    public N none(String list) {
        none.add(list);
        return self();
    }

    protected FarmRecords records() {
        return new FarmRecords(
                "invented",
                region,
                year,
                feed,
                energy,
                water,
                transport,
                materials,
                building,
                yard,
                coProducts,
                Optional.empty(),
                none);
    }
}

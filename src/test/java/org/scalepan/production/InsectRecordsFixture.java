package org.scalepan.production;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.scalepan.factors.Library;
import org.scalepan.production.heating.Heating;
import org.scalepan.production.insects.Harvest;
import org.scalepan.production.insects.InsectFarm;
import org.scalepan.production.insects.InsectFarm.CoProductRule;
import org.scalepan.production.insects.InsectFarm.Fate;
import org.scalepan.production.insects.InsectInventory;

/** Records of an insect farm: a weighed harvest and nothing else, unless more is stated. */
public final class InsectRecordsFixture extends RecordsFixture<InsectRecordsFixture> {
    private final String product;
    private Harvest harvest;
    private String form = "fresh";
    private Optional<RecordedNumber> sold = Optional.empty();
    private Optional<RecordedNumber> price = Optional.empty();
    private Optional<RecordedNumber> cycleDays = Optional.empty();
    private Optional<RecordedNumber> pairs = Optional.empty();
    private Optional<RecordedNumber> keptForBreeding = Optional.empty();
    private Optional<RecordedNumber> mortality = Optional.empty();
    private Optional<InsectFarm.Frass> frass = Optional.empty();
    private final List<InsectFarm.Processing> processing = new ArrayList<>();
    private Optional<Heating> heating = Optional.empty();
    private CoProductRule rule = CoProductRule.NONE;

    private InsectRecordsFixture(Library library, String product, Harvest harvest) {
        super(library);
        this.product = product;
        this.harvest = harvest;
    }

    public static InsectRecordsFixture of(Library library, String product, double kilograms) {
        return new InsectRecordsFixture(library, product, new Harvest.Weighed(kilograms));
    }

    @Override
    protected InsectRecordsFixture self() {
        return this;
    }

    public InsectRecordsFixture harvest(Harvest other) {
        harvest = other;
        return this;
    }

    public InsectRecordsFixture sold(String as, double kilograms) {
        form = as;
        sold = RecordedNumber.known(kilograms);
        return this;
    }

    public InsectRecordsFixture cycleDays(double days) {
        cycleDays = RecordedNumber.known(days);
        return this;
    }

    /** A room that is heated, and has no meter. */
    public InsectRecordsFixture heated(Heating room) {
        heating = Optional.of(room);
        return this;
    }

    public InsectRecordsFixture pairs(double stocked) {
        pairs = RecordedNumber.known(stocked);
        return this;
    }

    public InsectRecordsFixture keptForBreeding(double share) {
        keptForBreeding = RecordedNumber.known(share);
        return this;
    }

    public InsectRecordsFixture mortality(double share) {
        mortality = RecordedNumber.known(share);
        return this;
    }

    public InsectRecordsFixture frass(double kilograms, double nitrogen, Fate fate, boolean credited) {
        frass = Optional.of(new InsectFarm.Frass(
                RecordedNumber.known(kilograms), RecordedNumber.known(nitrogen), Optional.of(fate), credited));
        return this;
    }

    public InsectRecordsFixture frass(Fate fate) {
        frass = Optional.of(new InsectFarm.Frass(Optional.empty(), Optional.empty(), Optional.of(fate), false));
        return this;
    }

    /** Frass that was weighed and not analysed. */
    public InsectRecordsFixture frassWeighed(double kilograms, Fate fate) {
        frass = Optional.of(
                new InsectFarm.Frass(RecordedNumber.known(kilograms), Optional.empty(), Optional.of(fate), false));
        return this;
    }

    public InsectRecordsFixture process(String step, double water, String carrier) {
        processing.add(new InsectFarm.Processing(step, RecordedNumber.of(water), carrier, Optional.empty()));
        return this;
    }

    public InsectRecordsFixture allocate(CoProductRule by, double ownPrice) {
        rule = by;
        price = RecordedNumber.known(ownPrice);
        return this;
    }

    /** A step of which the grower knows how many kWh a kilogram of water takes. */
    public InsectRecordsFixture process(String step, double water, String carrier, double kilowattHours) {
        processing.add(new InsectFarm.Processing(
                step, RecordedNumber.of(water), carrier, RecordedNumber.known(kilowattHours)));
        return this;
    }

    @Override
    public Inventory inventory() {
        return InsectInventory.inventory(library, farm());
    }

    /** The records themselves. */
    public InsectFarm farm() {
        return new InsectFarm(
                records(),
                library.products().get(product),
                Optional.of(form),
                harvest,
                sold,
                price,
                cycleDays,
                pairs,
                keptForBreeding,
                mortality,
                frass,
                processing,
                Optional.of(rule),
                heating,
                StatedComposition.NONE);
    }
}

package org.scalepan.ask.farm;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import org.scalepan.factors.BackgroundFactor;
import org.scalepan.factors.Library;
import org.scalepan.factors.table.Row;
import org.scalepan.production.Background;
import org.scalepan.production.EnergyInventory;
import org.scalepan.production.FarmRecords;
import org.scalepan.production.FarmRecords.CoProduct;
import org.scalepan.production.FarmRecords.EnergyUse;
import org.scalepan.production.FarmRecords.FeedUse;
import org.scalepan.production.FarmRecords.TransportUse;
import org.scalepan.production.RecordField;
import org.scalepan.production.RecordedNumber;
import org.scalepan.production.fish.FishFarm;
import org.scalepan.production.fish.FishMass;
import org.scalepan.production.herd.Herd;
import org.scalepan.production.herd.HerdOutput;
import org.scalepan.production.insects.Harvest;
import org.scalepan.production.insects.InsectFarm;
import org.scalepan.production.records.EditableRecords;
import org.scalepan.words.DisplayName;
import org.scalepan.words.Message;

/**
 * The entries of a notebook that a grower can change, by the names that questions call them by. Several entries under one name, such
 * as all feed, keep their proportions.
 */
public final class RecordInputs {
    /** The names; after a colon stands an ingredient, a carrier, a mode or a co-product of the records. */
    public static final List<String> NAMES = List.of(
            "feed",
            "feed:INGREDIENT",
            "energy:CARRIER",
            "grid_intensity",
            "drying_energy",
            "yield",
            "mortality",
            "water",
            "transport",
            "transport:MODE",
            "land",
            "pond",
            "price",
            "price:CO-PRODUCT",
            "heads");

    /** Shares by economic value need a price above zero. */
    private static final double LEAST_PRICE = 1e-9;

    private static final double MJ_PER_KWH = 3.6;
    private static final String GRID = "grid-electricity";
    private static final String DRYING = "drying";

    private final Library library;
    private final EditableRecords notebook;
    private final Map<String, RecordInput> found = new LinkedHashMap<>();

    private RecordInputs(Library library, EditableRecords notebook) {
        this.library = library;
        this.notebook = notebook;
    }

    /** The entries that a notebook has, by name. */
    public static Map<String, RecordInput> of(Library library, EditableRecords notebook) {
        RecordInputs entries = new RecordInputs(library, notebook);
        entries.feed();
        entries.energy();
        if (notebook instanceof EditableRecords.Insects insects) {
            entries.insects(insects.farm());
        } else if (notebook instanceof EditableRecords.Animals animals) {
            entries.herd(animals.herd());
        } else if (notebook instanceof EditableRecords.Fish fish) {
            entries.fish(fish.farm());
        }
        entries.site();
        return java.util.Collections.unmodifiableMap(entries.found);
    }

    /** Why a notebook has no entry of a name that questions know, and what would have to be recorded. */
    public static Optional<String> missing(String name) {
        String word = name.contains(":") ? name.substring(0, name.indexOf(':')) : name;
        return switch (word) {
            case "feed" -> Optional.of("no such feed above zero is recorded");
            case "energy" ->
                Optional.of("no energy above zero of such a carrier is recorded; name one, as in energy:diesel");
            case "grid_intensity" -> Optional.of("no grid electricity is recorded");
            case "drying_energy" -> Optional.of("no drying with water removed is recorded under processing");
            case "mortality" -> Optional.of("the records of a herd or of a fish farm have no mortality");
            case "water" -> Optional.of("no water above zero is recorded");
            case "transport" -> Optional.of("no such transport above zero is recorded");
            case "land" -> Optional.of("no building or yard is recorded");
            case "pond" -> Optional.of("no area of water with fish is recorded (pond.area_m2)");
            case "price" ->
                Optional.of(
                        "a price matters only with co_product_allocation economic, and needs such a co-product with a price"
                                + " above zero");
            case "heads" -> Optional.of("an insect farm or a fish farm has no heads");
            default -> Optional.empty();
        };
    }

    private void feed() {
        List<FeedUse> uses = notebook.records().feed();
        shared(
                "feed",
                Message.of("entry.all-feed"),
                RecordField.FEED_KG.unit(),
                RecordField.FEED_KG,
                uses,
                use -> use.kilograms().central(),
                use -> true,
                RecordInputs::weighing,
                (records, changed) -> records.withFeed(changed));
        uses.stream()
                .map(FeedUse::ingredient)
                .distinct()
                .forEach(ingredient -> shared(
                        "feed:" + ingredient,
                        Message.of("entry.feed", "ingredient", ingredient),
                        RecordField.FEED_KG.unit(),
                        RecordField.FEED_KG,
                        uses,
                        use -> use.kilograms().central(),
                        use -> use.ingredient().equals(ingredient),
                        RecordInputs::weighing,
                        (records, changed) -> records.withFeed(changed)));
    }

    private static FeedUse weighing(FeedUse use, double factor) {
        return new FeedUse(
                use.ingredient(),
                scaled(use.kilograms(), factor),
                use.moisture(),
                use.nitrogen(),
                use.burden(),
                use.displaces(),
                use.displacedPerKilogram(),
                use.own());
    }

    private void energy() {
        List<EnergyUse> uses = notebook.records().energy();
        uses.stream()
                .map(EnergyUse::carrier)
                .distinct()
                .forEach(carrier -> shared(
                        "energy:" + carrier,
                        Message.of("entry.energy", "carrier", carrier),
                        unit(carrier) + " " + RecordField.ENERGY_AMOUNT.unit(),
                        RecordField.ENERGY_AMOUNT,
                        uses,
                        use -> use.amount().central(),
                        use -> use.carrier().equals(carrier),
                        (use, factor) -> new EnergyUse(use.carrier(), scaled(use.amount(), factor), use.site()),
                        (records, changed) -> records.withEnergy(changed)));
        if (usesGrid()) {
            Optional<RecordedNumber> present = notebook.records().gridIntensity();
            OptionalDouble known = present.isPresent()
                    ? OptionalDouble.of(present.get().central())
                    : EnergyInventory.intensity(library, GRID, notebook.records());
            known.ifPresent(value -> single(
                    "grid_intensity",
                    Message.of("entry.grid"),
                    RecordField.GRID_GHG,
                    value,
                    other -> notebook.with(records -> records.withGridIntensity(RecordedNumber.known(other)))));
        }
    }

    private boolean usesGrid() {
        boolean heat = notebook instanceof EditableRecords.Insects insects
                && insects.farm().processing().stream()
                        .anyMatch(step ->
                                step.carrier().equals(GRID) && step.water().central() > 0);
        return heat
                || notebook.records().energy().stream()
                        .anyMatch(use ->
                                use.carrier().equals(GRID) && use.amount().central() > 0);
    }

    private String unit(String carrier) {
        return library.table("energy_carriers").rows().stream()
                .filter(row -> row.text("id").equals(carrier))
                .map((Row row) -> row.text("unit"))
                .findFirst()
                .orElseThrow();
    }

    private void insects(InsectFarm farm) {
        drying(farm);
        harvest(farm);
        single(
                "mortality",
                Message.of("entry.mortality"),
                RecordField.MORTALITY,
                RecordedNumber.centralOr(farm.mortality(), 0),
                other -> new EditableRecords.Insects(farm.withMortality(RecordedNumber.known(other))));
        if (farm.coProductRule()
                .filter(InsectFarm.CoProductRule.ECONOMIC::equals)
                .isEmpty()) {
            return;
        }
        put(new RecordInput(
                "price",
                Message.of(
                        "entry.price",
                        "name",
                        DisplayName.of(
                                "product." + farm.product().id(), farm.product().name())),
                RecordField.PRICE.unit(),
                farm.price().orElseThrow().central(),
                LEAST_PRICE,
                RecordField.PRICE.most(),
                Optional.empty(),
                other -> new EditableRecords.Insects(farm.withPrice(RecordedNumber.known(other)))));
        List<CoProduct> others = farm.records().coProducts();
        others.stream()
                .filter(other -> RecordedNumber.centralOr(other.price(), 0) > 0)
                .map(CoProduct::name)
                .distinct()
                .forEach(name -> price(others, name));
    }

    private void price(List<CoProduct> all, String name) {
        double present = all.stream()
                .filter(one -> one.name().equals(name))
                .mapToDouble(one -> RecordedNumber.centralOr(one.price(), 0))
                .max()
                .orElseThrow();
        single(
                "price:" + name,
                Message.of("entry.price", "name", name),
                RecordField.CO_PRODUCT_PRICE,
                present,
                other -> notebook.with(records -> records.withCoProducts(all.stream()
                        .map(one -> one.name().equals(name)
                                ? new CoProduct(name, one.kilograms(), RecordedNumber.known(other))
                                : one)
                        .toList())));
    }

    private void drying(InsectFarm farm) {
        Optional<InsectFarm.Processing> drying = farm.processing().stream()
                .filter(step -> step.step().equals(DRYING) && step.water().central() > 0)
                .findFirst();
        if (drying.isEmpty()) {
            return;
        }
        Background background = Background.of(library);
        OptionalDouble published = background
                .row("processing_factors", DRYING, "energy-demand")
                .map((BackgroundFactor row) ->
                        OptionalDouble.of(background.factor(row).central() / MJ_PER_KWH))
                .orElse(OptionalDouble.empty());
        OptionalDouble present = drying.get().energy().isPresent()
                ? OptionalDouble.of(drying.get().energy().get().central())
                : published;
        present.ifPresent(value -> single(
                "drying_energy",
                Message.of("entry.drying"),
                RecordField.PROCESSING_ENERGY,
                value,
                other -> new EditableRecords.Insects(farm.withProcessing(farm.processing().stream()
                        .map(step -> step.step().equals(DRYING)
                                ? new InsectFarm.Processing(
                                        step.step(), step.water(), step.carrier(), RecordedNumber.known(other))
                                : step)
                        .toList()))));
    }

    private void harvest(InsectFarm farm) {
        Harvest harvest = farm.harvest();
        boolean contained = harvest instanceof Harvest.ByContainer;
        RecordField field = contained ? RecordField.HARVEST_KG_PER_CONTAINER : RecordField.HARVEST_KG;
        double present = harvest instanceof Harvest.ByContainer container
                ? container.kilogramsPerContainer().central()
                : harvest.kilograms();
        put(new RecordInput(
                "yield",
                Message.of(contained ? "entry.harvest.container" : "entry.harvest"),
                field.unit(),
                present,
                field.least(),
                field.most(),
                Optional.of(Message.of("along.harvest")),
                other -> new EditableRecords.Insects(times(farm, other / present))));
    }

    private static InsectFarm times(InsectFarm farm, double factor) {
        Harvest harvest = farm.harvest();
        Harvest other;
        if (harvest instanceof Harvest.ByContainer container) {
            other = new Harvest.ByContainer(
                    container.containers(),
                    scaled(container.kilogramsPerContainer(), factor),
                    container.cyclesPerYear());
        } else if (harvest instanceof Harvest.ByNumber number) {
            other = new Harvest.ByNumber(scaled(number.larvae(), factor), number.each());
        } else {
            other = new Harvest.Weighed(harvest.kilograms() * factor);
        }
        return farm.withHarvest(other)
                .withSold(scaled(farm.sold(), factor))
                .withProcessing(farm.processing().stream()
                        .map(step -> new InsectFarm.Processing(
                                step.step(), scaled(step.water(), factor), step.carrier(), step.energy()))
                        .toList());
    }

    private void fish(FishFarm farm) {
        put(new RecordInput(
                "yield",
                Message.of("entry.harvest"),
                RecordField.HARVEST_KG.unit(),
                farm.harvest().kilograms(),
                RecordField.HARVEST_KG.least(),
                RecordField.HARVEST_KG.most(),
                Optional.of(Message.of("along.harvest-of-fish")),
                other -> new EditableRecords.Fish(
                        farm.withHarvest(new FishMass.WeighedFish(RecordedNumber.of(other))))));
        farm.pond()
                .area()
                .ifPresent(area -> single(
                        "pond",
                        Message.of("entry.pond"),
                        RecordField.POND_AREA,
                        area.central(),
                        other -> new EditableRecords.Fish(
                                farm.withPond(farm.pond().withArea(RecordedNumber.known(other))))));
    }

    private void herd(Herd records) {
        String product = notebook.inventory(library).output().product().id();
        // With another yield, another product might give the most protein; the question stays about this one.
        Herd herd = records.withProduct(Optional.of(product));
        herd.yields().stream()
                .filter(yield -> HerdOutput.product(herd.category(), yield.kind())
                        .filter(product::equals)
                        .isPresent())
                .findFirst()
                .ifPresent(main -> yieldOf(herd, main));
        single(
                "heads",
                Message.of("entry.heads"),
                RecordField.HEADS,
                herd.heads().central(),
                other -> new EditableRecords.Animals(herd.withHeads(RecordedNumber.of(other))));
    }

    /** A cow that gives more milk needs more feed energy: her milk a day goes along. */
    private void yieldOf(Herd herd, Herd.Yield main) {
        double milk = main.kind() == Herd.AnimalKind.MILK
                ? herd.cattle().map(cattle -> cattle.animal().milk()).orElse(0.0)
                : 0;
        double present = main.kilograms().central();
        RecordField field = main.kind().field();
        double most = milk > 0 ? present * RecordField.CATTLE_MILK.most() / milk : field.most();
        put(new RecordInput(
                "yield",
                Message.of("entry.yield." + main.kind().name().toLowerCase(java.util.Locale.ROOT)),
                field.unit(),
                present,
                field.least(),
                most,
                Optional.of(Message.of(milk > 0 ? "along.milk" : "along.yield")),
                other -> {
                    double factor = other / present;
                    List<Herd.Yield> yields = herd.yields().stream()
                            .map(yield -> yield.equals(main) ? new Herd.Yield(main.kind(), other) : yield)
                            .toList();
                    Optional<Herd.Cattle> cattle =
                            herd.cattle().map(given -> milk > 0 ? milking(given, milk * factor) : given);
                    return new EditableRecords.Animals(herd.withYields(yields).withCattle(cattle));
                }));
    }

    private static Herd.Cattle milking(Herd.Cattle cattle, double milk) {
        return new Herd.Cattle(cattle.head().milking(milk), cattle.conversion(), cattle.crudeProtein());
    }

    private void site() {
        FarmRecords books = notebook.records();
        books.water()
                .ifPresent(water -> single(
                        "water",
                        Message.of("entry.water"),
                        RecordField.WATER,
                        water.central(),
                        other -> notebook.with(records -> records.withWater(RecordedNumber.known(other)))));
        List<TransportUse> uses = books.transport();
        shared(
                "transport",
                Message.of("entry.all-transport"),
                RecordField.TRANSPORT_WORK.unit(),
                RecordField.TRANSPORT_WORK,
                uses,
                use -> use.tonneKilometres().central(),
                use -> true,
                RecordInputs::carrying,
                (records, changed) -> records.withTransport(changed));
        uses.stream()
                .map(TransportUse::mode)
                .distinct()
                .forEach(mode -> shared(
                        "transport:" + mode,
                        Message.of("entry.transport", "mode", mode),
                        RecordField.TRANSPORT_WORK.unit(),
                        RecordField.TRANSPORT_WORK,
                        uses,
                        use -> use.tonneKilometres().central(),
                        use -> use.mode().equals(mode),
                        RecordInputs::carrying,
                        (records, changed) -> records.withTransport(changed)));
        double area = RecordedNumber.centralOr(books.buildingArea(), 0) + RecordedNumber.centralOr(books.yardArea(), 0);
        if (area > 0) {
            single(
                    "land",
                    Message.of("entry.land"),
                    RecordField.BUILDING,
                    area,
                    other -> notebook.with(records ->
                            records.with(changed -> changed.buildingArea(scaled(books.buildingArea(), other / area))
                                    .yardArea(scaled(books.yardArea(), other / area)))));
        }
    }

    private static TransportUse carrying(TransportUse use, double factor) {
        return new TransportUse(use.mode(), scaled(use.tonneKilometres(), factor));
    }

    /** What is changed is known from then on: a number, so many times the middle of what was recorded. */
    private static RecordedNumber scaled(RecordedNumber amount, double factor) {
        return RecordedNumber.of(amount.central() * factor);
    }

    private static Optional<RecordedNumber> scaled(Optional<RecordedNumber> amount, double factor) {
        return amount.map(present -> scaled(present, factor));
    }

    /** Changes one line of a list. */
    private interface Change<T> {
        T times(T line, double factor);
    }

    /** Puts changed lines into the records. */
    private interface Put<T> {
        FarmRecords into(FarmRecords records, List<T> changed);
    }

    /** An entry that is the sum of several lines, which keep their proportions. */
    private <T> void shared(
            String id,
            Message words,
            String unit,
            RecordField field,
            List<T> lines,
            ToDoubleFunction<T> amount,
            java.util.function.Predicate<T> concerned,
            Change<T> change,
            Put<T> put) {
        double present = lines.stream().filter(concerned).mapToDouble(amount).sum();
        if (!(present > 0)) {
            return;
        }
        put(new RecordInput(id, words, unit, present, field.least(), field.most(), Optional.empty(), value -> {
            List<T> changed = new ArrayList<>();
            lines.forEach(line -> changed.add(concerned.test(line) ? change.times(line, value / present) : line));
            UnaryOperator<FarmRecords> into = records -> put.into(records, changed);
            return notebook.with(into);
        }));
    }

    private void single(
            String id, Message words, RecordField field, double present, DoubleFunction<EditableRecords> at) {
        put(new RecordInput(id, words, field.unit(), present, field.least(), field.most(), Optional.empty(), at));
    }

    private void put(RecordInput entry) {
        if (entry.present() >= entry.least() && entry.present() <= entry.most()) {
            found.putIfAbsent(entry.id(), entry);
        }
    }
}

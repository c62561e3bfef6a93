package org.scalepan.production.records;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.factors.Library;
import org.scalepan.factors.Nearest;
import org.scalepan.factors.table.Row;
import org.scalepan.input.Input;
import org.scalepan.production.FarmRecords;
import org.scalepan.production.Inventory;
import org.scalepan.production.RecordField;
import org.scalepan.production.RecordedNumber;
import org.scalepan.production.heating.Heating;
import org.scalepan.production.heating.RoomHeat;
import org.scalepan.production.herd.HeadRecords;
import org.scalepan.production.herd.Herd;
import org.scalepan.production.herd.HerdOutput;
import org.scalepan.production.insects.Harvest;
import org.scalepan.production.insects.InsectFarm;

/** Reads one production system from a request: the records of an insect farm, of a herd or of a fish farm. */
public final class SystemReading {
    /** The animals of a herd. */
    public static final List<String> CATEGORIES = List.of(
            "dairy-cattle", "other-cattle", "buffalo", "sheep", "goats", "swine", "layers", "broilers", "ducks");

    /** Processing steps after the farm gate. */
    public static final List<String> STEPS = List.of("drying", "blanching", "freezing");

    private final Library library;
    private final RecordVocabulary vocabulary;
    private final Map<String, String> drawnAs;

    public SystemReading(Library library) {
        this(library, Map.of());
    }

    /**
     * @param drawnAs for paths of fields whose ranges follow one another, the path of the one whose draws serve all
     */
    public SystemReading(Library library, Map<String, String> drawnAs) {
        this.library = library;
        this.vocabulary = RecordVocabulary.of(library);
        this.drawnAs = Map.copyOf(drawnAs);
    }

    /** Reads a system; empty after an error, which is recorded in the body. */
    public Optional<Inventory> read(Input body) {
        return notebook(body).map(read -> read.inventory(library));
    }

    /** Reads the records of a system, for questions that vary them; empty after an error. */
    public Optional<EditableRecords> notebook(Input body) {
        Optional<String> kind =
                body.needOneOf("kind", RecordField.KIND.definition().words());
        int before = body.faults().size();
        if (kind.isEmpty()) {
            return Optional.empty();
        }
        Optional<EditableRecords> read = switch (kind.get()) {
            case "insects" -> insects(body).map(EditableRecords.Insects::new);
            case "fish" -> new FishReading(library, drawnAs).read(body).map(EditableRecords.Fish::new);
            default -> herd(body).map(EditableRecords.Animals::new);
        };
        body.close();
        return read.filter(found -> body.faults().size() == before);
    }

    private Optional<InsectFarm> insects(Input body) {
        String name = body.text("name").orElse("farm");
        RecordNumbers numbers = new RecordNumbers(body, name, drawnAs);
        Optional<RearedInsect> reared = RearedInsect.read(library, body, numbers);
        Optional<String> form = body.oneOf("form", library.ids("forms"));
        Optional<Harvest> harvest = HarvestReading.read(body, numbers);
        Optional<RecordedNumber> sold = numbers.number(body, RecordField.SOLD);
        if (form.filter(other -> !other.equals("fresh")).isPresent() && !body.has("sold_kg")) {
            body.fault(
                    "sold_kg",
                    "sold_kg is missing: a farm that sells " + form.get()
                            + " needs the kg sold beside the live harvest");
        }
        FarmRecords read = new RecordsReading(library, numbers).read(body, name);
        Optional<InsectFarm.CoProductRule> rule = body.oneOf(
                        "co_product_allocation", List.of("none", "mass", "economic"))
                .map(chosen -> InsectFarm.CoProductRule.valueOf(chosen.toUpperCase(java.util.Locale.ROOT)));
        Optional<RecordedNumber> price = numbers.number(body, RecordField.PRICE);
        rule.flatMap(chosen -> chosen.obstacle(price, read.coProducts())).ifPresent(body::fault);
        Optional<RecordedNumber> cycle = numbers.number(body, RecordField.CYCLE_DAYS);
        Optional<RecordedNumber> pairs = numbers.number(body, RecordField.PAIRS);
        Optional<RecordedNumber> kept = numbers.number(body, RecordField.KEPT_FOR_BREEDING);
        Optional<RecordedNumber> mortality = numbers.number(body, RecordField.MORTALITY);
        Optional<InsectFarm.Frass> frass = body.object("frass").map(given -> frass(given, numbers));
        List<InsectFarm.Processing> processing = body.objects("processing", RecordLimits.PROCESSING_STEPS).stream()
                .map(given -> processing(given, numbers))
                .toList();
        Optional<Heating> heating = body.object("heating").map(given -> heating(given, numbers));
        if (reared.isPresent() && read.region().isPresent() == body.has("region")) {
            heating.flatMap(room -> RoomHeat.obstacle(
                            library, read.region(), reared.get().product(), room))
                    .ifPresent(body::fault);
        }
        if (reared.isEmpty() || harvest.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new InsectFarm(
                read,
                reared.get().product(),
                form,
                harvest.get(),
                sold,
                price,
                cycle,
                pairs,
                kept,
                mortality,
                frass,
                processing,
                rule,
                heating,
                reared.get().composition()));
    }

    private static InsectFarm.Frass frass(Input body, RecordNumbers numbers) {
        Optional<RecordedNumber> kilograms = numbers.number(body, RecordField.FRASS_KG);
        Optional<RecordedNumber> nitrogen = numbers.number(body, RecordField.FRASS_NITROGEN);
        Optional<InsectFarm.Fate> fate = body.oneOf("fate", List.of("stored", "spread"))
                .map(name -> InsectFarm.Fate.valueOf(name.toUpperCase(java.util.Locale.ROOT)));
        boolean credited = body.oneOf("credited", List.of("no", "yes"))
                .filter("yes"::equals)
                .isPresent();
        body.close();
        return new InsectFarm.Frass(kilograms, nitrogen, fate, credited);
    }

    private InsectFarm.Processing processing(Input body, RecordNumbers numbers) {
        String step = body.needOneOf("step", STEPS).orElse("");
        RecordedNumber water = numbers.needNumber(body, RecordField.PROCESSING_WATER);
        String carrier = body.needOneOf("carrier", vocabulary.energyCarriers()).orElse("");
        Optional<RecordedNumber> energy = numbers.number(body, RecordField.PROCESSING_ENERGY);
        body.close();
        return new InsectFarm.Processing(step, water, carrier, energy);
    }

    private Heating heating(Input body, RecordNumbers numbers) {
        RecordedNumber area = numbers.needNumber(body, RecordField.HEATING_ROOM);
        Optional<RecordedNumber> temperature = numbers.number(body, RecordField.HEATING_TEMPERATURE);
        Optional<String> insulation = body.oneOf("insulation", RoomHeat.CLASSES);
        String carrier = body.needOneOf("carrier", vocabulary.energyCarriers()).orElse("");
        body.close();
        return new Heating(area, temperature, insulation, carrier);
    }

    private Optional<Herd> herd(Input body) {
        String name = body.text("name").orElse("herd");
        RecordNumbers numbers = new RecordNumbers(body, name, drawnAs);
        Optional<String> category = body.needOneOf("animals", CATEGORIES);
        Optional<String> edition = body.oneOf("ipcc_edition", List.of("2019", "2006"));
        Optional<String> region =
                body.oneOf("ipcc_region", vocabulary.ipccRegions()).map(id -> "ipcc." + id);
        Optional<String> productivity = body.oneOf("productivity", List.of("mean", "high", "low"));
        Optional<String> climate = body.oneOf("climate", vocabulary.climates());
        RecordedNumber heads = numbers.needNumber(body, RecordField.HEADS);
        Optional<Herd.BreedingStock> breeding = body.oneOf(
                        RecordField.BREEDING_STOCK.field(),
                        Stream.of(Herd.BreedingStock.values())
                                .map(Herd.BreedingStock::id)
                                .toList())
                .flatMap(Herd.BreedingStock::of);
        List<Herd.Yield> yields = yields(body, category, numbers);
        List<Herd.ManureShare> manure = manure(body, numbers);
        Optional<Herd.Cattle> cattle = body.object("cattle").flatMap(given -> cattle(given, numbers));
        if (cattle.isPresent()) {
            Herd.obstacleToTier2(category.orElse("")).ifPresent(body::fault);
        }
        Optional<String> product = body.oneOf("product", given(category, yields));
        FarmRecords read = new RecordsReading(library, numbers).read(body, name);
        Herd.obstacleInCoProducts(read).ifPresent(body::fault);
        if (category.isEmpty() || yields.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Herd(
                read,
                category.get(),
                edition,
                region,
                productivity,
                climate,
                heads,
                yields,
                manure,
                cattle,
                product,
                breeding));
    }

    /** The products that the herd's yields are. */
    private static List<String> given(Optional<String> category, List<Herd.Yield> yields) {
        return yields.stream()
                .flatMap(yield -> HerdOutput.product(category.orElse(""), yield.kind()).stream())
                .toList();
    }

    private static List<Herd.Yield> yields(Input body, Optional<String> category, RecordNumbers numbers) {
        List<Herd.Yield> yields = new ArrayList<>();
        Optional<Input> given = body.object("yield");
        if (given.isEmpty()) {
            body.fault("yield", "yield is missing: give milk_kg, eggs_kg or live_kg a year");
            return yields;
        }
        Input yield = given.get();
        for (Herd.AnimalKind kind : Herd.AnimalKind.values()) {
            String field = kind.field().field();
            Optional<RecordedNumber> kilograms = numbers.number(yield, kind.field());
            if (kilograms.isPresent()) {
                yields.add(new Herd.Yield(kind, kilograms.get()));
                category.filter(animals -> HerdOutput.product(animals, kind).isEmpty())
                        .ifPresent(animals ->
                                yield.fault(field, "no product of this library is the " + field + " of " + animals));
            }
        }
        yield.close();
        if (yields.isEmpty()) {
            body.fault("yield", "yield needs at least one of milk_kg, eggs_kg, live_kg");
        }
        return yields;
    }

    private List<Herd.ManureShare> manure(Input body, RecordNumbers numbers) {
        List<Herd.ManureShare> shares = new ArrayList<>();
        for (Input given : body.objects("manure", RecordLimits.MANURE_SYSTEMS)) {
            String system =
                    given.needOneOf("system", vocabulary.manureSystems()).orElse("pasture");
            RecordedNumber share = numbers.needNumber(given, RecordField.MANURE_SHARE);
            given.close();
            shares.add(new Herd.ManureShare("mms." + system, share));
        }
        Herd.obstacleInManure(shares).ifPresent(body::fault);
        return shares;
    }

    private static Optional<Herd.Cattle> cattle(Input body, RecordNumbers numbers) {
        int before = body.faults().size();
        HeadRecords head = new HeadRecords(
                numbers.needNumber(body, RecordField.CATTLE_WEIGHT),
                numbers.number(body, RecordField.CATTLE_MATURE_WEIGHT),
                numbers.number(body, RecordField.CATTLE_GAIN),
                numbers.number(body, RecordField.CATTLE_MILK),
                numbers.number(body, RecordField.CATTLE_MILK_FAT),
                numbers.number(body, RecordField.CATTLE_PREGNANT),
                numbers.number(body, RecordField.CATTLE_WORK),
                numbers.needNumber(body, RecordField.CATTLE_DIGESTIBILITY),
                body.oneOf("activity", List.of("stall", "pasture-fed", "large-areas")),
                body.oneOf("kind", List.of("lactating", "not-lactating", "intact-males", "castrates")));
        Optional<RecordedNumber> conversion = numbers.number(body, RecordField.CATTLE_METHANE_CONVERSION);
        Optional<RecordedNumber> protein = numbers.number(body, RecordField.CATTLE_CRUDE_PROTEIN);
        body.close();
        return body.faults().size() == before
                ? Optional.of(new Herd.Cattle(head, conversion, protein))
                : Optional.empty();
    }

    /** Ingredients with a name or synonym similar to a mistyped one. */
    static List<String> nearIngredients(Library library, String typed) {
        for (Row row : library.table("ingredients").rows()) {
            if (row.list("aliases").stream().anyMatch(typed::equalsIgnoreCase)) {
                return List.of(row.text("id"));
            }
        }
        return Nearest.to(typed, library.ids("ingredients"), 3);
    }
}

package org.scalepan.production.records;

import java.util.Map;
import java.util.Optional;
import org.scalepan.factors.Library;
import org.scalepan.factors.Product;
import org.scalepan.input.Input;
import org.scalepan.production.FarmRecords;
import org.scalepan.production.RecordField;
import org.scalepan.production.RecordedNumber;
import org.scalepan.production.fish.FishFarm;
import org.scalepan.production.fish.FishMass;
import org.scalepan.production.fish.Pond;
import org.scalepan.production.fish.PondKind;

/** Reads the records of a fish farm. */
final class FishReading {
    private final Library library;
    private final Map<String, String> drawnAs;

    FishReading(Library library, Map<String, String> drawnAs) {
        this.library = library;
        this.drawnAs = drawnAs;
    }

    /** Empty after an error, which is recorded in the body. */
    Optional<FishFarm> read(Input body) {
        String name = body.text("name").orElse("fish farm");
        RecordNumbers numbers = new RecordNumbers(body, name, drawnAs);
        Optional<Product> product = body.needOneOf(
                        "product", RecordVocabulary.of(library).fish())
                .flatMap(id -> Optional.ofNullable(library.products().get(id)));
        if (!body.has("harvest")) {
            body.fault("harvest", "harvest is missing: give kg_per_year, or fish with grams_per_fish");
        }
        Optional<FishMass> harvest = body.object("harvest")
                .flatMap(given -> mass(
                        given,
                        numbers,
                        RecordField.HARVEST_KG,
                        RecordField.HARVEST_FISH,
                        RecordField.HARVEST_GRAMS_PER_FISH));
        Optional<FishMass> stocked = body.object("stocked")
                .flatMap(given -> mass(
                        given,
                        numbers,
                        RecordField.STOCKED_KG,
                        RecordField.STOCKED_FISH,
                        RecordField.STOCKED_GRAMS_PER_FISH));
        Pond pond = body.object("pond").map(given -> pond(given, numbers)).orElse(Pond.UNRECORDED);
        FarmRecords read = new RecordsReading(library, numbers).read(body, name);
        FishFarm.obstacleInCoProducts(read).ifPresent(body::fault);
        return product.isEmpty() || harvest.isEmpty()
                ? Optional.empty()
                : Optional.of(new FishFarm(read, product.get(), harvest.get(), stocked, pond));
    }

    /** Weighed or counted, not both. */
    private static Optional<FishMass> mass(
            Input given, RecordNumbers numbers, RecordField weighed, RecordField counted, RecordField each) {
        int before = given.faults().size();
        FishMass mass;
        if (given.has(weighed.field()) == given.has(counted.field())) {
            given.fault(
                    weighed.field(),
                    "give " + weighed.field() + ", or " + counted.field() + " with " + each.field() + ", not both");
            return Optional.empty();
        }
        if (given.has(weighed.field())) {
            mass = new FishMass.WeighedFish(numbers.needNumber(given, weighed));
        } else {
            RecordedNumber fish = numbers.needNumber(given, counted);
            mass = new FishMass.CountedFish(fish, numbers.needNumber(given, each));
        }
        given.close();
        return given.faults().size() == before ? Optional.of(mass) : Optional.empty();
    }

    private static Pond pond(Input given, RecordNumbers numbers) {
        Optional<PondKind> kind = given.oneOf(
                        RecordField.POND_KIND.field(),
                        RecordField.POND_KIND.definition().words())
                .flatMap(PondKind::of);
        Pond pond = new Pond(
                kind,
                numbers.number(given, RecordField.POND_AREA),
                numbers.number(given, RecordField.POND_NITROGEN),
                numbers.number(given, RecordField.POND_PHOSPHATE),
                numbers.number(given, RecordField.POND_MANURE),
                numbers.number(given, RecordField.POND_LIME));
        given.close();
        return pond;
    }
}

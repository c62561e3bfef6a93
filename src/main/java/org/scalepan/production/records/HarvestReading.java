package org.scalepan.production.records;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.scalepan.input.Input;
import org.scalepan.production.RecordField;
import org.scalepan.production.RecordedNumber;
import org.scalepan.production.insects.Harvest;
import org.scalepan.production.insects.LarvaMass;

/** Reads the harvest of a year in one of the ways that growers keep it. */
final class HarvestReading {
    private static final String LARVAE_PER_KG = RecordField.HARVEST_LARVAE_PER_KG.field();
    private static final String GRAMS_PER_LARVA = RecordField.HARVEST_GRAMS_PER_LARVA.field();

    private static final String WAYS =
            "kg_per_year, or containers with kg_per_container and cycles_per_year, or larvae with larvae_per_kg or"
                    + " grams_per_larva, or pairs with eggs_per_pair, hatch, survival, cycles_per_year and larvae_per_kg or grams_per_larva";

    private final Input harvest;
    private final RecordNumbers numbers;

    private HarvestReading(Input harvest, RecordNumbers numbers) {
        this.harvest = harvest;
        this.numbers = numbers;
    }

    /** Empty after an error, which is recorded in the body. */
    static Optional<Harvest> read(Input body, RecordNumbers numbers) {
        Optional<Input> given = body.object("harvest");
        if (given.isEmpty() && !body.has("harvest")) {
            body.fault("harvest", "harvest is missing: give " + WAYS);
        }
        return given.flatMap(found -> new HarvestReading(found, numbers).read());
    }

    private Optional<Harvest> read() {
        int before = harvest.faults().size();
        List<RecordField> ways = Stream.of(
                        RecordField.HARVEST_KG,
                        RecordField.HARVEST_CONTAINERS,
                        RecordField.HARVEST_LARVAE,
                        RecordField.HARVEST_PAIRS)
                .filter(way -> harvest.has(way.field()))
                .toList();
        if (ways.size() != 1) {
            harvest.fault(RecordField.HARVEST_KG.field(), "give the harvest in one way: " + WAYS);
            return Optional.empty();
        }
        RecordedNumber first = numbers.needNumber(harvest, ways.get(0));
        Optional<Harvest> read = switch (ways.get(0)) {
            case HARVEST_KG -> right(before).map(unused -> new Harvest.Weighed(first));
            case HARVEST_CONTAINERS -> {
                RecordedNumber each = numbers.needNumber(harvest, RecordField.HARVEST_KG_PER_CONTAINER);
                RecordedNumber cycles = numbers.needNumber(harvest, RecordField.HARVEST_CYCLES);
                yield right(before).map(unused -> new Harvest.ByContainer(first, each, cycles));
            }
            case HARVEST_LARVAE -> {
                Optional<LarvaMass> each = each();
                yield right(before).flatMap(unused -> each.map(mass -> new Harvest.ByNumber(first, mass)));
            }
            default -> pairs(first, before);
        };
        return read;
    }

    private Optional<Harvest> pairs(RecordedNumber pairs, int before) {
        RecordedNumber eggs = numbers.needNumber(harvest, RecordField.HARVEST_EGGS_PER_PAIR);
        RecordedNumber hatch = numbers.needNumber(harvest, RecordField.HARVEST_HATCH);
        RecordedNumber survival = numbers.needNumber(harvest, RecordField.HARVEST_SURVIVAL);
        Optional<RecordedNumber> lost = numbers.number(harvest, RecordField.HARVEST_BATCHES_LOST);
        RecordedNumber cycles = numbers.needNumber(harvest, RecordField.HARVEST_CYCLES);
        Optional<LarvaMass> each = each();
        return right(before)
                .flatMap(unused ->
                        each.map(mass -> new Harvest.ByPairs(pairs, eggs, hatch, survival, lost, mass, cycles)));
    }

    /** What one larva weighs, by either way of saying it. */
    private Optional<LarvaMass> each() {
        if (harvest.has(LARVAE_PER_KG) == harvest.has(GRAMS_PER_LARVA)) {
            harvest.fault(
                    LARVAE_PER_KG,
                    harvest.has(LARVAE_PER_KG)
                            ? "give larvae_per_kg or grams_per_larva, not both"
                            : "larvae_per_kg is missing, or grams_per_larva in its place");
            return Optional.empty();
        }
        return numbers.number(harvest, RecordField.HARVEST_LARVAE_PER_KG)
                .map(LarvaMass::perKilogram)
                .or(() -> numbers.number(harvest, RecordField.HARVEST_GRAMS_PER_LARVA)
                        .map(LarvaMass::grams));
    }

    /** Something where all that was read is right. */
    private Optional<Input> right(int before) {
        harvest.close();
        return Optional.of(harvest).filter(read -> read.faults().size() == before);
    }
}

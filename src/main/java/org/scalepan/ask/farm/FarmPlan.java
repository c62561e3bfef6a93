package org.scalepan.ask.farm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.scalepan.factors.BackgroundFactor;
import org.scalepan.factors.Library;
import org.scalepan.production.FarmRecords;
import org.scalepan.production.FarmRecords.EnergyUse;
import org.scalepan.production.FarmRecords.FeedUse;
import org.scalepan.production.Flow;
import org.scalepan.production.Flux;
import org.scalepan.production.RecordedNumber;
import org.scalepan.production.fish.FishFarm;
import org.scalepan.production.fish.FishMass;
import org.scalepan.production.herd.Herd;
import org.scalepan.production.practice.ModelledFarm;
import org.scalepan.production.records.EditableRecords;

/**
 * What a farm needs before it has records: a reference farm scaled to the harvest that is wished for. A figure per kg does not change
 * with the scale; what is fed, kept and cleared away does, in proportion.
 *
 * @param farm the reference farm
 * @param harvest what is wished for, in the unit of the farm's output
 * @param amounts what it takes in a year and what it leaves, as far as it is published
 * @param open what nobody has published of the animals, so that it cannot be planned
 */
public record FarmPlan(ModelledFarm farm, double harvest, List<PlannedAmount> amounts, List<String> open) {
    private static final double DAYS = 365;
    private static final double GRAMS_PER_KILOGRAM = 1000;

    public FarmPlan {
        amounts = List.copyOf(amounts);
        open = List.copyOf(open);
    }

    /**
     * One amount of a year.
     *
     * @param field the field of the records that it will stand in; a word of the plan where there is none
     * @param words what it is
     * @param unit of its numbers
     * @param low least in published practice
     * @param middle the middle of the range; empty where only its ends are known
     * @param high most
     * @param rows ids of the rows behind it
     * @param note what must be known with it; empty where nothing
     */
    public record PlannedAmount(
            String field,
            String words,
            String unit,
            double low,
            OptionalDouble middle,
            double high,
            List<String> rows,
            Optional<String> note) {
        public PlannedAmount {
            rows = List.copyOf(rows);
        }
    }

    /** The plan for a harvest above zero. */
    public static FarmPlan of(Library library, ModelledFarm farm, double harvest) {
        return new Planning(library, farm, harvest).plan();
    }

    /** Collects the amounts of one plan. */
    private static final class Planning {
        private final Library library;
        private final ModelledFarm farm;
        private final double harvest;
        private final double scale;
        private final List<PlannedAmount> amounts = new ArrayList<>();
        private final List<String> open = new ArrayList<>();

        Planning(Library library, ModelledFarm farm, double harvest) {
            this.library = library;
            this.farm = farm;
            this.harvest = harvest;
            this.scale = harvest / farm.inventory().output().amount();
        }

        FarmPlan plan() {
            FarmRecords records = farm.records().records();
            int line = 0;
            for (FeedUse use : records.feed()) {
                scaled(
                        "feed." + line++ + ".kg",
                        "feed: " + name("ingredients", use.ingredient()),
                        "kg a year",
                        use.kilograms());
            }
            line = 0;
            for (EnergyUse use : records.energy()) {
                scaled(
                        "energy." + line++ + ".amount",
                        "energy: " + name("energy_carriers", use.carrier()),
                        library.row("energy_carriers", use.carrier())
                                        .map(row -> row.text("unit"))
                                        .orElse("")
                                + " a year",
                        use.amount());
            }
            records.water().ifPresent(water -> scaled("water_m3", "water", "m3 a year", water));
            records.buildingArea().ifPresent(area -> scaled("building_m2", "ground under roof", "m2", area));
            records.yardArea().ifPresent(area -> scaled("yard_m2", "yard or run", "m2", area));
            if (farm.records() instanceof EditableRecords.Animals herd) {
                heads(herd.herd());
            } else if (farm.records() instanceof EditableRecords.Fish fish) {
                water(fish.farm());
            } else {
                animals();
                frass();
            }
            return new FarmPlan(farm, harvest, amounts, open);
        }

        private String name(String table, String id) {
            return library.row(table, id).map(row -> row.text("name")).orElse(id);
        }

        private void scaled(String field, String words, String unit, RecordedNumber number) {
            List<String> rows = farm.farm().inputs().stream()
                    .filter(input -> input.field().equals(field))
                    .flatMap(input -> input.rowIds().stream())
                    .toList();
            amounts.add(new PlannedAmount(
                    field,
                    words,
                    unit,
                    number.least() * scale,
                    OptionalDouble.of(number.central() * scale),
                    number.most() * scale,
                    rows,
                    Optional.empty()));
        }

        private void heads(Herd herd) {
            scaled("heads", "animals, averaged over the year", "heads", herd.heads());
        }

        private void water(FishFarm fish) {
            fish.pond()
                    .area()
                    .ifPresentOrElse(
                            area -> scaled("pond.area_m2", "water with fish", "m2", area),
                            () -> open.add("how much water the fish need"));
            if (fish.stocked().orElse(null) instanceof FishMass.WeighedFish young) {
                scaled("stocked.kg", "fingerlings put in", "kg live a year", young.weight());
            } else {
                open.add("how many fingerlings to put in");
            }
        }

        private void animals() {
            List<Spread> count = new ArrayList<>(published("larvae-per-kg", number -> number));
            count.addAll(published("individual-mass", grams -> GRAMS_PER_KILOGRAM / grams));
            Optional<Spread> perKilogram = span(count);
            perKilogram.ifPresentOrElse(
                    found -> add("harvest.larvae", "animals at harvest", "a year", found.times(harvest)),
                    () -> open.add("how many animals make a kilogram"));
            containers();
            perKilogram.ifPresent(this::adults);
        }

        private void containers() {
            Optional<Spread> each = span(published("harvest-per-container", number -> number));
            Optional<Spread> cycles = span(published("cycles-per-year", number -> number))
                    .or(() -> span(published("cycle-days", days -> DAYS / days)));
            cycles.ifPresent(found -> add("harvest.cycles_per_year", "cycles of a container", "a year", found));
            if (each.isPresent() && cycles.isPresent()) {
                add(
                        "harvest.containers",
                        "containers in use",
                        "containers",
                        new Spread(
                                        harvest
                                                / each.get().high()
                                                / cycles.get().high(),
                                        harvest
                                                / each.get().middle()
                                                / cycles.get().middle(),
                                        harvest
                                                / each.get().low()
                                                / cycles.get().low(),
                                        List.of())
                                .citing(each.get(), cycles.get()));
            } else {
                open.add("how much a container gives");
            }
        }

        private void adults(Spread perKilogram) {
            Optional<Spread> eggs = span(published("eggs-per-female", number -> number));
            Optional<Spread> survival = span(published("survival", share -> share))
                    .or(() -> span(published("mortality", share -> 1 - share)));
            if (eggs.isPresent() && survival.isPresent()) {
                add(
                        "females",
                        "females to lay the eggs",
                        "a year",
                        new Spread(
                                        harvest
                                                * perKilogram.low()
                                                / eggs.get().high()
                                                / survival.get().high(),
                                        harvest
                                                * perKilogram.middle()
                                                / eggs.get().middle()
                                                / survival.get().middle(),
                                        harvest
                                                * perKilogram.high()
                                                / eggs.get().low()
                                                / survival.get().low(),
                                        List.of())
                                .citing(perKilogram, eggs.get(), survival.get()));
            } else {
                open.add("how many eggs a female lays, or how many animals live to harvest");
            }
        }

        /** What is fed and not grown is frass, feed left over and breath; more than all of it there cannot be. */
        private void frass() {
            double dry = farm.inventory().flows().stream()
                    .filter(flow -> flow.flux() == Flux.FEED_DRY_MATTER)
                    .map(Flow::term)
                    .mapToDouble(term -> term.central())
                    .sum();
            if (dry > 0) {
                amounts.add(
                        new PlannedAmount(
                                "frass.kg",
                                "frass and feed left over, dry",
                                "kg a year",
                                0,
                                OptionalDouble.empty(),
                                dry * scale,
                                List.of(),
                                Optional.of(
                                        "at most: the dry matter of all feed; what the animals keep and breathe out is less, and is not known")));
            }
        }

        private void add(String field, String words, String unit, Spread spread) {
            amounts.add(new PlannedAmount(
                    field,
                    words,
                    unit,
                    spread.low(),
                    OptionalDouble.of(spread.middle()),
                    spread.high(),
                    spread.rows(),
                    Optional.empty()));
        }

        private List<Spread> published(String quantity, DoubleUnaryOperator inUnit) {
            return library.background("insect_practice").stream()
                    .filter(row -> row.subject().equals(farm.farm().product())
                            && row.quantity().equals(quantity))
                    .map(row -> Spread.of(row, inUnit))
                    .toList();
        }

        private static Optional<Spread> span(List<Spread> rows) {
            if (rows.isEmpty()) {
                return Optional.empty();
            }
            double low = rows.stream().mapToDouble(Spread::low).min().orElseThrow();
            double high = rows.stream().mapToDouble(Spread::high).max().orElseThrow();
            return Optional.of(new Spread(
                    low,
                    Math.sqrt(low * high),
                    high,
                    rows.stream().flatMap(row -> row.rows().stream()).toList()));
        }
    }

    /** From the least to the most that rows print. */
    private record Spread(double low, double middle, double high, List<String> rows) {
        static Spread of(BackgroundFactor row, DoubleUnaryOperator inUnit) {
            double value = row.printed().value().orElse(0);
            double[] ends = DoubleStream.of(
                            row.printed().low().orElse(value),
                            row.printed().high().orElse(value))
                    .map(inUnit)
                    .sorted()
                    .toArray();
            return new Spread(ends[0], Math.sqrt(ends[0] * ends[1]), ends[1], List.of(row.id()));
        }

        Spread times(double factor) {
            return new Spread(low * factor, middle * factor, high * factor, rows);
        }

        Spread citing(Spread... others) {
            return new Spread(
                    low,
                    middle,
                    high,
                    Stream.of(others)
                            .flatMap(other -> other.rows().stream())
                            .distinct()
                            .toList());
        }
    }
}

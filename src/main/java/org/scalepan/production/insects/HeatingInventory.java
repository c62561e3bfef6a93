package org.scalepan.production.insects;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.scalepan.factors.BackgroundFactor;
import org.scalepan.factors.Library;
import org.scalepan.production.ActivityTerm;
import org.scalepan.production.Background;
import org.scalepan.production.FarmInventory;
import org.scalepan.production.Gap;
import org.scalepan.production.InventoryBuilder;
import org.scalepan.production.Remark;
import org.scalepan.production.RowSpan;
import org.scalepan.production.heating.Heating;
import org.scalepan.production.heating.RoomHeat;
import org.scalepan.words.DisplayName;
import org.scalepan.words.Figure;
import org.scalepan.words.Message;

/** Adds the heat of a rearing room that has no meter. */
final class HeatingInventory {
    private static final double DAYS = 365;
    private static final String FIELD = "heating";

    /**
     * The mean mass of a batch over its cycle, as a share of its mass at harvest, is (1 − s) / ln(1/s) for animals that start at the share s
     * of it and grow exponentially, and a half for steady growth from next to nothing: least for a thousandfold gain, and most.
     */
    private static final double LEAST_MEAN_MASS = (1 - 1e-3) / StrictMath.log(1e3);

    private static final double MOST_MEAN_MASS = 0.5;

    private final Library library;
    private final InsectFarm farm;
    private final InventoryBuilder builder;

    HeatingInventory(Library library, InsectFarm farm, InventoryBuilder builder) {
        this.library = library;
        this.farm = farm;
        this.builder = builder;
    }

    void add(FarmInventory farmInventory) {
        farm.heating().ifPresent(room -> add(room, farmInventory));
    }

    private void add(Heating room, FarmInventory farmInventory) {
        Optional<RowSpan> gains = gains();
        Optional<RoomHeat> heat = RoomHeat.of(
                library,
                farm.records().region(),
                farm.product().id(),
                room,
                gains.orElse(new RowSpan(0, 0, List.of())));
        if (heat.isEmpty()) {
            builder.notCounted(FIELD, Gap.OF_ENERGY, Message.of("gap.no-climate"));
            return;
        }
        tell(room, heat.get(), gains);
        if (farm.records().energy().stream().anyMatch(use -> !use.forProcessing())) {
            builder.remark(Remark.METHOD, Message.of("remark.heating-twice"));
        }
        if (heat.get().high() > 0) {
            farmInventory.roomHeat(
                    room.carrier(),
                    ActivityTerm.of(1).times(heat.get().factor()),
                    heat.get().rows());
        }
    }

    private void tell(Heating room, RoomHeat heat, Optional<RowSpan> gains) {
        if (room.temperature().isEmpty()) {
            builder.filled(
                    FIELD + "/temperature_c",
                    Gap.OF_ENERGY,
                    Message.of(
                            "gap.temperature",
                            "low",
                            new Figure(String.format(
                                    Locale.ROOT, "%.0f", heat.inside().low())),
                            "high",
                            new Figure(String.format(
                                    Locale.ROOT, "%.0f", heat.inside().high())),
                            "product",
                            farm.product().id()),
                    heat.inside().rows().toArray(String[]::new));
        }
        if (room.insulation().isEmpty()) {
            builder.filled(FIELD + "/insulation", Gap.OF_ENERGY, Message.of("gap.insulation"));
        }
        if (gains.isEmpty()) {
            builder.filled(FIELD + "/animals", Gap.OF_ENERGY, Message.of("gap.animal-heat"));
        }
        String region = farm.records().region().orElseThrow();
        DisplayName place = DisplayName.of("region." + region, library.regions().words(region));
        String key = heat.high() <= 0 ? "gap.no-heat" : gains.isPresent() ? "gap.heat.less-animals" : "gap.heat";
        builder.filled(
                FIELD,
                Gap.OF_ENERGY,
                Message.of(
                        key,
                        "place",
                        place,
                        "low",
                        new Figure(rounded(heat.low())),
                        "high",
                        new Figure(rounded(heat.high()))),
                heat.rows().toArray(String[]::new));
    }

    private static String rounded(double megajoules) {
        return new BigDecimal(megajoules)
                .round(new MathContext(2))
                .toBigInteger()
                .toString();
    }

    /** W given off by the animals that are in the room at any time, where it was measured and the length of the cycle is known. */
    private Optional<RowSpan> gains() {
        Optional<RowSpan> perKilogram =
                RoomHeat.published(library, farm.product().id(), "heat-given-off");
        Optional<BackgroundFactor> usual =
                Background.of(library).row("insect_practice", farm.product().id(), "cycle-days");
        OptionalDouble days = farm.cycleDays().isPresent()
                ? OptionalDouble.of(farm.cycleDays().get().central())
                : usual.map(row -> row.printed().value()).orElse(OptionalDouble.empty());
        if (perKilogram.isEmpty() || days.isEmpty()) {
            return Optional.empty();
        }
        double harvested = farm.harvest().kilograms() * days.getAsDouble() / DAYS;
        List<String> rows = new ArrayList<>(perKilogram.get().rows());
        if (farm.cycleDays().isEmpty()) {
            usual.ifPresent(row -> rows.add(row.id()));
        }
        return Optional.of(new RowSpan(
                harvested * LEAST_MEAN_MASS * perKilogram.get().low(),
                harvested * MOST_MEAN_MASS * perKilogram.get().high(),
                rows));
    }
}
